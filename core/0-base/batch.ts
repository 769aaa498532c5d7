import type { Step } from "./step.ts";

/** What a row of a batch is. Arcs by centre and arcs by signed radius are told apart, each by plane. */
export const rowKind = {
  rapid: 0,
  line: 1,
  arcXy: 2,
  arcZx: 3,
  arcYz: 4,
  radiusXy: 5,
  radiusZx: 6,
  radiusYz: 7,
  hole: 8,
  aside: 9,
} as const;

/** The name of a row kind. */
export type RowKindName = keyof typeof rowKind;

/** Which coordinates a row is in: the active work offset with the active length offset, or the machine's own. */
export const frame = { work: 0, machine: 1 } as const;

/** Bits of an axis mask. */
export const axisBit = { x: 1, y: 2, z: 4, a: 8, b: 16, c: 32 } as const;

/** The name of an axis. */
export type Axis = keyof typeof axisBit;

/** Axes in the order of their bits and of the columns x, y, z, abc[0], abc[1], abc[2]. */
export const axes = ["x", "y", "z", "a", "b", "c"] as const satisfies readonly Axis[];

/** The mask of x, y and z. */
export const linearAxes = 7;

/** The mask of a, b and c. */
export const rotaryAxes = 56;

/**
 * Motion travels in batches of columns; rare steps stand aside in a list, in their place in the order. A batch is valid
 * until the next one is pulled: who needs it longer copies it. Columns longer than `count` hold rubbish past it.
 */
export interface Batch<Aside = Step> {
  /** Number of rows in use. */
  count: number;
  /** Row kind, see `rowKind`. */
  readonly kind: Uint8Array;
  /** Frame of the row's coordinates, see `frame`. */
  readonly frame: Uint8Array;
  /** Axes whose place in the row's frame is known after the motion; the value of another axis is 0. */
  readonly known: Uint8Array;
  /** Axes that the motion names: those that move, and those whose place was not known before. A part of `known`. */
  readonly stated: Uint8Array;
  /** Place after the motion, atoms. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Rotary places after the motion, unwrapped micro-degrees; absent while no rotary axis is in use. */
  readonly abc: readonly [Float64Array, Float64Array, Float64Array] | undefined;
  /** Effective feed of lines, arcs and holes in the unit of the feed mode (see lengths.ts); 0 on rapids and asides. */
  readonly feed: Float64Array;
  /** Arcs by centre: absolute place of the centre on the plane's first axis (x, z, y), atoms. By radius: signed radius. */
  readonly c1: Float64Array;
  /** Arcs by centre: absolute place of the centre on the plane's second axis (y, x, z), atoms. By radius: 0. */
  readonly c2: Float64Array;
  /** Arcs: turns started, + counter-clockwise, - clockwise seen from the + end of the plane's normal. Others: 0. */
  readonly turns: Int16Array;
  /** Aside rows: index into `asides`. Others: -1. */
  readonly aside: Int32Array;
  /** Byte offset in the input (job or program) that this row comes from. */
  readonly source: Float64Array;
  /** The rare steps of this batch. */
  asides: Aside[];
  /** Rows before which a section of the program begins, rising. Form alone: neither guard nor comparison looks at it. */
  sections: number[];
  /** What each of these sections is called, in the same order; "" where nobody knows. */
  sectionNames: string[];
}

/** The columns that every batch has, for who copies rows. */
export const batchColumns = [
  "kind",
  "frame",
  "known",
  "stated",
  "x",
  "y",
  "z",
  "feed",
  "c1",
  "c2",
  "turns",
  "aside",
  "source",
] as const satisfies readonly (keyof Batch)[];

/** A stage of the pipeline: synchronous and pulled. */
export type Stage<Input, Output> = (input: Iterable<Input>) => Iterable<Output>;

/** Rows in a batch as the stages make them. */
export const batchRows = 4096;

/** Makes an empty batch with room for `rows` rows, with or without rotary columns. */
export function createBatch<Aside = Step>(rows: number = batchRows, rotary = false): Batch<Aside> {
  const column = (): Float64Array => new Float64Array(rows);
  return {
    count: 0,
    kind: new Uint8Array(rows),
    frame: new Uint8Array(rows),
    known: new Uint8Array(rows),
    stated: new Uint8Array(rows),
    x: column(),
    y: column(),
    z: column(),
    abc: rotary ? [column(), column(), column()] : undefined,
    feed: column(),
    c1: column(),
    c2: column(),
    turns: new Int16Array(rows),
    aside: new Int32Array(rows),
    source: column(),
    asides: [],
    sections: [],
    sectionNames: [],
  };
}

/** The most rows a batch can hold. */
export function capacity(batch: Batch<unknown>): number {
  return batch.kind.length;
}

/** Empties a batch for use again. */
export function clearBatch(batch: Batch<unknown>): void {
  batch.count = 0;
  batch.asides = [];
  batch.sections = [];
  batch.sectionNames = [];
}

/** Appends a rare step; the caller has seen to it that there is room. */
export function pushAside<Aside>(batch: Batch<Aside>, step: Aside, source: number): void {
  const row = batch.count++;
  batch.kind[row] = rowKind.aside;
  batch.frame[row] = frame.work;
  batch.known[row] = 0;
  batch.stated[row] = 0;
  batch.x[row] = batch.y[row] = batch.z[row] = 0;
  if (batch.abc) for (const column of batch.abc) column[row] = 0;
  batch.feed[row] = batch.c1[row] = batch.c2[row] = 0;
  batch.turns[row] = 0;
  batch.aside[row] = batch.asides.length;
  batch.source[row] = source;
  batch.asides.push(step);
}

/** Whether a row kind is an arc, by centre or by radius. */
export function isArc(kind: number): boolean {
  return kind >= rowKind.arcXy && kind <= rowKind.radiusYz;
}

/** Gives rows of lines in work coordinates the columns that are the same for all such rows: no arc, no rare step. */
export function fillLines(batch: Batch<unknown>, from: number, to: number): void {
  batch.kind.fill(rowKind.line, from, to);
  batch.frame.fill(frame.work, from, to);
  batch.c1.fill(0, from, to);
  batch.c2.fill(0, from, to);
  batch.turns.fill(0, from, to);
  batch.aside.fill(-1, from, to);
}
