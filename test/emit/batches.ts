import fc from "fast-check";
import type { Batch, Step } from "#base";
import { axisBit, createBatch, frame, pushAside, rowKind } from "#base";

/** A row as it is made up: places in units of 1 um and 1e-3 degree, so that every format's grid holds them. */
interface MadeUpRow {
  readonly kind: number;
  readonly machine: boolean;
  readonly stated: number;
  readonly places: readonly number[];
  readonly feed: number;
  readonly turns: number;
}

const row = fc.record({
  kind: fc.constantFrom(
    rowKind.rapid,
    rowKind.line,
    rowKind.line,
    rowKind.line,
    rowKind.arcXy,
    rowKind.arcZx,
    rowKind.arcYz,
  ),
  machine: fc.boolean(),
  stated: fc.integer({ min: 1, max: 63 }),
  places: fc.array(fc.integer({ min: -999_999, max: 999_999 }), { minLength: 8, maxLength: 8 }),
  feed: fc.integer({ min: 1, max: 50_000 }),
  turns: fc.constantFrom(1, -1),
});

const step: fc.Arbitrary<Step> = fc.oneof(
  fc.constantFrom<Step>(
    { kind: "plane", value: "xy" },
    { kind: "plane", value: "yz" },
    { kind: "distance", value: "absolute" },
    { kind: "distance", value: "incremental" },
    { kind: "feed-mode", value: "per-minute" },
    { kind: "overrides", value: "on" },
    { kind: "compensation", value: "off", offset: 0 },
    { kind: "compensation", value: "left", offset: 2 },
    { kind: "length-offset", number: 0 },
    { kind: "change-tool" },
    { kind: "spindle-start", direction: "cw" },
    { kind: "spindle-stop" },
    { kind: "coolant", medium: "all", on: false },
    { kind: "pause", optional: true },
    { kind: "cycle", value: "off" },
    { kind: "reference-return", axes: axisBit.z },
  ),
  fc.record({ kind: fc.constant("select-tool" as const), tool: fc.nat(99) }),
  fc.record({ kind: fc.constant("length-offset" as const), number: fc.integer({ min: 1, max: 99 }) }),
  fc.record({ kind: fc.constant("work-offset" as const), number: fc.integer({ min: 1, max: 9 }) }),
  fc.record({ kind: fc.constant("spindle-speed" as const), rpm: fc.nat(24_000).map((rpm) => rpm * 1000) }),
  fc.record({ kind: fc.constant("dwell" as const), time: fc.nat(60_000).map((time) => time * 10_000) }),
  fc.record({ kind: fc.constant("message" as const), text: fc.string({ unit: "grapheme" }) }),
);

/** A drill cycle with its holes, which begins after the Z of a rapid. */
const holes = fc.record({
  at: fc.array(fc.tuple(fc.nat(9999), fc.nat(9999)), { minLength: 1, maxLength: 4 }),
  initial: fc.boolean(),
});

/** Parts of a made-up sequence. */
export const parts = fc.array(
  fc.oneof({ weight: 5, arbitrary: row }, { weight: 3, arbitrary: step }, { weight: 1, arbitrary: holes }),
  { maxLength: 60 },
);

type Part = typeof parts extends fc.Arbitrary<(infer P)[]> ? P : never;

/** Steps behind which the place of an axis may be unknown. */
const losing: readonly Step["kind"][] = [
  "work-offset",
  "length-offset",
  "change-tool",
  "pause",
  "reference-return",
];

/**
 * A batch of made-up parts in which every row can be written: it begins with a rapid that makes all axes known, and so does
 * each row behind a step or a machine row that may have made one unknown.
 */
export function madeUpBatch(made: readonly Part[]): Batch {
  const batch = createBatch(12 * made.length + 4, true);
  const at = new Float64Array(6);
  knowAll(batch, at);
  for (const part of made) {
    if ("at" in part) pushHoles(batch, at, part);
    else if ("places" in part) pushMadeUp(batch, at, part);
    else pushAside(batch, part, 0);
    if ("places" in part ? isMachineRow(part) : !("at" in part) && losing.includes(part.kind))
      knowAll(batch, at);
  }
  return batch;
}

/** Machine rows are straight. */
function isMachineRow({ kind, machine }: MadeUpRow): boolean {
  return machine && kind < rowKind.arcXy;
}

function knowAll(batch: Batch, at: Float64Array): void {
  pushAside(batch, { kind: "distance", value: "absolute" }, 0);
  push(batch, { kind: rowKind.rapid, stated: 63, at });
}

function pushMadeUp(batch: Batch, at: Float64Array, part: MadeUpRow): void {
  const { kind, stated, places, feed, turns } = part;
  const isArc = kind >= rowKind.arcXy;
  if (isArc)
    pushAside(batch, { kind: "plane", value: (["xy", "zx", "yz"] as const)[kind - rowKind.arcXy] }, 0);
  const axes = isArc ? stated & 7 || 7 : stated;
  const isMachine = isMachineRow(part);
  const end = isMachine ? new Float64Array(6) : at;
  if (isMachine) pushAside(batch, { kind: "distance", value: "absolute" }, 0);
  for (let axis = 0; axis < 6; axis++)
    if (axes & (1 << axis)) end[axis] = places[axis] * (axis < 3 ? 1e4 : 1e3);
  const isRapid = kind === rowKind.rapid;
  push(batch, {
    kind,
    frame: isMachine ? frame.machine : frame.work,
    stated: axes,
    at: end,
    feed: isRapid ? 0 : feed * 1e6,
    ...(isArc ? { turns, centre: [places[6] * 1e4, places[7] * 1e4] as const } : {}),
  });
}

function pushHoles(
  batch: Batch,
  at: Float64Array,
  made: { at: readonly (readonly [number, number])[]; initial: boolean },
): void {
  const retract = at[2] - 10 * 1e7;
  pushAside(batch, { kind: "plane", value: "xy" }, 0);
  const level = made.initial ? at[2] : retract;
  const between = made.initial ? "initial" : "retract";
  pushAside(
    batch,
    {
      kind: "cycle-definition",
      cycle: "peck",
      depth: retract - 5e7,
      retract,
      level,
      between,
      levelStated: true,
      peck: 1e7,
      dwell: 0,
    },
    0,
  );
  at[2] = level;
  for (const [x, y] of made.at) {
    [at[0], at[1]] = [x * 1e4, y * 1e4];
    push(batch, { kind: rowKind.hole, stated: 3, at, feed: 2e9 });
  }
  pushAside(batch, { kind: "cycle", value: "off" }, 0);
}

interface Columns {
  readonly kind: number;
  readonly stated: number;
  readonly at: Float64Array;
  readonly frame?: number;
  readonly feed?: number;
  readonly turns?: number;
  readonly centre?: readonly [number, number];
}

function push(batch: Batch, columns: Columns): void {
  const index = batch.count++;
  batch.kind[index] = columns.kind;
  batch.frame[index] = columns.frame ?? frame.work;
  batch.known[index] = columns.frame === frame.machine ? columns.stated : 63;
  batch.stated[index] = columns.stated;
  [batch.x[index], batch.y[index], batch.z[index]] = columns.at;
  batch.abc?.forEach((column, axis) => (column[index] = columns.at[3 + axis]));
  batch.feed[index] = columns.feed ?? 0;
  [batch.c1[index], batch.c2[index]] = columns.centre ?? [0, 0];
  batch.turns[index] = columns.turns ?? 0;
  batch.aside[index] = -1;
}
