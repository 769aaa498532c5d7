import { describe, expect, it } from "vitest";
import { postText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";
import type { Value } from "./machine-choices.ts";
import { choices } from "./machine-choices.ts";
import { sampleJob } from "./sample-job.ts";

/*
 * Ten machines drawn by seed from the axes: how many lines a leaf takes that turns `explicit-words` into each.
 */

/** Numbers from 0 to 1 by a seed: the well-known linear congruence of 48 bits would do, this one fits a Number. */
function randomBy(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

type Mapping = Readonly<Record<string, Value>>;

function isMapping(value: Value | undefined): value is Mapping {
  return typeof value === "object" && !Array.isArray(value);
}

function merged(one: Mapping, other: Mapping): Mapping {
  const result: Record<string, Value> = { ...one };
  for (const [key, value] of Object.entries(other)) {
    const before = result[key];
    result[key] = isMapping(before) && isMapping(value) ? merged(before, value) : value;
  }
  return result;
}

/** A machine that differs on 12 to 20 axes. */
function draw(seed: number): Mapping {
  const random = randomBy(seed * 7919 + 13);
  const left = [...choices];
  let drawn: Mapping = {};
  for (let wanted = 12 + Math.floor(random() * 9); wanted > 0; wanted--) {
    const [choice] = left.splice(Math.floor(random() * left.length), 1);
    const value = choice?.values[Math.floor(random() * choice.values.length)];
    if (value) drawn = merged(drawn, value);
  }
  return drawn;
}

/** A value as a person writes it: one line, and a mapping that does not fit into 110 columns key by key. */
function yaml(value: Value): string {
  if (isMapping(value))
    return `{ ${Object.entries(value)
      .map(([key, inner]) => `${key}: ${yaml(inner)}`)
      .join(", ")} }`;
  if (Array.isArray(value)) return `[${value.map((one: Value) => yaml(one)).join(", ")}]`;
  return value === ":" ? '":"' : `${value as string | number}`;
}

function leafLines(number: number, drawn: Mapping): string[] {
  const head = [
    `dialect: machine-${String(number)}`,
    `title: Machine ${String(number)} of ten`,
    "extends: explicit-words",
  ];
  const body = Object.entries(drawn).flatMap(([key, value]) => {
    const line = `${key}: ${yaml(value)}`;
    if (line.length <= 110 || !isMapping(value)) return [line];
    return [`${key}:`, ...Object.entries(value).map(([inner, own]) => `  ${inner}: ${yaml(own)}`)];
  });
  return [...head, ...body];
}

const machines = Array.from({ length: 10 }, (_, index) => {
  const lines = leafLines(index + 1, draw(index + 1));
  return { name: `machine ${String(index + 1)}`, lines };
});

describe("ten machines drawn by seed", () => {
  const texts: string[] = [];
  it.each(machines)("$name", async ({ lines }) => {
    const made = await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": lines.join("\n") });
    const { outcome, program } = postText({ job: sampleJob }, made);
    expect(
      outcome.findings.filter(({ severity }) => severity === "error").map(({ message }) => message),
    ).toEqual([]);
    expect(outcome.verdict).toBe("proved");
    expect(texts).not.toContain(program);
    texts.push(program ?? "");
  });

  it("a leaf has 20 lines at most in the median", () => {
    const counts = machines.map(({ lines }) => lines.length).sort((a, b) => a - b);
    console.info(`lines of the ten leaves: ${counts.join(", ")}`);
    expect(((counts[4] ?? NaN) + (counts[5] ?? NaN)) / 2).toBeLessThanOrEqual(20);
  });
});
