import { describe, expect, test } from "vitest";
import { rowKind } from "#base";
import { postText, proveText } from "../../core/index.ts";
import type { TextJob } from "../../core/index.ts";
import { mm } from "../prove/layout.ts";
import { quarryRouter } from "../support/dialects.ts";
import { weatherPlate } from "../support/examples.ts";
import { errorRules, ready } from "../support/ready.ts";
import { cuts, rowsOf } from "./rows.ts";

/* Programs for proving out: a part of the job, a dry run above the stock, optional stops. The demo on its own machine. */

const router = await ready(quarryRouter);

interface PlateOperation {
  readonly id: string;
  readonly tool: number;
}
const { operations } = JSON.parse(weatherPlate) as { operations: PlateOperation[] };
/** Tools short enough for the router to raise them. */
const setup = {
  workOffsets: [],
  lengths: Object.fromEntries(operations.map(({ tool }) => [tool, mm(30)])),
  rack: undefined,
  spindleHolds: undefined,
};
const plate = (options: TextJob["options"] = {}): TextJob => ({ job: weatherPlate, options, setup });

function posted(job: TextJob, dialect = router): string {
  const { outcome, program } = postText(job, dialect);
  expect(errorRules(outcome.findings)).toEqual([]);
  expect(outcome.verdict).toBe("proved");
  return program ?? "";
}

describe("a part of the job", () => {
  test.each(operations.map(({ id }) => id))(
    "--from %s is the tail of the whole behind its own start",
    (from) => {
      const whole = rowsOf(posted(plate()), router).map((row) => JSON.stringify(row));
      const part = rowsOf(posted(plate({ from })), router);
      const texts = part.map((row) => JSON.stringify(row));
      let same = 0;
      while (same < texts.length && texts.at(-1 - same) === whole.at(-1 - same)) same++;
      // What differs is the start: nothing in it cuts, and it states what the operations before had stated.
      const start = part.slice(0, part.length - same);
      expect(start.filter(cuts)).toEqual([]);
      expect(same).toBeGreaterThan(0);
      // All operations from there on are in what is the same.
      const wanted = operations.slice(operations.findIndex(({ id }) => id === from));
      expect(part.filter(cuts).length).toBeGreaterThanOrEqual(wanted.length);
    },
  );

  test.each(operations.map(({ id }) => id))(
    "--only %s is proved, and is not proved for the whole",
    (only) => {
      const program = posted(plate({ only: [only] }));
      expect(proveText(program, router, plate({ only: [only] })).verdict).toBe("proved");
      expect(proveText(program, router, plate()).verdict).toBe("failed");
    },
  );
});

