import type { ToolKind } from "#base";
import type { Tool } from "./job.ts";

/** A tool of which nothing is stated but what it is. */
export function plainTool(number: number, kind: ToolKind, diameter: number, source: number): Tool {
  return {
    number,
    kind,
    diameter,
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
    source,
  };
}
