import type { CycleKind, Plane } from "#base";
import { axes, rowKind, roundToGrid } from "#base";
import type { Cursor, Word } from "./cursor.ts";
import { endOf, nextNumber, numberOf, oneOf, took } from "./cursor.ts";
import { fits } from "./grids.ts";
import type { Motion, Sequence } from "./sequence.ts";
import { pushMotion, pushStep } from "./sequence.ts";

/** Reads the words behind the first of a motion, and appends what it says. */
export type MotionReader = (cursor: Cursor, sequence: Sequence, first: Word) => void;

/** A number behind a name, where it stands. */
interface Placed {
  readonly value: number;
  readonly word: Word;
}

/** Words of places, x10 y-5.25, as many as there are. */
function takePlaces(cursor: Cursor, sequence: Sequence): Map<string, Placed> {
  const found = new Map<string, Placed>();
  for (;;) {
    const word = cursor.peek();
    const [, name, digits] = /^(c?[xyz]|[abc])([-+.\d].*)$/.exec(word?.text ?? "") ?? [];
    if (word === undefined || name === undefined || digits === undefined) return found;
    cursor.next();
    if (found.has(name)) cursor.fail(word, `\`${name}\` stands twice.`);
    const isAngle = /^[abc]$/.test(name);
    const value = numberOf(cursor, word, digits, isAngle ? "angle" : "length", `\`${name}\``);
    fits(cursor, sequence, word, value, isAngle ? "angle" : name.length > 1 ? "centre" : "length");
    found.set(name, { value, word });
  }
}

function axesOf(places: ReadonlyMap<string, Placed>): Map<number, number> {
  const named = [...places].filter(([name]) => name.length === 1);
  return new Map(named.map(([name, { value }]) => [axes.indexOf(name as (typeof axes)[number]), value]));
}

/** `feed 300`, or the feed that holds since another motion of the case. */
function takeFeed(cursor: Cursor, sequence: Sequence, first: Word): number {
  if (took(cursor, "feed")) {
    const word = cursor.peek();
    const counted = sequence.feedMode === "inverse-time" ? "turns" : "length";
    sequence.feed = nextNumber(cursor, counted, "`feed`");
    if (sequence.feed <= 0) cursor.fail(word, "A feed is above 0.");
    if (word !== undefined) fits(cursor, sequence, word, sequence.feed, "feed");
  }
  if (sequence.feed === 0)
    cursor.fail(first, `\`${first.text}\` has no feed, and none holds.`, "Add `feed` and a number.");
  return sequence.feed;
}

function straight(kind: "rapid" | "line", machine: boolean): MotionReader {
  return (cursor, sequence, first) => {
    const word = cursor.peek();
    const places = takePlaces(cursor, sequence);
    refuseCentre(cursor, places);
    if (places.size === 0)
      cursor.fail(word, `\`${first.text}\` names no axis: x, y, z, a, b or c with a number, such as x10.`);
    const feed = kind === "line" ? takeFeed(cursor, sequence, first) : 0;
    endOf(cursor, kind === "line" ? "an axis, or `feed` and a number" : "an axis");
    const motion = { kind: rowKind[kind], machine, at: axesOf(places), feed };
    if (!pushMotion(sequence, motion, cursor.index))
      cursor.fail(first, "This moves nothing: the tool stands there.");
  };
}

function refuseCentre(cursor: Cursor, places: ReadonlyMap<string, Placed>): void {
  const centre = [...places].find(([name]) => name.length > 1);
  if (centre !== undefined) cursor.fail(centre[1].word, `\`${centre[0]}\` is for the centre of an arc.`);
}

/** `machine rapid z0`: in machine coordinates. */
const machine: MotionReader = (cursor, sequence, first) => {
  const kind = oneOf(cursor, ["rapid", "line"], "motion in machine coordinates");
  straight(kind, true)(cursor, sequence, first);
};

/** Axes of a plane by their index, in its order (NISTIR 6556 Table 9). */
const planeAxes = { xy: [0, 1], zx: [2, 0], yz: [1, 2] } as const satisfies Record<
  Plane,
  readonly [number, number]
>;

