import { pushAside } from "#base";
import { compensationOn, pauseBelow } from "../findings.ts";
import type { KindOfMove } from "./kind.ts";
import { keyIndex } from "./reader.ts";
import { readText } from "./values.ts";

/** { "pause": "Turn the plate over", "optional": true, "park": true } */
export const pause: KindOfMove = {
  beside: ["optional", "park"],
  read: ({ scanner, move }) => {
    const text = readText(scanner, "`pause`");
    move.text = text ?? "";
    return text !== undefined;
  },
  finish: (reader) => {
    const { batch, move, place, operation } = reader;
    if (reader.compensated) reader.report(compensationOn(move.source, "at a pause"));
    if (place[2] < operation.clearance && !reader.lost) reader.report(pauseBelow(move.source));
    const optional = (move.seen & (1 << keyIndex.optional)) !== 0 && move.optional;
    const park = (move.seen & (1 << keyIndex.park)) !== 0 && move.park;
    pushAside(batch, { kind: "pause", text: move.text, optional, park }, move.source);
  },
};
