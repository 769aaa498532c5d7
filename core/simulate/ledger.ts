import type { Finding } from "#base";
import { words } from "./findings.ts";
import type { Kind, Meeting } from "./findings.ts";
import type { SimulationFacts } from "./facts.ts";

/** What was met of one cause in one part of the work. */
interface Entry extends Meeting {
  rows: number;
  /** Row that was counted last: the chords of an arc are one motion. */
  lastRow: number;
  worst: number;
  /** Byte offset of the worst. */
  offset: number;
}

/** What was met, by cause and part: a finding each, however many motions it was. */
export interface Ledger {
  readonly entries: Map<string, Entry>;
  readonly facts: SimulationFacts;
}

/** A ledger without entries. */
export function createLedger(facts: SimulationFacts): Ledger {
  return { entries: new Map(), facts };
}

/**
 * Enters one motion.
 *
 * @param part id of the operation
 * @param detail what tells causes of one kind apart, such as the name of the fixture
 * @param depth mm
 * @param row number of the row, by which a motion of several pieces is counted once
 */
export function enter(
  { entries }: Ledger,
  kind: Kind,
  part: string,
  tool: number,
  detail: string,
  depth: number,
  at: { readonly row: number; readonly offset: number },
): void {
  const key = `${kind} ${part} ${detail}`;
  const known = entries.get(key);
  if (known === undefined) {
    const { row, offset } = at;
    entries.set(key, { kind, part, tool, detail, rows: 1, lastRow: row, worst: depth, offset });
    return;
  }
  if (known.lastRow !== at.row) known.rows++;
  known.lastRow = at.row;
  if (depth <= known.worst) return;
  known.worst = depth;
  known.offset = at.offset;
}

/** The findings of all entries, in the order in which they were first met. */
export function findingsOf({ entries, facts }: Ledger): Finding[] {
  return [...entries.values()].map((entry) => ({
    ...words(entry, facts.units),
    place: { source: facts.source, offset: entry.offset },
  }));
}
