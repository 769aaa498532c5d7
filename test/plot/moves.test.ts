import fc from "fast-check";
import { expect, test } from "vitest";
import { createMoves, decodeMoves, encodeMoves, isArcMove, kindOf } from "#report";

const place = fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 });
const move = fc.record({
  mark: fc.integer({ min: 0, max: 63 }),
  x: place,
  y: place,
  z: place,
  operation: fc.integer({ min: 0, max: 65_535 }),
  line: fc.integer({ min: 0, max: 2 ** 32 - 1 }),
  c1: place,
  c2: place,
  turns: fc.integer({ min: -32_768, max: 32_767 }),
});

test("motions are after packing what they were before, whatever they are", () => {
  fc.assert(
    fc.property(fc.array(move, { maxLength: 40 }), fc.tuple(place, place, place), (rows, before) => {
      const moves = createMoves(40);
      moves.before.set(before);
      for (const { c1, c2, turns, ...row } of rows) {
        for (const [name, value] of Object.entries(row)) moves[name as keyof typeof row][moves.count] = value;
        moves.count++;
        if (!isArcMove(kindOf(row.mark))) continue;
        [moves.c1[moves.arcs], moves.c2[moves.arcs], moves.turns[moves.arcs]] = [c1, c2, turns];
        moves.arcs++;
      }
      const read = decodeMoves(encodeMoves(moves));
      expect([read.count, read.arcs, [...read.before]]).toEqual([moves.count, moves.arcs, before]);
      for (const name of ["mark", "x", "y", "z", "operation", "line"] as const)
        expect([...read[name]]).toEqual([...moves[name].subarray(0, moves.count)]);
      for (const name of ["c1", "c2", "turns"] as const)
        expect([...read[name].subarray(0, read.arcs)]).toEqual([...moves[name].subarray(0, moves.arcs)]);
    }),
  );
});
