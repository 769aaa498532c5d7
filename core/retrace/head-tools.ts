import type { Report, ToolKind } from "#base";
import { isDiameterKnown, lengthText } from "#base";
import type { Tool } from "#job";
import type { ToolDraft } from "./drafts.ts";
import * as findings from "./findings.ts";
import type { Said } from "./said-of-tool.ts";
import type { Surroundings } from "./surroundings.ts";

/** Half of a thousandth of an inch, by which rounding alone may part two diameters: atoms. */
const rounding = 127_000;

/** Kinds that people call mills or cutters. */
const mills: ReadonlySet<ToolKind> = new Set([
  "end-mill",
  "ball-mill",
  "bull-nose",
  "face-mill",
  "thread-mill",
  "chamfer",
  "v-bit",
  "engraver",
]);

/** Tells where a tool of the head file is another than the program says. The head file counts, but for offsets that the program selects. */
export function checkAgainstHead(
  known: Tool,
  { lengthOffset, source }: ToolDraft,
  { comment, words }: Said,
  { units, head, headLine }: Surroundings,
  report: Report,
): void {
  const { number, diameter, kind } = known;
  const line = headLine(known.source);
  const differ = (offset: number, inHead: string, here: string): void =>
    void report(findings.toolDiffers(offset, number, inHead, line, here));
  const at = comment?.offset ?? 0;
  const isOther = isDiameterKnown(diameter) && Math.abs((words.diameter ?? diameter) - diameter) > rounding;
  if (isOther && words.diameter !== undefined)
    differ(at, lengthText(diameter, units), lengthText(words.diameter, units));
  if (words.kind !== undefined && words.kind !== kind && !(words.anyMill && mills.has(kind)))
    differ(at, kind, words.kind);
  const { lengthOffsets } = head ?? {};
  if (
    lengthOffset !== undefined &&
    lengthOffset !== known.lengthOffset &&
    lengthOffsets?.has(number) === true
  )
    report(findings.lengthOtherwise(source, number, known.lengthOffset, line, lengthOffset));
}
