import { atomsPerUnit, microsecondsPerSecond, milliPerRpm } from "#base";
import type { Code } from "./dialect.ts";
import type { ScalarNode, TreeNode } from "./tree.ts";
import { isNone, nodeAt } from "./tree.ts";

/*
 * Values by key path out of a tree that fits the schema. Undefined: no file of the chain states the key.
 */

/** A word, or one of an enumeration. `none` for the key itself or for the group around it gives undefined. */
export function word<T extends string = string>(tree: TreeNode, path: string): T | undefined {
  const node = scalarAt(tree, path);
  return node === undefined || isNone(node) ? undefined : (String(node.value) as T);
}

/** The same where `none` is one of the words. */
export function wordOrNone<T extends string = string>(tree: TreeNode, path: string): T | "none" | undefined {
  const node = scalarAt(tree, path);
  return node === undefined ? undefined : (String(node.value) as T | "none");
}

/** `yes` or `no`. */
export function yes(tree: TreeNode, path: string): boolean | undefined {
  const value = word(tree, path);
  return value === undefined ? undefined : value === "yes";
}

/** A plain number. */
export function number(tree: TreeNode, path: string): number | undefined {
  const node = scalarAt(tree, path);
  return node === undefined || isNone(node) ? undefined : Number(node.source);
}

/** A code such as G00, M6 or G59.1; null: the file says `none`. */
export function code(tree: TreeNode, path: string): Code | null | undefined {
  const node = scalarAt(tree, path);
  if (node === undefined) return undefined;
  const text = String(node.value).replace(/^\/(\d )?/, "");
  return isCode(text) ? parseCode(text) : null;
}

/** The block delete mark before a code, "/2 M00" -> "/2"; empty where there is none. */
export function blockDeleteMark(tree: TreeNode, path: string): string {
  return /^\/\d?/.exec(word(tree, path) ?? "")?.[0] ?? "";
}

/** Whether a text is a code; a key may also take `none`, or a word for another way to say the same. */
function isCode(text: string): boolean {
  return /^[GM]\d/.test(text);
}

/** G59.1 -> { letter: "G", value: 591 }; G54.1 P2 has a `word`, too. */
export function parseCode(text: string): Code {
  const [code = "", word = ""] = text.split(" ");
  const letter = code.startsWith("M") ? "M" : "G";
  const [whole = "", tenth = "0"] = code.slice(1).split(".");
  const parsed = { letter, value: Number(whole) * 10 + Number(tenth) } as const;
  return word === "" ? parsed : { ...parsed, word: { letter: word.charAt(0), digits: word.slice(1) } };
}

/** A length in atoms: `12.7`, `0.5 in`; a plain number is in millimetres. */
export function length(tree: TreeNode, path: string): number | undefined {
  const node = scalarAt(tree, path);
  return node === undefined || isNone(node) ? undefined : parseLength(node);
}

/** A list of lengths in atoms. */
export function lengths(tree: TreeNode, path: string): number[] | undefined {
  const node = nodeAt(tree, path);
  return node?.kind === "list" ? node.items.map((item) => parseLength(item as ScalarNode)) : undefined;
}

/** A place of three lengths in atoms. */
export function place(tree: TreeNode, path: string): [number, number, number] | undefined {
  const values = lengths(tree, path);
  return values === undefined ? undefined : [values[0], values[1], values[2]];
}

/** `12.7 mm` -> 127,000,000 atoms, from the digits as they stand. */
export function parseLength(node: ScalarNode): number {
  const [digits = "", unit = "mm"] = node.source.split(" ");
  return scaled(digits, unit === "in" ? atomsPerUnit.inch : atomsPerUnit.mm);
}

/** A feed in atoms a minute: `600`, `20 in/min`; a plain number is in mm/min. */
export function feed(tree: TreeNode, path: string): number | undefined {
  const node = scalarAt(tree, path);
  if (node === undefined || isNone(node)) return undefined;
  const [digits = "", unit = "mm/min"] = node.source.split(" ");
  return scaled(digits, unit === "in/min" ? atomsPerUnit.inch : atomsPerUnit.mm);
}

/** An acceleration in atoms a second squared: `500`, `20 in/s2`; a plain number is in mm/s2. */
export function acceleration(tree: TreeNode, path: string): number | undefined {
  const node = scalarAt(tree, path);
  if (node === undefined || isNone(node)) return undefined;
  const [digits = "", unit = "mm/s2"] = node.source.split(" ");
  return scaled(digits, unit === "in/s2" ? atomsPerUnit.inch : atomsPerUnit.mm);
}

/** A time in microseconds: `6 s`, `500 ms`. */
export function time(tree: TreeNode, path: string): number | undefined {
  const text = word(tree, path);
  return text === undefined ? undefined : parseTime(text);
}

/** `0.5 s` -> 500,000; undefined where the text is no plain time. */
export function parseTime(text: string): number | undefined {
  const [, digits, unit] = /^(\d+(?:\.\d+)?) ?(s|ms|min)$/.exec(text) ?? [];
  if (digits === undefined || unit === undefined) return undefined;
  const factor = {
    s: microsecondsPerSecond,
    ms: microsecondsPerSecond / 1000,
    min: 60 * microsecondsPerSecond,
  }[unit];
  return scaled(digits, factor!);
}

/** A spindle speed in milli-rpm; the file has rpm. */
export function speed(tree: TreeNode, path: string): number | undefined {
  const node = scalarAt(tree, path);
  return node === undefined || isNone(node) ? undefined : scaled(node.source, milliPerRpm);
}

/** Micro-degrees; the file has degrees. */
export function angle(tree: TreeNode, path: string): number | undefined {
  const node = scalarAt(tree, path);
  return node === undefined || isNone(node) ? undefined : scaled(node.source, 1_000_000);
}

/** A decimal number times a whole factor, rounded to whole base units. The schema allows no exponents. */
export function scaled(digits: string, factor: number): number {
  return Math.round(Number(digits) * factor) + 0;
}

function scalarAt(tree: TreeNode, path: string): ScalarNode | undefined {
  const node = nodeAt(tree, path);
  return node?.kind === "scalar" ? node : undefined;
}
