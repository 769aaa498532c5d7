import { describe, expect, test } from "vitest";
import { evaluate, rowKind } from "#base";
import { postText } from "../../core/index.ts";
import { jobWith } from "../axes/job-with.ts";
import { holesJob } from "../axes/holes-job.ts";
import type { Move } from "../lower/lowering.ts";
import { capabilities, lowerMoves, mm } from "../lower/lowering.ts";
import { ready } from "../support/ready.ts";
import { resolveText } from "../dialect/findings.ts";
import {
  chords,
  dwellTurns,
  feedsPerRevolution,
  helices,
  inverseTimes,
  spinUps,
  tapFeeds,
} from "./tables/formulas.ts";

const feedWord = (program: string | undefined, block: RegExp): number =>
  Number(/F([\d.]+)/.exec(program?.split("\n").find((line) => block.test(line)) ?? "")?.[1]);

test.each(tapFeeds)("tap: $rpm x $lead = $feed mm a minute", async ({ rpm, lead, feed }) => {
  const tap = { kind: "tap", lead };
  const tool = { kind: "tap", diameter: 8, lead };
  const { program, outcome } = postText(
    { job: holesJob([tap], { rpm, direction: "cw" }, tool) },
    await ready("iso-6983"),
  );
  expect(outcome.verdict).toBe("proved");
  expect(feedWord(program, /G84/)).toBe(feed);
});

test.each(feedsPerRevolution)(
  "$perRevolution mm a revolution at $rpm rpm = $feed mm a minute",
  ({ rpm, perRevolution, feed }) => {
    const { motion } = lowerMoves([{ rapid: { x: 0, y: 0 } }, { line: { x: 10 }, feed: perRevolution }], {
      operation: { feedMode: "per-revolution", spindle: { rpm: rpm * 1000, direction: "cw" } },
      capabilities: { words: { ...capabilities().words, "feed.per-revolution": false } },
    });
    expect(motion.find(({ kind }) => kind === rowKind.line)?.feed).toBe(feed * mm);
  },
);

/** A full turn of a radius, with a height at the end, under a controller that differs in these keys of its arcs. */
function turn(radius: number, feed: number, changes: object, down = 0) {
  const moves: Move[] = [
    { rapid: { x: radius, y: 0 } },
    { line: { z: 0 }, feed },
    { arc: { x: radius, y: 0, z: -down }, centre: [0, 0], turns: 1, feed },
  ];
  const arcs = { ...capabilities().arcs, ...changes };
  return (operation: object = {}) => lowerMoves(moves, { capabilities: { arcs }, operation }).motion.slice(2);
}

test.each(inverseTimes)(
  "inverse time: $share of a path at F$whole takes F$word",
  ({ whole, share, word }) => {
    // A feed of a job in inverse time is in 1e-6 a minute; the test's own unit is a tenth of an atom's.
    const pieces = turn(5, whole / 10, { largestSweep: share * 360e6, fullCircle: false })({
      feedMode: "inverse-time",
    });
    const arcs = pieces.filter(({ kind }) => kind === rowKind.arcXy);
    expect(arcs).toHaveLength(1 / share);
    for (const { feed } of arcs) expect(feed / 1e6).toBe(word);
  },
);

test.each(chords)("chords of radius $radius within $tolerance: $count", ({ radius, tolerance, count }) => {
  const rows = turn(radius, 300, { form: "none", chordTolerance: tolerance * mm })();
  const lines = rows.filter(({ kind }) => kind === rowKind.line);
  expect(lines).toHaveLength(count);
  // The middle of a chord is off by its sagitta, and by the rounding of its ends: 0.0005 mm in each axis of each.
  let before = { x: radius * mm, y: 0 };
  for (const line of lines) {
    const middle = Math.hypot(before.x + line.x, before.y + line.y) / 2 / mm;
    expect(radius - middle).toBeLessThan(tolerance + 0.0011);
    before = line;
  }
});

test.each(helices)(
  "helix: F$feed along $path mm is F$circleFeed of the circle",
  ({ radius, down, path, feed, circleFeed }) => {
    expect(Math.hypot(2 * Math.PI * radius, down)).toBeCloseTo(path, 3);
    const [arc] = turn(radius, feed, { feedAlong: "circle" }, down)();
    expect(arc?.feed).toBe(circleFeed * mm);
  },
);

describe("times", () => {
  test.each(dwellTurns)("$seconds s at $rpm rpm are $turns revolutions", async ({ seconds, rpm, turns }) => {
    const moves = [{ rapid: { x: 0, y: 0 } }, { line: { z: -1 }, feed: 100 }, { dwell: seconds }];
    const { program } = postText(
      { job: jobWith(moves, { spindle: { rpm, direction: "cw" } }) },
      await ready("leaf.dialect.yaml", {
        "leaf.dialect.yaml":
          "dialect: leaf\ntitle: A leaf\nextends: staged-tools\nfile: { program-number: none }\n",
      }),
    );
    expect(program).toMatch(RegExp(`G04 P${String(turns)}\\r\\n`));
  });

  test.each(spinUps)(
    "from $from to $to rpm, $ramp s over $most: $seconds s",
    async ({ from, to, ramp, most, seconds }) => {
      const time = "max(spin_up, spin_down) * max(rpm - from_rpm, from_rpm - rpm) / max_rpm";
      const file = `dialect: own\nextends: rs274ngc\nmachine: { spindle: { min-rpm: 1000, max-rpm: ${String(most)}, spin-up: ${String(ramp)} s, spin-down: 4 s, coast-down: 25 s } }\nconfirm: { at-speed: { dwell: "${time}" } }\n`;
      const { dialect } = await resolveText(file);
      const confirmation = dialect?.machine.confirm["at-speed"];
      if (confirmation?.by !== "dwell") throw new Error("no dwell");
      const values = {
        min_rpm: 1e6,
        max_rpm: most * 1000,
        spin_up: ramp * 1e6,
        spin_down: 4e6,
        coast_down: 25e6,
      };
      expect(evaluate(confirmation.time, { ...values, rpm: to * 1000, from_rpm: from * 1000 }) / 1e6).toBe(
        seconds,
      );
    },
  );
});
