/** The picture of a program: the sequence of a job, each motion with the line of the text that says it. */
import type { Batch, Finding, MachineFacts } from "#base";
import { frame, rowKind } from "#base";
import type { Operation } from "#job";
import type { Packing, Plot, PlotHead } from "#report";
import type { JobInput, Means } from "../inputs.ts";
import type { Run } from "../row-pairs.ts";
import { rowPairs } from "../row-pairs.ts";
import type { Origins } from "./head.ts";
import { jobHead, machineBoxes, markOf, offsetRemarks, workZeros } from "./head.ts";
import { createListing, createPassingText } from "./listing.ts";
import type { MarkedPlace } from "./marks.ts";
import { createMarks } from "./marks.ts";
import { createMoveWriter } from "./move-writer.ts";
import { placeOf } from "./plot-job.ts";
import type { ProgramFrames } from "./program-frames.ts";
import { createProgramFrames } from "./program-frames.ts";
import type { RowPlace, Trail } from "./trail.ts";
import { createTrail, drawRow } from "./trail.ts";

/** A job under a dialect, and what posting it came to. */
export interface ProgramPlotInput extends JobInput, Means {
  readonly findings: readonly Finding[];
  readonly isProved: boolean;
  readonly packing: Packing;
}

/**
 * Writes the program of a job once more and draws it as it is read back.
 *
 * @returns undefined where there is no whole program, because an earlier stage refuses the job
 */
export function plotProgram(input: ProgramPlotInput): Plot | undefined {
  const { packing, findings } = input;
  const { format } = input.dialect;
  const writer = createMoveWriter(packing);
  const trail = createTrail(writer);
  const listing = createListing(packing);
  const text = createPassingText(listing, format.lineEnd);
  const marks = createMarks(findings);
  const held: { known?: KnownRun } = {};
  const begin = (run: Run): void => {
    const { machine, facts, operations } = run.work;
    const frames = createProgramFrames(trail, { machine, facts, workOffset: operations[0].workOffset });
    held.known = { run, frames, operationOf: createOperationOf(operations) };
  };
  for (const { block, meant, row } of rowPairs(input, begin, text.pass)) {
    const { frames, run, operationOf } = held.known!;
    const line = text.lineAt(block);
    const source = meant.source[row];
    const operation = operationOf(source);
    if (meant.kind[row] === rowKind.aside)
      frames.step(meant.asides[meant.aside[row]], run.work.operations[operation].tool);
    else drawMotion(trail, frames, meant, row, { operation, line });
    marks.take(source, block, () => ({ line, at: placeOf(trail) }));
  }
  const { known } = held;
  if (!known?.frames.ended()) return undefined;
  writer.end();
  text.end();
  listing.end();
  const drawn = { trail, lines: listing.lines(), places: marks.places() };
  return { head: headOf(input, known, drawn), moves: writer.pieces, listing: listing.pieces };
}

interface KnownRun {
  readonly run: Run;
  readonly frames: ProgramFrames;
  readonly operationOf: (byte: number) => number;
}

function drawMotion(trail: Trail, frames: ProgramFrames, batch: Batch, row: number, place: RowPlace): void {
  drawRow(trail, batch, row, place);
  if (batch.frame[row] !== frame.machine) return;
  [batch.x, batch.y, batch.z].forEach((column, axis) => {
    if (batch.stated[row] & (1 << axis)) frames.machinePlace(axis, column[row]);
  });
}

/** Index of the operation that a byte of the job belongs to; what stands before them all belongs to the first. */
function createOperationOf(operations: readonly Operation[]): (byte: number) => number {
  let current = 0;
  const begins = operations.map(({ source }) => source);
  return (byte) => {
    const isIn = byte >= begins[current] && (current + 1 === begins.length || byte < begins[current + 1]);
    if (isIn) return current;
    current = Math.max(
      0,
      begins.findLastIndex((begin) => begin <= byte),
    );
    return current;
  };
}

interface Drawn {
  readonly trail: Trail;
  readonly lines: number;
  readonly places: readonly (MarkedPlace | undefined)[];
}

function headOf(
  input: ProgramPlotInput,
  { run, frames }: KnownRun,
  { trail, lines, places }: Drawn,
): PlotHead {
  const { job, operations, machine, facts } = run.work;
  const { dialect, findings, isProved } = input;
  const { writer } = trail;
  const head = jobHead(job, operations);
  const origin = facts.workOffsets[operations[0].workOffset];
  return {
    ...head,
    shows: isProved ? "proved" : "unproved",
    dialect: { name: dialect.name, title: dialect.title },
    boxes: [...head.boxes, ...machineBoxes(machine, origin)],
    workZeros: workZeros(operations, facts.workOffsets),
    cut: writer.cut(),
    all: writer.all(),
    counts: { ...writer.counts },
    marks: findings.map((finding, index) => ({ ...markOf(finding), ...(places[index] ?? { line: 0 }) })),
    remarks: [
      ...offsetRemarks(operations, facts.workOffsets),
      ...(trail.rotary ? ["Rotary axes are not drawn."] : []),
      ...boxRemarks(machine, origin),
      ...leftOutRemarks(
        origin !== undefined,
        writer.counts.leftOut,
        origin === undefined ? [] : [...frames.unknownLengths],
      ),
    ],
    lines,
  };
}

/** Boxes of the machine hold the spindle's nose, and what is drawn is the tip. */
function boxRemarks(machine: MachineFacts, origin: Origins[number]): string[] {
  if (machineBoxes(machine, origin).length === 0) return [];
  return [
    "Travel, rack and keep-out boxes are places of the spindle's nose; the tip that is drawn is lower by the length of the tool.",
  ];
}

function leftOutRemarks(isPlaced: boolean, leftOut: number, unknownLengths: readonly number[]): string[] {
  const why = isPlaced ? "" : " Work zero is not known, so that places of the machine cannot be drawn.";
  const motions = leftOut === 1 ? "motion begins or ends" : "motions begin or end";
  return [
    ...(leftOut === 0 ? [] : [`Left out: ${leftOut} ${motions} at a place that is not known.${why}`]),
    ...(unknownLengths.length === 0
      ? []
      : [
          `The length of ${unknownLengths.length === 1 ? "tool" : "tools"} ${unknownLengths.join(", ")} is not known: machine places are drawn at the spindle's nose.`,
        ]),
  ];
}
