import { example, remark } from "./findings.ts";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";

/**
 * Puts a message to the operator in its place, in the characters that the dialect can write. A text that is longer than a
 * comment may be becomes several messages, cut between words: the end of an instruction is not to be lost.
 */
export function putMessage(run: Run, text: string): void {
  const { cleanText } = run.request;
  for (const piece of piecesOf(text, cleanText)) {
    const clean = cleanText(piece);
    if (clean !== "") put(run, { kind: "message", text: clean });
  }
}

/** A text in pieces that are each short enough for the dialect. */
function piecesOf(text: string, cleanText: (text: string) => string): readonly string[] {
  // What is too long is cut off at its end, so that one more letter makes no difference.
  const fits = (piece: string): boolean => cleanText(`${piece}X`).length > cleanText(piece).length;
  const pieces: string[] = [];
  let piece = "";
  for (const word of text.split(/\s+/)) {
    const longer = piece === "" ? word : `${piece} ${word}`;
    if (piece === "" || fits(longer)) piece = longer;
    else {
      pieces.push(piece);
      piece = word;
    }
  }
  return [...pieces, piece];
}

/** Shows a text of the job where the dialect has messages; otherwise the report says that the program leaves it out. */
export function showText(run: Run, text: string, severity: "warning" | "note"): void {
  if (text === "") return;
  if (run.request.capabilities.words["idioms.message"] === true) {
    putMessage(run, text);
    return;
  }
  const message = `the dialect has no messages, so the program leaves out "${text}"`;
  const fix = `tell the operator in another way before the program runs, or, if the controller shows comments, declare how a message begins: \`${example("idioms.message")}\`, in a dialect with \`comments\``;
  run.report({ ...remark("lower/no-message", severity, message, run.state.source, "idioms.message"), fix });
}
