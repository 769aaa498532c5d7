/** Numbers and names as a sheet writes them. */
import type { UnitSystem } from "#base";
import { groupedDigits } from "../counts.ts";
import { durationText } from "../time-text.ts";
import type { Range, SheetBox, ToolReach } from "../sheet/sheet.ts";

/** What stands where nothing is known. */
export const unknown = "–";

/** Units by what is measured, as column heads name them. */
export const unitWords = {
  mm: {
    length: "mm",
    feed: "mm/min",
    revolution: "mm/rev",
    tooth: "mm/tooth",
    speed: "m/min",
    volume: "cm³",
    system: "millimetres",
  },
  inch: {
    length: "in",
    feed: "in/min",
    revolution: "in/rev",
    tooth: "in/tooth",
    speed: "ft/min",
    volume: "in³",
    system: "inches",
  },
} as const satisfies Record<UnitSystem, Record<string, string>>;

/** The units of one sheet. */
export type UnitWords = (typeof unitWords)[UnitSystem];

/** A time as the sheet has it: "1 min 05 s". */
export function secondsText(seconds: number | undefined): string {
  return seconds === undefined ? unknown : durationText(seconds);
}

/** 15915 -> "15,915"; parts of a unit stay as they are. */
export function numberText(value: number): string {
  const [whole, parts] = String(value).split(".");
  return parts === undefined ? groupedDigits(Number(whole)) : `${groupedWhole(whole)}.${parts}`;
}

/** The whole part of a number with a sign that 0 would lose: "-0" -> "-0". */
function groupedWhole(whole: string): string {
  return whole === "-0" ? whole : groupedDigits(Number(whole));
}

/** "960", "400 to 960", or a dash. */
export function rangeText(range: Range | undefined): string {
  if (range === undefined) return unknown;
  const { least, most } = range;
  return least === most ? numberText(least) : `${numberText(least)} to ${numberText(most)}`;
}

/** A value that may be unknown. */
export function valueText(value: number | undefined): string {
  return value === undefined ? unknown : numberText(value);
}

/** Extents by axis. */
export function extentTexts({ x, y, z }: ToolReach["cutting"]): readonly string[] {
  return [x, y, z].map(rangeText);
}

/** Where work zero lies against the stock, as one looks for it at the machine; `unit` is that of lengths. */
export function zeroWords({ min, max, size }: SheetBox, unit: string): string {
  const along = (axis: 0 | 1, low: string, high: string, inwards: string): string => {
    const from = -min[axis];
    if (from === 0) return `at the ${low} edge`;
    if (max[axis] === 0) return `at the ${high} edge`;
    if (Math.abs(from * 2 - size[axis]) < 1e-9) return `midway between ${low} and ${high} edge`;
    if (from < 0) return `${numberText(-from)} ${unit} outside the ${low} edge`;
    return from < size[axis]
      ? `${numberText(from)} ${unit} ${inwards} the ${low} edge`
      : `${numberText(-max[axis])} ${unit} outside the ${high} edge`;
  };
  const top = max[2];
  const height =
    top === 0
      ? "at the top of the stock"
      : min[2] === 0
        ? "at the bottom of the stock"
        : top > 0
          ? `${numberText(top)} ${unit} below the top of the stock`
          : `${numberText(-top)} ${unit} above the top of the stock`;
  return `X0 is ${along(0, "left", "right", "to the right of")}, Y0 ${along(1, "front", "rear", "behind")}, Z0 ${height}.`;
}
