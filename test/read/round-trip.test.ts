import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Batch, UnitSystem } from "#base";
import { rowKind } from "#base";
import type { Format } from "#dialect";
import { generateEmitter, loadEmitter } from "#emit";
import { format, numberFormats } from "./formats.ts";
import { randomSequence } from "./random-sequence.ts";
import type { Row } from "./support.ts";
import { formatWith, readText } from "./support.ts";

const { codes, modal, cycles, arc } = format;

/** The emitter writes an idiom for each extra code of the fixture. */
const idioms: Format["idioms"] = {
  ...format.idioms,
  "wait-signal": {
    blocks: [
      [
        { literal: "M94 P" },
        { value: "signal" },
        { literal: " R" },
        { value: "level" },
        { literal: " Q" },
        { value: "timeout" },
      ],
    ],
  },
  "output-on": { blocks: [[{ literal: "M20 P" }, { value: "output" }]] },
  "output-off": { blocks: [[{ literal: "M21 P" }, { value: "output" }]] },
  release: { blocks: [[{ literal: "M20 P7" }]] },
};

// A sequence made at random has no sections.
const own = formatWith({ idioms, blockNumber: null });
const with_ = (change: Partial<Format>): Format => ({ ...own, ...change });
const cyclesWith = (change: Partial<NonNullable<typeof cycles>>): Format["cycles"] =>
  cycles && { ...cycles, ...change };
const implied = (suppressed: "leading" | "trailing" | "none"): Format["numbers"] => ({
  ...numberFormats({ point: "never", suppressed, digits: 9 }),
  speed: format.numbers.speed,
});

/** Dialects that differ in what a text looks like; each must read back as what was written. */
const dialects: Readonly<Record<string, Format>> = {
  "as short as it can be": own,
  "every word in each block": with_({
    modal: {
      motion: "each-block",
      axes: "all",
      arcEnd: "both",
      arcCentre: "both",
      feed: "each-block",
      speed: "each-start",
    },
    cycles: cyclesWith({ repeat: "all" }),
    numbers: numberFormats({ point: "always", trailingZeros: "keep" }),
  }),
  "feed after rapids, modes apart": with_({
    modal: { ...modal, feed: "after-rapid", arcEnd: "both" },
    modes: "apart",
  }),
  "one G word a block": with_({ gWords: "one", mWords: 1 }),
  "arcs by radius": with_({ arc: { ...arc, form: "radius" } }),
  "absolute centres": with_({ arc: { ...arc, form: "absolute-centre" } }),
  "turns in a word": with_({ arc: { ...arc, turnsWord: "L" } }),
  "tolerances of the path": with_({ toleranceWord: "P" }),
  "implied points, leading zeros left out": with_({ numbers: implied("leading") }),
  "implied points, trailing zeros left out": with_({ numbers: implied("trailing") }),
  "implied points, all digits": with_({ numbers: implied("none") }),
  "points with one zero, plus signs, no leading zero": with_({
    numbers: numberFormats({ point: "always", trailingZeros: "one", plus: true, leadingZero: false }),
  }),
  "tight text with delimiters": with_({
    separator: "",
    delimiter: "percent",
    lineEnd: "\r\n",
    programNumber: { letter: "O", digits: 4, from: 1, to: 9999 },
    blockNumber: { on: "all", start: 1, step: 1, to: 99, width: 2 },
  }),
  "end of block signs": with_({
    blockEnd: "*",
    separator: "\t",
    lineEnd: "\r",
    programNumber: { letter: ":", digits: 4, from: 1, to: 9999 },
  }),
  "the number on the delimiter": with_({
    delimiter: "percent",
    programNumber: { letter: "%", digits: 1, from: 1, to: 9999 },
  }),
  "starts first, upper case": with_({
    spindle: { order: "start-first", blocks: "together" },
    tools: {
      blocks: "together",
      order: "change-first",
      preselect: undefined,
      changedBy: "code",
      named: true,
      empty: undefined,
    },
    characters: "upper",
    stopsAct: "after-motion",
  }),
  "everything apart": with_({
    spindle: { order: "start-first", blocks: "apart" },
    tools: {
      blocks: "apart",
      order: "select-first",
      preselect: undefined,
      changedBy: "code",
      named: true,
      empty: undefined,
    },
    lengthOffset: { ...format.lengthOffset!, form: "own-block" },
    modes: "apart",
    mWords: 1,
  }),
  "speed first, apart": with_({ spindle: { order: "speed-first", blocks: "apart" } }),
  "levels that both count from the initial level": with_({ cycles: cyclesWith({ levels: "from-initial" }) }),
  "relative levels, no return words": with_({
    cycles: cyclesWith({ levels: "relative", levelWithout: "initial", endedBy: "cancel-code" }),
    codes: { ...codes, cycleReturn: { initial: null, retract: null } },
  }),
  "reference by name alone": with_({ referenceIntermediate: "none" }),
  "millisecond dwells in another word": with_({
    dwell: { word: "X", unit: "ms", blocks: "apart" },
    cycles: cyclesWith({ dwellUnit: "ms" }),
    numbers: { ...format.numbers, dwell: format.numbers.speed, cycleDwell: format.numbers.speed },
  }),
  "other order of words": with_({ order: [..."NMGTSFXYZABCIJKRQLPHD"] }),
};

