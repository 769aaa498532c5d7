import { axes } from "#base";
import type { ExtraCode, Format, NumberFormat } from "#dialect";
import { letterBit, letterG, letterNumber, letterR } from "./letters.ts";
import type { CodeMeaning, Meaning } from "./meanings.ts";
import { meaningsOf } from "./meanings.ts";
import { modeBit } from "./state.ts";

/** Codes of one letter: 0 to 999.9 in tenths. */
export const codesOfLetter = 10_000;

/** How a comment is known for a message to the operator. */
export interface MessageForm {
  /** What the comment begins with, upper case without blanks: "MSG,". */
  readonly prefix: string;
  readonly mark: "(" | ";";
}

/** A code with a word of a fixed number beside it, such as G54.1 P2, and what the two mean. */
export interface WordedMeaning {
  readonly letter: number;
  readonly value: number;
  readonly meaning: Meaning;
}

/** A dialect as the reader looks it up. */
export interface Tables {
  /** What a code means, by `codeIndex`. */
  readonly meaningOf: ReadonlyMap<number, Meaning>;
  /** Codes that have a word with a fixed number beside them, by `codeIndex`. */
  readonly worded: ReadonlyMap<number, readonly WordedMeaning[]>;
  /** Motion mode by G code in tenths, -1 for other codes: the fast way for motion blocks. */
  readonly motionOf: Int8Array;
  /** Extra codes by `codeIndex`; several may differ by the fixed values of their words. */
  readonly extras: ReadonlyMap<number, readonly ExtraCode[]>;
  /** Letters as the reader knows them, by those of the text: axes have the letters of ISO 841 from the scanner on. */
  readonly letters: Uint8Array;
  /** The most axes that a block moves, and those of a rapid. */
  readonly mostAxes: number;
  readonly mostAxesOfRapid: number;
  /** Place of a letter in the order of a block, from 1 on; 0 for a letter that the dialect does not know. */
  readonly ranks: Uint8Array;
  /** Least digits of the whole number of a letter; 0 for letters whose numbers have a format of their own. */
  readonly widths: Uint8Array;
  /** Whether some numbers have a plus sign, have zeros put before them, and whether all have a zero before the point. */
  readonly plus: boolean;
  readonly padded: boolean;
  readonly leadingZeros: boolean;
  /** Byte between words; -1 for none, which no byte is. */
  readonly separator: number;
  /** Byte at the end of a block; -1 for none. */
  readonly blockEnd: number;
  /** Most bytes of a block that the plain scanner takes. */
  readonly longest: number;
  /** Letters that a block must have for the plain scanner (N), and those that send it to the careful one. */
  readonly required: number;
  readonly refused: number;
  /** Most words of a block that the plain scanner takes, its number not counted; Infinity for any. */
  readonly mostWords: number;
  readonly message: MessageForm | undefined;
  /** Letter of the radius of an arc: the dialect's, or R as everywhere (NISTIR 6556 3.5.3.1). */
  readonly radiusLetter: number;
  /** Bit of the letter for the turns of an arc; 0 for none. */
  readonly turnsBit: number;
  /** Bits of the modes for which the dialect has words, see `modeBit`. */
  readonly statable: number;
}

/** Bits of all letters. */
const everyLetter = (1 << 26) - 1;

/** The most bytes of a line; a longer one is refused unread. */
export const longestLine = 65_536;

/** Index of a code in the tables; -1 for one out of range. */
export function codeIndex(letter: number, tenths: number): number {
  if (tenths < 0 || tenths >= codesOfLetter) return -1;
  return letter === letterG ? tenths : codesOfLetter + tenths;
}

/** Whether the dialect gives a code a meaning, alone or with a word beside it. */
export function isDeclared({ meaningOf, worded, extras }: Tables, letter: number, tenths: number): boolean {
  const index = codeIndex(letter, tenths);
  return meaningOf.has(index) || worded.has(index) || extras.has(index);
}

/** Looks a dialect up once. */
export function createTables(format: Format, fragment: boolean): Tables {
  const meanings = meaningsOf(format);
  const letters = letterTable(format.motion.letters);
  const renamed = letters.some((letter, index) => letter !== index);
  const number = 1 << letterNumber("N");
  const formats = numberFormats(format);
  return {
    meaningOf: meaningTable(meanings),
    worded: wordedTable(meanings),
    motionOf: motionTable(meanings),
    extras: extraTable(format.extraCodes),
    letters,
    mostAxes: format.motion.axesAtOnce,
    mostAxesOfRapid: format.motion.rapidAxes === "one-at-a-time" ? 1 : format.motion.axesAtOnce,
    ranks: rankTable(format.order, letters),
    widths: widthTable(format),
    plus: formats.some(({ plus }) => plus),
    padded: formats.some(({ digits }) => digits > 0),
    leadingZeros: formats.every(({ leadingZero }) => leadingZero),
    separator: byteOf(format.separator),
    blockEnd: byteOf(format.blockEnd),
    longest: format.longest === 0 ? longestLine : Math.min(format.longest, longestLine),
    required: format.blockNumber?.on === "all" && !fragment ? number : 0,
    // The plain scanner knows no letters but those of ISO 841; every block has a letter or is not plain at all. A number
    // that only some blocks have is looked at more closely.
    refused: renamed ? everyLetter : format.blockNumber?.on === "all" ? 0 : number,
    mostWords: format.mostWords === 0 ? Infinity : format.mostWords,
    message: messageForm(format),
    radiusLetter: format.arc.radiusWord === "" ? letterR : letterNumber(format.arc.radiusWord),
    turnsBit: letterBit(format.arc.turnsWord),
    statable: statableModes(format),
  };
}

