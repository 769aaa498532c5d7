import { clean } from "../../clean.ts";
import { wrap } from "../../wrap.ts";
import type { Extent, Packing, Plot, PlotHead } from "../plot.ts";
import {
  boxOf,
  clearanceLines,
  findingMarks,
  frameOf,
  operationGroup,
  operationLabels,
  zeroMarks,
} from "./around.ts";
import type { DrawnOperation } from "./layers.ts";
import { drawMoves } from "./layers.ts";
import { legendOf } from "./legend.ts";
import { drawingStyle, round, textAt, xml } from "./style.ts";
import type { View, ViewAxes } from "./view.ts";
import { layOutViews, unitsPerMillimetre } from "./view.ts";

/** What is drawn, and how much of it. */
export interface DrawingOptions {
  /** All three views, or the one from above. */
  readonly views: readonly ViewAxes["name"][];
  /** Title, legend, findings and cautions; a page that embeds the drawing has its own. */
  readonly isAlone: boolean;
  /** Most characters of path data. */
  readonly most: number;
  /** Begins the names of what the drawing refers to; each drawing of a page has its own. */
  readonly id: string;
}

/** The drawing as a file of its own. */
export const wholeDrawing: DrawingOptions = {
  views: ["top", "front", "side"],
  isAlone: true,
  most: 1_500_000,
  id: "plot",
};

/** Width of the sheet: A4 and Letter without their margins, 180 mm. */
const sheetWidth = 180 * unitsPerMillimetre;

/**
 * Draws a plot: the views that are asked for, at one scale, as SVG of bounded size. The views show the work: feed motions, stock,
 * fixtures and clearance; what goes farther leaves the picture at its edge.
 *
 * @returns an `svg` element; as a file it needs nothing else
 */
export function plotDrawing(
  plot: Plot,
  packing: Pick<Packing, "inflate">,
  options: DrawingOptions = wholeDrawing,
): string {
  const { head } = plot;
  const shows = shownExtent(head);
  const titleTop = options.isAlone ? 130 : 0;
  const title = options.isAlone ? titleOf(head, titleTop) : { parts: [], bottom: 0 };
  const sheet = { width: sheetWidth, top: title.bottom + 130, tallest: 2700 };
  const { views, bottom } = layOutViews(options.views, shows, sheet);
  const drawn = drawMoves(plot, packing, views, options.most);
  const { id } = options;
  const said = notes(head, views[0], drawn.grid);
  const drawnHead = { ...head, remarks: [...head.remarks, ...said] };
  const legend = options.isAlone ? legendOf(drawnHead, bottom - 60, id) : { parts: [], bottom: bottom - 100 };
  const height = Math.ceil(legend.bottom);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="plot-drawing" role="img" aria-labelledby="${id}-name" viewBox="0 0 ${sheetWidth} ${height}" width="${sheetWidth / unitsPerMillimetre}mm" height="${round(height / unitsPerMillimetre)}mm">`,
    `<title id="${id}-name">${xml(nameOf(head))}</title>`,
    `<style>${drawingStyle}</style>`,
    definitions(views, id),
    options.isAlone
      ? `<rect x="0" y="0" width="${sheetWidth}" height="${height}" style="fill:#fff;stroke:none"/>`
      : "",
    ...title.parts,
    ...views.flatMap((view, index) => viewParts(view, drawn.views[index], head, id)),
    ...legend.parts,
    "</svg>",
    "",
  ].join("\n");
}

function nameOf({ name, shows, dialect }: PlotHead): string {
  return shows === "job" ? `Backplot of the job ${name}` : `Backplot of ${name} for ${dialect?.name ?? ""}`;
}

/** What the picture is of; whether it is of a proved program is said before everything else. */
export function statusOf({ shows, dialect }: PlotHead): { readonly text: string; readonly isGood: boolean } {
  const dialectName = dialect === undefined ? "" : ` for ${dialect.name} (${dialect.title})`;
  if (shows === "proved")
    return { text: `A program${dialectName}, read back and proved equal to the job.`, isGood: true };
  if (shows === "unproved")
    return { text: `NOT PROVED: a program${dialectName} that was refused. It must not run.`, isGood: false };
  if (dialect === undefined) return { text: "The job alone, not a program.", isGood: true };
  return { text: `NOT PROVED: there is no program${dialectName}; this is the job alone.`, isGood: false };
}

function titleOf(head: PlotHead, top: number): { readonly parts: string[]; readonly bottom: number } {
  const { text, isGood } = statusOf(head);
  const { rapids, lines, arcs, holes } = head.counts;
  const counted = `${lines} lines, ${arcs} arcs, ${holes} holes, ${rapids} rapids`;
  const said = wrap(text, isGood ? statusColumns : Math.floor(statusColumns * 0.88));
  const last = top + 90 + (said.length - 1) * 68;
  return {
    parts: [
      textAt(60, top, wrap(clean(head.name), titleColumns)[0], "title"),
      ...said.map((line, index) => textAt(60, top + 90 + index * 68, line, isGood ? "" : "warn")),
      textAt(60, last + 75, `${counted}; places in ${head.units}`, "small"),
    ],
    bottom: last + 110,
  };
}

/** Characters of the title and of what is said below it. */
const titleColumns = 62;
const statusColumns = 102;

function definitions(views: readonly View[], id: string): string {
  const clips = views.map(
    ({ name, left, top, width, height }) =>
      `<clipPath id="${id}-${name}"><rect x="${round(left)}" y="${round(top)}" width="${round(width)}" height="${round(height)}"/></clipPath>`,
  );
  const hatch = `<pattern id="${id}-hatch" width="30" height="30" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0v30" style="stroke:#454d52;stroke-width:4"/></pattern>`;
  return `<defs>${hatch}${clips.join("")}</defs>`;
}

