import { describe, expect, test } from "vitest";
import type { Finding, MachineFacts } from "#base";
import type { Job } from "#job";
import { planJobFacts } from "#sequence";
import type { PlannedFacts, Setup } from "#sequence";
import {
  capabilitiesOf,
  jobOf,
  machineOf,
  mm,
  noSetup,
  operationOf,
  rackMachine,
  toolOf,
} from "./fixtures.ts";

interface Plan {
  readonly facts: PlannedFacts;
  readonly findings: readonly string[];
}

function plan(
  job: Job,
  machine: MachineFacts,
  setup: Partial<Setup> = {},
  units: "mm" | "inch" = "mm",
  rackNow?: readonly number[],
): Plan {
  const findings: Finding[] = [];
  const request = {
    job,
    operations: job.operations.map((_, index) => index),
    machine,
    capabilities: capabilitiesOf(),
    units,
    setup: { ...noSetup, ...setup },
    workZero: [undefined, [1, 2, 3], [4, 5, 6]] as const,
    ...(rackNow === undefined ? {} : { rackNow }),
  };
  const facts = planJobFacts(request, (finding) => findings.push(finding));
  return { facts, findings: findings.map(({ rule, message }) => `${rule}: ${message}`) };
}

const tools = (...numbers: number[]): Job => jobOf(numbers.map((number) => operationOf(number)));

describe("the rack plan", () => {
  test("gives pockets in order of first use", () => {
    const { facts, findings } = plan(tools(5, 2, 5, 9), rackMachine());
    expect(findings).toEqual([]);
    expect(facts.rack).toEqual([5, 2, 9, 0, 0, 0]);
    expect(facts.heldPocket).toBeUndefined();
  });

  test("keeps the pocket of the tool in the spindle free", () => {
    const { facts } = plan(tools(5, 2), rackMachine(), { spindleHolds: 2 });
    expect(facts.rack).toEqual([5, 0, 0, 0, 0, 0]);
    expect(facts.heldPocket).toBe(1);
  });

  test("gives a tool that only stands in the spindle a pocket behind the others", () => {
    const { facts } = plan(tools(5, 2), rackMachine(), { spindleHolds: 7 });
    expect(facts.rack).toEqual([5, 2, 0, 0, 0, 0]);
    expect(facts.heldPocket).toBe(2);
  });

  test("follows the set-up, where the tool in the spindle may be listed or not", () => {
    const listed = plan(tools(5, 2), rackMachine(), { rack: [0, 2, 0, 5], spindleHolds: 5 });
    expect(listed.facts.rack).toEqual([0, 2, 0, 0, 0, 0]);
    expect(listed.facts.heldPocket).toBe(3);
    const unlisted = plan(tools(5, 2), rackMachine(), { rack: [1, 2], spindleHolds: 5 });
    expect(unlisted.findings).toEqual([]);
    expect(unlisted.facts.heldPocket).toBe(2);
  });

  test("plans a stop for more tools than pockets", () => {
    const { facts, findings } = plan(tools(1, 2, 3, 4, 5, 6, 7, 1), rackMachine());
    expect(findings).toEqual([]);
    expect(facts.rack).toEqual([1, 2, 3, 4, 5, 6]);
    expect(facts.reloads).toEqual([[1, 7, 3, 4, 5, 6]]);
    expect(facts.reloadsBefore).toEqual([6]);
  });

  test("keeps a pocket for the tool in the spindle, and asks which where nothing says so", () => {
    const { facts, findings } = plan(tools(1, 2, 3, 4, 5, 6), rackMachine(), { spindleHolds: 7 });
    expect(findings).toEqual([
      "limit/pockets: the spindle holds tool 7, which these operations do not use, and nothing says which pocket is its own",
    ]);
    expect(facts.rack).toEqual([1, 2, 3, 4, 5, 0]);
    expect(facts.heldPocket).toBe(5);
    expect(facts.reloadsBefore).toEqual([5]);
  });

  test("leaves tools where they are now, and refuses a rack that cannot be", () => {
    const now = [0, 0, 2, 9];
    expect(plan(tools(1, 2), rackMachine(), {}, "mm", now).facts.rack).toEqual([1, 0, 2, 9, 0, 0]);
    const held = plan(tools(1, 2), rackMachine(), { spindleHolds: 2 }, "mm", now);
    expect(held.findings).toEqual(["limit/pockets: tool 2 is in the spindle and in pocket 3"]);
    const long = plan(tools(1, 2), rackMachine(), {}, "mm", [0, 0, 0, 0, 0, 0, 3]);
    expect(long.findings).toEqual(["limit/pockets: pocket 7 is listed and the rack has 6"]);
  });

  test("refuses a set-up that cannot be", () => {
    const rack = [1, 1, 0, 0, 0, 0, 3];
    const { findings } = plan(tools(1, 2), rackMachine(), { rack });
    expect(findings).toEqual([
      "limit/pockets: the set-up lists 7 pockets and the rack has 6",
      "limit/pockets: tool 2 stands in no pocket of the set-up",
      "limit/pockets: the set-up has tool 1 in two pockets",
    ]);
  });

  test("refuses a set-up without a free pocket for the tool in the spindle", () => {
    const { findings } = plan(tools(1), rackMachine(), { rack: [1, 2, 3, 4, 5, 6], spindleHolds: 9 });
    expect(findings).toEqual(["limit/pockets: tool 9 stands in no pocket of the set-up"]);
  });

  test("refuses tools that do not fit, and those of which nobody knows whether they do", () => {
    const machine = rackMachine();
    const rack = machine.rack && { ...machine.rack, longest: mm(70) };
    const job = jobOf(
      [operationOf(1), operationOf(2), operationOf(3)],
      [
        toolOf(1, "face-mill", { diameter: mm(63), length: mm(50) }),
        toolOf(2, "drill", { length: mm(71) }),
        toolOf(3),
      ],
    );
    expect(plan(job, { ...machine, rack }).findings).toEqual([
      "limit/tool: tool 1 is 63 mm wide and the rack takes 60 mm",
      "limit/tool: tool 2 is 71 mm long and the rack takes 70 mm",
      "limit/tool: tool 3 states no length, and the rack takes tools up to a length",
    ]);
    expect(plan(job, { ...machine, rack }, { lengths: { 3: mm(60) } }).findings).toHaveLength(2);
  });

  test("is empty for machines without a rack", () => {
    expect(plan(tools(1, 2), machineOf()).facts.rack).toEqual([]);
  });
});

