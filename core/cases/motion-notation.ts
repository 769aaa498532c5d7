import type { Plane } from "#base";
import { axes, roundToGrid, rowKind } from "#base";
import type { Cursor, Word } from "./cursor.ts";
import { endOf, nextNumber, oneOf, took } from "./cursor.ts";
import { holes } from "./holes-notation.ts";
import type { Placed } from "./places-notation.ts";
import { axesOf, takeFeed, takePlaces } from "./places-notation.ts";
import type { Motion, Sequence } from "./sequence.ts";
import { pushMotion } from "./sequence.ts";

/** Reads the words behind the first of a motion, and appends what it says. */
export type MotionReader = (cursor: Cursor, sequence: Sequence, first: Word) => void;

function refuseCentre(cursor: Cursor, places: ReadonlyMap<string, Placed>): void {
  const centre = [...places].find(([name]) => name.length > 1);
  if (centre !== undefined) cursor.fail(centre[1].word, `\`${centre[0]}\` is for the centre of an arc.`);
}

function straight(kind: "rapid" | "line", machine: boolean): MotionReader {
  return (cursor, sequence, first) => {
    const word = cursor.peek();
    const places = takePlaces(cursor, sequence);
    refuseCentre(cursor, places);
    if (places.size === 0)
      cursor.fail(word, `\`${first.text}\` names no axis: x, y, z, a, b or c with a number, such as x10.`);
    const feed = kind === "line" ? takeFeed(cursor, sequence, first, "an axis, or `feed` and a number") : 0;
    endOf(cursor, "an axis");
    const motion = { kind: rowKind[kind], machine, at: axesOf(places), feed };
    if (!pushMotion(sequence, motion, cursor.index))
      cursor.fail(first, "This moves nothing: the tool stands there.");
  };
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
  const feed = takeFeed(cursor, sequence, first, "`turns` or `feed` and a number");
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

/** Motions by their first word. */
export const motions = {
  rapid: straight("rapid", false),
  line: straight("line", false),
  machine,
  arc,
  holes,
} as const satisfies Record<string, MotionReader>;
