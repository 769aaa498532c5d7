import { describe, expect, test } from "vitest";
import type { CycleDefinition, MachineFacts } from "#base";
import {
  atSpeedByDwell,
  between,
  capabilitiesOf,
  jobOf,
  machineOf,
  operationOf,
  rpm,
  run,
  s,
  stoppedByDwell,
} from "./fixtures.ts";

/** Confirms both states by time: spin-up 6 s and coast-down 25 s at 24000 rpm, and half a second more. */
const timed = machineOf({ confirm: { "at-speed": atSpeedByDwell, stopped: stoppedByDwell } });
const dwells = (lines: readonly string[]): string[] =>
  lines.filter((line) => line.startsWith("dwell")).map((line) => line.slice(6));

describe("confirmation by dwell", () => {
  test("counts from the speed before", () => {
    const { lines, findings } = run({
      job: jobOf([operationOf(1, 18000), operationOf(2, 9000)]),
      machine: timed,
    });
    expect(findings).toEqual([]);
    expect(dwells(lines)).toEqual([
      "25.5s", // stop from an unknown speed, so from 24000: 25 * 24000 / 24000 + 0.5
      "5s", // 0 -> 18000: 6 * 18000 / 24000 + 0.5
      "19.25s", // stop from 18000: 25 * 18000 / 24000 + 0.5
      "2.75s", // 0 -> 9000: 6 * 9000 / 24000 + 0.5
      "9.88s", // stop from 9000: 25 * 9000 / 24000 + 0.5 = 9.875, up to 0.01 s
    ]);
  });

  test("takes the difference where the speed changes, down as well as up", () => {
    const job = jobOf([operationOf(1, 18000), operationOf(1, 12000)]);
    const { lines } = run({ job, machine: timed }, [
      { x: 1, y: 1 },
      { kind: "speed-request", rpm: rpm(20000) },
    ]);
    expect(dwells(lines)).toEqual([
      "25.5s",
      "5s",
      "1s", // 18000 -> 20000: 6 * 2000 / 24000 + 0.5
      "2.5s", // 20000 -> 12000: 6 * 8000 / 24000 + 0.5
      "13s", // stop from 12000
    ]);
  });

  test("is never rounded down, and is one increment at least", () => {
    const tenths = capabilitiesOf({ dwellGrid: s(0.1) });
    const { lines } = run({ job: jobOf([operationOf(1, 9000)]), machine: timed, capabilities: tenths });
    expect(dwells(lines)).toEqual(["25.5s", "2.8s", "9.9s"]);
    const nothing = machineOf({
      confirm: { ...timed.confirm, "at-speed": { by: "dwell", time: { op: "number", value: 0 } } },
    });
    expect(dwells(run({ job: jobOf([operationOf(1)]), machine: nothing }).lines)[1]).toBe("0.01s");
  });

  test("from an unknown speed takes the farthest: after a pause", () => {
    const job = jobOf([operationOf(1, 6000)]);
    const pause = { kind: "pause-request", text: "", optional: false, park: false } as const;
    const { lines } = run({ job, machine: timed }, [{ x: 1, y: 1 }, pause, { z: -1, feed: 200 }]);
    expect(dwells(lines)).toEqual([
      "25.5s",
      "2s", // 0 -> 6000
      "6.75s", // stop from 6000
      "5s", // from anything up to 24000 -> 6000: 6 * 18000 / 24000 + 0.5
      "6.75s",
    ]);
  });

  test("needs the facts that its expression names", () => {
    const spindle = { ...timed.spindle, coastDown: undefined };
    const { findings } = run({ job: jobOf([operationOf(1)]), machine: { ...timed, spindle } });
    expect(findings.map(({ rule, key }) => [rule, key])).toEqual([
      ["dialect/undeclared", "machine.spindle.coast-down"],
    ]);
  });

  test("refuses an expression that divides by zero", () => {
    const spindle = { ...timed.spindle, maxRpm: 0 };
    const { findings } = run({
      job: jobOf([operationOf(1)]),
      machine: { ...timed, declared: false, spindle },
    });
    expect(findings.map(({ rule, key }) => `${rule} ${key ?? ""}`)).toContain(
      "dialect/expression confirm.stopped",
    );
  });
});

describe("confirmation by signal", () => {
  test("lets an old contact fall off before it waits", () => {
    const { lines } = run({ job: jobOf([operationOf(1)]), machine: machineOf() });
    expect(between(lines, "spindle-start cw", "rapid x10 y20")).toEqual([
      "dwell 0.3s",
      "wait input 4 on 10s",
    ]);
  });

  test("is none where a wait goes on when its time is up", () => {
    const { findings } = run({
      job: jobOf([operationOf(1)]),
      machine: machineOf({ onTimeout: "continues" }),
    });
    expect(findings.map(({ rule, key }) => [rule, key])).toContainEqual([
      "dialect/wait-continues",
      "machine.waits.on-timeout",
    ]);
  });

  test("needs the input and the word", () => {
    const { findings } = run({
      job: jobOf([operationOf(1)]),
      machine: machineOf({ signals: {}, onTimeout: undefined }),
      capabilities: capabilitiesOf({}, { "idioms.wait-signal": undefined }),
    });
    expect(findings.map(({ key }) => key)).toEqual([
      "machine.signals.stopped",
      "machine.waits.on-timeout",
      "machine.signals.at-speed",
    ]);
  });
});

