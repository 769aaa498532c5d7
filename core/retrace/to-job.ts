import type { FeedMode, Report } from "#base";
import { lengthText } from "#base";
import type { Job, Operation } from "#job";
import { sparesInHead } from "#job";
import type { StretchDraft } from "./drafts.ts";
import * as findings from "./findings.ts";
import type { Gathered } from "./gathering.ts";
import type { Surroundings } from "./surroundings.ts";
import { checkSpareLengths, toTool } from "./tools.ts";

/** Makes a job of what was gathered; what the program cannot say comes from the head file, or is taken with a note. */
export function toJob(gathered: Gathered, about: Surroundings, report: Report): Job | undefined {
  const { head, units, state } = about;
  const drafts = gathered.stretches.filter((draft) => becomesOperation(draft, report));
  const [first] = drafts;
  if (first === undefined) {
    report(findings.empty());
    return undefined;
  }
  settleClearances(drafts, about, report);
  const operations = drafts.map((draft, index) => toOperation(draft, index, report));
  const used = new Set(drafts.map(({ tool }) => tool));
  const tools = [...gathered.tools.values()]
    .filter(({ number }) => used.has(number))
    .sort((a, b) => a.number - b.number);
  const made = tools.map((tool) => toTool(tool, about, report));
  const program = state.programNumber === 0 ? undefined : state.programNumber;
  const spares = sparesInHead(head, made);
  checkSpareLengths(spares, tools, about, report);
  const job: Job = {
    name: about.name === "" ? (head?.name ?? "") : about.name,
    units,
    program: { number: program ?? head?.program.number, name: head?.program.name },
    stock: head?.stock,
    fixtures: head?.fixtures ?? [],
    workOffset: first.workOffset,
    clearance: Math.max(...drafts.map(({ clearance }) => clearance)),
    tools: [...made, ...spares],
    operations,
  };
  checkSpindles(job, drafts, report);
  return job;
}

/** Whether a stretch is an operation: it reached its work. Rapids that lead to none are left out, and told. */
function becomesOperation(draft: StretchDraft, report: Report): boolean {
  const works = draft.cut || draft.lowestPause !== Infinity;
  if (draft.entered && (works || draft.spindle !== undefined)) return true;
  if (draft.moves) report(findings.idle(draft.source));
  return false;
}

function settleClearances(
  drafts: readonly StretchDraft[],
  { head, units }: Surroundings,
  report: Report,
): void {
  for (const draft of drafts) {
    const own = draft.drop !== undefined && draft.endZ === draft.drop ? draft.drop : draft.level;
    draft.clearance = Math.max(own, head?.clearance ?? -Infinity);
    if (draft.lifted && head === undefined) report(findings.clearanceUnknown(draft.source));
    if (draft.lowestPause < draft.clearance) report(findings.pauseBelow(draft.pauseAt));
  }
  const [first] = drafts;
  const heights = [...new Set(drafts.map(({ clearance }) => clearance))].sort((a, b) => b - a);
  if (head !== undefined && heights.every((height) => height === head.clearance)) return;
  const shown = heights.slice(0, 4).map((height) => lengthText(height, units));
  const list = heights.length > 4 ? [...shown, "..."] : shown;
  report(findings.clearanceTaken(first.source, list.join(", ")));
}

function toOperation(draft: StretchDraft, index: number, report: Report): Operation {
  const id = `op${(index + 1) * 10}`;
  draft.operation = index;
  draft.feedMode = feedModeOf(draft);
  return {
    id,
    name: draft.name === "" ? id : draft.name,
    tool: draft.tool,
    spindle: draft.spindle,
    coolant: draft.coolant,
    feedMode: draft.feedMode,
    workOffset: draft.workOffset,
    clearance: draft.clearance,
    hood: draft.hood,
    ...pathOf(draft, report),
    moves: { start: draft.source, end: Math.max(draft.end, draft.source) + 1 },
    source: draft.source,
  };
}

function feedModeOf({ feedModes }: StretchDraft): FeedMode {
  return feedModes.length === 1 ? feedModes[0] : "per-minute";
}

/** One path mode for all of the operation: the strictest that it has. */
function pathOf(draft: StretchDraft, report: Report): Pick<Operation, "path" | "tolerance"> {
  const paths = draft.paths.filter((path) => path !== undefined);
  const kinds = new Set(paths.map(({ value, tolerance }) => `${value} ${String(tolerance)}`));
  if (kinds.size > 1) report(findings.pathChanged(draft.source));
  if (paths.some(({ value }) => value === "stop")) report(findings.stopAtCorners(draft.source));
  if (paths.some(({ value }) => value !== "blend")) return { path: "exact", tolerance: undefined };
  const tolerances = paths.map(({ tolerance }) => tolerance).filter((tolerance) => tolerance !== undefined);
  return { path: undefined, tolerance: tolerances.length === 0 ? undefined : Math.min(...tolerances) };
}

/** A tool that turns cuts with a spindle that does. */
function checkSpindles(job: Job, drafts: readonly StretchDraft[], report: Report): void {
  const still = new Set(["probe", "drag-knife", "pen"]);
  for (const { tool, spindle, cut, source, told } of drafts) {
    const kind = job.tools.find(({ number }) => number === tool)?.kind ?? "end-mill";
    if (spindle === undefined && cut && !still.has(kind) && !told.has("stands"))
      report(findings.spindleStands(source));
  }
}
