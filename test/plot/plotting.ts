import { deflateSync, inflateSync } from "node:zlib";
import type { Packing, Plot } from "#report";
import { decodeMoves, isArcMove, kindOf, moveFlag } from "#report";
import { createSha256, memorySource } from "../../core/index.ts";
import type { PlotOutcome } from "../../core/plot/index.ts";
import { plotJobAlone, plotUnder } from "../../core/plot/index.ts";
import { ready } from "../support/ready.ts";

export const packing: Packing = {
  deflate: (bytes) => deflateSync(bytes),
  inflate: (bytes) => inflateSync(bytes),
};

/** Draws a job alone. */
export function drawJob(job: unknown): PlotOutcome {
  return plotJobAlone({ source: sourceOf(job), options: {} }, packing);
}

/** Draws the program of a job under a dialect, by name or path; `texts` are files that stand in the test alone. */
export async function drawProgram(
  job: unknown,
  dialect: string,
  texts: Readonly<Record<string, string>> = {},
): Promise<PlotOutcome> {
  const made = await ready(dialect, texts);
  return plotUnder({ ...made, source: sourceOf(job), options: {}, createDigest: createSha256 }, packing);
}

function sourceOf(job: unknown) {
  return memorySource(new TextEncoder().encode(typeof job === "string" ? job : JSON.stringify(job)));
}

/** A motion as a test reads it: millimetres. */
export interface DrawnMove {
  readonly kind: number;
  readonly isMachine: boolean;
  readonly isJump: boolean;
  readonly at: readonly number[];
  readonly line: number;
  readonly operation: number;
  readonly centre?: readonly number[];
}

/** All motions of a plot. */
export function movesOf(plot: Plot): DrawnMove[] {
  return plot.moves.flatMap((piece) => {
    const moves = decodeMoves(inflateSync(piece));
    let arc = 0;
    return Array.from({ length: moves.count }, (_, row): DrawnMove => {
      const mark = moves.mark[row];
      const own = isArcMove(kindOf(mark)) ? arc++ : -1;
      return {
        kind: kindOf(mark),
        isMachine: (mark & moveFlag.machine) !== 0,
        isJump: (mark & moveFlag.jump) !== 0,
        at: [moves.x[row], moves.y[row], moves.z[row]].map((place) => place / 1000),
        line: moves.line[row],
        operation: moves.operation[row],
        ...(own < 0 ? {} : { centre: [moves.c1[own] / 1000, moves.c2[own] / 1000] }),
      };
    });
  });
}

/** Lines of the listing. */
export function listingOf(plot: Plot): string[] {
  return plot.listing.flatMap((piece) => new TextDecoder().decode(inflateSync(piece)).split("\n"));
}

/** A job of one operation with one tool of 6 mm, 50 mm long. */
export function jobOf(moves: readonly unknown[], more: Readonly<Record<string, unknown>> = {}): unknown {
  return {
    job: "1",
    name: "piece",
    units: "mm",
    clearance: 15,
    tools: [{ number: 1, kind: "end-mill", diameter: 6, length: 50 }],
    operations: [{ id: "op10", name: "cut", tool: 1, spindle: { rpm: 12000, direction: "cw" }, moves }],
    ...more,
  };
}
