import type { Packing, Plot } from "../plot.ts";
import { plotDrawing } from "../drawing/drawing.ts";

export async function plotPage(plot: Plot, packing: Pick<Packing, "inflate">): Promise<string> {
  return Promise.resolve(plotDrawing(plot, packing));
}
