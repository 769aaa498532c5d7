import { isBlank, isDigit, isLetter, skipBlanks } from "../scan-bytes.ts";

/** What an O word is followed by, and the two codes that call and leave a subprogram. */
export const keywords = [
  "SUB",
  "ENDSUB",
  "CALL",
  "RETURN",
  "IF",
  "ELSEIF",
  "ELSE",
  "ENDIF",
  "WHILE",
  "ENDWHILE",
  "DO",
  "REPEAT",
  "ENDREPEAT",
  "BREAK",
  "CONTINUE",
] as const;

export type Keyword = (typeof keywords)[number] | "O" | "M98" | "M99" | "unknown";

/** The code that calls a subprogram, and the one that leaves it. */
export const callCode = 98;
export const leaveCode = 99;

/** What begins a line that decides which is next, under a dialect. */
export interface FlowWords {
  /** Whether O words have keywords; without, a number alone may follow. */
  readonly oWords: boolean;
  /** M98 and M99, but for one to which the dialect gives a meaning of its own. */
  readonly codes: readonly number[];
}

/** A line that decides which line is next. */
export interface FlowLine {
  readonly keyword: Keyword;
  /** The number without zeros before it, or the name in lower case without blanks; "" where it is worked out, or none. */
  readonly label: string;
  /** Index of what stands for the label, and behind the keyword; bytes from the start of the line once it is placed. */
  readonly labelAt: number;
  readonly behind: number;
}

const slash = 47;
const letterO = 79;
const letterM = 77;
const letterN = 78;
const hash = 35;
const open = 91;
const less = 60;
const greater = 62;

/**
 * Reads the start of a line that decides which is next: `O100 SUB`, `o<hole> call [1]`, `O100`, `M98 P100`, `M99`.
 *
 * @returns undefined for any other line
 */
export function flowLineAt(
  bytes: Uint8Array,
  start: number,
  end: number,
  words: FlowWords,
): FlowLine | undefined {
  const index = behindNumber(bytes, start, end);
  const letter = bytes[index] & 0xdf;
  if (index >= end || (letter !== letterO && letter !== letterM)) return undefined;
  return letter === letterM ? codeLine(bytes, index, end, words) : wordLine(bytes, index, end, words);
}

/** Index of the first word that is no block number. */
function behindNumber(bytes: Uint8Array, start: number, end: number): number {
  let index = skipBlanks(bytes, start, end);
  if (bytes[index] === slash) index = skipBlanks(bytes, index + 1, end);
  if ((bytes[index] & 0xdf) !== letterN) return index;
  index++;
  while (index < end && (isDigit(bytes[index]) || isBlank(bytes[index]))) index++;
  return index;
}

/** M98 or M99, with zeros before the number or not. */
function codeLine(bytes: Uint8Array, index: number, end: number, { codes }: FlowWords): FlowLine | undefined {
  let value = 0;
  let at = skipBlanks(bytes, index + 1, end);
  for (; at < end && (isDigit(bytes[at]) || isBlank(bytes[at])); at++)
    if (isDigit(bytes[at])) value = value * 10 + (bytes[at] - 48);
  if (!codes.includes(value) || bytes[at] === 46) return undefined;
  return { keyword: value === callCode ? "M98" : "M99", label: "", labelAt: index, behind: at };
}

function wordLine(
  bytes: Uint8Array,
  index: number,
  end: number,
  { oWords }: FlowWords,
): FlowLine | undefined {
  const labelAt = skipBlanks(bytes, index + 1, end);
  const { label, behind } = labelHere(bytes, labelAt, end);
  const text = lettersFrom(bytes, behind, end);
  if (text === "") return { keyword: "O", label, labelAt, behind };
  if (!oWords) return undefined;
  const found = keywords
    .filter((one) => text.startsWith(one))
    .sort((one, other) => other.length - one.length)[0];
  const length = (found ?? text).length;
  return { keyword: found ?? "unknown", label, labelAt, behind: behindLetters(bytes, behind, length) };
}

/** The letters that stand here, in capitals, blanks left out. */
function lettersFrom(bytes: Uint8Array, from: number, end: number): string {
  let text = "";
  for (let at = from; at < end && (isLetter(bytes[at]) || isBlank(bytes[at])); at++)
    if (isLetter(bytes[at])) text += String.fromCharCode(bytes[at] & 0xdf);
  return text;
}

/** Index behind so many letters. */
function behindLetters(bytes: Uint8Array, from: number, count: number): number {
  let at = from;
  for (let left = count; left > 0; at++) if (isLetter(bytes[at])) left--;
  return at;
}

/** A number, a name, or what is worked out when it is called. */
function labelHere(bytes: Uint8Array, from: number, end: number): { label: string; behind: number } {
  let label = "";
  let at = from;
  if (bytes[from] === hash || bytes[from] === open) return { label, behind: behindValue(bytes, from, end) };
  if (bytes[from] === less) {
    for (at = from + 1; at < end && bytes[at] !== greater; at++)
      if (!isBlank(bytes[at])) label += String.fromCharCode(bytes[at]).toLowerCase();
    return { label: `<${label}>`, behind: Math.min(at + 1, end) };
  }
  for (; at < end && (isDigit(bytes[at]) || isBlank(bytes[at])); at++)
    if (isDigit(bytes[at])) label += String.fromCharCode(bytes[at]);
  return { label: label.replace(/^0+(?=\d)/, ""), behind: at };
}

/** Behind `#12`, `##1` or a bracket: as far as a letter that stands in no bracket. */
function behindValue(bytes: Uint8Array, from: number, end: number): number {
  let depth = 0;
  let at = from;
  for (; at < end && (depth > 0 || !isLetter(bytes[at])); at++) {
    if (bytes[at] === open || bytes[at] === less) depth++;
    if (bytes[at] === 93 || bytes[at] === greater) depth--;
  }
  return at;
}
