/** The motions of a program as the page shows them: three views, and which tool is drawn how. */
import Handlebars from "handlebars";
import { clean } from "../clean.ts";
import { plotDrawing } from "../plot/drawing/drawing.ts";
import { toolMark } from "../plot/drawing/style.ts";
import type { PlotTool } from "../plot/plot.ts";
import type { SheetPageInput } from "./sheet-page-input.ts";

/** Most characters of the paths: a sheet is paper, on which finer motions fall together. */
const most = 300_000;

export function backplotView(backplot: SheetPageInput["backplot"]) {
  if (backplot === undefined) return { backplot: "", drawnTools: [] };
  const { plot, packing } = backplot;
  const options = { views: ["top", "front", "side"], isAlone: false, most, id: "backplot" } as const;
  return {
    backplot: new Handlebars.SafeString(plotDrawing(plot, packing, options)),
    drawnTools: plot.head.tools.map(toolView),
  };
}

/** A tool with the line by which its cuts are drawn. */
function toolView({ number, description }: PlotTool, index: number) {
  const { ink, dashes } = toolMark(index);
  return { number, description: clean(description), ink, dashes };
}
