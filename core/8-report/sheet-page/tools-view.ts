/** Tools, rack and reach as the page shows them. */
import { clean } from "../clean.ts";
import type { SheetPlan, SheetTool } from "../sheet/sheet.ts";
import { axisCells } from "./set-up-view.ts";
import type { UnitWords } from "./words.ts";
import { extentTexts, numberText, secondsText, unknown, valueText } from "./words.ts";

export function toolsView(plan: SheetPlan, { length }: UnitWords) {
  const { tools, rack, machine, time } = plan;
  return {
    holds: holdsText(plan),
    rack: rack.map(({ pocket, tool }) => ({ pocket, tool: tool === 0 ? "empty" : `tool ${tool}` })),
    tools: tools.map((tool) => ({
      ...toolView(tool, length, machine.lengths === "operator"),
      hasTime: time !== undefined,
      pocket: rack.length === 0 ? "" : valueText(tool.pocket),
    })),
    reaches: tools.flatMap(({ number, reach }) =>
      reach.map(({ workOffset, cutting, motion }) => ({
        tool: number,
        offset: workOffset,
        extents: [
          ...axisCells(extentTexts(cutting), length, "At feed "),
          ...axisCells(extentTexts(motion), length, "All motion "),
        ],
      })),
    ),
  };
}

function holdsText({ spindleHolds }: SheetPlan): string {
  if (spindleHolds === undefined) return "";
  return spindleHolds === 0
    ? "At the start the spindle is empty."
    : `At the start the spindle holds tool ${spindleHolds}.`;
}

function toolView(tool: SheetTool, unit: string, isByHand: boolean) {
  const { number, kind, description, lengthOffset, lengthWord, length, measured } = tool;
  return {
    number,
    offset: lengthWord ?? String(lengthOffset),
    kind,
    description: clean(description),
    shape: shapeText(tool, unit),
    diameter: valueText(tool.diameter),
    flutes: valueText(tool.flutes),
    reach: length === undefined ? (isByHand || measured ? unknown : "") : numberText(length.value),
    lengthNote: measured ? "measured after the change" : length === undefined ? "" : `by the ${length.from}`,
    stickOut: valueText(tool.stickOut),
    fluteLength: valueText(tool.fluteLength),
    maxRpm: valueText(tool.maxRpm),
    time: secondsText(tool.time),
    unit,
  };
}

/** What else there is to tell the tool by: "tip 90°, corner radius 0.5 mm". */
function shapeText(tool: SheetTool, unit: string): string {
  const parts = [
    tool.spareFor === undefined ? "" : `spare for tool ${tool.spareFor}: does ${tool.operations.join(" ")}`,
    tool.tipAngle === undefined ? "" : `tip ${numberText(tool.tipAngle)}°`,
    tool.tipDiameter === undefined ? "" : `tip diameter ${numberText(tool.tipDiameter)} ${unit}`,
    tool.cornerRadius === undefined ? "" : `corner radius ${numberText(tool.cornerRadius)} ${unit}`,
    tool.lead === undefined ? "" : `lead ${numberText(tool.lead)} ${unit}`,
    tool.radiusOffset === undefined ? "" : `radius offset ${tool.radiusOffset}`,
  ];
  return clean(parts.filter((part) => part !== "").join(", "));
}
