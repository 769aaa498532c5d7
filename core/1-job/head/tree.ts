import { overLimit, repeatedKey } from "../findings.ts";
import { beginsNumber, colon, openBrace, openBracket, quote } from "../scan/bytes.ts";
import { scanLiteral } from "../scan/literal.ts";
import { scanNumber } from "../scan/number.ts";
import type { Scanner } from "../scan/scanner.ts";
import { deepest, expected, fail, largestHead, offsetOf, peek } from "../scan/scanner.ts";
import { skipNested } from "../scan/skip.ts";
import { nextElement, nextMember, openList, openObject } from "../scan/structure.ts";
import { scanText } from "../scan/text.ts";

/** A value of the head with the place it stands in. */
export interface Tree {
  /** The value as JSON has it; of `moves` a list that stands for them. */
  readonly value: unknown;
  /** Byte offset of the value. */
  readonly offset: number;
  /** Numbers: as written. */
  readonly digits?: string;
  /** Objects: members by key. */
  readonly members?: ReadonlyMap<string, Member>;
  /** Lists: elements in order. */
  readonly elements?: readonly Tree[];
  /** Moves: byte offset behind the list. */
  readonly end?: number;
}

export interface Member {
  /** Byte offset of the key. */
  readonly keyOffset: number;
  readonly tree: Tree;
}

/** The most values outside of moves. */
const mostValues = 400_000;

/** Stands for moves, which are not read here; a list that the schema accepts. */
const anyMoves = [{ note: "" }];

interface Outline {
  readonly scanner: Scanner;
  /** Bytes of moves so far, which do not count. */
  skipped: number;
  values: number;
}

/** Where a value stands, as far as that decides which list is that of moves. */
type Role = "job" | "operations" | "operation" | "moves" | "other";

/**
 * Reads the head: all of the job but the content of `moves`, whose span is kept.
 *
 * @returns undefined after a fault of form
 */
export function readTree(scanner: Scanner): Tree | undefined {
  const outline: Outline = { scanner, skipped: 0, values: 0 };
  bound(outline);
  const tree = readValue(outline, "job", 0);
  if (scanner.failed) return undefined;
  if (peek(scanner) !== 0 || scanner.limit < scanner.source.size) expected(scanner, "the end of the job");
  return scanner.failed ? undefined : tree;
}

/** Sets how far the scanner may go: no farther than the largest head reaches, moves left out. */
function bound({ scanner, skipped }: Outline): void {
  if (scanner.failed) return;
  scanner.limit = Math.min(scanner.source.size, largestHead + skipped);
  scanner.bounded = true;
}

function readValue(outline: Outline, role: Role, depth: number): Tree {
  const { scanner } = outline;
  const byte = peek(scanner);
  const offset = offsetOf(scanner);
  if (++outline.values > mostValues)
    fail(scanner, overLimit(offset, "The part of the job outside of `moves`", `${mostValues} values`));
  if (depth >= deepest && (byte === openBrace || byte === openBracket))
    fail(scanner, overLimit(offset, "The nesting of lists and objects", `${deepest} deep`));
  if (scanner.failed) return { value: undefined, offset };
  if (byte === openBrace) return readObject(outline, role, depth + 1, offset);
  if (byte === openBracket)
    return role === "moves" ? skipMoves(outline, depth, offset) : readList(outline, role, depth + 1, offset);
  if (byte === quote) return { value: scanText(scanner), offset };
  if (beginsNumber(byte)) return readDigits(scanner, offset);
  const literal = scanLiteral(scanner, "A number");
  return literal === undefined ? { value: 1, offset, digits: "1" } : { value: literal, offset };
}

function readObject(outline: Outline, role: Role, depth: number, offset: number): Tree {
  const { scanner } = outline;
  const members = new Map<string, Member>();
  // Without a prototype `__proto__` is a key like any other.
  const value = Object.create(null) as Record<string, unknown>;
  for (let more = openObject(scanner, "The job"); more; more = nextMember(scanner)) {
    const keyOffset = peek(scanner) === quote ? offsetOf(scanner) : -1;
    const key = keyOffset < 0 ? undefined : scanText(scanner);
    if (key === undefined || peek(scanner) !== colon) {
      expected(scanner, key === undefined ? "A key between quotes" : "`:`");
      break;
    }
    scanner.at++;
    const tree = readValue(outline, roleOf(role, key), depth);
    if (members.has(key)) scanner.report(repeatedKey(keyOffset, key));
    else {
      members.set(key, { keyOffset, tree });
      value[key] = tree.value;
    }
  }
  return { value, offset, members };
}

function roleOf(owner: Role, key: string): Role {
  if (owner === "job" && key === "operations") return "operations";
  return owner === "operation" && key === "moves" ? "moves" : "other";
}

function readList(outline: Outline, role: Role, depth: number, offset: number): Tree {
  const elements: Tree[] = [];
  const inner = role === "operations" ? "operation" : "other";
  for (let more = openList(outline.scanner, "The list"); more; more = nextElement(outline.scanner))
    elements.push(readValue(outline, inner, depth));
  return { value: elements.map((element) => element.value), offset, elements };
}

/** Moves may be of any size, so the bound is lifted while they are gone over. */
function skipMoves(outline: Outline, depth: number, offset: number): Tree {
  const { scanner } = outline;
  scanner.limit = scanner.source.size;
  scanner.bounded = false;
  skipNested(scanner, "`moves`", depth);
  const end = offsetOf(scanner);
  outline.skipped += end - offset;
  bound(outline);
  // What was read ahead beyond the new limit is of no harm: the limit holds for the next window.
  return { value: anyMoves, offset, end };
}

function readDigits(scanner: Scanner, offset: number): Tree {
  const digits = scanNumber(scanner, "A number");
  // A number that is not finite has been reported; 1 fits wherever a number does.
  return digits === undefined ? { value: 1, offset, digits: "1" } : { value: Number(digits), offset, digits };
}
