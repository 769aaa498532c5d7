import { noAxis } from "../findings.ts";
import { readNumber, scales } from "../scan/number.ts";
import { nextMember, openObject } from "../scan/structure.ts";
import { noName, scanKey } from "../scan/text.ts";
import { createWords } from "../scan/words.ts";
import type { MoveReader } from "./reader.ts";
import { refuseKey, refuseRepeated } from "./values.ts";

/** In the order of the axis bits and of the first places in `Move.values`. */
const axisWords = createWords(["x", "y", "z", "a", "b", "c"]);

const axisLabels = axisWords.names.map((name) => `\`${name}\``);

/** Reads the axes of a rapid or line: { "x": 10, "c": 90 }. @returns whether they are without fault */
export function readAxes(reader: MoveReader, owner: string): boolean {
  const { scanner, move } = reader;
  const errors = reader.errors;
  let seen = 0;
  for (let more = openObject(scanner, owner); more; more = nextMember(scanner)) {
    const axis = scanKey(scanner, axisWords);
    if (axis < 0) {
      if (axis === noName) return false;
      refuseKey(scanner, owner, axisWords);
    } else if ((seen & (1 << axis)) !== 0) {
      refuseRepeated(scanner, axisWords.names[axis]);
    } else {
      seen |= 1 << axis;
      const scale = axis < 3 ? reader.length : scales.degree;
      readNumber(scanner, scale, move.values, axis, false, axisLabels[axis]);
    }
  }
  if (seen === 0 && reader.errors === errors) reader.report(noAxis(move.valueAt));
  move.words = seen;
  return reader.errors === errors;
}
