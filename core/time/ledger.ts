import type { TimeParts } from "#base";

/** What time goes to; the order is that of the columns. */
export const uses = ["cutting", "rapid", "dwell", "spindle", "swap"] as const;

export type Use = (typeof uses)[number];

const columnOf = { cutting: 0, rapid: 1, dwell: 2, spindle: 3, swap: 4 } as const satisfies Record<
  Use,
  number
>;

/** Seconds by operation and use. What goes on between two motions in the work is kept apart until it shows what it was for. */
export interface Ledger {
  /** Seconds from the start on. */
  elapsed: number;
  /** Motion in the work. */
  work(operation: number, use: Use, seconds: number): void;
  /** What happens between two motions in the work. */
  between(use: Use, seconds: number): void;
  /** A tool is changed without a hand. */
  swaps(): void;
  /** Ends what is between, for an operation; gives whether a tool was changed in it. */
  settle(operation: number): boolean;
  /** Seconds of an operation. */
  parts(operation: number): TimeParts;
}

/** @param operations how many there are, at least 1 */
export function createLedger(operations: number): Ledger {
  const columns = new Float64Array(operations * uses.length);
  const pending = new Float64Array(uses.length);
  const state = { swaps: false, pending: false };
  const ledger: Ledger = {
    elapsed: 0,
    work: (operation, use, seconds) => {
      columns[operation * uses.length + columnOf[use]] += seconds;
      ledger.elapsed += seconds;
    },
    between: (use, seconds) => {
      pending[columnOf[use]] += seconds;
      ledger.elapsed += seconds;
      state.pending = true;
    },
    swaps: () => {
      state.swaps = state.pending = true;
    },
    settle: (operation) => {
      if (!state.pending) return false;
      const { swaps } = state;
      uses.forEach((use, column) => {
        // The spindle stops and starts for the tool's sake; all else on the way is the swap.
        const named = swaps && use !== "spindle" ? "swap" : use;
        columns[operation * uses.length + columnOf[named]] += pending[column];
      });
      pending.fill(0);
      state.swaps = state.pending = false;
      return swaps;
    },
    parts: (operation) => {
      const at = operation * uses.length;
      return partsOf(Array.from(columns.subarray(at, at + uses.length)));
    },
  };
  return ledger;
}

/** Seconds by use, in the order of the uses, with their sum. */
function partsOf(seconds: readonly number[]): TimeParts {
  const [cutting, rapid, dwell, spindle, swap] = seconds.map(toMilliseconds);
  const total = toMilliseconds(cutting + rapid + dwell + spindle + swap);
  return { cutting, rapid, dwell, spindle, swap, total };
}

/** The sum of several. */
export function sumOf(list: readonly TimeParts[]): TimeParts {
  return partsOf(uses.map((use) => list.reduce((sum, parts) => sum + parts[use], 0)));
}

/** Finer than a thousandth of a second is no estimate. */
function toMilliseconds(seconds: number): number {
  return Math.round(seconds * 1000) / 1000;
}