function describeBatch(batch: Batch): Partial<Row>[] {
  return Array.from({ length: batch.count }, (_, row) =>
    comparable({
      kind: batch.kind[row],
      frame: batch.frame[row],
      known: batch.known[row],
      place: [batch.x[row], batch.y[row], batch.z[row], ...(batch.abc ?? []).map((column) => column[row])],
      feed: batch.feed[row],
      c1: batch.c1[row],
      c2: batch.c2[row],
      turns: batch.turns[row],
      step: batch.aside[row] < 0 ? undefined : batch.asides[batch.aside[row]],
    }),
  );
}

/** What a comparison looks at: not what a row states, where it stands, or the feed of a rapid. */
function comparable(row: Omit<Row, "stated" | "source">): Partial<Row> {
  if (row.step) return { step: row.step };
  const { kind, frame, known, feed, c1, c2, turns } = row;
  const place = [0, 1, 2, 3, 4, 5].map((axis) => row.place[axis] ?? 0);
  return { kind, frame, known, place, feed: kind === rowKind.rapid ? 0 : feed, c1, c2, turns };
}

async function emitterOf(dialect: Format): Promise<(batch: Batch, units: UnitSystem) => Uint8Array> {
  const emitter = await loadEmitter(generateEmitter(dialect, { traced: false }));
  return (batch, units) => {
    const chunks: number[] = [];
    for (const chunk of emitter.emitUnproved([batch], { units, header: ["PLATE", ""] }))
      chunks.push(...chunk);
    return Uint8Array.from(chunks);
  };
}

describe("what is emitted reads back one to one, without a finding", () => {
  test.each(Object.entries(dialects))("%s", async (_name, dialect) => {
    const emit = await emitterOf(dialect);
    fc.assert(
      fc.property(
        fc.integer(),
        fc.integer({ min: 0, max: 120 }),
        fc.boolean(),
        fc.constantFrom<UnitSystem>("mm", "inch"),
        fc.constantFrom(7, 4096),
        (seed, size, rotary, units, chunk) => {
          const batch = randomSequence(dialect, units, seed, size, rotary);
          const text = emit(batch, units);
          const read = readText(text, { format: dialect, options: { units }, chunk });
          expect(read.findings).toEqual([]);
          expect(read.rows.map(comparable)).toEqual(describeBatch(batch));
        },
      ),
      // An increment of 0 behind a length offset: Z is named and does not move.
      { numRuns: 40, examples: [[-1521385410, 101, true, "mm", 7]] },
    );
  });
});
