import type { Batch, Finding } from "#base";
import { memorySource } from "#base";
import type { JobStep, OpenJob, Reading } from "#job";
import { openJob, parseClOptions, writeJob } from "#job";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** How a text is to be read as cutter location source; throws where the options are none. */
export function clReading(cl = "", head?: string): Reading {
  const options = parseClOptions(cl === "" ? [] : [cl]);
  if (typeof options === "string") throw new Error(options);
  return { form: "cl", options, ...(head === undefined ? {} : { head: memorySource(bytes(head)) }) };
}

/** What came of reading a source, moves and all. */
export interface ReadSource {
  readonly opened: OpenJob | undefined;
  readonly findings: readonly Finding[];
}

/** Reads a source whole. */
export function readSource(text: string, cl = "", head?: string): ReadSource {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const opened = openJob(memorySource(bytes(text)), clReading(cl, head), report);
  if (opened) for (const operation of opened.job.operations) drain(opened.moves(operation, report));
  return { opened, findings };
}

function drain(batches: Iterable<Batch<JobStep>>): void {
  for (const batch of batches) void batch;
}

/** The job of a source as JSON; throws where it is refused. */
export function jobText(text: string, reading: Reading): string {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const opened = openJob(memorySource(bytes(text)), reading, report);
  const written = opened && [...writeJob(opened, report)].join("");
  const errors = findings.filter(({ severity }) => severity === "error");
  if (written === undefined || errors.length > 0)
    throw new Error(errors.map(({ rule, message }) => `${rule}: ${message}`).join("\n"));
  return written;
}

/** Line of a place in a text, counted from 1. */
export function lineOf(text: string, offset: number): number {
  return new TextDecoder().decode(bytes(text).subarray(0, offset)).split("\n").length;
}
