import { expect, test } from "vitest";
import type { Times } from "#base";
import { durationText, timeText } from "../../core/8-report/time-text.ts";

const none: Times = {
  cutting: 542,
  rapid: 0,
  dwell: 0,
  spindle: 0,
  swap: 0,
  total: 751.4,
  basis: "acceleration",
  operations: [],
  tools: [],
  stops: 0,
  optionalStops: 0,
  swaps: { automatic: 0, byHand: 0, saving: 0, oneByHand: 180 },
  assumptions: [],
};

test.each([
  [0, "0.0 s"],
  [59.94, "59.9 s"],
  [59.96, "1 min 00 s"],
  [751.4, "12 min 31 s"],
  [3599.6, "1 h 00 min"],
  [7325, "2 h 02 min"],
])("%d s is %s", (seconds, text) => {
  expect(durationText(seconds)).toBe(text);
});

test("what is in no sum, what swaps save and what the time rests on is said", () => {
  expect(timeText(none)).toBe("12 min 31 s, of it cutting 9 min 02 s");
  const swaps = { automatic: 2, byHand: 0, saving: 330, oneByHand: 180 };
  expect(timeText({ ...none, rapid: 30, swap: 30, swaps, stops: 1, optionalStops: 2, basis: "feeds" })).toBe(
    "12 min 31 s, of it cutting 9 min 02 s, rapids 30.0 s, swaps 30.0 s; automatic swaps save 5 min 30 s against " +
      "3 min 00 s each by hand; not counted: 1 stop and 2 optional stops; from feeds alone, machine.acceleration is not stated",
  );
});
