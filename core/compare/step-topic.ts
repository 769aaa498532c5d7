/** What a step of a program is about, by its kind and by the steps around it. */
import { axisBit, frame, isArc, rowKind } from "#base";
import type { Step, StepKind } from "#base";
import { startPlace } from "./blocks.ts";
import type { PlacedRow } from "./cells.ts";
import type { TopicName } from "./topics.ts";
import { topicOfStep } from "./topics.ts";

/** What is known where a step stands. */
export interface Surroundings {
  /** Rows of its program at its place in the job, in order. */
  readonly rows: readonly PlacedRow[];
  /** Where it stands among them. */
  readonly at: number;
}

/** What a step is about. */
export function topicOf({ rows, at }: Surroundings): TopicName {
  const { record } = rows[at].row;
  const { step } = record;
  if (isInRack(rows, at)) return isHood(step) ? "hood" : "swap";
  if (step === undefined) return topicOfMotion(rows, at);
  if (step.kind === "wait" || step.kind === "dwell") return topicOfPause(rows, at, step);
  if ((step.kind === "pause" || step.kind === "message") && asksToSee(rows, at)) return "stopped";
  if (step.kind === "auxiliary") return isHood(step) ? "hood" : step.action === "opaque" ? "opaque" : "swap";
  if (step.kind === "distance" && behindChange(rows, at)) return "retract-after-change";
  if (step.kind === "reference-return" && behindChange(rows, at)) return "retract-after-change";
  if (step.kind === "select-tool" && isPreselected(rows, at)) return "preselect";
  if (step.kind === "length-offset" && step.number === 0) return "length-cancel";
  if (step.kind === "path" && step.tolerance !== undefined) return "tolerance";
  return modeTopic(rows, at, step) ?? topicOfStep[step.kind];
}

function topicOfMotion(rows: readonly PlacedRow[], at: number): TopicName {
  const { kind, frame: of, stated } = rows[at].row.record;
  if (isArc(kind)) return "arc-form";
  if (kind === rowKind.hole) return "cycle";
  if (of === frame.machine) {
    if ((stated & axisBit.z) === 0 && endsSoon(rows, at)) return "park";
    return behindChange(rows, at) ? "retract-after-change" : "retract";
  }
  return kind === rowKind.rapid ? "rapids" : "motion";
}

/** Modes that have no other reason of their own than where they stand. */
const placedModes: readonly StepKind[] = [
  "units",
  "plane",
  "distance",
  "feed-mode",
  "path",
  "cycle",
  "compensation",
  "overrides",
];

/** Modes that one word cancels, which is there or not. */
const cancelledModes: readonly StepKind[] = ["local-shift", "rotation", "scale"];

/** A mode is stated anew behind a stop and where a section begins, and cancelled before a change. */
function modeTopic(rows: readonly PlacedRow[], at: number, step: Step): TopicName | undefined {
  if (!placedModes.includes(step.kind)) return undefined;
  if (step.kind === "path" && step.value !== "blend") return undefined;
  const kinds = rows.map(({ row }) => row.record.step?.kind);
  const beside = [kinds[at + 1], kinds[at - 1]];
  if (step.kind === "distance" && beside.includes("reference-return")) return undefined;
  if (kinds.lastIndexOf("pause", at) >= 0) return "mode-after-stop";
  if (rows[at].row.place === startPlace) return undefined;
  const change = kinds.indexOf("change-tool");
  if (change > at && (step.kind === "cycle" || step.kind === "compensation")) return "cancel-before-change";
  const isMode = (kind: StepKind | undefined): boolean =>
    kind !== undefined && [...placedModes, ...cancelledModes].includes(kind);
  return beside.some(isMode) ? "mode-at-section" : undefined;
}

/** Whether a stop asks the operator to see that the spindle stands still: right behind the spindle's own stop. */
function asksToSee(rows: readonly PlacedRow[], at: number): boolean {
  const kinds = rows.slice(0, at).map(({ row }) => row.record.step?.kind ?? "motion");
  return kinds.findLast((kind) => kind !== "message" && kind !== "pause") === "spindle-stop";
}

/** Nothing but the end of the program follows. */
function endsSoon(rows: readonly PlacedRow[], at: number): boolean {
  return rows.slice(at).some(({ row }) => row.record.step?.kind === "program-end");
}

/** Whether a step stands between the first and the last that work the drawbar or travel at the rack, spindle standing. */
function isInRack(rows: readonly PlacedRow[], at: number): boolean {
  const works = (row: PlacedRow): boolean => {
    const { step } = row.row.record;
    return step?.kind === "auxiliary" && (step.action === "release" || step.action === "clamp");
  };
  const first = rows.findIndex(works);
  if (first < 0) return false;
  const last = rows.findLastIndex(works);
  const from = walk(rows, first, -1);
  return at >= from && at <= walk(rows, last, 1);
}

/** As far as steps go on that belong to the work at a rack. */
function walk(rows: readonly PlacedRow[], from: number, by: 1 | -1): number {
  const belongs: readonly (StepKind | undefined)[] = ["wait", "dwell", "path", "auxiliary"];
  let at = from;
  for (; at + by >= 0 && at + by < rows.length; at += by) {
    const { record } = rows[at + by].row;
    const isMachineMove = record.step === undefined && record.frame === frame.machine;
    const isConfirmation = isStopWait(rows, at + by);
    if (isConfirmation || isHood(record.step) || !(isMachineMove || belongs.includes(record.step?.kind)))
      break;
    if (record.step?.kind === "path" && record.step.value !== "exact") break;
  }
  return at;
}

function isStopWait(rows: readonly PlacedRow[], at: number): boolean {
  const before = actionBefore(rows, at);
  return isPauseStep(rows[at].row.record.step) && before?.kind === "spindle-stop";
}

function isPauseStep(step: Step | undefined): boolean {
  return step?.kind === "wait" || step?.kind === "dwell";
}

function isHood(step: Step | undefined): boolean {
  return step?.kind === "auxiliary" && (step.action === "hood-up" || step.action === "hood-down");
}

/** A wait or a dwell confirms the action before it. */
function topicOfPause(rows: readonly PlacedRow[], at: number, step: Step): TopicName {
  const before = actionBefore(rows, at);
  if (before?.kind === "spindle-start" || before?.kind === "spindle-speed") return "at-speed";
  if (before?.kind === "spindle-stop") return "stopped";
  if (before?.kind === "auxiliary" && before.action === "release") return "released";
  if (before?.kind === "auxiliary" && before.action === "clamp") return "clamped";
  return step.kind === "wait" ? "hold-down" : "dwell";
}

/** The step before one, waits and dwells passed over. */
function actionBefore(rows: readonly PlacedRow[], at: number): Step | undefined {
  for (let before = at - 1; before >= 0; before--) {
    const { step } = rows[before].row.record;
    if (!isPauseStep(step)) return step;
  }
  return undefined;
}

/** Whether a tool change stands before, and nothing of the approach between. */
function behindChange(rows: readonly PlacedRow[], at: number): boolean {
  const kinds = rows.slice(0, at).map(({ row }) => row.record.step?.kind);
  const change = kinds.lastIndexOf("change-tool");
  return change >= 0 && !kinds.slice(change).includes("spindle-start");
}

/** A tool word behind the change is about the next one. */
function isPreselected(rows: readonly PlacedRow[], at: number): boolean {
  const kinds = rows.map(({ row }) => row.record.step?.kind);
  return (
    kinds.indexOf("change-tool") < at &&
    kinds.includes("change-tool") &&
    !kinds.slice(at).includes("change-tool")
  );
}
