/** Stepping through the blocks: slider, buttons, listing and playing. */
import type { PlotHead } from "../plot.ts";
import { placeText } from "../plot.ts";
import { element, input, make, select } from "./elements.ts";
import type { Listing } from "./listing.ts";
import type { Piece } from "./pieces.ts";
import { kindText, moveAt, movesUpTo, placeOf } from "./position.ts";
import type { Look } from "./show.ts";

/** Lines that are shown before and behind the one that stands. */
const linesAround = 7;

/** What steps are made of. */
export interface Stepping {
  readonly head: PlotHead;
  readonly look: Look;
  readonly pieces: readonly Piece[];
  readonly listing: Listing;
  /** The picture moves: it is to be drawn anew. */
  readonly moved: () => void;
}

/** The steps of the page. */
export interface Steps {
  /** Goes to a line, from 1; `isSaid`: those who cannot see the listing are told. */
  readonly goTo: (line: number, isSaid: boolean) => void;
  /** More of the motions are there. */
  readonly refresh: () => void;
}

export function createSteps(stepping: Stepping): Steps {
  const { head } = stepping;
  const slider = input("line");
  const number = input("line-number");
  const lines = Math.max(1, head.lines);
  for (const one of [slider, number]) one.max = String(lines);
  let line = lines;
  let isPlaying = false;
  const askings = { newest: 0 };
  const goTo = (wanted: number, isSaid: boolean): void => {
    line = Math.min(lines, Math.max(1, Math.round(wanted)));
    slider.value = number.value = String(line);
    place(stepping, line);
    void showLines(stepping, askings, line, isSaid, (asked) => goTo(asked, true));
  };
  const play = (isOn: boolean): void => {
    isPlaying = isOn;
    element("play").textContent = isOn ? "Stop" : "Play";
    if (!isOn) return goTo(line, true);
    if (line === lines) goTo(1, false);
    let exact = line;
    let before = performance.now();
    const advance = (now: number): void => {
      if (!isPlaying) return;
      exact += ((now - before) / 1000) * Number(select("speed").value);
      before = now;
      if (Math.floor(exact) !== line) goTo(Math.floor(exact), false);
      if (line >= lines) play(false);
      else requestAnimationFrame(advance);
    };
    requestAnimationFrame(advance);
  };
  const step = (by: number) => () => {
    isPlaying = false;
    element("play").textContent = "Play";
    goTo(line + by, true);
  };
  slider.addEventListener("input", () => goTo(Number(slider.value), false));
  slider.addEventListener("change", () => goTo(Number(slider.value), true));
  number.addEventListener("change", () => goTo(Number(number.value), true));
  element("step-back").addEventListener("click", step(-1));
  element("step-on").addEventListener("click", step(1));
  element("to-start").addEventListener("click", () => goTo(1, true));
  element("to-end").addEventListener("click", () => goTo(lines, true));
  element("play").addEventListener("click", () => play(!isPlaying));
  element("listing").addEventListener("keydown", (event) => {
    const by = { ArrowUp: -1, ArrowDown: 1, PageUp: -2 * linesAround, PageDown: 2 * linesAround }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    step(by)();
  });
  return { goTo, refresh: () => place(stepping, line) };
}

/** Puts tool and progress to where the line leaves them. */
function place({ head, look, pieces, moved }: Stepping, line: number): void {
  look.done = movesUpTo(pieces, line);
  const last = moveAt(pieces, look.done - 1);
  if (last === undefined) {
    look.tool = undefined;
    element("place").textContent = "The place of the tool is not known yet.";
    return moved();
  }
  const at = placeOf(last);
  const operation = head.operations[last.piece.moves.operation[last.row]];
  const tool = head.tools[operation.tool];
  look.tool = { at, diameter: tool.diameter, name: `T${tool.number}` };
  const places = [..."XYZ"].map((letter, axis) => `${letter} ${placeText(at[axis], head.units)}`).join("  ");
  element("place").textContent =
    `${places} ${head.units}, ${operation.id} ${operation.name}, T${tool.number}, ${kindText(last)}`;
  moved();
}

/** Shows the lines around one; of two askings the later one counts. */
async function showLines(
  { head, listing }: Stepping,
  askings: { newest: number },
  line: number,
  isSaid: boolean,
  chosen: (line: number) => void,
): Promise<void> {
  const asking = ++askings.newest;
  const from = Math.max(1, Math.min(line - linesAround, head.lines - 2 * linesAround));
  const to = Math.min(head.lines, Math.max(line + linesAround, from + 2 * linesAround));
  const texts = await listing.lines(from, to);
  if (asking !== askings.newest) return;
  const items = texts.map((text, index) => {
    const own = from + index;
    const item = make("li", "");
    item.value = own;
    const code = make("code", "", text);
    item.append(make("span", "number", String(own)), code);
    if (own === line) item.setAttribute("aria-current", "true");
    item.addEventListener("click", () => chosen(own));
    return item;
  });
  element("listing").replaceChildren(...items);
  if (isSaid) element("said").textContent = `Line ${line}: ${texts[line - from] ?? ""}`;
}
