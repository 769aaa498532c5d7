import { pushAside } from "#base";
import { missingKey, spindleUnstated } from "../findings.ts";
import { readNumber, scales } from "../scan/number.ts";
import { nextMember, openObject } from "../scan/structure.ts";
import { noName, scanKey } from "../scan/text.ts";
import { createWords } from "../scan/words.ts";
import type { KindOfMove } from "./kind.ts";
import type { MoveReader } from "./reader.ts";
import { slot } from "./reader.ts";
import { refuseKey, refuseRepeated } from "./values.ts";

const spindleWords = createWords(["rpm"]);

/** { "spindle": { "rpm": 9000 } } */
export const spindle: KindOfMove = {
  beside: [],
  read: readSpindle,
  finish: (reader) => {
    const { batch, move, operation } = reader;
    if (operation.spindle === undefined) reader.report(spindleUnstated(move.source));
    reader.rpm = move.values[slot.rpm];
    pushAside(batch, { kind: "spindle", rpm: reader.rpm }, move.source);
  },
};

function readSpindle(reader: MoveReader): boolean {
  const { scanner, move } = reader;
  const errors = reader.errors;
  let seen = false;
  for (let more = openObject(scanner, "`spindle`"); more; more = nextMember(scanner)) {
    const word = scanKey(scanner, spindleWords);
    if (word === noName) return false;
    if (word < 0) refuseKey(scanner, "`spindle`", spindleWords);
    else if (seen) refuseRepeated(scanner, "rpm");
    else readNumber(scanner, scales.rpm, move.values, slot.rpm, true, "`rpm`");
    seen ||= word === 0;
  }
  if (!seen && reader.errors === errors) reader.report(missingKey(move.valueAt, "rpm", "`spindle`"));
  return reader.errors === errors;
}
