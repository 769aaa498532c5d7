import type { Located } from "../locate.ts";
import type { Packing, Plot } from "../plot/plot.ts";
import type { SetupSheet } from "../sheet/sheet.ts";

/** What a page shows beside the facts of the sheet. */
export interface SheetPageInput {
  readonly sheet: SetupSheet;
  readonly findings: readonly Located[];
  /** The motions of the program, drawn where there are some. */
  readonly backplot?: { readonly plot: Plot; readonly packing: Packing };
}
