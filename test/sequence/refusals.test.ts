import { describe, expect, test } from "vitest";
import type { Capabilities, Finding, MachineFacts } from "#base";
import type { Job } from "#job";
import { sequence } from "#sequence";
import {
  capabilitiesOf,
  jobOf,
  lowered,
  machineOf,
  mm,
  operationOf,
  rackMachine,
  rackWords,
  requestOf,
  rpm,
  run,
  toolOf,
} from "./fixtures.ts";

const one = jobOf([operationOf(1)]);
const two = jobOf([operationOf(1), operationOf(2)]);

interface Refusal {
  readonly title: string;
  readonly job?: Job;
  readonly machine?: MachineFacts;
  readonly capabilities?: Capabilities;
  /** Rule and key of each finding, in order. */
  readonly findings: readonly string[];
}

const without = (key: string): Capabilities => capabilitiesOf({}, { [key]: undefined });
const none = (key: string): Capabilities => capabilitiesOf({}, { [key]: false });

const cases: readonly Refusal[] = [
  {
    title: "a stop that nothing confirms",
    machine: machineOf({ confirm: {} }),
    findings: ["dialect/undeclared confirm.stopped", "dialect/undeclared confirm.at-speed"],
  },
  {
    title: "no words for motion",
    capabilities: capabilitiesOf({}, { "motion.rapid": false, "motion.line": undefined }),
    findings: ["dialect/undeclared motion.line", "lower/word motion.rapid"],
  },
  {
    title: "no retract",
    machine: machineOf({ retract: undefined }),
    findings: ["dialect/undeclared machine.retract.by"],
  },
  {
    title: "no swap style",
    job: two,
    machine: machineOf({ swap: undefined }),
    findings: ["dialect/undeclared machine.swap"],
  },
  {
    title: "a controller's change whose effects nobody states",
    machine: machineOf({ changeEffects: undefined }),
    findings: ["dialect/undeclared machine.change-effects"],
  },
  {
    title: "no word about lengths",
    machine: machineOf({ lengths: undefined, lengthOffset: undefined }),
    findings: ["dialect/undeclared machine.length-offset.form", "dialect/undeclared machine.lengths"],
  },
  {
    title: "a rack that is not described",
    machine: rackMachine({ rack: undefined, drawbar: undefined }),
    findings: ["dialect/undeclared machine.rack.style", "dialect/undeclared machine.drawbar.travels"],
  },
  {
    title: "a slide that is not described",
    machine: rackMachine({
      rack: { ...(rackMachine().rack as NonNullable<MachineFacts["rack"]>), style: "slide-in" },
    }),
    capabilities: capabilitiesOf({}, rackWords),
    findings: ["dialect/undeclared machine.rack.slide"],
  },
  {
    title: "a drawbar without words or confirmations",
    machine: rackMachine({ confirm: machineOf().confirm }),
    findings: [
      "dialect/undeclared confirm.air",
      "dialect/undeclared idioms.release",
      "dialect/undeclared confirm.released",
      "dialect/undeclared idioms.clamp",
      "dialect/undeclared confirm.clamped",
    ],
  },
  {
    title: "a machine whose speeds have no limits",
    machine: machineOf({ spindle: { ...machineOf().spindle, minRpm: undefined, maxRpm: undefined } }),
    findings: ["dialect/undeclared machine.spindle.min-rpm", "dialect/undeclared machine.spindle.max-rpm"],
  },
  {
    title: "orders and grids of the spindle words",
    capabilities: capabilitiesOf({ spindleBlocks: undefined, speedGrid: undefined }),
    findings: ["dialect/undeclared numbers.speed", "dialect/undeclared spindle.blocks"],
  },
  {
    title: "which of speed and start stands first",
    capabilities: capabilitiesOf({ spindleBlocks: "apart", spindleOrder: undefined }),
    findings: ["dialect/undeclared spindle.order"],
  },
  {
    title: "a dwell without a grid",
    capabilities: capabilitiesOf({ dwellGrid: undefined }),
    findings: ["dialect/undeclared numbers.dwell"],
  },
  {
    title: "how moves are counted",
    capabilities: capabilitiesOf({ distance: undefined }),
    findings: ["dialect/undeclared distance.programs-in"],
  },
  {
    title: "staging of tools",
    capabilities: capabilitiesOf({ preselect: undefined }),
    findings: ["dialect/undeclared tools.preselect"],
  },
  ...[
    "spindle.stop",
    "spindle.cw",
    "machine-move",
    "length-offset.on",
    "dwell.code",
    "tools.change",
    "stops.end",
    "idioms.wait-signal",
  ].flatMap((key): Refusal[] => [
    { title: `${key}: none`, capabilities: none(key), findings: [`lower/word ${key}`] },
    { title: `${key} undeclared`, capabilities: without(key), findings: [`dialect/undeclared ${key}`] },
  ]),
  ...["plane.xy", "cancel.rotation", "coolant.off", "length-offset.off", "path.stop", "work-offset.1"].map(
    (key): Refusal => ({
      title: `${key} undeclared`,
      capabilities: without(key),
      findings: [`dialect/undeclared ${key}`],
    }),
  ),
  {
    title: "a work offset without a word",
    job: jobOf([operationOf(1, 18000, { workOffset: 7 })]),
    findings: ["lower/work-offset work-offset.7"],
  },
  {
    title: "a coolant without a word",
    job: jobOf([operationOf(1, 18000, { coolant: ["air"] })]),
    findings: ["lower/coolant coolant.air"],
  },
  {
    title: "a coolant that nobody could switch off",
    job: jobOf([operationOf(1, 18000, { coolant: ["mist"] })]),
    capabilities: none("coolant.off"),
    findings: ["lower/coolant coolant.off"],
  },
  {
    title: "the exact path without a word",
    job: jobOf([operationOf(1, 18000, { path: "exact" })]),
    capabilities: none("path.exact"),
    findings: ["lower/word path.exact"],
  },
  {
    title: "a speed below the machine's least",
    job: jobOf([operationOf(1, 2000)]),
    findings: ["limit/speed machine.spindle.min-rpm"],
  },
  {
    title: "a speed above the machine's most",
    job: jobOf([operationOf(1, 24001)]),
    findings: ["limit/speed machine.spindle.max-rpm"],
  },
  {
    title: "a speed outside the tool's limits",
    job: jobOf(
      [operationOf(1), operationOf(2, 5000)],
      [toolOf(1, "drill", { maxRpm: rpm(12000) }), toolOf(2, "drill", { minRpm: rpm(6000) })],
    ),
    findings: ["limit/speed", "limit/speed"],
  },
  {
    title: "several lengths and nothing that tells them apart",
    job: two,
    machine: machineOf({ lengthOffset: { form: "none", selectMoves: false, cancelMoves: false } }),
    findings: ["offset/active machine.length-offset.form"],
  },
  {
    title: "a controller that swaps and retracts by clearance",
    job: two,
    machine: byClearance({ lengthOffset: { form: "with-first-z", selectMoves: false, cancelMoves: false } }),
    findings: ["dialect/retract machine.retract.by", "dialect/retract machine.retract.by"],
  },
  {
    title: "a length offset that a retract cancels and only a swap brings back",
    job: jobOf([operationOf(1), operationOf(1, 18000, { workOffset: 2 })]),
    machine: cancelling(),
    findings: ["offset/active machine.retract.cancel-length-first"],
  },
];

