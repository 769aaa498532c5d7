import type { Program } from "./program.ts";
import type { Line } from "./tokens.ts";
import type { Block } from "./walk.ts";
import { walk } from "./walk.ts";

/** Everything that rules look at. */
export interface Sample {
  readonly programs: readonly Program[];
  /** Lines of all programs. */
  readonly lines: readonly Line[];
  /** Blocks of all programs in order. */
  readonly blocks: readonly Block[];
  /** The blocks of each program. */
  readonly byProgram: readonly (readonly Block[])[];
}

/** Walks through programs. */
export function createSample(programs: readonly Program[]): Sample {
  const byProgram = programs.map(walk);
  return { programs, lines: programs.flatMap(({ lines }) => lines), blocks: byProgram.flat(), byProgram };
}

/** Blocks with one of some M codes, in tenths. */
export function withM({ blocks }: Pick<Sample, "blocks">, ...codes: readonly number[]): Block[] {
  return blocks.filter(({ m }) => m.some((code) => codes.includes(code)));
}

/** Blocks with one of some G codes, in tenths. */
export function withG({ blocks }: Pick<Sample, "blocks">, ...codes: readonly number[]): Block[] {
  return blocks.filter(({ g }) => g.some((code) => codes.includes(code)));
}
