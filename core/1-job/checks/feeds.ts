import { isDiameterKnown, milliPerRpm } from "#base";
import type { Tool } from "../job.ts";
import { chipLoadOf, outside, usualChipLoad } from "./chip-load.ts";
import { cuttingSpeed, outsideSpeed, tooFast, tooSlow } from "./cutting-speed.ts";
import * as findings from "./findings.ts";
import type { ChipLoadWords } from "./findings.ts";
import type { ChipLoads, Material, SpeedLimit } from "./materials.ts";
import { sources } from "./materials.ts";
import type { OperationWatch, TradeWatch } from "./watch.ts";
import { raise } from "./watch.ts";
import { feedWords, lengthWords, rangeWords, shortNumber } from "./words.ts";

/** Takes what was cut at the present speed into the account; called before the speed changes, and at the end. */
export function endSpeed(watch: OperationWatch): void {
  const { lateral, rpm, tool, operation } = watch;
  const perTooth = operation.feedMode === "per-minute" ? rpm / milliPerRpm : 1;
  const flutes = tool.flutes ?? 0;
  const isKnown = operation.feedMode !== "inverse-time" && flutes > 0 && perTooth > 0;
  if (isKnown && raise(watch.load, chipLoadOf(lateral.value, perTooth, flutes), lateral.offset)) {
    watch.load.feed = lateral.value;
    watch.load.rpm = rpm;
  }
  if (watch.cuts && raise(watch.speed, cuttingSpeed(tool.diameter, rpm), operation.source))
    watch.speed.rpm = rpm;
  raise(watch.fastest, lateral.value, lateral.offset);
  lateral.value = 0;
  watch.cuts = false;
}

/** What an operation shows at its end: chip load, cutting speed, feed down and flutes. */
export function endOperation(job: TradeWatch, watch: OperationWatch): void {
  endSpeed(watch);
  const { feeds, material } = job;
  if (material !== undefined && isDiameterKnown(watch.tool.diameter)) {
    if (material.chipLoads !== undefined) checkChipLoad(job, watch, material.chipLoads, material);
    checkSpeed(job, watch, material);
  }
  checkPlungeFeed(job, watch);
  checkFlutes(job, watch);
  const { operation, fastest } = watch;
  // Feeds of one tool follow each other; a feed can be left over from another tool alone.
  if (feeds.last !== undefined && feeds.last.operation.tool !== operation.tool) feeds.before = feeds.last;
  if (fastest.value > 0) feeds.last = { operation, feed: fastest.value };
}

/** The fastest motion in the stock stands for the operation: on curves and at its entry a tool is slower by right. */
function checkChipLoad(job: TradeWatch, watch: OperationWatch, table: ChipLoads, material: Material): void {
  const { tool, operation, load, kind } = watch;
  if (kind.chipLoad === undefined || load.value === 0) return;
  const fault = outside(usualChipLoad(table, tool.diameter), load.value);
  if (fault === undefined) return;
  const words = chipLoadWords(job, watch, table, material);
  const { last } = job.feeds;
  const before = last?.operation.tool === operation.tool ? job.feeds.before : last;
  const isLeftOver = before?.feed === load.feed && before.operation.feedMode === operation.feedMode;
  job.causes.add(`chip load ${tool.number} ${fault}`, load.offset, 0, (place) =>
    isLeftOver ? findings.feedLeftOver(place, watch, words, before) : findings.chipLoad(place, watch, words),
  );
}

