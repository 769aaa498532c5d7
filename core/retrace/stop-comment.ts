import type { ByteSource } from "#base";
import type { Format } from "#dialect";
import { commentOf } from "./comments.ts";

/** Bytes looked at before and behind the place of a stop. */
const reach = 512;

/**
 * What the text says to people where the program stops: a comment in the block of the stop, `M0 (FLIP THE PART)`, or one that is all of
 * the line before it. Messages are steps and are not looked for here.
 *
 * @param offset of the stop's block, bytes
 * @returns empty where nothing is said
 */
export function commentAtStop(
  source: ByteSource,
  { lineEnd, comments }: Pick<Format, "lineEnd" | "comments">,
  offset: number,
): string {
  if (comments.style === "none") return "";
  const from = Math.max(0, offset - reach);
  const window = new Uint8Array(2 * reach);
  const length = source.read(from, window);
  const text = new TextDecoder().decode(window.subarray(0, length));
  const end = lineEnd === "\r" ? "\r" : "\n";
  const place = new TextDecoder().decode(window.subarray(0, offset - from)).length;
  const begin = text.lastIndexOf(end, place - 1) + 1;
  const stop = text.indexOf(end, place);
  const own = insideOf(text.slice(begin, stop < 0 ? undefined : stop));
  if (own !== "" || begin === 0) return own;
  return commentOf(text.slice(text.lastIndexOf(end, begin - 2) + 1, begin - 1));
}

/** The comments of a line with words, one behind the other. */
function insideOf(line: string): string {
  const [words, ...behind] = line.split(";");
  const inBrackets = [...words.matchAll(/\(([^()]*)\)/g)].map(([, text]) => text.trim());
  return [...inBrackets, behind.join(";").trim()].filter((text) => text !== "").join(" ");
}
