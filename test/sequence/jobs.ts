import type { SpindleDirection, ToolKind } from "#base";
import type { Job, Operation, Tool } from "#job";
import { mm, rpm } from "./machines.ts";

/** A tool of which the job says nothing but its kind. */
export function toolOf(number: number, kind: ToolKind = "end-mill", change: Partial<Tool> = {}): Tool {
  return {
    number,
    kind,
    diameter: mm(6),
    description: "",
    flutes: undefined,
    maxRpm: undefined,
    minRpm: undefined,
    maxFeed: undefined,
    lengthOffset: number,
    radiusOffset: undefined,
    length: undefined,
    fluteLength: undefined,
    stickOut: undefined,
    shank: undefined,
    holder: undefined,
    cornerRadius: undefined,
    tipDiameter: undefined,
    tipAngle: undefined,
    lead: undefined,
    hand: undefined,
    centreCutting: undefined,
    life: undefined,
    spareFor: undefined,
    measure: undefined,
    source: 0,
    ...change,
  };
}

/** An operation with a tool; `turns` is its speed in rpm and direction. */
export function operationOf(
  tool: number,
  turns = 18000,
  change: Partial<Operation> = {},
  direction: SpindleDirection = "cw",
): Operation {
  return {
    id: `op${String(tool)}`,
    name: "",
    tool,
    spindle: turns === 0 ? undefined : { rpm: rpm(turns), direction },
    coolant: [],
    feedMode: "per-minute",
    workOffset: 1,
    clearance: mm(15),
    hood: undefined,
    tolerance: undefined,
    path: undefined,
    moves: { start: 0, end: 0 },
    source: 0,
    ...change,
  };
}

export function jobOf(operations: readonly Operation[], tools?: readonly Tool[]): Job {
  const numbers = [...new Set(operations.map((operation) => operation.tool))];
  return {
    name: "",
    units: "mm",
    program: { number: undefined, name: undefined },
    stock: undefined,
    fixtures: [],
    workOffset: 1,
    clearance: mm(15),
    tools: tools ?? numbers.map((tool) => toolOf(tool)),
    operations,
  };
}
