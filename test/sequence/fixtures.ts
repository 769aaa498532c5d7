import type { Batch, Capabilities, CoolantMedium, Finding, JobFacts, MachineFacts } from "#base";
import { atomsPerMillimetre, axisBit, createBatch, frame, linearAxes, pushAside, rowKind } from "#base";
import type { Job, Operation } from "#job";
import type { LoweredStep } from "#lower";
import { planJobFacts, sequence } from "#sequence";
import type { SequenceRequest, Setup } from "#sequence";
import { printSteps } from "../support/print-steps.ts";
import { capabilitiesOf, mm } from "./machines.ts";

export * from "./jobs.ts";
export * from "./machines.ts";

/** A place in mm, with a feed in mm a minute where it is cut. */
export interface Move {
  readonly x?: number;
  readonly y?: number;
  readonly z?: number;
  readonly feed?: number;
}

/** One thing that lowering hands on. */
export type Item = Move | LoweredStep;

/** An operation as lowering gives it: to `x0 y0` at clearance, the items, and Z back to clearance. */
export function lowered(index: number, operation: Operation, ...items: Item[]): Batch<LoweredStep> {
  const batch = createBatch<LoweredStep>(64);
  const at: { x: number; y: number; z: number } = { x: 0, y: 0, z: operation.clearance };
  pushAside(batch, { kind: "operation-start", index }, 0);
  const move = (item: Move): void => {
    let stated = 0;
    for (const axis of ["x", "y", "z"] as const) {
      const value = item[axis];
      if (value === undefined) continue;
      stated |= axisBit[axis];
      at[axis] = mm(value);
    }
    const row = batch.count++;
    Object.entries(at).forEach(([axis, value]) => (batch[axis as "x"][row] = value));
    batch.kind[row] = item.feed === undefined ? rowKind.rapid : rowKind.line;
    batch.frame[row] = frame.work;
    batch.known[row] = linearAxes;
    batch.stated[row] = stated;
    batch.feed[row] = mm(item.feed ?? 0);
    batch.aside[row] = -1;
  };
  const given =
    items.length > 0
      ? items
      : [
          { x: 10, y: 20 },
          { z: -1, feed: 200 },
        ];
  for (const item of given) {
    if ("kind" in item) pushAside(batch, item, 0);
    else move(item);
  }
  if (at.z !== operation.clearance) move({ z: operation.clearance / atomsPerMillimetre });
  pushAside(batch, { kind: "operation-end", index }, 0);
  return batch;
}

/** What a run of sequencing gave. */
export interface Outcome {
  readonly lines: readonly string[];
  readonly findings: readonly Finding[];
  readonly facts: JobFacts;
}

/** A request over a whole job. */
export interface Given {
  readonly job: Job;
  readonly machine: MachineFacts;
  readonly capabilities?: Capabilities;
  readonly setup?: Partial<Setup>;
  readonly units?: "mm" | "inch";
  readonly airCut?: boolean;
  readonly optionalStops?: boolean;
}

export const noSetup: Setup = { workOffsets: [], lengths: {}, rack: undefined, spindleHolds: undefined };

/** The request for a job, and the findings of planning it. */
export function requestOf(given: Given): { request: SequenceRequest; findings: Finding[] } {
  const findings: Finding[] = [];
  const common = {
    job: given.job,
    operations: given.job.operations.map((_, index) => index),
    machine: given.machine,
    capabilities: given.capabilities ?? capabilitiesOf(),
    units: given.units ?? ("mm" as const),
  };
  const setup = { ...noSetup, ...given.setup };
  const facts = planJobFacts({ ...common, setup, workZero: [] }, (finding) => findings.push(finding));
  return {
    request: {
      ...common,
      facts,
      airCut: given.airCut ?? false,
      optionalStops: given.optionalStops ?? false,
      cleanText: (text) => text,
    },
    findings,
  };
}

/** Sequences a job whose operations hold the items given, or one short cut each. */
export function run(given: Given, ...items: readonly (readonly Item[])[]): Outcome {
  const { request, findings } = requestOf(given);
  const batches = given.job.operations.map((operation, index) =>
    lowered(index, operation, ...(items[index] ?? [])),
  );
  const lines = printSteps(sequence(batches, request, (finding) => findings.push(finding)));
  return { lines, findings, facts: request.facts };
}

/** The lines of one operation: from behind a line to before another. */
export function between(lines: readonly string[], from: string, to: string): readonly string[] {
  const start = lines.indexOf(from);
  return lines.slice(start + 1, lines.indexOf(to, start + 1));
}

/** Media of a coolant request. */
export const coolantRequest = (...media: CoolantMedium[]): LoweredStep => ({
  kind: "coolant-request",
  media,
});
