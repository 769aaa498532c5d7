/** The neutral job as the examples make it, and its text: one tool a line, one move a line. */

/** An end or start point; an axis left out keeps its value. Lengths in the job's units. */
export interface Axes {
  /** Length along X. */
  x?: number;
  /** Length along Y. */
  y?: number;
  /** Length along Z. */
  z?: number;
}

/** The words of an arc: its end, and its centre in the two axes of its plane, all absolute. */
export interface ArcWords extends Axes {
  /** Centre along X, for the planes xy and zx. */
  cx?: number;
  /** Centre along Y, for the planes xy and yz. */
  cy?: number;
  /** Centre along Z, for the planes zx and yz. */
  cz?: number;
}

/** Sense of an arc, seen from the positive end of the normal of its plane. */
export type Turn = "cw" | "ccw";

/** A group of holes with one cycle; lengths in the job's units. */
export interface Holes {
  /** The cycle. */
  kind: "drill" | "dwell" | "peck" | "chip-break" | "tap" | "bore" | "ream";
  /** X and Y of each hole, in the order of drilling. */
  at: readonly (readonly [number, number])[];
  /** Z of the surface. */
  top: number;
  /** Z of the bottom. */
  depth: number;
  /** Z where the feed begins. */
  retract: number;
  /** Depth of one peck. */
  peck?: number;
  /** Distance between the last depth and the end of the rapid back to it. */
  backOff?: number;
  /** Seconds at the bottom. */
  dwell?: number;
  /** Lead of the thread, length a revolution. */
  lead?: number;
  /** Feed on the way out, length a minute. */
  feedOut?: number;
  /** Level of the way to the next hole. */
  between?: "retract" | "initial";
}

/** One move of an operation: exactly one kind. Feeds in length a minute, or a revolution. */
export type Move =
  | { rapid: Axes }
  | { line: Axes; feed?: number }
  | { arc: ArcWords; turn: Turn; plane?: "xy" | "zx" | "yz"; turns?: number; feed?: number }
  | { holes: Holes; feed?: number }
  | { path: { kind: "line" | "rapid"; points: readonly (readonly [number, number, number])[] }; feed?: number }
  | { dwell: number }
  | { pause: string; optional?: boolean; park?: boolean }
  | { note: string }
  | { spindle: { rpm: number } }
  | { comp: "left" | "right" | "off" };

/** One operation: everything it needs but its moves, and the moves. */
export interface Operation {
  /** Unique name of the operation. */
  id: string;
  /** The operation's moves, in order. */
  moves: readonly Move[];
  /** Any other key of the format, in the order of the text. */
  [key: string]: unknown;
}

/** A whole job; keys are written in the order given. */
export interface Job {
  /** The tools, one a line. */
  tools: readonly object[];
  /** The operations, in the order of work. */
  operations: readonly Operation[];
  /** Any other key of the format. */
  [key: string]: unknown;
}

/**
 * Writes a job as text that a person can read and a line-by-line comparison can follow.
 * `decimals` is the number of places kept of every number; trailing zeros are left out.
 */
export function jobText(job: Job, decimals: number): string {
  const heads = Object.entries(job).map(([key, value]) => {
    if (key === "tools") return listOf(key, job.tools.map((tool) => `    ${inline(tool, decimals)}`));
    if (key === "operations") return listOf(key, job.operations.map((operation) => operationText(operation, decimals)));
    return `  ${JSON.stringify(key)}: ${inline(value, decimals)}`;
  });
  return `{\n${heads.join(",\n")}\n}\n`;
}

function listOf(key: string, entries: readonly string[]): string {
  return `  ${JSON.stringify(key)}: [\n${entries.join(",\n")}\n  ]`;
}

function operationText(operation: Operation, decimals: number): string {
  const keys = Object.entries(operation)
    .filter(([key]) => key !== "moves")
    .map(([key, value]) => `      ${JSON.stringify(key)}: ${inline(value, decimals)},`);
  const moves = operation.moves.map((move) => `        ${inline(move, decimals)}`);
  return `    {\n${keys.join("\n")}\n      "moves": [\n${moves.join(",\n")}\n      ]\n    }`;
}

/** One value on one line; a key without a value is left out. */
function inline(value: unknown, decimals: number): string {
  if (typeof value === "number") return numberText(value, decimals);
  if (Array.isArray(value)) return `[${value.map((entry) => inline(entry, decimals)).join(", ")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const words = Object.entries(value)
    .filter(([, entry]) => entry !== undefined)
    .map(([key, entry]) => `${JSON.stringify(key)}: ${inline(entry, decimals)}`);
  return `{ ${words.join(", ")} }`;
}

/** Rounds for the text: -0.00001 -> 0, never -0, and never an exponent. */
function numberText(value: number, decimals: number): string {
  const rounded = Number(value.toFixed(decimals));
  return String(rounded === 0 ? 0 : rounded);
}
