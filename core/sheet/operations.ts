/** Operations as the sheet lists them. */
import type { FeedMode, UnitSystem } from "#base";
import { atomsPerUnit, isDiameterKnown, milliPerRpm } from "#base";
import type { Range, SheetFeed, SheetOperation } from "#report";
import type { OperationNotes } from "./job-texts.ts";
import { isSeen } from "./span.ts";
import type { OperationTally } from "./tally.ts";
import type { Measure } from "./units.ts";
import { rangeOf, rounded, rpmOf } from "./units.ts";

/** An operation with what was counted of it. */
export function sheetOperation(
  counted: OperationTally,
  notes: OperationNotes | undefined,
  measure: Measure,
): SheetOperation {
  const { operation, line, direction } = counted;
  const feedMode = counted.feedMode ?? operation.feedMode;
  const rpm = rangeOf(counted.rpm, rpmOf);
  const speed = cuttingSpeed(counted, measure.units);
  return {
    id: operation.id,
    name: operation.name,
    tool: operation.tool,
    workOffset: operation.workOffset,
    ...(line === undefined ? {} : { line }),
    ...(rpm === undefined ? {} : { rpm }),
    ...(direction === undefined ? {} : { direction }),
    feedMode,
    feeds: feedsOf(counted, feedMode, measure),
    ...(speed === undefined ? {} : { cuttingSpeed: speed }),
    ...(isSeen(counted.z) ? { lowest: measure.length(counted.z.least) } : {}),
    clearance: measure.length(operation.clearance),
    coolant: [...counted.media],
    notes: notes?.kept ?? [],
    moreNotes: notes?.more ?? 0,
  };
}

function feedsOf(counted: OperationTally, feedMode: FeedMode, measure: Measure): SheetFeed[] {
  return [...counted.feeds].flatMap(([use, { feed, perTooth }]) => {
    const isFine = use === "tap" || feedMode === "per-revolution";
    const unit = { "per-minute": measure.feed, "per-revolution": measure.fine, "inverse-time": inverseTime };
    const range = rangeOf(feed, isFine ? measure.fine : unit[feedMode]);
    const tooth = rangeOf(perTooth, measure.fine);
    return range === undefined ? [] : [{ use, feed: range, ...(tooth && { perTooth: tooth }) }];
  });
}

/** 1e-6 a minute -> 1/min */
function inverseTime(value: number): number {
  return rounded(value / 1e6, 3);
}

/** Vc = pi D n: in m/min, or with the diameter in inches in feet a minute (12 inches in a foot). */
function cuttingSpeed({ tool, rpm }: OperationTally, units: UnitSystem): Range | undefined {
  if (tool === undefined || !isDiameterKnown(tool.diameter)) return undefined;
  const parts = { mm: 1000, inch: 12 }[units];
  const girth = (Math.PI * tool.diameter) / atomsPerUnit[units];
  return rangeOf(rpm, (milli) => rounded((girth * milli) / milliPerRpm / parts, 0));
}
