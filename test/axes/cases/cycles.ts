import type { AxisCase } from "../axis-case.ts";
import { holesJob } from "../holes-job.ts";

const singleMoves = "single moves mean the same to a control with cycles";

const drilling = { kind: "drill", feed: 200 };
const dwelling = { kind: "dwell", dwell: 0.5, feed: 200 };
const pecking = { kind: "peck", peck: 3, feed: 150 };
const toInitial = { kind: "drill", between: "initial", feed: 200 };
const reaming = holesJob([{ kind: "ream", feed: 100 }], undefined, { kind: "reamer", diameter: 6 });
const tapping = holesJob([{ kind: "tap", lead: 1 }], undefined, { kind: "tap", diameter: 6, lead: 1 });

/** Group I: fixed cycles. */
export const cases: readonly AxisCase[] = [
  {
    axis: 102,
    title: "which code pecks, and which breaks chips",
    base: "explicit-words",
    job: holesJob([pecking]),
    one: "cycles: { peck: G83, chip-break: G73 }",
    other: "cycles: { peck: G73, chip-break: G83 }",
  },
  {
    axis: 102,
    title: "a cycle, or no code for it: single moves",
    base: "explicit-words",
    job: holesJob([{ kind: "chip-break", peck: 2, feed: 150 }]),
    one: "cycles: { chip-break: G73 }",
    other: "cycles: { chip-break: none }",
    oneTakes: singleMoves,
  },
  {
    axis: 102,
    title: "fixed cycles, or none at all",
    base: "rs274ngc",
    job: holesJob([drilling]),
    one: "sources: [a control with cycles]",
    other: "cycles: none",
    oneTakes: singleMoves,
  },
  {
    axis: 103,
    title: "depth and retract level absolute, or relative",
    base: "rs274ngc",
    job: holesJob([drilling]),
    one: "cycles: { levels: absolute }",
    other: "cycles: { levels: relative }",
  },
  {
    axis: 104,
    title: "which of two codes is which level",
    base: "rs274ngc",
    job: holesJob([toInitial]),
    one: "cycles: { return: { initial: G98, retract: G99 } }",
    other: "cycles: { return: { initial: G99, retract: G98 } }",
  },
  {
    axis: 104,
    title: "words for both levels, or the retract level without a word: the other is reached by single moves",
    base: "rs274ngc",
    job: holesJob([toInitial]),
    one: "cycles: { return: { initial: G98, retract: G99, without: none } }",
    other: "cycles: { return: { initial: none, retract: none, without: retract } }",
    oneTakes: singleMoves,
  },
  {
    axis: 106,
    title: "the peck in Q, or in K",
    base: "rs274ngc",
    job: holesJob([pecking]),
    one: "cycles: { words: { peck: Q } }",
    other: "cycles: { words: { peck: K } }",
  },
  {
    axis: 108,
    title: "the dwell of a cycle in seconds, or in milliseconds",
    base: "rs274ngc",
    job: holesJob([dwelling]),
    one: "cycles: { words: { dwell-unit: s } }",
    other: "cycles: { words: { dwell-unit: ms } }\nnumbers: { cycle-dwell: 0 }",
  },
  {
    axis: 108,
    title: "the dwell of a cycle in P, or in L",
    base: "rs274ngc",
    job: holesJob([dwelling]),
    one: "cycles: { words: { dwell: P } }",
    other: "cycles: { words: { dwell: L } }",
  },
  {
    axis: 109,
    title: "later holes by their places, or with all words of the cycle",
    base: "rs274ngc",
    job: holesJob([drilling]),
    one: "cycles: { repeat: positions }",
    other: "cycles: { repeat: all }",
  },
  {
    axis: 112,
    title: "a motion word ends a cycle, or the cancel code alone",
    base: "rs274ngc",
    one: "cycles: { ended-by: any-motion }",
    other: "cycles: { ended-by: cancel-code }",
    program: "%\nG21 G17 G90 G94 G54\nG00 X0. Y0.\nZ5.\nG98 G81 X1. Z-1. R1. F100.\nG00 X2.\nM2\n%\n",
    sameText: "the end of a series is written in any case, and motion behind it states its word",
    oneTakes: "it reads its own program without a word",
  },
  {
    axis: 113,
    title: "tapping, or none",
    base: "rs274ngc",
    job: tapping,
    one: "machine: { tapping: { kind: floating, reversal: 1 s } }",
    other: "machine: { tapping: { kind: none } }",
    otherRefuses: "limit/tapping",
  },
  {
    axis: 113,
    title: "the feed of a tap a minute, or a revolution",
    base: "rs274ngc",
    job: tapping.replace('"coolant":"off"', '"coolant":"off","feedMode":"per-revolution"'),
    one: "feed: { per-revolution: G95 }\nnumbers: { feed-per-revolution: { mm: 3, inch: 4 } }",
    other: "feed: { per-revolution: none }",
    oneTakes: "a control with both feed modes takes the other, too",
  },
  {
    axis: 114,
    title: "which bore code feeds out",
    base: "rs274ngc",
    job: reaming,
    one: "cycles: { ream: G85, bore-stop: G86 }",
    other: "cycles: { ream: G86, bore-stop: G85 }",
  },
  {
    axis: 114,
    title: "a reamer out at feed by its cycle, or by single moves",
    base: "rs274ngc",
    job: reaming,
    one: "cycles: { ream: G85 }",
    other: "cycles: { ream: none }",
    oneTakes: singleMoves,
  },
];
