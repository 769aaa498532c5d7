import { describe, expect, test } from "vitest";
import type { Finding, MachineFacts } from "#base";
import type { Job } from "#job";
import type { LoweredStep } from "#lower";
import { createGuard } from "#prove";
import { sequence } from "#sequence";
import {
  atSpeedByDwell,
  capabilitiesOf,
  coolantRequest,
  jobOf,
  lowered,
  machineOf,
  mm,
  operationOf,
  rackMachine,
  rackWords,
  requestOf,
  rpm,
  stoppedByDwell,
  toolOf,
} from "./fixtures.ts";
import type { Given, Item } from "./fixtures.ts";

// The guard is an independent state machine over the same steps: whatever sequencing writes, it has to accept.

/** Errors that sequencing and the guard find in a job; the guard may be shown another machine. */
function errorsOf(given: Given, items: readonly (readonly Item[])[], guarded = given.machine): string[] {
  const { request, findings } = requestOf(given);
  const report = (finding: Finding): number => findings.push(finding);
  const guard = createGuard(guarded, request.facts, report, "job");
  const batches = given.job.operations.map((operation, index) =>
    lowered(index, operation, ...(items[index] ?? [])),
  );
  for (const batch of sequence(batches, request, report)) guard.accept(batch);
  guard.end();
  return findings
    .filter(({ severity }) => severity === "error")
    .map(({ rule, message }) => `${rule}: ${message}`);
}

const stop: LoweredStep = { kind: "pause-request", text: "LOOK", optional: false, park: false };
const optionalStop: LoweredStep = { ...stop, optional: true };
const tap: LoweredStep = {
  kind: "cycle-definition",
  cycle: "tap",
  depth: mm(-10),
  retract: mm(2),
  level: mm(2),
  between: "retract",
  levelStated: true,
  peck: 0,
  dwell: 0,
};

const jobs: Readonly<Record<string, { readonly job: Job; readonly items: readonly (readonly Item[])[] }>> = {
  "one cut": { job: jobOf([operationOf(1)]), items: [] },
  "the same tool in many ways": {
    job: jobOf([
      operationOf(1),
      operationOf(1, 9000, { coolant: ["mist"] }),
      operationOf(1, 9000, { coolant: ["flood"] }, "ccw"),
      operationOf(1, 9000, { workOffset: 2, clearance: mm(40) }, "ccw"),
      operationOf(1, 12000, { workOffset: 2, clearance: mm(15) }, "ccw"),
    ]),
    items: [],
  },
  "two tools at the same hole": { job: jobOf([operationOf(1), operationOf(2), operationOf(1)]), items: [] },
  "a pen after a cutter": {
    job: jobOf(
      [operationOf(1, 18000, { coolant: ["mist"] }), operationOf(2, 0), operationOf(3)],
      [toolOf(1), toolOf(2, "pen"), toolOf(3)],
    ),
    items: [
      [],
      [
        { x: 40, y: 5 },
        { z: 0, feed: 500 },
        { x: 60, feed: 500 },
      ],
    ],
  },
  "stops, speeds and coolant on the way": {
    job: jobOf([operationOf(1), operationOf(2)]),
    items: [
      [{ x: 1, y: 1 }, { z: 1, feed: 100 }, { z: 20 }, stop, { z: 1, feed: 100 }],
      [
        { x: 1, y: 1 },
        { kind: "speed-request", rpm: rpm(6000) },
        { z: 1, feed: 100 },
        coolantRequest("mist"),
        { x: 5, feed: 100 },
        { z: 15 },
        optionalStop,
        { x: 9 },
        { z: 1, feed: 100 },
      ],
    ],
  },
  "a tap between cuts": {
    job: jobOf(
      [operationOf(1, 6000), operationOf(1, 6000), operationOf(2)],
      [toolOf(1, "tap", { lead: mm(1) }), toolOf(2)],
    ),
    items: [
      [{ x: 1, y: 1 }, { z: 5 }, { z: 2 }, tap, { kind: "cycle", value: "off" }, { z: 1, feed: 6000 }],
      [{ x: 2, y: 2 }, { z: 5 }],
    ],
  },
};

