import type { MachineFacts, NamedBox, Step } from "#base";
import { createSimulation } from "#simulate";
import type { SimulationFacts, SimulationResult, SimulationSizes, SimulationTool } from "#simulate";
import { layOut, mm } from "../prove/layout.ts";
import type { Item, Move } from "../prove/layout.ts";

/** A place in mm. */
export type Point = readonly [number, number, number];

/** A tool in mm and degrees. */
export type TestTool = Partial<Record<Exclude<keyof SimulationTool, "kind" | "holder">, number>> & {
  kind: SimulationTool["kind"];
  diameter: number;
  holder?: { diameter: number; length: number };
};

/** The tool as the simulation takes it. */
export function toolOf({ kind, number = 1, tipAngle, holder, ...lengths }: TestTool): SimulationTool {
  const atoms = Object.fromEntries(Object.entries(lengths).map(([key, value]) => [key, mm(value)]));
  return {
    number,
    kind,
    cornerRadius: undefined,
    tipDiameter: undefined,
    fluteLength: undefined,
    stickOut: undefined,
    shank: undefined,
    length: undefined,
    tipAngle: tipAngle === undefined ? undefined : Math.round(tipAngle * 1e6),
    holder: holder && { diameter: mm(holder.diameter), length: mm(holder.length) },
    ...(atoms as { diameter: number }),
  };
}

/** What a test cuts. */
export interface Cutting {
  readonly stock?: readonly [Point, Point];
  readonly tools: readonly TestTool[];
  readonly items: readonly Item[];
  readonly fixtures?: readonly NamedBox[];
  readonly facts?: Partial<SimulationFacts>;
  readonly sizes?: Partial<SimulationSizes>;
}

export const corner = (place: Point): [number, number, number] => [mm(place[0]), mm(place[1]), mm(place[2])];

/** Cuts it, all by the first tool unless the facts have operations. */
export function cut({
  stock,
  tools,
  items,
  fixtures = [],
  facts = {},
  sizes = {},
}: Cutting): SimulationResult {
  const first = tools[0].number ?? 1;
  const simulation = createSimulation(
    {
      units: "mm",
      source: "job",
      tools: tools.map(toolOf),
      stock: stock && { min: corner(stock[0]), max: corner(stock[1]) },
      fixtures,
      parts: [{ id: "op10", tool: first, from: 0 }],
      workOffset: 1,
      machine: { rapids: "straight", swap: undefined, rack: undefined },
      spindleHolds: undefined,
      rack: [],
      ...facts,
    },
    sizes,
  );
  for (const batch of layOut(items, { opaqueEffects: {} } as unknown as MachineFacts))
    simulation.accept(batch);
  return simulation.end();
}

const motion =
  (kind: Move["kind"]) =>
  (x?: number, y?: number, z?: number, more: Partial<Move> = {}): Item => ({
    move: {
      kind,
      ...(x === undefined ? {} : { x }),
      ...(y === undefined ? {} : { y }),
      ...(z === undefined ? {} : { z }),
      ...(kind === "rapid" ? {} : { feed: 600 }),
      ...more,
    },
  });

export const rapid = motion("rapid");
export const line = motion("line");
export const arc = motion("arcXy");
export const hole = motion("hole");
export const step = (value: Step): Item => ({ step: value });

/** From above to the start of a cut, and down into it at feed. */
export const plunge = (x: number, y: number, z: number): Item[] => [
  rapid(x, y, undefined),
  rapid(undefined, undefined, 5),
  line(undefined, undefined, z),
];

/** What the simulation did; throws where there is nothing. */
export function doneOf(result: SimulationResult): NonNullable<SimulationResult["done"]> {
  if (!result.done) throw new Error("nothing was simulated");
  return result.done;
}

/** Volume that was taken away, mm3. */
export const removedBy = (cutting: Cutting): number => {
  const done = doneOf(cut(cutting));
  const removed = done.operations.reduce((sum, { removed }) => sum + removed, 0);
  if (Math.abs(done.stockVolume - done.volumeLeft - removed) > 1e-3 * removed + 1e-3)
    throw new Error(`what was cut is not what is missing: ${removed}, ${done.stockVolume - done.volumeLeft}`);
  return removed;
};

/** Rules of the findings, with the severity where it is no warning. */
export const rulesOf = ({ findings }: SimulationResult): string[] =>
  findings.map(({ rule, severity }) => (severity === "warning" ? rule : `${severity} ${rule}`));

/** Height above a place, mm. */
export function heightAt(result: SimulationResult, x: number, y: number): number {
  const { map } = doneOf(result);
  const column = Math.floor((x - map.x) / map.cellX);
  const row = Math.floor((y - map.y) / map.cellY);
  return map.heights[row * map.columns + column];
}

/** Stock of 80 x 80 x 30 mm with its top at 0. */
export const deepStock: readonly [Point, Point] = [
  [0, 0, -30],
  [80, 80, 0],
];

export const endMill: TestTool = { kind: "end-mill", diameter: 6 };

/** A slot along X in steps down of 2 mm, with its walls left. */
export function slotTo(depth: number): Item[] {
  const levels = Array.from({ length: depth / 2 }, (_, index) => -2 * (index + 1));
  const passes = levels.flatMap((z) => [line(20, 40, z), line(60, 40), line(20, 40)]);
  return [rapid(20, 40), rapid(undefined, undefined, 5), ...passes];
}