function viewParts(view: View, drawn: readonly DrawnOperation[], head: PlotHead, id: string): string[] {
  return [
    `<g><title>${xml(view.title)}</title>`,
    ...frameOf(view, head),
    `<g clip-path="url(#${id}-${view.name})">`,
    ...head.boxes.map((box) => boxOf(view, box, id)),
    ...drawn.map((one) => operationGroup(one, head)),
    ...clearanceLines(view, head),
    ...zeroMarks(view, head),
    ...(view.name === "top" ? operationLabels(view, drawn, head) : []),
    "</g>",
    ...findingMarks(view, head),
    "</g>",
  ];
}

/** What the views show: the work with a little room around it. */
export function shownExtent({ cut, all, boxes, clearances }: PlotHead): Extent {
  const shown = [cut ?? all, ...boxes.filter(({ kind }) => kind === "stock" || kind === "fixture")];
  const known = shown.filter((one) => one !== undefined);
  const heights = clearances.map((z) => ({ min: [0, 0, z] as const, max: [0, 0, z] as const }));
  const least = [0, 1, 2].map((axis) =>
    Math.min(...known.map(({ min }) => min[axis]), ...(axis === 2 ? heights.map(({ min }) => min[2]) : [])),
  );
  const most = [0, 1, 2].map((axis) =>
    Math.max(...known.map(({ max }) => max[axis]), ...(axis === 2 ? heights.map(({ max }) => max[2]) : [])),
  );
  if (known.length === 0) return { min: [-1000, -1000, -1000], max: [1000, 1000, 1000] };
  const widest = Math.max(...most.map((value, axis) => value - least[axis]), 1000);
  const room = widest * 0.03;
  const grown = (axis: number): number => Math.max(room, (widest * 0.08 - (most[axis] - least[axis])) / 2);
  const at = (values: readonly number[], sign: 1 | -1) =>
    [0, 1, 2].map((axis) => values[axis] + sign * grown(axis)) as [number, number, number];
  return { min: at(least, -1), max: at(most, 1) };
}

function notes(head: PlotHead, view: View, grid: number): string[] {
  const paper = (view.scale * 1000) / unitsPerMillimetre;
  const ratio = paper >= 1 ? `${significant(paper)} : 1` : `1 : ${significant(1 / paper)}`;
  const { all } = head;
  const shows = view.shows;
  const isCut =
    all !== undefined &&
    [0, 1, 2].some((axis) => all.min[axis] < shows.min[axis] || all.max[axis] > shows.max[axis]);
  const cell = grid / view.scale / 1000;
  return [
    `Scale ${ratio} on a sheet ${sheetWidth / unitsPerMillimetre} mm wide; drawn on a grid of ${significant(cell)} mm, and what falls together is drawn once.`,
    ...(isCut ? ["Some motions, such as rapids and swaps, lead out of the picture."] : []),
  ];
}

function significant(value: number): string {
  return String(Number(value.toPrecision(2)));
}
