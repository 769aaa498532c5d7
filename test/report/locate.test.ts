import { expect, test } from "vitest";
import type { Finding } from "#base";
import { memorySource } from "#base";
import type { Dialect } from "#dialect";
import type { Sources } from "#report";
import { locate } from "#report";

const source = (file: string, text: string) => ({
  file,
  bytes: memorySource(new TextEncoder().encode(text)),
});
const job = source("plate.job.json", '{\n  "job": "1",\n  "fed": 3\n}\n');
const leaf = source("leaf.dialect.yaml", "dialect: leaf\nspindle: { order: start-first }\n");
const sources: Sources = (name, file) =>
  name === "job" ? job : file === "leaf.dialect.yaml" ? leaf : undefined;
const dialect = {
  files: ["leaf.dialect.yaml"],
  origins: { spindle: { file: 0, line: 2 }, "spindle.order": { file: 0, line: 2 } },
} as unknown as Dialect;

function finding(more: Partial<Finding>): Finding {
  return { rule: "job/unknown-key", severity: "error", message: "m", ...more };
}

test("a finding gets its line, its column and the line itself", () => {
  const [found] = locate([finding({ place: { source: "job", offset: 18 } })], sources);
  expect(found).toMatchObject({ file: "plate.job.json", line: 3, column: 3 });
  expect(found.quote).toEqual({ before: "  ", after: '"fed": 3', cutLeft: false, cutRight: false });
});

test("findings keep their order, with and without places, in several texts", () => {
  const places = [
    { source: "job", offset: 18 },
    { source: "dialect", offset: 14, file: "leaf.dialect.yaml" },
    undefined,
    { source: "job", offset: 0 },
  ] as const;
  const found = locate(
    places.map((place, index) => finding({ message: `${index}`, ...(place ? { place } : {}) })),
    sources,
  );
  expect(found.map(({ message, file, line }) => [message, file, line])).toEqual([
    ["0", "plate.job.json", 3],
    ["1", "leaf.dialect.yaml", 2],
    ["2", undefined, undefined],
    ["3", "plate.job.json", 1],
  ]);
});

test("a file that has no text keeps its name", () => {
  const place = { source: "command", offset: 0, file: "gone.json" } as const;
  const [found] = locate([finding({ place })], sources);
  expect(found.file).toBe("gone.json");
  expect(found.line).toBeUndefined();
});

test("a key gets the file, the line and the text that states it", () => {
  const [stated, silent] = locate(
    [finding({ key: "spindle.order" }), finding({ key: "confirm.air" })],
    sources,
    dialect,
  );
  expect(stated.origin).toEqual({
    key: "spindle.order",
    file: "leaf.dialect.yaml",
    line: 2,
    text: "spindle: { order: start-first }",
  });
  expect(silent.origin).toEqual({ key: "confirm.air", file: "", line: 0, text: "" });
});

test("a very long line is quoted around the place only", () => {
  const text = `[${"1,".repeat(50_000)}oops${",2".repeat(50_000)}]`;
  const long = source("long.json", text);
  const [found] = locate([finding({ place: { source: "job", offset: text.indexOf("oops") } })], () => long);
  expect(found).toMatchObject({ line: 1, column: 100_002 });
  expect(found.quote?.after.startsWith("oops,2")).toBe(true);
  expect(found.quote).toMatchObject({ cutLeft: true, cutRight: true });
  expect((found.quote?.before.length ?? 0) + (found.quote?.after.length ?? 0)).toBeLessThan(2000);
});

test("a cut through a character leaves no broken one", () => {
  const text = `${"é".repeat(1000)}X${"€".repeat(1000)}`;
  const place = { source: "job", offset: 2000 } as const;
  const [found] = locate([finding({ place })], () => source("u.json", text));
  expect(found.quote?.before).toMatch(/^é+$/);
  expect(found.quote?.after).toMatch(/^X€+$/);
});
