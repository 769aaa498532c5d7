import { axes, axisBit, frame, rowKind } from "#base";
import type { FeedMode, RowKindName, UnitSystem } from "#base";
import { feedCounts } from "./forgiven.ts";
import type { RowRecord } from "./row-record.ts";
import { angleText, axesText, feedText, lengthNumber, stepText } from "./words.ts";

/** What a row is called. */
const kindWords = {
  rapid: "rapid",
  line: "line",
  arcXy: "arc in XY",
  arcZx: "arc in ZX",
  arcYz: "arc in YZ",
  radiusXy: "arc by radius in XY",
  radiusZx: "arc by radius in ZX",
  radiusYz: "arc by radius in YZ",
  hole: "hole",
  aside: "step",
} as const satisfies Record<RowKindName, string>;

/** Letters of the centre words by plane, in the order of the row kinds (NISTIR 6556 3.5.3.2). */
const centreLetters = [
  ["X", "Y"],
  ["Z", "X"],
  ["Y", "Z"],
] as const;

/** How values are put into words: units and feed mode in force where the rows stand. */
export interface RowWords {
  readonly units: UnitSystem;
  readonly feedMode: FeedMode;
}

function kindText(kind: number): string {
  const name = (Object.keys(rowKind) as RowKindName[]).find((key) => rowKind[key] === kind);
  return name === undefined ? `kind ${kind}` : kindWords[name];
}

/** The place of an axis: a number, or that it is not known. */
function placeText(row: RowRecord, axis: number, words: RowWords): string {
  if (!(row.known & (1 << axis))) return "unknown";
  return axis < 3 ? lengthNumber(row.at[axis], words.units) : angleText(row.at[axis]);
}

/** A row in trade words: line to X 10 Y 5 Z -2 at 300 mm/min */
export function rowText(row: RowRecord, words: RowWords): string {
  if (row.step) return stepText(row.step, words.units);
  const places = axes
    .map((name, axis) =>
      row.known & axisBit[name] ? `${name.toUpperCase()} ${placeText(row, axis, words)}` : "",
    )
    .filter((text) => text !== "");
  const machine = row.frame === frame.machine ? " in machine coordinates" : "";
  const feed = feedCounts(row.kind) ? ` at ${feedText(row.feed, words.feedMode, words.units)}` : "";
  return `${kindText(row.kind)} to ${places.join(" ")}${machine}${feed}`;
}

type Pair = readonly [name: string, expected: string, actual: string];

/** The fields of two motions as texts, side by side. */
function motionPairs(expected: RowRecord, actual: RowRecord, words: RowWords): Pair[] {
  const frames = (row: RowRecord): string => (row.frame === frame.machine ? "machine" : "work");
  const pairs: Pair[] = [
    ["kind", kindText(expected.kind), kindText(actual.kind)],
    ["coordinates", frames(expected), frames(actual)],
    ["known axes", axesText(expected.known), axesText(actual.known)],
    ["named axes", axesText(expected.stated), axesText(expected.stated & actual.stated)],
  ];
  axes.forEach((name, axis) =>
    pairs.push([name.toUpperCase(), placeText(expected, axis, words), placeText(actual, axis, words)]),
  );
  if (feedCounts(expected.kind)) {
    const text = (row: RowRecord): string => feedText(row.feed, words.feedMode, words.units);
    pairs.push(["feed", text(expected), text(actual)]);
  }
  const byCentre = expected.kind < rowKind.radiusXy;
  const letters = byCentre ? centreLetters[(expected.kind - rowKind.arcXy + 3) % 3] : (["", ""] as const);
  const number = (value: number): string => lengthNumber(value, words.units);
  pairs.push([byCentre ? `centre ${letters[0]}` : "radius", number(expected.c1), number(actual.c1)]);
  pairs.push([byCentre ? `centre ${letters[1]}` : "second centre", number(expected.c2), number(actual.c2)]);
  pairs.push(["turns", String(expected.turns), String(actual.turns)]);
  return pairs;
}

/** What differs between two rows: X 12.345 expected, 12.346 read */
export function differenceText(expected: RowRecord, actual: RowRecord, words: RowWords): string {
  if (expected.step || actual.step)
    return `${rowText(expected, words)} expected, ${rowText(actual, words)} read`;
  const differing = motionPairs(expected, actual, words).filter(([, wanted, got]) => wanted !== got);
  if (differing.length === 0)
    return `${rowText(expected, words)} expected, and a value read that differs past the last digit shown`;
  return differing.map(([name, wanted, got]) => `${name} ${wanted} expected, ${got} read`).join("; ");
}
