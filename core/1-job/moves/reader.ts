import type { Batch, ByteSource, Finding, Report } from "#base";
import { batchRows, createBatch } from "#base";
import { more } from "../findings.ts";
import type { Job, JobStep, Operation, Tool } from "../job.ts";
import type { Scale } from "../scan/number.ts";
import { scales } from "../scan/number.ts";
import type { Scanner } from "../scan/scanner.ts";
import { createScanner, fail, offsetOf, windowBytes } from "../scan/scanner.ts";
import type { Words } from "../scan/words.ts";
import { createWords } from "../scan/words.ts";
import type { KnownShapes } from "./known-shapes.ts";
import { mostPatience } from "./known-shapes.ts";

/** Kinds of moves; each is a key. */
export const moveKinds = [
  "rapid",
  "line",
  "arc",
  "holes",
  "path",
  "dwell",
  "pause",
  "note",
  "spindle",
  "coolant",
  "comp",
] as const;

/** Keys that stand beside that of the kind. */
export const besideKeys = ["feed", "turn", "plane", "turns", "optional", "park"] as const;

/** Keys of a move: the kinds first. */
export const moveKeys = [...moveKinds, ...besideKeys] as const;

export type MoveKind = (typeof moveKinds)[number];
export type BesideKey = (typeof besideKeys)[number];
export type MoveKey = MoveKind | BesideKey;

export const moveWords: Words = createWords(moveKeys);

/** Index of a key, which is its bit in `Move.seen`, too. */
export const keyIndex = Object.fromEntries(moveKeys.map((key, index) => [key, index])) as Readonly<
  Record<MoveKey, number>
>;

/** Places of numbers in `Move.values`; x to c are in the order of the axis bits. */
export const slot = {
  x: 0,
  y: 1,
  z: 2,
  a: 3,
  b: 4,
  c: 5,
  cx: 6,
  cy: 7,
  cz: 8,
  feed: 9,
  dwell: 10,
  rpm: 11,
  top: 12,
  depth: 13,
  retract: 14,
  peck: 15,
  backOff: 16,
  lead: 17,
  feedOut: 18,
  turns: 19,
} as const;

/** The move at hand; one object for all moves. */
export interface Move {
  /** Byte offset of its brace. */
  source: number;
  /** Byte offset of the value of its kind. */
  valueAt: number;
  /** Index of its kind among the keys; -1 while none is seen. */
  kind: number;
  /** Bits of the keys seen, by `keyIndex`. */
  seen: number;
  /** Byte offset of each key seen. */
  readonly keyAt: Float64Array;
  /** Bits of the words seen in the value: axes by `axisBit`, or keys of an arc or of holes. */
  words: number;
  /** Byte offset of each word seen in an arc or in holes. */
  readonly wordAt: Float64Array;
  /** Numbers in base units, by `slot`. */
  readonly values: Float64Array;
  /** Index of the word chosen for `turn`; `plane`, `between` and `choice` are indices of words, too. */
  turn: number;
  plane: number;
  /** Level between holes. */
  between: number;
  /** Kind of holes or of a path, side of compensation. */
  choice: number;
  /** Values of the keys of a pause. */
  optional: boolean;
  park: boolean;
  /** Text of a pause or note. */
  text: string;
  /** What a coolant move asks for. */
  media: JobStep & { readonly kind: "coolant" };
  /** Byte offset of the list of points or holes; -1 where there is none. */
  listAt: number;
  /** Whether a finding leaves its meaning open. */
  faulty: boolean;
}

/** Points or holes that are being read one by one; row kind -1 while there are none. */
export interface Stream {
  /** Kind of the rows, see `rowKind`. */
  row: number;
  /** Numbers in each: 2 or 3. */
  size: number;
  /** Effective feed, in the unit of the feed mode. */
  feed: number;
  /** Byte offset behind the move, where reading goes on afterwards. */
  after: number;
  /** Whether the list has been opened. */
  open: boolean;
  /** Whether another element follows. */
  more: boolean;
}

