import { turns } from "#base";
import type { SpindleDirection } from "#base";
import { commandSpindle, confirmSpindle, forgetAir, howToConfirm } from "./confirm.ts";
import { findings } from "./findings.ts";
import type { SwapEvent } from "./findings-spindle.ts";
import { beginApproach } from "./position.ts";
import { nowhere, unknownTool } from "./state.ts";
import { isPlace, tell, tellOnce } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { speedText } from "./words.ts";

/** Whether the tool in the spindle is known to be one that never turns, as none does in an air cut. */
export function neverTurns(watch: Watch): boolean {
  if (watch.job.airCut) return true;
  const { tool } = watch.state.swap;
  return tool !== undefined && !turns(tool.kind);
}

/** Whether the spindle is commanded to turn. */
export function isTurning(watch: Watch): boolean {
  const { turning } = watch.state.spindle;
  return turning === "cw" || turning === "ccw";
}

/** Speed word (NISTIR 6556 3.7.2, section number from memory). */
export function spindleSpeed(watch: Watch, rpm: number): void {
  const { spindle, windows } = watch.state;
  const { minRpm, maxRpm } = watch.facts.spindle;
  const limit =
    maxRpm !== undefined && rpm > maxRpm ? maxRpm : minRpm !== undefined && rpm < minRpm ? minRpm : undefined;
  if (limit !== undefined) {
    const detail = { speed: speedText(rpm), limit: speedText(limit), fast: rpm > limit };
    tell(watch, findings["limit/speed"](detail));
  }
  const changes = rpm !== spindle.rpm;
  spindle.rpm = rpm;
  spindle.rpmIsOfTool = true;
  windows.staleFeed = true;
  if (!isTurning(watch) || !changes) return;
  commandSpindle(watch, rpm);
  spindle.checkAt = watch.row.offset;
}

/**
 * Spindle start (NISTIR 6556 3.6.2). After a stop that came before Z was up, the tool may still stand in the work: the way
 * back begins at swap height (motion/approach; common practice, no source).
 */
export function spindleStart(watch: Watch, direction: SpindleDirection): void {
  const { spindle, swap, approach } = watch.state;
  checkRestarted(watch);
  checkHeld(watch);
  checkReversal(watch, direction);
  spindle.turning = spindle.direction = direction;
  spindle.oriented = false;
  spindle.checkAt = watch.row.offset;
  if (isPlace(swap.stopBelowAt) && !approach.up) beginApproach(watch, "the spindle start", true);
  swap.stopBelowAt = nowhere;
  forgetAir(watch);
  if (!spindle.everStarted && isPlace(spindle.stillFeedAt)) tellStillFeed(watch);
  spindle.everStarted = true;
  commandSpindle(watch, spindle.rpm);
}

/** The tool change has started the spindle again: its speed may be any. */
export function restartSpindle(watch: Watch): void {
  const { spindle } = watch.state;
  checkHeld(watch);
  spindle.turning = "unknown";
  spindle.restarted = spindle.timePassed = true;
  spindle.confirmed = spindle.excused = spindle.oriented = false;
  spindle.dwelt = 0;
  spindle.nowLow = 0;
  spindle.nowHigh = watch.facts.spindle.maxRpm ?? Number.NaN;
}

/** spindle/restarted: after a change that starts it again the spindle is stopped for certain before anything else. */
export function checkRestarted(watch: Watch): void {
  const { spindle } = watch.state;
  if (!spindle.restarted) return;
  spindle.restarted = false;
  if (spindle.turning === "stopped" && spindle.confirmed) return;
  tell(watch, findings["spindle/restarted"]({ how: howToConfirm(watch, "stopped") }));
  spindle.turning = "stopped";
  confirmSpindle(watch, false);
}

/** Spindle stop (NISTIR 6556 3.6.2). Restating a confirmed stop changes nothing. */
export function spindleStop(watch: Watch): void {
  const { spindle, swap, approach, program } = watch.state;
  if (program.moved && !approach.up && !isPlace(swap.stopBelowAt)) swap.stopBelowAt = watch.row.offset;
  spindle.checkAt = nowhere;
  if (spindle.turning === "stopped" && spindle.confirmed) return;
  spindle.turning = "stopped";
  commandSpindle(watch, 0);
}

