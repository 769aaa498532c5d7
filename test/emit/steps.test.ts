import { describe, expect, test } from "vitest";
import type { Batch, Step } from "#base";
import { axisBit } from "#base";
import type { Format } from "#dialect";
import { code, explicit, plain } from "./formats.ts";
import { leastIncrement } from "./least-increment.ts";
import { cases } from "./step-cases.ts";
import type { Parts } from "./step-cases.ts";
import { batchOf, bytesOf, emitterOf, line, linesOf, mm, rapid, textOf } from "./writing.ts";

describe.each([
  ["plain", plain],
  ["explicit", explicit],
  ["least", leastIncrement],
] as const)("%s", (name, format) => {
  test.each(Object.entries(cases))("%s", async (_kind, one) => {
    const expected = one[name];
    if (typeof expected === "string") await expect(linesOf(format, one.parts)).rejects.toThrow(expected);
    else expect(await linesOf(format, one.parts)).toEqual(expected);
  });
});

test("text frame: delimiter, program number, header, blocks, delimiter", async () => {
  const parts: Parts = [{ kind: "program-start", number: 7 }, { kind: "spindle-stop" }];
  expect(await textOf(explicit, parts, { header: ["Weather plate", "", "(b)"] })).toBe(
    "%\r\nO0007\r\n(WEATHER PLATE)\r\n([B])\r\nN10 M05\r\n%\r\n",
  );
  // Where `%` carries the number it is the first delimiter, and the last line has no line end.
  expect(await textOf(leastIncrement, parts, { header: ["not shown"] })).toBe("%0007\nN001M05*\n%");
  expect(
    await textOf({ ...plain, delimiter: "none", lastLineEnd: false }, [
      { kind: "program-start", number: 0 },
      { kind: "spindle-stop" },
    ]),
  ).toBe("M5");
  expect(
    await textOf(
      { ...plain, comments: { style: "semicolon", longest: 9, place: "anywhere" } },
      [{ kind: "program-start", number: 0 }],
      { header: ["Weather plate"] },
    ),
  ).toBe("%\n; WEATHER\n%\n");
  await expect(textOf(plain, parts)).rejects.toThrow("file.program-number");
});

const startModes: Parts = [
  { kind: "feed-mode", value: "per-minute" },
  { kind: "overrides", value: "on" },
  { kind: "plane", value: "xy" },
  { kind: "units", value: "mm" },
  { kind: "compensation", value: "off", offset: 0 },
  { kind: "length-offset", number: 0 },
  { kind: "work-offset", number: 1 },
  { kind: "path", value: "blend" },
  { kind: "distance", value: "absolute" },
  { kind: "local-shift", value: "off" },
  { kind: "cycle", value: "off" },
];

test("consecutive modes share a block while the order of execution (NISTIR 6556 Table 8), the length and the M words allow it", async () => {
  expect(await linesOf(plain, startModes)).toEqual(["G94 G17 G21 G40 G49 G54 G64 G90 G92.2 G80 M48"]);
  const split: Parts = [
    { kind: "plane", value: "xy" },
    { kind: "feed-mode", value: "per-minute" },
    { kind: "plane", value: "xy" },
    { kind: "plane", value: "zx" },
  ];
  expect(await linesOf(plain, split)).toEqual(["G17", "G94 G17", "G18"]);
  const narrow: Format = {
    ...plain,
    longest: 15,
    blockNumber: { on: "all", start: 1, step: 1, to: 99, width: 0 },
  };
  expect(await linesOf(narrow, startModes)).toEqual([
    "N1 G94 G17 M48",
    "N2 G21 G40 G49",
    "N3 G54 G64 G90",
    "N4 G92.2 G80",
  ]);
  for (const one of await linesOf(narrow, startModes)) expect(one.length).toBeLessThanOrEqual(15);
  const byM: Format = {
    ...plain,
    mWords: 1,
    codes: { ...plain.codes, modes: { ...plain.codes.modes, units: { mm: code("M71") } } },
  };
  expect(await linesOf(byM, startModes.slice(0, 4))).toEqual(["G94 G17 M48", "M71"]);
  const mFirst: Format = { ...plain, order: ["N", "M", "G"] };
  expect(await linesOf(mFirst, startModes.slice(0, 3))).toEqual(["M48 G94 G17"]);
  expect((await linesOf({ ...plain, gWords: "one" }, startModes)).length).toBe(startModes.length);
});

test("motion and feed are stated anew behind what makes the controller forget them", async () => {
  const cut = line({ x: 1 }, 300);
  const behind = async (step: Step): Promise<string> => (await linesOf(plain, [cut, step, cut])).at(-1) ?? "";
  expect(await behind({ kind: "change-tool" })).toBe("G1 X1 F300");
  expect(await behind({ kind: "pause", optional: true })).toBe("G1 X1 F300");
  expect(await behind({ kind: "cycle", value: "off" })).toBe("G1 X1");
  expect(await behind({ kind: "reference-return", axes: axisBit.z })).toBe("G1 X1");
  expect(await behind({ kind: "feed-mode", value: "per-minute" })).toBe("X1 F300");
  expect(await behind({ kind: "select-tool", tool: 2 })).toBe("X1");
  expect(await behind({ kind: "message", text: "a" })).toBe("X1");
});

