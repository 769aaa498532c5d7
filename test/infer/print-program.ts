import { printNumber } from "./print-number.ts";
import type { Step } from "./steps.ts";
import { clear } from "./steps.ts";
import type { Style } from "./style.ts";

/*
 * A small printer of programs, written apart from the emitter: it prints text from steps by a style.
 */

interface Printer {
  readonly style: Style;
  readonly lines: string[];
  number: number;
  /** Places in thousandths of a millimetre; undefined: not known. */
  x: number | undefined;
  y: number | undefined;
  z: number | undefined;
  /** Motion code in force. */
  motion: number | undefined;
  feed: number | undefined;
  /** Whether the block before was a feed block. */
  cutting: boolean;
  distance: Style["distance.programs-in"];
  /** Tool in the spindle; whether its length is still to be selected. */
  tool: number;
  bare: boolean;
}

type Words = readonly (readonly [letter: string, number: string])[];

/** The text of a program. */
export function printProgram(steps: readonly Step[], style: Style): string {
  const printer: Printer = { style, lines: [], number: 0, x: undefined, y: undefined, z: undefined, motion: undefined, feed: undefined, cutting: false, distance: "absolute", tool: 0, bare: false }; // prettier-ignore
  begin(printer);
  for (const step of steps) write(printer, step);
  end(printer);
  const lineEnd = style["file.line-end"] === "crlf" ? "\r\n" : "\n";
  return printer.lines.join(lineEnd) + (style["file.last-line-end"] === "yes" ? lineEnd : "");
}

function begin(printer: Printer): void {
  const { style, lines } = printer;
  const mark = { none: "", semicolon: ";", asterisk: "*" }[style["file.end-of-block"]];
  if (style["file.delimiter"] === "percent") lines.push("%");
  if (style["file.program-number"] !== "none") lines.push(`${style["file.program-number"]}0042${mark}`);
  comment(printer, "PLATE 42, WRITTEN BY HAND");
  const units = style["units.mm"].slice(1);
  const distance = "90";
  if (style["units.stated"] === "first-block") block(printer, [["G", units]]);
  const modes = [
    ...(style["units.stated"] === "first-block" ? [] : [units]),
    "17",
    distance,
    "94",
    "40",
    "80",
  ];
  stateModes(printer, modes);
}

/** Modes in one block, or each in its own. */
function stateModes(printer: Printer, codes: readonly string[]): void {
  if (printer.style["blocks.modes"] === "together")
    block(
      printer,
      codes.map((code) => ["G", code] as const),
    );
  else for (const code of codes) block(printer, [["G", code]]);
}

function end(printer: Printer): void {
  block(printer, [["M", code(printer, "M", 9)]]);
  block(printer, [["M", code(printer, "M", 5)]]);
  retract(printer);
  block(printer, [["M", printer.style["stops.end"] === "M30" ? "30" : code(printer, "M", 2)]]);
  if (printer.style["file.delimiter"] === "percent") printer.lines.push("%");
}

function comment({ style, lines }: Printer, text: string): void {
  lines.push(style["comments.style"] === "parentheses" ? `(${text})` : `; ${text}`);
}

/** A block: its number, its words in the order of the style unless they are in order already, its mark. */
function block(printer: Printer, words: Words, ordered = false): void {
  const { style } = printer;
  const order = style["blocks.order"];
  const place = (letter: string): number => order.indexOf(letter);
  const sorted = ordered ? words : [...words].sort(([a], [b]) => place(a) - place(b));
  const texts = [...numberWord(printer), ...sorted.map(([letter, number]) => letter + number)];
  const separator = { none: "", blank: " ", tab: "\t" }[style["blocks.separator"]];
  const mark = { none: "", semicolon: ";", asterisk: "*" }[style["file.end-of-block"]];
  printer.lines.push(texts.join(separator) + mark);
}

function numberWord(printer: Printer): string[] {
  const kind = printer.style["blocks.number"];
  if (kind === "none") return [];
  const step = { "all-10": 10, "all-5-wide": 5, "all-1": 1 }[kind];
  printer.number += step;
  return [`N${String(printer.number).padStart(kind === "all-5-wide" ? 5 : 1, "0")}`];
}

function code({ style }: Printer, letter: "G" | "M" | "T" | "H", number: number): string {
  return String(number).padStart(style[`numbers.code-width.${letter}`], "0");
}

