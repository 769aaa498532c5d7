import { describe, expect, test } from "vitest";
import type { LoweredStep } from "#lower";
import { sequence } from "#sequence";
import { printSteps } from "../support/print-steps.ts";
import {
  between,
  capabilitiesOf,
  jobOf,
  lowered,
  machineOf,
  mm,
  operationOf,
  requestOf,
  run,
} from "./fixtures.ts";

// The order is that of a tool change and a safe start by common practice (no source); modes stand in the order of NISTIR
// 6556 Table 8. Step names follow the canonical functions of NISTIR 6556 4.3.

describe("a program with one tool", () => {
  const job = jobOf([operationOf(1, 18000, { coolant: ["mist"] })]);

  test("begins safe, approaches, and leaves the machine safe", () => {
    const { lines, findings } = run({ job, machine: machineOf() });
    expect(findings).toEqual([]);
    expect(lines).toEqual([
      "program-start 0",
      "feed-mode per-minute",
      "overrides on",
      "plane xy",
      "units mm",
      "compensation off",
      "path blend",
      "distance absolute",
      "cycle off",
      "spindle-stop",
      "wait input 5 on 30s",
      "coolant all off",
      "machine rapid z0",
      "length-offset 0",
      "select-tool 1",
      "change-tool",
      "feed-mode per-minute",
      "plane xy",
      "work-offset 1",
      "path blend",
      "distance absolute",
      "spindle-speed 18000",
      "spindle-start cw",
      "dwell 0.3s",
      "wait input 4 on 10s",
      "coolant mist on",
      "rapid x10 y20",
      "length-offset 1",
      "rapid z15",
      "line z-1 f200",
      "rapid z15",
      "machine rapid z0",
      "coolant all off",
      "spindle-stop",
      "wait input 5 on 30s",
      "length-offset 0",
      "program-end",
    ]);
  });

  test("states the words that only some dialects have", () => {
    const said = {
      "cancel.local-shift": true,
      "cancel.rotation": true,
      "cancel.scale": true,
      "arc.centre-words.incremental": true,
      "file.program-number": true,
    };
    const numbered = { ...job, program: { number: 1001, name: undefined } };
    const { lines } = run({ job: numbered, machine: machineOf(), capabilities: capabilitiesOf({}, said) });
    expect(lines[0]).toBe("program-start 1001");
    expect(between(lines, "distance absolute", "spindle-stop")).toEqual([
      "arc-centre incremental",
      "local-shift off",
      "rotation off",
      "scale off",
      "cycle off",
    ]);
  });

  test("parks, raises the hood and switches all outputs off at the end", () => {
    const machine = machineOf({
      hood: true,
      park: { x: mm(600), y: mm(800) },
      outputs: [
        { name: "extraction", number: 3, during: "cutting" },
        { name: "light", number: 9, during: "program" },
      ],
    });
    const said = {
      "idioms.hood-up": true,
      "idioms.hood-down": true,
      "idioms.output-on": true,
      "idioms.output-off": true,
    };
    const { lines, findings } = run({ job, machine, capabilities: capabilitiesOf({}, said) });
    expect(findings).toEqual([]);
    expect(between(lines, "length-offset 0", "rapid x10 y20")).toEqual([
      "output 9 on",
      "hood-up",
      "select-tool 1",
      "change-tool",
      "feed-mode per-minute",
      "plane xy",
      "work-offset 1",
      "path blend",
      "distance absolute",
      "spindle-speed 18000",
      "spindle-start cw",
      "dwell 0.3s",
      "wait input 4 on 10s",
      "output 3 on",
      "hood-down",
      "coolant mist on",
    ]);
    expect(lines.slice(lines.lastIndexOf("machine rapid z0"))).toEqual([
      "machine rapid z0",
      "coolant all off",
      "hood-up",
      "output 3 off",
      "output 9 off",
      "spindle-stop",
      "wait input 5 on 30s",
      "length-offset 0",
      "machine rapid x600 y800",
      "program-end",
    ]);
  });

  test("leaves the hood up where the operation wants it up", () => {
    const said = { "idioms.hood-up": true, "idioms.hood-down": true };
    const raised = jobOf([operationOf(1, 18000, { hood: "up" })]);
    const { lines } = run({
      job: raised,
      machine: machineOf({ hood: true }),
      capabilities: capabilitiesOf({}, said),
    });
    expect(lines.filter((line) => line.startsWith("hood"))).toEqual(["hood-up", "hood-up"]);
  });

  test("says that a hood the program does not work has to be lowered by hand", () => {
    const { findings } = run({ job: jobOf([operationOf(1, 18000, { hood: "down" })]), machine: machineOf() });
    expect(findings.map(({ rule, severity }) => `${rule} ${severity}`)).toEqual(["lower/hood warning"]);
  });

  test("asks for the exact path where the operation does, and for blending otherwise", () => {
    const exact = jobOf([operationOf(1, 18000, { path: "exact" })]);
    expect(run({ job: exact, machine: machineOf() }).lines.filter((line) => line.startsWith("path"))).toEqual(
      ["path exact", "path exact"],
    );
    const onlyExact = capabilitiesOf({}, { "path.blend": false });
    expect(run({ job, machine: machineOf(), capabilities: onlyExact }).lines).toContain("path exact");
    const onlyStop = capabilitiesOf({}, { "path.blend": false, "path.exact": false, "path.stop": true });
    expect(run({ job: exact, machine: machineOf(), capabilities: onlyStop }).lines).toContain("path stop");
  });

  test("goes without a spindle for a pen, and never starts it in an air cut", () => {
    const pen = jobOf([operationOf(1, 0)]);
    const started = (lines: readonly string[]): readonly string[] =>
      lines.filter((line) => /start (cw|ccw)|speed/.test(line));
    expect(started(run({ job: pen, machine: machineOf() }).lines)).toEqual([]);
    const air = run({ job, machine: machineOf(), airCut: true });
    expect(started(air.lines)).toEqual([]);
    expect(air.findings).toEqual([]);
  });
});

