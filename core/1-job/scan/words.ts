import { quote } from "./bytes.ts";
/**
 * A closed list of names that is looked up by bytes, without making a string. Axes have one letter and the commonest
 * keys four (line, feed), so both lengths have a table of their own; the rest is hashed and compared.
 */
export interface Words {
  readonly names: readonly string[];
  /** Bytes of each name. */
  readonly bytes: readonly Uint8Array[];
  readonly multiplier: number;
  /** Hash of the first two bytes, the last and the length -> index of the one name that may have it, or -1. */
  readonly slots: Int8Array;
  /** Byte of a name of one letter -> its index, or -1. */
  readonly ones: Int8Array;
  /** Hash of the four bytes of a name of four letters -> these bytes as one number. */
  readonly fourBytes: Int32Array;
  /** The same -> its index, or -1. */
  readonly fours: Int8Array;
}

const slotBits = 7;
/** An odd number whose bits look random. */
const firstMultiplier = 0x9e3779b1;

/** Makes a list of names; they are ASCII letters and hyphens. */
export function createWords(names: readonly string[]): Words {
  const bytes = names.map((name) => Uint8Array.from(name, (letter) => letter.charCodeAt(0)));
  for (let multiplier = firstMultiplier; multiplier < firstMultiplier + 100_000; multiplier += 2) {
    const slots = spread(bytes, (word) =>
      hash(word[0], word[1] ?? quote, word[word.length - 1], word.length, multiplier),
    );
    const four = bytes.map((word) => (word.length === 4 ? fourBytes(word, 0) : 0));
    const fours = spread(bytes, (_, index) => (four[index] === 0 ? -1 : hashFour(four[index], multiplier)));
    if (!slots || !fours) continue;
    const ones = new Int8Array(256).fill(-1);
    bytes.forEach((word, index) => word.length === 1 && (ones[word[0]] = index));
    return {
      names,
      bytes,
      multiplier,
      slots,
      ones,
      fours,
      fourBytes: Int32Array.from(fours, (index) => four[index] ?? 0),
    };
  }
  throw new Error(`no multiplier tells these words apart: ${names.join(", ")}`);
}

/** Slot -> index of the word with this slot; undefined if two words share one. Slot -1 is left out. */
function spread(
  bytes: readonly Uint8Array[],
  slotOf: (word: Uint8Array, index: number) => number,
): Int8Array | undefined {
  const slots = new Int8Array(1 << slotBits).fill(-1);
  const clash = bytes.some((word, index) => {
    const slot = slotOf(word, index);
    if (slot < 0) return false;
    const taken = slots[slot] !== -1;
    slots[slot] = index;
    return taken;
  });
  return clash ? undefined : slots;
}

/** Index of the name of one letter; -1 if it is none of the list. */
export function findOne(words: Words, byte: number): number {
  return words.ones[byte];
}

/** Index of the name in four bytes; -1 if it is none of the list. */
export function findFour(words: Words, bytes: Uint8Array, from: number): number {
  const four = fourBytes(bytes, from);
  const slot = hashFour(four, words.multiplier);
  return words.fourBytes[slot] === four ? words.fours[slot] : -1;
}

/** Index of the name in bytes[from] to bytes[to - 1], which a quote follows; -1 if it is none of the list. */
export function findWord(words: Words, bytes: Uint8Array, from: number, to: number): number {
  const length = to - from;
  if (length === 0) return -1;
  const index = words.slots[hash(bytes[from], bytes[from + 1], bytes[to - 1], length, words.multiplier)];
  if (index < 0) return -1;
  const word = words.bytes[index];
  if (word.length !== length) return -1;
  for (let at = 0; at < length; at++) if (word[at] !== bytes[from + at]) return -1;
  return index;
}

function fourBytes(bytes: Uint8Array, from: number): number {
  return bytes[from] | (bytes[from + 1] << 8) | (bytes[from + 2] << 16) | (bytes[from + 3] << 24);
}

function hashFour(four: number, multiplier: number): number {
  return Math.imul(four, multiplier) >>> (32 - slotBits);
}

function hash(first: number, second: number, last: number, length: number, multiplier: number): number {
  return Math.imul(first | (second << 8) | (last << 16) | (length << 24), multiplier) >>> (32 - slotBits);
}
