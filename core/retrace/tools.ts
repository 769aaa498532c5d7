import type { Report, ToolKind } from "#base";
import { isDiameterKnown, lengthText, unknownDiameter } from "#base";
import type { Tool } from "#job";
import { plainTool, toolKindsOfHoles } from "#job";
import type { ToolDraft } from "./drafts.ts";
import * as findings from "./findings.ts";
import { checkAgainstHead } from "./head-tools.ts";
import type { Said } from "./said-of-tool.ts";
import { saidOf } from "./said-of-tool.ts";
import type { Surroundings } from "./surroundings.ts";

/** A tool of the head file with its offsets, or one of the program and its comments alone. */
export function toTool(draft: ToolDraft, about: Surroundings, report: Report): Tool {
  const { number, source } = draft;
  checkLengthOffset(draft, about, report);
  if (draft.radiusOffset !== undefined && draft.radiusless >= 0)
    report(findings.radiusLeft(draft.radiusless, number));
  const said = saidOf(draft, about);
  const known = about.head?.tools.find((tool) => tool.number === number);
  if (known !== undefined) checkAgainstHead(known, draft, said, about, report);
  const made = known ?? newTool(draft, said, about, report);
  return {
    ...made,
    lengthOffset: draft.lengthOffset ?? made.lengthOffset,
    radiusOffset: draft.radiusOffset ?? made.radiusOffset,
    ...(draft.measured ? { measure: true } : {}),
    source,
  };
}

/**
 * A program without length offsets may have been run with a table that holds nothing, or something else: which one its tools get, where
 * another program selects one, is for the user to say.
 */
function checkLengthOffset(draft: ToolDraft, { offsets, head }: Surroundings, report: Report): void {
  const { number, source, lengthOffset, lengthless, measured } = draft;
  if (lengthOffset !== undefined) {
    if (lengthless >= 0) report(findings.lengthLeft(lengthless, number));
  } else if (offsets && !measured)
    report(
      head?.lengthOffsets.has(number) === true
        ? findings.lengthTaken(source, number)
        : findings.lengthUnused(source, number),
    );
}

/** The spare of a tool without a length offset has none that could be known, either, unless the head file states it. */
export function checkSpareLengths(
  spares: readonly Tool[],
  drafts: readonly ToolDraft[],
  { offsets, head }: Surroundings,
  report: Report,
): void {
  if (!offsets) return;
  for (const { number, spareFor, source } of spares) {
    const worn = drafts.find((draft) => draft.number === spareFor);
    if (worn === undefined || worn.lengthOffset !== undefined || worn.measured) continue;
    if (head?.lengthOffsets.has(number) !== true) report(findings.lengthOfSpare(source, number, worn.number));
  }
}

function newTool(
  draft: ToolDraft,
  { words, description }: Said,
  { units }: Surroundings,
  report: Report,
): Tool {
  const { number, source } = draft;
  const kind = words.kind ?? kindOf(draft);
  const diameter = words.diameter ?? unknownDiameter[units];
  const from = words.kind === undefined ? "taken from what it does" : "read from a comment";
  const said = isDiameterKnown(diameter)
    ? `${kind}, ${lengthText(diameter, units)}${words.kind === undefined ? `; its kind is ${from}, its diameter read` : ", as read"} from a comment`
    : `its diameter is not stated, so that nothing can be checked that needs it; its kind, ${kind}, is ${from}`;
  report(findings.toolGuessed(isDiameterKnown(diameter) ? "note" : "warning", source, number, said));
  return {
    ...plainTool(number, kind, diameter, source),
    description:
      description !== "" || isDiameterKnown(diameter) ? description : `${kind}, diameter not stated`,
  };
}

function kindOf({ holes, mills }: ToolDraft): ToolKind {
  const kinds = new Set([...holes].map((kind) => toolKindsOfHoles[kind]));
  return !mills && kinds.size === 1 ? [...kinds][0] : "end-mill";
}
