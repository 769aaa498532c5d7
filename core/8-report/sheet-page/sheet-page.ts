import type { Located } from "../locate.ts";
import type { SetupSheet } from "../sheet/sheet.ts";

/** What a page shows beside the facts of the sheet. */
export interface SheetPageInput {
  readonly sheet: SetupSheet;
  readonly findings: readonly Located[];
}

/**
 * The page of a set-up sheet: HTML that stands alone, without script or network, made to be printed on A4 or Letter paper. Loads
 * the template parser, which no other report but the comparison's page does.
 */
export async function sheetPage(input: SheetPageInput): Promise<string> {
  const { renderSheet } = await import("./render.ts");
  return renderSheet(input);
}
