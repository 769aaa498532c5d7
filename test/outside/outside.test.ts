import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ReadyDialect } from "../../core/index.ts";
import { postText } from "../../core/index.ts";
import type { UnitSystem } from "#base";
import { randomJob } from "../random/random-job.ts";
import { dialectName, examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import type { Tally } from "./compare.ts";
import { compareProgram, emptyTally } from "./compare.ts";

/*
 * An outside check: a general reader of programs from the registry, written by others, follows ours block by block.
 * compare.ts says what is compared and what is not.
 */
const randomJobs = 300;

/** Programs that the outside reader cannot follow, and how its reading differs; each entry fails when that is no longer so. */
const cannot: readonly {
  readonly dialect: string;
  readonly units?: UnitSystem;
  readonly why: string;
  readonly differs: RegExp;
}[] = [
  {
    dialect: "din-66025",
    units: "inch",
    why: "it does not know G70, and takes inches for millimetres",
    // The clearance of most random jobs is 15 mm.
    differs: /^block \d+ "[^"]*Z0\.5906": z is 15\.00124 for us, 0\.5906 for the other$/,
  },
  {
    dialect: "hand-zeroed",
    why: "it takes absolute arc centres for distances from the start",
    differs: /^block \d+ "[^"]*X6 Y0 [^"]*I0 J0": centre x is 0 for us, 6 for the other$/,
  },
  {
    dialect: "hand-zeroed",
    why: "it passes over the axis words of a block that begins with F",
    differs: /^block \d+ "F[^"]*X[^"]*": 1 motions for us, 0 for the other$/,
  },
  {
    dialect: "least-increment",
    why: "it takes increments without a point for millimetres",
    differs: /^block \d+ "N\d+G00X2362Y0\*": x is 5\.99948 for us, 2362 for the other$/,
  },
  {
    dialect: "longhand",
    why: "it takes increments without a point for millimetres",
    differs: /^block \d+ "[^"]*X\+0006000[^"]*": x is 6 for us, 6000 for the other$/,
  },
];

const follows = (dialect: string, units: UnitSystem): boolean =>
  !cannot.some((one) => one.dialect === dialect && (one.units ?? units) === units);

const dialects = [...new Set(examples.flatMap((example) => example.dialects))];

function shown(tally: Tally): string {
  const left = Object.entries(tally.left).map(([why, count]) => `${why} ${count}`);
  return `differences ${tally.differences.length} of ${tally.compared} moves (arcs ${tally.arcs}; not compared: ${left.join(", ")})`;
}

/** Tallies of programs that it can follow, and of those that it cannot. */
interface Tallies {
  readonly followed: Tally;
  readonly other: Tally;
}

/** Posts jobs and compares their programs; those that are refused have none. */
function tallyOf(jobs: readonly string[], dialect: string, made: ReadyDialect): Tallies {
  const tallies = { followed: emptyTally(), other: emptyTally() };
  for (const job of jobs) {
    const { outcome, program } = postText({ job }, made);
    if (program === undefined) continue;
    const { format, machine } = made.dialect;
    const units = outcome.summary.units ?? "mm";
    const tally = follows(dialectName(dialect), units) ? tallies.followed : tallies.other;
    compareProgram({ text: program, format, machine, units }, tally);
  }
  return tallies;
}

const randomTexts = fc
  .sample(randomJob, { numRuns: randomJobs, seed: 2026 })
  .map((job) => JSON.stringify(job));
const followed = dialects.filter((dialect) => follows(dialectName(dialect), "mm"));

describe.each(followed)("under %s", (dialect) => {
  it("the outside reader makes the same motions of each example", async () => {
    const jobs = examples.filter((example) => example.dialects.includes(dialect)).map(({ job }) => job);
    const { followed: tally } = tallyOf(jobs, dialect, await ready(dialect));
    console.info(`${dialectName(dialect)}, examples: ${shown(tally)}`);
    expect(tally.differences).toEqual([]);
    expect(tally.compared).toBeGreaterThan(100);
    expect(tally.arcs).toBeGreaterThan(10);
  });

  it(`and of ${randomJobs} random jobs`, async () => {
    const { followed: tally } = tallyOf(randomTexts, dialect, await ready(dialect));
    console.info(`${dialectName(dialect)}, random jobs: ${shown(tally)}`);
    expect(tally.differences).toEqual([]);
    expect(tally.compared).toBeGreaterThan(1000);
    expect(tally.arcs).toBeGreaterThan(100);
  });
});

it.each(cannot)("$dialect is not followed: $why", async ({ dialect, differs }) => {
  const jobs = [...examples.map(({ job }) => job), ...randomTexts.slice(0, 40)];
  const { other } = tallyOf(jobs, dialect, await ready(dialect));
  expect(other.differences.filter((one) => differs.test(one))).not.toEqual([]);
});
