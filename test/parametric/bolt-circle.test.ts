import { describe, expect, it } from "vitest";
import { postText, proveText } from "../../core/index.ts";
import { errorRules, ready } from "../support/ready.ts";
import { boltCircleJob } from "./bolt-circle-job.ts";
import { boltCircleProgram } from "./bolt-circle-program.ts";

/*
 * A program with a subprogram, loops and arithmetic is proved against the job of the same part: holes on a circle, a hexagon, an
 * arc with a computed centre. What is wrong by one character is found, at its line.
 */
const made = await ready("rs274ngc");

const proveIt = (program: string) => proveText(program, made, { job: boltCircleJob });
const lineOf = (program: string, offset: number | undefined): string =>
  program
    .slice(program.lastIndexOf("\n", offset ?? 0) + 1)
    .split("\n")[0]
    .trim();

describe("a bolt circle by a subprogram", () => {
  it("is proved for its job", () => {
    const { verdict, findings, proof } = proveIt(boltCircleProgram);
    expect(findings.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(verdict).toBe("proved");
    expect(proof?.steps).toBe(postText({ job: boltCircleJob }, made).outcome.proof?.steps);
    const notes = findings.filter(({ rule }) => rule === "read/rounded");
    expect(notes.map(({ place }) => lineOf(boltCircleProgram, place?.offset))).toEqual([
      "G0 X[#<_x0> + 22.5 * COS[11]] Y[#<_y0> + 22.5 * SIN[11]]",
    ]);
  });

  it("its form is told, and stops nothing", () => {
    const rules = proveText(boltCircleProgram, made).findings.map(({ rule }) => rule);
    expect(rules.filter((rule) => rule.startsWith("read/") && rule !== "read/rounded")).toEqual([]);
  });

  it.each([
    ["a hole too few", "[11] [8] [7]", "[11] [7] [7]"],
    ["another first angle", "[22.5] [11]", "[22.5] [12]"],
    ["another depth", "[8] [7] [2]", "[8] [7.1] [2]"],
    ["a sign", "Y[#2 + #3 * SIN", "Y[#2 - #3 * SIN"],
    ["a corner too few", "LE 6]", "LE 5]"],
    ["a corner too many", "LE 6]", "LE 7]"],
    ["an arc the other way", "G3 X", "G2 X"],
    ["a centre elsewhere", "J-#<j>", "J[-1.01 * #<j>]"],
    ["the step of a loop", "#<corner> + 1]", "#<corner> + 2]"],
    ["a bracket elsewhere", "[#4 + 360 * #<hole> / #5]", "[[#4 + 360] * #<hole> / #5]"],
  ])("is not proved with %s", (_what, from, to) => {
    const program = boltCircleProgram.replace(from, to);
    expect(program).not.toBe(boltCircleProgram);
    const { verdict, findings } = proveIt(program);
    expect(verdict).toBe("failed");
    expect(errorRules(findings).length).toBeGreaterThan(0);
  });

  it("a difference is told at the line of the loop from which the block came", () => {
    const program = boltCircleProgram.replace("[8] [7] [2]", "[8] [7.1] [2]");
    const [first] = proveIt(program).findings.filter(({ rule }) => rule.startsWith("proof/"));
    expect(lineOf(program, first.place?.offset)).toMatch(/^G99 G81/);
  });

  it("is refused under a dialect without parameters, as before", async () => {
    const { findings } = proveText(boltCircleProgram, await ready("din-66025"));
    expect(errorRules(findings)).toEqual(
      expect.arrayContaining(["read/variable", "read/subprogram", "read/branch"]),
    );
    expect(errorRules(findings)).not.toContain("read/structure");
  });
});
