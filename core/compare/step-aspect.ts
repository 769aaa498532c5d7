/** In which way the steps of two programs differ, in the words of the trade. */
import { isArc, rowKind } from "#base";
import type { PlacedRow } from "./cells.ts";
import type { TopicName } from "./topics.ts";

/** Topics about what confirms that something is so. */
const confirmations: readonly TopicName[] = [
  "at-speed",
  "stopped",
  "released",
  "clamped",
  "air",
  "hold-down",
];

/**
 * "only in A", "written longhand in B", "by wait in A, by dwell in B", "other steps". A and B stand for the programs, whatever
 * they are called in a report.
 */
export function aspectOf(
  topic: TopicName,
  first: readonly PlacedRow[],
  second: readonly PlacedRow[],
): string {
  if (confirmations.includes(topic)) return confirmed(first, second);
  if (first.length === 0) return "only in B";
  if (second.length === 0) return "only in A";
  if (topic === "cycle") return cycles(first, second);
  if (topic === "arc-form" || topic === "arc-feed") return arcs(first, second);
  return "other steps";
}

function confirmed(first: readonly PlacedRow[], second: readonly PlacedRow[]): string {
  if (first.length === 0) return "no step in A";
  if (second.length === 0) return "no step in B";
  const [one, other] = [wayOf(first), wayOf(second)];
  return one === other ? `by another ${one}` : `by ${one} in A, by ${other} in B`;
}

/** A wait that a dwell goes before, for a contact to fall off, is a wait; a stop at which somebody looks is neither. */
function wayOf(rows: readonly PlacedRow[]): string {
  const kinds = rows.map(({ row }) => row.record.step?.kind);
  if (kinds.includes("pause")) return "stop for the operator";
  return kinds.includes("wait") ? "wait" : "dwell";
}

function cycles(first: readonly PlacedRow[], second: readonly PlacedRow[]): string {
  const isCycle = ({ row }: PlacedRow): boolean =>
    row.record.kind === rowKind.hole || row.record.step?.kind === "cycle-definition";
  const [one, other] = [first.some(isCycle), second.some(isCycle)];
  if (one === other) return "other values";
  return one ? "written longhand in B" : "written longhand in A";
}

function arcs(first: readonly PlacedRow[], second: readonly PlacedRow[]): string {
  const [one, other] = [shapeOf(first), shapeOf(second)];
  return one === other ? "cut otherwise" : `${one} in A, ${other} in B`;
}

function shapeOf(rows: readonly PlacedRow[]): string {
  const kinds = rows.map(({ row }) => row.record.kind);
  if (!kinds.some(isArc)) return "chords";
  return kinds.some((kind) => kind >= rowKind.radiusXy && kind <= rowKind.radiusYz)
    ? "by radius"
    : "by centre";
}