/** Thousandths of a millimetre in the digits of the style; the finest style has a digit more of its own. */
function length({ style }: Printer, value: number, signed = true): string {
  const decimals = style["numbers.length.mm"];
  return printNumber(toUnits(value, decimals), habit(style, decimals, signed));
}

function toUnits(value: number, decimals: number): number {
  const fine = value % 125 === 0 ? 0 : Math.sign(value) * ((Math.abs(value) * 7) % 10);
  if (decimals === 4) return value * 10 + fine;
  return decimals === 3 ? value : Math.round(value / 10);
}

function habit(style: Style, decimals: number, signed: boolean) {
  return {
    decimals,
    point: style["numbers.point"],
    zeros: style["numbers.trailing-zeros"],
    leading: style["numbers.leading-zero"],
    plus: signed && style["numbers.plus"] === "yes",
  };
}

function time({ style }: Printer, milliseconds: number): string {
  if (style["dwell.unit"] === "ms") return String(milliseconds);
  return printNumber(Math.round(milliseconds / 10), habit(style, 2, false));
}

function feedNumber({ style }: Printer, feed: number): string {
  const decimals = style["numbers.feed-per-minute.mm"];
  return printNumber(feed * 10 ** decimals, habit(style, decimals, false));
}

function write(printer: Printer, step: Step): void {
  if (step.do === "tool") tool(printer, step);
  else if (step.do === "spindle") spindle(printer, step);
  else if (step.do === "coolant") block(printer, [["M", code(printer, "M", step.code)]]);
  else if (step.do === "rapid" || step.do === "line") straight(printer, step);
  else if (step.do === "arc") arc(printer, step);
  else if (step.do === "holes") holes(printer, step);
  else if (step.do === "stop") {
    comment(printer, step.text);
    block(printer, [["M", code(printer, "M", 0)]]);
  }
}

/** Programs that go by increments approach by places, and go back to them to leave. */
function setDistance(printer: Printer, distance: Style["distance.programs-in"]): void {
  if (printer.distance !== distance) block(printer, [["G", distance === "absolute" ? "90" : "91"]]);
  printer.distance = distance;
}

function retract(printer: Printer): void {
  const zero = length(printer, 0);
  setDistance(printer, "absolute");
  if (printer.style["machine.retract.by"] === "machine-move") {
    block(printer, [["G", "53"], ["G", code(printer, "G", 0)], ["Z", zero]]); // prettier-ignore
    printer.motion = 0;
  } else {
    if (printer.style.returns === "together")
      block(printer, [
        ["G", "91"],
        ["G", "28"],
        ["Z", zero],
      ]);
    else {
      block(printer, [["G", "91"]]);
      block(printer, [
        ["G", "28"],
        ["Z", zero],
      ]);
    }
    block(printer, [["G", "90"]]);
  }
  printer.z = undefined;
  printer.cutting = false;
}

function tool(printer: Printer, { number, name, next }: Step & { do: "tool" }): void {
  const { style } = printer;
  if (number > 1) {
    block(printer, [["M", code(printer, "M", 9)]]);
    block(printer, [["M", code(printer, "M", 5)]]);
  }
  retract(printer);
  comment(printer, `TOOL ${String(number)} ${name}`);
  const t = ["T", code(printer, "T", number)] as const;
  const change = ["M", code(printer, "M", 6)] as const;
  if (style["tools.blocks"] === "together")
    block(printer, style["tools.order"] === "select-first" ? [t, change] : [change, t], true);
  else {
    block(printer, [t]);
    block(printer, [change]);
  }
  if (style["tools.preselect"] === "yes" && next !== undefined)
    block(printer, [["T", code(printer, "T", next)]]);
  stateModes(printer, ["90", "54"]);
  [printer.x, printer.y, printer.z, printer.motion, printer.feed, printer.cutting] = [undefined, undefined, undefined, undefined, undefined, false]; // prettier-ignore
  [printer.tool, printer.bare] = [number, true];
}

function spindle(printer: Printer, { rpm, wait }: Step & { do: "spindle" }): void {
  const s = ["S", String(rpm)] as const;
  const m = ["M", code(printer, "M", 3)] as const;
  const words = printer.style["spindle.order"] === "speed-first" ? [s, m] : [m, s];
  if (printer.style["spindle.blocks"] === "together") block(printer, words, true);
  else for (const word of words) block(printer, [word]);
  block(printer, [["G", code(printer, "G", 4)], [printer.style["dwell.word"], time(printer, wait)]]); // prettier-ignore
}

