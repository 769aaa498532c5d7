import type { ByteSource, Report } from "#base";
import type { Scanner } from "../scan/scanner.ts";
import { createScanner } from "../scan/scanner.ts";
import * as findings from "./findings.ts";
import type { ClOptions } from "./options.ts";
import { nextLine } from "./statement.ts";

/** Columns of a statement on a card; 73 to 80 are the sequence field (APT). */
export const cardColumns = 72;
const cardWidth = 80;

/** What lines longer than a card's statement show of the habit of their source. */
interface Evidence {
  /** Lines with something in them. */
  lines: number;
  /** Those with what looks like a sequence field. */
  numbered: number;
  /** Those that go on past column 72 with something else. */
  longer: number;
  /** Byte offset of the first line whose statement may go on in columns 73 to 80; -1: none. */
  unclear: number;
}

/**
 * Finds out whether columns 73 to 80 are a sequence field. They are where each line has one; they are not where lines go
 * on past column 72 with other things. Where neither is sure and it matters, the user is asked.
 *
 * @returns how many columns of a line count
 */
export function countColumns(
  source: ByteSource,
  { columns }: ClOptions,
  report: Report,
  window: number,
): number {
  if (columns !== "by-itself") return columns === "72" ? cardColumns : Infinity;
  const scanner = createScanner(source, () => undefined, { from: 0, to: source.size }, window);
  const evidence: Evidence = { lines: 0, numbered: 0, longer: 0, unclear: -1 };
  while (lookAtLine(scanner, evidence));
  const { lines, numbered, longer, unclear } = evidence;
  if (numbered === 0 || longer > 0) return Infinity;
  if (numbered === lines) {
    report(findings.columnsTaken(0));
    return cardColumns;
  }
  if (unclear >= 0) report(findings.columnsUnclear(unclear));
  return Infinity;
}

/** Letters of the program, then a number. */
const sequenceField = /^ *[A-Za-z]{0,7}\d+ *$/;

function lookAtLine(scanner: Scanner, evidence: Evidence): boolean {
  if (skipShortLine(scanner, evidence)) return true;
  const line = nextLine(scanner);
  if (line === undefined) return false;
  const text = line.text.trimEnd();
  if (text === "") return true;
  evidence.lines++;
  if (text.length <= cardColumns) return true;
  const isNumbered = text.length <= cardWidth && sequenceField.test(text.slice(cardColumns));
  if (isNumbered) evidence.numbered++;
  const dollar = text.indexOf("$");
  const isStatement = !/^\s*(PARTNO|PPRINT|INSERT|REMARK|TITLES)/i.test(text);
  if (!isStatement || (dollar >= 0 && dollar < cardColumns)) return true;
  if (!isNumbered) evidence.longer++;
  else if (evidence.unclear < 0) evidence.unclear = line.offset + cardColumns;
  return true;
}

/** Goes over a line that is no longer than a card's statement, without making a text of it. */
function skipShortLine(scanner: Scanner, evidence: Evidence): boolean {
  const { bytes } = scanner;
  let at = scanner.at;
  const most = Math.min(scanner.end, at + cardColumns);
  let filled = 0;
  while (at < most && bytes[at] !== 10) filled |= bytes[at++] ^ 32;
  if (at === most || bytes[at] !== 10) return false;
  if (filled !== 0) evidence.lines++;
  scanner.at = at + 1;
  return true;
}
