import type { Finding } from "#base";
import { memorySource } from "#base";
import { checkTrade, openJob } from "#job";

/** A job that a test takes apart and changes. */
export interface SmallJob {
  readonly units?: "mm" | "inch";
  readonly material?: string;
  readonly stock?: false;
  readonly tools: readonly object[];
  readonly operations: readonly object[];
}

/** Stock of 100 x 80 x 20 with its top at Z0. */
const stock = { min: [0, 0, -20], max: [100, 80, 0] };

/** The job as text; its clearance is 15. */
export function textOf({ units = "mm", material, stock: without, tools, operations }: SmallJob): string {
  const box = without === false ? {} : { stock: { ...stock, ...(material ? { material } : {}) } };
  return JSON.stringify({ job: "1", units, clearance: 15, ...box, tools, operations });
}

/** What the checks find in a job, with the place in its text. */
export function tradeOf(job: SmallJob, only?: readonly string[]): Finding[] {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const opened = openJob(memorySource(new TextEncoder().encode(textOf(job))), { form: "json" }, report);
  if (opened === undefined) throw new Error(JSON.stringify(findings));
  const chosen = opened.job.operations.filter(({ id }) => only?.includes(id) ?? true);
  const checked = checkTrade(opened, chosen, report);
  for (const operation of chosen) for (const batch of checked.moves(operation, report)) void batch;
  return findings;
}

/** Rules of the findings, in order. */
export const rulesOf = (findings: readonly Finding[]): string[] => findings.map(({ rule }) => rule);

const clockwise = (rpm: number): object => ({ rpm, direction: "cw" });

/** An operation of moves that begins over X10 Y10. */
export function operation(
  id: string,
  tool: number,
  rpm: number,
  moves: readonly object[],
  more = {},
): object {
  return { id, tool, spindle: clockwise(rpm), ...more, moves: [{ rapid: { x: 10, y: 10 } }, ...moves] };
}

/** A ramp into the stock, a cut in it at a feed, and up. */
export const cut = (feed: number, z = -1): object[] => [
  { rapid: { z: 2 } },
  { line: { x: 30, z }, feed },
  { line: { x: 60 } },
  { rapid: { z: 15 } },
];

/** A line straight down, then a cut. */
export const down = (feed: number, sideways: number, z = -3): object[] => [
  { rapid: { z: 2 } },
  { line: { z }, feed },
  { line: { x: 60 }, feed: sideways },
  { rapid: { z: 15 } },
];

/** Drilled holes. */
export const drilled = (at: readonly (readonly number[])[], depth: number, more = {}): object => ({
  holes: { kind: "drill", at, top: 0, depth, retract: 2, ...more },
  feed: 200,
});

/** Tapped holes of M6. */
export const tapped = (at: readonly (readonly number[])[], depth: number): object => ({
  holes: { kind: "tap", at, top: 0, depth, retract: 4, lead: 1 },
});

export const mill = (more = {}): object => ({ number: 1, kind: "end-mill", diameter: 6, flutes: 2, ...more });
export const drill = (more = {}): object => ({ number: 2, kind: "drill", diameter: 5, ...more });
export const tap = (more = {}): object => ({ number: 3, kind: "tap", diameter: 6, lead: 1, ...more });
