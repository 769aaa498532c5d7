import type { Batch } from "#base";
import { axisBit } from "#base";
import type { Holes } from "#job";
import { holeKindOf, holesOf } from "./holes.ts";
import type { RowWriter } from "./row-batches.ts";
import { closeHoles, copyColumns, push, pushRapid, room } from "./row-batches.ts";
import type { Walk } from "./walk.ts";
import { placeIn } from "./walk.ts";

/** A hole, and before it the head of its move where that is another. */
export function writeHole(writer: RowWriter, walk: Walk, batch: Batch, row: number): void {
  const { state } = walk;
  const { cycle } = state;
  const kind = cycle && holeKindOf(cycle);
  if (cycle === undefined || kind === undefined) return;
  const source = batch.source[row];
  const converts = state.feedMode === "per-revolution" && writer.draft?.feedMode === "per-minute";
  const raw = batch.feed[row];
  const feed = converts && kind !== "tap" ? Math.max(1, Math.round((raw * state.rpm) / 1000)) : raw;
  const holes = holesOf(cycle, kind, feed, state, writer.stock);
  if (writer.holes === undefined || !sameHoles(writer.holes, holes)) {
    closeHoles(writer, source);
    riseTo(writer, cycle.level, cycle.between, source);
    push(writer, holes, source);
    writer.holes = holes;
  }
  const target = room(writer, 1, batch.abc !== undefined);
  copyColumns(target, batch, row, row + 1);
  const index = target.count++;
  target.stated[index] = target.known[index] = axisBit.x | axisBit.y;
  target.feed[index] = holes.feed;
  writer.settling = false;
  for (let axis = 0; axis < 3; axis++) writer.at[axis] = placeIn(batch, row, axis);
}

/** The level between holes is the Z before them: where a series goes on with other levels, that is to be reached first. */
function riseTo(writer: RowWriter, level: number, between: "initial" | "retract", source: number): void {
  if (between !== "initial" || writer.at[2] >= level) return;
  writer.at[2] = level;
  pushRapid(writer, axisBit.z, source);
}

function sameHoles(first: Holes, second: Holes): boolean {
  return (Object.keys(first) as (keyof Holes)[]).every((key) => first[key] === second[key]);
}
