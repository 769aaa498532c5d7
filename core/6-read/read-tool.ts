import { freeLetters, placeOf } from "./block.ts";
import { applyEffects } from "./effects.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { letterT } from "./letters.ts";
import { readWhole, textAt, wordText } from "./read-number.ts";
import { forgetFeed } from "./read-feed.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";

/** The T word: the tool that the next change takes. */
export function readToolSelection(reader: Reader): void {
  const { block } = reader;
  if ((freeLetters(block) & (1 << letterT)) === 0) return;
  block.used |= 1 << letterT;
  const value = readWhole(reader, letterT);
  if (value === undefined) return;
  const tool = toolOf(reader, value);
  if (tool !== undefined) pushStep(reader, { kind: "select-tool", tool });
}

/**
 * Where the tool word brings the length offset along, T0202 states it in as many digits again. Only the tool's own number
 * can be said there: no step has room for another.
 */
function toolOf(reader: Reader, value: number): number | undefined {
  const { format, block } = reader;
  const width = format.numbers.width.T;
  const doubled =
    format.lengthOffset?.form === "in-tool-word" && width > 1 && block.digits[letterT] === 2 * width;
  if (!doubled) return value;
  const tool = Math.floor(value / 10 ** width);
  if (value % 10 ** width === tool) return tool;
  const reason = "names a length offset that is not the tool's own";
  reader.report(findings.badNumber(placeOf(block, letterT), wordText(reader, letterT), reason));
  return undefined;
}

/** The controller's own tool change; what it does besides is declared by the dialect. */
export function readToolChange(reader: Reader): void {
  const { slots, machine, state } = reader;
  if (slots["tool-change"] === undefined) return;
  checkOrder(reader, slots["tool-change"].at);
  pushStep(reader, { kind: "change-tool" });
  state.motionForgotten = true;
  forgetFeed(reader);
  applyEffects(reader, machine.changeEffects);
}

/** Which of the two words comes first where they share a block; they act in the same order either way. */
function checkOrder(reader: Reader, change: number): void {
  const { block, format } = reader;
  if ((block.mask & (1 << letterT)) === 0 || format.tools === undefined) return;
  const tool = block.at[letterT];
  const [first, last] = format.tools.order === "select-first" ? [tool, change] : [change, tool];
  if (first > last)
    reader.report(
      formFindings.wordOrder(block.start + first, textAt(reader, first), textAt(reader, last), "tools.order"),
    );
}
