import type { Step } from "#base";
import { freeLetters, placeOf } from "./block.ts";
import { applyEffects } from "./effects.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { letterT } from "./letters.ts";
import { checkDigits, readWhole, textAt, wordText } from "./read-number.ts";
import { forgetFeed } from "./read-feed.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";

/** The T word: the tool that the next change takes. */
export function readToolSelection(reader: Reader): void {
  const { block, format } = reader;
  if ((freeLetters(block) & (1 << letterT)) === 0) return;
  block.used |= 1 << letterT;
  const value = readWhole(reader, letterT);
  if (value === undefined) return;
  if (format.lengthOffset?.form === "in-tool-word" && format.numbers.width.T > 1)
    selectWithOffset(reader, value);
  else {
    checkDigits(reader, letterT, value, format.numbers.width.T, "numbers.code-width.T");
    select(reader, { kind: "select-tool", tool: value });
  }
}

/** T0205 is tool 2 with length offset 5; with other digits than that it is not known which of the two is meant. */
function selectWithOffset(reader: Reader, value: number): void {
  const { format, block } = reader;
  const width = format.numbers.width.T;
  if (block.digits[letterT] !== 2 * width) {
    const reason = `has ${block.digits[letterT]} digits, and this dialect writes ${2 * width}: the tool and its length offset`;
    reader.report(findings.badNumber(placeOf(block, letterT), wordText(reader, letterT), reason));
    return;
  }
  const scale = 10 ** width;
  select(reader, { kind: "select-tool", tool: Math.floor(value / scale), offset: value % scale });
}

function select(reader: Reader, step: Extract<Step, { kind: "select-tool" }>): void {
  const { state, format, block } = reader;
  pushStep(reader, step);
  state.selections++;
  if (format.tools?.preselect !== false || state.selections < 2) return;
  const message = `${wordText(reader, letterT)} follows another tool word, and no change came between them.`;
  const fix = "Select a tool just before its change.";
  reader.report(formFindings.toolWords(placeOf(block, letterT), message, fix, "tools.preselect"));
}

/** The controller's own tool change; what it does besides is declared by the dialect. */
export function readToolChange(reader: Reader): void {
  const { slots, machine, state } = reader;
  if (slots["tool-change"] === undefined) return;
  checkOrder(reader, slots["tool-change"].at);
  checkToolBlocks(reader, slots["tool-change"].at);
  checkStaged(reader, slots["tool-change"].at);
  state.selections = 0;
  state.changes++;
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

/** Whether tool word and change code share a block. */
function checkToolBlocks(reader: Reader, change: number): void {
  const { block, format } = reader;
  const shared = (block.mask & (1 << letterT)) !== 0;
  if (format.tools === undefined || (format.tools.blocks === "together") === shared) return;
  const text = textAt(reader, change);
  const [message, fix] = shared
    ? [`${text} shares its block with the tool word.`, "Put each of them in a block of its own."]
    : [`${text} stands without the tool word.`, "Put the tool word into its block."];
  reader.report(formFindings.toolWords(block.start + change, message, fix, "tools.blocks"));
}

/** Where the changer gets the next tool ready, each change but the first takes a tool that was selected before. */
function checkStaged(reader: Reader, change: number): void {
  const { state, format, block } = reader;
  if (format.tools?.preselect !== true || state.changes === 0 || state.selections > 1) return;
  const message = `${textAt(reader, change)} takes a tool that was not selected behind the change before.`;
  const fix = "Select the next tool right after each change.";
  reader.report(formFindings.toolWords(block.start + change, message, fix, "tools.preselect"));
}
