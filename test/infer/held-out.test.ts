import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { postText } from "../../core/index.ts";
import { holesJob } from "../axes/holes-job.ts";
import { modalJob, pausingJob, sampleJob } from "../axes/sample-job.ts";
import { quarryRouter } from "../support/dialects.ts";
import { dialectName, shippedDialects } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { heldOut, mustInfer } from "./support.ts";

/*
 * Programs of our own dialects: inferred from one job's program, the others are read and written again without a difference.
 */

const examples = resolve(import.meta.dirname, "../../examples");
const example = (name: string): string => readFileSync(join(examples, name, `${name}.job.json`), "utf8");

/** Jobs by name, with operations to keep where a dialect takes one tool alone. */
const jobs = {
  "weather-plate": example("weather-plate"),
  "sensor-bracket-inch": example("sensor-bracket-inch"),
  "rain-gauge-foot": example("rain-gauge-foot"),
  sample: sampleJob,
  pausing: pausingJob,
  modal: modalJob,
  holes: holesJob([{ kind: "peck", peck: 3, feed: 150 }]),
} as const;

type JobName = keyof typeof jobs;

const rows: string[] = [];
const total = { programs: 0, identical: 0, blocks: 0 };

describe.each([...shippedDialects, quarryRouter])("%s", (dialect) => {
  it("writes held-out programs again, block for block", { timeout: 120_000 }, async () => {
    const made = await ready(dialect);
    const programs = (Object.keys(jobs) as JobName[]).flatMap((name) => {
      const whole = postText({ job: jobs[name] }, made).program;
      const first = postText(
        { job: jobs[name], options: { only: [firstOperation(jobs[name])] } },
        made,
      ).program;
      const program = whole ?? first;
      return program === undefined ? [] : [{ name, program }];
    });
    const [trained, ...others] = programs;
    expect(others.length).toBeGreaterThan(0);
    const found = await mustInfer([trained.program]);
    for (const { name, program } of [trained, ...others]) {
      const measured = heldOut(program, found);
      rows.push(
        `${dialectName(dialect).padEnd(16)} from ${trained.name.padEnd(20)} ${found.archetype.name.padEnd(16)} ${name.padEnd(20)} identical ${String(measured.identical)} of ${String(measured.blocks)}, added ${String(measured.added)}`,
      );
      if (name !== trained.name) {
        total.programs++;
        total.identical += measured.identical;
        total.blocks += measured.blocks;
      }
      if (measured.identical < measured.blocks) console.info(dialectName(dialect), name, measured.different.slice(0, 3), measured.findings.slice(0, 3).map(({ message }) => message)); // prettier-ignore
      expect
        .soft({ name, ...measured })
        .toMatchObject({ identical: measured.blocks, added: 0, different: [] });
    }
  });
});

function firstOperation(job: string): string {
  return (JSON.parse(job) as { operations: [{ id: string }] }).operations[0].id;
}

afterAll(() => {
  console.info(
    [
      "Held-out programs of our own dialects",
      ...rows,
      `held out: ${String(total.identical)} of ${String(total.blocks)} blocks in ${String(total.programs)} programs`,
    ].join("\n"),
  );
});