function byClearance(change: Partial<MachineFacts>): MachineFacts {
  const { retract } = machineOf();
  return machineOf({ ...change, retract: retract && { ...retract, by: "clearance" } });
}

function cancelling(): MachineFacts {
  const { retract } = machineOf();
  return machineOf({
    retract: retract && { ...retract, cancelLengthFirst: true },
    lengthOffset: { form: "in-tool-word", selectMoves: false, cancelMoves: false },
  });
}

const inShort = (finding: Finding): string =>
  finding.key === undefined ? finding.rule : `${finding.rule} ${finding.key}`;

describe("what a job needs and the dialect does not say", () => {
  test.each(cases)("$title", ({ job = one, machine = machineOf(), capabilities, findings }) => {
    const setup = { spindleHolds: machine.swap === "rack" ? 0 : undefined };
    const outcome = run({ job, machine, setup, ...(capabilities ? { capabilities } : {}) });
    expect(outcome.findings.filter(({ severity }) => severity === "error").map(inShort)).toEqual(findings);
    for (const finding of outcome.findings) {
      expect(finding.message.length).toBeGreaterThan(20);
      expect(finding.fix ?? "").not.toBe("");
    }
  });

  test("is said before the first batch", () => {
    const { request } = requestOf({ job: two, machine: machineOf({ confirm: {} }) });
    const findings: Finding[] = [];
    const batches = sequence(
      two.operations.map((operation, index) => lowered(index, operation)),
      request,
      (finding) => findings.push(finding),
    );
    const [first] = batches;
    expect(first?.count).toBeGreaterThan(0);
    expect(findings.map(inShort)).toEqual([
      "dialect/undeclared confirm.stopped",
      "dialect/undeclared confirm.at-speed",
    ]);
  });

  test("names the key, the reason and a line that would say it", () => {
    const { findings } = run({
      job: one,
      machine: machineOf({ confirm: { stopped: { by: "intrinsic", reason: "" } } }),
    });
    expect(findings[0]).toMatchObject({
      message:
        "the dialect does not say `confirm.at-speed`, which this job needs because no tool may cut before the spindle is up to speed",
      fix: "state it in the dialect file, for instance `confirm: { at-speed: { wait: at-speed, timeout: ? s } }`, with a time that you have taken with a watch in place of the question mark",
      place: { source: "job", offset: 0 },
    });
  });
});

