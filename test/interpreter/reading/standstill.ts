import type { Meaning } from "../meaning.ts";

/** Functions behind which the same place has other coordinates. */
const shifts = new Set(["SET_G5X_OFFSET", "SET_G92_OFFSET", "USE_TOOL_LENGTH_OFFSET", "USE_LENGTH_UNITS"]);

/** First, second and normal axis of each plane (NISTIR 6556 Table 9). */
const axesOf: Readonly<Record<string, readonly [number, number, number]>> = {
  CANON_PLANE_XY: [0, 1, 2],
  CANON_PLANE_XZ: [2, 0, 1],
  CANON_PLANE_YZ: [1, 2, 0],
};

/**
 * Takes out straight motions that go nowhere: a motion word without axes (`G1` alone) is one to the interpreter, and none to us.
 * Without a length they have no effect.
 */
export function withoutStandingMotions(meanings: readonly Meaning[]): Meaning[] {
  let place: readonly number[] | undefined;
  let plane = axesOf["CANON_PLANE_XY"];
  return meanings.filter((one) => {
    const { name, numbers, text } = one;
    if (shifts.has(name)) place = undefined;
    if (name === "SELECT_PLANE") plane = axesOf[text];
    if (name === "ARC_FEED") place = endOfArc(numbers, plane);
    if (name !== "STRAIGHT_FEED" && name !== "STRAIGHT_TRAVERSE") return true;
    const before = place;
    place = numbers.slice(0, 6);
    return before === undefined || !place.every((value, axis) => Math.abs(value - before[axis]) < 0.00006);
  });
}

/** ARC_FEED: first and second end, centre, turns, end along the normal, rotary axes, feed. */
function endOfArc(numbers: readonly number[], plane: readonly [number, number, number]): number[] {
  const [first, second, , , , along, ...rest] = numbers;
  const place = [0, 0, 0, ...rest.slice(0, 3)];
  for (const [index, value] of [first, second, along].entries()) place[plane[index as 0 | 1 | 2]] = value;
  return place;
}
