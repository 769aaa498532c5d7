import { forgetFeed } from "./read-feed.ts";
import { checkCancelled, readToolAsked } from "./read-tool.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";
import { losePlace } from "./state.ts";

/** A stop, an optional stop or the end of the program: last of all in its block (NISTIR 6556 Table 8). */
export function readStop(reader: Reader): void {
  const { slots, state, machine } = reader;
  const meaning = slots.stop?.meaning;
  if (meaning?.kind === "end") {
    pushStep(reader, { kind: "program-end" });
    state.phase = "ended";
  }
  if (meaning?.kind !== "stop") return;
  if (!meaning.optional) readToolAsked(reader);
  if (machine.swap === "operator" && state.selections > 0) checkCancelled(reader, reader.block.start);
  pushStep(reader, { kind: "pause", optional: meaning.optional });
  // The operator puts in the tool that was selected.
  if (machine.swap === "operator") {
    state.selections = 0;
    state.tool = state.selected;
  }
  state.motionForgotten = true;
  forgetFeed(reader);
  // The operator may move the machine by hand meanwhile.
  losePlace(state, 63);
}
