import type { Batch, Step } from "#base";
import { axisBit, createBatch, frame, pushAside, rowKind } from "#base";
import type { RowKindName } from "#base";
import type { Format } from "#dialect";
import type { EmitOptions, Emitter } from "#emit";
import { generateEmitter, loadEmitter } from "#emit";

/** A row as tests write it; lengths in mm, angles in degrees, feed in mm a minute. */
export interface Row {
  readonly kind: Exclude<RowKindName, "aside">;
  readonly machine?: boolean;
  readonly at: Partial<Record<keyof typeof axisBit, number>>;
  /** Axes that are known besides those in `at`, with their places. */
  readonly also?: Partial<Record<keyof typeof axisBit, number>>;
  readonly feed?: number;
  readonly centre?: readonly [number, number];
  readonly turns?: number;
}

export const mm = (value: number): number => Math.round(value * 1e7);
const degrees = (value: number): number => Math.round(value * 1e6);

export function rapid(at: Row["at"], rest: Partial<Row> = {}): Row {
  return { kind: "rapid", at, ...rest };
}

export function line(at: Row["at"], feed: number, rest: Partial<Row> = {}): Row {
  return { kind: "line", at, feed, ...rest };
}

/** Rows and steps as one batch. A row is known to stand where the rows before it left the other axes. */
export function batchOf(parts: readonly (Row | Step)[]): Batch {
  const batch = createBatch(parts.length, true);
  for (const part of parts) {
    if ("at" in part) pushRow(batch, part);
    else pushAside(batch, part, 0);
  }
  return batch;
}

function pushRow(batch: Batch, row: Row): void {
  const index = batch.count++;
  batch.kind[index] = rowKind[row.kind];
  batch.frame[index] = row.machine ? frame.machine : frame.work;
  const places = { ...row.also, ...row.at };
  for (const [axis, bit] of Object.entries(axisBit) as [keyof typeof axisBit, number][]) {
    const value = places[axis];
    const column =
      axis === "x" || axis === "y" || axis === "z" ? batch[axis] : batch.abc![["a", "b", "c"].indexOf(axis)];
    column[index] = value === undefined ? 0 : bit < axisBit.a ? mm(value) : degrees(value);
    if (value !== undefined) batch.known[index] |= bit;
    if (row.at[axis] !== undefined) batch.stated[index] |= bit;
  }
  batch.feed[index] = Math.round((row.feed ?? 0) * 1e7);
  [batch.c1[index], batch.c2[index]] = (row.centre ?? [0, 0]).map(mm);
  batch.turns[index] = row.turns ?? 0;
  batch.aside[index] = -1;
}

const plainEmitters = new WeakMap<Format, Promise<Emitter>>();
const tracedEmitters = new WeakMap<Format, Promise<Emitter>>();

/** The compiled emitter of a format; it is compiled once. */
export function emitterOf(format: Format, traced = false): Promise<Emitter> {
  const loaded = traced ? tracedEmitters : plainEmitters;
  const emitter = loaded.get(format) ?? loadEmitter(generateEmitter(format, { traced }));
  loaded.set(format, emitter);
  return emitter;
}

/** All bytes of an emitter's chunks. */
export function bytesOf(chunks: Iterable<Uint8Array>): Uint8Array {
  const copies = Array.from(chunks, (chunk) => chunk.slice());
  const all = new Uint8Array(copies.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of copies) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

/** The text that a format gives for rows and steps. */
export async function textOf(
  format: Format,
  parts: readonly (Row | Step)[],
  options: Partial<EmitOptions> = {},
): Promise<string> {
  const emitter = await emitterOf(format);
  return new TextDecoder().decode(
    bytesOf(emitter.emitUnproved([batchOf(parts)], { units: "mm", header: [], ...options })),
  );
}

/** The same as its lines, without delimiters. */
export async function linesOf(
  format: Format,
  parts: readonly (Row | Step)[],
  options: Partial<EmitOptions> = {},
): Promise<string[]> {
  const text = await textOf(format, parts, options);
  return text.split(format.lineEnd).filter((one) => one !== "" && one !== "%");
}
