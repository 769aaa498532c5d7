import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rowKind } from "#base";
import type { Move, Row } from "./lowering.ts";
import { arcsLike, lowerMoves, mm } from "./lowering.ts";

const start = (x: number, y: number): Move => ({ rapid: { x, y } });

/** Difference of the start and end radius of a row in the XY plane, in mm. */
function radiusError(before: Row, row: Row): number {
  const first = Math.hypot(before.x - row.c1, before.y - row.c2);
  const last = Math.hypot(row.x - row.c1, row.y - row.c2);
  return Math.abs(first - last) / mm;
}

/** Sweep of a row in the XY plane, degrees; ends that meet: 360. */
function sweep(before: Row, row: Row): number {
  const from = Math.atan2(before.y - row.c2, before.x - row.c1);
  const to = Math.atan2(row.y - row.c2, row.x - row.c1);
  const turned = ((((to - from) * Math.sign(row.turns)) / Math.PI) * 180 + 720) % 360;
  return before.x === row.x && before.y === row.y ? 360 : turned;
}

const onCircle = (centre: readonly [number, number], radius: number, angle: number) =>
  [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)] as const;

const arcs = (moves: readonly Row[]) => moves.filter((row) => row.kind === rowKind.arcXy);

describe("arcs by centre", () => {
  it("keeps the two radii within 0.002 mm at three decimals (NISTIR 6556 3.5.3.2), where plain rounding would not", () => {
    let worst = 0;
    let worstPlain = 0;
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        number(-100, 100),
        number(-100, 100),
        number(0.5, 50),
        number(0, 6.28),
        number(0.01, 6.27),
        fc.boolean(),
        (cx, cy, radius, from, turned, ccw) => {
          const a = onCircle([cx, cy], radius, from);
          const b = onCircle([cx, cy], radius, from + (ccw ? turned : -turned));
          const { motion } = lowerMoves([
            start(...a),
            { arc: { x: b[0], y: b[1] }, centre: [cx, cy], turns: ccw ? 1 : -1 },
          ]);
          const [before, row] = motion;
          if (row?.kind !== rowKind.arcXy || !before) return;
          worst = Math.max(worst, radiusError(before, row));
          const plain = {
            ...row,
            c1: before.x + Math.round((cx * mm - before.x) / 1e4) * 1e4,
            c2: before.y + Math.round((cy * mm - before.y) / 1e4) * 1e4,
          };
          worstPlain = Math.max(worstPlain, radiusError(before, plain));
          expect(Math.abs(sweep(before, row) - (turned / Math.PI) * 180)).toBeLessThan(1);
        },
      ),
      { numRuns: 20_000, seed: 7 },
    );
    expect(worst).toBeLessThan(0.002);
    expect(worst).toBeLessThan(worstPlain);
  });

  it("never shifts the centre of an arc that is nearly closed", () => {
    for (let gap = 0.001; gap < 0.05; gap += 0.0007) {
      const end = onCircle([0, 0], 20, -gap / 20);
      const { motion } = lowerMoves([
        start(20, 0),
        { arc: { x: end[0], y: end[1] }, centre: [0, 0], turns: 1 },
      ]);
      const row = arcs(motion)[0];
      if (!row) throw new Error("no arc");
      expect(Math.hypot(row.c1, row.c2) / mm).toBeLessThan(0.003);
    }
  });

  it("keeps a full circle full, and turns nothing into a circle", () => {
    const full = lowerMoves([start(5, 0), { arc: { x: 5, y: 0 }, centre: [0, 0], turns: -1 }]);
    expect(arcs(full.motion).map((row) => [row.turns, row.stated])).toEqual([[-1, 3]]);
    const almost = lowerMoves([start(5, 0), { arc: { x: 5, y: -0.0001 }, centre: [0, 0], turns: 1 }]);
    expect(arcs(almost.motion)).toHaveLength(1);
    expect(almost.findings.map((finding) => finding.rule)).toEqual(["lower/full-circle"]);
    const nothing = lowerMoves([start(5, 0), { arc: { x: 5, y: 0.0001 }, centre: [0, 0], turns: 1 }]);
    expect(arcs(nothing.motion)).toHaveLength(0);
    expect(nothing.dropped).toBe(1);
  });

  it("makes a line of a piece too short for its order to survive rounding", () => {
    for (let turned = 0.00001; turned < 0.002; turned += 0.00003) {
      const end = onCircle([0, 0], 1, 0.3 + turned);
      const { motion } = lowerMoves([
        start(...onCircle([0, 0], 1, 0.3)),
        { arc: { x: end[0], y: end[1] }, centre: [0, 0], turns: 1 },
      ]);
      const [before, row] = motion;
      if (row?.kind === rowKind.arcXy && before) expect(sweep(before, row)).toBeLessThan(180);
    }
  });

  it("writes several turns turn by turn, each full circle on its own start", () => {
    const { motion } = lowerMoves([
      start(5, 0),
      { line: { z: 0 } },
      { arc: { x: 0, y: 5, z: -3.25 }, centre: [0, 0], turns: 4 },
    ]);
    const rows = arcs(motion);
    expect(rows.map((row) => [row.x / mm, row.y / mm, row.z / mm])).toEqual([
      [5, 0, -1],
      [5, 0, -2],
      [5, 0, -3],
      [0, 5, -3.25],
    ]);
    expect(rows.map((row) => row.turns)).toEqual([1, 1, 1, 1]);
  });

  it("writes several turns in one row where the dialect can", () => {
    const arcsAre = {
      form: "incremental-centre",
      largestSweep: 360e6,
      quadrants: "any",
      fullCircle: true,
      planes: ["xy"],
      helix: true,
      turns: true,
      feedAlong: "path",
      smallestRadius: 0,
      largestRadius: Infinity,
      chordTolerance: undefined,
    } as const;
    const { motion } = lowerMoves(
      [start(5, 0), { arc: { x: 0, y: 5, z: -3.25 }, centre: [0, 0], turns: 4 }],
      { capabilities: { arcs: arcsAre } },
    );
    expect(arcs(motion).map((row) => row.turns)).toEqual([4]);
  });

  it.each([
    ["zx", rowKind.arcZx, { z: 10, x: 5 }, [10, 0], { x: 0, z: 15 }],
    ["yz", rowKind.arcYz, { y: 5, z: 10 }, [0, 10], { y: 0, z: 15 }],
  ] as const)(
    "selects plane %s, its centre in the order of its axes (NISTIR 6556 Table 9)",
    (plane, kind, from, centre, to) => {
      const place = { x: 0, y: 0, ...from };
      const { rows } = lowerMoves([
        { rapid: { x: place.x, y: place.y } },
        { line: { z: 10 } },
        { arc: to, centre, turns: 1, plane },
      ]);
      const row = rows.find((one) => one.kind === kind);
      expect(rows.some((one) => one.step?.kind === "plane" && one.step.value === plane)).toBe(true);
      expect(row && [row.c1 / mm, row.c2 / mm]).toEqual(centre);
    },
  );
});