type Straight = Extract<Step, { do: "rapid" | "line" }>;

function straight(printer: Printer, step: Straight): void {
  if (
    printer.style["motion.rapid-axes"] === "one-at-a-time" &&
    step.do === "rapid" &&
    step.x !== undefined &&
    step.y !== undefined
  ) {
    // prettier-ignore
    move(printer, { do: "rapid", x: step.x });
    move(printer, { do: "rapid", y: step.y });
  } else move(printer, step);
  // The first place over the work is followed by the length of the tool.
  if (printer.bare && step.x !== undefined) {
    printer.bare = false;
    selectLength(printer);
  }
}

function selectLength(printer: Printer): void {
  const g43 = [["G", "43"], ["H", code(printer, "H", printer.tool + printer.style["length-offset.added"])]] as const; // prettier-ignore
  if (printer.style["machine.length-offset.form"] === "own-block") {
    block(printer, g43);
    // Nobody relies on the motion word behind it.
    move(printer, { do: "rapid", z: clear });
  } else move(printer, { do: "rapid", z: clear }, g43);
  setDistance(printer, printer.style["distance.programs-in"]);
}

function move(printer: Printer, step: Straight, beside: Words = []): void {
  const motion = step.do === "rapid" ? 0 : 1;
  const moves = (["x", "y", "z"] as const).some(
    (axis) => step[axis] !== undefined && step[axis] !== printer[axis],
  );
  if (!moves) return;
  const words: (readonly [string, string])[] = [...motionWord(printer, motion), ...beside];
  for (const axis of ["x", "y", "z"] as const) {
    const word = axisWord(printer, axis, step[axis], printer.style["modal.axes"] === "all");
    if (word) words.push(word);
  }
  if (step.do === "line") words.push(...feedWord(printer, step.feed ?? printer.feed ?? 100));
  printer.cutting = step.do === "line";
  block(printer, words);
}

function motionWord(printer: Printer, motion: number): Words {
  const isSaid = printer.style["modal.motion"] === "each-block" || printer.motion !== motion;
  printer.motion = motion;
  return isSaid ? [["G", code(printer, "G", motion)]] : [];
}

/** An axis that moves, or one that is known where all are said. Takes it to its place. */
function axisWord(
  printer: Printer,
  axis: "x" | "y" | "z",
  target: number | undefined,
  all: boolean,
): readonly [string, string] | undefined {
  const before = printer[axis];
  const reached = target ?? before;
  if (reached === undefined || (before === reached && !all)) return undefined;
  printer[axis] = reached;
  const incremental = printer.distance === "incremental";
  if (!incremental || before === undefined) return [axis.toUpperCase(), length(printer, reached)];
  const decimals = printer.style["numbers.length.mm"];
  const units = toUnits(reached, decimals) - toUnits(before, decimals);
  return [axis.toUpperCase(), printNumber(units, habit(printer.style, decimals, true))];
}

function feedWord(printer: Printer, feed: number): Words {
  const habitOfFeed = printer.style["modal.feed"];
  const isSaid = habitOfFeed === "each-block" || printer.feed !== feed || (habitOfFeed === "after-rapid" && !printer.cutting); // prettier-ignore
  printer.feed = feed;
  return isSaid ? [["F", feedNumber(printer, feed)]] : [];
}

type Arc = Extract<Step, { do: "arc" }>;

function arc(printer: Printer, step: Arc): void {
  const start = [printer.x!, printer.y!] as const;
  for (const [x, y] of arcEnds(printer.style, start, step)) oneArc(printer, { ...step, x, y });
}

/** Where the pieces of an arc end, that this style writes: at quadrant lines, at half a circle, or at its end alone. */
function arcEnds(
  style: Style,
  [x, y]: readonly [number, number],
  { cx, cy, cw, ...end }: Arc,
): (readonly [number, number])[] {
  const radius = Math.round(Math.hypot(x - cx, y - cy));
  const angle = (px: number, py: number): number => Math.atan2(py - cy, px - cx);
  const full = x === end.x && y === end.y;
  const sign = cw ? -1 : 1;
  const turn = (sign * (angle(end.x, end.y) - angle(x, y)) + 4 * Math.PI) % (2 * Math.PI);
  const sweep = full ? 2 * Math.PI : turn;
  const limit = style["arc.quadrants"] === "one" ? Math.PI / 2 : full && style["arc.full-circle"] === "no" ? Math.PI : 2 * Math.PI; // prettier-ignore
  const ends: (readonly [number, number])[] = [];
  // All arcs of the steps start on a quadrant line, or lie within one quadrant.
  for (let at = limit; at < sweep - 1e-6; at += limit) {
    const here = angle(x, y) + sign * at;
    ends.push([cx + Math.round(radius * Math.cos(here)), cy + Math.round(radius * Math.sin(here))]);
  }
  return [...ends, [end.x, end.y]];
}

