import { axisBit, rowKind } from "#base";
import { readAxes } from "./axes.ts";
import type { KindOfMove } from "./kind.ts";
import { checkMoved } from "./motion.ts";
import { moveTo, pushRow } from "./rows.ts";

const xy = axisBit.x | axisBit.y;

/** { "rapid": { "x": 10, "y": 5 } } */
export const rapid: KindOfMove = {
  beside: [],
  read: (reader) => readAxes(reader, "The rapid"),
  finish: (reader) => {
    const { words, source } = reader.move;
    if (!reader.moved && (words & xy) === xy) reader.moved = true;
    checkMoved(reader);
    moveTo(reader, words);
    pushRow(reader, rowKind.rapid, words, 0, 0, 0, 0, source);
  },
};
