/** What stands in a view beside the motions: frame, scale, boxes, clearance, work zero, labels and marks. */
import type { PlotBox, PlotHead, Point } from "../plot.ts";
import { micrometresPerUnit, placeText } from "../plot.ts";
import type { DrawnOperation } from "./layers.ts";
import { round, textAt, toolMark, xml } from "./style.ts";
import type { View } from "./view.ts";
import { across, down, isInView } from "./view.ts";

/** Length of a tick, and least room of a number, units of the sheet. */
const tick = 20;
const roomOfNumber = 260;

/** The frame of a view with ticks and numbers on its left and lower edge. */
export function frameOf(view: View, head: PlotHead): string[] {
  const { left, top, width, height, shows, scale } = view;
  const bottom = top + height;
  const unit = micrometresPerUnit[head.units];
  const step = niceStep(roomOfNumber / scale / unit) * unit;
  const parts = [
    `<rect class="frame" x="${round(left)}" y="${round(top)}" width="${round(width)}" height="${round(height)}"/>`,
    textAt(left, top - 24, `${view.title}, ${head.units}`, "strong"),
  ];
  for (const place of steps(shows.min[view.right], shows.max[view.right], step)) {
    const x = left + (place - shows.min[view.right]) * scale;
    parts.push(`<path class="frame" d="M${round(x)} ${round(bottom)}v${tick}"/>`);
    parts.push(textAt(x, bottom + 72, placeText(place, head.units), "small middle"));
  }
  for (const place of steps(shows.min[view.up], shows.max[view.up], step)) {
    const y = bottom - (place - shows.min[view.up]) * scale;
    parts.push(`<path class="frame" d="M${round(left)} ${round(y)}h${-tick}"/>`);
    parts.push(textAt(left - 30, y + 16, placeText(place, head.units), "small end"));
  }
  const letters = "XYZ";
  parts.push(textAt(left + width + 14, bottom + 16, letters[view.right], "strong"));
  parts.push(textAt(left - 30, top - 24, letters[view.up], "strong end"));
  return parts;
}

/** The smallest of 1, 2, 5 times a power of ten that is no less than a number. */
function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return power * ([1, 2, 5].find((factor) => factor * power >= least) ?? 10);
}

function steps(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step);
  return Array.from(
    { length: Math.max(0, Math.floor(to / step) - first + 1) },
    (_, index) => (first + index) * step,
  );
}

/** Stock, fixtures and the boxes of the machine. */
export function boxOf(view: View, box: PlotBox, id: string): string {
  const [x, y] = [across(view, box.min), down(view, box.max)];
  const [width, height] = [across(view, box.max) - x, down(view, box.min) - y];
  const fill = box.kind === "fixture" ? ` style="fill:url(#${id}-hatch)"` : "";
  return `<rect class="${box.kind}"${fill} x="${round(x)}" y="${round(y)}" width="${round(width)}" height="${round(height)}"><title>${xml(box.name)}</title></rect>`;
}

/** Height of a label: its foot is no nearer to the top of a view. */
const labelHeight = 36;

/** Lines at the heights of safe travel, in the views that show heights. */
export function clearanceLines(view: View, head: PlotHead): string[] {
  if (view.up !== 2) return [];
  let labelled = -Infinity;
  return head.clearances.flatMap((z) => {
    const y = down(view, [0, 0, z]);
    if (y < view.top || y > view.top + view.height) return [];
    const line = `<path class="clearance" d="M${round(view.left)} ${round(y)}h${round(view.width)}"/>`;
    if (Math.abs(y - labelled) < 56) return [line];
    labelled = y;
    const below = y - 14 < view.top + labelHeight;
    return [
      line,
      textAt(view.left + 16, below ? y + 38 : y - 14, `clearance Z ${placeText(z, head.units)}`, "label"),
    ];
  });
}

/** The sign of a work zero: a circle with two filled quarters. */
export function zeroMarks(view: View, head: PlotHead): string[] {
  return head.workZeros
    .filter(({ at }) => isInView(view, at))
    .map(({ at, offset }) => zeroSign(across(view, at), down(view, at), `work zero ${offset}`));
}

export function zeroSign(x: number, y: number, title: string): string {
  const r = 26;
  return (
    `<g><title>${xml(title)}</title><path class="zero-filled" d="M${round(x)} ${round(y)}v${-r}a${r} ${r} 0 0 1 ${r} ${r}z` +
    `m0 0v${r}a${r} ${r} 0 0 1 ${-r} ${-r}z"/><path class="zero" d="M${round(x - r)} ${round(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0m-12 0h${2 * r + 24}M${round(x)} ${round(y - r - 12)}v${2 * r + 24}"/></g>`
  );
}

/** The motions of an operation in a view. */
export function operationGroup({ operation, paths }: DrawnOperation, head: PlotHead): string {
  const { id, name, tool } = head.operations[operation];
  const { ink, dashes } = toolMark(tool);
  const cut = `stroke:${ink}${dashes === "" ? "" : `;stroke-dasharray:${dashes}`}`;
  const lines = (["machine", "rapid", "cut", "hole"] as const).flatMap((layer) => {
    const data = paths[layer];
    if (data === undefined) return [];
    const style = layer === "cut" ? ` style="${cut}"` : layer === "hole" ? ` style="stroke:${ink}"` : "";
    return [`<path class="${layer}"${style} d="${data}"/>`];
  });
  return `<g><title>${xml(`${id} ${name}, tool ${head.tools[tool].number}`)}</title>${lines.join("")}</g>`;
}

/** Whether the number of a finding covers a place. */
function isMarked(view: View, place: Point, { marks }: PlotHead): boolean {
  const [x, y] = [across(view, place), down(view, place)];
  return marks.some(
    ({ at }) => at !== undefined && Math.hypot(across(view, at) - x, down(view, at) - y) < 58,
  );
}

/** The id of each operation where its first cut in the view begins, as far as there is room. */
export function operationLabels(view: View, drawn: readonly DrawnOperation[], head: PlotHead): string[] {
  const taken: { readonly x: number; readonly y: number; readonly width: number }[] = [];
  return drawn.flatMap(({ operation, begin }) => {
    if (begin === undefined) return [];
    const { id } = head.operations[operation];
    const width = 30 * id.length;
    const x = Math.min(
      across(view, begin) + (isMarked(view, begin, head) ? 52 : 14),
      view.left + view.width - width,
    );
    const y = Math.max(down(view, begin) - 14, view.top + 46);
    const isTaken = taken.some(
      (other) => x < other.x + other.width && other.x < x + width && Math.abs(y - other.y) < 50,
    );
    if (isTaken) return [];
    taken.push({ x, y, width });
    return [textAt(x, y, id, "label")];
  });
}

/** Numbers of the findings at their places. */
export function findingMarks(view: View, head: PlotHead): string[] {
  return head.marks.flatMap(({ at }, index) =>
    at === undefined || !isInView(view, at) ? [] : [markAt(view, at, index + 1)],
  );
}

function markAt(view: View, at: Point, number: number): string {
  const [x, y] = [across(view, at), down(view, at)];
  return (
    `<g><circle class="mark" cx="${round(x)}" cy="${round(y)}" r="44"/>` +
    `${textAt(x, y + 18, String(number), "mark-text")}</g>`
  );
}
