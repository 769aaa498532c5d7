import { nearest } from "#base";
import * as findings from "./findings.ts";
import type { ClRun } from "./state.ts";
import type { Statement } from "./statement.ts";
import { meanings, rawCodes, refusedWords, vocabulary, withoutEffect } from "./vocabulary.ts";
import { endHoles } from "./words/cycle-holes.ts";

/** Points that go on with the row of holes that is open. */
const points: readonly string[] = ["GOTO", "GODLTA"];

/** Texts that may stand anywhere. */
const remarks: readonly string[] = ["", "REMARK", "TITLES"];

/** Runs one statement: changes the state and calls actions; what is wrong is reported. */
export function interpret(run: ClRun, statement: Statement): void {
  const { word, offset } = statement;
  const { state } = run;
  if (remarks.includes(word)) {
    if (word !== "") meanings[word](run, statement);
    return;
  }
  if (!isOpen(run, statement)) return;
  if (!points.includes(word)) endHoles(run, offset);
  if (Object.hasOwn(meanings, word)) meanings[word](run, statement);
  else if (withoutEffect.includes(word)) run.withoutEffect.add(word);
  else if (Object.hasOwn(refusedWords, word))
    run.report(findings.withoutCounterpart(offset, word, refusedWords[word]));
  else {
    const found = rawCodes.includes(word)
      ? findings.rawCode(offset, word)
      : findings.unknownWord(offset, word, nearest(word, vocabulary));
    run.report(run.options.unknown === "warn" ? findings.skipped(found) : found);
    // Whatever it was, an arc does not wait for its end behind it.
    state.circle = undefined;
  }
}

/** Whether a statement may stand here: nothing follows FINI, and no motion END. */
function isOpen({ state, report }: ClRun, { word, offset }: Statement): boolean {
  if (state.ended === "no" || (state.ended === "section" && word === "FINI")) return true;
  report(findings.behindEnd(offset, word, state.ended === "source" ? "FINI" : "END"));
  return false;
}
