import type { Times } from "#base";
import { sumOf } from "./ledger.ts";
import type { ClockState } from "./state.ts";

/** Seconds of a change by hand where no file says it (no source; it is told with the times). */
const assumedByHand = 180;

/** What the clock has counted, as plain data. */
export function timesOf(state: ClockState): Times {
  const { ledger, operations, told } = state;
  state.lookAhead.rest();
  ledger.settle(state.operation);
  const each = operations.map(({ id, name, tool }, index) => ({ id, name, tool, ...ledger.parts(index) }));
  const all = operations.length === 0 ? [ledger.parts(0)] : each;
  const tools = [...new Set(each.map(({ tool }) => tool))].map((tool) => ({
    tool,
    ...sumOf(each.filter((one) => one.tool === tool)),
  }));
  const total = sumOf(all);
  if (!state.rates.accelerates)
    told.add("Times come from feeds alone: machine.acceleration is not stated for X, Y and Z.");
  return {
    ...total,
    basis: state.rates.accelerates ? "acceleration" : "feeds",
    operations: each,
    tools,
    stops: state.stops,
    optionalStops: state.optionalStops,
    swaps: swapsOf(state, total.swap),
    assumptions: [...told],
  };
}

function swapsOf({ automatic, byHand, machine, told }: ClockState, spent: number): Times["swaps"] {
  const { operatorSwap } = machine.dynamics;
  if (operatorSwap === undefined && automatic > 0)
    told.add(
      `A change by hand is taken to last ${String(assumedByHand / 60)} min (machine.swap-time.operator is not stated).`,
    );
  const oneByHand = operatorSwap === undefined ? assumedByHand : operatorSwap / 1e6;
  const saving = automatic === 0 ? 0 : Math.round((automatic * oneByHand - spent) * 1000) / 1000;
  return { automatic, byHand, saving, oneByHand };
}
