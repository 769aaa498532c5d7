/** A value of a dialect file: a mapping, a list or a single value. */
export type Value = string | number | readonly Value[] | { readonly [key: string]: Value };

/** An axis, and what a controller may want there that `explicit-words` does not say. Any choices go together. */
export interface Choice {
  readonly axis: number;
  readonly values: readonly { readonly [key: string]: Value }[];
}

const order = (letters: string): readonly string[] => Array.from(letters);

/** Axes by number. */
export const choices: readonly Choice[] = [
  { axis: 1, values: [{ file: { characters: "ascii" } }, { file: { characters: "utf-8" } }] },
  { axis: 2, values: [{ file: { "line-end": "crlf" } }, { file: { "last-line-end": "no" } }] },
  { axis: 3, values: [{ file: { "end-of-block": "asterisk" } }] },
  { axis: 4, values: [{ file: { delimiter: "none" } }] },
  {
    axis: 5,
    values: [
      { file: { "program-number": { letter: "O", digits: 4, from: 1, to: 7999 } } },
      { file: { "program-number": { letter: ":", digits: 3, from: 1, to: 999 } } },
    ],
  },
  { axis: 7, values: [{ stops: { end: "M02" } }] },
  {
    axis: 11,
    values: [
      { blocks: { number: "none" } },
      { blocks: { number: { on: "sections", start: 100, step: 100, to: 9900, width: 4 } } },
      { blocks: { number: { on: "all", start: 1, step: 1, to: 99999, width: 5 } } },
    ],
  },
  { axis: 15, values: [{ blocks: { separator: "none" } }, { blocks: { separator: "tab" } }] },
  {
    axis: 16,
    values: [
      { blocks: { order: order("NGXYZABCIJKRPQLFSTHDM") } },
      { blocks: { order: order("NGMTSFXYZABCIJKRPQLHD") } },
    ],
  },
  { axis: 17, values: [{ blocks: { longest: 72 } }, { blocks: { longest: "none" } }] },
  { axis: 19, values: [{ blocks: { "g-words": "one" } }] },
  { axis: 23, values: [{ comments: { longest: 32 } }] },
  { axis: 30, values: [{ numbers: { length: { mm: 4 }, "arc-centre": { mm: 4 } } }] },
  { axis: 31, values: [{ numbers: { "feed-per-minute": { mm: 0 } } }] },
  { axis: 32, values: [{ numbers: { "trailing-zeros": "drop" } }, { numbers: { "trailing-zeros": "one" } }] },
  { axis: 33, values: [{ numbers: { "leading-zero": "drop" } }] },
  { axis: 34, values: [{ numbers: { plus: "yes" } }] },
  { axis: 36, values: [{ numbers: { "code-width": { G: 1, M: 1 } } }] },
  { axis: 41, values: [{ modal: { motion: "modal" } }] },
  { axis: 42, values: [{ modal: { axes: "all" } }] },
  { axis: 43, values: [{ modal: { "arc-centre": "non-zero" } }] },
  { axis: 44, values: [{ modal: { feed: "modal" } }, { modal: { feed: "each-block" } }] },
  { axis: 50, values: [{ distance: { "programs-in": "incremental" } }] },
  { axis: 59, values: [{ motion: { rapids: "straight" } }] },
  {
    axis: 64,
    values: [
      { arc: { form: "radius", "largest-sweep": 180, "full-circle": "no" } },
      { arc: { form: "absolute-centre" } },
      // One quadrant a block goes by centre alone, so that it is drawn in the stead of another form.
      { arc: { quadrants: "one", "full-circle": "no" } },
    ],
  },
  { axis: 74, values: [{ dwell: { word: "X" } }, { dwell: { unit: "s" }, numbers: { dwell: 2 } }] },
  { axis: 79, values: [{ spindle: { order: "speed-first" } }] },
  { axis: 87, values: [{ coolant: { mist: "M08", flood: "M07" } }] },
  { axis: 92, values: [{ tools: { blocks: "apart" } }] },
  { axis: 97, values: [{ machine: { "length-offset": { form: "own-block" } } }] },
  { axis: 103, values: [{ cycles: { levels: "relative" } }, { cycles: { levels: "from-initial" } }] },
  { axis: 108, values: [{ cycles: { words: { "dwell-unit": "s" } } }] },
  {
    axis: 14,
    values: [{ blocks: { delete: { mark: "none" } } }, { blocks: { delete: { mark: "numbered" } } }],
  },
  {
    axis: 25,
    values: [{ file: { "blank-lines": "between-sections" } }, { file: { "blank-lines": "none" } }],
  },
  { axis: 38, values: [{ numbers: { length: { "whole-digits": 4 } } }] },
  // Units of the first block alone cannot be said again behind a stop that loses them.
  { axis: 49, values: [{ units: { stated: "first-block" }, stops: { resume: "keeps-modes" } }] },
  { axis: 60, values: [{ motion: { "rapid-axes": "one-at-a-time" } }] },
  { axis: 88, values: [{ coolant: { blocks: "together" }, blocks: { "m-words": 3 } }] },
  { axis: 95, values: [{ tools: { empty: 99 } }] },
  { axis: 96, values: [{ cancel: { "before-change": "yes" } }] },
  { axis: 104, values: [{ cycles: { positions: "both" } }] },
  {
    axis: 123,
    values: [{ stops: { comment: "with-stop" }, comments: { longest: 32 }, blocks: { longest: 80 } }],
  },
  { axis: 124, values: [{ stops: { resume: "keeps-modes" } }] },
  {
    axis: 130,
    values: [{ blocks: { sections: { modes: "restated" } } }, { blocks: { sections: { comments: "yes" } } }],
  },
];
