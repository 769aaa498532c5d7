import type { Batch, ByteSource, Report } from "#base";
import { axisBit, capacity, clearBatch, createBatch, fillLines, linearAxes } from "#base";
import { compensationOn } from "../findings.ts";
import type { Job, JobStep, Operation } from "../job.ts";
import type { MoveReader, ReadingSizes } from "../moves/reader.ts";
import { batchSize, createReader } from "../moves/reader.ts";
import { interpret } from "./interpret.ts";
import type { ClOptions } from "./options.ts";
import { isPlain, pointShift } from "./outline.ts";
import { takePlainPoint } from "./plain-points.ts";
import { feedIn } from "./begin-move.ts";
import { rowActions } from "./rows.ts";
import type { ClRun, ClState } from "./state.ts";
import type { LineHabits } from "./statement.ts";
import { nextStatement } from "./statement.ts";
import { endHoles } from "./words/cycle-holes.ts";

/** The most rows that a statement writes. */
const rowsOfStatement = 8;

/** How the moves of an operation begin, and how they are to be read. */
export interface ClBeginning {
  readonly state: ClState;
  readonly habits: LineHabits;
  readonly options: ClOptions;
  readonly headClearance: number | undefined;
}

/**
 * Reads the moves of one operation of a source whose outline has no errors; as `readMoves` does those of a job in JSON,
 * with the same checks.
 *
 * @param sizes rows in a batch and bytes read at a time
 * @returns batches in order; each is valid until the next is pulled
 */
export function* readClMoves(
  source: ByteSource,
  job: Job,
  operation: Operation,
  beginning: ClBeginning,
  report: Report,
  sizes: ReadingSizes,
): Iterable<Batch<JobStep>> {
  const reader = createReader(source, job, operation, report, sizes);
  reader.batch = createBatch<JobStep>(Math.max(2 * rowsOfStatement, batchSize(operation, sizes)));
  const state = { ...beginning.state };
  const run: ClRun = {
    ...beginning,
    state,
    act: rowActions(reader, state),
    // What is wrong with a statement, and what is to be noted, was said by the outline.
    report: () => undefined,
    told: new Set(),
    withoutEffect: new Set(),
  };
  for (let more = true; more;) {
    more = fillBatch(reader, run, beginning.habits);
    if (reader.batch.count > 0 && reader.errors === 0) yield reader.batch;
    clearBatch(reader.batch);
  }
}

/** Reads statements until the batch is full. @returns whether there are more */
function fillBatch(reader: MoveReader, run: ClRun, habits: LineHabits): boolean {
  const { scanner, batch } = reader;
  const room = capacity(batch) - rowsOfStatement;
  while (batch.count <= room) {
    takePlainPoints(reader, run, habits);
    if (batch.count > room) return true;
    const statement = nextStatement(scanner, habits);
    if (statement === undefined) return endMoves(reader, run);
    interpret(run, statement);
  }
  return true;
}

function endMoves(reader: MoveReader, run: ClRun): false {
  const last = reader.operation.moves.end - 1;
  endHoles(run, last);
  if (reader.compensated && !reader.scanner.failed)
    reader.report(compensationOn(last, "at the end of the operation"));
  return false;
}

/** The hot path: rows of lines that are plain points. */
function takePlainPoints(reader: MoveReader, run: ClRun, { columns }: LineHabits): void {
  const { state } = run;
  const { scanner, batch, place, numbers, operation } = reader;
  const { scale, feed: held } = state;
  if (!isPlain(state) || scale === undefined || held === undefined || !reader.moved || reader.lost) return;
  const { known, stated, x, y, z, feed, source, count: first } = batch;
  const rows = capacity(batch);
  const [dx, dy, dz] = pointShift(run);
  reader.feed = feedIn(operation.feedMode, held, state);
  let row = first;
  while (row < rows) {
    const offset = takePlainPoint(scanner, scale, numbers, columns);
    if (offset < 0) break;
    x[row] = numbers[0] + dx;
    y[row] = numbers[1] + dy;
    z[row] = numbers[2] + dz;
    known[row] = stated[row] = linearAxes;
    feed[row] = reader.feed;
    source[row] = offset;
    row++;
  }
  if (row === first) return;
  fillLines(batch, first, row);
  batch.count = row;
  state.x = place[0] = x[row - 1];
  state.y = place[1] = y[row - 1];
  state.z = state.toolZ = place[2] = z[row - 1];
  state.known = axisBit.x | axisBit.y | axisBit.z;
}
