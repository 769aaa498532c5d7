import type { SheetPageInput } from "./sheet-page-input.ts";

/**
 * The page of a set-up sheet: HTML that stands alone, without script or network, made to be printed on A4 or Letter paper. Loads
 * the template parser, which no other report but the comparison's page does.
 */
export async function sheetPage(input: SheetPageInput): Promise<string> {
  const { renderSheet } = await import("./render.ts");
  return renderSheet(input);
}
