import type { Packing, Plot } from "../plot.ts";

/**
 * The page of a plot: HTML that stands alone, without network, with the motions and the listing packed in it. It comes in pieces,
 * so that a long program is never one text. Loads the template parser and the page's script, which no other report does.
 */
export async function plotPage(plot: Plot, packing: Pick<Packing, "inflate">): Promise<Iterable<string>> {
  const { renderPage } = await import("./render.ts");
  return renderPage(plot, packing);
}
