import type { Format } from "#dialect";
import { add, call, differs, func, get, not, run, set, str, variable, when } from "./builders.ts";
import type { FunctionDeclaration, Statement } from "./builders.ts";
import type { Context } from "./context.ts";
import { settled, tracing, writing } from "./words.ts";

/** Whether the text shows where a section begins. */
export function marksSections({ blockNumber, blankLines, sections }: Format): boolean {
  return (
    blankLines === "between-sections" || sections.comments || numbersSections(blockNumber, sections.mark)
  );
}

/** Whether the block number of a section's first block differs from others: it is the only one, or has a mark of its own. */
export function numbersSections(
  blockNumber: Format["blockNumber"],
  mark: Format["sections"]["mark"],
): boolean {
  return blockNumber !== null && (blockNumber.on === "sections" || mark === ":");
}

/** What stands before the first block of a section, and what that block is to have. A fragment has no sections. */
export function defineSection(context: Context): FunctionDeclaration[] {
  const { format } = context;
  if (!marksSections(format)) return [];
  const { blockNumber, blankLines, sections } = format;
  const marks = numbersSections(blockNumber, sections.mark) ? [set(get("state", "opening"), true)] : [];
  const blank = blankLines === "between-sections" ? blankLine(context) : [];
  const named = run(call("writeComment", "state", add(str("SECTION "), "text")));
  const comment = sections.comments ? [when(differs("text", str("")), [named])] : [];
  return [
    func(
      "beginSection",
      ["state", "text"],
      [settled(), when(not(get("state", "fragment")), [...marks, ...blank, ...comment])],
    ),
  ];
}

function blankLine(context: Context): Statement[] {
  return [
    variable("at", get("state", "at")),
    ...tracing(context, "file.blank-lines"),
    writing(context.format.lineEnd),
    set(get("state", "at"), "at"),
  ];
}
