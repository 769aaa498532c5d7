import { describe, expect, test } from "vitest";
import type { Format } from "#dialect";
import { generateEmitter, loadEmitter } from "#emit";
import { explicit, leastIncrement, plain } from "./formats.ts";
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
