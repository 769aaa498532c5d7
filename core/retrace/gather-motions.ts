import type { Batch } from "#base";
import { isArc, linearAxes, rotaryAxes, rowKind } from "#base";
import { radiiDiffer } from "#job";
import { arcEnds, between as distance } from "./arcs.ts";
import * as findings from "./findings.ts";
import { toolInHand } from "./gather-tools.ts";
import type { Gathering } from "./gathering.ts";
import { current, tellOnce, tellPlace } from "./gathering.ts";
import { holeKindOf, leadOf, topOf } from "./holes.ts";
import type { Walk } from "./walk.ts";
import { ownLengthOffset } from "./state.ts";

/** Gathers what motions of one stretch show, and what a job cannot say of them. */
export function motions(all: Gathering, walk: Walk, batch: Batch, from: number, to: number): void {
  const { kind, known, stated, source, feed } = batch;
  const draft = current(all);
  const { feedMode } = walk.state;
  let cuts = -1;
  if (draft.cut && draft.spindle !== undefined && walk.state.direction === undefined && draft.stoodAt < 0)
    draft.stoodAt = source[from];
  for (let row = from; row < to; row++) {
    const is = kind[row];
    if (is === rowKind.rapid) continue;
    const placed = known[row] | walk.kept;
    if ((placed & linearAxes) !== linearAxes) tellPlace(all, placed, source[row]);
    if (cuts < 0) cuts = row;
    // A hole is come to by its own cycle; a cut begins where the tool is.
    const begun = (row === from ? walk.known : known[row - 1]) | walk.kept;
    if (is !== rowKind.hole && (begun & linearAxes) !== linearAxes) tellPlace(all, begun, source[row]);
    if (is === rowKind.line) {
      if (
        stated[row] > linearAxes &&
        (stated[row] & linearAxes) !== 0 &&
        (stated[row] & rotaryAxes) !== 0 &&
        feedMode !== "inverse-time"
      )
        tellOnce(draft.told, "rotary", () => void all.report(findings.rotaryTogether(source[row])));
    } else if (isArc(is)) checkArc(all, walk, batch, row, from);
    else hole(all, walk, batch, row);
    if (feed[row] === 0) tellOnce(draft.told, "feed", () => void all.report(findings.noFeed(source[row])));
  }
  if (cuts >= 0) cut(all, walk, batch, cuts, to);
  all.lastSource = source[to - 1];
}

/** Motions at feed, of which the first is at a row. */
function cut(all: Gathering, walk: Walk, batch: Batch, row: number, to: number): void {
  const draft = current(all);
  const { state } = walk;
  const source = batch.source[row];
  if (state.direction !== undefined && state.rpm > 0) {
    if (draft.spindle === undefined && !draft.cut)
      draft.spindle = { rpm: state.rpm, direction: state.direction };
    else if (draft.spindle === undefined)
      tellOnce(draft.told, "stands", () => void all.report(findings.spindleStands(draft.source)));
  } else if (draft.spindle !== undefined)
    tellOnce(draft.told, "stands", () => void all.report(findings.spindleStands(source)));
  draft.cut = true;
  const tool = toolInHand(all);
  if (ownLengthOffset(state) === 0 && state.toolOffset === undefined && tool.lengthless < 0)
    tool.lengthless = source;
  tool.turned ||= draft.spindle !== undefined;
  if (batch.kind.subarray(row, to).some((kind) => kind !== rowKind.rapid && kind !== rowKind.hole))
    tool.mills = true;
  const { feedMode } = state;
  if (draft.feedModes.includes(feedMode)) return;
  draft.feedModes.push(feedMode);
  if (draft.feedModes.length < 2) return;
  if (draft.feedModes.includes("inverse-time")) all.report(findings.feedModes(source));
  else all.report(findings.feedConverted(source));
}

function checkArc(all: Gathering, walk: Walk, batch: Batch, row: number, from: number): void {
  const before = row === from ? walk.at : [batch.x[row - 1], batch.y[row - 1], batch.z[row - 1]];
  const ends = arcEnds(batch, row, before);
  if (ends === undefined) {
    all.report(findings.arcReach(batch.source[row]));
    return;
  }
  const first = distance(ends.centre, ends.start);
  const second = distance(ends.centre, ends.end);
  if (first === 0 || second === 0 || radiiDiffer(first, second))
    all.report(findings.arcRadius(batch.source[row]));
}

function hole(all: Gathering, walk: Walk, batch: Batch, row: number): void {
  const { cycle } = walk.state;
  if (cycle === undefined) return;
  const kind = holeKindOf(cycle);
  if (kind === undefined) return;
  toolInHand(all).holes.add(kind);
  const source = batch.source[row];
  const { told } = current(all);
  if (kind === "tap" && leadOf(cycle, batch.feed[row], walk.state) === 0)
    tellOnce(told, "tap", () => void all.report(findings.tapStands(source)));
  tellOnce(all.told, "top", () => void all.report(findings.topTaken(source, topOf(cycle, all.stock).from)));
}
