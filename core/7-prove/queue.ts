import { batchColumns, capacity, clearBatch, createBatch } from "#base";
import type { Batch } from "#base";

/**
 * Copies of batches, in order, for as long as the comparison lags behind. Reading it empties it: it ends when it is
 * empty now, and goes on when more was pushed.
 */
export interface Queue extends Iterable<Batch> {
  /** Copies a batch; the original is free again afterwards. */
  push(batch: Batch): void;
  /** The oldest copy, valid until the next call; undefined while there is none. */
  next(): Batch | undefined;
  /** Number of copies that wait. */
  readonly waiting: number;
}

/** Copies the rows in use, and the list of rare steps; steps themselves are never changed, so they are shared. */
function copyInto(copy: Batch, batch: Batch): void {
  const { count } = batch;
  for (const column of batchColumns) copy[column].set(batch[column].subarray(0, count));
  for (let axis = 0; axis < 3; axis++) copy.abc?.[axis].set(batch.abc![axis].subarray(0, count));
  copy.asides = batch.asides.slice();
  copy.count = count;
}

/** Makes an empty queue. Copies that were read are used again, so that its memory is that of its longest lag. */
export function createQueue(): Queue {
  const waiting: Batch[] = [];
  const free: Batch[] = [];
  let lent: Batch | undefined;
  const take = (batch: Batch): Batch => {
    const fits = free.findIndex(
      (copy) => capacity(copy) >= batch.count && (copy.abc === undefined) === (batch.abc === undefined),
    );
    return fits < 0
      ? createBatch(Math.max(capacity(batch), 1), batch.abc !== undefined)
      : free.splice(fits, 1)[0];
  };
  const next = (): Batch | undefined => {
    if (lent) {
      clearBatch(lent);
      free.push(lent);
    }
    lent = waiting.shift();
    return lent;
  };
  return {
    push(batch) {
      const copy = take(batch);
      copyInto(copy, batch);
      waiting.push(copy);
    },
    next,
    get waiting() {
      return waiting.length;
    },
    [Symbol.iterator]: () => ({
      next: () => {
        const value = next();
        return value ? { done: false, value } : { done: true, value: undefined };
      },
    }),
  };
}
