import { expect, test } from "vitest";
import { readingText } from "#report";
import { postText, proveText } from "../../core/index.ts";
import { dialectName, examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";

const cases = examples.flatMap(({ name, job, dialects }) =>
  dialects
    .filter((dialect) =>
      ["quarry-router", "rs274ngc", "staged-tools", "longhand"].includes(dialectName(dialect)),
    )
    .map((dialect) => [name, dialectName(dialect), job, dialect] as const),
);

test.each(cases)("%s under %s takes as long for `prove` as for `post`", async (_, __, job, dialect) => {
  const made = await ready(dialect);
  const { outcome, program } = postText({ job }, made);
  if (program === undefined) return;
  const { time } = outcome.summary;
  expect(proveText(program, made, { job }).summary.time).toEqual(time);
  const alone = proveText(program, made);
  expect(alone.verdict).toBe("read");
  const read = alone.summary.time;
  // Without a job there are no operations to which times belong, and tool lengths are not known, nor ways that hang on them.
  expect(read?.operations).toEqual([]);
  expect(Math.abs((read?.cutting ?? 0) - (time?.cutting ?? 0))).toBeLessThan(0.02);
  expect(read?.swaps.automatic).toBe(time?.swaps.automatic);
  expect(read?.total).toBeLessThanOrEqual((time?.total ?? 0) + 0.02);
  expect(read?.total).toBeGreaterThan(0.9 * (time?.total ?? 0));
});

test("the examples are there", () => {
  expect(cases.length).toBeGreaterThan(9);
});

test("the text tells it; a program with an error has none", async () => {
  const made = await ready("rs274ngc");
  const job = examples.find(({ name }) => name === "rain-gauge-foot")?.job ?? "";
  const { program = "" } = postText({ job }, made);
  const textOf = (text: string): string =>
    readingText(proveText(text, made), { width: 80, paint: (_, words) => words }).join("\n");
  expect(textOf(program)).toMatch(/\ntime {7}\d/);
  const wrong = program.replace(" F150", "");
  expect(wrong).not.toBe(program);
  expect(proveText(wrong, made).findings.some(({ severity }) => severity === "error")).toBe(true);
  expect(proveText(wrong, made).summary.time).toBeUndefined();
  expect(textOf(wrong)).not.toMatch(/\ntime/);
});
