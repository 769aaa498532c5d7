import type { Capabilities, Step, UnitSystem } from "#base";
import { axes, isArc, rowKind } from "#base";
import type { Row } from "./rows.ts";

/** Least steps of the quantities that a dialect writes, base units. */
export interface Grids {
  readonly length: number;
  readonly centre: number;
  readonly angle: number;
  readonly feed: number;
  readonly speed: number;
  readonly dwell: number;
}

/** The grids of a dialect for a program in these units; a quantity that it never writes has a grid all the same. */
export function gridsOf(capabilities: Capabilities, units: UnitSystem): Grids {
  return {
    length: capabilities.lengthGrid?.[units] ?? 1,
    centre: capabilities.centreGrid?.[units] ?? 1,
    angle: capabilities.angleGrid ?? 1,
    feed: capabilities.feedPerMinuteGrid?.[units] ?? 1,
    speed: capabilities.speedGrid ?? 1,
    dwell: capabilities.dwellGrid ?? 1,
  };
}

/** A change of one field of one row: what it is called, and the row with it. */
export interface Alteration {
  /** Field as the report names it: "line.x", "spindle-start.direction". */
  readonly field: string;
  readonly row: Row;
}

const kindNames = Object.fromEntries(Object.entries(rowKind).map(([name, value]) => [value, name]));

/** What a row is called: "line", "arcXy", "machine rapid", or the kind of its step. */
export function nameOf(row: Row): string {
  if (row.step) return row.step.kind;
  return `${row.frame === 1 ? "machine " : ""}${kindNames[row.kind]}`;
}

/** All changes of one field of a row; numbers by one least step, and by a thousand of them. */
export function alterations(row: Row, grids: Grids): Alteration[] {
  const changed = row.step ? alterStep(row, row.step, grids) : alterMotion(row, grids);
  return changed.map(({ field, row: after }) => ({ field: `${nameOf(row)}.${field}`, row: after }));
}

function alterMotion(row: Row, grids: Grids): Alteration[] {
  const all: Alteration[] = [];
  axes.forEach((axis, index) => {
    const bit = 1 << index;
    if (row.at[index] === undefined || (row.known & bit) === 0) return;
    for (const by of steps(index < 3 ? grids.length : grids.angle)) {
      const at = row.at.map((place, other) => (other === index ? place + by : place));
      all.push({ field: axis, row: { ...row, at, stated: row.stated | bit } });
    }
    const unknown = row.at.map((place, other) => (other === index ? 0 : place));
    all.push({
      field: `known ${axis}`,
      row: { ...row, at: unknown, known: row.known & ~bit, stated: row.stated & ~bit },
    });
    if (row.stated & bit) all.push({ field: `stated ${axis}`, row: { ...row, stated: row.stated & ~bit } });
  });
  all.push({ field: "frame", row: { ...row, frame: 1 - row.frame } });
  if (row.kind !== rowKind.rapid) {
    for (const by of steps(grids.feed)) all.push({ field: "feed", row: { ...row, feed: row.feed + by } });
    all.push({ field: "feed", row: { ...row, feed: 0 } });
  }
  all.push(...alterShape(row, grids));
  return all;
}

function alterShape(row: Row, grids: Grids): Alteration[] {
  if (row.kind === rowKind.rapid)
    return [{ field: "kind", row: { ...row, kind: rowKind.line, feed: 100 * grids.feed } }];
  if (!isArc(row.kind)) return [{ field: "kind", row: { ...row, kind: rowKind.rapid } }];
  const straight = { ...row, kind: rowKind.line, c1: 0, c2: 0, turns: 0 };
  const byRadius = row.kind >= rowKind.radiusXy;
  const first = byRadius ? rowKind.radiusXy : rowKind.arcXy;
  const centres = steps(grids.centre).flatMap((by) => [
    { field: byRadius ? "radius" : "centre 1", row: { ...row, c1: row.c1 + by } },
    ...(byRadius ? [] : [{ field: "centre 2", row: { ...row, c2: row.c2 + by } }]),
  ]);
  return [
    { field: "kind", row: straight },
    { field: "plane", row: { ...row, kind: first + ((row.kind - first + 1) % 3) } },
    { field: "direction", row: { ...row, turns: -row.turns } },
    { field: "turns", row: { ...row, turns: row.turns + Math.sign(row.turns) } },
    ...(byRadius ? [{ field: "radius", row: { ...row, c1: -row.c1 } }] : []),
    ...centres,
  ];
}

const steps = (grid: number): number[] => [grid, -1000 * grid];

type Field = string | number | boolean;

/** What a word of a step may be changed to; the others of the same kind. */
const words: readonly (readonly Field[])[] = [
  ["mm", "inch"],
  ["xy", "zx", "yz"],
  ["absolute", "incremental"],
  ["per-minute", "per-revolution", "inverse-time"],
  ["exact", "stop", "blend"],
  ["cw", "ccw"],
  ["left", "right"],
  ["mist", "flood", "air", "through-tool", "all"],
  ["initial", "retract"],
  [
    "drill",
    "dwell",
    "peck",
    "chip-break",
    "tap",
    "tap-left",
    "ream",
    "bore-dwell",
    "bore-stop",
    "bore-manual",
  ],
  ["release", "clamp", "taper-air-on", "taper-air-off", "cover-open", "cover-close"],
  ["hood-up", "hood-down", "measure"],
];

/** Fields that are there or not. */
const optional = ["revolutions", "dwellIs", "backOff", "feedIs"];

function isOptional(step: Step, name: string): boolean {
  return optional.includes(name) || (step.kind === "select-tool" && name === "offset");
}

function alterStep(row: Row, step: Step, grids: Grids): Alteration[] {
  return Object.entries(step).flatMap(([name, value]: [string, Field]) => {
    if (name === "kind") return [];
    const put = (to: Field): Alteration => ({
      field: name,
      row: { ...row, step: { ...step, [name]: to } },
    });
    const gone = Object.fromEntries(Object.entries(step).filter(([other]) => other !== name));
    const without = { field: name, row: { ...row, step: gone as unknown as Step } };
    return [...valuesFor(step, name, value, grids).map(put), ...(isOptional(step, name) ? [without] : [])];
  });
}

function valuesFor(step: Step, name: string, value: Field, grids: Grids): Field[] {
  if (typeof value === "boolean") return [!value];
  if (typeof value === "number") return numbersFor(step, name, value, grids);
  if (name === "text") return [`${value}X`, value.slice(1)];
  if (name === "code") return [`${value}1`];
  if (value === "on" || value === "off") return step.kind === "compensation" ? ["left"] : [other(value)];
  return words.find((list) => list.includes(value))?.filter((one) => one !== value) ?? [];
}

const other = (value: "on" | "off"): Field => (value === "on" ? "off" : "on");

function numbersFor(step: Step, name: string, value: number, grids: Grids): number[] {
  const grid = {
    rpm: grids.speed,
    time: grids.dwell,
    dwell: grids.dwell,
    revolutions: grids.dwell,
    timeout: 1_000_000,
    depth: grids.length,
    retract: grids.length,
    level: grids.length,
    peck: grids.length,
    tolerance: grids.length,
    backOff: grids.length,
  }[name];
  if (grid !== undefined) return [value + grid, Math.max(0, value - 10 * grid)].filter((to) => to !== value);
  if (step.kind === "reference-return") return [1, 2, 4].map((bit) => value ^ bit).filter((mask) => mask > 0);
  return [value + 1, ...(value > 1 ? [value - 1] : [])];
}
