import type { MachineFacts, Report } from "#base";
import { axisBit, linearAxes } from "#base";
import type { Job } from "#job";
import * as findings from "./findings.ts";
import { motions } from "./gather-motions.ts";
import { checkSteps } from "./gather-steps.ts";
import { noteRequest, takeToolData } from "./gather-tools.ts";
import type { Gathered, Gathering } from "./gathering.ts";
import { current, tellOnce, tellPlace } from "./gathering.ts";
import type { Between, Explained } from "./held.ts";
import { partAt, pausesIn } from "./parts.ts";
import type { Walk, WalkActions } from "./walk.ts";

/** The most operations of a program. */
const mostStretches = 10_000;

/** Actions that gather operations and tools, and write no rows. */
export function gatheringActions(
  machine: MachineFacts,
  stock: Job["stock"],
  report: Report,
  nameAt: Gathering["nameAt"],
): { readonly act: WalkActions; readonly gathered: Gathered } {
  const all: Gathering = {
    stretches: [],
    tools: new Map(),
    machine,
    stock,
    report,
    nameAt,
    told: new Set(),
    lastSource: 0,
  };
  const act: WalkActions = {
    begin: (walk, between, batch, row) => begin(all, walk, between, batch.source[row]),
    enter: (walk, source) => enter(all, walk, source),
    within: (walk, between, batch, row) => within(all, walk, between, batch.source[row]),
    motions: (walk, batch, from, to) => motions(all, walk, batch, from, to),
    end: (walk, between) => end(all, walk, between),
  };
  return { act, gathered: all };
}

function begin(all: Gathering, walk: Walk, between: Between, source: number): void {
  const { state } = walk;
  const { stretches, report } = all;
  const from = all.stretches.length === 0 ? 0 : partAt(between);
  const rest = between.all.slice(from);
  checkSteps(all, walk, rest, between);
  for (const { held, belongs, text } of between.all) noteRequest(all, held, belongs, text);
  if (stretches.length >= mostStretches) {
    tellOnce(all.told, "stretches", () => void report(findings.tooManyOperations(source)));
    stretches.length = 0;
  }
  const { path } = state;
  stretches.push({
    source,
    end: source,
    name: all.nameAt(all.lastSource, source),
    tool: state.tool === 0 ? state.selected : state.tool,
    workOffset: state.workOffset ?? 1,
    hood: state.hood,
    feedModes: [],
    paths: [path],
    spindle:
      state.direction === undefined || state.rpm === 0
        ? undefined
        : { rpm: state.rpm, direction: state.direction },
    coolant: state.media,
    level: -Infinity,
    drop: undefined,
    endZ: -Infinity,
    moves: false,
    entered: false,
    cut: false,
    lowestPause: Infinity,
    pauseAt: source,
    told: new Set(),
    operation: -1,
    clearance: 0,
    lifted: stretches.length > 0 && between.lifted && !between.swapped,
    stoodAt: -1,
    feedMode: "per-minute",
  });
  all.lastSource = source;
}

function enter(all: Gathering, walk: Walk, source: number): void {
  const draft = current(all);
  draft.entered = true;
  draft.level = walk.entry.level;
  draft.drop = walk.entry.drop;
  if ((walk.known & linearAxes) !== linearAxes) tellPlace(all, walk.known, source);
  takeToolData(all, walk, source);
}

function within(all: Gathering, walk: Walk, between: Between, source: number): void {
  checkSteps(all, walk, between.all, between);
  for (const { held, belongs, text } of between.all) noteRequest(all, held, belongs, text);
  const draft = current(all);
  const { before, behind } = between;
  notePauses(all, walk, between.all);
  if (behind.direction !== undefined && draft.stoodAt >= 0)
    tellOnce(draft.told, "stands", () => void all.report(findings.spindleStands(draft.stoodAt)));
  const sense = draft.spindle?.direction;
  if (sense !== undefined && behind.direction !== undefined && sense !== behind.direction)
    tellOnce(draft.told, "turned", () => void all.report(findings.spindleTurned(source)));
  if (behind.path !== before.path) draft.paths.push(behind.path);
  if (walk.phase === "inside") takeToolData(all, walk, source);
}

function notePauses(all: Gathering, walk: Walk, steps: readonly Explained[]): void {
  const draft = current(all);
  const z = ((walk.known | walk.kept) & axisBit.z) === 0 ? Infinity : walk.at[2];
  for (const { held } of pausesIn(steps)) {
    if (walk.state.compensated !== "off")
      tellOnce(draft.told, "compensated", () => {
        all.report(findings.compensationOn(held.source, "where the program stops"));
      });
    if (z >= draft.lowestPause) continue;
    draft.lowestPause = z;
    draft.pauseAt = held.source;
  }
}

function end(all: Gathering, walk: Walk, between: Between): void {
  const draft = current(all);
  const own = between.all.slice(0, partAt(between));
  checkSteps(all, walk, own, between);
  notePauses(all, walk, own);
  draft.end = all.lastSource;
  draft.endZ = walk.at[2];
  draft.moves = draft.entered || walk.entry.named !== 0;
  const compensated = own.at(-1)?.state.compensated ?? between.before.compensated;
  if (draft.cut && compensated !== "off")
    all.report(findings.compensationOn(all.lastSource, "at the end of its operation"));
}
