import { describe, expect, test } from "vitest";
import { after, setMove, setStep, before, drop } from "./break.ts";
import { jobFacts, machineFacts, noJob, rackFacts } from "./facts.ts";
import type { Item } from "./layout.ts";
import { move, step } from "./pieces.ts";
import { faults, guardItems } from "./run.ts";
import { controllerSwap, goodSequences, rackSwap } from "./sequences.ts";
import type { Sequence } from "./sequences.ts";

const rulesOf = (sequence: Sequence): string[] => faults(guardItems(sequence)).map(({ rule }) => rule);
const foreign = (items: Item[], facts = machineFacts()): Sequence => ({ facts, job: noJob, items });

describe("a program without its job", () => {
  for (const [name, make] of Object.entries(goodSequences)) {
    test(`${name} is as good as with it, and one note says what is not checked`, () => {
      const findings = guardItems({ ...make(), job: noJob });
      const found = findings.filter(
        (finding) => finding.severity !== "note" && finding.rule !== "swap/timed",
      );
      // Of a knife nobody can say then that it never turns.
      const still = name === "knife" ? ["spindle/at-speed"] : [];
      expect(found.map(({ rule }) => rule)).toEqual(still);
      expect(
        findings.filter(({ rule, severity }) => rule === "limit/tool" && severity === "note"),
      ).toHaveLength(1);
    });
  }

  test("a feed with a spindle that is started later was one that stood still", () => {
    const { facts, items } = controllerSwap();
    const late = ["start", "settle at-speed", "confirm at-speed"].reduce(
      (sequence, name) => drop(sequence, name),
      foreign(items, facts),
    );
    expect(faults(guardItems(late)).map(({ rule, severity }) => `${rule} ${severity}`)).toEqual([
      "spindle/at-speed error",
    ]);
  });

  test("a length offset of another number than the tool is pointed out, and no more", () => {
    const { facts, items } = controllerSwap();
    const other = items.map((item) =>
      "step" in item && item.step?.kind === "length-offset" && item.step.number > 0
        ? { ...item, step: { ...item.step, number: 9 } }
        : item,
    );
    const found = faults(guardItems(foreign(other, facts))).filter(({ rule }) => rule === "offset/active");
    expect(found.length).toBeGreaterThan(0);
    expect(found.map(({ severity }) => severity)).toEqual(found.map(() => "warning"));
  });

  test("a speed left in force over a change, and a tool got ready in vain, are habits", () => {
    const { facts, items } = controllerSwap();
    const modal = drop(foreign(items, facts), "speed", 1);
    const staged = after(modal, "swap", [step({ kind: "select-tool", tool: 3 })]);
    expect(rulesOf(staged)).toEqual([]);
    expect(rulesOf({ ...staged, job: jobFacts() })).toEqual(["spindle/clamped", "spindle/at-speed"]);
  });

  test("a bare hand-written program is told what is wrong with it, each once", () => {
    const items: Item[] = [
      step({ kind: "program-start", number: 0 }),
      step({ kind: "units", value: "mm" }),
      step({ kind: "distance", value: "absolute" }),
      step({ kind: "select-tool", tool: 1 }),
      step({ kind: "change-tool" }),
      step({ kind: "spindle-speed", rpm: 16_000_000 }),
      step({ kind: "spindle-start", direction: "cw" }),
      move({ kind: "rapid", x: 10, y: 10, z: 5 }),
      move({ kind: "line", z: -2, feed: 200 }),
      move({ kind: "line", x: 60, feed: 800 }),
      step({ kind: "program-end" }),
    ];
    expect(rulesOf(foreign(items))).toEqual([
      "program/start",
      "program/start",
      "program/start",
      "offset/active",
      "motion/approach",
      "offset/active",
      "offset/active",
      "spindle/at-speed",
      "spindle/ends-stopped",
      "program/end",
    ]);
  });
});

describe("what is not checked is said once", () => {
  const notes = (sequence: Sequence): string[] =>
    guardItems(sequence).flatMap(({ rule, severity }) => (severity === "note" ? [rule] : []));

  test("without stock", () =>
    expect(notes({ ...controllerSwap(), job: jobFacts({ stock: undefined }) })).toEqual([
      "motion/rapid-in-stock",
    ]));
  test("without work zero", () =>
    expect(notes({ ...controllerSwap(), job: jobFacts({ workOffsets: [] }) })).toEqual(["limit/travel"]));
  test("without lengths", () => {
    const job = jobFacts();
    const tools = job.tools.map((tool) => ({ ...tool, length: undefined }));
    expect(notes({ ...controllerSwap(), job: { ...job, tools } })).toEqual(["limit/travel"]);
  });
  test("with everything known there is none", () => expect(notes(controllerSwap())).toEqual([]));
});

describe("time only", () => {
  test("each state confirmed by time is warned of once", () => {
    const way = { by: "dwell", time: { op: "number", value: 1e6 } } as const;
    const { confirm } = rackFacts();
    const timed = rackSwap({ confirm: { ...confirm, released: way, clamped: way, stopped: way } });
    const warnings = guardItems(timed).map(({ rule, severity, key }) => `${rule} ${severity} ${key}`);
    expect(warnings.sort()).toEqual([
      "swap/timed warning confirm.clamped",
      "swap/timed warning confirm.released",
      "swap/timed warning confirm.stopped",
    ]);
  });
});

test("a long list of one fault is cut, and counted", () => {
  const one = setMove(controllerSwap(), "cut", { kind: "rapid" });
  const many = Array.from({ length: 150 }, (_, index) => move({ kind: "rapid", x: 20 + (index % 2) }));
  const findings = guardItems(before(one, "cut", many));
  const stock = findings.filter(({ rule }) => rule === "motion/rapid-in-stock");
  expect(stock).toHaveLength(101);
  expect(stock[100].message).toMatch(/^5\d more findings/);
});

test("a dwell in pieces counts together, and none before the start", () => {
  const { confirm } = goodSequences["operator swap at clearance"]().facts;
  const timed = controllerSwap({
    confirm: { stopped: machineFacts().confirm.stopped!, "at-speed": confirm["at-speed"]! },
  });
  const half = { kind: "dwell", time: 2_250_000 } as const;
  const split = before(setStep(timed, "confirm at-speed", { time: 2_250_000 }), "confirm at-speed", [
    step(half),
  ]);
  expect(rulesOf(split)).toEqual([]);
  expect(
    rulesOf(before(setStep(timed, "confirm at-speed", { time: 2_250_000 }), "start", [step(half)])),
  ).toEqual(["spindle/at-speed"]);
});
