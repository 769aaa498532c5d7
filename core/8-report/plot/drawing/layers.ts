import { moveKind } from "../moves.ts";
import type { Packing, Plot, Point } from "../plot.ts";
import { walkMoves } from "../walk-moves.ts";
import type { PassingMove } from "../walk-moves.ts";
import { drawMove } from "./draw-move.ts";
import type { PathText } from "./path-text.ts";
import { createPathText } from "./path-text.ts";
import type { View } from "./view.ts";
import { across, down, isInView } from "./view.ts";

/** What is drawn alike. */
export type Layer = "cut" | "hole" | "rapid" | "machine";
export const layers: readonly Layer[] = ["machine", "rapid", "cut", "hole"];

/** The motions of one operation in one view, as path data. */
export interface DrawnOperation {
  readonly operation: number;
  /** Path data of each layer that is not empty. */
  readonly paths: Partial<Record<Layer, string>>;
  /** Where its first feed motion in the view begins; undefined where it has none there. */
  readonly begin: Point | undefined;
}

/** What is drawn of the motions. */
export interface DrawnMoves {
  /** For each view its operations, in their order. */
  readonly views: readonly (readonly DrawnOperation[])[];
  /** Grid on which places lie, units of the sheet. */
  readonly grid: number;
}

/** Coarsest grid, units of the sheet: 3.2 mm of paper. */
const coarsest = 64;

/** Draws the motions on the finest grid on which their path data has at most so many characters. */
export function drawMoves(
  plot: Plot,
  packing: Pick<Packing, "inflate">,
  views: readonly View[],
  most: number,
): DrawnMoves {
  for (let grid = 1; ; grid *= 2) {
    const drawn = tryGrid(plot, packing, views, grid, grid < coarsest ? most : Infinity);
    if (drawn !== undefined) return { views: drawn, grid };
  }
}

interface OpenOperation {
  readonly paths: Partial<Record<Layer, PathText>>;
  begin: Point | undefined;
}

function tryGrid(
  plot: Plot,
  packing: Pick<Packing, "inflate">,
  views: readonly View[],
  grid: number,
  most: number,
): DrawnMoves["views"] | undefined {
  const open = views.map(() => new Map<number, OpenOperation>());
  const { tools, operations } = plot.head;
  let length = 0;
  walkMoves(plot, packing, (move) => {
    if (move.isJump) return true;
    const layer = layerOf(move);
    const diameter = layer === "hole" ? tools[operations[move.operation].tool].diameter : 0;
    views.forEach((view, index) => {
      const own = operationIn(open[index], move.operation);
      const path = (own.paths[layer] ??= createPathText(grid, view));
      const before = path.length();
      if (layer === "hole" && view.name === "top")
        path.hole(across(view, move.to), down(view, move.to), (diameter / 2) * view.scale);
      else drawMove(path, view, move);
      length += path.length() - before;
      if (own.begin === undefined && (layer === "cut" || layer === "hole") && isInView(view, move.from))
        own.begin = [move.from[0], move.from[1], move.from[2]];
    });
    return length <= most;
  });
  return length > most ? undefined : open.map(closed);
}

function operationIn(open: Map<number, OpenOperation>, operation: number): OpenOperation {
  const known = open.get(operation);
  if (known !== undefined) return known;
  const fresh = { paths: {}, begin: undefined };
  open.set(operation, fresh);
  return fresh;
}

function closed(open: ReadonlyMap<number, OpenOperation>): DrawnOperation[] {
  return [...open].map(([operation, { paths, begin }]) => ({
    operation,
    begin,
    paths: Object.fromEntries(
      Object.entries(paths)
        .map(([layer, path]) => [layer, path.text()] as const)
        .filter(([, text]) => text !== ""),
    ),
  }));
}

/** A feed in machine coordinates belongs to a swap, not to the work. */
function layerOf({ kind, isMachine }: PassingMove): Layer {
  if (isMachine) return "machine";
  if (kind === moveKind.hole) return "hole";
  return kind === moveKind.rapid || kind === moveKind.out ? "rapid" : "cut";
}
