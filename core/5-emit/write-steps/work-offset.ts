import { cases, differs, get, set, when } from "../builders.ts";
import type { Case, Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { forgetPlaces } from "../write-state.ts";
import { modeBlock } from "./mode.ts";

/** The code of a work offset by its number; another offset than the last makes the place unknown. */
export function writeWorkOffset(context: Context): Statement[] {
  const { workOffsets } = context.format.codes;
  const branches = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((number): Case => ({
    of: number,
    statements: modeBlock(context, "work-offset", `work-offset.${number}`, workOffsets[number]),
  }));
  const number = get("step", "number");
  return [
    cases(number, branches, [faultOn("work-offset")]),
    when(differs(number, get("state", "workOffset")), [forgetPlaces()]),
    set(get("state", "workOffset"), number),
  ];
}