function byteOf(character: string): number {
  return character === "" ? -1 : character.charCodeAt(0);
}

function meaningTable(meanings: readonly CodeMeaning[]): Map<number, Meaning> {
  const table = new Map<number, Meaning>();
  for (const [code, meaning] of meanings) {
    if (code.word) continue;
    const index = codeIndex(letterNumber(code.letter), code.value);
    if (!table.has(index)) table.set(index, meaning);
  }
  return table;
}

function wordedTable(meanings: readonly CodeMeaning[]): Map<number, WordedMeaning[]> {
  const table = new Map<number, WordedMeaning[]>();
  for (const [{ letter, value, word }, meaning] of meanings) {
    if (!word) continue;
    const index = codeIndex(letterNumber(letter), value);
    const one = { letter: letterNumber(word.letter), value: Number(word.digits), meaning };
    table.set(index, [...(table.get(index) ?? []), one]);
  }
  return table;
}

function motionTable(meanings: readonly CodeMeaning[]): Int8Array {
  const table = new Int8Array(codesOfLetter).fill(-1);
  for (const [code, meaning] of meanings)
    if (meaning.kind === "motion" && code.letter === "G") table[code.value] = meaning.motion;
  return table;
}

function extraTable(extras: readonly ExtraCode[]): Map<number, ExtraCode[]> {
  const table = new Map<number, ExtraCode[]>();
  for (const extra of extras) {
    const index = codeIndex(letterNumber(extra.letter), extra.value);
    table.set(index, [...(table.get(index) ?? []), extra]);
  }
  return table;
}

function rankTable(order: readonly string[], letters: Uint8Array): Uint8Array {
  const ranks = new Uint8Array(26);
  order.forEach((letter, index) => (ranks[letters[letterNumber(letter)]] = index + 1));
  return ranks;
}

/** Axes by their letters of ISO 841, whatever the text calls them; a letter that is freed takes the place of one taken. */
function letterTable(names: Format["motion"]["letters"]): Uint8Array {
  const letters = Uint8Array.from({ length: 26 }, (_, letter) => letter);
  const taken = axes.map((axis) => letterNumber(names[axis]));
  const standard = axes.map((axis) => letterNumber(axis.toUpperCase()));
  const freed = standard.filter((letter) => !taken.includes(letter));
  const unused = taken.filter((letter) => !standard.includes(letter));
  taken.forEach((letter, axis) => (letters[letter] = standard[axis]));
  freed.forEach((letter, index) => (letters[letter] = unused[index]));
  return letters;
}

/** All number formats of a dialect. */
function numberFormats({ numbers }: Format): NumberFormat[] {
  const { length, arcCentre, feedPerMinute, feedPerRevolution } = numbers;
  const byUnits = [length, arcCentre, feedPerMinute, feedPerRevolution].flatMap((one) =>
    one === undefined ? [] : [one.mm, one.inch],
  );
  const { angle, inverseTime, speed, dwell, cycleDwell, timeout } = numbers;
  return [...byUnits, ...[angle, inverseTime, speed, dwell, cycleDwell, timeout].flatMap((one) => one ?? [])];
}

/** Codes, tools and offsets; a tool word that holds its offset has the digits of both. */
function widthTable({ numbers, blockNumber, lengthOffset, compensationWord }: Format): Uint8Array {
  const { G, M, T, H, D } = numbers.width;
  const widths = new Uint8Array(26);
  const set = (letter: string, width: number): void => void (widths[letterNumber(letter)] = width);
  if (compensationWord) set(compensationWord, D);
  if (lengthOffset && lengthOffset.word !== "") set(lengthOffset.word, H);
  set("G", G);
  set("M", M);
  set("T", lengthOffset?.form === "in-tool-word" && T > 1 ? 2 * T : T);
  set("N", Math.max(1, blockNumber?.width ?? 1));
  return widths;
}

/** The first literal of the message idiom, such as "(MSG, ": a mark for a comment and a prefix that tells it apart. */
function messageForm(format: Format): MessageForm | undefined {
  const first = format.idioms.message?.blocks[0]?.[0];
  if (first === undefined || !("literal" in first)) return undefined;
  const literal = first.literal.replace(/\s/g, "").toUpperCase();
  const mark = literal.charAt(0);
  const prefix = literal.slice(1);
  return (mark === "(" || mark === ";") && prefix !== "" ? { mark, prefix } : undefined;
}

function statableModes({ codes }: Format): number {
  const has = (values: object): boolean =>
    Object.values(values).some((code) => code !== null && code !== undefined);
  const bit = (values: object, mode: number): number => (has(values) ? mode : 0);
  return (
    bit(codes.modes.units, modeBit.units) |
    bit(codes.modes.distance, modeBit.distance) |
    bit(codes.modes.plane, modeBit.plane) |
    bit(codes.modes["feed-mode"], modeBit.feedMode) |
    bit(codes.modes["arc-centre"], modeBit.arcCentre) |
    bit(codes.cycleReturn, modeBit.cycleReturn)
  );
}
