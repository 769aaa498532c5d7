import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { generateEmitter, loadEmitter } from "#emit";
import { dialectLoader, loadDialect, quarryRouter } from "../support/dialects.ts";
import { expectHarmless } from "./harmless.ts";

/**
 * The source of two emitters, kept to be read: `npx vitest run test/emit -u` rewrites it, and the difference is the change
 * that a person looks at.
 */
test.each([
  ["rs274ngc", false],
  ["explicit-words", true],
] as const)("the emitter of %s reads as it did (traced: %s)", async (name, traced) => {
  const golden = join(import.meta.dirname, "goldens", `${name}.${traced ? "traced" : "plain"}.js`);
  expect(existsSync(golden)).toBe(true);
  const { format, title, files } = await loadDialect(name);
  const origin = {
    name,
    title,
    // A golden is not to change with every comment in a dialect file.
    files: files.map((file) => ({ name: file, sha256: "0".repeat(64) })),
    version: "0.0.0",
  };
  await expect(generateEmitter(format, { traced, origin })).toMatchFileSnapshot(golden);
});

test.each([...dialectLoader().shipped, quarryRouter])(
  "%s compiles to a module that can do no harm",
  async (name) => {
    const { format } = await loadDialect(name);
    for (const traced of [false, true]) {
      const source = generateEmitter(format, { traced });
      expectHarmless(source);
      expect(Object.keys(await loadEmitter(source)).sort()).toEqual([
        "cleanText",
        "emitUnproved",
        ...(traced ? ["traceKeys"] : []),
      ]);
    }
  },
);

/** A resolved dialect is kept as JSON, where undefined keys are left out. */
test("the same format gives the same source", async () => {
  const { format } = await loadDialect(quarryRouter);
  const again = JSON.parse(JSON.stringify(format)) as typeof format;
  expect(generateEmitter(again, { traced: true })).toBe(generateEmitter(format, { traced: true }));
});
