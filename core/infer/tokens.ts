/** A letter and a number as the program has them. */
export interface Word {
  /** Upper case. */
  readonly letter: string;
  /** Sign, digits and point as written: "-.5", "+0012500". */
  readonly digits: string;
  /** The digits as a number; with an implied point it counts least increments. */
  readonly value: number;
  /** Characters from the start of the line. */
  readonly at: number;
}

/** What a line holds. `junk` is what no word-address program has. */
export type LineKind = "blank" | "delimiter" | "program-number" | "comment" | "block" | "junk";

/** One line of a program, told apart without any dialect. */
export interface Line {
  /** Name of the program's file. */
  readonly file: string;
  /** Counted from 1. */
  readonly number: number;
  /** Bytes from the start of the file. */
  readonly offset: number;
  /** Without its line end; one character a byte. */
  readonly text: string;
  readonly kind: LineKind;
  /** Words without the block number. */
  readonly words: readonly Word[];
  /** The number of the block: its N word, or one behind a colon. */
  readonly blockNumber: Word | undefined;
  /** Whether a colon stands in place of N. */
  readonly aligned: boolean;
  /** "/" or "/2", and whether it stands behind the block number. */
  readonly deleteMark: { readonly mark: string; readonly behindNumber: boolean } | undefined;
  /** Texts of comments with their marks. */
  readonly comments: readonly string[];
  /** What stands between each two words. */
  readonly gaps: readonly string[];
  /** A visible mark at the end of the block. */
  readonly endMark: "" | ";" | "*";
  /** Whether some letter of a word is lower case. */
  readonly lowerCase: boolean;
}

const space = /[ \t]*/y;
const wordPattern = /([A-Za-z])[ \t]*([+-]?(?:\d+\.?\d*|\.\d+))/y;
const numberPattern = /[ \t]*(\d{1,8})/y;
const comment = /\([^)]*\)|;.*/y;
const deletion = /\/(\d?)(?!\d)/y;

/** Longest line that is looked into, characters: a longer one is no block of a program. */
const longestLine = 4096;

type Draft = {
  -readonly [Key in "blockNumber" | "aligned" | "deleteMark" | "endMark" | "lowerCase"]: Line[Key];
} & { words: Word[]; comments: string[]; gaps: string[]; junk: boolean; at: number };

/**
 * Tells one line apart: letters, signs and digits as written.
 *
 * @param text without its line end
 */
export function tokenise(text: string, place: Pick<Line, "file" | "number" | "offset">): Line {
  const draft: Draft = { words: [], comments: [], gaps: [], junk: text.length > longestLine, at: 0, blockNumber: undefined, aligned: false, deleteMark: undefined, endMark: "", lowerCase: false }; // prettier-ignore
  let gapFrom = -1;
  while (!draft.junk && draft.at < text.length) {
    draft.at = skip(space, text, draft.at);
    if (draft.at >= text.length) break;
    const before = draft.at;
    if (takeFrame(draft, text)) continue;
    const word = match(wordPattern, text, before);
    if (!word) {
      draft.junk = true;
      break;
    }
    if (gapFrom >= 0) draft.gaps.push(text.slice(gapFrom, before));
    gapFrom = before + word[0].length;
    draft.at = gapFrom;
    takeWord(draft, word, before);
  }
  const { junk, at, ...rest } = draft;
  void at;
  return { ...place, text, ...rest, kind: kindOf(text, draft, junk) };
}

/** Takes what is no word: comments, block delete, the colon of an alignment, a mark at the end. */
function takeFrame(draft: Draft, text: string): boolean {
  const { at } = draft;
  const found = match(comment, text, at);
  if (found) {
    draft.comments.push(found[0]);
    draft.at += found[0].length;
    return true;
  }
  const deleted = match(deletion, text, at);
  if (deleted && draft.words.length === 0) {
    draft.deleteMark = { mark: deleted[0], behindNumber: draft.blockNumber !== undefined };
    draft.at += deleted[0].length;
    return true;
  }
  if (text[at] === "*" && text.slice(at + 1).trim() === "") {
    draft.endMark = "*";
    draft.at = text.length;
    return true;
  }
  const aligned = text[at] === ":" ? match(numberPattern, text, at + 1) : undefined;
  if (!aligned || draft.words.length > 0 || draft.blockNumber) return false;
  draft.blockNumber = { letter: ":", digits: aligned[1], value: Number(aligned[1]), at };
  draft.aligned = true;
  draft.at += 1 + aligned[0].length;
  return true;
}

function takeWord(draft: Draft, [, letter, digits]: RegExpExecArray, at: number): void {
  const upper = letter.toUpperCase();
  if (upper !== letter) draft.lowerCase = true;
  const word = { letter: upper, digits, value: Number(digits), at };
  if (upper === "N" && draft.words.length === 0 && !draft.blockNumber) draft.blockNumber = word;
  else draft.words.push(word);
}

function kindOf(text: string, { words, comments, blockNumber }: Draft, junk: boolean): LineKind {
  const bare = text.trim();
  if (bare === "") return "blank";
  if (bare === "%") return "delimiter";
  if (/^%\s*\d{1,8}$/.test(bare)) return "program-number";
  if (junk) return "junk";
  if (words.length === 1 && words[0].letter === "O" && !blockNumber) return "program-number";
  if (words.length > 0 || blockNumber) return "block";
  return comments.length > 0 ? "comment" : "junk";
}

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}

function skip(pattern: RegExp, text: string, at: number): number {
  return at + (match(pattern, text, at)?.[0].length ?? 0);
}
