import type { Located } from "../locate.ts";
import type { SetupSheet } from "../sheet/sheet.ts";

/** What a page shows beside the facts of the sheet. */
export interface SheetPageInput {
  readonly sheet: SetupSheet;
  readonly findings: readonly Located[];
}
