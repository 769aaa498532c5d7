import { describe, expect, test } from "vitest";
import { postText, proveText } from "../../core/index.ts";
import { sampleJob } from "../axes/sample-job.ts";
import { errorRules, ready } from "../support/ready.ts";

async function posted(keys: string) {
  const text = `dialect: leaf\ntitle: A leaf\n${keys}`;
  const dialect = await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": text });
  const { outcome, program = "" } = postText({ job: sampleJob }, dialect);
  return { dialect, program, errors: errorRules(outcome.findings) };
}

describe("a stop for the operator that loses the modes, on a machine that retracts by clearance", () => {
  const keys =
    "extends: iso-6983\nstops: { resume: loses-modes }\nwork-offset: [G54, G55]\nmachine: { retract: { change-position: [0, 0, 60] } }\n";

  test("restates modes and work offset first thing, and is proved", async () => {
    const { program, errors } = await posted(keys);
    expect(errors).toEqual([]);
    const behind = [...program.matchAll(/M00\n((?:.*\n){3})/g)].map(([, lines]) => lines);
    const restated = "G94 G17 G40 G90 G80\nG54\nG00 Z15.000\n";
    expect(behind).toEqual([restated, restated]);
  });

  test("is in the work offset in which it stopped until Z is at clearance, whatever the next operation is in", async () => {
    const { dialect, program } = await posted(keys);
    const other = program.replace(/(M00\n.*\n)G54\n/, "$1G55\n");
    expect(other).not.toBe(program);
    expect(errorRules(proveText(other, dialect, { job: sampleJob }).findings)).toContain("offset/change");
  });

  test("is found where it moves before the modes, or before the work offset, are said again", async () => {
    const { dialect, program } = await posted(keys);
    const rules = (text: string): string[] => {
      expect(text).not.toBe(program);
      return errorRules(proveText(text, dialect).findings);
    };
    expect(rules(program.replace(/(M00\n)G94 G17 G40 G90 G80\n/, "$1"))).toContain("program/resume");
    expect(rules(program.replace(/(M00\n.*\n)G54\n/, "$1"))).toContain("offset/active");
  });
});

describe("a machine move that lasts, before an end that resets nothing", () => {
  const keys =
    "extends: rs274ngc\nmotion: { machine-move-lasts: until-work-offset }\nstops: { end-resets: no }\n";

  test("is followed by the work offset, so that the next program does not begin in machine coordinates", async () => {
    const { program, errors } = await posted(keys);
    expect(errors).toEqual([]);
    expect(program).toContain("\nG49 G54\nG94 G17 G40 G90 G80\nM2\n");
  });

  test("is found at the end where the work offset is left out", async () => {
    const { dialect, program } = await posted(keys);
    const left = program.replace("G49 G54\n", "G49\n");
    expect(left).not.toBe(program);
    expect(errorRules(proveText(left, dialect).findings)).toEqual(["program/end"]);
  });
});
