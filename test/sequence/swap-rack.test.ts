import { describe, expect, test } from "vitest";
import type { MachineFacts, RackFacts } from "#base";
import { between, capabilitiesOf, jobOf, mm, operationOf, rackMachine, rackWords, run } from "./fixtures.ts";
import type { Outcome } from "./fixtures.ts";

// The order of a swap by the program: air, release, withdrawal, next pocket, clamp, each confirmed (from memory; the sources
// are the interlocks of a pneumatic drawbar). Heights and places are those of the quarry router's rack.

const two = jobOf([operationOf(1), operationOf(2)]);

function withRack(change: Partial<RackFacts>, more: Partial<MachineFacts> = {}): MachineFacts {
  const machine = rackMachine(more);
  return { ...machine, rack: machine.rack && { ...machine.rack, ...change } };
}

function post(
  machine: MachineFacts,
  holds: number | undefined = 0,
  words: Record<string, boolean> = {},
): Outcome {
  const capabilities = capabilitiesOf({}, { ...rackWords, ...words });
  const outcome = run({ job: two, machine, capabilities, setup: { spindleHolds: holds } });
  expect(outcome.findings).toEqual([]);
  return outcome;
}

/** The swap from tool 1 to tool 2: behind the cancelled length offset, up to the modes of the operation. */
function secondSwap(lines: readonly string[]): readonly string[] {
  const cut = lines.indexOf("line z-1 f200");
  const from = lines.indexOf("length-offset 0", cut);
  return lines.slice(from + 1, lines.indexOf("feed-mode per-minute", from));
}

describe("a rack that tools drop into", () => {
  test("gets the old tool back before the next is picked, with the drawbar open in between", () => {
    expect(secondSwap(post(rackMachine()).lines)).toEqual([
      "path exact",
      "machine rapid x40 y20",
      "machine rapid z-58.4",
      "machine line z-78.4 f600",
      "wait input 6 on 5s",
      "release",
      "wait input 8 on 2s",
      "machine rapid z-5",
      "machine rapid x120 y20",
      "machine rapid z-58.4",
      "machine line z-78.4 f600",
      "wait input 6 on 5s",
      "clamp",
      "wait input 7 on 2s",
      "machine rapid z-5",
      "machine rapid z0",
    ]);
  });

  test("lets an empty spindle open its drawbar above the first pocket", () => {
    expect(between(post(rackMachine()).lines, "length-offset 0", "feed-mode per-minute")).toEqual([
      "path exact",
      "machine rapid x40 y20",
      "machine rapid z-5",
      "wait input 6 on 5s",
      "release",
      "wait input 8 on 2s",
      "machine rapid z-58.4",
      "machine line z-78.4 f600",
      "wait input 6 on 5s",
      "clamp",
      "wait input 7 on 2s",
      "machine rapid z-5",
      "machine rapid z0",
    ]);
  });

  test("is travelled with a closed drawbar where the machine asks for that", () => {
    const machine = rackMachine({ drawbar: { travels: "clamped", taperAir: false } });
    expect(
      between(secondSwap(post(machine).lines), "machine line z-78.4 f600", "machine line z-78.4 f600"),
    ).toEqual([
      "wait input 6 on 5s",
      "release",
      "wait input 8 on 2s",
      "machine rapid z-5",
      "wait input 6 on 5s",
      "clamp",
      "wait input 8 off 2s",
      "machine rapid x120 y20",
      "wait input 6 on 5s",
      "release",
      "wait input 8 on 2s",
      "machine rapid z-58.4",
    ]);
  });

  test("gets its last tool back at the end, and the drawbar is closed", () => {
    const { lines } = post(rackMachine({ park: { x: mm(600), y: mm(800) } }));
    const from = lines.lastIndexOf("length-offset 0");
    expect(lines.slice(from)).toEqual([
      "length-offset 0",
      "path exact",
      "machine rapid x120 y20",
      "machine rapid z-58.4",
      "machine line z-78.4 f600",
      "wait input 6 on 5s",
      "release",
      "wait input 8 on 2s",
      "machine rapid z-5",
      "wait input 6 on 5s",
      "clamp",
      "wait input 8 off 2s",
      "machine rapid z0",
      "machine rapid x600 y800",
      "program-end",
    ]);
  });

  test("keeps its last tool in the spindle where the machine keeps it", () => {
    const { lines } = post(withRack({ atEnd: "keep" }));
    expect(lines.slice(lines.lastIndexOf("length-offset 0"))).toEqual(["length-offset 0", "program-end"]);
  });

  test("has its cover open for the visit only", () => {
    const { lines } = post(withRack({ cover: true }), 0, {
      "idioms.cover-open": true,
      "idioms.cover-close": true,
    });
    const swap = secondSwap(lines);
    expect(swap.slice(0, 3)).toEqual(["path exact", "cover-open", "machine rapid x40 y20"]);
    expect(swap.slice(-2)).toEqual(["machine rapid z0", "cover-close"]);
  });

  test("has the taper blown clean on the way down to a tool", () => {
    const machine = rackMachine({ drawbar: { travels: "released", taperAir: true } });
    const { lines } = post(machine, 0, { "idioms.taper-air-on": true, "idioms.taper-air-off": true });
    expect(between(secondSwap(lines), "machine rapid x120 y20", "clamp")).toEqual([
      "machine rapid z-58.4",
      "taper-air-on",
      "machine line z-78.4 f600",
      "taper-air-off",
      "wait input 6 on 5s",
    ]);
  });

  test("is left only when a tool is seen, where that can be sensed", () => {
    const machine = rackMachine();
    const signals = { ...machine.signals, "tool-present": { input: 9, level: "off" as const, settle: 0 } };
    const { lines } = post({ ...machine, signals });
    expect(between(secondSwap(lines), "clamp", "machine rapid z0")).toEqual([
      "wait input 7 on 2s",
      "wait input 9 off 2s",
      "machine rapid z-5",
    ]);
  });

  test("waits for no air where the machine neither senses it nor says how to be sure of it", () => {
    const machine = rackMachine();
    const { air: _signal, ...signals } = machine.signals;
    const { air: _confirmation, ...confirm } = machine.confirm;
    const { lines } = post({ ...machine, signals, confirm });
    expect(lines.filter((line) => line.startsWith("wait input 6"))).toEqual([]);
    expect(lines).toContain("release");
  });

  test("orients the spindle before each visit, the last one, too", () => {
    const machine = rackMachine();
    const { lines } = post({ ...machine, spindle: { ...machine.spindle, orient: true } });
    expect(lines.filter((line) => line === "spindle-orient")).toHaveLength(3);
  });
});