test("block numbers wrap, and mark sections where they mark only those", async () => {
  const cuts = [1, 2, 3, 4].map((x) => line({ x }, 300));
  const wrapping: Format = { ...plain, blockNumber: { on: "all", start: 5, step: 5, to: 12, width: 3 } };
  expect((await linesOf(wrapping, cuts)).map((one) => one.slice(0, 4))).toEqual([
    "N005",
    "N010",
    "N005",
    "N010",
  ]);
  const sections: Format = { ...plain, blockNumber: { on: "sections", start: 1, step: 1, to: 99, width: 0 } };
  const batch = batchOf([
    cuts[0],
    { kind: "select-tool", tool: 2 },
    { kind: "change-tool" },
    cuts[1],
    cuts[2],
  ]);
  batch.sections = [1, 4];
  const numbered = (format: Format): Promise<string[]> => blocksOf(format, batch);
  expect(await numbered(sections)).toEqual(["G1 X1 F300", "N1 T2 M6", "G1 X2 F300", "N2 X3"]);
  const all: Format = { ...sections, blockNumber: { on: "all", start: 1, step: 1, to: 99, width: 0 } };
  expect(await numbered({ ...all, sections: { ...plain.sections, mark: ":" } })).toEqual([
    "N1 G1 X1 F300",
    ":2 T2 M6",
    "N3 G1 X2 F300",
    ":4 X3",
  ]);
  expect(await numbered({ ...plain, blankLines: "between-sections" })).toEqual([
    "G1 X1 F300",
    "",
    "T2 M6",
    "G1 X2 F300",
    "",
    "X3",
  ]);
});

test("one G word a block: the level of a cycle is said before it", async () => {
  const format: Format = { ...plain, gWords: "one" };
  const parts: Parts = [
    {
      kind: "cycle-definition",
      cycle: "drill",
      depth: mm(-1),
      retract: mm(1),
      level: mm(1),
      between: "retract",
      levelStated: true,
      peck: 0,
      dwell: 0,
    },
    { kind: "hole", at: { x: 1, y: 1 }, also: { z: 1 }, feed: 100 },
    { kind: "hole", at: { x: 2 }, also: { y: 1, z: 1 }, feed: 100 },
  ];
  expect(await linesOf(format, parts)).toEqual(["G99", "G81 X1 Y1 Z-1 R1 F100", "X2"]);
});

test("a length offset in a block of its own, or in the tool word", async () => {
  const own: Format = { ...plain, lengthOffset: { ...plain.lengthOffset!, form: "own-block" } };
  expect(await linesOf(own, [{ kind: "length-offset", number: 2 }, rapid({ z: 1 })])).toEqual([
    "G43 H2",
    "G0 Z1",
  ]);
  const inTool: Format = { ...explicit, lengthOffset: { ...explicit.lengthOffset!, form: "in-tool-word" } };
  expect(
    await linesOf(inTool, [{ kind: "select-tool", tool: 3, offset: 5 }, { kind: "change-tool" }]),
  ).toEqual(["N10 T0305 M06"]);
  await expect(
    linesOf(inTool, [{ kind: "select-tool", tool: 100, offset: 1 }, { kind: "change-tool" }]),
  ).rejects.toThrow("numbers.code-width.T");
  await expect(linesOf(inTool, [{ kind: "select-tool", tool: 3 }, { kind: "change-tool" }])).rejects.toThrow(
    "numbers.code-width.T",
  );
  await expect(linesOf(inTool, [{ kind: "length-offset", number: 3 }])).rejects.toThrow("length-offset.on");
  const oneDigit: Format = {
    ...inTool,
    numbers: { ...inTool.numbers, width: { ...inTool.numbers.width, T: 1 } },
  };
  expect(await linesOf(oneDigit, [{ kind: "select-tool", tool: 12 }, { kind: "change-tool" }])).toEqual([
    "N10 T12 M06",
  ]);
});

test("the change code first where the dialect says so", async () => {
  const format: Format = {
    ...plain,
    tools: {
      blocks: "together",
      order: "change-first",
      preselect: undefined,
      changedBy: "code",
      named: true,
      empty: undefined,
    },
  };
  expect(await linesOf(format, [{ kind: "select-tool", tool: 3 }, { kind: "change-tool" }])).toEqual([
    "M6 T3",
  ]);
});

test("one medium alone can't be turned off", async () => {
  await expect(linesOf(plain, [{ kind: "coolant", medium: "mist", on: false }])).rejects.toThrow(
    "coolant.off",
  );
});

/** The blocks of a batch, blank lines too. */
async function blocksOf(format: Format, batch: Batch): Promise<string[]> {
  const emitter = await emitterOf(format);
  const bytes = bytesOf(emitter.emitUnproved([batch], { units: "mm", header: [] }));
  return new TextDecoder()
    .decode(bytes)
    .trimEnd()
    .split("\n")
    .filter((line) => line !== "%");
}
