/** Work offsets as the sheet lists them. */
import type { Code, Format } from "#dialect";
import { codeText } from "#dialect";
import type { Extents, Range, SheetOffset, Triple } from "#report";
import type { Undertaking } from "../undertaking.ts";
import { createReach, widen } from "./span.ts";
import type { Reach } from "./span.ts";
import type { ReachTally } from "./tally.ts";
import { idsOf } from "./tools.ts";
import type { Measure } from "./units.ts";
import { extentsOf, rounded, tripleOf } from "./units.ts";

/** The work offsets that the operations use, by their numbers. */
export function sheetOffsets(
  { operations, facts }: Undertaking,
  format: Format,
  reaches: readonly ReachTally[],
  measure: Measure,
): SheetOffset[] {
  const numbers = [...new Set(operations.map(({ workOffset }) => workOffset))].sort((a, b) => a - b);
  return numbers.map((number) => {
    const word = wordOf(format.codes.workOffsets[number]);
    const stated = facts.workOffsets[number];
    const origin = stated && tripleOf(stated, measure);
    const extents = extentsOf(allOf(reaches, number), measure);
    return {
      number,
      ...(word === undefined ? {} : { word }),
      operations: idsOf(operations, ({ workOffset }) => workOffset === number),
      ...(origin === undefined ? {} : { origin }),
      extents,
      machineExtents: origin === undefined ? {} : shifted(extents, origin),
    };
  });
}

function wordOf(code: Code | null | undefined): string | undefined {
  if (code === null || code === undefined) return undefined;
  const { word } = code;
  return word === undefined ? codeText(code) : `${codeText(code)} ${word.letter}${word.digits}`;
}

function allOf(reaches: readonly ReachTally[], offset: number): Reach {
  const all = createReach();
  for (const { workOffset, motion } of reaches)
    if (workOffset === offset)
      motion.forEach(({ least, most }, axis) => [least, most].forEach((place) => widen(all[axis], place)));
  return all;
}

/** X and Y alone: how far the spindle stands above the tip differs by tool. */
function shifted({ x, y }: Extents, [originX, originY]: Triple): Extents {
  const by = ({ least, most }: Range, origin: number): Range => ({
    least: rounded(least + origin, 4),
    most: rounded(most + origin, 4),
  });
  return { ...(x && { x: by(x, originX) }), ...(y && { y: by(y, originY) }) };
}
