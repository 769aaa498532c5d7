import type { Finding, RackFacts, Report } from "#base";
import { atomsPerMillimetre, isDiameterKnown } from "#base";
import type { Job, Tool } from "#job";
import { refusal } from "./findings.ts";
import type { RackNeeds, ReloadPlan } from "./reload-plan.ts";
import { planReloads } from "./reload-plan.ts";
import type { PlanRequest } from "./request.ts";

/** Which tool waits where, at the start and behind each reload stop. */
export interface RackPlan {
  /** Tool in each pocket, 0 for none; index 0 is pocket 1. */
  readonly rack: readonly number[];
  /** Pocket of the tool in the spindle, counted from 0. */
  readonly heldPocket: number | undefined;
  /** As `JobFacts.reloads` and `PlannedFacts.reloadsBefore`. */
  readonly reloads: readonly (readonly number[])[];
  readonly reloadsBefore: readonly number[];
}

const noRack: RackPlan = { rack: [], heldPocket: undefined, reloads: [], reloadsBefore: [] };

/**
 * Gives each tool a pocket: as the set-up says, otherwise pocket i to the i-th tool in order of first use, and where it is known what
 * the rack holds now, so that the least has to be changed. A part of a job finds its tools where the whole job has them, if that needs
 * no reload stop. The tool that the spindle holds leaves its own pocket free; one that the job does not use gets a pocket
 * behind the others. Where the tools are more than the pockets, reload stops are planned.
 */
export function planRack(request: PlanRequest, report: Report): RackPlan {
  const { machine, setup, job, rackNow } = request;
  const { rack } = machine;
  if (machine.swap !== "rack" || !rack) return noRack;
  const used = [...new Set(request.operations.map((index) => job.operations[index].tool))];
  const held = setup.spindleHolds ?? 0;
  const wanted = held !== 0 && !used.includes(held) ? [...used, held] : used;
  const listed = setup.rack && fromSetup(request, rack, setup.rack, wanted, report);
  if (rackNow !== undefined) checkNow(request, rack, rackNow, report);
  for (const tool of job.tools)
    if (wanted.includes(tool.number)) checkSize(tool, rack, setup.lengths[tool.number], report);
  const clash = clashOf(request, rack);
  const needs = { held, pockets: rack.pockets.length, startsAsIs: listed !== undefined, clash };
  const stated = listed ?? rackNow;
  const usual = stated === undefined ? usualRack(job, needs) : [];
  const inJob = usual.includes(held) && job.operations.some(({ tool }) => tool === held);
  if (wanted.length > used.length && !inJob && stated === undefined) report(homeless(request, held));
  const plan = planReloads({
    ...needs,
    uses: request.operations.map((index) => job.operations[index].tool),
    now: stated ?? usual,
  });
  checkPlan(request, plan, report);
  const found = held === 0 ? -1 : plan.start.indexOf(held);
  return {
    rack: plan.start.map((tool) => (tool === held ? 0 : tool)),
    heldPocket: found < 0 ? undefined : found,
    reloads: plan.reloads.map((reload) => reload.rack),
    reloadsBefore: plan.reloads.map(({ before }) => request.operations[before]),
  };
}

/** The rack of the whole job, where nothing else says what is in it; nothing where the job needs a reload stop. */
function usualRack(job: Job, needs: Omit<RackNeeds, "uses" | "now">): readonly number[] {
  const { start, reloads, stuck } = planReloads({
    ...needs,
    uses: job.operations.map(({ tool }) => tool),
    now: [],
  });
  return reloads.length === 0 && stuck === undefined ? start : [];
}

/**
 * Whether two tools touch in their pockets: half of both diameters is as much as the pockets are apart, or more. A tool whose
 * diameter nobody knows may be as wide as the rack takes.
 */
function clashOf({ job }: PlanRequest, { pockets, widest }: RackFacts): RackNeeds["clash"] {
  const unknown = widest === Infinity ? 0 : widest;
  const widths = new Map(
    job.tools.map(({ number, diameter }) => [number, isDiameterKnown(diameter) ? diameter : unknown]),
  );
  const width = (tool: number): number => widths.get(tool) ?? unknown;
  return (pocket, tool, otherPocket, otherTool) => {
    const [one, other] = [pockets[pocket], pockets[otherPocket]];
    return (width(tool) + width(otherTool)) / 2 >= Math.hypot(one.x - other.x, one.y - other.y);
  };
}

