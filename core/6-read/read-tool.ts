import type { Step } from "#base";
import { freeLetters, placeOf } from "./block.ts";
import { applyEffects } from "./effects.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { letterN, letterT } from "./letters.ts";
import { readWhole, textAt, wordText } from "./read-number.ts";
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
  checkNamed(reader);
  if (format.lengthOffset?.form === "in-tool-word" && format.numbers.width.T > 1)
    selectWithOffset(reader, value);
  else select(reader, { kind: "select-tool", tool: value });
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
  const { empty } = format.tools ?? {};
  if (step.tool === 0 && empty !== 0) {
    const reason = "is no tool, and this dialect has no tool word that empties the spindle";
    reader.report(findings.badNumber(placeOf(block, letterT), wordText(reader, letterT), reason));
    return;
  }
  pushStep(reader, step.tool === empty ? { ...step, tool: 0 } : step);
  state.selections++;
  state.selected = step.tool;
  if (format.tools?.changedBy === "tool-word") {
    checkAlone(reader);
    changeTool(reader, placeOf(block, letterT));
    return;
  }
  if (format.tools?.preselect !== false || state.selections < 2) return;
  const message = `${wordText(reader, letterT)} follows another tool word, and no change came between them.`;
  const fix = "Select a tool just before its change.";
  reader.report(formFindings.toolWords(placeOf(block, letterT), message, fix, "tools.preselect"));
}

/** The controller's own tool change; what it does besides is declared by the dialect. */
export function readToolChange(reader: Reader): void {
  const { slots, block } = reader;
  if (slots["tool-change"] === undefined) return;
  const { at } = slots["tool-change"];
  checkOrder(reader, at);
  checkToolBlocks(reader, at);
  checkStaged(reader, at);
  changeTool(reader, block.start + at);
}

function changeTool(reader: Reader, place: number): void {
  const { machine, state } = reader;
  checkCancelled(reader, place);
  state.selections = 0;
  state.tool = state.selected;
  state.changes++;
  pushStep(reader, { kind: "change-tool" });
  state.motionForgotten = true;
  forgetFeed(reader);
  applyEffects(reader, machine.changeEffects);
}

/** Where compensation and cycles are cancelled anew before each swap, both must have been since the swap before. */
export function checkCancelled(reader: Reader, place: number): void {
  const { state, format } = reader;
  const { codes } = format;
  if (format.cancelsBeforeChange) {
    const missing = [
      ...(codes.compensation.off && !state.cancelledAnew.has("compensation") ? ["compensation off"] : []),
      ...(codes.modes.cycle.off && !state.cancelledAnew.has("cycle") ? ["cycles off"] : []),
    ];
    if (missing.length > 0) reader.report(formFindings.notCancelled(place, missing.join(" and ")));
  }
  state.cancelledAnew.clear();
}

/** The tool word is said where the dialect names tools by it, and nowhere else. */
function checkNamed(reader: Reader): void {
  const { format, block } = reader;
  if (format.tools?.named !== false) return;
  const message = `${wordText(reader, letterT)} is a tool word; this dialect names the tool in the message to the operator.`;
  const fix = "Take it out, and say LOAD TOOL and its number in the message.";
  reader.report(formFindings.toolWords(placeOf(block, letterT), message, fix, "tools.in-operator-swap"));
}

/** A tool word that changes the tool shares its block with nothing: what else stands there may act before it or behind. */
function checkAlone(reader: Reader): void {
  const { block } = reader;
  const others = block.mask & ~((1 << letterT) | (1 << letterN));
  if (others === 0 && block.gCount === 0 && block.mCount === 0) return;
  const message = `${wordText(reader, letterT)} changes the tool and shares its block with other words.`;
  const fix = "Put the tool word in a block of its own.";
  reader.report(formFindings.toolWords(placeOf(block, letterT), message, fix, "tools.change"));
}

/** The tool that the message before a stop asks for, where no tool word names it. */
export function readToolAsked(reader: Reader): void {
  const { format, machine, state } = reader;
  const asked = state.messages;
  if (format.tools?.named !== false || machine.swap !== "operator") return;
  const [, number] = /^LOAD TOOL (\d{1,9})\b/.exec(messagesNow(reader) ? asked.text : "") ?? [];
  if (number !== undefined) pushStep(reader, { kind: "select-tool", tool: Number(number) });
}

/** Whether the messages read last stand directly before what is read now. */
function messagesNow(reader: Reader): boolean {
  return reader.state.messages.rows === reader.rowsBefore + reader.batch.count;
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
