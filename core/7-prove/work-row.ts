import { linearAxes, rowKind } from "#base";
import { axesOfStart, checkArc } from "./arcs.ts";
import { checkLineAxes } from "./axis-feed.ts";
import { checkApproach, leaveApproach } from "./approach.ts";
import { checkCompensation } from "./compensation.ts";
import { checkWorkHeld, forgetAir, howToConfirm } from "./confirm.ts";
import { checkFeed, lineLength } from "./feed.ts";
import { findings } from "./findings.ts";
import { checkHole, touchesSpindle } from "./holes.ts";
import { checkOffsets, checkSuspended } from "./offsets.ts";
import { arrive, findMoved, isOneOfRapid, xyAxes } from "./position.ts";
import { checkAtSpeed, leaveCycle } from "./spindle.ts";
import { nowhere } from "./state.ts";
import { checkKeepOut, checkRapid } from "./stock.ts";
import { checkEndTravel, noteSpans } from "./travel.ts";
import { tell } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { axesText } from "./words.ts";

/** A motion row in work coordinates. */
export function workRow(watch: Watch): void {
  const { row, state } = watch;
  findMoved(row, state.work);
  checkHeldForWork(watch);
  checkSuspended(watch);
  if (checkApproach(watch)) checkOffsets(watch);
  checkKnown(watch);
  noteSpans(watch);
  checkCompensation(watch);
  checkKind(watch);
  trackFeed(watch);
  leaveApproach(watch);
  forgetAir(watch);
  arrive(row, state.work, state.machine);
  state.swap.stopBelowAt = row.kind === rowKind.rapid ? state.swap.stopBelowAt : nowhere;
}

/** swap/drawbar: no motion in the work before the drawbar holds for certain. */
function checkHeldForWork(watch: Watch): void {
  const { drawbar } = watch.state;
  // A full circle moves, though it ends where it starts.
  const moves = watch.row.moved !== 0 || watch.row.turns !== 0;
  if (!moves || (!drawbar.open && drawbar.confirmed)) return;
  const fault = drawbar.open ? "work" : "clamp-unconfirmed";
  tell(watch, findings["swap/drawbar"]({ fault, how: howToConfirm(watch, "clamped") }));
  drawbar.open = false;
  drawbar.confirmed = true;
}

/** motion/known: the axes that a motion needs, from its start or at its end. */
function checkKnown(watch: Watch): void {
  const { row, state } = watch;
  const named = state.work.known | row.stated;
  // The axes of a rapid at swap height may come one after the other: the approach holds until the last one has.
  const across = row.moved & xyAxes && !isOneOfRapid(watch) ? xyAxes : 0;
  const end = row.kind !== rowKind.rapid ? linearAxes : across;
  const missing = ((end & ~named) | (axesOfStart(row.kind) & ~state.work.known)) & ~state.excusedAxes;
  if (missing) {
    tell(watch, findings["motion/known"]({ axes: axesText(missing) }));
    state.excusedAxes |= missing;
  }
  state.excusedAxes &= ~row.stated;
}

/** The rules of each kind of row. */
function checkKind(watch: Watch): void {
  const { row, state } = watch;
  if (row.kind !== rowKind.hole) {
    leaveCycle(watch);
    // Any other motion ends a series, whether the program says so or not (NISTIR 6556 3.5.16).
    state.cycle = undefined;
  }
  if (row.kind === rowKind.rapid) {
    checkRapid(watch);
    checkKeepOut(watch, watch.facts.rapids === "straight");
    checkEndTravel(watch);
    return;
  }
  checkWorkHeld(watch);
  if (!state.spindle.inCycle) checkAtSpeed(watch);
  if (row.kind === rowKind.line) {
    const length = lineLength(watch, state.work);
    checkFeed(watch, length);
    checkLineAxes(watch, state.work, length);
    checkKeepOut(watch, true);
    checkEndTravel(watch);
  } else if (row.kind === rowKind.hole) {
    checkHole(watch);
    if (state.cycle && touchesSpindle(state.cycle)) state.spindle.inCycle = true;
  } else {
    checkArc(watch);
  }
}

/** Keeps the depth that a feed has reached at the present X and Y: the tool may go back there at rapid. */
function trackFeed(watch: Watch): void {
  const { row, state } = watch;
  const moves = (row.moved & xyAxes) !== 0;
  if (row.kind === rowKind.rapid) {
    if (moves) state.fedTo = Infinity;
    return;
  }
  const reached = row.kind === rowKind.hole && state.cycle ? state.cycle.depth : row.at[2];
  state.fedTo = moves ? reached : Math.min(state.fedTo, reached);
}
