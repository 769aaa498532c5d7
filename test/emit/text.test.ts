import fc from "fast-check";
import { expect, test } from "vitest";
import type { Format } from "#dialect";
import { plain } from "./formats.ts";
import { emitterOf, textOf } from "./writing.ts";

/** A few of what a text from a job may hold: what ends a comment, line ends of all kinds, halves of pairs, signs of direction. */
const nasty = fc.string({
  unit: fc.oneof(
    fc.constantFrom(
      "(",
      ")",
      "%",
      ":",
      ";",
      "*",
      "\n",
      "\r",
      "\u2028",
      "\u0085",
      "\u0000",
      "\ud800",
      "\ufeff",
      "\u202e",
      "ß",
      "é",
      "𝄞",
      " ",
    ),
    fc.string({ minLength: 1, maxLength: 1, unit: "binary" }),
  ),
});

const formats: Format[] = (["upper", "ascii", "utf-8"] as const).map((characters) => ({
  ...plain,
  characters,
  comments: { style: "parentheses", longest: 30, place: "anywhere" },
}));

test.each(formats.map((format) => [format.characters, format] as const))(
  "a message keeps to its comment and to its characters: %s",
  async (characters, format) => {
    const emitter = await emitterOf(format);
    const allowed = { upper: /^[ -_]*$/u, ascii: /^[ -~]*$/u, "utf-8": /^[^\p{C}\p{Zl}\p{Zp}]*$/u }[
      characters
    ];
    await fc.assert(
      fc.asyncProperty(nasty, async (text) => {
        const written = await textOf(format, [{ kind: "message", text }], { fragment: true });
        const clean = emitter.cleanText(text);
        expect(written).toBe(`(MSG, ${clean})\n`);
        expect(clean).toMatch(allowed);
        expect(clean).not.toMatch(/[()%:;\n\r]|^\s|\s$|\s\s/u);
        expect(Array.from(`MSG, ${clean}`).length).toBeLessThanOrEqual(30);
        expect(emitter.cleanText(clean)).toBe(clean);
      }),
      { numRuns: 500 },
    );
  },
);

test("letters keep what can be kept of them", async () => {
  const [upper, ascii, utf8] = await Promise.all(formats.map((format) => emitterOf(format)));
  const text = 'Tool 3: 1/4" (long) – öl; straße';
  expect(upper.cleanText(text)).toBe('TOOL 3 1/4" [LONG] OL, ST');
  expect(ascii.cleanText(text)).toBe('Tool 3 1/4" [long] ol, st');
  expect(utf8.cleanText(text)).toBe('Tool 3 1/4" [long] – öl,');
});

test("a text longer than a chunk is written whole", async () => {
  const format: Format = {
    ...plain,
    characters: "utf-8",
    comments: { style: "parentheses", longest: 200_000, place: "anywhere" },
  };
  const text = "Größe ".repeat(20_000).trim();
  expect(
    await textOf(format, [{ kind: "message", text }, { kind: "spindle-stop" }], { fragment: true }),
  ).toBe(`(MSG, ${text})\nM5\n`);
});
