/** The rows of two programs at one place of the job, paired one with the other as well as their order allows. */
import { frame, isArc, rowKind } from "#base";
import type { RowRecord } from "#prove";
import { sameRow } from "#prove";
import { diffArrays } from "diff";
import type { SaidRow } from "./blocks.ts";

/** A row of the first program and the row of the second that stands for it; one alone where the other has none. */
export interface Match {
  readonly first: number | undefined;
  readonly second: number | undefined;
}

/** Comparisons of rows at one place that are worked out in full; beyond them, equal kinds are paired. */
const mostComparisons = 250_000;

/** Pairs rows in order, for the highest sum of likeness. */
export function alignRows(first: readonly SaidRow[], second: readonly SaidRow[]): Match[] {
  let same = 0;
  while (same < first.length && same < second.length && equal(first[same], second[same])) same++;
  const head = Array.from({ length: same }, (_, index): Match => ({ first: index, second: index }));
  const [one, other] = [first.slice(same), second.slice(same)];
  if (one.length === 0 && other.length === 0) return head;
  const rest = one.length * other.length > mostComparisons ? alignKinds(one, other) : alignBest(one, other);
  const moved = (index: number | undefined): number | undefined =>
    index === undefined ? undefined : index + same;
  return [...head, ...rest.map((match) => ({ first: moved(match.first), second: moved(match.second) }))];
}

/** Whether two rows mean the same. */
export function equal(one: SaidRow, other: SaidRow): boolean {
  // Which axes a motion names is a matter of form: what moves shows in its places.
  return one.feedMode === other.feedMode && sameRow({ ...one.record, stated: 0 }, other.record);
}

/** Likeness of two rows: 0 where one cannot stand for the other. */
function likeness(one: SaidRow, other: SaidRow): number {
  const [a, b] = [one.record, other.record];
  // Distances are set here and there around a return; other steps tell better where both programs are.
  if (equal(one, other)) return a.step?.kind === "distance" ? 6 : 12;
  if (a.step !== undefined || b.step !== undefined)
    return a.step === undefined || b.step === undefined ? 0 : stepLikeness(a, b);
  if (a.frame !== b.frame) return 0;
  const sameEnd = a.at.every((place, axis) => place === b.at[axis]) ? 5 : 0;
  if (isArc(a.kind) && isArc(b.kind)) return 3 + sameEnd;
  if (a.kind === b.kind) return (a.frame === frame.machine ? 1 : 3) + sameEnd;
  const cuts = a.kind !== rowKind.rapid && b.kind !== rowKind.rapid;
  return cuts && sameEnd > 0 ? 2 : 0;
}

function stepLikeness({ step: a }: RowRecord, { step: b }: RowRecord): number {
  if (a === undefined || b === undefined || a.kind !== b.kind) return 0;
  if (a.kind === "auxiliary" && b.kind === "auxiliary") return a.action === b.action ? 6 : 0;
  if (a.kind === "coolant" && b.kind === "coolant") return a.on === b.on ? 5 : 0;
  if (a.kind === "distance" || a.kind === "message") return 0;
  return a.kind === "wait" || a.kind === "dwell" ? 2 : 6;
}

function alignBest(first: readonly SaidRow[], second: readonly SaidRow[]): Match[] {
  const width = second.length + 1;
  const best = new Float64Array((first.length + 1) * width);
  for (let i = first.length - 1; i >= 0; i--)
    for (let j = second.length - 1; j >= 0; j--) {
      const like = likeness(first[i], second[j]);
      const paired = like === 0 ? 0 : like + best[(i + 1) * width + j + 1];
      best[i * width + j] = Math.max(paired, best[(i + 1) * width + j], best[i * width + j + 1]);
    }
  const matches: Match[] = [];
  let [i, j] = [0, 0];
  while (i < first.length && j < second.length) {
    const like = likeness(first[i], second[j]);
    if (like > 0 && best[i * width + j] === like + best[(i + 1) * width + j + 1])
      matches.push({ first: i++, second: j++ });
    else if (best[i * width + j] === best[(i + 1) * width + j])
      matches.push({ first: i++, second: undefined });
    else matches.push({ first: undefined, second: j++ });
  }
  while (i < first.length) matches.push({ first: i++, second: undefined });
  while (j < second.length) matches.push({ first: undefined, second: j++ });
  return matches;
}

function alignKinds(first: readonly SaidRow[], second: readonly SaidRow[]): Match[] {
  const kindOf = ({ record }: SaidRow): string => record.step?.kind ?? String(record.kind);
  const changes = diffArrays(first.map(kindOf), second.map(kindOf));
  let [i, j] = [0, 0];
  return changes.flatMap(({ added, removed, value }) =>
    value.map(() => ({ first: added ? undefined : i++, second: removed ? undefined : j++ })),
  );
}
