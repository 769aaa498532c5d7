/** Draws the state of the page: motions on one canvas, and what lies over them on another. */
import type { Extent, PlotHead, Point } from "../plot.ts";
import type { Camera } from "./camera.ts";
import { fit } from "./camera.ts";
import { canvas, element } from "./elements.ts";
import type { Shown } from "./legend.ts";
import { inksOf } from "./legend.ts";
import type { Laying, MarkOnScreen, ToolPlace } from "./overlay.ts";
import { layOver } from "./overlay.ts";
import type { Scheme } from "./palette.ts";
import type { Drawing, Picture } from "./picture.ts";
import { createFlatPicture } from "./picture-flat.ts";
import { createGlPicture } from "./picture-gl.ts";

/** What is shown now. */
export interface Look {
  readonly head: PlotHead;
  readonly camera: Camera;
  readonly centre: Point;
  readonly shown: Shown;
  colourBy: Drawing["colourBy"];
  /** Motions before this one are done. */
  done: number;
  tool: ToolPlace | undefined;
  mark: number;
}

/** Milliseconds after the last motion of the picture until it is drawn in full. */
const restsAfter = 300;

/** Motions up to which lines are drawn smoothly. */
const mostSmooth = 100_000;

/** The drawing part of the page. */
export interface Show {
  readonly picture: Picture;
  /** Draws when the browser next does. */
  readonly ask: (isMoving?: boolean) => void;
  readonly fit: (box: Extent) => void;
  readonly scheme: () => Scheme;
  /** Findings as they were last drawn. */
  readonly marks: () => readonly MarkOnScreen[];
}

export function createShow(look: Look): Show {
  const surface = element("view");
  const motions = canvas("motions");
  const over = canvas("over");
  const picture =
    createGlPicture(motions, movesOf(look.head) > mostSmooth) ?? createFlatPicture(fresh(motions));
  const context = over.getContext("2d");
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const scheme = (): Scheme => (dark.matches ? "dark" : "light");
  let asked = 0;
  let isMoving = false;
  let resting = 0;
  let marks: readonly MarkOnScreen[] = [];
  const draw = (): void => {
    asked = 0;
    const { clientWidth: width, clientHeight: height } = surface;
    if (width === 0 || height === 0 || context === null) return;
    const { head, colourBy, shown } = look;
    const colours = coloursOf(document.documentElement);
    const size = { width, height };
    const background = parts(colours.paper);
    const inks = inksOf(head, colourBy, shown, scheme());
    picture.draw({ ...look, ...size, ...inks, background, isMoving });
    marks = layOver(context, { ...look, ...size, ...colours, showsBoxes: shown.boxes });
  };
  const ask = (moving = false): void => {
    isMoving = moving;
    clearTimeout(resting);
    if (moving) resting = window.setTimeout(() => ask(), restsAfter);
    asked ||= requestAnimationFrame(draw);
  };
  const resize = (): void => {
    fitCanvases(surface);
    ask();
  };
  resize();
  new ResizeObserver(resize).observe(surface);
  dark.addEventListener("change", () => ask());
  return {
    picture,
    ask,
    fit(box) {
      fit(look.camera, box, look.centre, { width: surface.clientWidth, height: surface.clientHeight });
      ask();
    },
    scheme,
    marks: () => marks,
  };
}

/** Motions of a plot that are drawn. */
export function movesOf({ counts }: PlotHead): number {
  return counts.rapids + counts.lines + counts.arcs + counts.holes;
}

/** Gives each canvas the pixels of the screen that it covers. */
function fitCanvases(surface: HTMLElement): void {
  for (const one of surface.querySelectorAll("canvas")) {
    one.width = Math.max(1, Math.round(surface.clientWidth * devicePixelRatio));
    one.height = Math.max(1, Math.round(surface.clientHeight * devicePixelRatio));
  }
}

/** Colours of the page's style, as the scheme has them. */
function coloursOf(page: HTMLElement): Pick<Laying, "ink" | "soft" | "paper" | "alarm"> {
  const style = getComputedStyle(page);
  const colour = (name: string): string => style.getPropertyValue(name).trim();
  return { ink: colour("--ink"), soft: colour("--soft"), paper: colour("--sheet"), alarm: colour("--bad") };
}

/** A canvas that has given a context of one kind gives none of another. */
function fresh(used: HTMLCanvasElement): HTMLCanvasElement {
  const copy = used.cloneNode() as HTMLCanvasElement;
  used.replaceWith(copy);
  return copy;
}

/** "#f1efe8" -> 241, 239, 232 */
function parts(colour: string): [number, number, number] {
  const at = (from: number): number => parseInt(colour.slice(from, from + 2), 16);
  return [at(1), at(3), at(5)];
}
