import type { Grids } from "./alter.ts";
import { alterations, nameOf } from "./alter.ts";
import type { Row } from "./rows.ts";
import { named } from "./rows.ts";

/** What was done to a sequence. */
export type ChangeKind = "dropped" | "swapped" | "doubled" | "altered";

/** A sequence with one thing wrong. */
export interface Change {
  readonly kind: ChangeKind;
  /** What it was done to: "dropped line", "altered spindle-start.direction". */
  readonly label: string;
  /** Row that was changed, or the first of two. */
  readonly at: number;
  /** Its rows; made when they are asked for. */
  readonly rows: () => Row[];
}

/** All changes of a sequence, one at a time. */
export function* changes(rows: readonly Row[], grids: Grids): Generator<Change> {
  for (let at = 0; at < rows.length; at++) {
    const row = rows[at];
    const next: Row | undefined = rows[at + 1];
    const put = (kind: ChangeKind, what: string, ...instead: Row[]): Change => ({
      kind,
      label: `${kind} ${what}`,
      at,
      rows: () => {
        const changed = spliced(rows, at, kind === "swapped" ? 2 : 1, instead);
        // What a row names or knows is itself the fault here.
        return /\.(known|stated) /.test(what) ? changed : named(changed);
      },
    });
    yield put("dropped", nameOf(row));
    yield put("doubled", nameOf(row), row, { ...row, section: undefined });
    if (next !== undefined) {
      const first = { ...next, section: row.section ?? next.section };
      yield put("swapped", `${nameOf(row)}, ${nameOf(next)}`, first, { ...row, section: undefined });
    }
    for (const { field, row: altered } of alterations(row, grids)) yield put("altered", field, altered);
  }
}

/** Rows with some put in the place of others; a section that began at a row which is gone begins at the next. */
function spliced(rows: readonly Row[], at: number, count: number, instead: readonly Row[]): Row[] {
  const rest = rows.slice(at + count);
  const [next] = rest;
  if (instead.length === 0 && next !== undefined)
    rest[0] = { ...next, section: next.section ?? rows[at].section };
  return [...rows.slice(0, at), ...instead, ...rest];
}
