import type { StepKind } from "#base";
import { howToConfirm } from "./confirm.ts";
import { findings } from "./findings.ts";
import { heightText, standUp } from "./position.ts";
import { nowhere, unknownTool } from "./state.ts";
import { isPlace, tell, tellOnce } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { listText } from "./words.ts";

/** What a program states before its first motion, each where the dialect has a word for it, and what it is called. */
const startWords = {
  units: "the units",
  plane: "the plane",
  distance: "absolute or incremental distances",
  "arc-centre": "the mode of arc centres",
  "feed-mode": "the feed mode",
  path: "the path mode",
  compensation: "compensation off",
  "look-ahead": "look-ahead",
  "corner-feed": "the slowing at inside corners off",
  cycle: "cycles off",
  "local-shift": "the local shift off",
  rotation: "rotation off",
  scale: "scale off",
  overrides: "the overrides on",
  coolant: "coolant off",
} as const satisfies Partial<Record<StepKind, string>>;

/** How the first motion came about. */
export type FirstMotion = "up" | "other" | "depends-length" | "depends-work";

/** program/start: all that must stand before the first motion, and that this motion is Z alone to swap height. */
export function beginMotion(watch: Watch, first: FirstMotion): void {
  const { program, offsets } = watch.state;
  checkModes(watch);
  checkStartStop(watch);
  program.moved = true;
  if (!watch.job.known) tellOnce(watch, "no-job", findings["limit/no-job"]());
  const what = first === "depends-length" ? "length offset" : "work offset";
  if (first === "other") tell(watch, findings["program/start-motion"]({ height: heightText(watch) }));
  else if (first !== "up") tell(watch, findings["program/start-offset"]({ what }));
  else if (isPlace(offsets.cancelledEarlyAt)) {
    tell(watch, findings["program/start-length"](), offsets.cancelledEarlyAt);
  }
  offsets.workExcused ||= first === "depends-work";
  offsets.cancelledEarlyAt = nowhere;
  standUp(watch);
}

/** What has a word, and has not been stated. */
function unstated({ state, traits }: Watch): (keyof typeof startWords)[] {
  return (Object.keys(startWords) as (keyof typeof startWords)[]).filter(
    (kind) => traits.states.has(kind) && !state.program.stated.has(kind),
  );
}

function checkModes(watch: Watch): void {
  const missing = unstated(watch);
  if (missing.length === 0) return;
  tell(watch, findings["program/start"]({ missing: listText(missing.map((kind) => startWords[kind])) }));
}

/** Behind a stop that keeps no modes nothing is in force until it is stated. */
export function loseModes(watch: Watch): void {
  const { program, modes, offsets } = watch.state;
  program.stated.clear();
  program.resumes = true;
  modes.plane = modes.distance = undefined;
  if (offsets.work !== 0) offsets.lost = offsets.work;
  offsets.work = 0;
  offsets.workExcused = false;
  offsets.length = unknownTool;
  offsets.lengthByEffect = false;
}

/** program/resume: what such a stop has lost is stated again before anything moves. */
export function checkResumed(watch: Watch): void {
  const { program, offsets } = watch.state;
  if (!program.resumes) return;
  program.resumes = false;
  offsets.lost = 0;
  const missing = unstated(watch).filter((kind) => kind !== "coolant");
  if (missing.length === 0) return;
  const detail = { missing: listText(missing.map((kind) => startWords[kind])) };
  tell(watch, findings["program/resume"](detail));
}

function checkStartStop(watch: Watch): void {
  const { program, spindle } = watch.state;
  const needed = watch.traits.states.has("spindle-stop") || watch.facts.confirm.stopped !== undefined;
  if (program.stopSeen || !needed) return;
  tell(watch, findings["program/start-stop"]({ how: howToConfirm(watch, "stopped") }));
  program.stopSeen = true;
  if (spindle.turning === "cw" || spindle.turning === "ccw") return;
  spindle.turning = "stopped";
  spindle.confirmed = true;
  spindle.byTime = false;
  spindle.fromLow = spindle.fromHigh = spindle.nowLow = spindle.nowHigh = 0;
}
