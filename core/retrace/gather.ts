import type { Batch, MachineFacts, Report, Step } from "#base";
import { axisBit, isArc, linearAxes, rotaryAxes, rowKind } from "#base";
import type { Job } from "#job";
import { radiiDiffer } from "#job";
import { arcEnds, between as distance } from "./arcs.ts";
import type { StretchDraft, ToolDraft } from "./drafts.ts";
import { createTool } from "./drafts.ts";
import * as findings from "./findings.ts";
import type { Between, Explained } from "./held.ts";
import { toolRequest } from "./held.ts";
import { holeKindOf, leadOf, topOf } from "./holes.ts";
import { partAt, pausesIn } from "./parts.ts";
import type { Walk, WalkActions } from "./walk.ts";

/** What the first walk through a program gives. */
export interface Gathered {
  readonly stretches: StretchDraft[];
  readonly tools: Map<number, ToolDraft>;
}

/** Gathering at work. */
interface Gathering extends Gathered {
  readonly machine: MachineFacts;
  readonly stock: Job["stock"];
  readonly report: Report;
  /** What is known of the text before a place: how a stretch is called. */
  readonly nameAt: (from: number, to: number) => string;
  readonly told: Set<string>;
  /** Place of the last motion, byte offset. */
  lastSource: number;
}

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

function current({ stretches }: Gathered): StretchDraft {
  return stretches[stretches.length - 1];
}