const controller = machineOf({ tapping: { kind: "floating", reversal: 1_000_000, longhand: false } });
const { tapping } = controller;
const rack = rackMachine({ tapping });
const retract = controller.retract as NonNullable<MachineFacts["retract"]>;
const lengthOffset = controller.lengthOffset as NonNullable<MachineFacts["lengthOffset"]>;
const rackFacts = rack.rack as NonNullable<MachineFacts["rack"]>;
const measure = capabilitiesOf({}, { "idioms.measure": true });
const rackCapabilities = capabilitiesOf(
  {},
  { ...rackWords, "idioms.taper-air-on": true, "idioms.taper-air-off": true },
);
const hoodWords = capabilitiesOf({}, { "idioms.hood-up": true, "idioms.hood-down": true });
const handSet = capabilitiesOf({}, { "length-offset.on": false, "length-offset.off": false });

type Style = Omit<Given, "job">;

const styles: Readonly<Record<string, Style>> = {
  controller: { machine: controller },
  "controller that ends anywhere": {
    machine: {
      ...controller,
      changeEffects: { position: "unknown", spindle: "stopped", coolant: "off", lengthOffset: "cancelled" },
    },
  },
  "controller that ends at swap height": {
    machine: {
      ...controller,
      changeEffects: {
        position: "swap-height",
        spindle: "stopped",
        coolant: "unchanged",
        lengthOffset: "active",
      },
    },
  },
  "controller with staging": { machine: controller, capabilities: capabilitiesOf({ preselect: true }) },
  "controller with an oriented spindle": {
    machine: { ...controller, spindle: { ...controller.spindle, orient: true } },
  },
  "controller with a hood and a place to park": {
    machine: { ...controller, hood: true, park: { x: mm(600), y: mm(700) } },
    capabilities: hoodWords,
  },
  "start first, apart": {
    machine: controller,
    capabilities: capabilitiesOf({ spindleBlocks: "apart", spindleOrder: "start-first" }),
  },
  "confirmed by time": {
    machine: { ...controller, confirm: { "at-speed": atSpeedByDwell, stopped: stoppedByDwell } },
  },
  "confirmed by time in whole seconds": {
    machine: { ...controller, confirm: { "at-speed": atSpeedByDwell, stopped: stoppedByDwell } },
    capabilities: capabilitiesOf({ dwellGrid: 1_000_000 }),
  },
  "confirmed by the controller": {
    machine: {
      ...controller,
      confirm: { "at-speed": { by: "intrinsic", reason: "" }, stopped: { by: "intrinsic", reason: "" } },
    },
  },
  "stop confirmed by the operator": {
    machine: { ...controller, confirm: { ...controller.confirm, stopped: { by: "operator" } } },
  },
  "reference return": { machine: { ...controller, retract: { ...retract, by: "reference-return" } } },
  "reference return by way of zero increment": {
    machine: {
      ...controller,
      retract: { ...retract, by: "reference-return", intermediate: "incremental-zero" },
    },
  },
  "length offset cancelled first": {
    machine: { ...controller, retract: { ...retract, cancelLengthFirst: true } },
  },
  "length offset that acts on machine moves": {
    machine: { ...controller, retract: { ...retract, actsOn: "tool-tip" } },
  },
  "length offset whose cancelling moves": {
    machine: { ...controller, lengthOffset: { ...lengthOffset, cancelMoves: true } },
  },
  "length offset whose selection moves": {
    machine: { ...controller, lengthOffset: { ...lengthOffset, form: "own-block", selectMoves: true } },
  },
  "length offset in the tool word": {
    machine: { ...controller, lengthOffset: { ...lengthOffset, form: "in-tool-word" } },
  },
  "length offset in the tool word, first tool held": {
    machine: { ...controller, lengthOffset: { ...lengthOffset, form: "in-tool-word" } },
    setup: { spindleHolds: 1 },
  },
  "measured lengths": { machine: { ...controller, lengths: "measured" }, capabilities: measure },
  "incremental program": { machine: controller, capabilities: capabilitiesOf({ distance: "incremental" }) },
  operator: { machine: { ...controller, swap: "operator" } },
  "operator, first tool held": { machine: { ...controller, swap: "operator" }, setup: { spindleHolds: 1 } },
  "operator, measured lengths": {
    machine: { ...controller, swap: "operator", lengths: "measured" },
    capabilities: measure,
  },
  "operator, retract by clearance": {
    machine: {
      ...controller,
      swap: "operator",
      lengths: "operator",
      lengthOffset: { ...lengthOffset, form: "none" },
      retract: { ...retract, by: "clearance", actsOn: "tool-tip", changePosition: { x: 0, y: 0, z: mm(60) } },
    },
    capabilities: handSet,
  },
  ...Object.fromEntries(
    [undefined, 0, 1, 2, 9].map((spindleHolds): [string, Style] => [
      `rack, spindle holds ${String(spindleHolds)}`,
      {
        machine: rack,
        capabilities: rackCapabilities,
        // A tool that the job does not use needs a pocket that the set-up names.
        setup:
          spindleHolds === 2 || spindleHolds === 9
            ? { spindleHolds, rack: [1, 2, 3, 4, 9, 0] }
            : { spindleHolds },
      },
    ]),
  ),
  "rack travelled with a closed drawbar": {
    machine: { ...rack, drawbar: { travels: "clamped", taperAir: true } },
    capabilities: rackCapabilities,
    setup: { spindleHolds: 0 },
  },
  "rack that tools slide into": {
    machine: {
      ...rack,
      rack: { ...rackFacts, style: "slide-in", slide: { x: 0, y: mm(-50), feed: mm(1000) }, zone: undefined },
    },
    capabilities: rackCapabilities,
    setup: { spindleHolds: 0 },
  },
  "rack with a cover, a sensor and an oriented spindle": {
    machine: {
      ...rack,
      spindle: { ...rack.spindle, orient: true },
      signals: { ...rack.signals, "tool-present": { input: 9, level: "on", settle: 0 } },
      rack: { ...rackFacts, cover: true },
    },
    capabilities: capabilitiesOf({}, { ...rackWords, "idioms.cover-open": true, "idioms.cover-close": true }),
    setup: { spindleHolds: 1 },
  },
  "rack worked by time": {
    machine: {
      ...rack,
      signals: {
        "at-speed": { input: 4, level: "on", settle: 0 },
        stopped: { input: 5, level: "on", settle: 0 },
      },
      confirm: {
        ...controller.confirm,
        released: { by: "dwell", time: { op: "number", value: 1_000_000 } },
        clamped: { by: "dwell", time: { op: "number", value: 1_500_000 } },
        air: { by: "dwell", time: { op: "number", value: 200_000 } },
      },
    },
    capabilities: rackCapabilities,
    setup: { spindleHolds: 0 },
  },
  "rack with a reference return, last tool kept": {
    machine: {
      ...rack,
      retract: { ...retract, by: "reference-return" },
      rack: { ...rackFacts, atEnd: "keep" },
    },
    capabilities: rackCapabilities,
    setup: { spindleHolds: 0 },
  },
};

describe.each(Object.entries(styles))("%s", (_style, style) => {
  test.each(Object.entries(jobs))("%s", (_name, { job, items }) => {
    const errors = errorsOf({ ...style, job }, items);
    // Z that the operator has set is known in one work offset alone.
    const isElsewhere = job.operations.some(({ workOffset }) => workOffset !== job.operations[0]?.workOffset);
    if (style.machine.lengths === "operator" && isElsewhere)
      expect(errors).toEqual([expect.stringContaining("offset/active: Work offset 2 begins")]);
    else expect(errors).toEqual([]);
  });
});

test("the guard would notice: a program for a controller that holds by itself, on one that does not", () => {
  const { job, items } = jobs["two tools at the same hole"];
  const errors = errorsOf({ ...styles["confirmed by the controller"], job }, items, controller);
  const rules = new Set(errors.map((error) => error.slice(0, error.indexOf(":"))));
  expect([...rules].sort()).toEqual([
    "program/start",
    "spindle/at-speed",
    "spindle/ends-stopped",
    "spindle/stopped-for-swap",
  ]);
});
