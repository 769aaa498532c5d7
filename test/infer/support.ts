import { expect } from "vitest";
import type { Inference } from "#infer";
import { inferDialect } from "#infer";
import type { Finding } from "#base";
import { measure } from "../../core/infer/measure.ts";
import type { Measured } from "../../core/infer/measure.ts";
import { takeApart } from "../../core/infer/program.ts";
import { createSample } from "../../core/infer/sample.ts";
import { unitsOf } from "../../core/infer/units.ts";
import { dialectLoader } from "../support/dialects.ts";

/** A text as a program file. */
export function programFile(text: string, file = "sample.nc"): { file: string; bytes: Uint8Array } {
  return { file, bytes: new TextEncoder().encode(text) };
}

/** What is inferred from texts, and the findings on the way. */
export async function inferFrom(
  texts: readonly string[],
  from?: string,
): Promise<{ found: Inference | undefined; findings: Finding[] }> {
  const findings: Finding[] = [];
  const programs = texts.map((text, index) => programFile(text, `sample-${String(index + 1)}.nc`));
  const input = {
    programs,
    loader: dialectLoader(),
    name: "inferred",
    ...(from === undefined ? {} : { from }),
  };
  const found = await inferDialect(input, (finding) => findings.push(finding));
  return { found, findings };
}

/** The same where something must come of it. */
export async function mustInfer(texts: readonly string[], from?: string): Promise<Inference> {
  const { found, findings } = await inferFrom(texts, from);
  if (found === undefined)
    throw new Error(findings.map(({ rule, message }) => `${rule}: ${message}`).join("\n"));
  expect(findings.filter(({ severity }) => severity === "error")).toEqual([]);
  return found;
}

/** How a program that the inference has not seen comes out under its dialect. */
export function heldOut(text: string, found: Inference): Measured {
  const program = takeApart(programFile(text, "held-out.nc"));
  return measure(program, found, unitsOf(createSample([program])));
}
