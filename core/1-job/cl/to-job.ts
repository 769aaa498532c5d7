import type { FeedMode, Report, ToolKind, UnitSystem } from "#base";
import { unknownDiameter } from "#base";
import type { Job, Operation, Stock, Tool } from "../job.ts";
import { shortestDecimal } from "../scan/shortest-decimal.ts";
import { scales } from "../scan/number.ts";
import { sparesInHead } from "../head/spares-in-head.ts";
import { plainTool } from "../plain-tool.ts";
import { toolKindsOfHoles } from "../tool-kinds-of-holes.ts";
import type { OperationDraft, ToolDraft } from "./drafts.ts";
import * as findings from "./findings.ts";
import { aptBaseUnits } from "./number.ts";
import type { ClOptions } from "./options.ts";
import type { Outline } from "./outline.ts";

/** A job of a source, and the state in which each of its operations begins. */
export interface ClJob {
  readonly job: Job;
  readonly drafts: ReadonlyMap<Operation, OperationDraft>;
}

/** Makes a job of what was gathered; what the source lacks comes from the head file, or is taken with a note. */
export function toClJob(
  { gathered, name, state }: Outline,
  options: ClOptions,
  head: Job | undefined,
  report: Report,
): ClJob | undefined {
  const drafts = gathered.operations.filter(({ moved }) => moved);
  const last = drafts.at(-1);
  if (last === undefined || state.units === undefined) {
    if (state.units !== undefined) report(findings.noMotion());
    return undefined;
  }
  // What stands behind the last motion belongs to its operation.
  last.end = gathered.operations.at(-1)!.end;
  const { units } = state;
  const stated = options.clearance === undefined ? undefined : aptBaseUnits(options.clearance, state.scale!);
  if (options.clearance !== undefined && stated === undefined)
    report(findings.numberTooLarge(0, state.scale!.most));
  const clearance = stated ?? head?.clearance;
  const heights = drafts.map((draft) => clearance ?? draft.clearancePlane ?? draft.highest);
  if (heights.includes(-Infinity)) report(findings.clearanceUnknown(last.source));
  const highest = Math.max(...heights.filter(Number.isFinite));
  const isTaken = clearance === undefined && drafts.some((draft) => draft.clearancePlane === undefined);
  if (isTaken)
    report(findings.clearanceTaken(drafts[0].source, `${shortestDecimal(highest, scales[units])} ${units}`));
  const used = new Set(drafts.map(({ tool }) => tool));
  const tools = [...gathered.tools.values()].filter(({ number }) => used.has(number));
  const operations = drafts.map((draft, index) =>
    toOperation(
      draft,
      `op${(index + 1) * 10}`,
      { clearance: heights[index], workOffset: head?.workOffset ?? 1 },
      report,
    ),
  );
  const merged = tools.map((tool) => mergeTool(tool, head, units, report));
  const job: Job = {
    name: name === "" ? (head?.name ?? "") : name,
    units,
    program: head?.program ?? { number: undefined, name: undefined },
    stock: head?.stock && inHead(head.stock),
    fixtures: head?.fixtures ?? [],
    workOffset: head?.workOffset ?? 1,
    clearance: highest,
    // Spares keep their order behind the tools: it is the one in which they are taken.
    tools: [...merged.sort((a, b) => a.number - b.number), ...sparesInHead(head, merged)],
    operations,
  };
  return { job, drafts: new Map(operations.map((operation, index) => [operation, drafts[index]])) };
}

/** A stock that the head file states. */
function inHead(stock: Stock): Stock {
  const { materialAt } = stock;
  return materialAt === undefined ? stock : { ...stock, materialAt: { ...materialAt, source: "head" } };
}

function toOperation(
  draft: OperationDraft,
  id: string,
  common: { readonly clearance: number; readonly workOffset: number },
  report: Report,
): Operation {
  return {
    id,
    name: id,
    tool: draft.tool,
    spindle: draft.spindle,
    coolant: draft.coolant,
    feedMode: feedModeOf(draft, id, report),
    ...common,
    hood: undefined,
    tolerance: undefined,
    path: undefined,
    moves: { start: draft.start, end: draft.end },
    source: draft.source,
  };
}

/** Feeds of one operation count one thing; those of two kinds are given per minute. */
function feedModeOf({ per, perRevolutionAt, source }: OperationDraft, id: string, report: Report): FeedMode {
  if (per.has("inverse") && per.size > 1) report(findings.feedInverseMixed(source));
  if (per.has("inverse")) return "inverse-time";
  if (per.size > 1) report(findings.feedMixed(perRevolutionAt, id));
  return per.size === 1 && per.has("revolution") ? "per-revolution" : "per-minute";
}

/** A tool of the head file, with what the source says of it; or one of the source alone. */
function mergeTool(draft: ToolDraft, head: Job | undefined, units: UnitSystem, report: Report): Tool {
  const known = head?.tools.find(({ number }) => number === draft.number);
  if (known === undefined) return newTool(draft, units, report);
  const contradicts = (what: string, first: number | undefined, second: number | undefined): void => {
    if (first !== undefined && second !== undefined && first !== second)
      report(findings.toolContradicted(draft.source, draft.number, what));
  };
  contradicts("diameter", known.diameter, draft.diameter);
  contradicts("corner radius", known.cornerRadius, draft.corner);
  contradicts("length", known.length, draft.length);
  contradicts("length offset", known.lengthOffset, draft.lengthOffset);
  contradicts("radius offset", known.radiusOffset, draft.radiusOffset);
  return {
    ...known,
    length: known.length ?? draft.length,
    cornerRadius: known.cornerRadius ?? (draft.corner || undefined),
    radiusOffset: known.radiusOffset ?? draft.radiusOffset,
    source: draft.source,
  };
}

function newTool(draft: ToolDraft, units: UnitSystem, report: Report): Tool {
  const { number, diameter, corner, source } = draft;
  const kind = kindOf(draft);
  const lacks = diameter === undefined;
  const said = lacks
    ? `its diameter is not stated, so that nothing can be checked that needs it; its kind is taken to be ${kind}`
    : `its kind is not stated, and taken to be ${kind}`;
  report(findings.toolGuessed(lacks ? "warning" : "note", source, number, said));
  return {
    ...plainTool(number, kind, diameter ?? unknownDiameter[units], source),
    description: lacks ? `${kind}, diameter not stated` : "",
    lengthOffset: draft.lengthOffset ?? number,
    radiusOffset: draft.radiusOffset,
    length: draft.length,
    cornerRadius: corner || undefined,
  };
}

function kindOf({ holes, mills, diameter, corner }: ToolDraft): ToolKind {
  const kinds = new Set([...holes].map((kind) => toolKindsOfHoles[kind]));
  if (!mills && kinds.size === 1) return [...kinds][0];
  if (corner === undefined || corner === 0 || diameter === undefined) return "end-mill";
  return corner * 2 === diameter ? "ball-mill" : "bull-nose";
}
