import type { Chance } from "./chance.ts";
import { createChance } from "./chance.ts";
import { operations } from "./cam-operations.ts";
import type { Style } from "./cam-style.ts";
import type { Word } from "./spell.ts";
import { code, spellBlock, whole } from "./spell.ts";

/** A writer at work: its style, the lines so far, and what it has said. Lengths in whole least increments. */
export interface Writer {
  readonly style: Style;
  readonly chance: Chance;
  readonly lines: string[];
  number: number;
  motion: number;
  feed: number;
  readonly at: [number, number, number];
  incremental: boolean;
  tool: number;
  next: number;
}

/** Least increments in a millimetre, or in a twentieth of an inch: programs of both units have about the same numbers. */
const scaleOf = ({ inch }: Style): number => (inch ? 500 : 1000);

/** A length of so many millimetres, or twentieths of an inch. */
export function units({ style }: Writer, value: number): number {
  return Math.round(value * scaleOf(style));
}

/** Writes one block. */
export function put(writer: Writer, words: readonly Word[], comment = ""): void {
  const { style, chance, lines } = writer;
  const { numbers, habits } = style;
  const numbered = numbers ? [whole("N", writer.number), ...words] : words;
  writer.number += numbers?.step ?? 0;
  lines.push(spellBlock(numbered, habits, chance) + (comment === "" ? "" : ` (${comment})`));
}

/** An axis or centre word. */
export function word({ style }: Writer, letter: string, steps: number): Word {
  return { letter, steps, decimals: style.inch ? 4 : 3 };
}

/** A motion to a place, given for some of the axes; says what its style says. */
export function move(
  writer: Writer,
  motion: 0 | 1,
  to: Partial<Record<"x" | "y" | "z", number>>,
  feed = 0,
): void {
  const { style, at, chance } = writer;
  const words: Word[] = [];
  if (writer.motion !== motion || style.repeats) words.push(code("G", motion));
  let moves = false;
  for (const [axis, letter] of ["x", "y", "z"].entries()) {
    const place = to[letter as "x"];
    if (place === undefined) continue;
    const changes = place !== at[axis as 0];
    moves ||= changes;
    if (changes || style.repeats)
      words.push(word(writer, letter.toUpperCase(), writer.incremental ? place - at[axis as 0] : place));
    at[axis as 0] = place;
  }
  if (!moves && !style.repeats) return;
  writer.motion = motion;
  if (motion === 1) words.push(...feedWord(writer, feed));
  put(writer, words, style.comments === "behind" && chance.happens(0.02) ? "along the edge" : "");
}

/** The feed where it changes. */
export function feedWord(writer: Writer, feed: number): Word[] {
  if (feed === writer.feed) return [];
  writer.feed = feed;
  return [{ letter: "F", steps: feed * 10, decimals: 1 }];
}

/** An arc in XY to a place, its centre given absolutely; `z` makes a helix. */
export function arc(
  writer: Writer,
  sense: 2 | 3,
  x: number,
  y: number,
  cx: number,
  cy: number,
  z?: number,
): void {
  const { style, at } = writer;
  const words: Word[] = writer.motion !== sense || style.repeats ? [code("G", sense)] : [];
  writer.motion = sense;
  const [fromX, fromY, fromZ] = at;
  const closed = fromX === x && fromY === y;
  const end = writer.incremental ? [x - fromX, y - fromY] : [x, y];
  words.push(word(writer, "X", end[0]), word(writer, "Y", end[1]));
  if (z !== undefined) words.push(word(writer, "Z", writer.incremental ? z - fromZ : z));
  const radius = Math.hypot(cx - fromX, cy - fromY);
  const byRadius = style.arcs === "radius" && !closed && Number.isInteger(radius);
  if (byRadius) words.push(word(writer, "R", radius));
  else words.push(word(writer, "I", cx - fromX), word(writer, "J", cy - fromY));
  [at[0], at[1], at[2]] = [x, y, z ?? fromZ];
  put(writer, words);
}

/** Codes, one block for all or one each. */
export function modes(writer: Writer, values: readonly number[], together: boolean): void {
  if (together)
    put(
      writer,
      values.map((value) => code("G", value)),
    );
  else for (const value of values) put(writer, [code("G", value)]);
}

/** Comment lines and blank lines before an operation. */
export function announce({ style, lines }: Writer, text: string): void {
  if (style.blankLines) lines.push("");
  if (style.comments !== "none")
    lines.push(style.habits.lowerCase === true ? `(${text})` : `(${text.toUpperCase()})`);
}

/** A long program: as many blocks as are asked for at least, in operations of many kinds. */
export function camProgram(style: Style, blocks: number): string {
  const writer: Writer = {
    style,
    chance: createChance(style.seed),
    lines: style.percent ? ["%"] : [],
    number: style.numbers?.first ?? 0,
    motion: -1,
    feed: 0,
    at: [0, 0, 0],
    incremental: false,
    tool: 0,
    next: 0,
  };
  announce(writer, "plate with pockets and holes");
  modes(writer, style.safeLine, style.safeInOne);
  let turn = 0;
  while (writer.lines.length < blocks) {
    const operation = operations[turn++ % operations.length];
    operation(writer);
  }
  put(writer, [code("M", 9)]);
  put(writer, [code("M", 5)]);
  put(writer, [code("M", 2)]);
  if (style.percent) writer.lines.push("%");
  return writer.lines.join(style.habits.lineEnd) + style.habits.lineEnd;
}
