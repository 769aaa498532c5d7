import { describe, expect, it } from "vitest";
import type { Batch, MachineFacts } from "#base";
import { axisBit, createBatch, rowKind } from "#base";
import type { JobStep } from "#job";
import { batchOf, lowerBatches, lowerMoves, machine, mm } from "./lowering.ts";

const start = { rapid: { x: 0, y: 0 } };

describe("lines and rapids", () => {
  it("rounds half away from zero onto the grid, once", () => {
    const { motion } = lowerMoves([
      start,
      { line: { x: 0.0005, y: -0.0005 } },
      { line: { x: 1.00049, y: -1.00051 } },
    ]);
    expect(motion.slice(1).map((row) => [row.x / mm, row.y / mm])).toEqual([
      [0.001, -0.001],
      [1, -1.001],
    ]);
  });

  it("does not let rounding add up over many small moves", () => {
    const moves = Array.from({ length: 10_000 }, (_, index) => ({ line: { x: (index + 1) * 0.0004 } }));
    const { motion } = lowerMoves([start, ...moves]);
    expect(motion.at(-1)?.x).toBe(4 * mm);
  });

  it("drops and counts what rounds to nothing", () => {
    const { motion, dropped } = lowerMoves([
      start,
      { line: { x: 0.0001 } },
      { line: { x: 0.0002 } },
      { line: { x: 1 } },
    ]);
    expect(dropped).toBe(2);
    expect(motion.filter((row) => row.kind === rowKind.line)).toHaveLength(1);
  });

  it("approaches at clearance and ends with Z alone to clearance", () => {
    const { motion } = lowerMoves([{ rapid: { x: 1, y: 2, z: 3 } }, { line: { z: -1 } }]);
    expect(motion.map((row) => [row.stated, row.x / mm, row.y / mm, row.z / mm])).toEqual([
      [3, 1, 2, 15],
      [4, 1, 2, 3],
      [4, 1, 2, -1],
      [4, 1, 2, 15],
    ]);
  });

  it("splits rapids that are not straight: rising Z first, falling Z last", () => {
    const moves = [start, { rapid: { x: 5, y: 5, z: 20 } }, { rapid: { x: 0, y: 0, z: 10 } }];
    const stated = (rapids: "straight" | "dog-leg") =>
      lowerMoves(moves, { capabilities: { rapids } }).motion.map((row) => row.stated);
    expect(stated("straight")).toEqual([3, 7, 7, 4]);
    expect(stated("dog-leg")).toEqual([3, 4, 3, 3, 4, 4]);
  });

  it("states the axes that move and no others", () => {
    const { motion } = lowerMoves([start, { line: { x: 1, y: 0 } }, { line: { x: 1, y: 2, z: 15 } }]);
    expect(motion.slice(1, 3).map((row) => row.stated)).toEqual([1, 2]);
  });
});

describe("feeds", () => {
  it("rounds onto the grid of the feed word", () => {
    const { motion } = lowerMoves([
      start,
      { line: { x: 1 }, feed: 300.04 },
      { line: { x: 2 }, feed: 300.05 },
    ]);
    expect(motion.slice(1, 3).map((row) => row.feed / mm)).toEqual([300, 300.1]);
  });

  it("multiplies by the speed where the dialect has no feed per revolution", () => {
    const words = { "feed.per-minute": true, "feed.per-revolution": false };
    const { motion, findings } = lowerMoves(
      [
        start,
        { line: { x: 1 }, feed: 0.1 },
        { step: { kind: "spindle", rpm: 1_000_000 } },
        { line: { x: 2 }, feed: 0.1 },
      ],
      {
        capabilities: { words },
        operation: { feedMode: "per-revolution" },
      },
    );
    expect(findings).toEqual([]);
    expect(motion.slice(1, 3).map((row) => row.feed / mm)).toEqual([50, 100]);
  });

  it("refuses a mode that the dialect has no word for, and one that it does not declare", () => {
    const inverse = { operation: { feedMode: "inverse-time" } as const };
    const none = lowerMoves([start], { ...inverse, capabilities: { words: { "feed.inverse-time": false } } });
    expect(none.findings.map((finding) => finding.rule)).toEqual(["lower/feed-mode"]);
    const silent = lowerMoves([start], { ...inverse, capabilities: { words: {} } });
    expect(silent.findings.map((finding) => [finding.rule, finding.key])).toEqual([
      ["dialect/undeclared", "feed.inverse-time"],
    ]);
  });

  it("needs no word for feed per minute where the controller has no other mode", () => {
    const none = { "feed.per-minute": false, "feed.per-revolution": false, "feed.inverse-time": false };
    const only = lowerMoves([start, { line: { x: 1 }, feed: 300.04 }], { capabilities: { words: none } });
    expect(only.findings).toEqual([]);
    expect(only.motion[1]?.feed).toBe(300 * mm);
    const words = { ...none, "feed.inverse-time": true };
    const noWayBack = lowerMoves([start], { capabilities: { words } });
    expect(noWayBack.findings.map((finding) => finding.rule)).toEqual(["lower/feed-mode"]);
  });

  it("refuses a feed that rounds to nothing", () => {
    const { findings } = lowerMoves([start, { line: { x: 1 }, feed: 0.01 }]);
    expect(findings.map((finding) => finding.rule)).toEqual(["lower/range"]);
  });
});

describe("rotary axes", () => {
  const withA = { ...machine, travel: { a: [0, 360_000_000] } } as unknown as MachineFacts;
  const rotaryMoves = (): Batch<JobStep> => {
    const batch = createBatch<JobStep>(4, true);
    const plain = batchOf([start, { line: { x: 1 } }]);
    for (let row = 0; row < 2; row++) {
      batch.kind[row] = plain.kind[row];
      batch.stated[row] = plain.stated[row];
      batch.x[row] = plain.x[row];
      batch.feed[row] = plain.feed[row];
      batch.aside[row] = -1;
    }
    if (batch.abc) batch.abc[0][1] = 90_000_400;
    batch.stated[1] |= axisBit.a;
    batch.count = 2;
    return batch;
  };

  it("knows a rotary axis once the operation names it, on the grid of its word", () => {
    const { motion, findings } = lowerBatches([rotaryMoves()], { machine: withA });
    expect(findings).toEqual([]);
    expect(motion.map((row) => [row.known, row.stated, row.a])).toEqual([
      [7, 3, 0],
      [15, 9, 90_000_000],
    ]);
  });

  it("refuses a rotary axis that the machine does not have", () => {
    const { findings } = lowerBatches([rotaryMoves()]);
    expect(findings.map((finding) => [finding.rule, finding.key])).toEqual([
      ["lower/rotary", "machine.travel.a"],
    ]);
  });
});