/** A tool for which there is no pocket, whatever else is taken out; a tool of the set-up that another one touches. */
function checkPlan(request: PlanRequest, { stuck }: ReloadPlan, report: Report): void {
  if (stuck === undefined) return;
  const { job, operations } = request;
  const operation = job.operations[operations[stuck]];
  report({
    ...pocketsRefused(
      request,
      `tool ${String(operation.tool)} of operation ${operation.id} finds no pocket in the rack`,
      "swap it by the operator, or use a smaller one",
    ),
    place: { source: "job", offset: operation.source },
  });
}

/** A tool that the job does not use has to go somewhere, and only the set-up can say where. */
function homeless(request: PlanRequest, held: number): Finding {
  return pocketsRefused(
    request,
    `the spindle holds tool ${String(held)}, which these operations do not use, and nothing says which pocket is its own`,
    "name its pocket under `rack` in the set-up file, or begin with an empty spindle",
  );
}

/** What is said of the rack as it is may name no pocket that it does not have, nor the tool in the spindle. */
function checkNow(request: PlanRequest, rack: RackFacts, now: readonly number[], report: Report): void {
  if (now.length > rack.pockets.length) {
    const message = `pocket ${String(now.length)} is listed and the rack has ${String(rack.pockets.length)}`;
    report(pocketsRefused(request, message, "list the pockets that the rack has"));
  }
  const held = request.setup.spindleHolds ?? 0;
  if (held === 0 || !now.includes(held)) return;
  const message = `tool ${String(held)} is in the spindle and in pocket ${String(now.indexOf(held) + 1)}`;
  report(pocketsRefused(request, message, "say of each tool where it is"));
}

/** The rack as the set-up lists it; the tool in the spindle needs a pocket of its own there, too. */
function fromSetup(
  request: PlanRequest,
  rack: RackFacts,
  listed: readonly number[],
  wanted: readonly number[],
  report: Report,
): number[] {
  const count = rack.pockets.length;
  const pockets = Array.from({ length: count }, (_, pocket) => listed[pocket] ?? 0);
  if (listed.length > count) {
    const message = `the set-up lists ${String(listed.length)} pockets and the rack has ${String(count)}`;
    report(pocketsRefused(request, message, "list the pockets that the rack has"));
  }
  const held = request.setup.spindleHolds ?? 0;
  if (held !== 0 && !pockets.includes(held)) {
    const free = pockets.indexOf(0);
    if (free >= 0) pockets[free] = held;
  }
  // More tools than pockets are loaded at stops.
  for (const tool of wanted.length > count ? [] : wanted) {
    if (pockets.includes(tool)) continue;
    const message = `tool ${String(tool)} stands in no pocket of the set-up`;
    report(pocketsRefused(request, message, "put it into a pocket and list it under `rack`"));
  }
  for (const [pocket, tool] of pockets.entries()) {
    if (tool === 0 || pockets.indexOf(tool) === pocket) continue;
    report(
      pocketsRefused(request, `the set-up has tool ${String(tool)} in two pockets`, "list each tool once"),
    );
  }
  return pockets;
}

function pocketsRefused(request: PlanRequest, message: string, fix: string): ReturnType<typeof refusal> {
  const source = request.job.operations[request.operations[0] ?? -1]?.source ?? 0;
  return refusal("limit/pockets", message, fix, source, "machine.rack.pockets");
}

/** Where the rack limits tools, one whose size is not stated may not fit and is refused like one that does not. */
function checkSize(tool: Tool, rack: RackFacts, measured: number | undefined, report: Report): void {
  const refuse = (message: string, fix: string, key: string): void => {
    report(refusal("limit/tool", `tool ${String(tool.number)} ${message}`, fix, tool.source, key));
  };
  const inMillimetres = (length: number): string => `${String(length / atomsPerMillimetre)} mm`;
  if (!isDiameterKnown(tool.diameter) && rack.widest !== Infinity) {
    const message = `states no diameter, and the rack takes tools up to ${inMillimetres(rack.widest)} wide`;
    refuse(message, "state the tool's `diameter` in the job or the head file", "machine.rack.widest");
  } else if (tool.diameter > rack.widest) {
    const message = `is ${inMillimetres(tool.diameter)} wide and the rack takes ${inMillimetres(rack.widest)}`;
    refuse(message, "swap it by the operator, or use a smaller one", "machine.rack.widest");
  }
  if (rack.longest === Infinity) return;
  const length = measured ?? tool.length;
  if (length === undefined) {
    refuse(
      "states no length, and the rack takes tools up to a length",
      "state the tool's `length`",
      "machine.rack.longest",
    );
  } else if (length > rack.longest) {
    const message = `is ${inMillimetres(length)} long and the rack takes ${inMillimetres(rack.longest)}`;
    refuse(message, "swap it by the operator, or use a shorter one", "machine.rack.longest");
  }
}
