/** Stock, work zero, work offsets and machine as the page shows them. */
import Handlebars from "handlebars";
import { clean } from "../clean.ts";
import type { SheetBox, SheetMachine, SheetOffset, SheetPlan } from "../sheet/sheet.ts";
import { letterOfFixture, setupDrawing } from "./drawing.ts";
import type { UnitWords } from "./words.ts";
import { extentTexts, numberText, rangeText, zeroWords } from "./words.ts";

/** A cell with what it is called where there are no column heads. */
export interface Cell {
  readonly head: string;
  readonly text: string;
}

/** Cells for X, Y and Z, with what their heads begin with. */
export function axisCells(texts: readonly string[], unit: string, head = ""): Cell[] {
  return texts.map((text, axis) => ({ head: `${head}${"XYZ".charAt(axis)}, ${unit}`, text }));
}

export function setUpView(plan: SheetPlan, units: UnitWords) {
  const { stock, fixtures, clearance, workOffsets } = plan;
  const { length } = units;
  const drawing = setupDrawing(plan, length);
  return {
    drawing: drawing === undefined ? "" : new Handlebars.SafeString(drawing),
    zero: stock === undefined ? "" : zeroWords(stock, length),
    material: clean(stock?.material ?? ""),
    boxes: [
      ...(stock === undefined ? [] : [boxView(stock, "", "stock", length)]),
      ...fixtures.map((box, index) =>
        boxView(box, stock === undefined ? "" : letterOfFixture(index), box.name, length),
      ),
    ],
    offsets: workOffsets.map((offset) => offsetView(offset, length)),
    clearance: rangeText(clearance),
    machineFacts: machineView(plan.machine, length),
  };
}

function boxView({ min, max, size }: SheetBox, letter: string, name: string, unit: string) {
  const places = axisCells(
    min.map((low, axis) => rangeText({ least: low, most: max[axis] })),
    unit,
  );
  return {
    letter,
    name: clean(name),
    places: [...places, { head: `Size, ${unit}`, text: size.map(numberText).join(" × ") }],
  };
}

function offsetView(
  { number, word, operations, origin, extents, machineExtents }: SheetOffset,
  unit: string,
) {
  const hasMachine = machineExtents.x !== undefined;
  return {
    number,
    word: word ?? "",
    operations: operations.map(clean).join(", "),
    origin:
      origin === undefined
        ? ""
        : origin.map((place, axis) => `${"XYZ".charAt(axis)}${numberText(place)}`).join(" "),
    length: unit,
    extents: axisCells(extentTexts(extents), unit),
    machine: hasMachine ? axisCells(extentTexts(machineExtents), unit) : [],
  };
}

const changes = {
  rack: "by the program, from a rack",
  controller: "by the control",
  operator: "by the operator, at a stop",
  none: "none: one tool a program",
} as const;

const lengthWords = {
  table: "in the control's table",
  measured: "measured after each change",
  operator: "none: Z is set by hand for each tool",
} as const;

function machineView({ travel, spindle, toolChange, lengths }: SheetMachine, unit: string) {
  const named = (["x", "y", "z"] as const).flatMap((axis) => {
    const range = travel[axis];
    return range === undefined
      ? []
      : [{ name: `Travel ${axis.toUpperCase()}, ${unit}`, value: rangeText(range) }];
  });
  return [
    ...named,
    ...(spindle === undefined ? [] : [{ name: "Spindle, 1/min", value: rangeText(spindle) }]),
    ...(toolChange === undefined ? [] : [{ name: "Tool change", value: changes[toolChange] }]),
    ...(lengths === undefined ? [] : [{ name: "Tool lengths", value: lengthWords[lengths] }]),
  ];
}
