import { describe, expect, test } from "vitest";
import { createArcShape, largestShares, shapeArc } from "#base";
import type { Plane, rowKind } from "#base";
import { seeded } from "../support/seeded.ts";
import { find } from "./break.ts";
import { jobFacts } from "./facts.ts";
import { mm } from "./layout.ts";
import { move, step } from "./pieces.ts";
import { guardItems } from "./run.ts";
import { withBody } from "./sequences.ts";

/*
 * Extents of arcs and helices against places along them. The places are worked out here by themselves: angle by angle, with
 * a radius that runs evenly from that of the start to that of the end (NISTIR 6556 3.5.3 leaves it open), and with the larger one.
 */

/** Least increment of a program in millimetres, atoms. */
const increment = 10_000;

/** An arc or helix: places in the plane and along its normal, atoms. */
interface Sample {
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
  readonly centre: readonly [number, number];
  /** + counter-clockwise. */
  readonly turns: number;
  /** Angle of the whole motion, radians. */
  readonly angle: number;
}

/** What random arcs are drawn from: radii and places of their centres in millimetres, and the grid of their numbers in atoms. */
interface Range {
  readonly radius: readonly [number, number];
  readonly centre: readonly [number, number];
  readonly height: number;
  readonly grid: number;
}

/** A random arc, one in five a full circle, one in two a helix, of up to four turns. */
function drawn(random: () => number, range: Range): Sample {
  const { grid } = range;
  const on = (value: number): number => Math.round(value / grid) * grid;
  const between = (least: number, most: number): number => least + (most - least) * random();
  const radius = mm(between(...range.radius));
  const centre = [on(mm(between(...range.centre))), on(mm(between(...range.centre)))] as const;
  const start = between(0, 2 * Math.PI);
  const sense = random() < 0.5 ? 1 : -1;
  const started = 1 + Math.floor(random() * 4);
  const closed = random() < 0.2;
  const rest = closed ? 2 * Math.PI : between(0.02, 2 * Math.PI - 0.02);
  const end = closed ? start : start + sense * rest;
  const place = (angle: number): [number, number] => [
    on(centre[0] + radius * Math.cos(angle)),
    on(centre[1] + radius * Math.sin(angle)),
  ];
  const level = (): number => on(mm(between(0, range.height)));
  const from = [...place(start), level()] as const;
  const to = [...place(end), random() < 0.5 ? from[2] : level()] as const;
  return { from, to, centre, turns: sense * started, angle: rest + (started - 1) * 2 * Math.PI };
}

/** How the radius runs from start to end: evenly, or the larger one all the way. */
type Radius = (start: number, end: number, share: number) => number;

const evenly: Radius = (start, end, share) => start + (end - start) * share;
const larger: Radius = (start, end) => Math.max(start, end);

/** Places along an arc in its plane, 1,200 a turn, and the length that they add up to. */
function sampled({ from, to, centre, turns, angle }: Sample, radiusAt: Radius): Sampled {
  const count = Math.ceil((1200 * angle) / (2 * Math.PI));
  const [u0, v0] = [from[0] - centre[0], from[1] - centre[1]];
  const first = Math.atan2(v0, u0);
  const startRadius = Math.sqrt(u0 * u0 + v0 * v0);
  const endRadius = Math.hypot(to[0] - centre[0], to[1] - centre[1]);
  // The angle between the ends as they stand, and not as they were drawn.
  const last = Math.atan2(to[1] - centre[1], to[0] - centre[0]);
  const whole = first + Math.sign(turns) * angle;
  const exact = last + Math.round((whole - last) / (2 * Math.PI)) * 2 * Math.PI - first;
  const box = {
    least: [from[0], from[1]],
    most: [from[0], from[1]],
    shares: [0, 0],
    length: 0,
    mismatch: Math.abs(endRadius - startRadius),
  };
  let [p, q, n] = [from[0], from[1], from[2]];
  for (let index = 1; index <= count; index++) {
    const share = index / count;
    const radius = radiusAt(startRadius, endRadius, share);
    const at = [
      centre[0] + radius * Math.cos(first + exact * share),
      centre[1] + radius * Math.sin(first + exact * share),
    ] as const;
    const height = from[2] + (to[2] - from[2]) * share;
    const plane = Math.hypot(at[0] - p, at[1] - q);
    for (const axis of [0, 1]) {
      box.least[axis] = Math.min(box.least[axis], at[axis]);
      box.most[axis] = Math.max(box.most[axis], at[axis]);
      const moved = Math.abs(at[axis] - (axis === 0 ? p : q));
      box.shares[axis] = Math.max(box.shares[axis], moved / plane);
    }
    box.length += Math.hypot(plane, height - n);
    [p, q, n] = [at[0], at[1], height];
  }
  return box;
}

interface Sampled {
  readonly least: number[];
  readonly most: number[];
  readonly shares: number[];
  readonly length: number;
  readonly mismatch: number;
}

