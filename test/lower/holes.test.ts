import { describe, expect, it } from "vitest";
import type { MachineFacts } from "#base";
import { rowKind } from "#base";
import type { Holes } from "#job";
import type { Move } from "./lowering.ts";
import { capabilities, lowerMoves, machine, mm } from "./lowering.ts";

const start: Move = { rapid: { x: 0, y: 0 } };
const without = (...keys: string[]) => ({
  words: { ...capabilities().words, ...Object.fromEntries(keys.map((key) => [key, false])) },
});

function holes(
  changes: Partial<Holes> = {},
  at: readonly (readonly [number, number])[] = [[10, 10]],
): Move[] {
  const head: Holes = {
    kind: "holes",
    cycle: "drill",
    top: 0,
    depth: -18 * mm,
    retract: 2 * mm,
    peck: 0,
    backOff: 0,
    dwell: 0,
    lead: 0,
    feedOut: 0,
    between: "retract",
    feed: 200 * mm,
    ...changes,
  };
  return [{ step: head }, ...at.map((hole) => ({ hole, feed: 200 })), { step: { kind: "holes-end" } }];
}

/** Rows as a reader of a program would say them: r for rapid, f for feed, the axis and its place. */
const said = (rows: ReturnType<typeof lowerMoves>["rows"]): string[] =>
  rows.flatMap((row) => {
    if (row.step) return row.step.kind === "dwell" ? [`dwell ${String(row.step.time / 1e6)}`] : [];
    const place = [
      row.stated & 1 ? `x${String(row.x / mm)}` : "",
      row.stated & 2 ? `y${String(row.y / mm)}` : "",
      row.stated & 4 ? `z${String(row.z / mm)}` : "",
    ];
    return [`${row.kind === rowKind.rapid ? "r" : "f"} ${place.filter(Boolean).join(" ")}`];
  });

describe("fixed cycles", () => {
  it.each([
    ["drill", {}, "drill"],
    ["dwell", { dwell: 200_000 }, "dwell"],
    ["peck", { peck: 4 * mm }, "peck"],
    ["chip-break", { peck: 4 * mm }, "chip-break"],
    ["tap", { lead: 1.25 * mm, feed: 0 }, "tap"],
    ["bore", {}, "ream"],
    ["bore", { dwell: 200_000 }, "bore-dwell"],
    ["ream", {}, "ream"],
  ] as const)("%s %j becomes the cycle %s", (cycle, changes, expected) => {
    const { steps, motion, findings } = lowerMoves(
      [
        start,
        ...holes({ cycle, ...changes }, [
          [10, 10],
          [10, 20],
        ]),
      ],
      { operation: { spindle: { rpm: 480_000, direction: "cw" } } },
    );
    expect(findings).toEqual([]);
    expect(steps.find((step) => step.kind === "cycle-definition")).toMatchObject({
      cycle: expected,
      depth: -18 * mm,
      retract: 2 * mm,
      level: 2 * mm,
      between: "retract",
    });
    expect(
      motion
        .filter((row) => row.kind === rowKind.hole)
        .map((row) => [row.x / mm, row.y / mm, row.z / mm, row.stated]),
    ).toEqual([
      [10, 10, 2, 3],
      [10, 20, 2, 2],
    ]);
    expect(steps.at(-2)).toEqual({ kind: "cycle", value: "off" });
  });

  it("takes the initial level from the height before, and rises to the retract level first", () => {
    const high = lowerMoves([start, ...holes({ between: "initial" })]);
    expect(high.steps.find((step) => step.kind === "cycle-definition")).toMatchObject({
      level: 15 * mm,
      between: "initial",
    });
    const low = lowerMoves([start, { rapid: { z: 1 } }, ...holes({ between: "initial" })]);
    expect(low.steps.find((step) => step.kind === "cycle-definition")).toMatchObject({ level: 2 * mm });
    expect(low.motion.map((row) => row.z / mm).slice(1, 3)).toEqual([1, 2]);
  });

  it("taps left-handed where the spindle turns so", () => {
    const { steps } = lowerMoves([start, ...holes({ cycle: "tap", lead: mm, feed: 0 })], {
      operation: { spindle: { rpm: 500_000, direction: "ccw" } },
    });
    expect(steps.find((step) => step.kind === "cycle-definition")).toMatchObject({ cycle: "tap-left" });
  });

  it("refuses a tap whose feed cannot be written, and names a speed that fits: 480 x 1.25 = 600", () => {
    const coarse = { feedPerMinuteGrid: { mm: 5 * mm, inch: mm } };
    const tap = holes({ cycle: "tap", lead: 1.25 * mm, feed: 0 });
    const { findings } = lowerMoves([start, ...tap], {
      capabilities: coarse,
      operation: { spindle: { rpm: 477_000, direction: "cw" } },
    });
    expect(findings.map((finding) => finding.rule)).toEqual(["limit/tapping"]);
    expect(findings[0]?.fix).toContain("476 rpm");
  });

  it("refuses taps where the machine has none", () => {
    const none = { ...machine, tapping: { kind: "none", reversal: 0, longhand: false } } as MachineFacts;
    const { findings } = lowerMoves([start, ...holes({ cycle: "tap", lead: mm, feed: 0 })], {
      machine: none,
    });
    expect(findings.map((finding) => finding.rule)).toEqual(["limit/tapping"]);
  });
});