describe("other confirmations", () => {
  test("the controller's own needs no step", () => {
    const held: MachineFacts["confirm"] = {
      "at-speed": { by: "intrinsic", reason: "the controller holds feed until the drive is at speed" },
      stopped: { by: "intrinsic", reason: "M05 ends when the drive stands" },
    };
    const { lines, findings } = run({ job: jobOf([operationOf(1)]), machine: machineOf({ confirm: held }) });
    expect(findings).toEqual([]);
    expect(lines.filter((line) => /wait|dwell/.test(line))).toEqual([]);
  });

  test("the operator's is a stop, and Z goes up after it", () => {
    const machine = machineOf({ confirm: { ...machineOf().confirm, stopped: { by: "operator" } } });
    const { lines, findings } = run({ job: jobOf([operationOf(1)]), machine });
    expect(findings).toEqual([]);
    const end = lines.lastIndexOf("spindle-stop");
    expect(lines.slice(end - 2)).toEqual([
      "machine rapid z0",
      "coolant all off",
      "spindle-stop",
      "message CHECK THAT THE SPINDLE STANDS STILL",
      "pause",
      "machine rapid z0",
      "length-offset 0",
      "program-end",
    ]);
  });

  test("nobody can be asked for anything but the stop", () => {
    const machine = machineOf({ confirm: { ...machineOf().confirm, "at-speed": { by: "operator" } } });
    const { findings } = run({ job: jobOf([operationOf(1)]), machine });
    expect(findings.map(({ rule, key }) => [rule, key])).toEqual([
      ["dialect/confirm-by-operator", "confirm.at-speed"],
    ]);
  });
});

describe("after a tapping cycle", () => {
  const tap: CycleDefinition = {
    kind: "cycle-definition",
    cycle: "tap",
    depth: -100_000_000,
    retract: 20_000_000,
    level: 20_000_000,
    between: "retract",
    levelStated: true,
    peck: 0,
    dwell: 0,
  };
  const off = { kind: "cycle", value: "off" } as const;
  const job = jobOf([operationOf(1, 6000)]);

  test("the spindle is started and confirmed again before the next feed", () => {
    const { lines } = run({ job, machine: machineOf() }, [
      { x: 1, y: 1 },
      tap,
      { z: 2, feed: 500 },
      off,
      { z: 5 },
      { z: 1, feed: 200 },
    ]);
    expect(lines.slice(lines.indexOf("cycle tap to z-10"), lines.indexOf("line z1 f200"))).toEqual([
      "cycle tap to z-10",
      "line z2 f500",
      "cycle off",
      "rapid z5",
      "spindle-speed 6000",
      "spindle-start cw",
      "dwell 0.3s",
      "wait input 4 on 10s",
    ]);
  });

  test("by dwell it takes the time to stop and to start", () => {
    const { lines } = run({ job, machine: timed }, [
      { x: 1, y: 1 },
      tap,
      { z: 2, feed: 500 },
      off,
      { z: 1, feed: 200 },
    ]);
    // stop from 6000: 6.75 s; 0 -> 6000: 2 s
    expect(dwells(lines)).toEqual(["25.5s", "2s", "8.75s", "6.75s"]);
  });

  test("and before the next series, not behind its definition", () => {
    const items = [{ x: 1, y: 1 }, tap, { z: 2, feed: 500 }, off, tap, { z: 2, feed: 500 }, off];
    const { lines } = run({ job, machine: machineOf() }, items);
    expect(lines.filter((line) => /cycle|spindle|line/.test(line))).toEqual([
      "cycle off",
      "spindle-stop",
      "spindle-speed 6000",
      "spindle-start cw",
      "cycle tap to z-10",
      "line z2 f500",
      "cycle off",
      "spindle-speed 6000",
      "spindle-start cw",
      "cycle tap to z-10",
      "line z2 f500",
      "cycle off",
      "spindle-stop",
    ]);
  });

  test("not where a stop follows, but in the next operation with the tool", () => {
    const two = jobOf([operationOf(1, 6000), operationOf(1, 6000)]);
    const { lines } = run({ job: two, machine: machineOf() }, [
      { x: 1, y: 1 },
      tap,
      { z: 2, feed: 500 },
      off,
    ]);
    expect(lines.filter((line) => line.startsWith("spindle"))).toEqual([
      "spindle-stop",
      "spindle-speed 6000",
      "spindle-start cw",
      "spindle-speed 6000",
      "spindle-start cw",
      "spindle-stop",
    ]);
  });
});
