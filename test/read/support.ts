import type { Batch, Finding, MachineFacts, Step } from "#base";
import { atomsPerMillimetre, axes, frame, rowKind } from "#base";
import type { Format } from "#dialect";
import { read } from "#read";
import type { ReadOptions } from "#read";
import { format, machine } from "./formats.ts";

/** How a test reads: what differs from the fixtures of formats.ts. */
export interface Reading {
  readonly format?: Format;
  readonly machine?: MachineFacts;
  readonly options?: ReadOptions;
  /** Bytes a chunk; all in one unless given. */
  readonly chunk?: number;
}

/** What a program reads as. */
export interface Read {
  /** One line a row or step, see `describeRow`. */
  readonly lines: string[];
  /** The findings, and their rules alone. */
  readonly findings: Finding[];
  readonly rules: string[];
  /** Each row copied, with the fields that a comparison looks at. */
  readonly rows: Row[];
}

/** A row of a batch, copied. */
export interface Row {
  readonly kind: number;
  readonly frame: number;
  readonly known: number;
  readonly stated: number;
  readonly place: readonly number[];
  readonly feed: number;
  readonly c1: number;
  readonly c2: number;
  readonly turns: number;
  readonly step: Step | undefined;
  readonly source: number;
}

/** Words of the head that most programs here need: units, plane, absolute, feed a minute, incremental centres. */
export const head = "G21 G17 G90 G94 G91.1 G98";

function* chunksOf(bytes: Uint8Array, size: number): Generator<Uint8Array> {
  // One buffer for all chunks: a reader that keeps a chunk longer than it may sees another text.
  const chunk = new Uint8Array(Math.min(size, bytes.length));
  for (let at = 0; at < bytes.length; at += size) {
    const part = bytes.subarray(at, at + size);
    chunk.set(part);
    yield chunk.subarray(0, part.length);
    chunk.fill(0);
  }
}

/** Reads a text. */
export function readText(text: string | Uint8Array, reading: Reading = {}): Read {
  const bytes = typeof text === "string" ? new TextEncoder().encode(text) : text;
  const findings: Finding[] = [];
  const rows: Row[] = [];
  const batches = read(
    chunksOf(bytes, reading.chunk ?? Math.max(bytes.length, 1)),
    reading.format ?? format,
    reading.machine ?? machine,
    reading.options ?? {},
    (finding) => findings.push(finding),
  );
  for (const batch of batches) for (let row = 0; row < batch.count; row++) rows.push(copyRow(batch, row));
  return { lines: rows.map(describeRow), findings, rules: findings.map(({ rule }) => rule), rows };
}

/** Reads blocks as the middle of a program: behind the head, before the end; gives the lines between the two. */
export function readBlocks(blocks: string, reading: Reading = {}): Read {
  const headLines = readText(`${head}\n`, { ...reading, options: { ...reading.options, fragment: true } })
    .lines.length;
  const all = readText(`${head}\n${blocks}\nM2\n`, reading);
  const lines = all.lines.slice(headLines + 1);
  // Blocks out of the middle do not show where their section begins.
  const findings = all.findings.filter(({ rule }) => rule !== "block/section");
  return {
    ...all,
    findings,
    rules: findings.map(({ rule }) => rule),
    lines: lines.at(-1) === "program-end" ? lines.slice(0, -1) : lines,
  };
}

function copyRow(batch: Batch, row: number): Row {
  return {
    kind: batch.kind[row],
    frame: batch.frame[row],
    known: batch.known[row],
    stated: batch.stated[row],
    place: [batch.x[row], batch.y[row], batch.z[row], ...(batch.abc ?? []).map((column) => column[row])],
    feed: batch.feed[row],
    c1: batch.c1[row],
    c2: batch.c2[row],
    turns: batch.turns[row],
    step: batch.aside[row] < 0 ? undefined : batch.asides[batch.aside[row]],
    source: batch.source[row],
  };
}

const mm = (atoms: number): string => String(atoms / atomsPerMillimetre);
const kindName = (kind: number): string =>
  Object.entries(rowKind).find(([, value]) => value === kind)?.[0] ?? "?";

/**
 * A row as a line: "line x10 y? f100" (known places in mm, ? for a named axis never; feed in mm a minute), "machine rapid z0",
 * "arcXy x10 y0 z5 c5,0 -1 f100"; a step as its kind and values: "spindle-speed rpm=9000000".
 */
export function describeRow(row: Row): string {
  if (row.step) return describeStep(row.step);
  const places = axes.flatMap((axis, index) => {
    if ((row.known & (1 << index)) === 0) return [];
    const value = row.place[index] ?? 0;
    return [`${axis}${index < 3 ? mm(value) : String(value / 1_000_000)}`];
  });
  const parts = [...(row.frame === frame.machine ? ["machine"] : []), kindName(row.kind), ...places];
  if (row.turns !== 0) parts.push(`c${mm(row.c1)},${mm(row.c2)}`, String(row.turns));
  if (row.feed !== 0) parts.push(`f${mm(row.feed)}`);
  return parts.join(" ");
}

function describeStep(step: Step): string {
  const values = Object.entries(step).filter(([name]) => name !== "kind");
  return [step.kind, ...values.map(([name, value]) => `${name}=${String(value)}`)].join(" ");
}

/** The fixture with some of its parts changed. */
export function formatWith(change: Partial<Format>): Format {
  return { ...format, ...change };
}
