import type { FeedMode, Plane, Step } from "#base";
import type { Operation } from "#job";
import { writtenFeedMode } from "#lower";
import { programDistance, setDistance } from "./distance.ts";
import { stateWorkOffset } from "./offsets.ts";
import { stateLookAhead, statePath } from "./path-mode.ts";
import type { Run } from "./run.ts";
import type { ModesInForce } from "./state.ts";
import { put } from "./steps.ts";
import { optional, startReason } from "./words.ts";

/** States a mode where the dialect has a word for it. */
function state(run: Run, key: string, step: Step): void {
  if (optional(run, key, startReason)) put(run, step);
}

/**
 * All modes that the dialect can say, before the first motion: nothing that an earlier program left in force is relied
 * on (what NISTIR 6556 3.6.1 resets at a program's end is not the same everywhere). Here and below modes stand in the order
 * in which the words of one block are executed (NISTIR 6556 Table 8), so that those that share a block mean the same.
 */
export function stateAllModes(run: Run, first: Operation | undefined): void {
  const { units, capabilities } = run.request;
  const unitsFirst = capabilities.unitsStated === "first-block";
  if (unitsFirst) state(run, `units.${units}`, { kind: "units", value: units });
  state(run, "feed.per-minute", { kind: "feed-mode", value: "per-minute" });
  stateModesBehindFeed(run, first, !unitsFirst);
}

/** All modes but that of the feed; in a section with the work offset of its operation. */
function stateModesBehindFeed(
  run: Run,
  operation: Operation | undefined,
  saysUnits: boolean,
  workOffset = false,
): void {
  const { units } = run.request;
  state(run, "cancel.overrides", { kind: "overrides", value: "on" });
  state(run, "plane.xy", { kind: "plane", value: "xy" });
  if (saysUnits) state(run, `units.${units}`, { kind: "units", value: units });
  state(run, "compensation.off", { kind: "compensation", value: "off", offset: 0 });
  if (operation && workOffset) stateWorkOffset(run, operation);
  if (operation) statePath(run, operation);
  state(run, "compensation.corner-feed.off", { kind: "corner-feed", value: "off" });
  stateDistance(run);
  stateArcCentre(run);
  state(run, "cancel.local-shift", { kind: "local-shift", value: "off" });
  state(run, "cancel.rotation", { kind: "rotation", value: "off" });
  state(run, "cancel.scale", { kind: "scale", value: "off" });
  state(run, "cancel.cycles", { kind: "cycle", value: "off" });
}

/** The modes and the work offset that an operation relies on, restated so that the program can be taken up here. */
export function stateOperationModes(run: Run, operation: Operation): void {
  const { sectionModes, unitsStated } = run.request.capabilities;
  stateFeedMode(run, feedModeOf(run, operation));
  if (sectionModes === "restated") {
    stateModesBehindFeed(run, operation, unitsStated !== "first-block", true);
    return;
  }
  statePlane(run, "xy");
  stateWorkOffset(run, operation);
  statePath(run, operation);
  stateDistance(run);
}

/** The modes in force before a stop and the work offset, said once more after it. */
export function restateModes(
  run: Run,
  operation: Operation,
  { plane, feedMode }: Pick<ModesInForce, "plane" | "feedMode">,
): void {
  stateFeedMode(run, feedMode ?? feedModeOf(run, operation));
  statePlane(run, plane ?? "xy");
  stateWorkOffset(run, operation);
  statePath(run, operation);
  stateDistance(run);
}

/** What the next program, or the operator, counts on, where the end of the program does not put it back. */
export function restoreModes(run: Run): void {
  state(run, "feed.per-minute", { kind: "feed-mode", value: "per-minute" });
  statePlane(run, "xy");
  state(run, "compensation.off", { kind: "compensation", value: "off", offset: 0 });
  stateDistance(run);
  state(run, "cancel.cycles", { kind: "cycle", value: "off" });
}

function statePlane(run: Run, value: Plane): void {
  state(run, `plane.${value}`, { kind: "plane", value });
}

/** What a rack needs: feeds per minute, since the spindle stands, and corners that are not rounded. */
export function stateRackModes(run: Run): void {
  const { modes } = run.state;
  if (modes.feedMode !== "per-minute") stateFeedMode(run, "per-minute");
  const exact = run.request.capabilities.words["path.exact"] === true;
  if (modes.path === "exact" || !exact) return;
  put(run, { kind: "path", value: "exact" });
  stateLookAhead(run, "off");
}

/** Absolute, since an approach starts where there is nothing to count increments from; the rest follows when it moves. */
function stateDistance(run: Run): void {
  run.state.modes.distance = undefined;
  setDistance(run, "absolute");
}

/** Whether the distance mode in force is not that of the program's own moves. */
export function needsResume(run: Run): boolean {
  return run.state.modes.distance !== programDistance(run);
}

/** Goes back to the distance mode of the program's own moves. */
export function resumeDistance(run: Run): void {
  setDistance(run, programDistance(run));
}

function stateFeedMode(run: Run, value: FeedMode): void {
  const key = `feed.${value}`;
  const word = run.request.capabilities.words[key];
  if (word === true) put(run, { kind: "feed-mode", value });
  run.state.modes.feedMode = value;
}

/** The feed mode that an operation is written in. In an air cut the spindle stands, so nothing is fed by its turns. */
function feedModeOf(run: Run, operation: Operation): FeedMode {
  const written = writtenFeedMode(operation.feedMode, run.request.capabilities.words);
  return run.request.airCut && written === "per-revolution" ? "per-minute" : written;
}

/** Whether centres are absolute or incremental; controllers that take no centres are told what they have a word for. */
function stateArcCentre(run: Run): void {
  const { words, arcs } = run.request.capabilities;
  const absolute = arcs.form === "absolute-centre";
  const other = arcs.form === "incremental-centre" || words["arc.centre-words.incremental"] === true;
  const value = absolute || !other ? "absolute" : "incremental";
  state(run, `arc.centre-words.${value}`, { kind: "arc-centre", value });
}

/** Compensation, with the slowing at inside corners turned on before it begins and off once it has ended. */
export function putCompensation(run: Run, step: Extract<Step, { kind: "compensation" }>): void {
  const value = step.value === "off" ? "off" : "on";
  if (value === "off") put(run, step);
  state(run, `compensation.corner-feed.${value}`, { kind: "corner-feed", value });
  if (value === "on") put(run, step);
}
