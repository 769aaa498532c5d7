import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rowKind } from "#base";
import type { Move, Row } from "./lowering.ts";
import { arcsLike, lowerMoves, mm } from "./lowering.ts";

/** A control that takes no arc over a quadrant line of its circle; three decimals. */
const capabilities = (
  changes: object = {},
  [length, centre]: readonly [number, number] = [0.001, 0.001],
) => ({
  capabilities: {
    lengthGrid: { mm: length * mm, inch: 25_400 },
    centreGrid: { mm: centre * mm, inch: 25_400 },
    arcs: arcsLike({ quadrants: "one", fullCircle: false, ...changes }),
  },
});

const start = (x: number, y: number): Move => ({ rapid: { x, y } });
const arcs = (moves: readonly Row[]) => moves.filter((row) => row.kind === rowKind.arcXy);
const places = (moves: readonly Row[]) => arcs(moves).map((row) => [row.x / mm, row.y / mm, row.z / mm]);

/** Sweep of a row, degrees. */
function sweepOf(before: Row, row: Row): number {
  const from = Math.atan2(before.y - row.c2, before.x - row.c1);
  const to = Math.atan2(row.y - row.c2, row.x - row.c1);
  return ((((to - from) * Math.sign(row.turns)) / Math.PI) * 180 + 720) % 360;
}

/** Whether both ends lie in one closed quadrant about the centre, and the row takes the short way between them. */
function staysInQuadrant(before: Row, row: Row): boolean {
  const x = [before.x - row.c1, row.x - row.c1];
  const y = [before.y - row.c2, row.y - row.c2];
  return x[0] * x[1] >= 0 && y[0] * y[1] >= 0 && sweepOf(before, row) < 90.001;
}

describe("arcs split at quadrant lines", () => {
  it("splits a full circle in four, and does not double an end on a line", () => {
    const circle: Move[] = [
      start(5, 0),
      { line: { z: 0 } },
      { arc: { x: 5, y: 0 }, centre: [0, 0], turns: 1 },
    ];
    expect(places(lowerMoves(circle, capabilities()).motion)).toEqual([
      [0, 5, 0],
      [-5, 0, 0],
      [0, -5, 0],
      [5, 0, 0],
    ]);
    const beside: Move[] = [
      start(3, 4),
      { line: { z: 0 } },
      { arc: { x: 3, y: 4 }, centre: [0, 0], turns: -1 },
    ];
    expect(places(lowerMoves(beside, capabilities()).motion)).toEqual([
      [5, 0, 0],
      [0, -5, 0],
      [-5, 0, 0],
      [0, 5, 0],
      [3, 4, 0],
    ]);
  });

  it("leaves an arc of one quadrant, from line to line, whole", () => {
    const { motion } = lowerMoves(
      [start(5, 0), { line: { z: 0 } }, { arc: { x: 0, y: -5 }, centre: [0, 0], turns: -1 }],
      capabilities(),
    );
    expect(places(motion)).toEqual([[0, -5, 0]]);
  });

  it("gives each piece of a helix of several turns its share of Z", () => {
    const { motion } = lowerMoves(
      [start(5, 0), { line: { z: 0 } }, { arc: { x: 0, y: 5, z: -4.5 }, centre: [0, 0], turns: 2 }],
      capabilities(),
    );
    // Five quarters, 0.9 mm each (worked by hand).
    expect(places(motion)).toEqual([
      [0, 5, -0.9],
      [-5, 0, -1.8],
      [0, -5, -2.7],
      [5, 0, -3.6],
      [0, 5, -4.5],
    ]);
  });

  it("splits in the plane of the arc, ZX from Z to X", () => {
    const { rows } = lowerMoves(
      [
        { rapid: { x: 0, y: 0 } },
        { line: { z: 10 } },
        { arc: { z: 20, x: 0 }, centre: [15, 0], turns: 1, plane: "zx", feed: 100 },
      ],
      capabilities(),
    );
    const found = rows.filter((row) => row.kind === rowKind.arcZx).map((row) => [row.z / mm, row.x / mm]);
    expect(found).toEqual([
      [15, -5],
      [20, 0],
    ]);
  });

  it("drops and counts what rounds to nothing, and makes no circle of it", () => {
    const nothing = lowerMoves(
      [start(5, 0), { arc: { x: 5, y: 0.0001 }, centre: [0, 0], turns: 1 }],
      capabilities(),
    );
    expect([arcs(nothing.motion).length, nothing.dropped]).toEqual([0, 1]);
    const small = lowerMoves(
      [start(0.0004, 0), { arc: { x: 0.0004, y: 0 }, centre: [0, 0], turns: 1 }],
      capabilities(),
    );
    expect([arcs(small.motion).length, small.dropped]).toEqual([0, 1]);
  });
});

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const someArc = fc.record({
  centre: fc.tuple(between(-100, 100), between(-100, 100)),
  radius: between(0.05, 50),
  // Starts within a few increments of a quadrant line are what goes wrong first.
  from: fc.oneof(
    between(0, 6.28),
    fc.integer({ min: 0, max: 3 }).chain((line) => between(-2e-5, 2e-5).map((d) => (line * Math.PI) / 2 + d)),
  ),
  turned: between(0.001, 6.28),
  ccw: fc.boolean(),
  turns: fc.integer({ min: 1, max: 3 }),
  grid: fc.constantFrom([0.001, 0.001], [0.001, 0.0001], [0.001, 0.01]),
});

