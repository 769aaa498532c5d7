import ts from "typescript";
import { describe, expect, test } from "vitest";
import type { Format } from "#dialect";
import { generateEmitter, loadEmitter } from "#emit";
// The lists that the generator's constructors are bound to; nothing outside the stage needs them.
import { constructors, functionNames, globals, methods } from "../../core/5-emit/calls.ts";
import { characterNames, names } from "../../core/5-emit/names.ts";
import { explicit, leastIncrement, plain } from "./formats.ts";

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

/** What is declared, named and called in a generated module. */
function inspect(source: string): {
  names: Set<string>;
  called: Set<string>;
  errors: number;
  imports: number;
} {
  const file = ts.createSourceFile("emitter.js", source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const found = { names: new Set<string>(), called: new Set<string>(), errors: 0, imports: 0 };
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) found.names.add(node.text);
    if (ts.isCallExpression(node) || ts.isNewExpression(node))
      found.called.add(node.expression.getText(file).replace(/^.*\./su, ""));
    if (
      ts.isImportDeclaration(node) ||
      (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
    )
      found.imports++;
    if (ts.isTaggedTemplateExpression(node) || ts.isTemplateLiteral(node)) found.errors++;
    ts.forEachChild(node, visit);
  };
  visit(file);
  found.errors += (file as unknown as { parseDiagnostics: readonly unknown[] }).parseDiagnostics.length;
  return found;
}

const printer = /^writeDecimals\d+(Style\d+)?$/u;
const known = new Set<string>([
  ...names,
  ...characterNames,
  ...functionNames(),
  ...constructors,
  ...methods,
  ...globals,
  ...globals.flatMap((one) => one.split(".")),
  "Math",
  "undefined",
]);
const callable = new Set<string>([...functionNames(), ...constructors, ...methods, "Number", "from"]);

function expectHarmless(source: string): void {
  const found = inspect(source);
  expect(found.errors).toBe(0);
  expect(found.imports).toBe(0);
  expect([...found.names].filter((name) => !known.has(name) && !printer.test(name))).toEqual([]);
  expect([...found.called].filter((name) => !callable.has(name) && !printer.test(name))).toEqual([]);
}

const formats = { plain, explicit, leastIncrement };

describe.each(Object.entries(formats))("%s", (_name, format) => {
  test("the module names and calls only what the two lists hold", () => {
    expectHarmless(generateEmitter(format, { traced: false }));
    expectHarmless(generateEmitter(format, { traced: true }));
  });

  test.each(hostile)("no text of the dialect becomes code: %j", async (text) => {
    for (const traced of [false, true]) {
      const everywhere = withTexts(format, () => text) as Format;
      // All texts at once decide many branches away, so that each stands alone, too.
      const sources = new Set([
        generateEmitter(everywhere, { traced }),
        ...pathsOf(format).map((path) =>
          generateEmitter(withTexts(format, (one, at) => (at === path ? text : one)) as Format, { traced }),
        ),
      ]);
      for (const source of sources) expectHarmless(source);
      const module: object = await loadEmitter(generateEmitter(everywhere, { traced }));
      expect(Object.keys(module).sort()).toEqual([
        "cleanText",
        "emitUnproved",
        ...(traced ? ["traceKeys"] : []),
      ]);
    }
    expect("broken" in globalThis).toBe(false);
  });
});

test("the first lines say that nothing has been proved", () => {
  const [first] = generateEmitter(plain, { traced: false }).split("\n");
  expect(first).toBe(
    "// Nothing that this module prints has been guarded or proved: it writes whatever sequence it is given.",
  );
});
