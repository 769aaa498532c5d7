/** The script of the page: takes the data that the page holds, and gives it to eyes and hands. */
import type { Extent, PlotHead, Point } from "../plot.ts";
import type { Camera, ViewName } from "./camera.ts";
import { standardViews } from "./camera.ts";
import { element, select, takeText } from "./elements.ts";
import { takeHands } from "./hands.ts";
import { showLegend } from "./legend.ts";
import { createListing } from "./listing.ts";
import type { Drawing } from "./picture.ts";
import type { Piece } from "./pieces.ts";
import { bytesOf, inflate, makePiece } from "./pieces.ts";
import type { Look, Show } from "./show.ts";
import { createShow, movesOf } from "./show.ts";
import type { Steps } from "./steps.ts";
import { createSteps } from "./steps.ts";

/** What the page's data block says beside the head: what the picture shows at first. */
interface PageHead extends PlotHead {
  readonly work: Extent;
}

/** Parts of the picture's diagonal that chords stay within. */
const finest = 1 / 5000;

/** Pixels around a finding in which a click means it. */
const reach = 14;

/** Lines that are drawn while the picture moves, where the browser is not fast enough for all. */
const mostMoving = 15_000;

async function start(): Promise<void> {
  const head = JSON.parse(takeText("plot-head")) as PageHead;
  const packed = takeText("plot-moves").split("\n").filter(Boolean);
  const listing = createListing(takeText("plot-listing").split("\n").filter(Boolean));
  const { work } = head;
  const centre = [0, 1, 2].map((axis) =>
    Math.round((work.min[axis] + work.max[axis]) / 2),
  ) as unknown as Point;
  const look = createLook(head, centre);
  const show = createShow(look);
  const pieces: Piece[] = [];
  const steps = createSteps({ head, look, pieces, listing, moved: () => show.ask(true) });
  connect(head, look, show, steps);
  const diagonal = Math.hypot(...[0, 1, 2].map((axis) => work.max[axis] - work.min[axis]));
  const maker = {
    head,
    centre: [...centre] as [number, number, number],
    tolerance: diagonal * finest,
    joined: Math.max(1, Math.ceil(movesOf(head) / mostMoving)),
    way: 0,
  };
  let first = 0;
  for (const [index, text] of packed.entries()) {
    const piece = makePiece(await inflate(bytesOf(text)), first, maker);
    packed[index] = "";
    first += piece.moves.count;
    pieces.push(piece);
    show.picture.add(piece);
    element("loading").textContent = `Loading: ${Math.round((100 * (index + 1)) / packed.length)} %`;
    steps.refresh();
  }
  steps.goTo(head.lines, false);
  element("loading").textContent = show.picture.note();
  document.documentElement.dataset["ready"] = show.picture.name;
}

function createLook(head: PlotHead, centre: Point): Look {
  const camera: Camera = {
    turn: standardViews.oblique[0],
    tilt: standardViews.oblique[1],
    target: [0, 0, 0],
    scale: 1,
  };
  const hidden = { tool: new Set<number>(), operation: new Set<number>(), kind: new Set<number>() };
  const shown = { hidden, rapid: true, machine: true, boxes: true };
  return { head, camera, centre, shown, colourBy: "tool", done: 0, tool: undefined, mark: -1 };
}

/** Ties the parts of the page to each other. */
function connect(head: PageHead, look: Look, show: Show, steps: Steps): void {
  const { camera } = look;
  const legend = (): void => {
    look.colourBy = select("colour-by").value as Drawing["colourBy"];
    showLegend(head, look.colourBy, look.shown, show.scheme(), () => show.ask());
    show.ask();
  };
  const view = (name: ViewName): void => {
    [camera.turn, camera.tilt] = standardViews[name];
    show.fit(head.work);
  };
  const toMark = (index: number): void => {
    look.mark = index;
    const { at, line } = head.marks[index];
    if (at !== undefined)
      for (let axis = 0; axis < 3; axis++) camera.target[axis] = at[axis] - look.centre[axis];
    if (line > 0) steps.goTo(line, true);
    document.querySelectorAll("[data-mark]").forEach((one) => {
      if (one.getAttribute("data-mark") === String(index)) one.setAttribute("aria-current", "true");
      else one.removeAttribute("aria-current");
    });
    show.ask();
  };
  takeHands(element("view"), {
    camera,
    moved: () => show.ask(true),
    view,
    clicked: (x, y) => {
      const hit = show.marks().find((mark) => Math.hypot(mark.x - x, mark.y - y) < reach);
      if (hit !== undefined) toMark(hit.index);
    },
  });
  document
    .querySelectorAll<HTMLElement>("[data-view]")
    .forEach((button) => button.addEventListener("click", () => view(button.dataset["view"] as ViewName)));
  document
    .querySelectorAll<HTMLElement>("[data-mark]")
    .forEach((button) => button.addEventListener("click", () => toMark(Number(button.dataset["mark"]))));
  document.querySelectorAll<HTMLElement>("[data-zoom]").forEach((button) =>
    button.addEventListener("click", () => {
      camera.scale *= Number(button.dataset["zoom"]);
      show.ask();
    }),
  );
  element("fit-work").addEventListener("click", () => show.fit(head.work));
  element("fit-all").addEventListener("click", () => show.fit(head.all ?? head.work));
  select("colour-by").addEventListener("change", legend);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", legend);
  legend();
  view("oblique");
}

start().catch((error: unknown) => {
  const said = error instanceof Error ? error.message : String(error);
  element("loading").textContent =
    `The picture cannot be shown: ${said}. The drawing on paper and the list of findings hold all the same.`;
});
