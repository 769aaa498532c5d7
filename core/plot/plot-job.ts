/** The picture of a job alone: its moves as it states them, without what a program puts between and around them. */
import type { ByteSource, Finding, Report } from "#base";
import { axisBit, rowKind } from "#base";
import type { JobStep, OpenJob, Operation } from "#job";
import type { Packing, Plot, Point } from "#report";
import { atomsPerMicrometre } from "#report";
import { jobHead, markOf, offsetRemarks, workZeros } from "./head.ts";
import { moveText } from "./job-words.ts";
import type { Listing } from "./listing.ts";
import { createListing } from "./listing.ts";
import type { Marks } from "./marks.ts";
import { createMarks } from "./marks.ts";
import { createMoveWriter } from "./move-writer.ts";
import { createSourceLines } from "./source-lines.ts";
import type { Trail } from "./trail.ts";
import { createTrail, drawRow } from "./trail.ts";

/** A job that was opened, and what is known of it. */
export interface JobPlotInput {
  readonly source: ByteSource;
  readonly opened: OpenJob;
  readonly operations: readonly Operation[];
  /** What posting it has found, if it was posted. */
  readonly findings: readonly Finding[];
  readonly packing: Packing;
}

/** Draws the moves of a job. `report` gets the findings of its moves; after an error the picture ends there. */
export function plotJob(input: JobPlotInput, report: Report): Plot {
  const { opened, operations, packing, findings } = input;
  const writer = createMoveWriter(packing);
  const run: JobRun = {
    trail: createTrail(writer),
    listing: createListing(packing),
    marks: createMarks(findings),
    lineOf: createSourceLines(input.source),
  };
  operations.forEach((_, index) => drawOperation(run, input, index, report));
  writer.end();
  run.listing.end();
  const places = run.marks.places();
  const head = {
    ...jobHead(opened.job, operations),
    shows: "job",
    dialect: undefined,
    workZeros: workZeros(operations, []),
    cut: writer.cut(),
    all: writer.all(),
    counts: { ...writer.counts },
    marks: findings.map((finding, index) => ({ ...markOf(finding), ...(places[index] ?? { line: 0 }) })),
    remarks: [
      "This is the job, not a program: approaches, swaps and retracts are not in it.",
      ...offsetRemarks(operations, []),
      ...(run.trail.rotary ? ["Rotary axes are not drawn."] : []),
    ],
    lines: run.listing.lines(),
  } as const;
  return { head, moves: writer.pieces, listing: run.listing.pieces };
}

interface JobRun {
  readonly trail: Trail;
  readonly listing: Listing;
  readonly marks: Marks;
  readonly lineOf: (offset: number) => number;
}

function drawOperation(
  { trail, listing, marks, lineOf }: JobRun,
  { opened, operations }: JobPlotInput,
  index: number,
  report: Report,
): void {
  const operation = operations[index];
  const { writer } = trail;
  const words = { units: opened.job.units, feedMode: operation.feedMode };
  // Nothing carries over but Z, which stands at clearance.
  writer.at[2] = Math.round(operation.clearance / atomsPerMicrometre);
  writer.known = axisBit.z;
  for (const batch of opened.moves(operation, report))
    for (let row = 0; row < batch.count; row++) {
      const source = batch.source[row];
      listing.add(`${operation.id}, line ${lineOf(source)}: ${moveText(batch, row, words)}`);
      const line = listing.lines();
      if (batch.kind[row] === rowKind.aside) setHoles(trail, batch.asides[batch.aside[row]]);
      else drawRow(trail, batch, row, { operation: index, line });
      marks.take(source, -1, () => ({ line, at: placeOf(trail) }));
    }
}

function setHoles(trail: Trail, step: JobStep): void {
  if (step.kind !== "holes") return;
  const { depth, retract, between } = step;
  trail.holes = { depth, retract, level: between === "retract" ? retract : undefined };
}

/** Where the tool is; undefined where that is not known. */
export function placeOf({ writer: { at, known } }: Trail): Point | undefined {
  return known === 7 ? [at[0], at[1], at[2]] : undefined;
}
