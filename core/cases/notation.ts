import type { Report } from "#base";
import type { Case } from "./case.ts";
import type { Cursor } from "./cursor.ts";
import { endOf, isNotationFault, oneOf, openStep } from "./cursor.ts";
import { motions } from "./motion-notation.ts";
import type { Sequence } from "./sequence.ts";
import { isFull, pushStep, startSequence } from "./sequence.ts";
import { steps } from "./step-notation.ts";

/** First words of the notation: those of motions, then those of other steps. */
export const firstWords = [...Object.keys(motions), ...Object.keys(steps)] as (
  keyof typeof motions | keyof typeof steps
)[];

/**
 * Reads the steps of a case.
 *
 *     [rapid x10 y5, line z-2 feed 300] -> two rows
 *
 * @param file the name of the file, for findings
 * @returns undefined after a finding, rule dialect/case, at the word that is wrong
 */
export function readSteps(
  one: Case,
  file: string,
  dialect: Pick<Sequence, "capabilities" | "machine">,
  report: Report,
): Sequence | undefined {
  const sequence = startSequence(one.units, dialect);
  let failed = false;
  for (const [index, text] of one.given.entries()) {
    const cursor = openStep(text, { file, units: one.units, index }, report);
    try {
      readStep(cursor, sequence);
    } catch (error) {
      if (!isNotationFault(error)) throw error;
      failed = true;
    }
  }
  return failed ? undefined : sequence;
}

function readStep(cursor: Cursor, sequence: Sequence): void {
  const first = cursor.peek();
  const name = oneOf(cursor, firstWords, "step");
  if (first === undefined) return;
  if (isFull(sequence)) cursor.fail(first, "A case has too many steps.", "Make two of it.");
  if (name in motions) return motions[name as keyof typeof motions](cursor, sequence, first);
  const made = steps[name as keyof typeof steps](cursor, sequence, first);
  endOf(cursor, "");
  for (const step of made) pushStep(sequence, step, cursor.index);
}