describe("other facts", () => {
  test("the set-up comes before the leaf and the job", () => {
    const job = jobOf([operationOf(1)], [toolOf(1, "drill", { length: mm(60) })]);
    const { facts } = plan(job, machineOf(), {
      workOffsets: [undefined, undefined, [7, 8, 9], [1, 1, 1]],
      lengths: { 1: mm(61) },
    });
    expect(facts.workOffsets).toEqual([undefined, [1, 2, 3], [7, 8, 9], [1, 1, 1]]);
    expect(facts.tools[0].length).toBe(mm(61));
  });

  test("the lowest clearance counts, as the program writes it", () => {
    const job = jobOf([
      operationOf(1, 1000, { clearance: mm(15) }),
      operationOf(1, 1000, { clearance: mm(10) }),
    ]);
    expect(plan(job, machineOf()).facts.clearance).toBe(mm(10));
    // 10 mm is 0.3937 inch, 9.99998 mm.
    expect(plan(job, machineOf(), {}, "inch").facts.clearance).toBe(99_999_800);
  });

  test("limits that the job does not state are none", () => {
    const { facts } = plan(jobOf([operationOf(1)]), machineOf());
    expect(facts.tools[0]).toMatchObject({
      maxRpm: Infinity,
      minRpm: 0,
      maxFeed: Infinity,
      radiusOffset: 0,
      lead: 0,
      direction: undefined,
    });
  });

  test("the hand of a tool is its direction; taps are right-handed unless they say otherwise", () => {
    const hands = [
      toolOf(1, "tap"),
      toolOf(2, "tap", { hand: "left" }),
      toolOf(3, "drill", { hand: "right" }),
    ];
    const { facts } = plan(jobOf([operationOf(1)], hands), machineOf());
    expect(facts.tools.map(({ direction }) => direction)).toEqual(["cw", "ccw", "cw"]);
  });

  test("a machine that cannot swap holds the only tool", () => {
    const machine = machineOf({ swap: undefined });
    expect(plan(tools(4, 4), machine).facts.spindleHolds).toBe(4);
    expect(plan(tools(4, 5), machine).facts.spindleHolds).toBeUndefined();
  });
});