describe("holes as single moves (steps of NISTIR 6556 3.5.16)", () => {
  it("moves across at the height where the tool stands, and rises behind the series", () => {
    const { rows } = lowerMoves([start, ...holes()], { capabilities: without("cycles.drill") });
    expect(said(rows)).toEqual(["r x0 y0", "r x10 y10", "r z2", "f z-18", "r z2", "r z15"]);
  });

  it("feeds out of a bore at its own feed", () => {
    const { motion, steps } = lowerMoves([start, ...holes({ cycle: "bore", feedOut: 400 * mm })]);
    expect(steps.some((step) => step.kind === "cycle-definition")).toBe(false);
    expect(motion.filter((row) => row.kind === rowKind.line).map((row) => row.feed / mm)).toEqual([200, 400]);
  });

  it("writes pecks out where the controller fixes another back-off than the job states", () => {
    const states = (backOff: number) =>
      lowerMoves([start, ...holes({ cycle: "peck", peck: 4 * mm, backOff })]).steps.some(
        (step) => step.kind === "cycle-definition",
      );
    expect(states(0)).toBe(true);
    expect(states(2_500_000)).toBe(true);
    expect(states(5_000_000)).toBe(false);
  });

  it("never taps longhand", () => {
    const { findings } = lowerMoves([start, ...holes({ cycle: "tap", lead: mm, feed: 0 })], {
      capabilities: without("cycles.tap"),
    });
    expect(findings.map((finding) => finding.rule)).toEqual(["lower/cycle"]);
  });

  it("tells a tap cycle that knows one level alone from one that is not there", () => {
    const cycles = {
      backOff: {},
      levels: "initial",
      dwellGrid: 1000,
      peckGrid: undefined,
      saysBackOff: false,
      alongZ: false,
      tapLead: false,
    } as const;
    const { findings } = lowerMoves([start, ...holes({ cycle: "tap", lead: mm, feed: 0 })], {
      capabilities: { cycles },
    });
    expect(findings.map(({ rule, key }) => [rule, key])).toEqual([["lower/cycle", "cycles.return.retract"]]);
    expect(findings[0]?.fix).toContain("cycles: { return: { retract: G99 } }");
  });

  it("rises to the initial level between holes where the dialect cannot say it", () => {
    const cycles = {
      backOff: {},
      levels: "retract",
      dwellGrid: 1000,
      peckGrid: undefined,
      saysBackOff: false,
      alongZ: false,
      tapLead: false,
    } as const;
    const { rows } = lowerMoves(
      [
        start,
        ...holes({ between: "initial" }, [
          [10, 10],
          [20, 10],
        ]),
      ],
      { capabilities: { cycles } },
    );
    expect(said(rows)).toEqual([
      "r x0 y0",
      "r x10 y10",
      "r z2",
      "f z-18",
      "r z15",
      "r x20",
      "r z2",
      "f z-18",
      "r z15",
    ]);
  });
});

describe("rare moves", () => {
  it("passes compensation with the tool's radius offset, or refuses it", () => {
    const comp: Move = { step: { kind: "compensation", side: "left" } };
    expect(lowerMoves([start, comp]).steps).toContainEqual({
      kind: "compensation",
      value: "left",
      offset: 1,
    });
    const { findings } = lowerMoves([start, comp], { capabilities: without("compensation.left") });
    expect(findings.map((finding) => finding.rule)).toEqual(["lower/compensation"]);
  });

  it("rounds a dwell onto the grid of its word", () => {
    const { steps } = lowerMoves([start, { step: { kind: "dwell", time: 1_234_567 } }]);
    expect(steps).toContainEqual({ kind: "dwell", time: 1_235_000 });
  });
});