describe("any arc that is split at quadrant lines", () => {
  it("ends where the whole one ends, stays in a quadrant each, sweeps as much, and lies on the arc within the tolerance", () => {
    let crossed = 0;
    fc.assert(
      fc.property(someArc, ({ centre, radius, from, turned, ccw, turns, grid }) => {
        const on = (angle: number) =>
          [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)] as const;
        const [a, b] = [on(from), on(from + (ccw ? turned : -turned))];
        const move: Move = { arc: { x: b[0], y: b[1], z: -5 }, centre, turns: ccw ? turns : -turns };
        const moves: Move[] = [start(...a), { line: { z: 0 } }, move];
        const grids = { length: grid[0] * mm, centre: grid[1] * mm };
        const split = lowerMoves(moves, capabilities({}, grid)).motion.slice(1);
        const whole = lowerMoves(moves, capabilities({ quadrants: "any", fullCircle: true }, grid));
        const [last, wanted] = [split.at(-1)!, whole.motion.at(-1)!];
        expect([last.x, last.y, last.z]).toEqual([wanted.x, wanted.y, wanted.z]);
        let swept = 0;
        for (const [index, row] of split.entries()) {
          const before = split[index - 1];
          if (row.kind !== rowKind.arcXy || !before) continue;
          crossed++;
          expect(staysInQuadrant(before, row)).toBe(true);
          swept += sweepOf(before, row);
          const offGrid = [row.x % grids.length, row.y % grids.length];
          const centreOffGrid = [(row.c1 - before.x) % grids.centre, (row.c2 - before.y) % grids.centre];
          expect([...offGrid, ...centreOffGrid].map(Math.abs)).toEqual([0, 0, 0, 0]);
          // The centre is shifted by up to 1.5 increments and rounded, whole or split: the far side moves by twice that.
          // NISTIR 6556 3.5.3.2: 0.002 mm; centres of two decimals cannot hold it, whole or split.
          const most = Math.max(0.002 * mm, 1.5 * grids.centre);
          expect(radiusError(before, row)).toBeLessThanOrEqual(most);
          expect(farFrom(row, centre, radius)).toBeLessThan(6 * Math.max(grids.length, grids.centre));
        }
        const meant = (turned / Math.PI) * 180 + (turns - 1) * 360;
        const slack = 1 + ((10 * Math.max(grids.length, grids.centre)) / mm / radius) * 57.3;
        if (arcs(split).length > 0) expect(Math.abs(swept - meant)).toBeLessThan(slack);
      }),
      { numRuns: 5000, seed: 11 },
    );
    expect(crossed).toBeGreaterThan(10_000);
  });
});

function radiusError(before: Row, row: Row): number {
  const first = Math.hypot(before.x - row.c1, before.y - row.c2);
  return Math.abs(first - Math.hypot(row.x - row.c1, row.y - row.c2));
}

/** How far the middle of a row lies from the circle of the job, atoms. */
function farFrom(row: Row, centre: readonly [number, number], radius: number): number {
  return Math.abs(Math.hypot(row.x - centre[0] * mm, row.y - centre[1] * mm) - radius * mm);
}
