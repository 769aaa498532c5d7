/** Tools as the sheet lists them. */
import { isDiameterKnown, microDegreesPerTurn } from "#base";
import type { Format, Setup } from "#dialect";
import type { Operation, Tool } from "#job";
import type { SheetTool } from "#report";
import { toolsUsed } from "#report";
import type { Undertaking } from "../undertaking.ts";
import type { ReachTally } from "./tally.ts";
import type { Measure } from "./units.ts";
import { extentsOf, rounded, rpmOf } from "./units.ts";

/** What the tools of a sheet are made from. */
export interface ToolsInput {
  readonly work: Undertaking;
  readonly setup: Setup | undefined;
  readonly format: Format;
  readonly reaches: readonly ReachTally[];
  readonly measure: Measure;
}

/** The tools that the operations use, in the order of first use. */
export function sheetTools(input: ToolsInput): SheetTool[] {
  const { job, operations } = input.work;
  return toolsUsed(operations).flatMap((number) => {
    const tool = job.tools.find((one) => one.number === number);
    return tool === undefined ? [] : [sheetTool(tool, input)];
  });
}

function sheetTool(tool: Tool, input: ToolsInput): SheetTool {
  const { work, measure, reaches } = input;
  const { machine, operations } = work;
  const { number, lengthOffset, flutes, radiusOffset, description, kind } = tool;
  const pocket = work.facts.rack.indexOf(number) + 1;
  const word = lengthWord(tool, input.format);
  const measured = tool.measure ?? machine.lengths === "measured";
  return {
    number,
    kind,
    description,
    ...(isDiameterKnown(tool.diameter) ? { diameter: measure.length(tool.diameter) } : {}),
    ...(flutes === undefined ? {} : { flutes }),
    ...(pocket === 0 ? {} : { pocket }),
    lengthOffset,
    ...(word === undefined ? {} : { lengthWord: word }),
    ...(radiusOffset === undefined ? {} : { radiusOffset }),
    ...lengthOf(tool, input),
    measured,
    ...sizesOf(tool, measure),
    ...(tool.maxRpm === undefined ? {} : { maxRpm: rpmOf(tool.maxRpm) }),
    ...(tool.spareFor === undefined ? {} : { spareFor: tool.spareFor }),
    operations: idsOf(operations, ({ tool: used }) => used === number),
    reach: reaches
      .filter((reach) => reach.tool === number)
      .map(({ workOffset, cutting, motion }) => ({
        workOffset,
        cutting: extentsOf(cutting, measure),
        motion: extentsOf(motion, measure),
      })),
  };
}

/** Ids of the operations that a condition holds for. */
export function idsOf(operations: readonly Operation[], holds: (operation: Operation) => boolean): string[] {
  return operations.filter(holds).map(({ id }) => id);
}

function lengthOf({ number, length }: Tool, { setup, measure }: ToolsInput): Pick<SheetTool, "length"> {
  const stated = setup?.lengths[number];
  if (stated !== undefined) return { length: { value: measure.length(stated), from: "set-up" } };
  return length === undefined ? {} : { length: { value: measure.length(length), from: "job" } };
}

const sizes = ["stickOut", "fluteLength", "cornerRadius", "tipDiameter", "lead"] as const;

function sizesOf(tool: Tool, { length }: Measure): Partial<SheetTool> {
  const lengths = sizes.flatMap((name) => {
    const value = tool[name];
    return value === undefined ? [] : [[name, length(value)] as const];
  });
  const { tipAngle } = tool;
  const angle =
    tipAngle === undefined ? {} : { tipAngle: rounded((tipAngle * 360) / microDegreesPerTurn, 3) };
  return { ...Object.fromEntries(lengths), ...angle };
}

/** The word that calls up the length of a tool: "H5"; undefined where the tool word does that, or nothing. */
function lengthWord({ lengthOffset }: Tool, { lengthOffset: facts }: Format): string | undefined {
  if (facts === undefined || (facts.form !== "with-first-z" && facts.form !== "own-block")) return undefined;
  return `${facts.word}${lengthOffset + facts.added}`;
}
