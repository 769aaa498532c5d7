import { pushAside } from "#base";
import type { KindOfMove } from "./kind.ts";
import { readText } from "./values.ts";

/** { "note": "finishing pass" } */
export const note: KindOfMove = {
  beside: [],
  read: ({ scanner, move }) => {
    const text = readText(scanner, "`note`");
    move.text = text ?? "";
    return text !== undefined;
  },
  finish: ({ batch, move }) => pushAside(batch, { kind: "note", text: move.text }, move.source),
};
