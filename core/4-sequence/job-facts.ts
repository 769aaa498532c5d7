import type { NamedBox, Report, SpindleDirection, ToolFacts } from "#base";
import type { Setup } from "#dialect";
import type { Tool } from "#job";
import { onLengthGrid } from "./grid.ts";
import { planRack } from "./rack-plan.ts";
import type { PlannedFacts, PlanRequest } from "./request.ts";

/**
 * Plans what sequencing and the guard go by beside the dialect: tools, stock and clearance of the job, work offsets and
 * lengths of the set-up, and which tool waits in which pocket.
 *
 * @param report gets `limit/pockets` where the rack cannot hold the tools, `limit/tool` where one does not fit
 */
export function planJobFacts(request: PlanRequest, report: Report): PlannedFacts {
  const { job, operations, setup, machine } = request;
  const heights = operations.map((index) => onLengthGrid(request, job.operations[index].clearance));
  const { rack, heldPocket, reloads, reloadsBefore } = planRack(request, report);
  return {
    known: true,
    tools: job.tools.map((tool) => toolFacts(tool, setup)),
    stock: job.stock && { min: job.stock.min, max: job.stock.max },
    fixtures: job.fixtures.map(({ name, min, max }): NamedBox => ({ name, min, max })),
    clearance: heights.length === 0 ? undefined : Math.min(...heights),
    workOffsets: mergedOffsets(request),
    spindleHolds: setup.spindleHolds ?? onlyTool(request),
    rack: machine.swap === "rack" ? rack : [],
    heldPocket,
    ...(reloads.length === 0 ? {} : { reloads, reloadsBefore }),
    ...(request.rackNow === undefined ? {} : { rackNow: request.rackNow }),
  };
}

/** A machine that cannot swap holds the only tool of the program. */
function onlyTool({ machine, operations, job }: PlanRequest): number | undefined {
  const used = new Set(operations.map((index) => job.operations[index].tool));
  const cannotSwap = machine.swap === undefined || machine.swap === "none";
  return cannotSwap && used.size === 1 ? [...used][0] : undefined;
}

function toolFacts(tool: Tool, setup: Setup): ToolFacts {
  return {
    number: tool.number,
    kind: tool.kind,
    diameter: tool.diameter,
    maxRpm: tool.maxRpm ?? Infinity,
    minRpm: tool.minRpm ?? 0,
    maxFeed: tool.maxFeed ?? Infinity,
    lengthOffset: tool.lengthOffset,
    radiusOffset: tool.radiusOffset ?? 0,
    direction: cuttingDirection(tool),
    lead: tool.lead ?? 0,
    length: setup.lengths[tool.number] ?? tool.length,
  };
}

/** Taps of which nothing is said are right-handed, as their cycle takes them (NISTIR 6556 3.5.16.4). */
function cuttingDirection(tool: Tool): SpindleDirection | undefined {
  if (tool.hand === "left") return "ccw";
  return tool.hand === "right" || tool.kind === "tap" ? "cw" : undefined;
}

/** The set-up's origins come before those of the leaf. */
function mergedOffsets({ setup, workZero }: PlanRequest): PlannedFacts["workOffsets"] {
  const count = Math.max(setup.workOffsets.length, workZero.length);
  return Array.from({ length: count }, (_, number) => setup.workOffsets[number] ?? workZero[number]);
}
