import { forgetFeed } from "./read-feed.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";
import { losePlace } from "./state.ts";

/** A stop, an optional stop or the end of the program: last of all in its block (NISTIR 6556 Table 8). */
export function readStop(reader: Reader): void {
  const { slots, state } = reader;
  const meaning = slots.stop?.meaning;
  if (meaning?.kind === "end") {
    pushStep(reader, { kind: "program-end" });
    state.phase = "ended";
  }
  if (meaning?.kind !== "stop") return;
  const isMarked = reader.block.careful && reader.block.optionalStop;
  pushStep(reader, { kind: "pause", optional: meaning.optional || isMarked });
  state.motionForgotten = true;
  forgetFeed(reader);
  // The operator may move the machine by hand meanwhile.
  losePlace(state, 63);
}
