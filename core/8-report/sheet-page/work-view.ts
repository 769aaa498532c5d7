/** Operations and stops as the page shows them. */
import { clean } from "../clean.ts";
import { timeText } from "../time-text.ts";
import { groupedDigits } from "../counts.ts";
import type { SheetFeed, SheetOperation, SheetPlan, SheetStop } from "../sheet/sheet.ts";
import type { UnitWords } from "./words.ts";
import { rangeText, secondsText, unknown, valueText } from "./words.ts";

export function workView(plan: SheetPlan, units: UnitWords) {
  const { operations, stops } = plan;
  const hasLines = operations.some(({ line }) => line !== undefined);
  const { time } = plan;
  const hasVolumes = operations.some(({ removed }) => removed !== undefined);
  return {
    hasLines,
    hasVolumes,
    hasTimes: time !== undefined,
    time: time && sentence(timeText(time)),
    timeRests: time?.assumptions.map(clean).join(" "),
    operations: operations.map((operation) => ({
      ...operationView(operation, units, hasLines),
      hasTime: time !== undefined,
      time: secondsText(operation.time),
      hasVolume: hasVolumes,
      removed: valueText(operation.removed),
      volume: units.volume,
    })),
    stops: stops.map((stop, index) => stopView(stop, index + 1, hasLines)),
  };
}

function sentence(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
}

function operationView(operation: SheetOperation, units: UnitWords, hasLine: boolean) {
  const { id, name, tool, workOffset, direction, feedMode, feeds, coolant, notes, moreNotes } = operation;
  return {
    id: clean(id),
    name: name === id ? "" : clean(name),
    notes: [...notes.map(clean), ...(moreNotes === 0 ? [] : [`${moreNotes} more notes stand in the job`])],
    tool,
    offset: workOffset,
    hasLine,
    line: lineText(operation.line),
    rpm: rangeText(operation.rpm),
    direction: direction ?? "",
    cuttingSpeed: rangeText(operation.cuttingSpeed),
    feeds: feeds.map((feed) => feedView(feed, feedMode, units)),
    lowest: valueText(operation.lowest),
    coolant: coolant.length === 0 ? "off" : coolant.join(", "),
    speed: units.speed,
    feed: units.feed,
    tooth: units.tooth,
    unit: units.length,
  };
}

function lineText(line: number | undefined): string {
  return line === undefined ? unknown : groupedDigits(line);
}

/** A feed that is not per minute has its unit beside it. */
function feedView(
  { use, feed, perTooth }: SheetFeed,
  feedMode: SheetOperation["feedMode"],
  units: UnitWords,
) {
  const unit = {
    "per-minute": "",
    "per-revolution": ` ${units.revolution}`,
    "inverse-time": " 1/min (inverse time)",
  }[feedMode];
  const isTap = use === "tap";
  return {
    use: isTap ? "lead" : use,
    text: `${rangeText(feed)}${isTap ? ` ${units.revolution}` : unit}`,
    tooth: rangeText(perTooth),
  };
}

function stopView({ operation, text, message, optional, line }: SheetStop, number: number, hasLine: boolean) {
  return {
    number,
    at: operation === undefined ? "the start" : clean(operation),
    text: clean(text),
    message: clean(message),
    optional,
    hasLine,
    line: lineText(line),
  };
}