function tellOnce(told: Set<string>, what: string, tell: () => void): void {
  if (told.has(what)) return;
  told.add(what);
  tell();
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

/** What the operator is asked to load says what the tool is. */
function noteRequest(
  all: Gathering,
  held: Explained["held"],
  belongs: Explained["belongs"],
  text: string,
): void {
  if (belongs !== "swap" || held.kind !== "step" || held.step.kind !== "pause") return;
  const [, number, rest] = toolRequest.exec(text) ?? [];
  if (number !== undefined)
    toolOf(all, Number(number), held.source).asked = { offset: held.source, text: rest };
}

function toolOf({ tools }: Gathered, number: number, source: number): ToolDraft {
  const known = tools.get(number);
  if (known !== undefined) return known;
  const made = createTool(number, source);
  tools.set(number, made);
  return made;
}

function toolInHand(all: Gathering): ToolDraft {
  const { tool, source } = current(all);
  return toolOf(all, tool, source);
}

function enter(all: Gathering, walk: Walk, source: number): void {
  const draft = current(all);
  draft.entered = true;
  draft.level = walk.entry.level;
  draft.drop = walk.entry.drop;
  if ((walk.known & linearAxes) !== linearAxes) tellPlace(all, walk.known, source);
  takeToolData(all, walk, source);
}

/** Offsets that the tool has by now. */
function takeToolData(all: Gathering, { state }: Walk, source: number): void {
  const tool = toolInHand(all);
  const { lengthOffset, radiusOffset, compensated } = state;
  if (lengthOffset !== undefined && lengthOffset !== 0) {
    if (tool.lengthOffset !== undefined && tool.lengthOffset !== lengthOffset)
      tellOnce(all.told, `length ${tool.number}`, () => {
        all.report(findings.lengthDiffers(source, tool.number, tool.lengthOffset ?? 0, lengthOffset));
      });
    tool.lengthOffset ??= lengthOffset;
  }
  const wordOffset = state.tool === 0 ? state.selectedOffset : state.toolOffset;
  if (wordOffset !== undefined && wordOffset !== 0) tool.lengthOffset ??= wordOffset;
  if (compensated !== "off" && radiusOffset !== 0) {
    if (tool.radiusOffset !== undefined && tool.radiusOffset !== radiusOffset)
      tellOnce(all.told, `radius ${tool.number}`, () => {
        all.report(findings.radiusDiffers(source, tool.number, tool.radiusOffset ?? 0, radiusOffset));
      });
    tool.radiusOffset ??= radiusOffset;
  }
  tool.measured ||= state.measured;
}

const axisNames = ["x", "y", "z"];

function tellPlace(all: Gathering, known: number, source: number): void {
  const draft = current(all);
  const missing = axisNames.filter((_, axis) => (known & (1 << axis)) === 0);
  tellOnce(draft.told, "place", () => {
    all.report(findings.placeUnknown(source, missing.join(" and ")));
  });
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

/** What a job has no words for. */
function checkSteps(all: Gathering, walk: Walk, steps: readonly Explained[], between: Between): void {
  const { machine, report } = all;
  if (walk.lost > 0) {
    report(findings.tooMuch(steps.at(-1)?.held.source ?? 0));
    walk.lost = 0;
  }
  const { unclear } = between;
  if (unclear !== undefined)
    tellOnce(all.told, unclear.said, () => void report(findings.swapUnclear(unclear.source, unclear.said)));
  for (const { held } of steps) {
    if (held.kind === "machine-move") {
      const across = (held.axes & (axisBit.x | axisBit.y)) !== 0;
      if (
        across &&
        !between.lifted &&
        !between.swapped &&
        machine.swap !== "rack" &&
        all.stretches.length > 0
      )
        tellOnce(all.told, "low", () => void report(findings.travelsLow(held.source)));
      if (held.feed > 0 && machine.swap !== "rack") report(findings.machineCut(held.source));
      continue;
    }
    const what = unsaid(held.step, machine, between);
    if (what !== undefined) report(findings.codeUnsaid(held.source, what));
    if (held.step.kind === "cycle-definition" && holeKindOf(held.step) === undefined)
      report(findings.manualCycle(held.source, held.step.cycle));
  }
}

/** What a job has no word for, in words; undefined where it has, or needs none. */
function unsaid(step: Step, machine: MachineFacts, between: Between): string | undefined {
  switch (step.kind) {
    case "auxiliary":
      if (step.action === "opaque") return `The code ${step.code}`;
      if (step.action === "hood-up" || step.action === "hood-down")
        return between.swapped || between.lifted || between.paused
          ? undefined
          : "Moving the hood inside an operation";
      if (step.action === "measure") return undefined;
      return machine.swap === "rack" ? undefined : "Working the drawbar or the rack";
    case "output":
      return machine.outputs.some(({ number }) => number === step.number)
        ? undefined
        : `Output ${step.number}, which the dialect does not declare as one of the machine,`;
    case "wait":
      return Object.values(machine.signals).some((signal) => signal.input === step.input)
        ? undefined
        : `A wait on input ${step.input}, which the dialect does not declare as a signal,`;
    case "overrides":
      return step.value === "off" ? "Switching the overrides off" : undefined;
    default:
      return undefined;
  }
}

function motions(all: Gathering, walk: Walk, batch: Batch, from: number, to: number): void {
  const { kind, known, stated, source, feed } = batch;
  const draft = current(all);
  const { feedMode } = walk.state;
  let cuts = -1;
  if (draft.cut && draft.spindle !== undefined && walk.state.direction === undefined && draft.stoodAt < 0)
    draft.stoodAt = source[from];
  for (let row = from; row < to; row++) {
    const is = kind[row];
    if (is === rowKind.rapid) continue;
    const placed = known[row] | walk.kept;
    if ((placed & linearAxes) !== linearAxes) tellPlace(all, placed, source[row]);
    if (cuts < 0) cuts = row;
    if (is === rowKind.line) {
      if (
        stated[row] > linearAxes &&
        (stated[row] & linearAxes) !== 0 &&
        (stated[row] & rotaryAxes) !== 0 &&
        feedMode !== "inverse-time"
      )
        tellOnce(draft.told, "rotary", () => void all.report(findings.rotaryTogether(source[row])));
    } else if (isArc(is)) checkArc(all, walk, batch, row, from);
    else hole(all, walk, batch, row);
    if (feed[row] === 0) tellOnce(draft.told, "feed", () => void all.report(findings.noFeed(source[row])));
  }
  if (cuts >= 0) cut(all, walk, batch, cuts, to);
  all.lastSource = source[to - 1];
}

/** Motions at feed, of which the first is at a row. */
function cut(all: Gathering, walk: Walk, batch: Batch, row: number, to: number): void {
  const draft = current(all);
  const { state } = walk;
  const source = batch.source[row];
  if (state.direction !== undefined && state.rpm > 0) {
    if (draft.spindle === undefined && !draft.cut)
      draft.spindle = { rpm: state.rpm, direction: state.direction };
    else if (draft.spindle === undefined)
      tellOnce(draft.told, "stands", () => void all.report(findings.spindleStands(draft.source)));
  } else if (draft.spindle !== undefined)
    tellOnce(draft.told, "stands", () => void all.report(findings.spindleStands(source)));
  draft.cut = true;
  const tool = toolInHand(all);
  if ((state.lengthOffset ?? 0) === 0 && state.toolOffset === undefined && tool.lengthless < 0)
    tool.lengthless = source;
  tool.turned ||= draft.spindle !== undefined;
  if (batch.kind.subarray(row, to).some((kind) => kind !== rowKind.rapid && kind !== rowKind.hole))
    tool.mills = true;
  const { feedMode } = state;
  if (draft.feedModes.includes(feedMode)) return;
  draft.feedModes.push(feedMode);
  if (draft.feedModes.length < 2) return;
  if (draft.feedModes.includes("inverse-time")) all.report(findings.feedModes(source));
  else all.report(findings.feedConverted(source));
}

function checkArc(all: Gathering, walk: Walk, batch: Batch, row: number, from: number): void {
  const before = row === from ? walk.at : [batch.x[row - 1], batch.y[row - 1], batch.z[row - 1]];
  const ends = arcEnds(batch, row, before);
  if (ends === undefined) {
    all.report(findings.arcReach(batch.source[row]));
    return;
  }
  const first = distance(ends.centre, ends.start);
  const second = distance(ends.centre, ends.end);
  if (first === 0 || second === 0 || radiiDiffer(first, second))
    all.report(findings.arcRadius(batch.source[row]));
}

function hole(all: Gathering, walk: Walk, batch: Batch, row: number): void {
  const { cycle } = walk.state;
  if (cycle === undefined) return;
  const kind = holeKindOf(cycle);
  if (kind === undefined) return;
  toolInHand(all).holes.add(kind);
  const source = batch.source[row];
  const { told } = current(all);
  if (kind === "tap" && leadOf(cycle, batch.feed[row], walk.state) === 0)
    tellOnce(told, "tap", () => void all.report(findings.tapStands(source)));
  tellOnce(all.told, "top", () => void all.report(findings.topTaken(source, topOf(cycle, all.stock).from)));
}