function oneArc(printer: Printer, { cw, x, y, cx, cy, feed }: Arc): void {
  const { style } = printer;
  const [startX, startY] = [printer.x!, printer.y!];
  const all = style["modal.axes"] === "all";
  // A full circle has to name an end (NISTIR 6556 3.5.3).
  const both = all || style["modal.arc-end"] === "both" || (startX === x && startY === y);
  const words: (readonly [string, string])[] = [...motionWord(printer, cw ? 2 : 3)];
  for (const [axis, target] of [
    ["x", x],
    ["y", y],
  ] as const) {
    // prettier-ignore
    const word = axisWord(printer, axis, target, both);
    if (word) words.push(word);
  }
  const third = all ? axisWord(printer, "z", undefined, true) : undefined;
  if (third) words.push(third);
  if (style["arc.form"] === "radius")
    words.push(["R", length(printer, Math.round(Math.hypot(startX - cx, startY - cy)), false)]);
  else {
    const absolute = style["arc.form"] === "absolute-centre";
    const [i, j] = absolute ? [cx, cy] : [cx - startX, cy - startY];
    const zeros = style["modal.arc-centre"] === "both";
    if (i !== 0 || zeros) words.push(["I", length(printer, i)]);
    if (j !== 0 || zeros) words.push(["J", length(printer, j)]);
  }
  words.push(...feedWord(printer, feed));
  printer.cutting = true;
  block(printer, words);
}

type Holes = Extract<Step, { do: "holes" }>;

function holes(printer: Printer, step: Holes): void {
  const { style } = printer;
  const apart = style["cycles.definition"] === "apart";
  if (apart) block(printer, [...cycleWords(printer, step), ...feedWord(printer, step.feed)]);
  step.at.forEach(([x, y], index) => {
    const defines = index === 0 && !apart;
    const says = defines || style["cycles.repeat"] === "all";
    const ownWord = style["modal.motion"] === "each-block" ? [["G", String(step.code)] as const] : [];
    // The code of a cycle is a motion word: where those are modal, a later hole leaves it out.
    const isLater = index > 0 || apart;
    const all = cycleWords(printer, step).filter(([letter, text]) => !isLater || ownWord.length > 0 || letter !== "G" || text === "99" || text === "98"); // prettier-ignore
    const words: (readonly [string, string])[] = says ? [...all] : isLater ? [...ownWord] : [];
    const before = [printer.x, printer.y];
    for (const [axis, target] of [
      ["x", x],
      ["y", y],
    ] as const) {
      // prettier-ignore
      const word = axisWord(printer, axis, target, style["cycles.positions"] === "both");
      if (word) words.push(word);
    }
    // A block without a place would drill nothing: the first hole is where the tool stands.
    if (before[0] === x && before[1] === y && style["cycles.positions"] === "changed")
      words.push(["X", printer.distance === "incremental" ? length(printer, 0) : length(printer, x)]);
    if (defines || style["modal.feed"] === "each-block") words.push(...feedWord(printer, step.feed));
    block(printer, words);
  });
  block(printer, [["G", "80"]]);
  [printer.motion, printer.cutting] = [undefined, false];
}

function cycleWords(printer: Printer, { code: cycle, depth, retract: level, peck, dwell }: Holes): Words {
  const { style } = printer;
  const relative = style["cycles.levels"] === "relative" || style["distance.programs-in"] === "incremental";
  return [
    // By increments every hole starts from the initial level; from the retract level controllers differ.
    ["G", style["distance.programs-in"] === "incremental" ? "98" : "99"],
    ["G", String(cycle)],
    ["Z", length(printer, relative ? depth - level : depth)],
    ["R", length(printer, relative ? level - clear : level)],
    ...(cycle === 83 ? [[style["cycles.words.peck"], length(printer, peck, false)] as const] : []),
    ...(cycle === 82 ? [["P", time(printer, dwell)] as const] : []),
  ];
}
