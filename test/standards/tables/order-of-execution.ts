import type { Sourced } from "./row.ts";

/** What one item of the table does in a block that has all of them. */
export interface Executed extends Sourced {
  /** Place in the order. */
  readonly item: number;
  readonly words: string;
  /** The step that the words give; "" where they give none (F, G98): it shows in the rows. */
  readonly step: string;
}

const table8 = { source: "NISTIR 6556 Table 8", confidence: "read" } as const;

/** Item 19 (G28, G10, G92) excludes items 10 and 20 from its block, and has a test of its own. */
export const executionOrder: readonly Executed[] = [
  { item: 1, words: "(MSG, READY)", step: "message text=READY", ...table8 },
  { item: 2, words: "G95", step: "feed-mode value=per-revolution", ...table8 },
  { item: 3, words: "F0.1", step: "", ...table8 },
  { item: 4, words: "S1000", step: "spindle-speed rpm=1000000", ...table8 },
  { item: 5, words: "T2", step: "select-tool tool=2", ...table8 },
  { item: 6, words: "M6", step: "change-tool", ...table8 },
  { item: 7, words: "M3", step: "spindle-start direction=cw", ...table8 },
  { item: 8, words: "M8", step: "coolant medium=flood on=true", ...table8 },
  { item: 9, words: "M49", step: "overrides value=off", ...table8 },
  { item: 10, words: "G4 P1", step: "dwell time=1000000", ...table8 },
  { item: 11, words: "G18", step: "plane value=zx", ...table8 },
  { item: 12, words: "G20", step: "units value=inch", ...table8 },
  { item: 13, words: "G40", step: "compensation value=off offset=0", ...table8 },
  { item: 14, words: "G43 H1", step: "length-offset number=1", ...table8 },
  { item: 15, words: "G55", step: "work-offset number=2", ...table8 },
  { item: 16, words: "G61", step: "path value=exact", ...table8 },
  { item: 17, words: "G91", step: "distance value=incremental", ...table8 },
  { item: 18, words: "G99", step: "", ...table8 },
  { item: 20, words: "G0 X1", step: "rapid x35.4", ...table8 },
  { item: 21, words: "M0", step: "pause optional=false", ...table8 },
];
