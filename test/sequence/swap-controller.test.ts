import { describe, expect, test } from "vitest";
import type { Effects, MachineFacts } from "#base";
import { between, capabilitiesOf, jobOf, machineOf, operationOf, run, toolOf } from "./fixtures.ts";

const two = jobOf([operationOf(1), operationOf(2, 9000)]);

/** From the last cut of the first tool to the first approach of the second. */
function swapOf(lines: readonly string[]): readonly string[] {
  const from = lines.indexOf("line z-1 f200");
  return lines.slice(from + 2, lines.indexOf("rapid x10 y20", from));
}

function withEffects(change: Partial<Effects>): MachineFacts {
  const machine = machineOf();
  return { ...machine, changeEffects: machine.changeEffects && { ...machine.changeEffects, ...change } };
}

describe("the controller's own change", () => {
  test("comes after all is up, off, stopped and confirmed, and is followed by all modes", () => {
    const { lines, findings } = run({ job: two, machine: machineOf() });
    expect(findings).toEqual([]);
    expect(swapOf(lines)).toEqual([
      "machine rapid z0",
      "coolant all off",
      "spindle-stop",
      "wait input 5 on 30s",
      "length-offset 0",
      "select-tool 2",
      "change-tool",
      "feed-mode per-minute",
      "plane xy",
      "work-offset 1",
      "path blend",
      "distance absolute",
      "spindle-speed 9000",
      "spindle-start cw",
      "dwell 0.3s",
      "wait input 4 on 10s",
    ]);
  });

  test("is followed by a retract where it ends nobody knows where", () => {
    const { lines } = run({ job: two, machine: withEffects({ position: "unknown" }) });
    expect(between(swapOf(lines), "select-tool 2", "feed-mode per-minute")).toEqual([
      "change-tool",
      "machine rapid z0",
    ]);
  });

  test("is not followed by a retract where it ends at swap height", () => {
    const { lines } = run({ job: two, machine: withEffects({ position: "swap-height" }) });
    expect(between(swapOf(lines), "select-tool 2", "feed-mode per-minute")).toEqual(["change-tool"]);
  });

  test("orients the spindle before", () => {
    const machine = machineOf();
    const { lines } = run({
      job: two,
      machine: { ...machine, spindle: { ...machine.spindle, orient: true } },
    });
    expect(between(swapOf(lines), "wait input 5 on 30s", "select-tool 2")).toEqual([
      "spindle-orient",
      "length-offset 0",
    ]);
  });

  test("stages the next tool behind each change, none behind the last", () => {
    const job = jobOf([operationOf(1), operationOf(2), operationOf(2, 9000), operationOf(1)]);
    const { lines } = run({ job, machine: machineOf(), capabilities: capabilitiesOf({ preselect: true }) });
    expect(lines.filter((line) => /tool/.test(line))).toEqual([
      "select-tool 1",
      "change-tool",
      "select-tool 2",
      "select-tool 2",
      "change-tool",
      "select-tool 1",
      "select-tool 1",
      "change-tool",
    ]);
  });

  test("is left out for a tool that the spindle holds already", () => {
    const { lines } = run({ job: two, machine: machineOf(), setup: { spindleHolds: 1 } });
    expect(between(lines, "length-offset 0", "spindle-speed 18000")).toEqual([
      "feed-mode per-minute",
      "plane xy",
      "work-offset 1",
      "path blend",
      "distance absolute",
    ]);
    expect(lines.filter((line) => line === "change-tool")).toHaveLength(1);
  });

  test("brings the length offset where the tool word does, for a tool that is held, too", () => {
    const machine = machineOf({
      lengthOffset: { form: "in-tool-word", selectMoves: false, cancelMoves: false },
    });
    const { lines } = run({ job: two, machine, setup: { spindleHolds: 1 } });
    expect(lines.filter((line) => /tool|length/.test(line))).toEqual([
      "length-offset 0",
      "select-tool 1",
      "change-tool",
      "length-offset 0",
      "select-tool 2",
      "change-tool",
      "length-offset 0",
    ]);
  });

  test("goes on with a measurement where lengths are measured, and with a retract from it", () => {
    const machine = machineOf({ lengths: "measured" });
    const { lines } = run({
      job: two,
      machine,
      capabilities: capabilitiesOf({}, { "idioms.measure": true }),
    });
    expect(between(swapOf(lines), "select-tool 2", "feed-mode per-minute")).toEqual([
      "change-tool",
      "measure",
      "machine rapid z0",
    ]);
  });

  test("measures a single tool where the job asks for it", () => {
    const job = { ...two, tools: [toolOf(1), toolOf(2, "end-mill", { measure: true })] };
    const { lines } = run({
      job,
      machine: machineOf(),
      capabilities: capabilitiesOf({}, { "idioms.measure": true }),
    });
    expect(lines.filter((line) => line === "measure")).toHaveLength(1);
  });
});
