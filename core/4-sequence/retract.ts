import type { RetractFacts } from "#base";
import { axisBit } from "#base";
import { setDistance } from "./distance.ts";
import { cancelLengthOffset } from "./offsets.ts";
import { machineMove, workRapid } from "./motion.ts";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { fact, need } from "./words.ts";

const ways = {
  "machine-move": (run, facts) => {
    machineMove(run, { z: facts.z });
    run.state.atSwapHeight = true;
  },
  "reference-return": (run, facts) => {
    const because = "the tool is retracted by a reference return";
    if (!need(run, "reference-return", because)) return;
    const resting = run.state.modes.distance ?? "absolute";
    // An intermediate point of zero increment is where the tool stands: Z then goes straight up.
    if (facts.intermediate === "incremental-zero") setDistance(run, "incremental");
    put(run, { kind: "reference-return", axes: axisBit.z });
    setDistance(run, resting);
    run.state.atSwapHeight = true;
  },
  clearance: (run) => {
    workRapid(run, { z: run.state.clearance });
  },
} as const satisfies Record<RetractFacts["by"], (run: Run, facts: RetractFacts) => void>;

/** Z alone to swap height, unless it stands there already. */
export function retract(run: Run): void {
  const facts = fact(
    run,
    run.machine.retract,
    "machine.retract.by",
    "the tool goes up before every swap and every stop",
  );
  if (!facts || standsAtSwapHeight(run, facts)) return;
  if (facts.cancelLengthFirst && run.state.lengthOffset !== 0) cancelLengthOffset(run);
  ways[facts.by](run, facts);
}

/** Whether Z is at swap height for certain; by clearance that is any place at or above it. */
export function standsAtSwapHeight(run: Run, facts: RetractFacts | undefined = run.machine.retract): boolean {
  const { state } = run;
  if (facts?.by !== "clearance") return state.atSwapHeight;
  return (state.work.known & axisBit.z) !== 0 && state.work.at[2] >= state.clearance;
}
