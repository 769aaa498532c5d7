import type { Finding, RackFacts, Report } from "#base";
import { atomsPerMillimetre } from "#base";
import type { Tool } from "#job";
import { refusal } from "./findings.ts";
import type { PlanRequest } from "./request.ts";

/** Which tool waits where at the start. */
export interface RackPlan {
  /** Tool in each pocket, 0 for none; index 0 is pocket 1. */
  readonly rack: readonly number[];
  /** Pocket of the tool in the spindle, counted from 0. */
  readonly heldPocket: number | undefined;
}

const noRack: RackPlan = { rack: [], heldPocket: undefined };

/**
 * Gives each tool a pocket: as the set-up says, otherwise pocket i to the i-th tool of the job in order of first use, so that
 * a part of the job finds its tools where the whole has them; where the rack has too few pockets for that, to the i-th tool of
 * the part. The tool that the spindle holds leaves its own pocket free; one that the job does not use gets a pocket behind
 * the others.
 */
export function planRack(request: PlanRequest, report: Report): RackPlan {
  const { machine, setup, job } = request;
  const { rack } = machine;
  if (machine.swap !== "rack" || !rack) return noRack;
  const used = [...new Set(request.operations.map((index) => job.operations[index].tool))];
  const held = setup.spindleHolds ?? 0;
  const needed = withHeld(used, held);
  const all = withHeld([...new Set(job.operations.map(({ tool }) => tool))], held);
  // A set-up lists what there is: only what is used has to be in it.
  const wanted = setup.rack || all.length > rack.pockets.length ? needed : all;
  const inJob = job.operations.some(({ tool }) => tool === held);
  const hasHome = used.includes(held) || (inJob && wanted === all);
  if (held !== 0 && !hasHome && !setup.rack) report(homeless(request, held));
  const pockets = setup.rack
    ? fromSetup(request, rack, setup.rack, wanted, report)
    : inOrder(request, rack, wanted, report);
  for (const tool of job.tools)
    if (needed.includes(tool.number)) checkSize(tool, rack, setup.lengths[tool.number], report);
  const found = held === 0 ? -1 : pockets.indexOf(held);
  return {
    rack: pockets.map((tool) => (tool === held ? 0 : tool)),
    heldPocket: found < 0 ? undefined : found,
  };
}

function withHeld(tools: readonly number[], held: number): readonly number[] {
  return held === 0 || tools.includes(held) ? tools : [...tools, held];
}

/** A tool that the job does not use has to go somewhere, and only the set-up can say where. */
function homeless(request: PlanRequest, held: number): Finding {
  return pocketsRefused(
    request,
    `the spindle holds tool ${String(held)}, which these operations do not use, and nothing says which pocket is its own`,
    "name its pocket under `rack` in the set-up file, or begin with an empty spindle",
  );
}

function inOrder(request: PlanRequest, rack: RackFacts, wanted: readonly number[], report: Report): number[] {
  const count = rack.pockets.length;
  if (wanted.length > count) {
    const message = `the job takes ${String(wanted.length)} tools and the rack has ${String(count)} pockets`;
    report(
      pocketsRefused(
        request,
        message,
        "post the operations in parts with `--only`, each with as many tools as there are pockets",
      ),
    );
  }
  return Array.from({ length: count }, (_, pocket) => wanted[pocket] ?? 0);
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
  for (const tool of wanted) {
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
  if (tool.diameter > rack.widest) {
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
