import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { postText } from "../../core/index.ts";
import type { ReadyDialect } from "../../core/index.ts";
import { dialectLoader } from "../support/dialects.ts";
import { ready } from "../support/ready.ts";
import { formatWith, head, readText } from "./support.ts";
import type { Read, Reading } from "./support.ts";

/** Lines with all axes and with some, small and large numbers, a second feed, and what stands between runs. */
const moves = [
  { rapid: { x: 0, y: 0 } },
  { line: { z: -1 }, feed: 900 },
  ...Array.from({ length: 24 }, (_, index) => ({
    line: { x: index * 7.125, y: -index / 1000, ...(index % 3 === 0 ? { z: -1 - index / 100 } : {}) },
  })),
  { line: { x: 3 }, feed: 450.5 },
  { line: { y: 0 } },
  { rapid: { z: 15 } },
  { rapid: { x: 9 } },
  { line: { z: -2 } },
  { line: { x: 10, y: 10 } },
];
const job = JSON.stringify({
  job: "1",
  name: "runs",
  program: { number: 1000 },
  units: "mm",
  clearance: 15,
  tools: [{ number: 1, kind: "end-mill", diameter: 6 }],
  operations: [
    { id: "op10", name: "lines", tool: 1, spindle: { rpm: 9000, direction: "cw" }, coolant: "off", moves },
  ],
});

/** The same text read in runs and block by block. */
function bothWays(text: string, reading: Reading): [Read, Read] {
  const options = { units: "mm" as const, ...reading.options };
  return [
    readText(text, { ...reading, options }),
    readText(text, { ...reading, options: { ...options, blockByBlock: true } }),
  ];
}

/** What a slip of the hand may put into a block. */
const slips = fc.constantFrom(
  ..."XYZFGNMIA0123456789.-+ \n\r(%;/$",
  "G1",
  "G91",
  "X1",
  "00",
  ".0",
  "123456789",
);
const edits = fc.array(fc.record({ at: fc.nat(), cut: fc.nat(3), put: slips }), {
  minLength: 1,
  maxLength: 4,
});

function edited(text: string, changes: readonly { at: number; cut: number; put: string }[]): string {
  let result = text;
  for (const { at, cut, put } of changes) {
    const place = at % (result.length + 1);
    result = result.slice(0, place) + put + result.slice(place + cut);
  }
  return result;
}

describe.each(dialectLoader().shipped)("lines of %s read in runs as they do block by block", (name) => {
  let made: ReadyDialect;
  let program: string;
  beforeAll(async () => {
    made = await ready(name);
    program = postText({ job, options: { spindleHolds: 1 } }, made).program ?? "";
  });

  test("as they are written", () => {
    const { format, machine } = made.dialect;
    const [runs, blocks] = bothWays(program, { format, machine });
    expect(runs.rows.length).toBeGreaterThan(moves.length);
    expect(runs).toEqual(blocks);
  });

  test("whatever byte is another", () => {
    const { format, machine } = made.dialect;
    fc.assert(
      fc.property(edits, (changes) => {
        const [runs, blocks] = bothWays(edited(program, changes), { format, machine });
        expect(runs).toEqual(blocks);
      }),
      { numRuns: 150 },
    );
  });
});

describe("a run ends before what it may not read", () => {
  const start = `${head}\nG0 X0 Y0\nG43 Z5 H1\nG1 Z-1 F100\n`;
  test.each([
    ["a number of more digits than an int32 has", "X1234567890", {}],
    ["a number that does not fit its address", "X12345.5", {}],
    ["a tenth of the grid", "X1.0005", {}],
    ["a zero at the end", "X1.50", {}],
    ["zeros before a number", "X0001", {}],
    ["a feed of zero", "X1 F0", {}],
    ["a feed below zero", "X1 F-10", {}],
    ["a word twice", "X1 X2", {}],
    ["another motion", "G0 X1", {}],
    ["a word that nothing asks for", "X1 P2", {}],
    ["a word out of order", "Y1 X1", {}],
    ["a block number that only some have", "N7 X1", {}],
    ["a block without axes", "F200", {}],
    ["words without their blank", "X1Y2", {}],
    ["a motion word in each block", "X1", { modal: { motion: "each-block" } }],
    ["all axes in each block", "X1", { modal: { axes: "all" } }],
    ["a feed in each block", "X1", { modal: { feed: "each-block" } }],
    ["a longer block than the dialect writes", "X1.125 Y2.125 Z3.125", { longest: 12 }],
    ["more words than the dialect writes", "X1 Y2 Z3", { mostWords: 2 }],
  ] as [string, string, Partial<Record<string, object | number>>][])(
    "%s",
    (_, block, { modal = {}, ...rest }: Partial<Record<string, object | number>>) => {
      const plain = formatWith({ separator: " ", mostWords: 0, ...rest });
      const format = { ...plain, modal: { ...plain.modal, ...(modal as object) } };
      const text = `${start}X2 Y2\n${block}\nX3 Y3 Z-2\nX4\nM2\n`;
      const [runs, blocks] = bothWays(text, { format });
      expect(runs).toEqual(blocks);
      expect(runs.rows.length).toBeGreaterThan(8);
    },
  );
});
