import type { Report } from "#base";
import { largestLength } from "#base";
import { scales } from "../scan/number.ts";
import { createOperation, createTool } from "./drafts.ts";
import type { OperationDraft, ToolDraft } from "./drafts.ts";
import * as findings from "./findings.ts";
import type { ClActions, ClState, Feed } from "./state.ts";

/** What the outline of a source comes to. */
export interface Gathered {
  readonly operations: OperationDraft[];
  readonly tools: Map<number, ToolDraft>;
}

/** Gathering at work. */
interface Gathering extends Gathered {
  readonly state: ClState;
  readonly report: Report;
}

/** The most operations of a source. */
const mostOperations = 10_000;

/** Actions that gather operations and tools, and write no rows. */
export function gatheringActions(
  state: ClState,
  report: Report,
): { readonly act: ClActions; readonly gathered: Gathered } {
  const all: Gathering = { operations: [createOperation(0, state)], tools: new Map(), state, report };
  const act: ClActions = {
    operation: (source) => beginOperation(all, source),
    tool: (number, source) => {
      const operation = current(all);
      operation.tool = number;
      operation.source = source;
      toolOf(all, number, source);
    },
    toolData: (data, source) => takeData(all, data, source),
    spindle: (rpm, direction, source) => {
      const operation = current(all);
      if (!operation.moved || operation.spindle !== undefined) return;
      if (operation.cut) report(findings.spindleLate(source));
      operation.spindle = { rpm, direction };
    },
    rapid: () => void motion(all),
    line: (source, feed) => mill(all, feed ?? state.feed, source),
    arc: (_, source) => mill(all, state.feed, source),
    holes: ({ cycle, kind, retract }, source) => {
      cut(all, kind === "tap" ? undefined : (cycle.feed ?? state.feed), source);
      toolInHand(all).holes.add(kind);
      const operation = current(all);
      operation.highest = Math.max(operation.highest, retract);
    },
    hole: () => void motion(all),
    endHoles: () => undefined,
    coolant: () => undefined,
    note: () => undefined,
    pause: () => undefined,
    dwell: () => undefined,
    compensation: () => undefined,
  };
  return { act, gathered: all };
}

/** The operation that is being gathered; there is always one. */
export function current({ operations }: Gathered): OperationDraft {
  return operations[operations.length - 1];
}

function beginOperation(all: Gathering, source: number): void {
  const { operations, state, report } = all;
  current(all).end = source;
  if (operations.length < mostOperations) operations.push(createOperation(source, state));
  else report(findings.tooManyOperations(source));
}

/** What every motion says of its operation. */
function motion(all: Gathering): OperationDraft {
  const { state, report } = all;
  const operation = current(all);
  if (!operation.moved) {
    operation.moved = true;
    operation.coolant = state.coolant;
    if (state.spindle === "on" && state.direction !== undefined)
      operation.spindle = { rpm: state.rpm, direction: state.direction };
  }
  if (state.cutterFresh) takeCutter(toolInHand(all), state, report);
  if (state.toolZ !== undefined && state.toolZ > operation.highest) operation.highest = state.toolZ;
  operation.clearancePlane = state.clearancePlane ?? operation.clearancePlane;
  return operation;
}

/** A motion at feed. */
function cut(all: Gathering, feed: Feed | undefined, source: number): void {
  const operation = motion(all);
  operation.cut = true;
  if (feed?.per === "revolution" && (feed.value / 1000) * all.state.rpm > largestLength)
    all.report(findings.numberTooLarge(source, scales.mm.most));
  if (feed?.per === "revolution" && !operation.per.has("revolution")) operation.perRevolutionAt = source;
  if (feed !== undefined) operation.per.add(feed.per);
}

function mill(all: Gathering, feed: Feed | undefined, source: number): void {
  cut(all, feed, source);
  toolInHand(all).mills = true;
}

function toolInHand(all: Gathering): ToolDraft {
  const { tool, source } = current(all);
  return toolOf(all, tool, source);
}

function toolOf({ tools }: Gathered, number: number, source: number): ToolDraft {
  const known = tools.get(number);
  if (known !== undefined) return known;
  const made = createTool(number, source);
  tools.set(number, made);
  return made;
}

const words = {
  length: "length",
  lengthOffset: "length offset",
  radiusOffset: "radius offset",
  diameter: "diameter",
  corner: "corner radius",
} as const;

/** What LOADTL and CUTCOM say of the tool. */
function takeData(all: Gathering, data: Parameters<ClActions["toolData"]>[0], source: number): void {
  const tool = toolInHand(all);
  for (const key of ["length", "lengthOffset", "radiusOffset"] as const)
    take(tool, key, data[key], source, all.report);
}

/** CUTTER belongs to the tool that moves next. */
function takeCutter(tool: ToolDraft, { cutter }: ClState, report: Report): void {
  if (cutter === undefined) return;
  take(tool, "diameter", cutter.diameter, cutter.offset, report);
  take(tool, "corner", cutter.corner, cutter.offset, report);
}

/** A tool has one value of a kind. */
function take(
  tool: ToolDraft,
  key: keyof typeof words,
  value: number | undefined,
  source: number,
  report: Report,
): void {
  if (value === undefined) return;
  if (tool[key] !== undefined && tool[key] !== value)
    report(findings.toolContradicted(source, tool.number, words[key]));
  tool[key] ??= value;
}
