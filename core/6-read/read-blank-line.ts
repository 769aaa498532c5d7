import * as formFindings from "./findings-form.ts";
import type { Reader } from "./reader.ts";

/**
 * Counts the blank lines before the first line, and says once it is there whether they are as many as this dialect has. A
 * dialect without any passes over them as over others.
 */
export function readLeader(reader: Reader): void {
  const { block, state, format, fragment } = reader;
  if (state.leader === undefined) return;
  if (block.careful && block.line === "blank") {
    state.leader++;
    return;
  }
  const found = state.leader;
  state.leader = undefined;
  const passesOver = format.leader === 0 && format.blankLines !== "none";
  if (fragment || found === format.leader || passesOver) return;
  const message = `${found} blank lines stand before the program; this dialect has ${format.leader}.`;
  reader.report(formFindings.framing(block.start, message, "Put as many there.", "file.leader"));
}

/** A blank line inside the program, behind its leader. */
export function readBlankLine(reader: Reader): void {
  const { block, state, format, fragment } = reader;
  state.section.blank = state.section.opens = true;
  if (state.leader !== undefined || format.blankLines !== "none" || fragment || state.phase === "ended")
    return;
  const message = "A blank line, which this controller takes for the end of the program.";
  reader.report(formFindings.framing(block.start, message, "Take it out.", "file.blank-lines"));
}
