import { describe, expect, test } from "vitest";
import type { Operation } from "#job";
import { jobOf, machineOf, mm, operationOf, run } from "./fixtures.ts";

const modes = ["feed-mode per-minute", "plane xy", "work-offset 1", "path blend", "distance absolute"];

/** From the end of the first operation to the first cut of the second. */
function link(first: Operation, second: Operation): readonly string[] {
  const { lines, findings } = run({ job: jobOf([first, second]), machine: machineOf() });
  expect(findings).toEqual([]);
  const cut = lines.indexOf("line z-1 f200");
  return lines.slice(cut + 2, lines.indexOf("line z-1 f200", cut + 1));
}

describe("two operations with the same tool", () => {
  test("need no swap and no stop: modes, offsets and coolant are restated", () => {
    const operation = operationOf(1, 18000, { coolant: ["mist"] });
    expect(link(operation, operation)).toEqual([
      ...modes,
      "coolant mist on",
      "length-offset 1",
      "rapid x10 y20",
    ]);
  });

  test("change the speed in between", () => {
    expect(link(operationOf(1), operationOf(1, 9000))).toEqual([
      ...modes,
      "spindle-speed 9000",
      "dwell 0.3s",
      "wait input 4 on 10s",
      "length-offset 1",
      "rapid x10 y20",
    ]);
  });

  test("reverse the spindle through a confirmed stop at swap height", () => {
    expect(link(operationOf(1), operationOf(1, 18000, {}, "ccw"))).toEqual([
      "machine rapid z0",
      "spindle-stop",
      "wait input 5 on 30s",
      ...modes,
      "spindle-speed 18000",
      "spindle-start ccw",
      "dwell 0.3s",
      "wait input 4 on 10s",
      "rapid x10 y20",
      "length-offset 1",
      "rapid z15",
    ]);
  });

  test("change the work offset at swap height and approach anew", () => {
    expect(link(operationOf(1), operationOf(1, 18000, { workOffset: 2 }))).toEqual([
      "machine rapid z0",
      "feed-mode per-minute",
      "plane xy",
      "work-offset 2",
      "path blend",
      "distance absolute",
      "rapid x10 y20",
      "length-offset 1",
      "rapid z15",
    ]);
  });

  test("switch coolant off where the media change, then the new ones on", () => {
    const first = operationOf(1, 18000, { coolant: ["mist"] });
    expect(link(first, operationOf(1, 18000, { coolant: ["flood", "mist"] }))).toEqual([
      ...modes,
      "coolant all off",
      "coolant flood on",
      "coolant mist on",
      "length-offset 1",
      "rapid x10 y20",
    ]);
    expect(link(first, operationOf(1))).toContain("coolant all off");
  });

  test("rise first where the new clearance is higher", () => {
    expect(link(operationOf(1), operationOf(1, 18000, { clearance: mm(40) }))).toEqual([
      ...modes,
      "rapid z40",
      "length-offset 1",
      "rapid x10 y20",
    ]);
  });

  test("come down last where the new clearance is lower", () => {
    expect(link(operationOf(1), operationOf(1, 18000, { clearance: mm(5) }))).toEqual([
      ...modes,
      "length-offset 1",
      "rapid x10 y20",
      "rapid z5",
    ]);
  });

  test("approach from the higher of both clearances where the retract is by clearance", () => {
    const retract = machineOf().retract;
    const machine = machineOf({
      retract: retract && { ...retract, by: "clearance", actsOn: "tool-tip" },
      lengthOffset: { form: "none", selectMoves: false, cancelMoves: false },
    });
    const first = operationOf(1);
    const second = operationOf(1, 18000, { workOffset: 2, clearance: mm(40) });
    const { lines } = run({ job: jobOf([first, second]), machine, setup: { spindleHolds: 1 } });
    const from = lines.indexOf("work-offset 2");
    expect(lines.slice(from, from + 6)).toEqual([
      "work-offset 2",
      "path blend",
      "distance absolute",
      "rapid z40",
      "rapid x10 y20",
      "line z-1 f200",
    ]);
  });
});
