import { beforeAll, describe, expect, it } from "vitest";
import { howToRecord } from "../record.ts";
import type { ForeignProgram } from "../reading/foreign.ts";
import { readForeign } from "../reading/read-foreign.ts";
import type { ForeignRecord } from "../reading/records.ts";
import { hashOf, readForeignRecords } from "../reading/records.ts";
import { verdictOf } from "../reading/verdict.ts";
import type { Grid } from "./programs.ts";
import { byHand, grids, recordedParametric, recordFile } from "./programs.ts";
import { writtenParametric } from "./written.ts";

/*
 * Programs with parameters, loops and subprograms: what we read, against what Debian's RS274/NGC interpreter did with them, as
 * it was recorded. `npm run test:interpreter` runs it.
 */
describe("parametric programs", () => {
  const programs = recordedParametric();
  const records = new Map(readForeignRecords(recordFile).map((record) => [record.name, record]));
  let readers: Grid[] = [];

  beforeAll(async () => {
    readers = await grids();
  });

  function wrong(some: readonly ForeignProgram[]): string[] {
    return some.flatMap((program) =>
      readers.flatMap(({ name, ready, slack }) => {
        const record = records.get(program.name);
        const verdict = record
          ? verdictOf(program, readForeign(program.text, ready), record, slack)
          : "is not recorded";
        return verdict === "" ? [] : [`${program.name} (${name}) ${verdict}`];
      }),
    );
  }

  it("are those that were recorded", () => {
    const changed = programs.filter(({ name, text }) => records.get(name)?.hash !== hashOf(text));
    expect(
      changed.map(({ name }) => name),
      howToRecord,
    ).toEqual([]);
    expect([...records.keys()]).toEqual(programs.map(({ name }) => name));
  });

  it("by hand: are read as they are run, or refused for the reason in their table", () => {
    expect(wrong(byHand)).toEqual([]);
    expect(writtenParametric.length).toBeGreaterThanOrEqual(15);
    expect(new Set(programs.map(({ name }) => name)).size).toBe(programs.length);
  });

  it("random: are read as they are run", () => {
    expect(wrong(programs.filter(({ name }) => name.startsWith("parametric")))).toEqual([]);
  });

  it("a record that is another is told", () => {
    const [program] = writtenParametric;
    const record = records.get(program.name) as ForeignRecord;
    const at = record.calls.findLastIndex(({ name }) => name === "STRAIGHT_FEED");
    const calls = record.calls.map((call, index) =>
      index === at ? { ...call, numbers: call.numbers.map((value) => value + 0.01) } : call,
    );
    const [{ ready, slack }] = readers;
    expect(verdictOf(program, readForeign(program.text, ready), { ...record, calls }, slack)).not.toBe("");
  });
});