describe("an air cut", () => {
  const airCut = { height: mm(20), feed: mm(500) };

  test("is the same motion, higher, without spindle and coolant, and no faster than its highest feed", () => {
    const own = rowsOf(posted(plate()), router);
    const air = rowsOf(posted(plate({ airCut })), router);
    const moves = (rows: typeof own) => rows.filter(({ kind, machine }) => kind !== undefined && !machine);
    const places = (rows: typeof own, height: number) =>
      moves(rows).map(({ kind, at: [x, y] = [0, 0, 0], arc: [c1, c2, turns] = [0, 0, 0] }) => {
        // The plane of an upright arc has Z first (ZX) or second (YZ).
        const [up1, up2] = [kind === rowKind.arcZx ? height : 0, kind === rowKind.arcYz ? height : 0];
        return [kind, x, y, c1 + up1, c2 + up2, turns];
      });
    expect(places(air, 0)).toEqual(places(own, airCut.height));
    const raised = moves(own).map(({ at: [, , z] = [0, 0, 0], known = 0 }) =>
      known & 4 ? z + airCut.height : z,
    );
    expect(moves(air).map(({ at: [, , z] = [0, 0, 0] }) => z)).toEqual(raised);
    expect(moves(air).map(({ feed }) => feed)).toEqual(
      moves(own).map(({ feed = 0 }) => Math.min(feed, airCut.feed)),
    );
    const kinds = new Set(air.map(({ step }) => step?.kind));
    expect([kinds.has("spindle-start"), kinds.has("spindle-speed")]).toEqual([false, false]);
    expect(air.filter(({ step }) => step?.kind === "coolant" && step.on)).toEqual([]);
    const depths = (rows: typeof own) =>
      rows.flatMap(({ step }) =>
        step?.kind === "cycle-definition" ? [step.depth, step.retract, step.level] : [],
      );
    expect(depths(air)).toEqual(depths(own).map((z) => z + airCut.height));
    expect(depths(air).length).toBeGreaterThan(0);
  });

  test("says so at its head and in what is taken for granted", () => {
    const { outcome, program } = postText(plate({ airCut }), router);
    const head = (program ?? "").split(/\n?N10 /)[0].replaceAll(/\)\s*\(/g, " ");
    expect(head).toContain("AIR CUT ALL MOTION IN THE WORK IS 20 MM HIGHER");
    expect(outcome.summary.assumptions[0]).toBe(
      "AIR CUT: all motion in the work is 20 mm higher, the spindle and the coolant stay off, feeds are at most 500 mm/min.",
    );
  });

  test("is proved with its own options alone", () => {
    const program = posted(plate({ airCut }));
    expect(proveText(program, router, plate({ airCut })).verdict).toBe("proved");
    expect(proveText(program, router, plate()).verdict).toBe("failed");
    expect(proveText(program, router, plate({ airCut: { ...airCut, height: mm(21) } })).verdict).toBe(
      "failed",
    );
    const facts = [plate(), plate({ airCut }), plate({ airCut: { ...airCut, feed: mm(20000) } })].map(
      (job) => postText(job, router).outcome.proof?.facts,
    );
    expect(new Set(facts).size).toBe(3);
  });

  test("is refused where its lowest point is not above the stock", () => {
    const lowest = Math.min(
      ...rowsOf(posted(plate()), router).flatMap((row) => [
        ...(cuts(row) && row.at ? [row.at[2]] : []),
        ...(row.step?.kind === "cycle-definition" ? [row.step.depth] : []),
      ]),
    );
    const top = (JSON.parse(weatherPlate) as { stock: { max: number[] } }).stock.max[2];
    const needed = mm(top) - lowest;
    const { outcome, program } = postText(plate({ airCut: { ...airCut, height: needed } }), router);
    expect(errorRules(outcome.findings)).toEqual(["motion/air-cut"]);
    expect(program).toBeUndefined();
    posted(plate({ airCut: { ...airCut, height: needed + mm(0.001) } }));
  });

  test("is refused where its highest point passes the travel", () => {
    const at = (height: number) => postText(plate({ airCut: { ...airCut, height: mm(height) } }), router);
    // Work zero at -140, tools of 30: the nose has 110 mm from work Z 0 to the top.
    expect(errorRules(at(80).outcome.findings)).toEqual([]);
    const { findings } = at(120).outcome;
    expect(errorRules(findings)).toEqual(["limit/travel"]);
    expect(findings.find(({ rule }) => rule === "limit/travel")?.fix).toMatch(
      /^Raise the air cut by \d+ mm less/,
    );
  });

  test("is refused where the stock is not stated", () => {
    const { stock, ...job } = JSON.parse(weatherPlate) as Record<string, unknown>;
    expect(stock).toBeDefined();
    const { outcome } = postText({ job: JSON.stringify(job), options: { airCut } }, router);
    expect(errorRules(outcome.findings)).toContain("motion/air-cut");
  });
});