/** The first feed motion with a spindle that stood still, once it is clear that there is a spindle to start. */
function tellStillFeed(watch: Watch): void {
  const { spindle } = watch.state;
  const detail = {
    fault: "stopped",
    speed: speedText(spindle.rpm),
    how: howToConfirm(watch, "at-speed"),
  } as const;
  tell(watch, findings["spindle/at-speed"](detail), spindle.stillFeedAt);
  spindle.stillFeedAt = nowhere;
}

/** spindle/clamped: what the spindle holds when it starts, and swap/drawbar: that it is held. */
function checkHeld(watch: Watch): void {
  const { swap, drawbar, once } = watch.state;
  if (drawbar.open) {
    tell(watch, findings["swap/drawbar"]({ fault: "start", how: "" }));
    drawbar.open = false;
    drawbar.confirmed = true;
    once.told.add("held");
  }
  const fault = heldFault(watch);
  if (fault && !once.told.has("held")) {
    once.told.add("held");
    tell(watch, findings["spindle/clamped"]({ fault }));
  } else if (watch.job.airCut) {
    tell(watch, findings["spindle/never-turns"]({ what: "in an air cut, in which it must stay off" }));
  } else if (swap.tool && neverTurns(watch)) {
    const what = `with tool ${swap.held}, a ${swap.tool.kind}, which must never turn`;
    tell(watch, findings["spindle/never-turns"]({ what }));
  }
  if (swap.held === 0) swap.held = unknownTool;
}

/** What is wrong with what the spindle holds; each is named once for a tool. */
function heldFault(watch: Watch): "empty" | "unknown" | "unswapped" | "unsensed" | undefined {
  const { swap, drawbar } = watch.state;
  if (swap.held === 0) return "empty";
  const waits =
    watch.facts.swap === "operator" && swap.selected !== unknownTool && swap.selected !== swap.held;
  if (waits) return "unswapped";
  if (swap.held === unknownTool && watch.job.known) return "unknown";
  return !drawbar.toolSensed && watch.facts.signals["tool-present"] !== undefined ? "unsensed" : undefined;
}

function checkReversal(watch: Watch, direction: SpindleDirection): void {
  const { spindle } = watch.state;
  if (spindle.direction === undefined || spindle.direction === direction) return;
  if (spindle.turning === "stopped" && spindle.confirmed) return;
  const fault = spindle.turning === "stopped" ? "unconfirmed" : "turning";
  tell(watch, findings["spindle/reversal"]({ direction, fault, how: howToConfirm(watch, "stopped") }));
}

/**
 * limit/tool: speed and direction against the tool, once speed and start are both stated. They may come in either
 * order, so the check waits for the next step that is neither.
 */
export function checkDueSpeed(watch: Watch): void {
  const { spindle, swap } = watch.state;
  const offset = spindle.checkAt;
  if (!isPlace(offset)) return;
  spindle.checkAt = nowhere;
  const { tool } = swap;
  const isOld = checkOldSpeed(watch, offset);
  if (!tool) return;
  const say = (what: string, limit: string): void =>
    tell(watch, findings["limit/tool"]({ tool: tool.number, what, limit }), offset);
  if (!isOld && spindle.rpm > tool.maxRpm)
    say(`it runs at ${speedText(spindle.rpm)}`, `its most is ${speedText(tool.maxRpm)}`);
  if (!isOld && spindle.rpm > 0 && spindle.rpm < tool.minRpm) {
    say(`it runs at ${speedText(spindle.rpm)}`, `its least is ${speedText(tool.minRpm)}`);
  }
  if (tool.direction && tool.direction !== spindle.turning)
    say(`it turns ${spindle.turning}`, `it cuts ${tool.direction} alone`);
}

/**
 * The other half of spindle/at-speed: a start states the speed of the tool that it turns. After a swap the speed in force is
 * that of the tool before, and at a stop the operator may have said another. Programs of others leave it modal, which the
 * reader points out where a dialect says it at each start. Without any speed the first feed finds it.
 *
 * @returns whether the speed is an old one
 */
