/**
 * What a program does, one line a thing that is done: a canonical machining function (NISTIR 6556 4.3) without what the
 * interpreter tells of itself. Lengths are in program units and in program coordinates.
 */
export interface Meaning {
  /** Name of the canonical function; feed-mode, compensation and cycle-off have none of their own. */
  readonly name: string;
  /** Its numbers in the order of NISTIR 6556 Table 9; feeds end with the feed rate that is in force. */
  readonly numbers: readonly number[];
  /** Text of a message, plane, mode; "" where there is none. */
  readonly text: string;
}

/** Makes a meaning. */
export function meaning(name: string, numbers: readonly number[] = [], text = ""): Meaning {
  return { name, numbers, text };
}

/** Half a unit of the fourth decimal, which is how the interpreter prints, and what a sum in a double may be off by. */
const nearEnough = 0.00005 + 1e-8;

/** Whether two numbers are one, as printed. */
export function sameNumber(one: number, other: number, slack = 0): boolean {
  return Math.abs(one - other) <= nearEnough + slack + Math.abs(one) * 1e-12;
}

function same(one: Meaning, other: Meaning, slack: number): boolean {
  return (
    one.name === other.name &&
    one.text === other.text &&
    one.numbers.length === other.numbers.length &&
    one.numbers.every((value, index) => sameNumber(value, other.numbers[index], slack))
  );
}

/** Functions behind which the same place has other coordinates. */
const shifts = new Set(["SET_G5X_OFFSET", "SET_G92_OFFSET", "USE_TOOL_LENGTH_OFFSET", "USE_LENGTH_UNITS"]);

/** Takes out traverses that go nowhere: a cycle may begin with one, or not, without meaning anything by it (3.5.16.1). */
export function withoutStandstill(meanings: readonly Meaning[]): Meaning[] {
  let place: readonly number[] | undefined;
  return meanings.filter((one) => {
    if (shifts.has(one.name)) place = undefined;
    if (one.name === "STRAIGHT_FEED") place = one.numbers.slice(0, 6);
    if (one.name === "ARC_FEED") place = undefined;
    if (one.name !== "STRAIGHT_TRAVERSE") return true;
    const before = place;
    place = one.numbers;
    return before === undefined || !place.every((value, axis) => Math.abs(value - before[axis]) < 0.00006);
  });
}

/** A meaning in words: "STRAIGHT_FEED 1 2 3 0 0 0 100". */
export function words({ name, numbers, text }: Meaning): string {
  return [name, ...numbers.map((value) => String(Number(value.toFixed(6)))), text]
    .filter((part) => part !== "")
    .join(" ");
}

/**
 * The first difference between what we mean and what the interpreter does.
 *
 * @param slack what numbers may be off by beside what printing rounds: half a step of the grid, where values are rounded to it
 * @returns "" where there is none; otherwise both, with the three before them
 */
export function firstDifference(ours: readonly Meaning[], theirs: readonly Meaning[], slack = 0): string {
  const one = withoutStandstill(ours);
  const other = withoutStandstill(theirs);
  const length = Math.max(one.length, other.length);
  for (let at = 0; at < length; at++) {
    const here = at < one.length && at < other.length && same(one[at], other[at], slack);
    if (here) continue;
    const before = one.slice(Math.max(0, at - 3), at).map((item) => `  ${words(item)}`);
    const [mine, its] = [one.at(at), other.at(at)].map((item) => (item ? words(item) : "nothing"));
    return [
      `at ${at + 1}, behind`,
      ...before,
      `  we mean:            ${mine}`,
      `  the interpreter:    ${its}`,
    ].join("\n");
  }
  return "";
}
