import * as formFindings from "./findings-form.ts";
import { textAt } from "./read-number.ts";
import { forgetFeed } from "./read-feed.ts";
import { checkCancelled, readToolAsked } from "./read-tool.ts";
import type { Reader } from "./reader.ts";
import { pushStep, rowsSoFar } from "./rows.ts";
import { losePlace } from "./state.ts";

/** A stop, an optional stop or the end of the program: last of all in its block (NISTIR 6556 Table 8). */
export function readStop(reader: Reader): void {
  const { slots, state, machine } = reader;
  const meaning = slots.stop?.meaning;
  if (meaning?.kind === "end") {
    if (!meaning.isOwn) {
      const at = slots.stop?.at ?? 0;
      reader.report(formFindings.endCode(reader.block.start + at, textAt(reader, at)));
    }
    pushStep(reader, { kind: "program-end" });
    state.phase = "ended";
  }
  if (meaning?.kind !== "stop") return;
  checkMessage(reader);
  const isMarked = reader.block.careful && reader.block.optionalStop;
  const optional = meaning.optional || isMarked;
  if (!optional) readToolAsked(reader);
  if (machine.swap === "operator" && state.selections > 0) checkCancelled(reader, reader.block.start);
  pushStep(reader, { kind: "pause", optional });
  // The operator puts in the tool that was selected.
  if (machine.swap === "operator") {
    state.selections = 0;
    state.tool = state.selected;
  }
  state.motionForgotten = true;
  forgetFeed(reader);
  if (reader.format.stops.resume === "loses-modes") loseModes(reader);
  // The operator may have said another speed.
  state.rpm = 0;
  // The operator may move the machine by hand meanwhile.
  losePlace(state, 63);
}

/** Whether the message of a stop stands in its block, or in the one before, as the dialect has it. */
function checkMessage(reader: Reader): void {
  const { block, state, format, slots } = reader;
  const shares = block.careful && block.message !== undefined;
  const follows = !shares && state.messageAt === rowsSoFar(reader);
  const withStop = format.stops.comment === "with-stop";
  if (withStop ? follows : shares)
    reader.report(formFindings.stopMessage(block.start + (slots.stop?.at ?? 0), withStop));
}

/** The control goes on with modes and offsets that nobody knows. */
function loseModes({ state }: Reader): void {
  state.modes = 0;
  state.lengthOffset = state.workOffset = undefined;
  state.cancelled.clear();
}
