import { pushAside } from "#base";
import { readNumber, scales } from "../scan/number.ts";
import type { KindOfMove } from "./kind.ts";
import { slot } from "./reader.ts";

/** { "dwell": 0.5 } */
export const dwell: KindOfMove = {
  beside: [],
  read: ({ scanner, move }) => readNumber(scanner, scales.second, move.values, slot.dwell, true, "`dwell`"),
  finish: ({ batch, move }) =>
    pushAside(batch, { kind: "dwell", time: move.values[slot.dwell] }, move.source),
};
