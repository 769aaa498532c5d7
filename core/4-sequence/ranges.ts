import type { Batch, Capabilities, FeedMode, Report, UnitSystem } from "#base";
import { rowKind } from "#base";
import { refusal } from "./findings.ts";

/** What has been passed of a program: the feed mode, whether words are ways, and where the axes stand, atoms. */
interface Passed {
  feedMode: FeedMode;
  incremental: boolean;
  readonly at: [number, number, number];
}

type Largest = NonNullable<Capabilities["largest"]>;

const keys = {
  length: "numbers.length",
  "per-minute": "numbers.feed-per-minute",
  "per-revolution": "numbers.feed-per-revolution",
  "inverse-time": "numbers.inverse-time",
  speed: "numbers.speed",
  dwell: "numbers.dwell",
} as const satisfies Record<keyof Largest, string>;

/** Refuses numbers that have more digits than their address, before a block with them is written. */
export function* withinDigits(
  batches: Iterable<Batch>,
  { largest }: Capabilities,
  units: UnitSystem,
  report: Report,
): Generator<Batch> {
  if (largest === undefined) {
    yield* batches;
    return;
  }
  const passed: Passed = { feedMode: "per-minute", incremental: false, at: [0, 0, 0] };
  const tell = (what: keyof Largest, value: number, source: number): void => {
    const limit = largest[what];
    const most = typeof limit === "object" ? limit[units] : (limit ?? Infinity);
    if (Math.abs(value) <= most) return;
    const message = `a ${what === "length" ? "place, way or tolerance" : what} of this program has more digits than the dialect can write`;
    const fix =
      "state a smaller value in the job, or more digits (`digits`, `whole-digits`) in the dialect if the controller takes them";
    report(refusal("lower/range", message, fix, source, keys[what]));
  };
  for (const batch of batches) {
    const columns = [batch.x, batch.y, batch.z];
    for (let row = 0; row < batch.count; row++)
      if (batch.kind[row] === rowKind.aside) passStep(batch, row, passed, tell);
      else passMotion(batch, columns, row, passed, tell);
    yield batch;
  }
}

type Tell = (what: keyof Largest, value: number, source: number) => void;

function passStep(batch: Batch, row: number, passed: Passed, tell: Tell): void {
  const step = batch.asides[batch.aside[row]];
  const source = batch.source[row];
  if (step.kind === "spindle-speed") tell("speed", step.rpm, source);
  if (step.kind === "dwell") tell("dwell", step.revolutions ?? step.time, source);
  if (step.kind === "path") tell("length", step.tolerance ?? 0, source);
  if (step.kind === "feed-mode") passed.feedMode = step.value;
  if (step.kind === "distance") passed.incremental = step.value === "incremental";
}

/** @param columns the places of the batch, axis by axis */
function passMotion(
  batch: Batch,
  columns: readonly Float64Array[],
  row: number,
  passed: Passed,
  tell: Tell,
): void {
  for (let axis = 0; axis < 3; axis++) {
    if ((batch.known[row] & (1 << axis)) === 0) continue;
    const place = columns[axis][row];
    tell("length", passed.incremental ? place - passed.at[axis] : place, batch.source[row]);
    passed.at[axis] = place;
  }
  if (batch.feed[row] > 0) tell(passed.feedMode, batch.feed[row], batch.source[row]);
}