describe("hints", () => {
  test("a speed off the grid of its word is rounded and said", () => {
    const { lines, findings } = run({ job: jobOf([operationOf(1, 12000.5)]), machine: machineOf() });
    expect(lines).toContain("spindle-speed 12001");
    expect(findings.map(({ rule, severity, message }) => [rule, severity, message])).toEqual([
      ["lower/rounded", "note", "12000.5 rpm is written as 12001 rpm"],
    ]);
  });

  test("a dialect without a machine says so", () => {
    const { findings } = run({ job: one, machine: machineOf({ declared: false }) });
    expect(findings.map(({ rule, severity }) => `${rule} ${severity}`)).toEqual([
      "dialect/no-machine warning",
    ]);
  });

  test("a machine that is stated in part: what is not checked, and what is not its own", () => {
    const unsaid = ["machine.travel.z", "confirm.stopped"];
    const { findings } = run({ job: one, machine: machineOf({ unsaid }) });
    expect(findings.map(({ rule, severity, key }) => [rule, severity, key])).toEqual([
      ["dialect/no-machine", "warning", "machine.travel.z"],
      ["dialect/no-machine", "warning", "confirm.stopped"],
    ]);
    expect(findings[0].message).toContain("not checked: `machine.travel.z`");
  });

  test("a change of speed in the moves is held against the limits, too", () => {
    const { findings } = run({ job: one, machine: machineOf() }, [
      { x: 0, y: 0 },
      { kind: "speed-request", rpm: rpm(30000) },
    ]);
    expect(findings.map(({ message }) => message)).toEqual([
      "30000 rpm is above the most speed of the machine, 24000 rpm",
    ]);
  });

  test("one zero set by hand is enough for one work offset", () => {
    const said = Object.fromEntries([1, 2].map((number) => [`work-offset.${String(number)}`, false]));
    const { lines, findings } = run({
      job: one,
      machine: machineOf(),
      capabilities: capabilitiesOf({}, said),
    });
    expect(findings).toEqual([]);
    expect(lines.filter((line) => line.startsWith("work"))).toEqual([]);
    const several = jobOf([operationOf(1), operationOf(1, 18000, { workOffset: 2, clearance: mm(20) })]);
    const outcome = run({ job: several, machine: machineOf(), capabilities: capabilitiesOf({}, said) });
    expect(outcome.findings.map(inShort)).toEqual([
      "lower/work-offset work-offset.1",
      "lower/work-offset work-offset.2",
    ]);
  });
});
