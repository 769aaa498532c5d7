/** The blocks of a program as a traced emitter writes them, each word with the keys that it reports. */
import type { Format } from "#dialect";

/** A line of the program. */
export interface WrittenBlock {
  /** Counted from 1. */
  readonly line: number;
  /** Byte offsets of its first byte, and behind its line end. */
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly words: readonly WrittenWord[];
}

/** A word, comment or mark of a block. */
export interface WrittenWord {
  readonly text: string;
  readonly offset: number;
  readonly keys: readonly string[];
}

/** What a traced emitter reports, in the order of the text. */
interface TracedKey {
  readonly offset: number;
  readonly key: string;
}

/** Listens to the emitter on one side and takes its chunks on the other. */
export interface BlockTap {
  readonly trace: (offset: number, key: string) => void;
  readonly write: (chunk: Uint8Array) => void;
  /** Takes a last line without a line end; gives the number of lines. */
  readonly end: () => number;
}

/**
 * Cuts the text into lines as it passes and gives each that is wanted to `take`. Holds one chunk's keys and an open line.
 *
 * @param isWanted asked for each line, by its number, place and the keys reported in it
 */
export function tapBlocks(
  format: Format,
  isWanted: (line: number, start: number, keys: readonly TracedKey[]) => boolean,
  take: (block: WrittenBlock) => void,
): BlockTap {
  let open = new Uint8Array(0);
  let start = 0;
  let line = 0;
  let keys: TracedKey[] = [];
  let used = 0;
  const last = format.lineEnd.charCodeAt(format.lineEnd.length - 1);
  const close = (bytes: Uint8Array): void => {
    line++;
    const end = start + bytes.length;
    const from = used;
    while (used < keys.length && keys[used].offset < end) used++;
    const own = keys.slice(from, used);
    if (isWanted(line, start, own)) take(blockOf(format, { line, start, end }, bytes, own));
    start = end;
  };
  return {
    trace: (offset, key) => void keys.push({ offset, key }),
    write: (chunk) => {
      const bytes = joined(open, chunk);
      let from = 0;
      for (let at = bytes.indexOf(last); at >= 0; at = bytes.indexOf(last, from)) {
        close(bytes.subarray(from, at + 1));
        from = at + 1;
      }
      open = bytes.slice(from);
      keys = keys.slice(used);
      used = 0;
    },
    end: () => {
      if (open.length > 0) close(open);
      open = new Uint8Array(0);
      return line;
    },
  };
}

function joined(one: Uint8Array, other: Uint8Array): Uint8Array {
  if (one.length === 0) return other;
  const bytes = new Uint8Array(one.length + other.length);
  bytes.set(one);
  bytes.set(other, one.length);
  return bytes;
}

function blockOf(
  format: Format,
  place: Pick<WrittenBlock, "line" | "start" | "end">,
  bytes: Uint8Array,
  keys: readonly TracedKey[],
): WrittenBlock {
  // One character a byte, so that places in it are places in the program.
  const line = binaryText(bytes);
  const body = line.replace(/[\r\n]+$/, "");
  const mark = format.blockEnd !== "" && body.endsWith(format.blockEnd) ? format.blockEnd : "";
  const rest = body.slice(0, body.length - mark.length);
  const words = wordsOf(format, rest, place.start, keys);
  const ending = { text: mark, offset: place.start + rest.length, keys: ["file.end-of-block"] };
  const blank = { text: "", offset: place.start, keys: ["file.blank-lines"] };
  const all = [...words, ...(mark === "" ? [] : [ending])];
  return { ...place, text: decode(body), words: all.length === 0 ? [blank] : all };
}

/** Arguments that a call may well have. */
const mostArguments = 4096;

function binaryText(bytes: Uint8Array): string {
  if (bytes.length <= mostArguments) return String.fromCharCode(...bytes);
  return Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
}

/** Comments, and words: between separators, or each from its letter on where the dialect has none. */
function wordsOf(format: Format, body: string, start: number, keys: readonly TracedKey[]): WrittenWord[] {
  const pattern =
    format.separator === "" ? /\([^)]*\)?|;.*|[A-Z][^A-Z\s(;]*|[^A-Z\s(;]+/g : /\([^)]*\)?|;.*|[^\s(;]+/g;
  const found = [...body.matchAll(pattern)];
  let idiom: string | undefined;
  return found.map((match) => {
    const [text] = match;
    const offset = start + match.index;
    const own = keys.filter((key) => key.offset >= offset && key.offset < offset + text.length);
    const names = [...new Set(own.map(({ key }) => key))];
    // The text of an idiom is one report at its head; what stands behind that head is the idiom's, too.
    idiom = names.find((name) => name.startsWith("idioms.")) ?? idiom;
    const shared = idiom === undefined || names.includes(idiom) ? [] : [idiom];
    return {
      text: decode(text),
      offset,
      keys: names.length > 0 ? [...names, ...shared] : shared.length > 0 ? shared : unreported(text),
    };
  });
}

/** A comment of the header or the footer, which is no word: the emitter does not report it. */
function unreported(text: string): string[] {
  return /^[(;]/.test(text) ? ["comments.style", "comments.longest"] : [];
}

/** Any character beyond ASCII, which takes more than one byte. */
const beyondAscii = /[\u0080-\u00ff]/;

function decode(binary: string): string {
  if (!beyondAscii.test(binary)) return binary;
  return new TextDecoder().decode(Uint8Array.from(binary, (character) => character.charCodeAt(0)));
}
