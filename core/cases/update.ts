import { isMap, isScalar, isSeq, parseDocument, stringify } from "yaml";
import type { ParsedNode, YAMLSeq } from "yaml";

/** New blocks for a case, by its place in the list. */
export interface NewBlocks {
  readonly index: number;
  readonly blocks: readonly string[];
}

/** A part of the text, characters, and what takes its place. */
interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/**
 * Puts new blocks in the place of those that cases expect. Everything else stays as it is, to the last character: comments,
 * layout, and the blocks that have not changed.
 *
 * @param text a dialect file with `cases`, or a file of cases, that has been read without findings
 */
export function withNewBlocks(text: string, updates: readonly NewBlocks[]): string {
  const document = parseDocument(text, { version: "1.2", keepSourceTokens: true });
  const cases = isMap(document.contents) ? document.contents.get("cases", true) : undefined;
  if (!isSeq(cases)) throw new Error("a file of cases without cases was to be updated");
  const edits = updates.flatMap(({ index, blocks }) => {
    const one = cases.items[index];
    const list = isMap(one) ? one.get("expect", true) : undefined;
    if (!isSeq(list)) throw new Error(`case ${String(index + 1)} has no blocks to update`);
    return editsOf(text, list as YAMLSeq<ParsedNode>, blocks);
  });
  edits.sort((one, other) => other.from - one.from);
  return edits.reduce((all, { from, to, text: put }) => all.slice(0, from) + put + all.slice(to), text);
}

function editsOf(text: string, list: YAMLSeq<ParsedNode>, blocks: readonly string[]): Edit[] {
  const { items } = list;
  const kept = Math.min(items.length, blocks.length);
  const changed = items.slice(0, kept).flatMap((item, index) => {
    const old = isScalar(item) ? String(item.value) : "";
    if (old === blocks[index]) return [];
    const [from, to] = item.range;
    return [{ from, to, text: quotedLike(item, blocks[index], list.flow === true) }];
  });
  if (items.length === blocks.length) return changed;
  if (list.flow === true) return [...changed, ...flowEdits(text, list, blocks, kept)];
  return [...changed, ...blockEdits(text, list, blocks, kept)];
}

/** `[A, B]`: what is too much goes from behind the last that stays up to the bracket; what is new comes there. */
function flowEdits(text: string, list: YAMLSeq<ParsedNode>, blocks: readonly string[], kept: number): Edit[] {
  const { items } = list;
  const last = items[kept - 1];
  const added = blocks.slice(kept).map((block) => quotedLike(items.at(-1), block, true));
  const close = list.range?.[1] ?? 0;
  const bracket = text.lastIndexOf("]", close - 1);
  if (last === undefined) return [{ from: (list.range?.[0] ?? 0) + 1, to: bracket, text: added.join(", ") }];
  const from = last.range[1];
  const to = blocks.length < items.length ? items[items.length - 1].range[1] : from;
  return [{ from, to, text: added.map((block) => `, ${block}`).join("") }];
}

/** A list with an item on each line: whole lines go or come behind the last that stays. */
function blockEdits(
  text: string,
  list: YAMLSeq<ParsedNode>,
  blocks: readonly string[],
  kept: number,
): Edit[] {
  const { items } = list;
  const [first] = items;
  const dash = text.lastIndexOf("-", first.range[0]);
  const indent = text.slice(text.lastIndexOf("\n", dash) + 1, dash);
  const anchor = items[kept - 1];
  // A list in lines that is left with none becomes an empty list in brackets, where its first dash stood.
  if (anchor === undefined) return [{ from: dash, to: items[items.length - 1].range[1], text: "[]" }];
  const from = lineEnd(text, anchor.range[1]);
  const to = blocks.length < items.length ? lineEnd(text, items[items.length - 1].range[1]) : from;
  const lines = blocks
    .slice(kept)
    .map(
      (block) =>
        `\n${/^\s*$/.test(indent) ? indent : " ".repeat(indent.length)}- ${quotedLike(first, block, false)}`,
    );
  return [{ from, to, text: lines.join("") }];
}

function lineEnd(text: string, from: number): number {
  const end = text.indexOf("\n", from);
  return end < 0 ? text.length : end;
}

/** A block in quotes as the one before it was, or bare where that reads as the same text. */
function quotedLike(before: ParsedNode | undefined, block: string, inFlow: boolean): string {
  const type = isScalar(before) ? before.type : "PLAIN";
  if (type === "QUOTE_SINGLE") return `'${block.replaceAll("'", "''")}'`;
  if (type !== "PLAIN") return JSON.stringify(block);
  const plain = stringify(block, { lineWidth: 0, version: "1.2" }).trimEnd();
  return plain === block && !(inFlow && /[[\]{},]/.test(block)) ? block : JSON.stringify(block);
}
