import type { Batch, Finding } from "#base";
import { capacity, memorySource, rowKind } from "#base";
import type { Job, JobStep } from "#job";
import { readJob, readMoves } from "#job";

/** A value of JSON that a test takes apart. */
export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** A job that uses every key of the format at least once. */
export function everyKey(): { [key: string]: Json } {
  return structuredClone(whole);
}

const holes = {
  at: [
    [10, 10],
    [20.5, -3],
  ],
  top: 0,
  depth: -12,
  retract: 2,
};

const whole = {
  job: "1",
  name: "Weather-station plate",
  units: "mm",
  program: { number: 1201, name: "PLATE-1" },
  stock: { min: [0, 0, -12], max: [160, 120, 0], material: "slate" },
  fixtures: [{ name: "left clamp", min: [-20, 40, -12], max: [8, 70, 9] }],
  workOffset: 1,
  clearance: 15,
  tools: [
    {
      number: 1,
      kind: "end-mill",
      diameter: 6,
      description: "6 mm, two flutes",
      flutes: 2,
      maxRpm: 24000,
      minRpm: 8000,
      maxFeed: 2400,
      lengthOffset: 11,
      radiusOffset: 21,
      length: 92.4,
      fluteLength: 18,
      stickOut: 32,
      shank: 6,
      holder: { diameter: 40, length: 60 },
      cornerRadius: 0.5,
      tipAngle: 118,
      tipDiameter: 0.2,
      lead: 1.5,
      hand: "right",
      centreCutting: true,
      life: 90,
      measure: false,
    },
    { number: 2, kind: "tap", diameter: 6, lead: 1 },
    { number: 3, kind: "pen", diameter: 0.5 },
    {
      number: 4,
      radiusOffset: 24,
      kind: "end-mill",
      diameter: 6,
      flutes: 2,
      fluteLength: 18,
      shank: 6,
      cornerRadius: 0.5,
      tipAngle: 118,
      tipDiameter: 0.2,
      lead: 1.5,
      hand: "right",
      centreCutting: true,
      spareFor: 1,
    },
  ],
  operations: [
    {
      id: "op10",
      name: "Outline",
      tool: 1,
      spindle: { rpm: 16000, direction: "cw" },
      coolant: ["mist", "air"],
      feedMode: "per-minute",
      workOffset: 2,
      clearance: 20,
      hood: "down",
      tolerance: 0.01,
      path: "blend",
      moves: [
        { note: "outline" },
        { rapid: { x: 10, y: 5 } },
        { comp: "left" },
        { line: { z: -2 }, feed: 300 },
        { line: { x: 20, y: 5, z: -2 } },
        { arc: { x: 10, y: 5, cx: 15, cy: 5 }, turn: "cw", plane: "xy", turns: 1, feed: 800 },
        { comp: "off" },
        { arc: { z: -2, x: 20, cz: -2, cx: 15 }, turn: "ccw", plane: "zx" },
        { arc: { y: 15, z: -2, cy: 10, cz: -2, x: 21 }, turn: "cw", plane: "yz", turns: 2 },
        {
          path: {
            kind: "line",
            points: [
              [1, 2, -3],
              [4, 5, -6.5],
            ],
          },
          feed: 900,
        },
        { path: { kind: "rapid", points: [[1, 2, 30]] } },
        { dwell: 0.5 },
        { pause: "Turn the plate over", optional: true, park: false },
        { spindle: { rpm: 9000 } },
        { coolant: "off" },
        { coolant: ["flood"] },
      ],
    },
    {
      id: "op20",
      tool: 1,
      spindle: { rpm: 1000, direction: "cw" },
      coolant: "mist",
      moves: [
        { rapid: { x: 0, y: 0, z: 5 } },
        { holes: { kind: "drill", ...holes, between: "initial" }, feed: 200 },
        { holes: { kind: "dwell", ...holes, dwell: 0.2, between: "retract" }, feed: 200 },
        { holes: { kind: "peck", ...holes, peck: 3, backOff: 0.5, between: "retract" }, feed: 200 },
        { holes: { kind: "chip-break", ...holes, peck: 3, backOff: 0.5, between: "retract" }, feed: 200 },
        { holes: { kind: "bore", ...holes, dwell: 0.2, feedOut: 400, between: "retract" }, feed: 200 },
        { holes: { kind: "ream", ...holes, feedOut: 400, between: "retract" }, feed: 200 },
      ],
    },
    {
      id: "op30",
      tool: 2,
      spindle: { rpm: 500, direction: "cw" },
      moves: [
        { rapid: { x: 0, y: 0 } },
        { holes: { kind: "tap", ...holes, lead: 1, between: "retract" }, feed: 500 },
      ],
    },
    {
      id: "op40",
      tool: 3,
      feedMode: "inverse-time",
      moves: [{ rapid: { x: 0, y: 0 } }, { line: { x: 5, a: 90, b: 10.5, c: -720 }, feed: 12.5 }],
    },
  ],
};

