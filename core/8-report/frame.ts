import type { Quote } from "./quote.ts";
import { clean } from "./clean.ts";
import { length } from "./wrap.ts";

/** A quoted line laid out for a width: the text, and how many characters stand before the place in it. */
export interface Frame {
  readonly text: string;
  readonly caret: number;
}

const more = "…";

/**
 * Cuts a quoted line to a width so that the place stays in sight, with two thirds of the width before it where the line
 * is long on both sides: `…3 ], [ 12.5, 40.2, -1 ], [ 13, 4…`.
 *
 * @param width in characters, at least 10
 */
export function frameQuote(quote: Quote, width: number): Frame {
  const before = [...clean(quote.before)];
  const after = [...clean(quote.after)];
  const indented = quote.cutLeft ? 0 : before.findIndex((character) => character !== " ");
  const blanks = indented < 0 ? before.length : indented;
  const left = before.slice(blanks);
  const keepLeft = Math.min(left.length, Math.max(Math.floor((width * 2) / 3), width - after.length - 2));
  const cutLeft = quote.cutLeft || keepLeft < left.length;
  const head = (cutLeft ? more : "") + left.slice(left.length - keepLeft).join("");
  const room = width - length(head);
  const cutRight = quote.cutRight || after.length > room;
  const tail = after.slice(0, cutRight ? Math.max(0, room - 1) : room).join("") + (cutRight ? more : "");
  return { text: (head + tail).trimEnd(), caret: length(head) };
}