function chipLoadWords(
  { job }: TradeWatch,
  { tool, operation, load }: OperationWatch,
  table: ChipLoads,
  material: Material,
): ChipLoadWords {
  const { units } = job;
  const { feedMode } = operation;
  const flutes = tool.flutes ?? 1;
  const turns = feedMode === "per-minute" ? load.rpm / milliPerRpm : 1;
  const { least, most } = usualChipLoad(table, tool.diameter);
  const ranged = (words: (value: number) => string): string =>
    rangeWords(least === undefined ? undefined : words(least), most === undefined ? undefined : words(most));
  return {
    load: lengthWords(units, load.value),
    feed: feedWords(units, feedMode, load.feed),
    rpm: feedMode === "per-minute" ? `${shortNumber(turns)} rpm` : "1 rev",
    flutes,
    material: material.name,
    usual: ranged((value) => lengthWords(units, value)),
    source: sources[table.source],
    feeds: ranged((value) => feedWords(units, feedMode, value * turns * flutes)),
  };
}

function checkSpeed(job: TradeWatch, watch: OperationWatch, material: Material): void {
  const { tool, speed, kind } = watch;
  if (kind.fullDiameter === undefined || speed.value === 0) return;
  const fault = outsideSpeed(material, speed.value, (tool.maxRpm ?? speed.rpm) / speed.rpm);
  const limit = fault === "fast" ? material.fastest : material.slowest;
  if (fault === undefined || limit === undefined || (fault === "slow" && !kind.mills)) return;
  job.causes.add(`speed ${tool.number} ${fault}`, speed.offset, 0, (place) =>
    findings.cuttingSpeed(place, watch, speedWords(job, watch, material, limit, fault)),
  );
}

function speedWords(
  { job }: TradeWatch,
  { tool, speed }: OperationWatch,
  material: Material,
  limit: SpeedLimit,
  fault: "slow" | "fast",
): Parameters<typeof findings.cuttingSpeed>[2] {
  const isFast = fault === "fast";
  return {
    speed: shortNumber(Math.round(speed.value)),
    diameter: lengthWords(job.units, tool.diameter),
    rpm: `${shortNumber(speed.rpm / milliPerRpm)} rpm`,
    material: material.name,
    bound: isFast
      ? `The fastest in use is ${limit.speed}, told from ${tooFast} times it on:`
      : `The slowest in use is ${limit.speed}, told below ${tooSlow} of it:`,
    source: sources[limit.source],
    rightRpm: rightSpeed(tool, limit, isFast),
  };
}

/** Speed at which a tool has a cutting speed, n = 1000 Vc / (pi D): D6, Vc 300 -> 15 915 rpm. */
function rightSpeed(tool: Tool, { speed }: SpeedLimit, isFast: boolean): string {
  const rpm = (speed / cuttingSpeed(tool.diameter, milliPerRpm)) | 0;
  return isFast ? `${rpm} at the most` : `${Math.min(rpm, (tool.maxRpm ?? Infinity) / milliPerRpm)} or so`;
}

/** A mill that goes down as fast as it ever goes sideways has its cutting feed there. Cones that engrave do so by habit. */
function checkPlungeFeed({ job, causes }: TradeWatch, watch: OperationWatch): void {
  const { plunge, fastest, kind, tool, operation } = watch;
  if (kind.chipLoad === undefined || fastest.value === 0 || plunge.value < fastest.value) return;
  const words = [plunge, fastest].map(({ value }) => feedWords(job.units, operation.feedMode, value));
  if (operation.feedMode === "inverse-time") return;
  causes.add(`plunge feed ${tool.number}`, plunge.offset, 0, (place) =>
    findings.plungeFeed(place, watch, words[0], words[1]),
  );
}

/** A relieved shank does not rub; whether one is as thick as the cutter is taken so unless the job says otherwise. */
function checkFlutes({ job, causes }: TradeWatch, watch: OperationWatch): void {
  const { tool, depth, kind } = watch;
  const flutes = tool.fluteLength ?? Infinity;
  const isRelieved = tool.shank !== undefined && tool.shank < tool.diameter;
  if (kind.mills === undefined || isRelieved || depth.value <= flutes) return;
  const [units, length] = [job.units, lengthWords(job.units, flutes)];
  causes.add(`flutes ${tool.number}`, depth.offset, depth.value, (place, deepest) =>
    findings.fluteLength(place, watch, lengthWords(units, deepest), length, "stock"),
  );
}
