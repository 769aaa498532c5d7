import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { rowKind } from "#base";
import { dialectName, examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { createTally, trySequences } from "./sequences/try-sequences.ts";

/*
 * Sequences with one thing wrong, written and read back: what the emitter makes of one must not be proved for the job.
 * TAPEWRIGHT_SEQUENCE_MUTANTS sets how many there are in all (with fewer than some 2000 not every kind has its turn),
 * TAPEWRIGHT_SEQUENCE_SEED which; TAPEWRIGHT_SEQUENCE_REPORT=1 prints what was counted, kind by kind.
 */
const wanted = Number(process.env["TAPEWRIGHT_SEQUENCE_MUTANTS"] ?? 3_000);
const seed = Number(process.env["TAPEWRIGHT_SEQUENCE_SEED"] ?? 2026);

/** Goldens that are programs; the others are refused before there is a text. */
const programs = readdirSync(resolve(import.meta.dirname, "../goldens")).filter((file) =>
  file.endsWith(".program.txt"),
).length;

/**
 * Changes that the guard finds by itself, wherever they are: what cuts without its cycle, goes to a place of the other
 * coordinates, or leaves a retract or an end out.
 */
const guarded = [
  /^dropped (reference-return|cycle-definition|program-end)$/,
  /^doubled program-end$/,
  /^altered (line|arc..|radius..|hole)\.frame$/,
  /^altered reference-return\.axes$/,
  /^altered (arc|radius)..\.plane$/,
  /^altered machine (rapid|line)\.[xy]$/,
  /^swapped change-tool, reference-return$/,
];

const tally = createTally();
const goldens = examples.flatMap(({ name, job, dialects }) =>
  dialects.map((dialect) => ({ name, job, dialect, short: dialectName(dialect) })),
);
const tried = { programs: 0 };
const total = (): number => [...tally.guard.values()].reduce((sum, { tried: count }) => sum + count, 0);

describe.each(goldens)("$name under $short", ({ job, dialect }) => {
  it("no change of the sequence is missed", async () => {
    // What short programs lack, the later ones make up for.
    const share = Math.ceil((wanted - total()) / (programs - tried.programs));
    const missed = trySequences(job, await ready(dialect), share, seed, tally);
    if (missed === undefined) return;
    tried.programs++;
    expect(missed).toEqual([]);
  }, 7_200_000);
});

describe("all of them", () => {
  it("are as many as were asked for, over every golden that is a program", () => {
    expect(tried.programs).toBe(programs);
    expect(total()).toBeGreaterThanOrEqual(wanted);
    const guardAlone = [...tally.guard.values()].reduce((sum, { found }) => sum + found, 0);
    console.info(`${String(total())} sequences, guard alone finds ${String(guardAlone)}`, ...tally.fates);
    if (process.env["TAPEWRIGHT_SEQUENCE_REPORT"] !== undefined) report();
  });

  it("touch every kind of row that the goldens have", () => {
    const labels = [...tally.guard.keys()].join("\n");
    for (const kind of Object.keys(rowKind).filter((name) => name !== "aside"))
      for (const change of ["dropped", "doubled", "altered"])
        expect(labels).toMatch(RegExp(`${change} ${kind}`));
  });

  it("each of its own sort is found by the guard alone", () => {
    for (const [label, { tried: count, found }] of tally.guard)
      if (guarded.some((labels) => labels.test(label))) expect([label, found]).toEqual([label, count]);
    for (const labels of guarded)
      expect([...tally.guard.keys()].some((label) => labels.test(label))).toBe(true);
  });
});

function report(): void {
  const lines = [...tally.guard].map(
    ([label, { tried: count, found }]) => `${label}: ${String(found)} of ${String(count)}`,
  );
  console.info([...tally.reasons].map(([reason, count]) => `${String(count)} ${reason}`).join("\n"));
  console.info(
    [...tally.rules]
      .sort((a, b) => b[1] - a[1])
      .map(([rule, count]) => `${rule} ${String(count)}`)
      .join("\n"),
  );
  console.info(lines.sort().join("\n"));
}
