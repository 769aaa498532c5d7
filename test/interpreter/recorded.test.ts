import { beforeAll, describe, expect, it } from "vitest";
import { ready } from "../support/ready.ts";
import { meaningsOf } from "./calls-to-meanings.ts";
import { knownDifferences } from "./known-differences.ts";
import { firstDifference } from "./meaning.ts";
import type { MeantProgram } from "./programs.ts";
import { dialect, hashOf, meantProgram, namedJobs, recordedFrom } from "./programs.ts";
import type { InterpreterRecord } from "./record.ts";
import { featuresOf, howToRecord, readRecords, recordedPrograms } from "./record.ts";

/*
 * What Debian's RS274/NGC interpreter did with 200 of our programs, against what our steps mean. It need not be installed here;
 * `npm run test:interpreter` runs it.
 */
describe("recorded runs of the interpreter", () => {
  let programs: MeantProgram[] = [];
  let records: InterpreterRecord[] = [];

  beforeAll(async () => {
    const made = await ready(dialect);
    records = readRecords();
    const names = new Set(records.map(({ name }) => name));
    programs = namedJobs(recordedFrom)
      .filter(({ name }) => names.has(name))
      .map((job) => meantProgram(job, made));
  });

  it("are of the programs that we make today", () => {
    const recorded = new Map(records.map((record) => [record.name, record]));
    const changed = programs.flatMap(({ name, job, program }) => {
      const record = recorded.get(name);
      if (!record || record.job !== hashOf(job)) return [`${name}: the job is another one than was recorded`];
      return record.program === hashOf(program)
        ? []
        : [`${name}: the program text has changed since it was recorded`];
    });
    expect(changed, howToRecord).toEqual([]);
    expect(records.map(({ name }) => name)).toEqual(programs.map(({ name }) => name));
    expect(records).toHaveLength(recordedPrograms);
  });

  it("do what our steps mean", () => {
    const recorded = new Map(records.map((record) => [record.name, record]));
    const different = programs.flatMap(({ name, meanings }) => {
      const difference = firstDifference(meanings, meaningsOf(recorded.get(name)?.calls ?? []));
      return difference === "" ? [] : [`${name} ${difference}`];
    });
    expect(different.slice(0, 5), `${different.length} programs differ`).toEqual([]);
  });

  it("show every code and every kind of arc of the dialect's programs at least three times", () => {
    const shown = new Map<string, number>();
    for (const feature of programs.flatMap(({ program }) => featuresOf(program)))
      shown.set(feature, (shown.get(feature) ?? 0) + 1);
    expect(expected.filter((feature) => (shown.get(feature) ?? 0) < 3)).toEqual([]);
  });
});

/** Codes of moves, cycles, planes, units, offsets, feed modes, path modes, spindle, coolant and stops. */
const expected = [
  ..."G0 G1 G2 G3 G4 G17 G18 G19 G20 G21 G40 G41 G42 G43 G49 G53 G54 G55 G56 G59 G59.3 G61 G64 G80".split(
    " ",
  ),
  ..."G81 G82 G83 G84 G85 G89 G90 G92.2 G93 G94 G98 G99 M0 M1 M2 M3 M4 M5 M6 M7 M8 M9 M48".split(" "),
  // Each plane, both senses, flat and as a helix.
  ...["G17 G2 X Y", "G17 G3 X Y", "G17 G2 X Y Z", "G17 G3 X Y Z"],
  ...["G18 G2 X Z", "G18 G3 X Z", "G18 G2 X Y Z", "G18 G3 X Y Z"],
  ...["G19 G2 Y Z", "G19 G3 Y Z", "G19 G2 X Y Z", "G19 G3 X Y Z"],
];

it("at most five differences from the standard are known", () => {
  expect(knownDifferences.length).toBeLessThanOrEqual(5);
});
