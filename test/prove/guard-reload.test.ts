import { describe, expect, test } from "vitest";
import type { JobFacts } from "#base";
import { after, setStep } from "./break.ts";
import { jobFacts, noJob, rackFacts } from "./facts.ts";
import { move, step } from "./pieces.ts";
import { faults, guardItems } from "./run.ts";
import { rackAsking, rackSwap } from "./sequences.ts";
import type { Sequence } from "./sequences.ts";

/**
 * A program that stops with an empty spindle before it picks tool 1 from pocket 1, and later tool 2 from pocket 2. What is in the
 * rack behind the stop is a fact that is planned.
 */
function stopping(reloads: JobFacts["reloads"], changes: Partial<JobFacts> = {}): Sequence {
  const known = { spindleHolds: 0, ...(reloads === undefined ? {} : { reloads }) };
  return { ...rackAsking(), job: jobFacts({ ...known, ...changes }) };
}

const rulesOf = (sequence: Sequence): string[] =>
  faults(guardItems(sequence))
    .map(({ rule }) => rule)
    .filter((rule) => rule !== "swap/timed");

const messagesOf = (sequence: Sequence): string =>
  faults(guardItems(sequence))
    .map(({ message }) => message)
    .join(" ");

describe("a stop at which the rack is loaded anew", () => {
  test("puts the planned tools into the pockets", () => {
    expect(rulesOf(stopping([[1, 2, 3]]))).toEqual([]);
    expect(rulesOf(stopping([[1, 2, 0]], { rack: [3, 0, 2] }))).toEqual([]);
  });

  test("does not help the old rack: without a plan the tools are those of before", () => {
    expect(rulesOf(stopping(undefined, { rack: [0, 2, 3] }))).toContain("swap/pocket");
  });

  test("a pick from a pocket that it leaves empty is found", () => {
    const sequence = stopping([[0, 2, 3]]);
    expect(rulesOf(sequence)).toContain("swap/pocket");
    expect(messagesOf(sequence)).toContain("pocket 1");
  });

  test("a pick of another tool than the program goes on with is found", () => {
    expect(rulesOf(stopping([[2, 1, 3]]))).toContain("offset/active");
  });

  test("a stop that is planned and not made is found", () => {
    const sequence = stopping([
      [1, 2, 3],
      [1, 3, 2],
    ]);
    expect(messagesOf(sequence)).toContain("2 stops are planned to reload the rack, and 1 are made");
    const missing = {
      ...rackSwap(),
      job: jobFacts({ spindleHolds: 0, rack: [3, 2, 0], reloads: [[1, 2, 3]] }),
    };
    expect(rulesOf(missing)).toContain("offset/active");
    expect(messagesOf(missing)).toContain("1 stops are planned to reload the rack, and 0 are made");
  });

  test("an optional stop is none: its switch may be off", () => {
    const sequence = setStep(stopping([[1, 2, 3]]), "ask", { optional: true });
    expect(messagesOf(sequence)).toContain("and 0 are made");
  });

  test("a second stop, before any tool has gone back, is none: it asks something else", () => {
    const up = move({ kind: "rapid", machine: true, z: 0 });
    const stop = step({ kind: "pause", optional: false });
    const planned = stopping([
      [1, 2, 3],
      [2, 1, 3],
    ]);
    const sequence = after(planned, "ask", [up, stop]);
    expect(rulesOf(sequence)).toEqual(["swap/pocket"]);
    expect(messagesOf(sequence)).toContain("2 stops are planned to reload the rack, and 1 are made");
  });

  test("a list with a pocket that is not there is found", () => {
    expect(rulesOf(stopping([[1, 2, 3, 4]]))).toEqual(["limit/pockets"]);
  });

  test("without its job a program stops as often as it likes", () => {
    expect(rulesOf({ ...rackAsking(), job: noJob })).toEqual([]);
  });
});

describe("tools that touch in the rack", () => {
  const { rack } = rackFacts();
  const [first, , third] = rack!.pockets;
  /** Pockets 1 and 2 are `pitch` mm apart; tools 1 and 2 are 6 and 4 mm wide. */
  const close = (pitch: number, job: Partial<JobFacts> = {}): Sequence =>
    rackSwap(
      { rack: { ...rack!, pockets: [first, { x: first.x + pitch * 1e7, y: first.y }, third] } },
      jobFacts({ spindleHolds: 0, ...job }),
    );

  test("are found at the start, at half of both diameters", () => {
    expect(rulesOf(close(5.001))).toEqual([]);
    expect(rulesOf(close(5))).toEqual(["limit/pockets"]);
    expect(messagesOf(close(5))).toContain(
      "Tool 2 touches its neighbour in the rack (pocket 2, tool 1 in pocket 1).",
    );
  });

  test("are found behind a reload stop", () => {
    const { facts } = close(5);
    const sequence = { ...stopping([[1, 2, 3]], { rack: [1, 0, 2] }), facts };
    expect(rulesOf(sequence)).toContain("limit/pockets");
  });
});
