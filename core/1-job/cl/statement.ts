import type { Scanner } from "../scan/scanner.ts";
import { fail, longestText, refill } from "../scan/scanner.ts";
import * as findings from "./findings.ts";

/** One item between the commas of a statement. */
export interface Item {
  readonly kind: "word" | "number";
  /** As written; words in capitals. */
  readonly text: string;
  /** Byte offset in the source. */
  readonly offset: number;
}

/** A statement: MAJOR, MAJOR/item, item, ... or a word with free text. */
export interface Statement {
  /** In capitals; "" for an empty one. */
  readonly word: string;
  /** Byte offset of the word. */
  readonly offset: number;
  readonly items: readonly Item[];
  /** Text behind a word of the fixed field; undefined for every other word. */
  readonly text: string | undefined;
  /** Whether the text ends with `$`, which may or may not continue it. */
  readonly dollar: boolean;
}

/** How the lines of a source are to be taken. */
export interface LineHabits {
  /** Columns that count: 72, or any number. */
  readonly columns: number;
  /** Whether `$` at the end of a text continues it. */
  readonly textContinues: boolean;
}

/** Words of the fixed field: columns 1 to 6, then text as it stands (APT). */
const literalWords = /^\s*(PARTNO|PPRINT|INSERT|REMARK|TITLES)/i;

/** The most items of a statement (APT: 600). */
const mostItems = 600;

/** A line of the source: characters are its bytes, so that an index is an offset. */
interface Line {
  readonly text: string;
  readonly offset: number;
}

/** The next line without its end; undefined behind the last. */
export function nextLine(scanner: Scanner): Line | undefined {
  let length = 0;
  const { bytes } = scanner;
  for (;;) {
    const byte = bytes[scanner.at + length];
    if (byte === 10 || byte === 13) break;
    if (byte !== 0 || scanner.at + length < scanner.end) length++;
    else if (!refill(scanner, scanner.at)) break;
    if (length <= longestText) continue;
    fail(scanner, findings.lineTooLong(scanner.start + scanner.at));
    return undefined;
  }
  const offset = scanner.start + scanner.at;
  if (length === 0 && scanner.at === scanner.end) return undefined;
  const text = latin(bytes.subarray(scanner.at, scanner.at + length));
  scanner.at += length;
  skipLineEnd(scanner);
  return { text, offset };
}

function latin(bytes: Uint8Array): string {
  if (bytes.length < 1000) return String.fromCharCode(...bytes);
  return latin(bytes.subarray(0, 999)) + latin(bytes.subarray(999));
}

/** A line ends with LF, CR LF or CR. */
function skipLineEnd(scanner: Scanner): void {
  const byte = scanner.bytes[scanner.at];
  if (byte === 10 || byte === 13) scanner.at++;
  if (byte !== 13) return;
  if (scanner.at === scanner.end) refill(scanner, scanner.at);
  if (scanner.bytes[scanner.at] === 10) scanner.at++;
}

/**
 * Reads the next statement, over as many lines as it takes; faults of form are reported, and give a statement without
 * a word.
 *
 * @returns undefined behind the last
 */
export function nextStatement(scanner: Scanner, habits: LineHabits): Statement | undefined {
  const line = nextLine(scanner);
  if (line === undefined) return undefined;
  const first = line.text.slice(0, habits.columns);
  const literal = literalWords.exec(first);
  if (literal) return readLiteral(scanner, { text: first, offset: line.offset }, literal, habits);
  return readItems(scanner, { text: first, offset: line.offset }, habits);
}

function readLiteral(
  scanner: Scanner,
  line: Line,
  [before, word]: RegExpExecArray,
  { columns, textContinues }: LineHabits,
): Statement {
  let text = line.text.slice(before.length).trim();
  const dollar = text.endsWith("$") && !text.endsWith("$$");
  while (textContinues && text.endsWith("$") && !text.endsWith("$$")) {
    const next = nextLine(scanner);
    if (next === undefined) break;
    text = `${text.slice(0, -1).trimEnd()} ${next.text.slice(0, columns).trim()}`;
  }
  const offset = line.offset + before.length - word.length;
  return { word: word.toUpperCase(), offset, items: [], text: decode(scanner, text, offset), dollar };
}

