import { axisBit, capacity, pushAside, rowKind } from "#base";
import { wrongCount } from "../findings.ts";
import { openBracket } from "../scan/bytes.ts";
import { readNumber } from "../scan/number.ts";
import { offsetOf, peek, seek } from "../scan/scanner.ts";
import { skipNested } from "../scan/skip.ts";
import { nextElement, openList, otherType } from "../scan/structure.ts";
import type { MoveReader } from "./reader.ts";
import { pushRow, moveTo } from "./rows.ts";
import { valueOffset } from "./values.ts";

/*
 * A list of points or holes may be far longer than the window, and what it means (kind, feed, levels) may stand behind
 * it. So it is gone over once by its brackets, the rest of the move is read, and then the list is read from its beginning.
 */

/** How deep the list of a move stands: job, operations, operation, moves, move, value. */
const depth = 6;

/** Notes where the list stands and goes over it. */
export function readListSpan(reader: MoveReader, key: string): void {
  const { scanner, move } = reader;
  if (peek(scanner) !== openBracket) {
    otherType(scanner, key, "a list");
    return;
  }
  move.listAt = offsetOf(scanner);
  skipNested(scanner, key, depth);
}

/** Goes back to the list of the move just read, to hand out its elements as rows. */
export function beginStream(reader: MoveReader, row: number, size: number, feed: number): void {
  const { stream, scanner, move } = reader;
  stream.row = row;
  stream.size = size;
  stream.feed = feed;
  stream.after = offsetOf(scanner);
  stream.open = false;
  seek(scanner, move.listAt);
}

/** Writes rows until the list or the batch is at its end. @returns whether the list is */
export function streamRows(reader: MoveReader): boolean {
  const { scanner, stream, batch } = reader;
  const key = stream.size === 2 ? "`at`" : "`points`";
  const rows = capacity(batch);
  if (!stream.open) {
    stream.open = true;
    const offset = valueOffset(scanner);
    stream.more = openList(scanner, key);
    if (!stream.more && !scanner.failed) reader.report(wrongCount(offset, key, "at least 1 element"));
  }
  while (stream.more) {
    if (batch.count === rows) return false;
    streamRow(reader, key);
    stream.more = nextElement(scanner);
  }
  return endStream(reader, rows);
}

function streamRow(reader: MoveReader, key: string): void {
  const { stream, scanner } = reader;
  const source = valueOffset(scanner);
  if (!readTuple(reader, key, source)) return;
  const words = stream.size === 2 ? axisBit.x | axisBit.y : axisBit.x | axisBit.y | axisBit.z;
  moveTo(reader, words);
  pushRow(reader, stream.row, words, stream.feed, 0, 0, 0, source);
}

const elementLabels = ["x", "y", "z"];

/** Reads [x, y] or [x, y, z] into the first places of the move's values. @returns whether it is without fault */
function readTuple(reader: MoveReader, key: string, offset: number): boolean {
  const { scanner, stream, move, length } = reader;
  const errors = reader.errors;
  let count = 0;
  for (let more = openList(scanner, `Each element of ${key}`); more; more = nextElement(scanner)) {
    // What is too many is read all the same, so that it is counted.
    const place = Math.min(count, stream.size - 1);
    readNumber(scanner, length, move.values, place, false, elementLabels[place]);
    count++;
  }
  if (count !== stream.size && reader.errors === errors)
    reader.report(wrongCount(offset, `Each element of ${key}`, `${stream.size} numbers`));
  return reader.errors === errors;
}

function endStream(reader: MoveReader, rows: number): boolean {
  const { scanner, stream, batch } = reader;
  if (stream.row === rowKind.hole && !scanner.failed) {
    if (batch.count === rows) return false;
    pushAside(batch, { kind: "holes-end" }, reader.move.source);
  }
  stream.row = -1;
  seek(scanner, stream.after);
  return true;
}