/** Sizes that make every boundary fall everywhere. */
export interface Sizes {
  readonly windowBytes: number;
  readonly rows: number;
}

/** What reading a whole job gave. */
export interface Reading {
  readonly job: Job | undefined;
  readonly findings: readonly Finding[];
  /** Rows of each operation, as plain objects. */
  readonly rows: readonly (readonly Row[])[];
}

export interface Row {
  readonly kind: string;
  readonly stated: number;
  readonly known: number;
  readonly place: readonly number[];
  readonly rotary: readonly number[] | undefined;
  readonly feed: number;
  readonly centre: readonly number[];
  readonly turns: number;
  readonly aside: JobStep | undefined;
  readonly source: number;
}

const kindNames = Object.keys(rowKind);

/** Reads a job and all of its moves. */
export function readAll(text: string | Uint8Array, sizes: Sizes = { windowBytes: 4096, rows: 64 }): Reading {
  const source = memorySource(typeof text === "string" ? new TextEncoder().encode(text) : text);
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const job = readJob(source, report, sizes.windowBytes);
  const rows = (job?.operations ?? []).map((operation) => {
    const list: Row[] = [];
    for (const batch of readMoves(source, job as Job, operation, report, sizes)) {
      if (batch.count > capacity(batch) || capacity(batch) > sizes.rows)
        throw new Error("batch over its capacity");
      for (let row = 0; row < batch.count; row++) list.push(rowOf(batch, row));
    }
    return list;
  });
  return { job, findings, rows };
}

function rowOf(batch: Batch<JobStep>, row: number): Row {
  return {
    kind: kindNames[batch.kind[row]],
    stated: batch.stated[row],
    known: batch.known[row],
    place: [batch.x[row], batch.y[row], batch.z[row]],
    rotary: batch.abc?.map((column) => column[row]),
    feed: batch.feed[row],
    centre: [batch.c1[row], batch.c2[row]],
    turns: batch.turns[row],
    aside: batch.aside[row] < 0 ? undefined : batch.asides[batch.aside[row]],
    source: batch.source[row],
  };
}

/** Error findings alone. */
export function errorsOf(reading: Reading): readonly Finding[] {
  return reading.findings.filter(({ severity }) => severity === "error");
}

/** A small job around some moves, as text; `changes` go into the operation. */
export function jobOf(moves: string, operation = "", job = ""): string {
  return (
    `{"job":"1","units":"mm","clearance":15,${job}"tools":[{"number":1,"kind":"end-mill","diameter":6}],` +
    `"operations":[{"id":"op10","tool":1,"spindle":{"rpm":1000,"direction":"cw"},${operation}"moves":[${moves}]}]}`
  );
}

/** The same with moves that begin as they must. */
export function jobWith(moves: string, operation = ""): string {
  return jobOf(`{"rapid":{"x":0,"y":0}},${moves}`, operation);
}