const centreKinds = { xy: rowKind.arcXy, zx: rowKind.arcZx, yz: rowKind.arcYz } as const;
const radiusKinds = { xy: rowKind.radiusXy, zx: rowKind.radiusZx, yz: rowKind.radiusYz } as const;

/** `arc cw x20 y5 cx15 cy5 feed 800`: end and centre are places, as in a job. */
const arc: MotionReader = (cursor, sequence, first) => {
  const turn = oneOf(cursor, ["cw", "ccw"], "direction of an arc");
  const word = cursor.peek();
  const places = takePlaces(cursor, sequence);
  const centre = [...places.keys()]
    .filter((name) => name.length > 1)
    .map((name) => name.slice(1))
    .sort()
    .join("");
  const plane = ({ xy: "xy", xz: "zx", yz: "yz" } as const)[centre];
  if (plane === undefined)
    return cursor.fail(word, "An arc names both words of its centre: cx cy, cz cx or cy cz.");
  const turns = took(cursor, "turns") ? nextNumber(cursor, "whole", "`turns`") : 1;
  const feed = takeFeed(cursor, sequence, first);
  endOf(cursor, "`turns` or `feed` and a number");
  if (plane !== sequence.plane)
    cursor.fail(
      first,
      `The arc lies in the plane ${plane}, and ${sequence.plane} is selected.`,
      `Put \`plane ${plane}\` before it.`,
    );
  const [one, other] = planeAxes[plane];
  if ((sequence.known[0] & (1 << one)) === 0 || (sequence.known[0] & (1 << other)) === 0)
    cursor.fail(
      first,
      "The place where the arc begins is not known.",
      "Name both axes of its plane in a motion before.",
    );
  const [c1, c2] = [one, other].map((axis) => places.get(`c${axes[axis]}`)?.value ?? 0);
  const motion = { machine: false, at: axesOf(places), feed, turns: turn === "cw" ? -turns : turns };
  const row = arcRow(sequence, plane, { ...motion, kind: centreKinds[plane], c1, c2 });
  pushMotion(sequence, row, cursor.index);
};

/** By centre, or by signed radius where the dialect says arcs so. */
function arcRow(
  sequence: Sequence,
  plane: Plane,
  motion: Motion & { c1: number; c2: number; turns: number },
): Motion {
  const [one, other] = planeAxes[plane];
  const [place] = sequence.places;
  const begin = [place[one] - motion.c1, place[other] - motion.c2] as const;
  const end = [
    (motion.at.get(one) ?? place[one]) - motion.c1,
    (motion.at.get(other) ?? place[other]) - motion.c2,
  ] as const;
  const isFull = begin[0] === end[0] && begin[1] === end[1];
  if (sequence.capabilities.arcs.form !== "radius" || isFull)
    return { ...motion, said: isFull ? (1 << one) | (1 << other) : 0 };
  const grid = sequence.capabilities.centreGrid?.[sequence.units] ?? 1;
  const radius = roundToGrid((Math.hypot(...begin) + Math.hypot(...end)) / 2, grid);
  const angle = Math.atan2(end[1], end[0]) - Math.atan2(begin[1], begin[0]);
  const sweep = motion.turns < 0 ? -angle : angle;
  const isLarge = (sweep + 4 * Math.PI) % (2 * Math.PI) > Math.PI + 1e-9;
  return { ...motion, kind: radiusKinds[plane], c1: isLarge ? -radius : radius, c2: 0 };
}

/** Cycles by the words of a step. */
const cycleKinds = [
  "drill",
  "dwell",
  "peck",
  "chip-break",
  "tap",
  "tap-left",
  "ream",
  "bore-dwell",
  "bore-stop",
  "bore-manual",
] as const satisfies readonly CycleKind[];

