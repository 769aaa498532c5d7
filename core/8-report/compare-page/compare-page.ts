import type { CompareAnswer } from "../compare-answer.ts";

/**
 * The page of a comparison: HTML that stands alone, without script or network, and bounded however long the programs are.
 * Loads the template parser, which no other report does.
 */
export async function comparePage(answer: CompareAnswer): Promise<string> {
  const { renderPage } = await import("./render.ts");
  return renderPage(answer);
}
