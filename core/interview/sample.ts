import type { Batch, MachineFacts, Step } from "#base";
import { isArc, rowKind } from "#base";
import type { Dialect } from "#dialect";
import { read } from "#read";
import type { Moment } from "./question.ts";

/** Blocks of a sample. */
export const sampleBlocks = 5;

/** What is looked for in a program: a row of motion, or a step that is not. */
type Search = (
  row: { readonly kind: number; readonly batch: Batch; readonly index: number },
  step?: Step,
) => boolean;

const isStep =
  (...kinds: readonly Step["kind"][]): Search =>
  (_, step) =>
    step !== undefined && kinds.includes(step.kind);

/** X of the line behind the sample job's arc, and of its first hole, in atoms: what is found where there is no arc or cycle. */
const behindArc = 50.5e7;
const firstHole = 60e7;

/** What each moment looks for, the best first. */
const searches = {
  frame: [],
  units: [isStep("units"), isStep("distance", "plane", "feed-mode")],
  motion: [({ kind }) => kind === rowKind.line],
  rapid: [({ kind, batch, index }) => kind === rowKind.rapid && near(batch.x[index], firstHole)],
  arc: [
    ({ kind }) => isArc(kind),
    ({ kind, batch, index }) => kind === rowKind.line && near(batch.x[index], behindArc),
  ],
  holes: [
    ({ kind }) => kind === rowKind.hole,
    ({ batch, index, kind }) => kind === rowKind.line && near(batch.x[index], firstHole),
  ],
  dwell: [(_, step) => step?.kind === "dwell" && (step.time === 500_000 || step.revolutions !== undefined)],
  spindle: [isStep("spindle-start")],
  stop: [isStep("spindle-stop")],
  swap: [isStep("change-tool", "select-tool", "pause"), isStep("spindle-start")],
  comment: [],
} as const satisfies Record<Moment, readonly Search[]>;

/** Within 1 µm, which is the coarsest grid there is. */
function near(place: number, meant: number): boolean {
  return Math.abs(place - meant) < 20_000;
}

/**
 * Five blocks of the sample job's program, those at a moment. Where the first and last blocks are the point, the middle
 * is left out and `...` stands for it.
 *
 * @param program as it was written with the dialect
 * @returns lines of the program; fewer than five only if it has fewer
 */
export function sampleOf(program: string, { format, machine }: Dialect, moment: Moment): string[] {
  const lines = program.split(format.lineEnd).filter((line) => line.trim() !== "");
  if (moment === "frame") return [...lines.slice(0, 3), "...", ...lines.slice(-2)];
  if (moment === "comment") return lines.slice(0, sampleBlocks);
  const offset = offsetOf(program, format, machine, searches[moment]);
  const at = program
    .slice(0, offset)
    .split(format.lineEnd)
    .filter((line) => line.trim() !== "").length;
  const from = Math.max(0, Math.min(at - 2, lines.length - sampleBlocks));
  return lines.slice(from, from + sampleBlocks);
}

/** Characters before the block with the first row that a search finds; the first search that finds anything counts. */
function offsetOf(
  program: string,
  format: Dialect["format"],
  machine: MachineFacts,
  found: readonly Search[],
): number {
  const bytes = new TextEncoder().encode(program);
  const places = found.map(() => Infinity);
  for (const batch of read([bytes], format, machine, { units: "mm" }, () => undefined))
    for (let index = 0; index < batch.count; index++) {
      const row = { kind: batch.kind[index], batch, index };
      const step = batch.aside[index] < 0 ? undefined : batch.asides[batch.aside[index]];
      found.forEach((search, order) => {
        if (places[order] === Infinity && search(row, step)) places[order] = batch.source[index];
      });
    }
  const place = places.find((one) => one < Infinity) ?? 0;
  return new TextDecoder().decode(bytes.subarray(0, place)).length;
}
