import type { ReadyDialect } from "../../../core/index.ts";
import { ready } from "../../support/ready.ts";
import { dialect } from "../programs.ts";
import type { ForeignProgram } from "../reading/foreign.ts";
import { whole } from "../reading/foreign.ts";
import { randomParametric } from "./random-parametric.ts";
import { smallParametric, writtenParametric } from "./written.ts";

/** Random parametric programs, the first of an endless list. */
export function randomPrograms(count: number): ForeignProgram[] {
  return Array.from({ length: count }, (_, seed) =>
    whole(`parametric ${String(seed)}`, randomParametric(seed)),
  );
}

/** Those that are written by hand. */
export const byHand: readonly ForeignProgram[] = [
  ...writtenParametric,
  ...smallParametric.map((program) => ({ ...program, name: `small: ${program.name}` })),
];

/** The programs whose runs are recorded. */
export function recordedParametric(): ForeignProgram[] {
  return [...byHand, ...randomPrograms(40)];
}

/** The file of the tree in which the runs are kept. */
export const recordFile = "parametric/recorded-parametric.txt.br";

/** A dialect to read by, and what numbers may be off by where values are rounded to its grid. */
export interface Grid {
  readonly name: string;
  readonly ready: ReadyDialect;
  readonly slack: number;
}

const fine =
  "numbers: { length: { mm: 5, inch: 5 }, arc-centre: { mm: 5, inch: 5 }, peck: { mm: 5, inch: 5 }, feed-per-minute: { mm: 4, inch: 4 }, dwell: 5, cycle-dwell: 5 }";

/**
 * The dialect as it is shipped, in which a place is off by up to half a step of 0.001 mm, and by two
 * where it is a centre; and a leaf with a grid so fine that next to nothing but what the interpreter prints is forgiven.
 */
export async function grids(): Promise<Grid[]> {
  const leaf = `dialect: leaf\ntitle: A fine grid\nextends: ${dialect}\n${fine}\n`;
  return [
    {
      name: "fine grid",
      ready: await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": leaf }),
      slack: 0.00002,
    },
    { name: "shipped grid", ready: await ready(dialect), slack: 0.0021 },
  ];
}
