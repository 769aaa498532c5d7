import { plotCautions } from "./cautions.ts";
import { clean } from "./clean.ts";
import type { Reportable } from "./outcome.ts";
import type { PlotHead } from "./plot/plot.ts";
import { placeText } from "./plot/plot.ts";
import type { Layout } from "./text-findings.ts";
import { row } from "./row.ts";
import { bullets } from "./text-result.ts";

/** What `plot` tells of a picture in the summary of its result. */
export type PlotSummary = Pick<PlotHead, "shows" | "counts" | "remarks"> & {
  readonly cut: PlotHead["cut"] | null;
};

/** What `plot` says: where the picture stands, what it is of, what it leaves out, and the cautions. */
export function plotText({ output, summary }: Reportable, layout: Layout): string[] {
  const told = summary["plot"] as PlotSummary | undefined;
  if (told === undefined) return [];
  const { shows, counts, cut, remarks } = told;
  const { dialect, units = "mm" } = summary;
  const program = `the program for ${clean(dialect ?? "")}`;
  const shown = {
    proved: `${program}, ${layout.paint("good", "proved")}`,
    unproved: `${program}, ${layout.paint("error", "NOT PROVED")}: it must not run`,
    job:
      dialect === undefined
        ? "the job alone, not a program"
        : `${layout.paint("error", "NOT PROVED")}: no program for ${clean(dialect)}, the job alone`,
  }[shows];
  const { lines, arcs, holes, rapids } = counts;
  const cuts =
    cut === null || cut === undefined
      ? []
      : row(
          "cuts",
          [..."XYZ"]
            .map((axis, at) => `${axis} ${placeText(cut.min[at], units)} to ${placeText(cut.max[at], units)}`)
            .join(", "),
          layout,
        );
  return [
    ...row("picture", output === undefined ? "not written" : clean(output), { ...layout, width: Infinity }),
    ...row("of", shown, { ...layout, width: Infinity }),
    ...row("holds", `${lines} lines, ${arcs} arcs, ${holes} holes, ${rapids} rapids`, layout),
    ...cuts,
    ...(remarks.length === 0 ? [] : ["", ...bullets(remarks, layout)]),
    "",
    layout.paint("warning", "Before anything runs"),
    ...bullets(plotCautions, layout),
  ];
}