describe("an air cut of what needs the spindle", () => {
  const job = (moves: readonly unknown[], more: Record<string, unknown> = {}): string =>
    JSON.stringify({
      job: "1",
      name: "air",
      units: "mm",
      program: { number: 1 },
      stock: { min: [0, 0, -20], max: [100, 80, 0] },
      clearance: 15,
      tools: [{ number: 1, kind: "tap", diameter: 6, lead: 1 }],
      operations: [
        { id: "op10", tool: 1, spindle: { rpm: 600, direction: "cw" }, coolant: "flood", moves, ...more },
      ],
    });
  const airCut = { height: mm(30), feed: mm(400) };

  test("taps become plain moves at the speed times the lead, capped, on a machine that cannot tap, too", async () => {
    const taps = { holes: { kind: "tap", at: [[10, 10], [20, 10]], top: 0, depth: -12, retract: 3, lead: 1 } }; // prettier-ignore
    const text = job([{ rapid: { x: 10, y: 10 } }, taps]);
    const dialect = await ready("rs274ngc");
    const rows = rowsOf(posted({ job: text, options: { airCut } }, dialect), dialect);
    const levels = rows.filter(cuts).map(({ kind, at, feed }) => [kind, at, feed]);
    const hole = (x: number) => [
      [rowKind.line, [mm(x), mm(10), mm(18)], mm(400)],
      [rowKind.line, [mm(x), mm(10), mm(33)], mm(400)],
    ];
    expect(levels).toEqual([...hole(10), ...hole(20)]);
    expect(rows.some(({ step }) => step?.kind === "cycle-definition")).toBe(false);
  });

  test("feeds a revolution become feeds a minute", async () => {
    const moves = [{ rapid: { x: 10, y: 10 } }, { line: { z: -2 }, feed: 0.1 }, { line: { x: 50 }, feed: 2 }, { rapid: { z: 15 } }]; // prettier-ignore
    const dialect = await ready("staged-tools");
    const tools = [{ number: 1, kind: "end-mill", diameter: 6 }];
    const text = JSON.stringify({
      ...(JSON.parse(job(moves, { feedMode: "per-revolution" })) as object),
      tools,
    });
    const rows = rowsOf(posted({ job: text, options: { airCut } }, dialect), dialect);
    expect(rows.filter(cuts).map(({ feed }) => feed)).toEqual([mm(60), mm(400)]);
    expect(rows.some(({ step }) => step?.kind === "feed-mode" && step.value === "per-revolution")).toBe(
      false,
    );
  });

  test("arcs in ZX and YZ keep their centres at their height", async () => {
    const moves = [
      { rapid: { x: 20, y: 20 } },
      { line: { z: 2 }, feed: 300 },
      { arc: { x: 30, z: 2, cz: 2, cx: 25 }, plane: "zx", turn: "cw" },
      { arc: { y: 30, z: 2, cy: 25, cz: 2 }, plane: "yz", turn: "ccw" },
      { rapid: { z: 15 } },
    ];
    const dialect = await ready("rs274ngc");
    const tools = [{ number: 1, kind: "ball-mill", diameter: 6 }];
    const text = JSON.stringify({ ...(JSON.parse(job(moves)) as object), tools });
    const rows = rowsOf(posted({ job: text, options: { airCut } }, dialect), dialect);
    const arcs = rows.filter(({ kind }) => kind === rowKind.arcZx || kind === rowKind.arcYz);
    expect(arcs.map(({ arc }) => arc)).toEqual([
      [mm(32), mm(25), -1],
      [mm(25), mm(32), 1],
    ]);
  });
});

describe("optional stops", () => {
  test("stand before each tool's first operation, once", () => {
    const rows = rowsOf(posted(plate({ optionalStops: true })), router);
    const stops = rows.filter(({ step }) => step?.kind === "pause" && step.optional);
    const own = rowsOf(posted(plate()), router).filter(({ step }) => step?.kind === "pause" && step.optional);
    const tools = new Set(operations.map(({ tool }) => tool));
    expect(stops.length - own.length).toBe(tools.size);
    const texts = rows.flatMap(({ step }) => (step?.kind === "message" ? [step.text] : []));
    for (const tool of tools)
      expect(texts.filter((text) => text.startsWith(`TOOL ${tool},`))).toHaveLength(1);
  });

  test("the tool is in the spindle, which stands, and its approach is still to come", () => {
    const rows = rowsOf(posted(plate({ optionalStops: true })), router);
    const at = rows.findIndex(({ step }) => step?.kind === "pause" && step.optional);
    const before = rows.slice(0, at);
    const last = (kind: string): number => before.findLastIndex(({ step }) => step?.kind === kind);
    expect(
      before.findLastIndex(({ step }) => step?.kind === "auxiliary" && step.action === "clamp"),
    ).toBeGreaterThan(0);
    expect(last("spindle-start")).toBeLessThan(last("spindle-stop"));
    expect(before.filter(cuts)).toEqual([]);
  });

  test("enter the proof", () => {
    const program = posted(plate({ optionalStops: true }));
    expect(proveText(program, router, plate({ optionalStops: true })).verdict).toBe("proved");
    expect(proveText(program, router, plate()).verdict).toBe("failed");
  });

  test("are refused where the controller has no word for them", async () => {
    const dialect = await ready("leaf", {
      leaf: "dialect: leaf\nextends: rs274ngc\nstops: { optional: none }\n",
    });
    const foot = JSON.stringify({
      job: "1",
      name: "one",
      units: "mm",
      clearance: 15,
      tools: [{ number: 1, kind: "end-mill", diameter: 6 }],
      operations: [
        { id: "op10", tool: 1, spindle: { rpm: 6000, direction: "cw" }, moves: [{ rapid: { x: 1, y: 1 } }] },
      ],
    });
    const { outcome } = postText({ job: foot, options: { optionalStops: true } }, dialect);
    expect(errorRules(outcome.findings)).toEqual(["lower/word"]);
  });
});
