import type { Report, UnitSystem } from "#base";
import { atomsPerUnit, microsecondsPerSecond, milliPerRpm, nearest } from "#base";
import type { PlacedText } from "./case.ts";

/** A word of a step's notation, and where it stands. */
export interface Word {
  readonly text: string;
  /** Byte offset in the file. */
  readonly offset: number;
}

/** Stops the reading of one step; the finding has been reported. */
export interface NotationFault extends Error {
  readonly notation: true;
}

/** Whether something thrown stops the reading of a step. */
export function isNotationFault(thrown: unknown): thrown is NotationFault {
  return thrown instanceof Error && "notation" in thrown;
}

/** The words of one step, taken one after the other. What does not fit is reported at its word, and stops the step. */
export interface Cursor {
  readonly units: UnitSystem;
  /** Index of the step in its case. */
  readonly index: number;
  readonly next: () => Word | undefined;
  readonly peek: () => Word | undefined;
  /** The rest of the text behind the words taken so far. */
  readonly rest: () => string;
  /** Reports at a word, or behind the last one, and stops. */
  readonly fail: (word: Word | undefined, message: string, fix?: string) => never;
}

/** Opens one step. Words are parted by blanks. */
export function openStep(
  { text, offset }: PlacedText,
  place: { readonly file: string; readonly units: UnitSystem; readonly index: number },
  report: Report,
): Cursor {
  const encoder = new TextEncoder();
  const words = [...text.matchAll(/\S+/g)].map(({ 0: word, index }) => ({
    text: word,
    offset: offset + encoder.encode(text.slice(0, index)).length,
    end: index + word.length,
  }));
  const at = { word: 0 };
  const end = offset + encoder.encode(text).length;
  return {
    units: place.units,
    index: place.index,
    next: () => words[at.word++],
    peek: () => words[at.word],
    rest: () => {
      const from = words[at.word - 1]?.end ?? 0;
      at.word = words.length;
      return text.slice(from).trim();
    },
    fail: (word, message, fix) => {
      const where = { source: "dialect", file: place.file, offset: word?.offset ?? end } as const;
      const finding = { rule: "dialect/case", severity: "error", message, place: where } as const;
      report(fix === undefined ? finding : { ...finding, fix });
      throw Object.assign(new Error(message), { notation: true as const });
    },
  };
}

/** One of some words. */
export function oneOf<const T extends string>(cursor: Cursor, known: readonly T[], what: string): T {
  const word = cursor.next();
  const found = known.find((one) => one === word?.text);
  if (found !== undefined) return found;
  const list = `${known.slice(0, -1).join(", ")}${known.length > 1 ? " or " : ""}${known.at(-1) ?? ""}`;
  if (word === undefined) return cursor.fail(word, `${what} is missing: ${list}.`);
  const near = nearest(word.text, known);
  const meant = near === undefined ? "" : ` Did you mean \`${near}\`?`;
  return cursor.fail(word, `\`${word.text}\` is no ${what}; it can be ${list}.${meant}`);
}

/** Takes the next word if it is this one. */
export function took(cursor: Cursor, text: string): boolean {
  if (cursor.peek()?.text !== text) return false;
  cursor.next();
  return true;
}

/** What numbers count, and how many base units that is. */
const scales = {
  length: ({ units }: Cursor) => atomsPerUnit[units],
  angle: () => 1_000_000,
  seconds: () => microsecondsPerSecond,
  turns: () => microsecondsPerSecond,
  rpm: () => milliPerRpm,
  whole: () => 1,
} as const;

export type Counted = keyof typeof scales;

/** Largest number that the notation takes, base units; beyond it sums are not exact. */
const largest = 1e13;

/** A decimal number in base units, from its digits: "12.5" mm -> 125,000,000. */
export function numberOf(
  cursor: Cursor,
  word: Word | undefined,
  digits: string,
  counted: Counted,
  what: string,
): number {
  const parts = /^([-+]?)(\d*)(?:\.(\d*))?$/.exec(digits);
  const [, sign = "", whole = "", decimals = ""] = parts ?? [];
  if (parts === null || whole + decimals === "")
    return cursor.fail(
      word,
      word === undefined
        ? `${what} is missing: a number.`
        : `${what} is \`${digits}\`; it can be a number such as 12.5.`,
    );
  const scale = scales[counted](cursor);
  const value = (Number(whole + decimals) * scale) / 10 ** decimals.length;
  if (!Number.isInteger(value) || value > largest)
    return cursor.fail(
      word,
      `${what} is \`${digits}\`; that is ${value > largest ? "too large" : "finer than the least unit there is"}.`,
    );
  return sign === "-" ? -value + 0 : value;
}

/** The next word as a number. */
export function nextNumber(cursor: Cursor, counted: Counted, what: string): number {
  const word = cursor.next();
  return numberOf(cursor, word, word?.text ?? "", counted, what);
}

/** Nothing may stand behind the last word of a step. */
export function endOf(cursor: Cursor, could: string): void {
  const word = cursor.peek();
  if (word !== undefined)
    cursor.fail(
      word,
      `\`${word.text}\` is not expected here${could === "" ? "" : `; there could be ${could}`}.`,
    );
}