/** Free text is UTF-8; the characters are its bytes so far. */
function decode(scanner: Scanner, text: string, offset: number): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(
      Uint8Array.from(text, (character) => character.charCodeAt(0)),
    );
  } catch {
    scanner.report(findings.textNotUtf8(offset));
    return "";
  }
}

const tokens =
  /\s+|([A-Za-z][A-Za-z0-9-]*)|([-+]?(?:\d+\.?\d*|\.\d+)(?:[Ee][-+]?\d*)?[\w.]*)|(\$\$?)|([/,])|([^])/gy;

/** What is being put together of one statement. */
interface Draft {
  readonly items: Item[];
  word: Item | undefined;
  slash: boolean;
  /** Whether an item must come next. */
  open: boolean;
  faulty: boolean;
}

/** Reads the words and numbers of a statement. */
function readItems(scanner: Scanner, first: Line, { columns }: LineHabits): Statement {
  const draft: Draft = { items: [], word: undefined, slash: false, open: false, faulty: false };
  let line: Line | undefined = first;
  let end = first.offset;
  while (line !== undefined) {
    const continues = readLine(scanner, line, draft);
    end = line.offset + line.text.length;
    if (!continues) break;
    line = nextLine(scanner);
    if (line === undefined) draftFault(scanner, draft, findings.continuedToNothing(end));
    else line = { text: line.text.slice(0, columns), offset: line.offset };
  }
  if (draft.open) draftFault(scanner, draft, findings.endsOpen(end));
  const { word, items, faulty } = draft;
  return {
    word: faulty || word === undefined ? "" : word.text,
    offset: word?.offset ?? first.offset,
    items,
    text: undefined,
    dollar: false,
  };
}

function draftFault(scanner: Scanner, draft: Draft, finding: ReturnType<typeof findings.endsOpen>): void {
  if (!draft.faulty) scanner.report(finding);
  draft.faulty = true;
}

/** Takes the tokens of one line. @returns whether the next line goes on */
function readLine(scanner: Scanner, { text, offset }: Line, draft: Draft): boolean {
  for (const match of text.matchAll(tokens)) {
    const [all, word, number, dollar, mark, other] = match;
    const at = offset + match.index;
    if (dollar !== undefined) return dollar === "$";
    if (word !== undefined) takeItem(scanner, draft, { kind: "word", text: word.toUpperCase(), offset: at });
    else if (number !== undefined) takeItem(scanner, draft, { kind: "number", text: number, offset: at });
    else if (mark !== undefined) takeMark(scanner, draft, mark, at);
    else if (other !== undefined) draftFault(scanner, draft, findings.strayCharacter(at, all));
  }
  return false;
}

function takeItem(scanner: Scanner, draft: Draft, item: Item): void {
  if (draft.word === undefined) {
    if (item.kind === "number") draftFault(scanner, draft, findings.beginsWithNumber(item.offset));
    draft.word = item;
  } else if (!draft.open) draftFault(scanner, draft, findings.noComma(item.offset, draft.slash ? "," : "/"));
  else if (draft.items.length >= mostItems) draftFault(scanner, draft, findings.tooManyItems(item.offset));
  else draft.items.push(item);
  draft.open = false;
}

function takeMark(scanner: Scanner, draft: Draft, mark: string, offset: number): void {
  const expected = mark === "/" ? draft.word !== undefined && !draft.slash : draft.slash && !draft.open;
  if (!expected || draft.open) draftFault(scanner, draft, findings.strayCharacter(offset, mark));
  if (mark === "/") draft.slash = true;
  draft.open = true;
}
