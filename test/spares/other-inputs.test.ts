import { describe, expect, test } from "vitest";
import type { Finding } from "#base";
import { memorySource } from "#base";
import { postText, proveText } from "../../core/index.ts";
import type { TextJob } from "../../core/index.ts";
import { clReading, jobText } from "../cl/reading.ts";
import { drawJob } from "../plot/plotting.ts";
import { dialectLoader } from "../support/dialects.ts";
import { errorRules, ready } from "../support/ready.ts";
import { ask, askable } from "../why/asking.ts";
import { spareTools, wornJob } from "./worn-job.ts";

const encoder = new TextEncoder();

/** A job without its operations. */
function headOf(more: object = {}): string {
  const { operations: _, ...head } = JSON.parse(wornJob(more)) as Record<string, unknown>;
  return JSON.stringify(head);
}

const notes = (findings: readonly Finding[]): string[] =>
  findings
    .filter(({ rule, severity }) => rule === "limit/tool" && severity === "note")
    .map(({ message }) => message.slice(0, 35));

/** Two slots of 0.6 min and one of 0.1 min, all with tool 1. */
const source = `UNITS/MM
LOADTL/1
SPINDL/8000,CLW
RAPID
GOTO/0,0,10
FEDRAT/100,MMPM
GOTO/0,0,0
GOTO/50,0,0
RAPID
GOTO/50,0,10
LOADTL/2
SPINDL/8000,CLW
RAPID
GOTO/0,9,10
FEDRAT/100,MMPM
GOTO/0,9,0
RAPID
GOTO/0,9,10
LOADTL/1
SPINDL/8000,CLW
RAPID
GOTO/0,20,10
FEDRAT/100,MMPM
GOTO/0,20,0
GOTO/50,20,0
RAPID
GOTO/50,20,10
FINI
`;

describe("a head file lists the spares that the input cannot", () => {
  const tools = spareTools.map((tool) => ("life" in tool ? { ...tool, life: 1 } : tool));

  test("of cutter location source", async () => {
    const made = await ready("rs274ngc");
    const job: TextJob = { job: source, reading: clReading("rapid=one-shot", headOf({ tools })) };
    const { outcome, program = "" } = postText(job, made);
    expect(errorRules(outcome.findings)).toEqual([]);
    expect(outcome.summary.tools).toEqual([1, 2, 7]);
    expect(notes(outcome.findings)).toEqual(["From operation op30 on tool 7, its "]);
    expect(program).toMatch(/T7 M6[^]*G43[^\n]*H17/);
    const again = { job: source, reading: clReading("rapid=one-shot", headOf({ tools })) };
    expect(proveText(program, made, again).verdict).toBe("proved");
    // As a job of its own it says the same.
    const written = jobText(source, clReading("rapid=one-shot", headOf({ tools })));
    const { tools: listed } = JSON.parse(written) as {
      tools: readonly { number: number; spareFor?: number }[];
    };
    expect(listed.map(({ number, spareFor }) => [number, spareFor])).toEqual([
      [1, undefined],
      [2, undefined],
      [7, 1],
      [5, 1],
    ]);
    expect(postText({ job: written }, made).outcome.summary.tools).toEqual([1, 2, 7]);
  });

  test("of a program that exists", async () => {
    const made = await ready("rs274ngc");
    const { program = "" } = postText({ job: wornJob({ tools: spareTools.slice(0, 2) }) }, made);
    const reading = () =>
      ({ form: "program", dialect: made.dialect, head: memorySource(encoder.encode(headOf())) }) as const;
    const staged = await ready("staged-tools");
    const { outcome, program: other = "" } = postText({ job: program, reading: reading() }, staged);
    expect(errorRules(outcome.findings)).toEqual([]);
    expect(outcome.summary.tools).toEqual([1, 2, 7, 5]);
    expect(notes(outcome.findings)).toEqual([
      "From operation op40 on tool 7, its ",
      "From operation op50 on tool 5, its ",
    ]);
    expect(proveText(other, staged, { job: program, reading: reading() }).verdict).toBe("proved");
  });

  test("a program that changes to the spare itself is refused with the way out", async () => {
    const made = await ready("rs274ngc");
    const { program = "" } = postText({ job: wornJob() }, made);
    const reading = {
      form: "program",
      dialect: made.dialect,
      head: memorySource(encoder.encode(headOf())),
    } as const;
    const { outcome } = postText({ job: program, reading }, made);
    expect(errorRules(outcome.findings)).toEqual(["job/spare"]);
    expect(outcome.findings.find(({ rule }) => rule === "job/spare")?.fix).toContain("leave out `spareFor`");
  });
});

test("a picture of the job alone has the tools that do the work", () => {
  const { plot } = drawJob(JSON.parse(wornJob()));
  expect(plot?.head.operations.map(({ tool }) => plot.head.tools[tool]?.number)).toEqual([1, 2, 1, 7, 5, 5]);
});

test("`why` says for which tool a spare does an operation", async () => {
  const made = await askable("rs274ngc", dialectLoader());
  if (made === undefined) throw new Error("no dialect");
  const { outcome, answer } = ask(made, wornJob(), {
    lines: Array.from({ length: 300 }, (_, index) => index + 1),
  });
  expect(outcome.verdict).toBe("proved");
  const spares = new Map(answer?.blocks?.map(({ operation }) => [operation?.id, operation?.spare]));
  expect([...spares].filter(([, spare]) => spare !== undefined)).toEqual([
    ["op40", { tool: 1, by: 7 }],
    ["op50", { tool: 1, by: 5 }],
    ["op60", { tool: 1, by: 5 }],
  ]);
});