function checkOldSpeed(watch: Watch, offset: number): boolean {
  const { spindle, swap } = watch.state;
  if (spindle.rpmIsOfTool || spindle.rpm === 0 || !watch.job.known) return false;
  const most = swap.tool && spindle.rpm > swap.tool.maxRpm ? speedText(swap.tool.maxRpm) : undefined;
  tell(watch, findings["spindle/old-speed"]({ speed: speedText(spindle.rpm), most }), offset);
  spindle.rpmIsOfTool = true;
  return true;
}

/** spindle/at-speed: before a feed motion in the work. */
export function checkAtSpeed(watch: Watch): void {
  const { spindle, approach } = watch.state;
  if (neverTurns(watch) || spindle.excused) return;
  const turning = isTurning(watch);
  if (turning && spindle.confirmed) return;
  approach.unconfirmedAt = nowhere;
  if (!turning && !watch.job.known && !spindle.everStarted) {
    // It may be a knife or a pen: said at the first start, or at the end.
    spindle.stillFeedAt = watch.row.offset;
    spindle.excused = true;
    return;
  }
  const fault = turning ? "unconfirmed" : "stopped";
  tell(
    watch,
    findings["spindle/at-speed"]({
      fault,
      speed: speedText(spindle.rpm),
      how: howToConfirm(watch, "at-speed"),
    }),
  );
  spindle.excused = true;
  if (turning) confirmSpindle(watch, false);
}

/** A dwell in revolutions: it takes time, but nobody can say how much, so that it confirms nothing. */
export function dwellByTurns(watch: Watch): void {
  checkTurnsCounted(watch);
  watch.state.spindle.timePassed = true;
}

/** spindle/at-speed: where the revolutions of a dwell are counted. With a spindle that stands it would never end, or be skipped. */
export function checkTurnsCounted(watch: Watch): void {
  const { spindle } = watch.state;
  if (!neverTurns(watch) && isTurning(watch) && spindle.confirmed && !spindle.inCycle) return;
  const how = howToConfirm(watch, "at-speed");
  tell(watch, findings["spindle/at-speed"]({ fault: "dwell", speed: speedText(spindle.rpm), how }));
}

/** spindle/stopped-for-swap: before anything that needs the spindle to stand still. */
export function checkStopped(watch: Watch, event: SwapEvent): void {
  const { spindle } = watch.state;
  if (spindle.turning === "stopped" && spindle.confirmed) {
    if (spindle.byTime)
      tellOnce(
        watch,
        "swap/timed stopped",
        findings["swap/timed"]({ what: "The stop of the spindle: stopped" }),
      );
    return;
  }
  tell(watch, findings["spindle/stopped-for-swap"]({ event, how: howToConfirm(watch, "stopped") }));
  spindle.turning = "stopped";
  confirmSpindle(watch, false);
}

/** The other half of spindle/stopped-for-swap: orientation, where the machine needs it at a swap. */
export function checkOriented(watch: Watch, event: SwapEvent): void {
  const { spindle } = watch.state;
  if (!watch.facts.spindle.orient || spindle.oriented) return;
  tell(watch, findings["spindle/not-oriented"]({ event }));
  spindle.oriented = true;
}

/** After a cycle that reverses or stops the spindle, speed and direction are unconfirmed until restated. */
export function leaveCycle(watch: Watch): void {
  const { spindle } = watch.state;
  if (!spindle.inCycle) return;
  spindle.inCycle = false;
  spindle.confirmed = false;
  spindle.excused = false;
  spindle.timePassed = true;
  spindle.dwelt = 0;
  // The cycle ends with a reversal or a restart, so the speed may still be anything up to the commanded one.
  spindle.nowLow = 0;
  spindle.nowHigh = spindle.rpm;
}

/** spindle/ends-stopped. */
export function checkEndsStopped(watch: Watch): void {
  const { spindle } = watch.state;
  if (isPlace(spindle.stillFeedAt)) {
    tell(watch, findings["spindle/still-feed"](), spindle.stillFeedAt);
    spindle.stillFeedAt = nowhere;
  }
  if (spindle.turning === "stopped" && spindle.confirmed) return;
  tell(
    watch,
    findings["spindle/ends-stopped"]({
      turning: spindle.turning !== "stopped",
      how: howToConfirm(watch, "stopped"),
    }),
  );
}
