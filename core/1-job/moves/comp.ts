import { pushAside } from "#base";
import { createWords } from "../scan/words.ts";
import type { KindOfMove } from "./kind.ts";
import { readWord } from "./values.ts";

const sides = ["left", "right", "off"] as const;
const sideWords = createWords(sides);

/** { "comp": "left" } */
export const comp: KindOfMove = {
  beside: [],
  read: ({ scanner, move }) => {
    move.choice = readWord(scanner, sideWords, "`comp`");
    return move.choice >= 0;
  },
  finish: (reader) => {
    const { batch, move } = reader;
    const side = sides[move.choice];
    reader.compensated = side !== "off";
    pushAside(batch, { kind: "compensation", side }, move.source);
  },
};
