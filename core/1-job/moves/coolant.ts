import type { CoolantMedium } from "#base";
import { pushAside } from "#base";
import { repeatedElement, wrongCount } from "../findings.ts";
import { openBracket, quote } from "../scan/bytes.ts";
import { peek } from "../scan/scanner.ts";
import { nextElement, openList, otherType } from "../scan/structure.ts";
import { createWords } from "../scan/words.ts";
import type { KindOfMove } from "./kind.ts";
import type { MoveReader } from "./reader.ts";
import { readWord } from "./values.ts";

const mediumNames = ["mist", "flood", "air", "through-tool"] as const satisfies readonly CoolantMedium[];
const mediumWords = createWords(mediumNames);
/** The one word that stands alone comes last, so that the indices of the others agree. */
const coolantWords = createWords([...mediumNames, "off"]);

/** { "coolant": "mist" } or { "coolant": ["mist", "air"] } */
export const coolant: KindOfMove = {
  beside: [],
  read: readCoolant,
  finish: ({ batch, move }) => pushAside(batch, move.media, move.source),
};

function readCoolant(reader: MoveReader): boolean {
  const { scanner, move } = reader;
  const byte = peek(scanner);
  if (byte === openBracket) return readMedia(reader);
  if (byte !== quote) return otherType(scanner, "`coolant`", "a text or a list");
  const index = readWord(scanner, coolantWords, "`coolant`");
  move.media = {
    kind: "coolant",
    media: index < mediumNames.length && index >= 0 ? [mediumNames[index]] : [],
  };
  return index >= 0;
}

function readMedia(reader: MoveReader): boolean {
  const { scanner, move } = reader;
  const errors = reader.errors;
  const media: CoolantMedium[] = [];
  for (let more = openList(scanner, "`coolant`"); more; more = nextElement(scanner)) {
    const index = readWord(scanner, mediumWords, "Each element of `coolant`");
    if (index < 0) continue;
    if (media.includes(mediumNames[index])) reader.report(repeatedElement(scanner.tokenAt, "`coolant`"));
    media.push(mediumNames[index]);
  }
  if (media.length === 0 && reader.errors === errors)
    reader.report(wrongCount(move.valueAt, "`coolant`", "at least 1 element"));
  move.media = { kind: "coolant", media };
  return reader.errors === errors;
}
