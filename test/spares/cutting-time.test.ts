import { expect, test } from "vitest";
import { memorySource } from "#base";
import type { OpenJob } from "#job";
import { openJob } from "#job";
import { postText } from "../../core/index.ts";
import { cuttingTime } from "../../core/spares/cutting-time.ts";
import { examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";

function opened(text: string): OpenJob {
  const job = openJob(memorySource(new TextEncoder().encode(text)), { form: "json" }, (finding) => {
    if (finding.severity === "error") throw new Error(finding.message);
  });
  if (job === undefined) throw new Error("no job");
  return job;
}

/** Minutes for which moves cut, behind a rapid to X0 Y0 from clearance, Z10. */
function minutes(moves: readonly object[], more: object = {}, units = "mm"): number {
  const operation = { id: "op10", tool: 1, spindle: { rpm: 500, direction: "cw" }, ...more };
  const text = JSON.stringify({
    job: "1",
    units,
    clearance: 10,
    tools: [{ number: 1, kind: "tap", diameter: 6 }],
    operations: [{ ...operation, moves: [{ rapid: { x: 0, y: 0 } }, ...moves] }],
  });
  const job = opened(text);
  return cuttingTime(job, job.job.operations[0]) / 60e6;
}

const holes = (kind: string, more: object = {}) => ({
  holes: {
    kind,
    at: [
      [0, 0],
      [50, 0],
    ],
    top: 0,
    depth: -8,
    retract: 2,
    ...more,
  },
  ...(kind === "tap" ? {} : { feed: 100 }),
});

// Reckoned by hand: length / feed.
test.each([
  ["a line", [{ line: { x: 30, y: 40 }, feed: 100 }], 0.5],
  ["a line from clearance, other axes as they were", [{ line: { z: -10 }, feed: 100 }], 0.2],
  ["rapids take none", [{ rapid: { x: 500 } }, { line: { x: 600 }, feed: 100 }], 1],
  ["a feed that holds on", [{ line: { x: 50 }, feed: 100 }, { line: { x: 0 } }], 1],
  ["half a circle", [{ arc: { x: 20, y: 0, cx: 10, cy: 0 }, turn: "cw", feed: 100 }], Math.PI / 10],
  ["a full circle", [{ arc: { x: 0, y: 0, cx: 10, cy: 0 }, turn: "ccw", feed: 100 }], Math.PI / 5],
  [
    "a helix of two turns",
    [{ arc: { x: 0, y: 0, z: -20, cx: 10, cy: 0 }, turn: "ccw", turns: 2, feed: 100 }],
    Math.hypot(40 * Math.PI, 30) / 100,
  ],
  [
    "an arc that stands up",
    [{ arc: { x: 20, z: 10, cx: 10, cz: 10 }, turn: "cw", plane: "zx", feed: 100 }],
    Math.PI / 10,
  ],
  [
    "a path",
    [
      {
        path: {
          kind: "line",
          points: [
            [10, 0, 10],
            [10, 10, 10],
          ],
        },
        feed: 100,
      },
    ],
    0.2,
  ],
  ["a rotary axis alone", [{ line: { a: 30 }, feed: 100 }, { line: { a: 130 } }], 1],
  ["drilled holes", [holes("drill")], 0.2],
  // 10 mm in pecks of 4 from the retract level: 0.25 mm again before the second and the third.
  ["pecked holes", [holes("peck", { peck: 4 })], 0.21],
  ["pecked holes with a back-off", [holes("chip-break", { peck: 4, backOff: 1 })], 0.24],
  ["a back-off is no longer than the hole", [holes("peck", { peck: 4, backOff: 6 })], 0.4],
  ["reamed holes come out at feed", [holes("ream")], 0.4],
  ["bored holes with a feed out", [holes("bore", { feedOut: 200 })], 0.3],
  // 500 rpm x 1 mm = 500 mm/min.
  ["tapped holes", [holes("tap", { lead: 1 })], 0.08],
  ["Z stands at the retract level behind holes", [holes("drill"), { line: { z: -8 }, feed: 100 }], 0.3],
  [
    "or where it stood before them",
    [holes("drill", { between: "initial" }), { line: { z: -8 }, feed: 100 }],
    0.38,
  ],
])("%s", (_, moves, expected) => {
  expect(minutes(moves)).toBeCloseTo(expected, 9);
});

test("feeds of each mode, and of another speed", () => {
  const line = [{ line: { x: 100 }, feed: 0.1 }];
  expect(minutes(line, { feedMode: "per-revolution" })).toBeCloseTo(2, 9);
  expect(minutes([{ spindle: { rpm: 1000 } }, ...line], { feedMode: "per-revolution" })).toBeCloseTo(1, 9);
  expect(minutes([{ line: { x: 100 }, feed: 4 }], { feedMode: "inverse-time" })).toBeCloseTo(0.25, 9);
  const half = { arc: { x: 20, y: 0, cx: 10, cy: 0 }, turn: "cw", feed: 4 };
  expect(minutes([half], { feedMode: "inverse-time" })).toBeCloseTo(0.25, 9);
  expect(minutes([{ line: { x: 5 }, feed: 10 }], {}, "inch")).toBeCloseTo(0.5, 9);
});

test.each(examples.map(({ name, job }) => [name, job] as const))(
  "of %s it is what the clock counts without accelerations",
  async (_, text) => {
    const job = opened(text);
    const { outcome } = postText({ job: text }, await ready("rs274ngc"));
    const { time } = outcome.summary;
    expect(time?.basis).toBe("feeds");
    expect(time?.operations).toHaveLength(job.job.operations.length);
    time?.operations.forEach(({ id, cutting }, index) => {
      const own = cuttingTime(job, job.job.operations[index]) / 1e6;
      // The clock sees rounded motion, and whole milliseconds.
      expect(Math.abs(own - cutting), `${id}: ${String(own)} and ${String(cutting)}`).toBeLessThan(
        0.002 + cutting * 1e-4,
      );
    });
  },
);