/** The state of reading the moves of one operation. */
export interface MoveReader {
  readonly scanner: Scanner;
  /** Counts errors and hands findings on. */
  readonly report: Report;
  readonly operation: Operation;
  /** The operation's tool; undefined where the job does not define it. */
  readonly tool: Tool | undefined;
  /** From the job's unit of length to atoms. */
  readonly length: Scale;
  /** From a feed of the operation to its base unit. */
  readonly feedScale: Scale;
  readonly move: Move;
  readonly stream: Stream;
  /** The batch that is being filled. */
  batch: Batch<JobStep>;
  /** Place of the tool tip: x, y, z in atoms. */
  readonly place: Float64Array;
  /** Whether a motion has been read. */
  moved: boolean;
  /** Feed that holds, in the unit of the feed mode; 0: none. */
  feed: number;
  /** Milli-rpm; 0 without a spindle. */
  rpm: number;
  /** Whether cutter compensation is on. */
  compensated: boolean;
  /** Whether a fault has left the place or the feed open, so that what depends on them is not checked. */
  lost: boolean;
  /** Errors reported so far. */
  errors: number;
  /** Whether the operation's one warning has been given. */
  warned: boolean;
  /** How the last lines were written. */
  readonly known: KnownShapes;
  /** Numbers of a line that is read by its shape, by `slot`. */
  readonly numbers: Float64Array;
  /** Whether a move is read whose rows are still to be written. */
  held: boolean;
}

/** Sizes that tests make small. */
export interface ReadingSizes {
  /** Bytes read at a time. */
  readonly windowBytes: number;
  /** Rows in a batch, at least 2. */
  readonly rows: number;
}

export const readingSizes: ReadingSizes = { windowBytes, rows: batchRows };

/** The fewest bytes that give a row: a hole and its comma. */
const leastRow = "[0,0],".length;

/** Rows of a batch: no more than the moves can fill, because a job may have thousands of short operations. */
export function batchSize({ moves }: Operation, { rows }: ReadingSizes): number {
  return Math.min(rows, 2 + Math.ceil((moves.end - moves.start) / leastRow));
}

/** Errors in the moves of one operation after which reading stops. */
const mostErrors = 50;

export function createReader(
  source: ByteSource,
  job: Job,
  operation: Operation,
  report: Report,
  sizes: ReadingSizes,
): MoveReader {
  const { start, end } = operation.moves;
  const counted: Report = (finding) => count(reader, finding, report);
  const reader: MoveReader = {
    scanner: createScanner(source, counted, { from: start, to: end }, sizes.windowBytes),
    report: counted,
    operation,
    tool: job.tools.find(({ number }) => number === operation.tool),
    length: scales[job.units],
    feedScale: operation.feedMode === "inverse-time" ? scales.perMinute : scales[job.units],
    move: createMove(),
    stream: { row: -1, size: 0, feed: 0, after: 0, open: false, more: false },
    batch: createBatch<JobStep>(batchSize(operation, sizes)),
    place: Float64Array.of(0, 0, operation.clearance),
    moved: false,
    feed: 0,
    rpm: operation.spindle?.rpm ?? 0,
    compensated: false,
    lost: false,
    errors: 0,
    warned: false,
    known: { shapes: [], patience: mostPatience },
    numbers: new Float64Array(Object.keys(slot).length),
    held: false,
  };
  return reader;
}

function createMove(): Move {
  return {
    source: 0,
    valueAt: 0,
    kind: -1,
    seen: 0,
    keyAt: new Float64Array(moveKeys.length),
    words: 0,
    wordAt: new Float64Array(16),
    values: new Float64Array(Object.keys(slot).length),
    turn: 0,
    plane: 0,
    choice: 0,
    between: 0,
    optional: false,
    park: false,
    text: "",
    media: { kind: "coolant", media: [] },
    listAt: -1,
    faulty: false,
  };
}

/** A thousand moves with the same fault are told once and again, but not a thousand times. */
function count(reader: MoveReader, finding: Finding, report: Report): void {
  report(finding);
  if (finding.severity !== "error") return;
  reader.errors++;
  if (reader.errors !== mostErrors) return;
  reader.errors++;
  fail(reader.scanner, more(offsetOf(reader.scanner), mostErrors));
}
