import { linearAxes } from "#base";
import { setAxisFeeds } from "./axis-feed.ts";
import { keepOutColumns, stockColumn } from "./boxes.ts";
import { feedWindow } from "./feed.ts";
import { isTurning, neverTurns } from "./spindle.ts";
import type { Column } from "./window-state.ts";
import { setTravelWindow } from "./travel.ts";
import { isPlace } from "./watch.ts";
import type { Watch } from "./watch.ts";

/** Works out anew what rows are compared with, after a change of offset, tool, speed or feed mode. */
export function refreshWindows(watch: Watch): void {
  const { windows } = watch.state;
  if (windows.staleAxes) {
    setTravelWindow(watch, windows.staleAxes);
    windows.columns = keepOutColumns(watch);
    windows.around = aroundAll(windows.columns);
    windows.stock = stockColumn(watch);
    windows.stockTop = windows.stock ? windows.stock.top : -Infinity;
    windows.staleAxes = 0;
  }
  if (!windows.staleFeed) return;
  const { low, high } = feedWindow(watch);
  windows.lowFeed = low;
  windows.highFeed = high;
  setAxisFeeds(watch);
  windows.staleFeed = false;
}

/** The smallest column around others; an empty one around none. */
function aroundAll(columns: readonly Column[]): Column {
  return {
    name: "",
    lowX: Math.min(...columns.map((column) => column.lowX)),
    highX: Math.max(...columns.map((column) => column.highX)),
    lowY: Math.min(...columns.map((column) => column.lowY)),
    highY: Math.max(...columns.map((column) => column.highY)),
    top: Math.max(...columns.map((column) => column.top)),
    corner: 0,
  };
}

/**
 * Whether nothing is pending, so that rapids and lines in work coordinates within the windows break no rule. Every
 * condition that a rule waits for has to appear here.
 */
export function mayCruise(watch: Watch): boolean {
  const { state } = watch;
  const { approach, spindle, drawbar, compensation, swap } = state;
  const placed = (state.work.known & linearAxes) === linearAxes && state.excusedAxes === 0;
  const free = !approach.mustRetract && !approach.mustXy && (watch.traits.byClearance || !approach.up);
  const fast =
    neverTurns(watch) || spindle.excused || (isTurning(watch) && spindle.confirmed && !spindle.inCycle);
  const pending =
    isPlace(approach.unconfirmedAt) ||
    isPlace(approach.lowAt) ||
    isPlace(spindle.checkAt) ||
    isPlace(swap.stopBelowAt);
  const offset = !watch.traits.workWords || state.offsets.work > 0 || state.offsets.workExcused;
  const clamped = watch.facts.confirm["hold-down"] === undefined || state.workHeld.confirmed;
  const held = !drawbar.open && drawbar.confirmed && clamped;
  const program = state.program.moved && !state.program.ended;
  return (
    placed &&
    free &&
    fast &&
    !pending &&
    offset &&
    held &&
    program &&
    !compensation.entry &&
    !compensation.exit
  );
}