test("extents, shares and lengths of 10,000 random arcs and helices are those of places along them", () => {
  const random = seeded(20_261);
  const shape = createArcShape();
  const centre = [-200, 200] as const;
  for (let run = 0; run < 10_000; run++) {
    const grid = run % 2 === 0 ? increment : 1;
    const arc = drawn(random, { radius: run % 3 === 0 ? [0.05, 3] : [3, 150], centre, height: 30, grid });
    shape.centre1 = arc.centre[0];
    shape.centre2 = arc.centre[1];
    shapeArc(shape, arc.from[0], arc.from[1], arc.to[0], arc.to[1], arc.turns);
    const wrong = (what: string): never => expect.fail(`${what} of ${JSON.stringify(arc)}`);
    const places = sampled(arc, evenly);
    const reach = sampled(arc, larger);
    const shares = largestShares(shape);
    const low = [shape.low1, shape.low2];
    const high = [shape.high1, shape.high2];
    for (const axis of [0, 1]) {
      // None is missed, but for what a calculation in doubles is off; and nothing is made up.
      if (places.least[axis] < low[axis] - 1 || places.most[axis] > high[axis] + 1) wrong("a place missed");
      if (Math.max(reach.least[axis] - low[axis], high[axis] - reach.most[axis]) > increment)
        wrong("too large an extent");
      const drift = places.mismatch / (shape.radius * arc.angle);
      if (Math.abs(shares[axis] - places.shares[axis]) > 0.005 + 2 * drift) wrong("a wrong share");
    }
    const length = Math.hypot(shape.radius * shape.angle, arc.to[2] - arc.from[2]);
    if (Math.abs(length - places.length) > 1e-5 * length + places.mismatch * arc.angle + 1)
      wrong("a wrong length");
  }
});

const planes = [
  { name: "xy", kind: "arcXy", axes: ["x", "y", "z"] },
  { name: "zx", kind: "arcZx", axes: ["z", "x", "y"] },
  { name: "yz", kind: "arcYz", axes: ["y", "z", "x"] },
] as const satisfies readonly {
  name: Plane;
  kind: keyof typeof rowKind;
  axes: readonly ("x" | "y" | "z")[];
}[];

/** Work offset 1 of the test's set-up; the nose stands above the tip by the tool's 40 mm. */
const shift = { x: 300, y: 200, z: -80 + 40 } as const;

describe("in machine coordinates", () => {
  /** The findings on an arc in one plane, under a travel of one axis. */
  function told(
    arc: Sample,
    plane: (typeof planes)[number],
    travel: Partial<Record<"x" | "y" | "z", [number, number]>>,
  ) {
    const millimetres = (atoms: number): number => atoms / mm(1);
    const [first, second, normal] = plane.axes;
    const at = (place: readonly [number, number, number]): Partial<Record<"x" | "y" | "z", number>> => ({
      [first]: millimetres(place[0]),
      [second]: millimetres(place[1]),
      [normal]: millimetres(place[2]),
    });
    const wide = [-mm(3000), mm(3000)] as const;
    const body = [
      step({ kind: "plane", value: plane.name }),
      move({ kind: "line", feed: 600, ...at(arc.from) }),
      move(
        {
          kind: plane.kind,
          c1: millimetres(arc.centre[0]),
          c2: millimetres(arc.centre[1]),
          turns: arc.turns,
          feed: 600,
          ...at(arc.to),
        },
        "arc",
      ),
      step({ kind: "plane", value: "xy" }),
      move({ kind: "rapid", z: 15 }),
    ];
    const changes = { travel: { x: wide, y: wide, z: wide, ...travel }, park: undefined } as const;
    const sequence = withBody({ tool: 1, rpm: 16000, x: 0, y: 0 }, body, changes, jobFacts());
    const offset = 100 + 10 * find(sequence, "arc");
    return guardItems(sequence).filter((finding) => finding.place?.offset === offset);
  }

  test.each(planes)(
    "an arc in $name is refused where it passes the end of travel by an increment",
    (plane) => {
      const random = seeded(7 + planes.indexOf(plane));
      let refused = 0;
      for (let run = 0; run < 200; run++) {
        const arc = drawn(random, { radius: [2, 15], centre: [20, 40], height: 30, grid: 1 });
        const places = sampled(arc, larger);
        for (const axis of [0, 1] as const) {
          const ends = Math.max(arc.from[axis], arc.to[axis]);
          // Where an end is the outermost place, the motions beside the arc are refused, too.
          if (places.most[axis] < ends + 5 * increment) continue;
          refused++;
          const name = plane.axes[axis];
          const upTo = (more: number): [number, number] => [
            -mm(3000),
            mm(shift[name]) + places.most[axis] + more,
          ];
          expect(told(arc, plane, { [name]: upTo(increment) })).toEqual([]);
          const [finding] = told(arc, plane, { [name]: upTo(-increment) });
          expect(finding?.rule).toBe("limit/travel");
          const beyond = `^${name.toUpperCase()} goes to .* in machine coordinates, 0\\.00[12]\\d* mm past the end`;
          expect(finding?.message).toMatch(new RegExp(beyond));
        }
      }
      expect(refused).toBeGreaterThan(100);
    },
  );
});