describe("arcs that the dialect cannot say in one", () => {
  const limited = (changes: object) => ({
    capabilities: {
      arcs: arcsLike({ ...changes }),
    },
  });

  it("splits at the largest sweep", () => {
    const { motion } = lowerMoves(
      [start(5, 0), { arc: { x: 5, y: 0 }, centre: [0, 0], turns: 1 }],
      limited({ largestSweep: 90e6 }),
    );
    expect(arcs(motion)).toHaveLength(4);
  });

  it("never sweeps more than the controller takes, whatever rounding makes of small circles", () => {
    let halved = 0;
    for (let radius = 0.1; radius < 0.6; radius += 0.0137) {
      const centre = [radius / 7, radius / 3] as const;
      const [x, y] = onCircle(centre, radius, radius * 40);
      const circle = [start(x, y), { arc: { x, y }, centre, turns: 1 }];
      const { motion } = lowerMoves(circle, limited({ largestSweep: 180e6, fullCircle: false }));
      for (const [index, row] of motion.entries()) {
        if (row.kind === rowKind.arcXy) expect(sweep(motion[index - 1], row)).toBeLessThan(180.06);
      }
      if (arcs(motion).length > 2) halved++;
    }
    expect(halved).toBeGreaterThan(5);
  });

  it("splits a full circle in two where it is not allowed", () => {
    const { motion } = lowerMoves(
      [start(5, 0), { arc: { x: 5, y: 0 }, centre: [0, 0], turns: 1 }],
      limited({ fullCircle: false }),
    );
    expect(arcs(motion).map((row) => row.x / mm)).toEqual([-5, 5]);
  });

  it("says arcs by signed radius, none above 165 degrees (advice of NISTIR 6556 3.5.3.1)", () => {
    const { motion } = lowerMoves(
      [start(5, 0), { arc: { x: 5, y: 0 }, centre: [0, 0], turns: -1 }],
      limited({ form: "radius" }),
    );
    const rows = motion.filter((row) => row.kind === rowKind.radiusXy);
    expect(rows).toHaveLength(3);
    for (const row of rows) expect(Math.abs(row.c1 / mm - 5)).toBeLessThan(0.002);
  });

  it("asks for the chord tolerance where the dialect states none", () => {
    const { findings } = lowerMoves(
      [start(5, 0), { arc: { x: 5, y: 0 }, centre: [0, 0], turns: 1 }],
      limited({ form: "none", chordTolerance: undefined }),
    );
    expect(findings.map((finding) => finding.key)).toEqual(["arc.chord-tolerance"]);
  });
});
