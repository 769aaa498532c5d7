/** Numbers from 0 up to 1. */
export type Random = () => number;

/** Most bytes of an input. */
export const mostBytes = 100_000;

export const pick = <Item>(random: Random, items: readonly Item[]): Item =>
  items[Math.floor(random() * items.length)];

export const upTo = (random: Random, most: number): number => Math.floor(random() * (most + 1));

/** Numbers at which something may end. */
export const oddNumbers = [
  "0",
  "-0",
  "1e999",
  "-1e999",
  "1e-999",
  "9007199254740993",
  "0.00000000000000000001",
  "1".repeat(400),
  `0.${"3".repeat(400)}`,
  "1000000",
  "-1000000",
  "NaN",
  "Infinity",
  "0x10",
  "1_000",
  "+1",
  ".5",
  "5.",
  "--1",
  "1e5",
];

/** One change of a text. */
type Change = (text: string, random: Random, words: readonly string[]) => string;

function span(text: string, random: Random, most: number): [from: number, to: number] {
  const from = upTo(random, text.length);
  return [from, Math.min(text.length, from + upTo(random, most))];
}

const changes: readonly Change[] = [
  // A character is another one.
  (text, random) => {
    const [from] = span(text, random, 0);
    return text.slice(0, from) + String.fromCodePoint(upTo(random, 0x17f)) + text.slice(from + 1);
  },
  // A piece is gone.
  (text, random) => {
    const [from, to] = span(text, random, pick(random, [1, 8, 200]));
    return text.slice(0, from) + text.slice(to);
  },
  // A piece stands there twice, or often.
  (text, random) => {
    const [from, to] = span(text, random, pick(random, [4, 40, 400]));
    return text.slice(0, to) + text.slice(from, to).repeat(pick(random, [1, 1, 3, 50])) + text.slice(to);
  },
  // A word of the trade stands where none belongs.
  (text, random, words) => {
    const [from] = span(text, random, 0);
    return text.slice(0, from) + pick(random, words) + text.slice(from);
  },
  // A number is another one.
  (text, random) => {
    const numbers = [...text.matchAll(/-?\d+(\.\d+)?/g)];
    if (numbers.length === 0) return text;
    const { index, 0: old } = pick(random, numbers);
    const near = String(Number(old) * pick(random, [-1, 0.001, 10, 1000, 1.0000001]));
    const other = random() < 0.5 ? pick(random, oddNumbers) : near;
    return text.slice(0, index) + other + text.slice(index + old.length);
  },
  // Two lines change places.
  (text, random) => {
    const lines = text.split("\n");
    const [one, two] = [upTo(random, lines.length - 1), upTo(random, lines.length - 1)];
    [lines[one], lines[two]] = [lines[two], lines[one]];
    return lines.join("\n");
  },
  // The rest is missing.
  (text, random) => text.slice(0, upTo(random, text.length)),
];

/** Changes a text in one to six places; `words` are put in where they do not belong. */
export function mutate(text: string, random: Random, words: readonly string[]): string {
  let changed = text;
  for (let count = 1 + upTo(random, 5); count > 0; count--)
    changed = pick(random, changes)(changed, random, words).slice(0, mostBytes);
  return changed;
}

/** Bytes without any meaning. */
export function binary(random: Random): Uint8Array {
  return Uint8Array.from({ length: upTo(random, pick(random, [10, 1000, 20_000])) }, () => upTo(random, 255));
}

/** A text as bytes, cut to the most that an input may have. */
export function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text).subarray(0, mostBytes);
}
