import { linearAxes, rotaryAxes, rowKind } from "#base";
import { rotaryTogether } from "../findings.ts";
import { readAxes } from "./axes.ts";
import type { KindOfMove } from "./kind.ts";
import { checkMoved, effectiveFeed } from "./motion.ts";
import { moveTo, pushRow } from "./rows.ts";

/** { "line": { "z": -2 }, "feed": 300 } */
export const line: KindOfMove = {
  beside: ["feed"],
  read: (reader) => readAxes(reader, "The line"),
  finish: (reader) => {
    const { words, source, valueAt } = reader.move;
    checkMoved(reader);
    // A feed in length units has no meaning for a motion that turns and goes straight at once.
    if (
      (words & rotaryAxes) !== 0 &&
      (words & linearAxes) !== 0 &&
      reader.operation.feedMode !== "inverse-time"
    )
      reader.report(rotaryTogether(valueAt));
    moveTo(reader, words);
    pushRow(reader, rowKind.line, words, effectiveFeed(reader, "The line"), 0, 0, 0, source);
  },
};
