import { describe, expect, test } from "vitest";
import type { Dialect } from "#dialect";
import { resolveText } from "./findings.ts";

async function withIdiom(
  name: string,
  template: string,
): Promise<{ dialect: Dialect | undefined; lines: readonly string[]; messages: string }> {
  const text = `dialect: own\nextends: explicit-words\nidioms: { ${name}: ${JSON.stringify(template)} }\n`;
  const { dialect, lines, findings } = await resolveText(text);
  return { dialect, lines, messages: findings.map(({ message }) => message).join("\n") };
}

test("a file without comments takes away the message that it would inherit", async () => {
  const { dialect, lines } = await resolveText(
    "dialect: own\nextends: iso-6983\ncomments: { style: none }\n",
  );
  expect(lines.filter((line) => line.includes("idioms.message"))).toEqual([]);
  expect(dialect?.format.idioms.message).toBeUndefined();
  // Otherwise the sequence would have a message that no word says.
  expect(dialect?.capabilities.words["idioms.message"]).toBe(false);
});

describe("a template is literal text and plain names", () => {
  test.each([
    ["a block helper", "M94 P{{#if signal}}1{{/if}}", "a block is not allowed"],
    ["a loop", "M94 {{#each signal}}P1{{/each}}", "a block is not allowed"],
    ["a partial", "M94 P{{> signal}}", "a partial is not allowed"],
    ["a helper call", "M94 P{{lookup signal 1}}", "only the plain name"],
    ["a named argument", "M94 P{{signal a=1}}", "only the plain name"],
    ["a path", "M94 P{{signal.constructor}}", "only the plain name"],
    ["a path upwards", "M94 P{{../signal}}", "only the plain name"],
    ["this", "M94 P{{this}}", "{{this}} is not a value"],
    ["the constructor", "M94 P{{constructor}}", "{{constructor}} is not a value"],
    ["three braces", "M94 P{{{signal}}}", "only the plain name"],
    ["an ampersand", "M94 P{{&signal}}", "only the plain name"],
    ["a data variable", "M94 P{{@root}}", "only the plain name"],
    ["a string", 'M94 P{{"signal"}}', "only the plain name"],
    ["a number", "M94 P{{1}}", "only the plain name"],
    ["whitespace control", "M94 P{{~signal~}}", "only the plain name"],
    ["blanks in the braces", "M94 P{{ signal }}", "only the plain name"],
    ["a segment in brackets", "M94 P{{[signal]}}", "only the plain name"],
    ["a template comment", "M94 P{{! note }}", "a template comment is not allowed"],
    ["a decorator", "M94 P{{* signal}}", "a decorator is not allowed"],
    ["escaped braces", "M94 P\\{{signal}}", "a backslash is not allowed"],
    ["braces that do not close", "M94 P{{signal", "the braces of the template do not close"],
    [
      "an unknown value",
      "M94 P{{signl}} R{{level}}",
      "{{signl}} is not a value of this idiom. Did you mean `signal`?",
    ],
    ["a value of another idiom", "M94 P{{signal}} R{{output}}", "{{output}} is not a value of this idiom"],
  ])("%s is refused", async (_what, template, message) => {
    const { dialect, lines, messages } = await withIdiom("wait-signal", template);
    expect(dialect).toBeUndefined();
    expect(lines).toEqual(["dialect/template idioms.wait-signal @ own.yaml:3"]);
    expect(messages).toContain(message);
  });

  test.each([
    ["a value that is no whole number", "M94 P1{{signal}} R{{level}}", "must be the whole number of a word"],
    ["two values in one word", "M94 P{{signal}}{{level}}", "must be the whole number of a word"],
    ["a letter without a number", "M94 P R{{level}}", "the word P has no number"],
    ["small letters", "m94 p{{signal}} r{{level}}", "is not made of words"],
    ["quotes and a backtick", "M94 P{{signal}} R{{level}}`\"'", "is not made of words"],
    ["an interpolation", "M94 P{{signal}} R{{level}} ${alert(1)}", "is not made of words"],
    ["a comment", "M94 (open) P{{signal}} R{{level}}", "is not made of words"],
    ["a semicolon", "M94 P{{signal}} R{{level}};", "is not made of words"],
    ["a variable", "M94 P#1 R{{level}}", "is not made of words"],
    ["block delete", "/M94 P{{signal}} R{{level}}", "is not made of words"],
  ])("%s is refused", async (_what, template, message) => {
    const { dialect, lines, messages } = await withIdiom("wait-signal", template);
    expect(dialect).toBeUndefined();
    expect(lines[0]).toBe("dialect/template idioms.wait-signal @ own.yaml:3");
    expect(messages).toContain(message);
  });
});

