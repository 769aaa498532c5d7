/**
 * Programs that exist already become jobs.
 *
 *     program ─read─▶ steps ─walk─▶ stretches, between which a program swaps, retracts and restates ─▶ operations, tools: the head
 *                        └────────▶ the same walk again, operation by operation ─▶ moves
 *
 * What sequencing would put in is left out; what is left are the steps of a job. What a job has no words for is a finding.
 */
import type { ByteSource, Report } from "#base";
import type { OpenJob, Reading } from "#job";
import { openJob } from "#job";
import type { ProgramReading } from "./program-reading.ts";
import { openProgram } from "./open-program.ts";

export type { ProgramReading } from "./program-reading.ts";
export { programJobRules } from "./findings.ts";

/** In which form a job stands in its input. */
export type InputReading = Reading | ProgramReading;

/**
 * Reads a job in any form that an input may have.
 *
 * @param report gets each finding with its place in the input
 * @returns undefined after an error
 */
export function openInput(source: ByteSource, reading: InputReading, report: Report): OpenJob | undefined {
  return reading.form === "program" ? openProgram(source, reading, report) : openJob(source, reading, report);
}
