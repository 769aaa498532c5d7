import type { Report } from "#base";
import * as findings from "./findings-flow.ts";
import type { FlowLine, FlowWords } from "./flow-line.ts";
import { flowLineAt } from "./flow-line.ts";
import type { PlacedLine } from "./structures.ts";
import type { Text } from "./text.ts";
import { lineEnd, linesFrom } from "./text.ts";

/** The most lines that decide which is next: what is kept of a text must not grow with it. */
const mostLines = 100_000;

/** A line by its places in the text, and its parts by their places in the line. */
function placed(line: FlowLine, at: number, base: number, next: number): PlacedLine {
  return {
    ...line,
    labelAt: line.labelAt - at,
    behind: line.behind - at,
    offset: base + at,
    next: base + next,
    structure: undefined,
  };
}

/**
 * Lists the lines that decide which is next, from an offset on to the end of the text.
 *
 * @returns undefined where there are more than are kept, which is reported
 */
export function indexLines(
  text: Text,
  from: number,
  words: FlowWords,
  report: Report,
): PlacedLine[] | undefined {
  const found: PlacedLine[] = [];
  let offset = from;
  for (let region = linesFrom(text, offset); region; region = linesFrom(text, offset)) {
    const { bytes, to, base } = region;
    let at = region.from;
    while (at < to) {
      const { end, next } = lineEnd(bytes, at, to);
      const line = flowLineAt(bytes, at, end, words);
      if (line) found.push(placed(line, at, base, next));
      at = next;
    }
    if (found.length > mostLines) {
      report(findings.tooManySteps(from, `${String(mostLines)} lines with O words`));
      return undefined;
    }
    offset = base + to;
  }
  return found;
}
