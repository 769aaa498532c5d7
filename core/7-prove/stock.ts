import { axisBit, lengthText, linearAxes } from "#base";
import { isOver, lineEnters, sweepEnters } from "./boxes.ts";
import { findings } from "./findings.ts";
import { goesDown } from "./feed.ts";
import { xyAxes } from "./position.ts";
import { tell, tellOnce } from "./watch.ts";
import type { Watch } from "./watch.ts";

/** Names a rapid in the stock, with its lowest Z. */
export function tellInStock(watch: Watch, fault: "across" | "down" | "retract", z: number): void {
  const { units } = watch.state.modes;
  const top = lengthText(watch.job.stock?.max[2] ?? 0, units);
  tell(watch, findings["motion/rapid-in-stock"]({ fault, z: lengthText(z, units), top }));
}

/** motion/rapid-in-stock for a rapid in work coordinates. */
export function checkRapid(watch: Watch): void {
  const { row, state } = watch;
  const { stock } = state.windows;
  if (!stock) {
    if (watch.job.known) tellOnce(watch, "stock", findings["motion/stock-unknown"]());
    return;
  }
  // At swap height Z is not known in work coordinates, and clear of everything.
  if (!(row.known & axisBit.z)) return;
  if (row.moved & xyAxes) checkAcross(watch);
  else if (
    goesDown(watch) &&
    row.at[2] < stock.top &&
    isOver(stock, row.at[0], row.at[1]) &&
    row.at[2] < state.fedTo
  ) {
    tellInStock(watch, "down", row.at[2]);
  }
}

/** A rapid that moves X or Y: its straight path, or all that a dog-leg may sweep. */
function checkAcross(watch: Watch): void {
  const { row, state, facts } = watch;
  const { stock } = state.windows;
  if (!stock) return;
  const known = (state.work.known & linearAxes) === linearAxes;
  const lowest = known ? Math.min(row.at[2], state.work.at[2]) : row.at[2];
  const enters = facts.rapids === "straight" ? lineEnters : sweepEnters;
  const crosses = known ? enters(stock, state.work.at, row.at) : row.at[2] < stock.top;
  if (crosses) tellInStock(watch, "across", lowest);
}

/** limit/keep-out for a rapid or a line in work coordinates. */
export function checkKeepOut(watch: Watch, straight: boolean): void {
  const { row, state } = watch;
  const { columns, around } = state.windows;
  if (columns.length === 0 || !(row.known & axisBit.z)) return;
  // Where X or Y is still to come, the tool is at swap height, and the row that brings it is looked at.
  if ((row.known & xyAxes) !== xyAxes) return;
  const known = (state.work.known & linearAxes) === linearAxes;
  const from = known ? state.work.at : row.at;
  if (!sweepEnters(around, from, row.at)) return;
  const enters = straight ? lineEnters : sweepEnters;
  for (const column of columns) {
    if (enters(column, from, row.at)) tell(watch, findings["limit/keep-out"]({ box: column.name }));
  }
}
