import type { CycleDefinition, CycleKind } from "#base";
import { axisBit, rowKind } from "#base";
import type { Cursor, Word } from "./cursor.ts";
import { endOf, nextNumber, oneOf, took } from "./cursor.ts";
import type { Gridded } from "./grids.ts";
import { fits } from "./grids.ts";
import { takeFeed, takePlaces } from "./places-notation.ts";
import type { Sequence } from "./sequence.ts";
import { pushMotion, pushStep } from "./sequence.ts";

/** Cycles, each with the numbers that it needs beside `depth` and `retract`. */
const needs = {
  drill: [],
  dwell: ["dwell"],
  peck: ["peck"],
  "chip-break": ["peck"],
  tap: [],
  "tap-left": [],
  ream: [],
  "bore-dwell": ["dwell"],
  "bore-stop": [],
  "bore-manual": [],
} as const satisfies Record<CycleKind, readonly string[]>;

const cycleKinds = Object.keys(needs) as CycleKind[];

/** Numbers of a series, and what each is for the dialect. */
const numberKinds = {
  depth: "length",
  retract: "length",
  peck: "peck",
  "back-off": "peck",
  dwell: "cycle-dwell",
} as const satisfies Record<string, Gridded>;

type NumberName = keyof typeof numberKinds;
type Place = readonly [x: number, y: number];

/** What a series of holes says. */
interface Said {
  readonly at: Place[];
  readonly numbers: Map<string, number>;
  between: "initial" | "retract";
}

/** `holes peck at x10 y10 at x20 y10 depth -12 retract 2 peck 3 feed 200`: a series of one cycle; `cycle off` ends it. */
export function holes(cursor: Cursor, sequence: Sequence, first: Word): void {
  const cycle = oneOf(cursor, cycleKinds, "cycle");
  const said = takeWords(cursor, sequence);
  const feed = tapsByLead(cycle, sequence)
    ? takeLead(cursor, sequence, first)
    : takeFeed(cursor, sequence, first, "");
  endOf(cursor, "");
  for (const name of ["depth", "retract", ...needs[cycle]])
    if (!said.numbers.has(name)) cursor.fail(first, `\`holes ${cycle}\` has no \`${name}\`.`, example);
  if (said.at.length === 0)
    cursor.fail(first, `\`holes ${cycle}\` has no place: \`at\` with x and y.`, example);
  if ((sequence.known[0] & axisBit.z) === 0)
    cursor.fail(first, "Where Z stands before the holes is not known.", "Name z in a motion before.");
  const definition = define(cycle, said, sequence);
  if (definition.depth >= definition.retract) cursor.fail(first, "The depth lies below the retract level.");
  pushStep(sequence, definition, cursor.index);
  for (const place of said.at) pushHole(sequence, place, { level: definition.level, feed }, cursor.index);
}

/** Whether the feed word of a cycle is the lead of a thread, a turn, whatever the feed mode. */
function tapsByLead(cycle: CycleKind, { capabilities }: Sequence): boolean {
  return (cycle === "tap" || cycle === "tap-left") && capabilities.cycles.tapLead;
}

function takeLead(cursor: Cursor, sequence: Sequence, first: Word): number {
  if (!took(cursor, "feed"))
    cursor.fail(
      first,
      "This dialect taps by lead, which stands behind `feed`.",
      "Add `feed` and the lead of the thread.",
    );
  const word = cursor.peek();
  const lead = nextNumber(cursor, "length", "`feed`");
  if (word !== undefined) fits(cursor, sequence, word, lead, "lead");
  return lead;
}

const example = "For instance `holes peck at x10 y10 at x20 y10 depth -12 retract 2 peck 3 feed 200`.";

function takeWords(cursor: Cursor, sequence: Sequence): Said {
  const said: Said = { at: [], numbers: new Map(), between: "retract" };
  for (let word = cursor.peek(); word !== undefined && word.text !== "feed"; word = cursor.peek()) {
    cursor.next();
    if (word.text === "at") said.at.push(takeHole(cursor, sequence, word));
    else if (word.text === "between")
      said.between = oneOf(cursor, ["initial", "retract"], "level between holes");
    else if (Object.hasOwn(numberKinds, word.text)) takeNumber(cursor, sequence, word, said.numbers);
    else cursor.fail(word, `\`${word.text}\` is not expected here; there could be ${words.join(", ")}.`);
  }
  return said;
}

const words = ["at", ...Object.keys(numberKinds), "between", "feed"];

function takeNumber(cursor: Cursor, sequence: Sequence, word: Word, numbers: Map<string, number>): void {
  if (numbers.has(word.text)) cursor.fail(word, `\`${word.text}\` stands twice.`);
  const counted = word.text === "dwell" ? "seconds" : "length";
  const digits = cursor.peek();
  const value = nextNumber(cursor, counted, `\`${word.text}\``);
  fits(cursor, sequence, digits ?? word, value, numberKinds[word.text as NumberName]);
  numbers.set(word.text, value);
}

/** Behind `at`: the place of one hole, x10 y5. */
function takeHole(cursor: Cursor, sequence: Sequence, at: Word): Place {
  const places = takePlaces(cursor, sequence);
  const [x, y] = [places.get("x"), places.get("y")];
  if (x === undefined || y === undefined || places.size > 2)
    return cursor.fail(at, "Behind `at` stand x and y of one hole.", "For instance `at x10 y10 at x20 y10`.");
  return [x.value, y.value];
}

/** The cycle as the dialect's programs have it: what they say by words of their own is stated, and nothing else. */
function define(cycle: CycleKind, { numbers, between }: Said, sequence: Sequence): CycleDefinition {
  const { cycles } = sequence.capabilities;
  const number = (name: NumberName): number => numbers.get(name) ?? 0;
  const retract = number("retract");
  const pecks = cycle === "peck" || cycle === "chip-break";
  return {
    kind: "cycle-definition",
    cycle,
    depth: number("depth"),
    retract,
    level: between === "initial" ? Math.max(sequence.places[0][2], retract) : retract,
    between,
    levelStated: cycles.levels === "both",
    peck: number("peck"),
    dwell: number("dwell"),
    ...(cycles.dwellByTurns && numbers.has("dwell") ? { dwellIs: "revolutions" as const } : {}),
    ...(pecks && cycles.saysBackOff ? { backOff: number("back-off") } : {}),
    ...(tapsByLead(cycle, sequence) ? { feedIs: "lead" as const } : {}),
  };
}

function pushHole(
  sequence: Sequence,
  [x, y]: Place,
  { level, feed }: { readonly level: number; readonly feed: number },
  source: number,
): void {
  const [place] = sequence.places;
  // The tool stands at the level behind each hole; Z is not named.
  place[2] = level;
  const said = place[0] === x && place[1] === y ? axisBit.x : 0;
  const at = new Map([
    [0, x],
    [1, y],
  ]);
  pushMotion(sequence, { kind: rowKind.hole, machine: false, at, feed, said }, source);
}
