import type { BlockPair, CaseResult, Piece } from "#cases";
import type { Layout, Reportable } from "#report";
import { clean, hang } from "#report";

const column = 9;

/** What a run of cases says: each that failed with what differs, word by word, then how many passed. */
export function casesText(results: readonly CaseResult[], { summary }: Reportable, layout: Layout): string[] {
  const failed = results.filter(({ passed }) => !passed);
  const { paint, width } = layout;
  const tally = `${String(results.length - failed.length)} of ${String(results.length)} cases pass`;
  const rewritten = (summary["rewritten"] as readonly string[] | undefined) ?? [];
  return [
    ...failed.flatMap((result) => failedText(result, layout)),
    ...(failed.length > 0 ? [legend, ""] : []),
    `${paint(failed.length === 0 ? "good" : "error", "cases".padEnd(column))}${tally}`,
    ...(rewritten.length === 0
      ? []
      : hang(
          "".padEnd(column),
          `rewritten with what is written now: ${rewritten.map(clean).join(", ")}`,
          width,
        )),
  ];
}

const legend = "  - expected, and [-what is only there-]; + written, and {+what is only there+}";

/**
 * A case that failed:
 *
 *     failed   arcs
 *                G00 X10. Y5.
 *              - G02 X20. I[-5.-]
 *              + G02 X20. I{+15.+}
 */
function failedText({ name, difference }: CaseResult, { paint }: Layout): string[] {
  const margin = "".padEnd(column);
  const lines = difference.flatMap((pair) => pairLines(pair).map((line) => margin + clean(line)));
  return [`${paint("error", "failed".padEnd(column))}${clean(name)}`, ...lines, ""];
}

function pairLines({ expected, written, pieces }: BlockPair): string[] {
  if (pieces.length === 0) return [`  ${expected ?? ""}`];
  return [
    ...(expected === undefined ? [] : [`- ${marked(pieces, "expected", "[-", "-]", written === undefined)}`]),
    ...(written === undefined ? [] : [`+ ${marked(pieces, "written", "{+", "+}", expected === undefined)}`]),
  ];
}

/** One side of a pair, with marks round what the other has not; a block that stands alone needs none. */
function marked(
  pieces: readonly Piece[],
  side: Piece["side"],
  open: string,
  close: string,
  alone: boolean,
): string {
  return pieces
    .filter((piece) => piece.side === "both" || piece.side === side)
    .map(({ side: own, text }) => (own === "both" || alone ? text : `${open}${text}${close}`))
    .join("");
}
