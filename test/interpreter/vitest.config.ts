import { defineConfig } from "vitest/config";

/** What needs the interpreter; apart from `npm test`, which has its records. */
export default defineConfig({
  test: { include: ["test/interpreter/**/*.live.ts"], testTimeout: 1_200_000, hookTimeout: 120_000 },
});
