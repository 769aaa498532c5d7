import type { FeedMode } from "#base";
import type { MoveKind, MoveReader } from "../moves/reader.ts";
import { keyIndex, slot } from "../moves/reader.ts";
import type { ClState, Feed } from "./state.ts";

/** A feed in the unit of the operation: per revolution it is given per minute where the operation has both. */
export function feedIn(mode: FeedMode, { value, per }: Feed, { rpm }: ClState): number {
  return mode === "per-minute" && per === "revolution"
    ? Math.max(1, Math.round((value * rpm) / 1000))
    : value;
}

/** Begins a move as if it had been read from JSON at a place. */
export function beginMove({ move }: MoveReader, kind: MoveKind, source: number): void {
  move.kind = keyIndex[kind];
  move.seen = 1 << keyIndex[kind];
  move.source = move.valueAt = source;
  move.keyAt.fill(source);
  move.wordAt.fill(source);
  move.words = 0;
  move.faulty = false;
}

/** States a feed with the move that was begun. */
export function stateFeed({ move, operation }: MoveReader, feed: Feed | undefined, state: ClState): void {
  if (feed === undefined) return;
  move.values[slot.feed] = feedIn(operation.feedMode, feed, state);
  move.seen |= 1 << keyIndex.feed;
}

/** Gives the move that was begun the place where the tool is to go. */
export function setTarget({ move, operation }: MoveReader, { x, y, toolZ }: ClState): void {
  const { values } = move;
  values[slot.x] = x;
  values[slot.y] = y;
  values[slot.z] = toolZ ?? operation.clearance;
}
