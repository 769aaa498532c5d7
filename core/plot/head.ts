/** What stands around the motions of a picture. */
import type { Box, Finding, MachineFacts } from "#base";
import { isDiameterKnown } from "#base";
import type { Job, Operation } from "#job";
import type { PlotBox, PlotHead, PlotMark, Point } from "#report";
import { atomsPerMicrometre } from "#report";
import { toolsUsed } from "#report";

/** Origins of work offsets in machine coordinates, atoms, by their numbers. */
export type Origins = readonly (readonly [number, number, number] | undefined)[];

/** What a job says for a picture of it. */
export function jobHead(job: Job, operations: readonly Operation[]) {
  const used = toolsUsed(operations);
  const tools = used.flatMap((number) => {
    const tool = job.tools.find((one) => one.number === number);
    if (tool === undefined) return [];
    const { kind, diameter, description } = tool;
    return [{ number, kind, diameter: isDiameterKnown(diameter) ? length(diameter) : 0, description }];
  });
  const clearances = new Set(operations.map(({ clearance }) => length(clearance)));
  return {
    name: job.name,
    units: job.units,
    tools,
    operations: operations.map(({ id, name, tool }) => ({ id, name, tool: used.indexOf(tool) })),
    boxes: jobBoxes(job),
    clearances: [...clearances].sort((a, b) => a - b),
  } satisfies Partial<PlotHead>;
}

function length(atoms: number): number {
  return Math.round(atoms / atomsPerMicrometre);
}

function jobBoxes({ stock, fixtures }: Job): PlotBox[] {
  return [
    ...(stock === undefined ? [] : [boxAt("stock", stock.material ?? "stock", stock, [0, 0, 0])]),
    ...fixtures.map((box) => boxAt("fixture", box.name, box, [0, 0, 0])),
  ];
}

function boxAt(kind: PlotBox["kind"], name: string, { min, max }: Box, origin: readonly number[]): PlotBox {
  const place = (point: readonly [number, number, number]): Point => [
    length(point[0] - origin[0]),
    length(point[1] - origin[1]),
    length(point[2] - origin[2]),
  ];
  return { kind, name, min: place(min), max: place(max) };
}

/** Boxes of the machine, where work zero is known; travel and swap zone are those of the spindle's nose. */
export function machineBoxes(machine: MachineFacts, origin: Origins[number]): PlotBox[] {
  if (!origin) return [];
  const { x, y, z } = machine.travel;
  const travel = x && y && z ? [boxOf(x, y, z)] : [];
  return [
    ...travel.map((box) => boxAt("travel", "travel of the machine", box, origin)),
    ...machine.keepOut.map((box) => boxAt("keep-out", box.name, box, origin)),
    ...(machine.rack?.zone ? [boxAt("rack", "rack", machine.rack.zone, origin)] : []),
  ];
}

type Range = readonly [number, number];

function boxOf(x: Range, y: Range, z: Range): Box {
  return { min: [x[0], y[0], z[0]], max: [x[1], y[1], z[1]] };
}

/** Zeros of the work offsets that a job uses, where they lie in the picture. */
export function workZeros(operations: readonly Operation[], origins: Origins): PlotHead["workZeros"] {
  const [first, ...others] = [...new Set(operations.map(({ workOffset }) => workOffset))];
  const zero = origins[first];
  return [
    { offset: first, at: [0, 0, 0] },
    ...others.flatMap((offset): PlotHead["workZeros"] => {
      const own = origins[offset];
      if (!zero || !own) return [];
      return [{ offset, at: [length(own[0] - zero[0]), length(own[1] - zero[1]), length(own[2] - zero[2])] }];
    }),
  ];
}

/** Says which work offsets are drawn as if they had one zero. */
export function offsetRemarks(operations: readonly Operation[], origins: Origins): string[] {
  const used = [...new Set(operations.map(({ workOffset }) => workOffset))];
  if (used.length < 2 || used.every((offset) => origins[offset])) return [];
  return [
    `Work offsets ${used.join(", ")} are drawn over each other: where their zeros lie is not stated for all of them.`,
  ];
}

/** A finding as a mark that has no place yet. */
export function markOf({ rule, severity, message, fix }: Finding): PlotMark {
  return { rule, severity, message, fix: fix ?? "", where: "", line: 0, at: undefined };
}
