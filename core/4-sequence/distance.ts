import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { fact, need } from "./words.ts";

/** The distance mode in which the moves of the job are written. */
export function programDistance(run: Run): "absolute" | "incremental" {
  const said = fact(
    run,
    run.request.capabilities.distance,
    "distance.programs-in",
    "its moves are absolute or incremental",
  );
  return said ?? "absolute";
}

/** Goes over to a distance mode unless it is in force. */
export function setDistance(run: Run, value: "absolute" | "incremental"): void {
  const { modes } = run.state;
  if (modes.distance === value) return;
  // A controller without words for it is always in the mode that its programs are written in.
  const words = run.request.capabilities.words;
  if (words[`distance.${value}`] === false && value === programDistance(run)) {
    modes.distance = value;
    return;
  }
  if (need(run, `distance.${value}`, reasons[value])) put(run, { kind: "distance", value });
  modes.distance = value;
}

const reasons = {
  absolute: "a motion to a place that is known only by its coordinates cannot be incremental",
  incremental: "it is written in increments, or its reference return is",
} as const;
