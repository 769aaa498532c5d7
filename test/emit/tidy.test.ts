import ts from "typescript";
import { expect, test } from "vitest";
// Tidying is the generator's own affair; what it does is shown on small functions of the kind that it gets.
import { tidy } from "../../core/5-emit/tidy.ts";
import { dialectLoader, loadDialect, quarryRouter } from "../support/dialects.ts";
import { generateEmitter } from "#emit";
import { explicit, plain } from "./formats.ts";
import { leastIncrement } from "./least-increment.ts";

/** Functions as text, tidied, as text without line ends. */
function tidied(source: string): string[] {
  const file = ts.createSourceFile("a.js", source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const functions = file.statements.filter(ts.isFunctionDeclaration);
  const printer = ts.createPrinter({ removeComments: true });
  return tidy(functions).map((one) =>
    printer.printNode(ts.EmitHint.Unspecified, one, file).replace(/\s+/g, " "),
  );
}

const cases: readonly (readonly [what: string, before: string, after: string])[] = [
  [
    "nothing stands behind a throw",
    `function settle(state) { throw fault("a"); state.at = 1; }`,
    `function settle(state) { throw fault("a"); }`,
  ],
  [
    "literals that are written in one go are one",
    `function settle(state, at) { at = write(state, at, "G53 "); at = write(state, at, "G0 "); return at; }`,
    `function settle(state, at) { at = write(state, at, "G53 G0 "); return at; }`,
  ],
  [
    "literals of which one is chosen at run time stay apart",
    `function settle(state, at) { at = write(state, at, "A"); at = write(state, at, state.on ? "1" : "0"); return at; }`,
    `function settle(state, at) { at = write(state, at, "A"); at = write(state, at, state.on ? "1" : "0"); return at; }`,
  ],
  [
    "a test in a test is one, with what each of them needs in parentheses",
    `function settle(a, b, c) { if (a || b) if (c) run(); }`,
    `function settle(a, b, c) { if ((a || b) && c) run(); }`,
  ],
  [
    "a test with an alternative stays",
    `function settle(a, b) { if (a) { if (b) run(); } else run(); }`,
    `function settle(a, b) { if (a) { if (b) run(); } else run(); }`,
  ],
  [
    "a switch that only throws throws",
    `function settle(step) { switch (step.kind) { default: throw fault("a"); } }`,
    `function settle(step) { throw fault("a"); }`,
  ],
];

test.each(cases)("%s", (_what, before, after) => {
  expect(tidied(before)).toEqual([after]);
});

test("what nobody reads is not kept, and what was kept for its sake neither", () => {
  const source = `
function createState(options) {
  const start = { first: 0, word: { key: 0 } };
  const state = { first: 0, second: 1, third: 2, key: 3, at: options.at };
  return state;
}
function settle(state) {
  state.first = state.second;
  state.second += 1;
  if (state.at > 0) state.second = 5;
  if (state.at > 0) state.first = 5; else run();
  state.third = next(state);
  const word = { key: 1 };
  state.key = 4;
  return word.key + state.at;
}`;
  expect(tidied(source)).toEqual([
    // Only the state loses fields; an object of another name keeps one that is called the same.
    "function createState(options) { const start = { first: 0, word: { key: 0 } }; const state = { third: 2, at: options.at }; return state; }",
    "function settle(state) { if (!(state.at > 0)) run(); state.third = next(state); const word = { key: 1 }; return word.key + state.at; }",
  ]);
});

test("parameters that are not used go, with their values, unless a value does something", () => {
  const source = `
function settle(state, group, text) { return text; }
function finish(state, group) { return state; }
function take(state, step) { settle(state, 1, "a"); finish(state, next()); }
export function write(state, other) { return state; }`;
  expect(tidied(source)).toEqual([
    "function settle(state, text) { return text; }",
    "function finish(state, group) { return state; }",
    'function take(state, step) { settle(state, "a"); finish(state, next()); }',
    "export function write(state, other) { return state; }",
  ]);
});

const formats = [plain, explicit, leastIncrement];

test("no generated emitter keeps what it doesn't read, or says what can't be reached", async () => {
  const loaded = await Promise.all([...dialectLoader().shipped, quarryRouter].map(loadDialect));
  for (const format of [...formats, ...loaded.map((one) => one.format)])
    for (const traced of [false, true]) {
      const source = generateEmitter(format, { traced });
      const [, fields] = /const state = \{\n(.*?)\n {4}\};/su.exec(source) ?? [];
      const names = [...fields.matchAll(/^ {8}(\w+)/gmu)].map(([, name]) => name);
      expect(names.length).toBeGreaterThan(20);
      const unread = names.filter(
        (name) => !new RegExp(`state\\.${name}\\b(?! (=|\\+=|-=) )`, "u").test(source),
      );
      expect(unread).toEqual([]);
      expect(source).not.toMatch(/^( +)(?:throw|return) .*\n\1\S/mu);
      expect(source).not.toMatch(/^( +)at = write\(state, at, "[^"]*"\);\n\1at = write\(state, at, "/mu);
    }
});
