import ts from "typescript";
import { describe, expect, test } from "vitest";
import type { Format } from "#dialect";
import type { ModuleOrigin } from "#emit";
import { emitterTypes, generateEmitter, isGeneratedModule, loadEmitter } from "#emit";
import { explicit, plain } from "./formats.ts";
import { leastIncrement } from "./least-increment.ts";
import { expectHarmless } from "./harmless.ts";

/** Texts that would leave a literal, a comment or a template if they were pasted. */
const hostile = [
  '"); globalThis.broken = true; ("',
  "'; globalThis.broken = true; '",
  "`${globalThis.broken = true}`",
  "\n globalThis.broken = true \n",
  "\r\n\u2028\u2029globalThis.broken = true\u2028",
  "*/ globalThis.broken = true /*",
  '\\"; globalThis.broken = true; //',
  "</script><script>globalThis.broken = true</script>",
  "__proto__",
  "\u0000\ud800",
];

/** A copy of a format in which every text, each in its turn or all at once, is another one. */
function withTexts(value: unknown, replace: (text: string, path: string) => string, path = ""): unknown {
  if (typeof value === "string") return replace(value, path);
  if (Array.isArray(value)) return value.map((one, index) => withTexts(one, replace, `${path}.${index}`));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, one]) => [name, withTexts(one, replace, `${path}.${name}`)]),
  );
}

function pathsOf(format: Format): string[] {
  const paths: string[] = [];
  withTexts(format, (text, path) => {
    paths.push(path);
    return text;
  });
  return paths;
}

const formats = { plain, explicit, leastIncrement };

describe.each(Object.entries(formats))("%s", (_name, format) => {
  test("the module names and calls only what the two lists hold", () => {
    expectHarmless(generateEmitter(format, { traced: false }));
    expectHarmless(generateEmitter(format, { traced: true }));
  });

  test.each(hostile)("no text of the dialect becomes code: %j", async (text) => {
    const everywhere = withTexts(format, () => text) as Format;
    for (const traced of [false, true]) {
      const source = generateEmitter(everywhere, { traced });
      expectHarmless(source);
      const module: object = await loadEmitter(source);
      expect(Object.keys(module).sort()).toEqual([
        "cleanText",
        "emitUnproved",
        ...(traced ? ["traceKeys"] : []),
      ]);
    }
    expect("broken" in globalThis).toBe(false);
  });
});

/** With all texts wrong at once many branches are decided away, so that each is wrong alone, too. */
test.each(pathsOf(explicit))("no text of the dialect becomes code: %s", (path) => {
  const changed = withTexts(explicit, (text, at) => (at === path ? hostile.join(text) : text)) as Format;
  expectHarmless(generateEmitter(changed, { traced: true }));
});

/** Texts that would leave a line comment, or be taken for more than a comment by a tool. */
const hostileInComments = [
  ...hostile,
  "\u0085globalThis.broken = true",
  "\u2029globalThis.broken = true",
  "\rglobalThis.broken = true",
  "//# sourceMappingURL=data:application/json,{}",
  "<!-- globalThis.broken = true",
  "--> globalThis.broken = true",
  "\u202egnorw\u2066",
  "x".repeat(100_000),
];

function originOf(text: string): ModuleOrigin {
  const files = [
    { name: text, sha256: text },
    { name: text, sha256: text },
  ];
  return { name: text, title: text, files, version: text };
}

/** The lines of a text as the language and every tool count them. */
function linesOf(text: string): string[] {
  return text.split(/\r\n|[\n\r\v\f\u0085\u2028\u2029]/u);
}

test.each(hostileInComments)("no text of the dialect leaves the header: %j", async (text) => {
  const origin = originOf(text);
  for (const traced of [false, true]) {
    const [header, bare] = [origin, undefined].map((one) =>
      generateEmitter(plain, { traced, ...(one === undefined ? {} : { origin: one }) }),
    );
    const lines = linesOf(header);
    const end = lines.indexOf("");
    expect(lines.slice(0, end).every((line) => line.startsWith("//") && line.length < 400)).toBe(true);
    // What comes after the header is the module that is made without one.
    expect(lines.slice(end)).toEqual(linesOf(bare).slice(linesOf(bare).indexOf("")));
    expect(lines.slice(1, end).join("\n")).not.toMatch(/.\/\/|\/\*|\*\/|<[/!]|[\u202e\u2066\ud800]/u);
    expectHarmless(header);
    expect(isGeneratedModule(header)).toBe(true);
    await loadEmitter(header);
    const types = emitterTypes({ traced, origin });
    const file = ts.createSourceFile("made.d.ts", types, ts.ScriptTarget.ES2022);
    const plainFile = ts.createSourceFile("made.d.ts", emitterTypes({ traced }), ts.ScriptTarget.ES2022);
    expect((file as unknown as { parseDiagnostics: readonly unknown[] }).parseDiagnostics).toEqual([]);
    expect(file.statements.length).toBe(plainFile.statements.length);
  }
  expect("broken" in globalThis).toBe(false);
});

test("a key that a dialect's author made up is named in no comment", () => {
  const extraCodes = explicit.extraCodes.map((code) => ({
    ...code,
    key: "codes.M93 */ globalThis.broken = true; /*",
  }));
  const source = generateEmitter({ ...explicit, extraCodes }, { traced: true });
  expectHarmless(source);
  expect(source).toContain("/* motion.rapid */");
  expect(source).not.toMatch(/\/\* codes\.M93 \*\//);
});

test("the first lines say that nothing has been proved", () => {
  const [first] = generateEmitter(plain, { traced: false }).split("\n");
  expect(first).toBe(
    "// Nothing that this module prints has been guarded or proved: it writes whatever sequence it is given.",
  );
});

test("the check for harm can fail", () => {
  const source = generateEmitter(plain, { traced: false });
  for (const text of [
    "globalThis.broken = true;",
    'eval("1");',
    'import "x";',
    "write(`${1}`);",
    "const = 1;",
  ])
    expect(() => expectHarmless(`${source}\n${text}\n`), text).toThrow();
});
