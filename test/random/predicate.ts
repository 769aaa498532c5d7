import type { RandomJob, RandomOperation } from "./random-job.ts";

/**
 * What a dialect can say, as a person would tell it from the dialect's text; written apart from the product, which never
 * sees this file.
 */
interface Speech {
  readonly inverseTime: boolean;
  /** How many work offsets have a word. */
  readonly workOffsets: number;
  readonly coolant: readonly string[];
  /** Whether the exact path can be asked for. */
  readonly exactPath: boolean;
  readonly compensation: boolean;
  /** Levels between holes that the tap cycle can be told; none where there is no such cycle, and the machine does not tap. */
  readonly tapLevels: readonly string[];
  /** What becomes of a second tool: nothing, or the rule that refuses it. */
  readonly secondTool: "" | "lower/swap" | "dialect/undeclared";
  /** Whether the spindle turns both ways. */
  readonly counterClockwise: boolean;
  readonly optionalStop: boolean;
  /** Whether dwells are counted in turns of the spindle, which a tool that never turns has none of. */
  readonly dwellsByTurns: boolean;
}

const twoCoolants = ["mist", "flood"];
const fourCoolants = [...twoCoolants, "air", "through-tool"];

/** What most of them can say. */
const usual: Speech = {
  inverseTime: true,
  workOffsets: 6,
  coolant: twoCoolants,
  exactPath: true,
  compensation: true,
  tapLevels: ["initial", "retract"],
  secondTool: "",
  counterClockwise: true,
  optionalStop: true,
  dwellsByTurns: false,
};

const speech = {
  // NISTIR 6556: G93 (3.5.20), nine coordinate systems (3.5.13), M7 and M8 (3.6.4).
  rs274ngc: { ...usual, workOffsets: 9 },
  // No feed mode but per minute, G54 to G59, M07 and M08.
  "explicit-words": { ...usual, inverseTime: false },
  // The stable core: nothing but the retract level between holes, and the operator needs a place to change tools at.
  "iso-6983": {
    ...usual,
    inverseTime: false,
    workOffsets: 0,
    exactPath: false,
    tapLevels: ["retract"],
    secondTool: "dialect/undeclared",
  },
  // Four coolants, G60, and a tap that always returns to where it stood.
  "din-66025": { ...usual, coolant: fourCoolants, tapLevels: ["initial"] },
  // Neither work offsets nor compensation nor path words; holes return to the retract level.
  "least-increment": {
    ...usual,
    workOffsets: 0,
    exactPath: false,
    compensation: false,
    tapLevels: ["retract"],
  },
  // No cycles at all.
  longhand: { ...usual, exactPath: false, compensation: false, tapLevels: [] },
  // One tool, one zero, one direction, no coolant.
  "hand-zeroed": {
    inverseTime: false,
    workOffsets: 0,
    coolant: [],
    exactPath: false,
    compensation: false,
    tapLevels: [],
    secondTool: "lower/swap",
    counterClockwise: false,
    optionalStop: false,
    dwellsByTurns: false,
  },
  "staged-tools": { ...usual, coolant: fourCoolants, dwellsByTurns: true },
} as const satisfies Record<string, Speech>;

/** The dialects that the predicate knows. */
export type KnownDialect = keyof typeof speech;

/** Names of the dialects that the predicate knows. */
export const knownDialects = Object.keys(speech) as KnownDialect[];

/** The rules by which a dialect must refuse a job; empty: it must be proved. */
export function predictedRefusals(job: RandomJob, dialect: KnownDialect): ReadonlySet<string> {
  const spoken: Speech = speech[dialect];
  const rules = new Set(job.operations.flatMap((operation) => ofOperation(operation, spoken)));
  const offsets = new Set(job.operations.map(({ workOffset }) => workOffset));
  // One zero, set by hand, will do for a job that has one.
  const needsWord = spoken.workOffsets > 0 || offsets.size > 1;
  if (needsWord && [...offsets].some((number) => number > spoken.workOffsets)) rules.add("lower/work-offset");
  const tools = new Set(job.operations.map(({ tool }) => tool));
  if (tools.size > 1 && spoken.secondTool !== "") rules.add(spoken.secondTool);
  return rules;
}

function ofOperation(operation: RandomOperation, spoken: Speech): string[] {
  const changes = operation.moves.map((move) => (move["coolant"] ?? "off") as string | readonly string[]);
  const media = [operation.coolant, ...changes].flat();
  return [
    ...(operation.feedMode === "inverse-time" && !spoken.inverseTime ? ["lower/feed-mode"] : []),
    ...(media.some((medium) => medium !== "off" && !spoken.coolant.includes(medium))
      ? ["lower/coolant"]
      : []),
    ...(operation.path === "exact" && !spoken.exactPath ? ["lower/word"] : []),
    // Without any word for the path nothing holds a tolerance; with one the exact path does.
    ...(operation.path !== "exact" && operation.tolerance !== undefined && !spoken.exactPath
      ? ["lower/tolerance"]
      : []),
    ...(operation.spindle?.direction === "ccw" && !spoken.counterClockwise ? ["lower/word"] : []),
    ...(spoken.dwellsByTurns && operation.spindle === undefined && operation.moves.some(dwells)
      ? ["lower/dwell"]
      : []),
    ...operation.moves.flatMap((move) => ofMove(move, spoken)),
  ];
}

/** Whether a move waits for a time, between moves or at the bottom of a hole. */
function dwells(move: Record<string, unknown>): boolean {
  const holes = move["holes"] as { dwell?: number } | undefined;
  return "dwell" in move || holes?.dwell !== undefined;
}

function ofMove(move: Record<string, unknown>, spoken: Speech): string[] {
  const holes = move["holes"] as { kind: string; between: string } | undefined;
  const taps = holes?.kind === "tap";
  return [
    ...(taps && spoken.tapLevels.length === 0 ? ["limit/tapping", "lower/cycle"] : []),
    // Tapping is never written longhand, and each series of holes begins above its retract level.
    ...(taps && !spoken.tapLevels.includes(holes.between) ? ["lower/cycle"] : []),
    ...("comp" in move && !spoken.compensation ? ["lower/compensation"] : []),
    ...("pause" in move && move["optional"] === true && !spoken.optionalStop ? ["lower/word"] : []),
  ];
}
