import type { Habits } from "./spell.ts";

/** How a CAM system writes (common practice, no source): what varies between those that are in use. */
export interface Style {
  readonly name: string;
  readonly seed: number;
  readonly inch: boolean;
  readonly habits: Habits;
  /** Numbering of blocks: first number and step; none where undefined. */
  readonly numbers: { readonly first: number; readonly step: number } | undefined;
  readonly percent: boolean;
  /** A comment before each operation, and behind some blocks. */
  readonly comments: "before" | "behind" | "none";
  readonly blankLines: boolean;
  /** Whether motion words and axes that have not changed are said again. */
  readonly repeats: boolean;
  readonly arcs: "centre" | "radius";
  /** Words of the safe line, and whether it stands in one block. */
  readonly safeLine: readonly number[];
  readonly safeInOne: boolean;
  /** How the tool goes up at the end of an operation. */
  readonly leave: "G53" | "G28" | "clearance";
  /** Whether passes and patterns are written in incremental words. */
  readonly incremental: boolean;
  readonly nextTool: boolean;
}

const plain: Habits = {
  numbers: "short",
  codes: 1,
  blanks: " ",
  lowerCase: false,
  order: "given",
  lineEnd: "\n",
};

/** Five writers of long programs. */
export const styles: readonly Style[] = [
  {
    name: "numbered, padded codes, centres",
    seed: 11,
    inch: false,
    habits: { ...plain, numbers: "pointed", codes: 2 },
    numbers: { first: 10, step: 5 },
    percent: true,
    comments: "before",
    blankLines: false,
    repeats: false,
    arcs: "centre",
    safeLine: [21, 90, 94, 17, 40, 49, 80, 98],
    safeInOne: true,
    leave: "G28",
    incremental: false,
    nextTool: false,
  },
  {
    name: "dense, no numbers, radii",
    seed: 22,
    inch: false,
    habits: { ...plain, blanks: "" },
    numbers: undefined,
    percent: false,
    comments: "none",
    blankLines: false,
    repeats: false,
    arcs: "radius",
    safeLine: [17, 21, 40, 49, 80, 90, 94, 99],
    safeInOne: true,
    leave: "clearance",
    incremental: true,
    nextTool: true,
  },
  {
    name: "lower case, comments behind, blank lines",
    seed: 33,
    inch: false,
    habits: { ...plain, lowerCase: true, numbers: "fixed" },
    numbers: undefined,
    percent: true,
    comments: "behind",
    blankLines: true,
    repeats: true,
    arcs: "centre",
    safeLine: [90, 21, 17, 94, 40, 49, 80, 64, 98],
    safeInOne: false,
    leave: "G53",
    incremental: true,
    nextTool: false,
  },
  {
    name: "inch, tabs, two bytes to end a line",
    seed: 44,
    inch: true,
    habits: { ...plain, blanks: "\t", numbers: "pointed", codes: "any", lineEnd: "\r\n" },
    numbers: { first: 100_000, step: 10 },
    percent: true,
    comments: "before",
    blankLines: true,
    repeats: true,
    arcs: "radius",
    safeLine: [20, 17, 90, 94, 40, 49, 80, 61, 99],
    safeInOne: false,
    leave: "G28",
    incremental: false,
    nextTool: true,
  },
  {
    name: "as short and regular as can be",
    seed: 55,
    inch: false,
    habits: { ...plain, numbers: "usual", order: "usual" },
    numbers: undefined,
    percent: true,
    comments: "none",
    blankLines: false,
    repeats: false,
    arcs: "centre",
    safeLine: [17, 21, 40, 49, 64, 80, 90, 94, 98],
    safeInOne: false,
    leave: "G53",
    incremental: true,
    nextTool: false,
  },
];
