import type { Program } from "./program.ts";
import type { Line, Word } from "./tokens.ts";

/** Letters of axes. */
export type AxisLetter = "X" | "Y" | "Z" | "A" | "B" | "C";

const axisLetters: readonly AxisLetter[] = ["X", "Y", "Z", "A", "B", "C"];

/** Places by axis letter, as the program counts them; an axis that is not known is left out. */
export type Places = Readonly<Partial<Record<AxisLetter, number>>>;

/** A block that moves. */
export interface Motion {
  /** Code in tenths: 0, 10, 20, 30, or of a fixed cycle 730 to 890. */
  readonly code: number;
  readonly isCycle: boolean;
  /** Its own motion word; undefined where an earlier one holds. */
  readonly stated: Word | undefined;
  /** Code of the block before, where that is motion in the same frame with nothing between. */
  readonly previous: number | undefined;
  readonly frame: "work" | "machine";
  readonly absolute: boolean;
  /** Code of the plane. */
  readonly plane: 17 | 18 | 19;
  readonly before: Places;
  readonly after: Places;
  /** Feed in force before and in the block, as the program counts it. */
  readonly feedBefore: number | undefined;
  readonly feed: Word | undefined;
}

/** A block with what its words mean by the standards' tables. */
export interface Block {
  readonly line: Line;
  readonly program: Program;
  /** Words by letter; of a letter that stands twice the last. */
  readonly words: ReadonlyMap<string, Word>;
  /** Codes in tenths, in the order of the text. */
  readonly g: readonly number[];
  readonly m: readonly number[];
  readonly motion: Motion | undefined;
  /** The cycle that is in force behind the block, in tenths. */
  readonly cycle: number | undefined;
  readonly feedMode: number | undefined;
  readonly absolute: boolean;
}

/** Codes with words of axes that are no motion to them: dwell, reference return, presets. */
const takesAxes: readonly number[] = [40, 100, 280, 300, 740, 500, 510, 520, 680, 690, 920];

interface State {
  code: number | undefined;
  cycle: number | undefined;
  absolute: boolean;
  plane: 17 | 18 | 19;
  places: Places;
  feed: number | undefined;
  feedMode: number | undefined;
  last: Motion | undefined;
}

/** Goes through a program with the modal groups of NISTIR 6556 Table 4, as far as all controllers of the family share them. */
export function walk(program: Program): Block[] {
  const state: State = { code: undefined, cycle: undefined, absolute: true, plane: 17, places: {}, feed: undefined, feedMode: undefined, last: undefined }; // prettier-ignore
  return program.lines.filter(({ kind }) => kind === "block").map((line) => step(state, line, program));
}

function step(state: State, line: Line, program: Program): Block {
  const words = new Map(line.words.map((word) => [word.letter, word]));
  const codes = (letter: string): number[] =>
    line.words.filter((word) => word.letter === letter).map(({ value }) => Math.round(value * 10));
  const g = codes("G");
  const m = codes("M");
  takeModes(state, g);
  const feedBefore = state.feed;
  const isOther = g.some(
    (code) => takesAxes.includes(code) && !(code === 740 && words.has("Z") && words.has("R")),
  );
  const feed = words.get("F");
  // The time of a dwell in F leaves no feed that could be relied on.
  if (feed) state.feed = g.includes(40) ? undefined : feed.value;
  const named = axisLetters.filter((letter) => words.has(letter));
  const motion = isOther || named.length === 0 ? undefined : moved(state, words, g, line, feedBefore);
  if (isOther) forget(state, named, g);
  if (m.some((code) => code === 60 || code === 0 || code === 10)) state.places = {};
  state.last = motion;
  return {
    line,
    program,
    words,
    g,
    m,
    motion,
    cycle: state.cycle,
    feedMode: state.feedMode,
    absolute: state.absolute,
  };
}

function takeModes(state: State, g: readonly number[]): void {
  for (const code of g) {
    if (code === 900) state.absolute = true;
    if (code === 910) state.absolute = false;
    if (code === 170 || code === 180 || code === 190) state.plane = (code / 10) as State["plane"];
    if (code >= 930 && code <= 950) state.feedMode = code;
    if (code === 800) [state.cycle, state.code] = [undefined, undefined];
    if (code <= 30) [state.code, state.cycle] = [code, undefined];
    if (isCycleCode(code)) state.cycle = code;
  }
}

function isCycleCode(code: number): boolean {
  return code === 730 || code === 740 || code === 760 || (code > 800 && code <= 890);
}

function moved(
  state: State,
  words: ReadonlyMap<string, Word>,
  g: readonly number[],
  line: Line,
  feedBefore: number | undefined,
): Motion | undefined {
  const code = state.cycle ?? state.code;
  if (code === undefined) return undefined;
  const own = g.find((one) => one === code);
  const stated =
    own === undefined
      ? undefined
      : line.words.find(({ letter, value }) => letter === "G" && Math.round(value * 10) === code);
  const frame = g.includes(530) ? "machine" : "work";
  const before = state.places;
  const { last } = state;
  const after = frame === "machine" ? withoutNamed(before, words) : reached(state, words);
  state.places = after;
  const previous = last?.frame === frame && !line.words.some(breaksRun) ? last.code : undefined;
  return { code, isCycle: state.cycle !== undefined, stated, previous, frame, absolute: state.absolute, plane: state.plane, before, after, feedBefore, feed: words.get("F") }; // prettier-ignore
}

/** Words behind which a motion word is often said anew. */
function breaksRun({ letter, value }: Word): boolean {
  return letter === "M" || letter === "T" || (letter === "G" && value > 3 && value < 73);
}

function reached(state: State, words: ReadonlyMap<string, Word>): Places {
  const places: Partial<Record<AxisLetter, number>> = { ...state.places };
  for (const letter of axisLetters) {
    const word = words.get(letter);
    if (!word || (state.cycle !== undefined && letter === "Z")) continue;
    if (state.absolute) places[letter] = word.value;
    else if (places[letter] !== undefined) places[letter] += word.value;
  }
  return places;
}

function withoutNamed(places: Places, words: ReadonlyMap<string, Word>): Places {
  return Object.fromEntries(Object.entries(places).filter(([letter]) => !words.has(letter)));
}

/** Behind a reference return or a preset nobody knows where the named axes are. */
function forget(state: State, named: readonly AxisLetter[], g: readonly number[]): void {
  if (g.includes(40)) return;
  state.places = Object.fromEntries(
    Object.entries(state.places).filter(([letter]) => !named.includes(letter as AxisLetter)),
  );
}
