import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    // Processes rather than threads: some tests start the built command, and set a working directory of their own.
    pool: "forks",
    maxWorkers: 2,
    // The property tests post, read back and compare thousands of made-up jobs.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
