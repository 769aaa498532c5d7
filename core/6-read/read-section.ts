import type { Batch } from "#base";
import { frame, rowKind } from "#base";
import type { Format } from "#dialect";
import * as formFindings from "./findings-form.ts";
import { letterN } from "./letters.ts";
import type { Reader } from "./reader.ts";

/**
 * A section begins where the dialect's mark of one stands. It is no step; the rows carry it, so that a program that is written
 * anew has it, too.
 */
export function markSection({ block, format, state, batch, fragment }: Reader): void {
  const { blockNumber, blankLines, sections } = format;
  const isNumbered = blockNumber?.on === "sections" && (block.mask & (1 << letterN)) !== 0;
  const isAligned = sections.mark === ":" && block.careful && block.aligned;
  const isParted = blankLines === "between-sections" && state.section.opens;
  state.section.opens = false;
  if (fragment || !(isNumbered || isAligned || isParted)) return;
  batch.sections.push(batch.count);
  batch.sectionNames.push("");
  expectModes(state.section, format);
}

/** From here on a section is to state its modes before it cuts. */
function expectModes(section: Reader["state"]["section"], format: Format): void {
  section.due = format.sections.modes === "restated";
  section.stated.clear();
}

/** Notes the modes that a section states, and says at its first cut which of them it lacks. */
export function checkSectionModes(reader: Reader, rowsBefore: number): void {
  const { state, slots, filled, batch, format, block } = reader;
  const { section } = state;
  if (!section.due) return;
  for (const group of filled) {
    const meaning = slots[group]?.meaning;
    if (meaning) section.stated.add(meaning.kind === "mode" ? meaning.step.kind : meaning.kind);
  }
  if (!cuts(batch, rowsBefore)) return;
  section.due = false;
  const missing = modesOf(format).filter((mode) => !section.stated.has(mode));
  if (missing.length === 0) return;
  const message = `The section cuts before it has stated ${missing.join(", ")}; this dialect restates all modes in each.`;
  reader.report(
    formFindings.section(block.start, message, "State them at its start.", "blocks.sections.modes"),
  );
}

function cuts(batch: Batch, from: number): boolean {
  for (let row = from; row < batch.count; row++)
    if (
      batch.frame[row] === frame.work &&
      batch.kind[row] !== rowKind.aside &&
      batch.kind[row] !== rowKind.rapid
    )
      return true;
  return false;
}

/** The modes that a section can state under this dialect. */
function modesOf({ codes, unitsStated }: Format): string[] {
  const has = (values: object): boolean => Object.values(values).some(Boolean);
  const kinds = ["units", "plane", "distance", "feed-mode", "arc-centre", "overrides", "cycle", "local-shift", "rotation", "scale"] as const; // prettier-ignore
  const modes = kinds.filter((kind) => has(codes.modes[kind]));
  return [
    ...modes.filter((kind) => kind !== "units" || unitsStated === "with-modes"),
    ...(codes.compensation.off ? ["compensation"] : []),
  ];
}

/**
 * How the first blocks of sections are marked. The program does not say where a section begins, but a tool change lies in
 * one of its own, and no section is a single block but in a job that leaves an operation without motion.
 */
export function checkSections(reader: Reader, rowsBefore: number): void {
  const { block, format, state, slots } = reader;
  const { blockNumber, sections } = format;
  const isNumbered = (block.mask & (1 << letterN)) !== 0;
  const isAligned = block.careful && block.aligned;
  if (isNumbered && blockNumber?.on === "sections") checkNumbered(reader, rowsBefore, isAligned);
  if (isAligned) checkAligned(reader, rowsBefore);
  const { section } = state;
  section.commented ||= block.careful && block.commentAt >= 0;
  section.numbered ||= isNumbered;
  section.aligned ||= isAligned;
  checkSectionModes(reader, rowsBefore);
  if (!slots["tool-change"]) return;
  if (blockNumber?.on === "sections" && !section.numbered)
    tell(reader, "has no block number", "blocks.number");
  if (blockNumber !== null && sections.mark === ":" && !section.aligned)
    tell(reader, "is not marked with a colon", "blocks.sections.mark");
  if (format.blankLines === "between-sections" && !section.blank)
    tell(reader, "has no blank line before it", "file.blank-lines");
  if (format.sections.comments && !section.commented)
    tell(reader, "has no comment before it", "blocks.sections.comments");
  section.numbered = section.aligned = section.blank = section.commented = false;
  expectModes(section, format);
  section.changed = true;
}

/** A section that a tool change begins has that change in it: seen at the next section, and at the end of the program. */
export function checkLastSection({ state, format, machine, report }: Reader, offset: number): void {
  const { numbered, changed } = state.section;
  const begins = format.sections.beginAt === "tool" && format.blockNumber?.on === "sections";
  if (!begins || !numbered || !changed || machine.swap !== "controller") return;
  report(
    formFindings.section(
      offset,
      "A section without a tool change lies before this; this dialect begins one at a tool change alone.",
      "Take its block number off.",
      "blocks.sections.begin-at",
    ),
  );
}

/** Under "sections" a block behind a numbered one has no number. */
function checkNumbered(reader: Reader, rowsBefore: number, isAligned: boolean): void {
  const { block, format, state, batch, rowsBefore: before } = reader;
  const place = block.start + block.at[letterN];
  checkLastSection(reader, place);
  if (state.numberedRows === before + rowsBefore)
    reader.report(
      formFindings.section(
        place,
        "Two blocks in a row have a block number; this dialect numbers the first block of a section alone.",
        "Take the number off the second.",
        "blocks.number",
      ),
    );
  state.numberedRows = before + batch.count;
  if (format.sections.mark === ":" && !isAligned)
    reader.report(
      formFindings.section(
        place,
        "The number of a section begins with N; this dialect has a colon.",
        "Put a colon in its place.",
        "blocks.sections.mark",
      ),
    );
}

function checkAligned(reader: Reader, rowsBefore: number): void {
  const { block, state, batch, rowsBefore: before } = reader;
  if (state.alignedRows === before + rowsBefore)
    reader.report(
      formFindings.section(
        block.start,
        "Two blocks in a row begin with a colon, which marks the first block of a section.",
        "Begin the second with N.",
        "blocks.sections.mark",
      ),
    );
  state.alignedRows = before + batch.count;
}

function tell(reader: Reader, what: string, key: string): void {
  const message = `The section with this tool change ${what}.`;
  reader.report(formFindings.section(reader.block.start, message, "Mark its first block.", key));
}
