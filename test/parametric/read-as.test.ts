import { expect, it } from "vitest";
import { postText } from "../../core/index.ts";
import { errorRules, ready } from "../support/ready.ts";
import { boltCircleJob } from "./bolt-circle-job.ts";
import { boltCircleProgram } from "./bolt-circle-program.ts";

const made = await ready("rs274ngc");
const motions = (program: string | undefined): string[] =>
  (program ?? "").split("\n").filter((line) => /^[GXYZ]/.test(line) && !line.startsWith("G4 "));

it("a program with loops and a subprogram, read as a job, gives the motions of the job of the same part", () => {
  const reading = { form: "program", dialect: made.dialect } as const;
  const again = postText({ job: boltCircleProgram, reading }, made);
  expect(errorRules(again.outcome.findings)).toEqual([]);
  expect(motions(again.program)).toEqual(motions(postText({ job: boltCircleJob }, made).program));
});