describe("a rack that tools slide into", () => {
  const machine = withRack({ style: "slide-in", slide: { x: 0, y: mm(-50), feed: mm(1000) } });

  test("is entered with a tool from the side, and left with one to the side", () => {
    expect(secondSwap(post(machine).lines)).toEqual([
      "path exact",
      "machine rapid x40 y70",
      "machine rapid z-58.4",
      "machine line z-78.4 f600",
      "machine line x40 y20 f1000",
      "wait input 6 on 5s",
      "release",
      "wait input 8 on 2s",
      "machine rapid z-5",
      "machine rapid x120 y20",
      "machine rapid z-58.4",
      "machine line z-78.4 f600",
      "wait input 6 on 5s",
      "clamp",
      "wait input 7 on 2s",
      "machine line x120 y70 f1000",
      "machine rapid z-5",
      "machine rapid z0",
    ]);
  });
});

describe("what the spindle holds at the start", () => {
  test("is asked of the operator where nobody knows it, and all is confirmed anew after the stop", () => {
    const { lines } = run({ job: two, machine: rackMachine(), capabilities: capabilitiesOf({}, rackWords) });
    expect(between(lines, "length-offset 0", "path exact")).toEqual([
      "message EMPTY THE SPINDLE AND CLAMP IT",
      "pause",
      "machine rapid z0",
      "coolant all off",
      "spindle-stop",
      "wait input 5 on 30s",
      "length-offset 0",
    ]);
  });

  test("is used at once where it is the first tool, after its clamping was sensed", () => {
    const { lines } = post(rackMachine(), 1);
    expect(between(lines, "length-offset 0", "spindle-speed 18000")).toEqual([
      "wait input 7 on 2s",
      "feed-mode per-minute",
      "plane xy",
      "work-offset 1",
      "path blend",
      "distance absolute",
    ]);
    // Its own pocket is the first one, free so far.
    expect(secondSwap(lines).slice(0, 2)).toEqual(["path exact", "machine rapid x40 y20"]);
  });

  test("goes into its own pocket first where it is another tool", () => {
    const { lines } = post(rackMachine(), 2);
    expect(between(lines, "length-offset 0", "release")).toEqual([
      "path exact",
      "machine rapid x120 y20",
      "machine rapid z-58.4",
      "machine line z-78.4 f600",
      "wait input 6 on 5s",
    ]);
    expect(lines).toContain("machine rapid x40 y20");
  });

  test("goes behind the tools of the job where the job does not use it", () => {
    const job = { ...two };
    const { lines } = run({
      job,
      machine: rackMachine(),
      capabilities: capabilitiesOf({}, rackWords),
      setup: { spindleHolds: 9 },
    });
    expect(between(lines, "length-offset 0", "release")).toContain("machine rapid x200 y20");
  });

  test("finds each tool where the set-up says", () => {
    const setup = { spindleHolds: 0, rack: [0, 0, 2, 0, 1] };
    const { lines } = run({
      job: two,
      machine: rackMachine(),
      capabilities: capabilitiesOf({}, rackWords),
      setup,
    });
    expect(lines.filter((line) => /machine rapid x/.test(line))).toEqual([
      "machine rapid x360 y20",
      "machine rapid x360 y20",
      "machine rapid x200 y20",
      "machine rapid x200 y20",
    ]);
  });
});

describe("modes at the rack", () => {
  test("feeds are per minute, whatever the operation before was in", () => {
    const perTurn = operationOf(1, 18000, { feedMode: "per-revolution" });
    const capabilities = capabilitiesOf({}, { ...rackWords, "feed.per-revolution": true });
    const job = jobOf([perTurn, operationOf(2)]);
    const { lines } = run({ job, machine: rackMachine(), capabilities, setup: { spindleHolds: 0 } });
    const cut = lines.indexOf("line z-1 f200");
    const from = lines.indexOf("length-offset 0", cut);
    expect(lines.slice(from, from + 4)).toEqual([
      "length-offset 0",
      "feed-mode per-minute",
      "path exact",
      "machine rapid x40 y20",
    ]);
  });
});
