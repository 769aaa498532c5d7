import { noFeed, noOwnFeed, notFirst } from "../findings.ts";
import type { MoveReader } from "./reader.ts";
import { keyIndex, slot } from "./reader.ts";

/** Reports a motion before the first rapid, once; a rapid that may come first sets `moved` before. */
export function checkMoved(reader: MoveReader): void {
  if (!reader.moved && !reader.lost) reader.report(notFirst(reader.move.source, reader.operation.id));
  reader.moved = true;
}

/** Whether the move states a feed. */
export function statesFeed(reader: MoveReader): boolean {
  return (reader.move.seen & (1 << keyIndex.feed)) !== 0;
}

/** The feed of a line, arc or path, which holds from here on; a missing one is reported. */
export function effectiveFeed(reader: MoveReader, what: string): number {
  if (statesFeed(reader)) reader.feed = reader.move.values[slot.feed];
  else if (!reader.lost && reader.operation.feedMode === "inverse-time")
    reader.report(noOwnFeed(reader.move.source, what, "under inverse-time feed none holds"));
  else if (!reader.lost && reader.feed === 0) reader.report(noFeed(reader.move.source, what));
  return reader.feed;
}