/** `holes peck at 10,10 20,10 depth -12 retract 2 peck 3 feed 200`: a series of one cycle; `cycle off` ends it. */
const holes: MotionReader = (cursor, sequence, first) => {
  const cycle = oneOf(cursor, cycleKinds, "cycle");
  const at: { readonly places: readonly [number, number]; readonly word: Word }[] = [];
  const numbers = new Map<string, number>();
  let between: "initial" | "retract" = "retract";
  for (let word = cursor.peek(); word !== undefined && word.text !== "feed"; word = cursor.peek()) {
    cursor.next();
    if (word.text === "at") at.push(...takeHoles(cursor, sequence));
    else if (word.text === "between") between = oneOf(cursor, ["initial", "retract"], "level between holes");
    else if (/^(depth|retract|peck|back-off|dwell)$/.test(word.text)) {
      if (numbers.has(word.text)) cursor.fail(word, `\`${word.text}\` stands twice.`);
      const value = nextNumber(cursor, word.text === "dwell" ? "seconds" : "length", `\`${word.text}\``);
      fits(
        cursor,
        sequence,
        word,
        value,
        word.text === "dwell"
          ? "cycle-dwell"
          : word.text === "depth" || word.text === "retract"
            ? "length"
            : "peck",
      );
      numbers.set(word.text, value);
    } else
      cursor.fail(
        word,
        `\`${word.text}\` is not expected here; there could be at, depth, retract, peck, back-off, dwell, between or feed.`,
      );
  }
  const feed = takeFeed(cursor, sequence, first);
  endOf(cursor, "");
  const [depth, retract] = [numbers.get("depth"), numbers.get("retract")];
  if (depth === undefined || retract === undefined || at.length === 0)
    return cursor.fail(
      first,
      "Holes have `at` with their places, `depth` and `retract`.",
      "For instance `holes drill at 10,10 20,10 depth -12 retract 2 feed 200`.",
    );
  if ((sequence.known[0] & 4) === 0)
    cursor.fail(first, "Where Z stands before the holes is not known.", "Name z in a motion before.");
  const { cycles } = sequence.capabilities;
  const level = between === "initial" ? Math.max(sequence.places[0][2], retract) : retract;
  const tapsByLead = (cycle === "tap" || cycle === "tap-left") && cycles.tapLead;
  const pecks = cycle === "peck" || cycle === "chip-break";
  pushStep(
    sequence,
    {
      kind: "cycle-definition",
      cycle,
      depth,
      retract,
      level,
      between,
      levelStated: cycles.levels === "both",
      peck: numbers.get("peck") ?? 0,
      dwell: numbers.get("dwell") ?? 0,
      ...(cycles.dwellByTurns && numbers.has("dwell") ? { dwellIs: "revolutions" as const } : {}),
      ...(pecks && cycles.saysBackOff ? { backOff: numbers.get("back-off") ?? 0 } : {}),
      ...(tapsByLead ? { feedIs: "lead" as const } : {}),
    },
    cursor.index,
  );
  for (const { places } of at) pushHole(sequence, places, { level, feed }, cursor.index);
};

function takeHoles(cursor: Cursor, sequence: Sequence) {
  const found: { places: readonly [number, number]; word: Word }[] = [];
  for (let word = cursor.peek(); word !== undefined && /^[-+.\d]/.test(word.text); word = cursor.peek()) {
    const taken = word;
    cursor.next();
    const [x, y, more] = taken.text.split(",");
    if (y === undefined || more !== undefined)
      cursor.fail(taken, `The place of a hole is two numbers with a comma between, such as 10,5.`);
    const places = [x, y].map((digits) =>
      numberOf(cursor, taken, digits ?? "", "length", "The place of a hole"),
    );
    for (const value of places) fits(cursor, sequence, taken, value, "length");
    found.push({ places: [places[0], places[1]], word: taken });
  }
  return found;
}

function pushHole(
  sequence: Sequence,
  [x, y]: readonly [number, number],
  { level, feed }: { readonly level: number; readonly feed: number },
  source: number,
): void {
  const [place] = sequence.places;
  // The tool stands at the level behind each hole; Z is not named.
  place[2] = level;
  const moves = place[0] !== x || place[1] !== y;
  pushMotion(
    sequence,
    {
      kind: rowKind.hole,
      machine: false,
      at: new Map([
        [0, x],
        [1, y],
      ]),
      feed,
      said: moves ? 0 : 1,
    },
    source,
  );
}

/** Motions by their first word. */
export const motions = {
  rapid: straight("rapid", false),
  line: straight("line", false),
  machine,
  arc,
  holes,
} as const satisfies Record<string, MotionReader>;
