import { describe, expect, test } from "vitest";
import type { MachineFacts } from "#base";
import { between, capabilitiesOf, jobOf, machineOf, mm, operationOf, run, toolOf } from "./fixtures.ts";

const two = {
  ...jobOf([operationOf(1), operationOf(2)]),
  tools: [toolOf(1, "end-mill", { description: "end-mill 6" }), toolOf(2)],
};
const machine = machineOf({ swap: "operator", changeEffects: undefined });

const noLengthWords = capabilitiesOf({}, { "length-offset.on": false, "length-offset.off": false });

function byClearance(change?: { x: number; y: number; z: number }): MachineFacts {
  const { retract } = machine;
  return {
    ...machine,
    lengths: "operator",
    retract: retract && { ...retract, by: "clearance", actsOn: "tool-tip", changePosition: change },
    lengthOffset: { form: "none", selectMoves: false, cancelMoves: false },
  };
}

describe("a change by the operator", () => {
  test("stops for the first tool, too, and retracts after each stop", () => {
    const { lines, findings } = run({ job: two, machine });
    expect(findings).toEqual([]);
    expect(between(lines, "length-offset 0", "feed-mode per-minute")).toEqual([
      "message LOAD TOOL 1, end-mill 6 mm, end-mill 6",
      "select-tool 1",
      "pause",
      "machine rapid z0",
    ]);
    const cut = lines.indexOf("line z-1 f200");
    expect(lines.slice(cut + 2, lines.indexOf("feed-mode per-minute", cut))).toEqual([
      "machine rapid z0",
      "coolant all off",
      "spindle-stop",
      "wait input 5 on 30s",
      "length-offset 0",
      "message LOAD TOOL 2, end-mill 6 mm",
      "select-tool 2",
      "pause",
      "machine rapid z0",
    ]);
  });

  test("is not asked for a tool that the spindle holds", () => {
    const { lines } = run({ job: two, machine, setup: { spindleHolds: 1 } });
    expect(lines.filter((line) => line === "pause")).toHaveLength(1);
  });

  test("goes on with the coolant said anew: nobody knows it after a stop", () => {
    const { lines } = run({ job: two, machine });
    expect(between(lines, "wait input 4 on 10s", "rapid x10 y20")).toEqual(["coolant all off"]);
  });

  test("warns of each tool that no message names: the tool word says a number at most", () => {
    const { lines, findings } = run({
      job: two,
      machine,
      capabilities: capabilitiesOf({}, { "idioms.message": undefined }),
    });
    expect(findings.map(({ rule, severity, key }) => `${rule} ${severity} ${key ?? ""}`)).toEqual([
      "lower/no-message warning idioms.message",
      "lower/no-message warning idioms.message",
    ]);
    expect(findings[0].message).toContain("LOAD TOOL 1, end-mill 6 mm, end-mill 6");
    expect(findings[0].fix).toContain("idioms: { message:");
    expect(lines.filter((line) => line.startsWith("message"))).toEqual([]);
  });

  test("waits for the clamp where it can be sensed", () => {
    const signals = { ...machine.signals, clamped: { input: 7, level: "on" as const, settle: 0 } };
    const confirm = {
      ...machine.confirm,
      clamped: { by: "wait" as const, signal: "clamped" as const, timeout: 2_000_000 },
    };
    const { lines } = run({ job: two, machine: { ...machine, signals, confirm } });
    expect(between(lines, "select-tool 1", "feed-mode per-minute")).toEqual([
      "pause",
      "machine rapid z0",
      "wait input 7 on 2s",
    ]);
  });

  test("stops the spindle again before a length is measured: the operator may have turned it", () => {
    const measured = { ...machine, lengths: "measured" as const };
    const { lines } = run({
      job: two,
      machine: measured,
      capabilities: capabilitiesOf({}, { "idioms.measure": true }),
    });
    expect(between(lines, "select-tool 1", "feed-mode per-minute")).toEqual([
      "pause",
      "machine rapid z0",
      "spindle-stop",
      "wait input 5 on 30s",
      "measure",
      "machine rapid z0",
    ]);
  });
});

describe("a machine that retracts by clearance only", () => {
  test("goes to its change position, Z first, and comes back by way of the clearance", () => {
    const { lines, findings } = run({
      job: two,
      machine: byClearance({ x: mm(-50), y: 0, z: mm(80) }),
      capabilities: noLengthWords,
    });
    expect(findings).toEqual([]);
    const cut = lines.indexOf("line z-1 f200");
    expect(lines.slice(cut + 1, lines.indexOf("feed-mode per-minute", cut))).toEqual([
      "rapid z15",
      "coolant all off",
      "spindle-stop",
      "wait input 5 on 30s",
      "rapid z80",
      "rapid x-50 y0",
      "message LOAD TOOL 2 AND SET Z, end-mill 6 mm",
      "select-tool 2",
      "pause",
      "rapid z15",
    ]);
    expect(between(lines.slice(cut + 1), "wait input 4 on 10s", "line z-1 f200")).toEqual([
      "coolant all off",
      "rapid x10 y20",
    ]);
  });

  test("needs a change position of its own, above the clearance", () => {
    const missing = run({ job: two, machine: byClearance() });
    expect(missing.findings.map(({ rule, key }) => [rule, key])).toEqual([
      ["dialect/undeclared", "machine.retract.change-position"],
    ]);
    const first = run({ job: jobOf([operationOf(1)]), machine: byClearance(), capabilities: noLengthWords });
    expect(first.findings).toEqual([]);
    expect(between(first.lines, "rapid z15", "feed-mode per-minute")).toEqual([
      "message LOAD TOOL 1 AND SET Z, end-mill 6 mm",
      "select-tool 1",
      "pause",
      "rapid z15",
    ]);
    const low = run({ job: two, machine: byClearance({ x: 0, y: 0, z: mm(10) }) });
    expect(low.findings.map(({ rule }) => rule)).toContain("swap/retracted");
  });
});
