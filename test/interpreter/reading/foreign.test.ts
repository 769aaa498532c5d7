import { beforeAll, describe, expect, it } from "vitest";
import type { ReadyDialect } from "../../../core/index.ts";
import { ready } from "../../support/ready.ts";
import { dialect } from "../programs.ts";
import { howToRecord } from "../record.ts";
import type { ForeignProgram } from "./foreign.ts";
import { longBlocks, longPrograms, recordedForeign, smallPrograms } from "./programs.ts";
import { readForeign } from "./read-foreign.ts";
import type { ForeignRecord } from "./records.ts";
import { hashOf, readForeignRecords } from "./records.ts";
import { verdictOf } from "./verdict.ts";

/*
 * Programs that our emitter did not write: what we read, against what Debian's RS274/NGC interpreter did with them. It need not be
 * installed here; `npm run test:interpreter` runs it.
 */
describe("programs from elsewhere", () => {
  const programs = recordedForeign();
  let records = new Map<string, ForeignRecord>();
  let made: ReadyDialect;

  beforeAll(async () => {
    made = await ready(dialect);
    records = new Map(readForeignRecords().map((record) => [record.name, record]));
  });

  /** The verdicts that are not as they should be. */
  function wrong(some: readonly ForeignProgram[]): string[] {
    return some.flatMap((program) => {
      const record = records.get(program.name);
      const verdict = record
        ? verdictOf(program, readForeign(program.text, made), record)
        : "is not recorded";
      return verdict === "" ? [] : [`${program.name} ${verdict}`];
    });
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
    expect(wrong(smallPrograms)).toEqual([]);
    expect(smallPrograms.length).toBeGreaterThan(400);
    expect(new Set(smallPrograms.map(({ name }) => name)).size).toBe(smallPrograms.length);
  });

  it("long, in styles of CAM output: are read as they are run", () => {
    const long = longPrograms();
    expect(wrong(long)).toEqual([]);
    expect(long.filter(({ text }) => text.split("\n").length < longBlocks)).toEqual([]);
  });

  it("random: are read as they are run", () => {
    expect(wrong(programs.filter(({ name }) => name.startsWith("random")))).toEqual([]);
  });
});
