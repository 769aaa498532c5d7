import type { Batch, ByteSource, Report } from "#base";
import { capacity, clearBatch, createBatch } from "#base";
import { compensationOn, wrongCount } from "./findings.ts";
import type { Job, JobStep, Operation } from "./job.ts";
import { finishMove, namesRotary, readMove } from "./moves/read-move.ts";
import { learnShape, readPlainLines } from "./moves/plain-lines.ts";
import type { MoveReader, ReadingSizes } from "./moves/reader.ts";
import { batchSize, createReader, readingSizes } from "./moves/reader.ts";
import { streamRows } from "./moves/stream.ts";
import { expected, offsetOf, refill } from "./scan/scanner.ts";
import { nextElement, openList } from "./scan/structure.ts";

/** The most rows that a move writes before its points or holes. */
const rowsOfMove = 2;

/** Bytes that a move of the usual kind does not exceed. */
const usualMove = 1024;

/**
 * Reads the moves of one operation, strictly, in windows: memory does not grow with their number. Work-frame rows name
 * the axes of the move and no others (`known` is `stated`); rare moves stand aside. From the first rotary word on,
 * batches have rotary columns.
 *
 * @param source the same bytes that `readJob` has read
 * @param operation one of the job's
 * @param report gets each finding with its place in the source. After an error no more rows are handed out, but reading
 *   goes on, for more findings
 * @param sizes rows in a batch and bytes read at a time
 * @returns batches in order; each is valid until the next is pulled
 */
export function* readMoves(
  source: ByteSource,
  job: Job,
  operation: Operation,
  report: Report,
  sizes: ReadingSizes = readingSizes,
): Iterable<Batch<JobStep>> {
  const reader = createReader(source, job, operation, report, sizes);
  let more = openList(reader.scanner, "`moves`");
  if (!more && !reader.scanner.failed)
    reader.report(wrongCount(operation.moves.start, "`moves`", "at least 1 element"));
  while (more) {
    more = fillBatch(reader);
    if (reader.batch.count > 0 && reader.errors === 0) yield reader.batch;
    if (reader.held && !reader.batch.abc)
      reader.batch = createBatch<JobStep>(batchSize(operation, sizes), true);
    clearBatch(reader.batch);
  }
}

/** Reads moves until the batch is full, or needs rotary columns that it does not have. @returns whether there are more */
function fillBatch(reader: MoveReader): boolean {
  const { scanner, batch, stream } = reader;
  const room = capacity(batch) - rowsOfMove;
  let begin = 0;
  for (;;) {
    if (stream.row >= 0) {
      if (!streamRows(reader)) return true;
      if (!nextElement(scanner)) return endMoves(reader);
    }
    if (!reader.held) {
      if (batch.count > room) return true;
      readPlainLines(reader, usualMove);
      if (batch.count > room) return true;
      // A usual move then lies in the window as a whole, and no number or name in it meets the window's end.
      if (scanner.end - scanner.at < usualMove) refill(scanner, scanner.at);
      begin = offsetOf(scanner);
      readMove(reader);
      if (namesRotary(reader) && batch.abc === undefined) {
        reader.held = true;
        return true;
      }
    }
    reader.held = false;
    finishMove(reader);
    if (stream.row >= 0) continue;
    if (!nextElement(scanner)) return endMoves(reader);
    learnShape(reader, begin);
  }
}

function endMoves(reader: MoveReader): false {
  const { scanner, operation } = reader;
  // The span was found by its brackets alone; nothing in it may be left over.
  if (!scanner.failed && offsetOf(scanner) !== operation.moves.end) expected(scanner, "The end of `moves`");
  if (reader.compensated && !scanner.failed)
    reader.report(compensationOn(operation.moves.end - 1, "at the end of the operation"));
  return false;
}