describe("an idiom is one action", () => {
  test.each([
    ["release", "M21 M22", "has one code, this one has 2"],
    ["release", "P1", "has one code, this one has 0"],
    ["release", "G0 M21", "has one code, this one has 2"],
    ["release", "M21 Z0", "the word Z would move an axis"],
    ["release", "M21 S0", "the word S would move an axis or set something else"],
    ["release", "N10 M21", "the word N would move an axis"],
    ["release", "M21 P1 P2", "the word P stands twice"],
    ["release", "M21.55", "is not a code"],
    ["release", "M-21", "is not a code"],
    ["wait-signal", "M94 R{{level}}", "does not say {{signal}}"],
    ["wait-signal", "M{{signal}}", "the number of the code is fixed"],
    ["wait-signal", "M94 P{{signal}} Q{{signal}}", "{{signal}} stands twice"],
    ["output-on", "M95", "does not say {{output}}"],
  ])("%s: %s", async (name, template, message) => {
    const { dialect, lines, messages } = await withIdiom(name, template);
    expect(dialect).toBeUndefined();
    expect(lines).toContain(`dialect/idiom-meaning idioms.${name} @ own.yaml:3`);
    expect(messages).toContain(message);
  });

  test("a code with its words is what the reader will know", async () => {
    const { dialect, lines } = await withIdiom("wait-signal", "M94 P{{signal}}  L1 R{{level}} Q{{timeout}}");
    expect(lines).toEqual(["dialect/order blocks.order @ iso-6983.dialect.yaml:?"]);
    expect(dialect).toBeUndefined();
    const placed = await withIdiom("wait-signal", "M94 P{{signal}}  I1  R{{level}} Q{{timeout}}");
    expect(placed.dialect?.format.extraCodes).toEqual([
      {
        letter: "M",
        value: 940,
        meaning: { kind: "wait" },
        words: { P: "signal", I: 1, R: "level", Q: "timeout" },
        key: "idioms.wait-signal",
      },
    ]);
    // The dialect's separator stands between the words, whatever the file has there.
    expect(placed.dialect?.format.idioms["wait-signal"]).toEqual({
      blocks: [
        [
          { literal: "M94 P" },
          { value: "signal" },
          { literal: " I1 R" },
          { value: "level" },
          { literal: " Q" },
          { value: "timeout" },
        ],
      ],
    });
  });

  test("words that need no value", async () => {
    const { dialect } = await withIdiom("release", "M21 P-2.5");
    expect(dialect?.format.idioms.release).toEqual({ blocks: [[{ literal: "M21 P-2.5" }]] });
    expect(dialect?.format.extraCodes.find(({ key }) => key === "idioms.release")).toEqual({
      letter: "M",
      value: 210,
      meaning: { kind: "auxiliary", action: "release" },
      words: { P: -2.5 },
      key: "idioms.release",
    });
  });

  test("without a blank between words, where the dialect has none", async () => {
    const { dialect } = await resolveText(
      'dialect: own\nextends: explicit-words\nblocks: { separator: none }\nidioms: { output-on: "M95 P{{output}} Q1", output-off: "M96 P{{output}}" }\n',
    );
    expect(dialect?.format.idioms["output-on"]).toEqual({
      blocks: [[{ literal: "M95P" }, { value: "output" }, { literal: "Q1" }]],
    });
  });

  test("none takes an inherited idiom away", async () => {
    const { dialect } = await resolveText("dialect: own\nextends: rs274ngc\nidioms: { message: none }\n");
    expect(dialect?.format.idioms.message).toBeUndefined();
    expect(dialect?.capabilities.words["idioms.message"]).toBe(false);
  });
});

describe("a message is one whole comment with a mark of its own", () => {
  test.each([
    ["no mark", "({{text}})", "dialect/idiom-meaning"],
    ["no comment", "MSG {{text}}", "dialect/template"],
    ["text behind it", "(MSG {{text}} END)", "dialect/template"],
    ["the text twice", "(MSG {{text}} {{text}})", "dialect/template"],
    ["no text", "(MSG)", "dialect/template"],
    ["a second comment", "(A)(MSG, {{text}})", "dialect/characters"],
    ["a comment that ends early", "(MSG) M30 ({{text}})", "dialect/characters"],
    ["a program delimiter", "(MSG % {{text}})", "dialect/characters"],
    ["another comment style", ";MSG {{text}}", "dialect/template"],
    ["characters that the controller does not know", "(MÜLL, {{text}})", "dialect/characters"],
    ["a block before it", "M30 (MSG, {{text}})", "dialect/template"],
  ])("%s", async (_what, template, rule) => {
    const { dialect, lines } = await withIdiom("message", template);
    expect(dialect).toBeUndefined();
    expect(lines).toEqual([`${rule} idioms.message @ own.yaml:3`]);
  });

  test("a line break cannot come in", async () => {
    const { dialect, lines } = await withIdiom("message", "(MSG,\nM3\n{{text}})");
    expect(dialect).toBeUndefined();
    expect(lines).toEqual(["dialect/characters - @ own.yaml:3"]);
  });

  test("with semicolons", async () => {
    const { dialect, lines } = await resolveText(
      'dialect: own\nextends: rs274ngc\ncomments: { style: semicolon }\nidioms: { message: ";MSG {{text}}" }\n',
    );
    expect(lines).toEqual([]);
    expect(dialect?.format.idioms.message).toEqual({ blocks: [[{ literal: ";MSG " }, { value: "text" }]] });
  });
});

test("effects of a builder's code stand under its code, however it is padded", async () => {
  const { dialect, lines } = await resolveText(
    "dialect: own\nextends: rs274ngc\ncodes: { M027: { does: conveyor on, position: unknown, spindle: unchanged, coolant: off, length-offset: unchanged } }\n",
  );
  expect(lines).toEqual([]);
  expect(dialect?.machine.opaqueEffects).toEqual({
    M27: { position: "unknown", spindle: "unchanged", coolant: "off", lengthOffset: "unchanged" },
  });
  expect(dialect?.format.extraCodes.at(-1)).toMatchObject({
    letter: "M",
    value: 270,
    meaning: { action: "opaque" },
  });
});
