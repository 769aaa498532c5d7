import type { Extent } from "../plot.ts";

/** One of the three views, as a trade drawing has them: seen from above, from the front, and from the right. */
export interface ViewAxes {
  readonly name: "top" | "front" | "side";
  readonly title: string;
  /** Indexes of the axes that go to the right and up. */
  readonly right: 0 | 1;
  readonly up: 1 | 2;
}

export const viewAxes = {
  top: { name: "top", title: "Top, XY", right: 0, up: 1 },
  front: { name: "front", title: "Front, XZ", right: 0, up: 2 },
  side: { name: "side", title: "Right side, YZ", right: 1, up: 2 },
} as const satisfies Record<ViewAxes["name"], ViewAxes>;

/** A view on the sheet. Lengths on the sheet are in its units, of which there are 20 in a millimetre. */
export interface View extends ViewAxes {
  /** Left and top edge. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** What it shows, micrometres. */
  readonly shows: Extent;
  /** Units of the sheet in a micrometre. */
  readonly scale: number;
}

/** Units of the sheet in a millimetre of paper. */
export const unitsPerMillimetre = 20;

/** A place on the sheet: to the right. */
export function across(view: View, at: ArrayLike<number>): number {
  return view.left + (at[view.right] - view.shows.min[view.right]) * view.scale;
}

/** A place on the sheet: down. */
export function down(view: View, at: ArrayLike<number>): number {
  return view.top + (view.shows.max[view.up] - at[view.up]) * view.scale;
}

/** Whether a place lies in the view. */
export function isInView(view: View, at: ArrayLike<number>): boolean {
  const { min, max } = view.shows;
  return [view.right, view.up].every((axis) => at[axis] >= min[axis] && at[axis] <= max[axis]);
}

/** Room for the numbers left of and below a view, and between views. */
const gap = 240;
const left = 260;
const right = 60;

/**
 * Lays out views at one scale: the front below the top, the side right of the front.
 *
 * @param width of the sheet
 * @param tallest of the views with what is between them
 */
export function layOutViews(
  names: readonly ViewAxes["name"][],
  shows: Extent,
  sheet: { readonly width: number; readonly top: number; readonly tallest: number },
): { readonly views: readonly View[]; readonly bottom: number } {
  const [x, y, z] = shows.max.map((most, axis) => most - shows.min[axis]);
  const isAll = names.length > 1;
  const room = sheet.width - left - right - (isAll ? gap : 0);
  const scale = Math.min(
    room / (isAll ? x + y : x),
    (sheet.tallest - (isAll ? gap : 0)) / (isAll ? y + z : y),
  );
  const at = (axes: ViewAxes, fromLeft: number, top: number): View => {
    const [width, height] = [axes.right, axes.up].map((axis) => (shows.max[axis] - shows.min[axis]) * scale);
    return { ...axes, left: fromLeft, top, width, height, shows, scale };
  };
  const topView = at(viewAxes.top, left, sheet.top);
  const below = sheet.top + topView.height + gap;
  const views = [
    topView,
    ...(isAll ? [at(viewAxes.front, left, below), at(viewAxes.side, left + topView.width + gap, below)] : []),
  ];
  return { views, bottom: (isAll ? below + z * scale : sheet.top + topView.height) + gap };
}
