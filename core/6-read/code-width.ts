import * as formFindings from "./findings-form.ts";
import { letterName } from "./letters.ts";
import { textAt } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { firstTime } from "./reader.ts";

/** Tells once for each letter that a whole number has more or fewer digits than this dialect gives it: G1 and G01. */
export function checkWidths(reader: Reader): void {
  const { block, tables } = reader;
  for (let index = 0; index < block.wordCount; index++) {
    const letter = block.words[index];
    const width = tables.widths[letter];
    if (width === 0) continue;
    const at = block.wordsAt[index];
    const word = textAt(reader, at);
    // A number that was worked out has no digits of its own.
    if (word.length === 1) continue;
    const [whole = ""] = /\d+/.exec(word) ?? [];
    const isOdd = whole.length < width || (whole.length > width && whole.startsWith("0"));
    const key = letterName(letter) === "N" ? "blocks.number" : `numbers.code-width.${letterName(letter)}`;
    if (isOdd && firstTime(reader, key)) {
      const what = whole.length < width ? `has fewer than ${width} digits` : "begins with zeros";
      reader.report(formFindings.numberForm(block.start + at, word, what, key));
    }
  }
}
