import { describe, expect, test } from "vitest";
import { rowKind } from "#base";
import type { Holes } from "#job";
import { lowerMoves, mm } from "../lower/lowering.ts";
import type { Move } from "../lower/lowering.ts";
import { readBlocks } from "../read/support.ts";
import { cycles, returnLevels, unknownCycles } from "./tables/cycles.ts";

const at = "G0 X0 Y0 Z20\n";

describe("a cycle is read as the table has it", () => {
  test.each(cycles)("$code is $kind ($confidence)", ({ code, kind, words, peck, dwell }) => {
    for (const [level, z] of returnLevels) {
      const { lines, rules } = readBlocks(`${at}${code} ${level} X1 Y2 Z-18 R2 ${words}${words && " "}F100`);
      const between = level === "G98" ? "initial" : "retract";
      expect(lines.slice(1)).toEqual([
        `cycle-definition cycle=${kind} depth=-180000000 retract=20000000 level=${String(z * mm)} between=${between} levelStated=true peck=${String(peck)} dwell=${String(dwell)}`,
        `hole x1 y2 z${String(z)} f100`,
      ]);
      expect(rules.filter((rule) => rule !== "block/word-order")).toEqual([]);
    }
  });

  test.each(cycles.filter(({ words }) => words !== ""))("$code needs its words", ({ code, words }) => {
    expect(readBlocks(`${at}${code} G99 X1 Y2 Z-18 R2 F100`).rules).toContain("read/word-missing");
    // The word of another cycle is none of this one.
    const other = words.startsWith("Q") ? "P1" : "Q1";
    expect(readBlocks(`${at}${code} G99 X1 Y2 Z-18 R2 ${words} ${other} F100`).rules).toContain(
      "read/unused-word",
    );
  });

  test.each(unknownCycles)("%s has no meaning", (code) => {
    expect(readBlocks(`${at}${code} G99 X1 Y2 Z-18 R2 F100`).rules).toContain("read/unknown-code");
  });
});

/** Z motions and dwells behind the rapid to the retract level, up to where the tool is back there. */
function longhand(job: NonNullable<(typeof cycles)[number]["job"]>): string[] {
  const { kind, ...fields } = job;
  const head = {
    kind: "holes",
    cycle: kind,
    top: 0,
    depth: -18 * mm,
    retract: 2 * mm,
    peck: 0,
    backOff: 0,
    dwell: 0,
    lead: 0,
    feedOut: 200 * mm,
    between: "retract",
    feed: 200 * mm,
    ...fields,
  } as Holes;
  const moves: Move[] = [
    { rapid: { x: 0, y: 0 } },
    { step: head },
    { hole: [10, 10], feed: 200 },
    { step: { kind: "holes-end" } },
  ];
  const words = Object.fromEntries(cycles.map((cycle) => [`cycles.${cycle.kind}`, false]));
  const capabilities = {
    words: { ...words, "plane.xy": true, "units.mm": true, "feed.per-minute": true, "dwell.code": true },
  };
  const { rows, findings } = lowerMoves(moves, { capabilities });
  expect(findings).toEqual([]);
  const said = rows.flatMap((row) => {
    if (row.step) return row.step.kind === "dwell" ? [`dwell ${String(row.step.time / 1e6)}`] : [];
    return (row.stated & 4) === 0 ? [] : [`${row.kind === rowKind.rapid ? "r" : "f"} z${String(row.z / mm)}`];
  });
  // First the rapid to R, last the way up to the clearance level behind the series.
  expect([said[0], said.at(-1)]).toEqual(["r z2", "r z15"]);
  return said.slice(1, -1);
}

describe("a cycle that is written out makes the motions of the table, one by one", () => {
  const written = cycles.flatMap(({ job, ...cycle }) => (job === undefined ? [] : [{ ...cycle, job }]));
  test.each(written)("$code: $steps", ({ job, steps }) => {
    expect(longhand(job)).toEqual(steps);
  });
});

test("pecks: R2 Z-18 Q4 takes five, ceil((R - Z) / Q)", () => {
  const { steps, peck } = cycles.find(({ code }) => code === "G83") ?? { steps: [], peck: 1 };
  expect(steps.filter((step) => step.startsWith("f"))).toHaveLength(Math.ceil((20 * mm) / peck));
});
