import { chunksOf } from "#base";
import type { Batch, ByteSource, UnitSystem } from "#base";
import type { Dialect } from "#dialect";
import type { Job, JobStep } from "#job";
import { read } from "#read";
import type { StretchDraft } from "./drafts.ts";
import type { Workshop } from "./held.ts";
import type { RowWriter } from "./row-batches.ts";
import { createRowWriter } from "./row-batches.ts";
import { rowActions } from "./rows.ts";
import type { Walk } from "./walk.ts";
import { createWalk, endWalk, walkBatch } from "./walk.ts";

/** A program whose operations are known. */
export interface KnownProgram {
  readonly source: ByteSource;
  readonly dialect: Dialect;
  readonly units: UnitSystem;
  readonly stretches: readonly StretchDraft[];
  readonly stock: Job["stock"];
  readonly workshop: Workshop;
}

/** A walk that is under way. */
interface Cursor {
  readonly batches: Iterator<Batch>;
  readonly walk: Walk;
  readonly writer: RowWriter;
  /** Index of the operation that was handed out last. */
  operation: number;
  ended: boolean;
}

/**
 * The moves of operations. One walk serves all of them in order; who asks for an earlier one has the program walked through anew.
 *
 * @returns gives the moves of an operation by its index, in batches that are each valid until the next is pulled
 */
export function createMoves(program: KnownProgram): (operation: number) => Iterable<Batch<JobStep>> {
  const state: { cursor: Cursor | undefined } = { cursor: undefined };
  return function* (operation) {
    if (state.cursor === undefined || state.cursor.operation >= operation) state.cursor = begin(program);
    const { cursor } = state;
    cursor.operation = operation;
    const { ready, spare } = cursor.writer;
    for (;;) {
      while (ready.length > 0 && ready[0].operation < operation) spare.push(ready.shift()!.batch);
      if (ready.length === 0) {
        if (!advance(cursor)) return;
      } else if (ready[0].operation > operation) return;
      else {
        const { batch } = ready.shift()!;
        yield batch;
        spare.push(batch);
      }
    }
  };
}

function begin({ source, dialect, units, stretches, stock, workshop }: KnownProgram): Cursor {
  const { format, machine } = dialect;
  const writer = createRowWriter(stretches, dialect, stock);
  // What is wrong with the program was said when its operations were gathered.
  const batches = read(chunksOf(source), format, machine, { units, source }, () => undefined);
  const walk = createWalk(workshop, format.modal.axes === "all", rowActions(writer));
  return { batches: batches[Symbol.iterator](), walk, writer, operation: -1, ended: false };
}

/** Walks through one more batch of the program. @returns whether there was any */
function advance(cursor: Cursor): boolean {
  if (cursor.ended) return false;
  const next = cursor.batches.next();
  if (next.done) {
    cursor.ended = true;
    endWalk(cursor.walk);
  } else walkBatch(cursor.walk, next.value);
  return true;
}