describe("retracting", () => {
  const job = jobOf([operationOf(1)]);

  test("by reference return, with an intermediate point of zero increment", () => {
    const retract = machineOf().retract;
    const machine = machineOf({
      retract: retract && { ...retract, by: "reference-return", intermediate: "incremental-zero" },
    });
    const { lines, findings } = run({ job, machine });
    expect(findings).toEqual([]);
    const end = lines.lastIndexOf("reference-return z");
    expect(lines.slice(end - 2, end + 3)).toEqual([
      "rapid z15",
      "distance incremental",
      "reference-return z",
      "distance absolute",
      "coolant all off",
    ]);
  });

  test("cancels the length offset before where the retract would go by it", () => {
    const retract = machineOf().retract;
    const machine = machineOf({ retract: retract && { ...retract, cancelLengthFirst: true } });
    const { lines } = run({ job, machine });
    const end = lines.lastIndexOf("machine rapid z0");
    expect(lines.slice(end - 2)).toEqual([
      "rapid z15",
      "length-offset 0",
      "machine rapid z0",
      "coolant all off",
      "spindle-stop",
      "wait input 5 on 30s",
      "program-end",
    ]);
  });

  test("again where cancelling the length offset moves Z", () => {
    const machine = machineOf({
      lengthOffset: { form: "with-first-z", selectMoves: false, cancelMoves: true },
    });
    const { lines } = run({ job, machine });
    expect(between(lines, "coolant all off", "select-tool 1")).toEqual([
      "machine rapid z0",
      "length-offset 0",
      "machine rapid z0",
    ]);
  });
});

describe("incremental programs", () => {
  test("have the levels of a fixed cycle in absolute coordinates", () => {
    const drill: LoweredStep = {
      kind: "cycle-definition",
      cycle: "drill",
      depth: mm(-5),
      retract: mm(2),
      level: mm(2),
      between: "retract",
      levelStated: true,
      peck: 0,
      dwell: 0,
    };
    const off: LoweredStep = { kind: "cycle", value: "off" };
    const given = {
      job: jobOf([operationOf(1)]),
      machine: machineOf(),
      capabilities: capabilitiesOf({ distance: "incremental" }),
    };
    const { lines } = run(given, [
      { x: 1, y: 1 },
      { z: 5 },
      drill,
      { z: 2, feed: 100 },
      { x: 3, feed: 100 },
      off,
      { z: 9 },
    ]);
    expect(between(lines, "rapid z15", "machine rapid z0")).toEqual([
      "distance incremental",
      "rapid z5",
      "distance absolute",
      "cycle drill to z-5",
      "line z2 f100",
      "line x3 f100",
      "cycle off",
      "distance incremental",
      "rapid z9",
      "rapid z15",
      "distance absolute",
    ]);
  });

  test("go back to increments before a batch of moves that passes whole", () => {
    const { request } = requestOf({
      job: jobOf([operationOf(1)]),
      machine: machineOf(),
      capabilities: capabilitiesOf({ distance: "incremental" }),
    });
    const way = lowered(0, operationOf(1), { x: 10, y: 20 });
    const cut = lowered(0, operationOf(1), { x: 10, y: 20 }, { x: 11, feed: 100 });
    // The start and the way in make one batch, the cut another without a rare step in it.
    way.count = 2;
    for (const column of [cut.kind, cut.known, cut.stated, cut.x, cut.y, cut.z, cut.feed])
      column.copyWithin(0, 2, 3);
    cut.count = 1;
    const lines: string[] = [];
    for (const batch of sequence([way, cut], request, () => undefined)) lines.push(...printSteps([batch]));
    expect(between(lines, "rapid z15", "machine rapid z0")).toEqual([
      "distance incremental",
      "line x11 f100",
      "distance absolute",
    ]);
  });

  test("are absolute wherever there is nothing to count from", () => {
    const { lines } = run({
      job: jobOf([operationOf(1)]),
      machine: machineOf(),
      capabilities: capabilitiesOf({ distance: "incremental" }),
    });
    expect(lines.slice(lines.indexOf("rapid x10 y20"))).toEqual([
      "rapid x10 y20",
      "length-offset 1",
      "rapid z15",
      "distance incremental",
      "line z-1 f200",
      "rapid z15",
      "distance absolute",
      "machine rapid z0",
      "coolant all off",
      "spindle-stop",
      "wait input 5 on 30s",
      "length-offset 0",
      "program-end",
    ]);
  });
});
