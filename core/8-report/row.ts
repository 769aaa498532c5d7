import type { Layout } from "./text-findings.ts";
import { hang } from "./wrap.ts";

/** Where the text of a row begins. */
export const column = 11;

/** A line with a name before it. */
export function row(name: string, text: string, { width, paint }: Layout): string[] {
  const indent = " ".repeat(column);
  const [first, ...rest] = hang(indent, text, width);
  return [paint("label", name.padEnd(column)) + first.slice(column), ...rest];
}
