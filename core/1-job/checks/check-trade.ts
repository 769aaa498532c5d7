import type { Batch, Report } from "#base";
import type { JobStep, Operation } from "../job.ts";
import type { OpenJob } from "../open-job.ts";
import { endOperation } from "./feeds.ts";
import * as findings from "./findings.ts";
import { endTaps } from "./holes.ts";
import { materials } from "./materials.ts";
import { leastGap } from "./rapids.ts";
import { leastRadius, watchRows } from "./rows.ts";
import type { TradeWatch } from "./watch.ts";
import { createWatch, watchOperation } from "./watch.ts";
import { lengthWords } from "./words.ts";

/**
 * Looks at the moves of a job, as they are pulled, for what a machinist would ask about: feeds and speeds that do not suit tool
 * and material, plunges, depths, holes. Everything is a warning; each cause is told once, with how often it shows, when the
 * last operation has been pulled.
 *
 * @param operations those that will be pulled, in their order
 * @returns the same job; its moves are unchanged
 */
export function checkTrade(opened: OpenJob, operations: readonly Operation[], report: Report): OpenJob {
  const { job } = opened;
  const watch = createWatch(job, operations.length === job.operations.length);
  const last = operations.at(-1);
  checkHead(watch, report);
  return {
    job,
    moves: (operation, to) =>
      watched(watch, operation, opened.moves(operation, to), () => {
        if (operation === last) endJob(watch, report);
      }),
  };
}

function* watched(
  watch: TradeWatch,
  operation: Operation,
  batches: Iterable<Batch<JobStep>>,
  ended: () => void,
): Generator<Batch<JobStep>> {
  const tool = watch.job.tools.find(({ number }) => number === operation.tool);
  const state = tool && watchOperation(operation, tool);
  for (const batch of batches) {
    if (state) watchRows(watch, state, batch);
    yield batch;
  }
  if (state) endOperation(watch, state);
  ended();
}

/** What the head alone shows. */
function checkHead({ job, material }: TradeWatch, report: Report): void {
  const { stock, tools, operations } = job;
  if (stock?.material !== undefined && material === undefined) {
    const names = materials.map(({ name }) => name);
    report(findings.unknownMaterial(stock.materialAt ?? { source: "job", offset: 0 }, stock.material, names));
  }
  const used = new Set(operations.map(({ tool }) => tool));
  // A spare waits for its tool to be worn.
  const unused = tools.filter(({ number, spareFor }) => !used.has(spareFor ?? number));
  if (unused.length > 0)
    report(
      findings.unusedTool(
        unused[0].source,
        unused.map(({ number }) => number),
      ),
    );
}

function endJob(watch: TradeWatch, report: Report): void {
  const { job, causes, lowRapids, tinyArcs } = watch;
  endTaps(watch);
  if (lowRapids.times > 0) {
    const [gap, enough] = [lowRapids.extreme, leastGap].map((length) => lengthWords(job.units, length));
    const told = (offset: number) => findings.lowRapid(offset, gap, enough);
    causes.add("low rapids", lowRapids.offset, 0, told, lowRapids.times);
  }
  if (tinyArcs.times > 0) {
    const [radius, least] = [tinyArcs.extreme, leastRadius].map((length) => lengthWords(job.units, length));
    causes.add(
      "tiny arcs",
      tinyArcs.offset,
      0,
      (offset) => findings.tinyArc(offset, radius, least),
      tinyArcs.times,
    );
  }
  causes.tell(report);
}
