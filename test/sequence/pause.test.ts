import { describe, expect, test } from "vitest";
import type { LoweredStep } from "#lower";
import { sequence } from "#sequence";
import { printSteps } from "../support/print-steps.ts";
import { capabilitiesOf, jobOf, lowered, machineOf, mm, operationOf, requestOf, run } from "./fixtures.ts";
import type { Item } from "./fixtures.ts";

const request = (change: Partial<Extract<LoweredStep, { kind: "pause-request" }>> = {}): LoweredStep => ({
  kind: "pause-request",
  text: "TURN THE CLAMP",
  optional: false,
  park: false,
  ...change,
});
const around = (step: LoweredStep, z = 20): Item[] => [
  { x: 10, y: 20 },
  { z: -1, feed: 200 },
  { z },
  step,
  { x: 30, y: 20 },
  { z: -1, feed: 250 },
];
const job = jobOf([operationOf(1, 18000, { coolant: ["mist"], hood: "down" })]);
const machine = machineOf({ hood: true, park: { x: mm(600), y: mm(800) } });
const capabilities = capabilitiesOf({}, { "idioms.hood-up": true, "idioms.hood-down": true });

describe("a pause", () => {
  test("leaves the work with everything safe and comes back with everything restated", () => {
    const { lines, findings } = run({ job, machine, capabilities }, around(request()));
    expect(findings).toEqual([]);
    expect(lines.slice(lines.indexOf("rapid z20") + 1, lines.indexOf("rapid x30 y20"))).toEqual([
      "machine rapid z0",
      "coolant all off",
      "hood-up",
      "spindle-stop",
      "wait input 5 on 30s",
      "message TURN THE CLAMP",
      "pause",
      "machine rapid z0",
      "spindle-speed 18000",
      "spindle-start cw",
      "dwell 0.3s",
      "wait input 4 on 10s",
      "hood-down",
      "coolant all off",
      "coolant mist on",
      "feed-mode per-minute",
      "plane xy",
      "work-offset 1",
      "path blend",
      "distance absolute",
      "rapid x10 y20",
      "length-offset 1",
      "rapid z20",
    ]);
  });

  test("may be optional, and may park first", () => {
    const { lines } = run({ job, machine, capabilities }, around(request({ optional: true, park: true })));
    const from = lines.indexOf("message TURN THE CLAMP");
    expect(lines.slice(from - 2, from + 2)).toEqual([
      "wait input 5 on 30s",
      "machine rapid x600 y800",
      "message TURN THE CLAMP",
      "pause optional",
    ]);
  });

  test("restarts at the speed that was asked for last", () => {
    const items = around(request());
    items.splice(3, 0, { kind: "speed-request", rpm: 9_000_000 });
    const { lines } = run({ job, machine, capabilities }, items);
    expect(lines.filter((line) => line.startsWith("spindle-speed"))).toEqual([
      "spindle-speed 18000",
      "spindle-speed 9000",
      "spindle-speed 9000",
    ]);
  });

  test("restates the plane in force", () => {
    const items: Item[] = around(request());
    items.splice(1, 0, { kind: "plane", value: "zx" });
    const { lines } = run({ job, machine, capabilities }, items);
    expect(lines.filter((line) => line.startsWith("plane"))).toEqual([
      "plane xy",
      "plane xy",
      "plane zx",
      "plane zx",
    ]);
  });

  test("before the first motion goes on to that motion", () => {
    const { lines, findings } = run({ job, machine, capabilities }, [
      request(),
      { x: 10, y: 20 },
      { z: -1, feed: 200 },
    ]);
    expect(findings).toEqual([]);
    expect(lines.slice(lines.lastIndexOf("distance absolute"), lines.indexOf("line z-1 f200"))).toEqual([
      "distance absolute",
      "rapid x10 y20",
      "length-offset 1",
      "rapid z15",
    ]);
  });

  test("is refused below clearance", () => {
    const { findings } = run({ job, machine, capabilities }, around(request(), 5));
    expect(findings.map(({ rule }) => rule)).toEqual(["motion/approach"]);
  });

  test("shows a long text in pieces, cut between words, in the characters of the dialect", () => {
    const { request: whole } = requestOf({ job, machine, capabilities });
    const batch = lowered(
      0,
      job.operations[0],
      ...around(request({ text: "turn the clamp, then close the door" })),
    );
    const cleanText = (text: string): string => text.toUpperCase().replaceAll(",", "").slice(0, 16);
    const lines = printSteps(sequence([batch], { ...whole, cleanText }, () => undefined));
    expect(lines.filter((line) => line.startsWith("message"))).toEqual([
      "message TURN THE CLAMP",
      "message THEN CLOSE THE",
      "message DOOR",
    ]);
  });

  test("says what it leaves out where there are no messages", () => {
    const silent = capabilitiesOf(
      {},
      { "idioms.hood-up": true, "idioms.hood-down": true, "idioms.message": undefined },
    );
    const { lines, findings } = run({ job, machine, capabilities: silent }, around(request()));
    expect(findings.map(({ rule, severity }) => `${rule} ${severity}`)).toEqual(["lower/no-message warning"]);
    expect(findings[0].fix).toContain("idioms: { message:");
    expect(lines.filter((line) => line.startsWith("message"))).toEqual([]);
  });
});
