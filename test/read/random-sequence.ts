import type { Batch, Plane, Step, UnitSystem } from "#base";
import { atomsPerUnit, axisBit, createBatch, frame, pushAside, rowKind } from "#base";
import type { Format } from "#dialect";

/** Numbers from a seed: the same sequence for the same seed. */
export function createRandom(seed: number): {
  below: (limit: number) => number;
  chance: (share: number) => boolean;
} {
  let state = (seed >>> 0) + 0x9e3779b9;
  const next = (): number => {
    state = Math.imul(state ^ (state >>> 15), 0x2c1b3c6d);
    state = Math.imul(state ^ (state >>> 12), 0x297a2d39);
    state ^= state >>> 15;
    return (state >>> 0) / 2 ** 32;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  return { below, chance: (share) => next() < share };
}

const planeKinds = {
  xy: { centre: rowKind.arcXy, radius: rowKind.radiusXy, first: 0, second: 1 },
  zx: { centre: rowKind.arcZx, radius: rowKind.radiusZx, first: 2, second: 0 },
  yz: { centre: rowKind.arcYz, radius: rowKind.radiusYz, first: 1, second: 2 },
} as const satisfies Record<Plane, unknown>;

/** What a sequence in the making knows, as contracted for stages that tell known places from unknown ones. */
interface Maker {
  readonly batch: Batch;
  readonly random: ReturnType<typeof createRandom>;
  readonly format: Format;
  readonly units: UnitSystem;
  work: number;
  machine: number;
  readonly place: number[];
  readonly nose: number[];
  plane: Plane;
  incremental: boolean;
  inverse: boolean;
  running: boolean;
  lengthOffset: number | undefined;
  workOffset: number | undefined;
  source: number;
}

/**
 * Makes a sequence such as sequencing makes it: every mode stated at the head, places known as contracted, every block of
 * actions in its own steps. Geometry is random, so that arcs need not be true ones: a reader states what is said.
 */
export function randomSequence(
  format: Format,
  units: UnitSystem,
  seed: number,
  rows: number,
  rotary: boolean,
): Batch {
  const maker: Maker = {
    batch: createBatch(rows * 8 + 200, rotary),
    random: createRandom(seed),
    format,
    units,
    work: 0,
    machine: 0,
    place: [0, 0, 0, 0, 0, 0],
    nose: [0, 0, 0],
    plane: "xy",
    incremental: false,
    inverse: false,
    running: false,
    lengthOffset: undefined,
    workOffset: undefined,
    source: 0,
  };
  head(maker);
  for (let count = 0; count < rows; count++) any(maker);
  step(maker, { kind: "program-end" });
  return maker.batch;
}

function step(maker: Maker, step: Step): void {
  pushAside(maker.batch, step, maker.source++);
}

function head(maker: Maker): void {
  const { codes, programNumber } = maker.format;
  step(maker, {
    kind: "program-start",
    number: programNumber ? 1 + maker.random.below(programNumber.to) : 0,
  });
  step(maker, { kind: "feed-mode", value: "per-minute" });
  if (codes.modes.overrides.on) step(maker, { kind: "overrides", value: "on" });
  step(maker, { kind: "plane", value: "xy" });
  if (codes.modes.units.mm) step(maker, { kind: "units", value: maker.units });
  step(maker, { kind: "compensation", value: "off", offset: 0 });
  step(maker, { kind: "path", value: "exact" });
  step(maker, { kind: "distance", value: "absolute" });
  if (codes.modes["arc-centre"].incremental)
    step(maker, {
      kind: "arc-centre",
      value: maker.format.arc.form === "absolute-centre" ? "absolute" : "incremental",
    });
  for (const kind of ["local-shift", "rotation", "scale"] as const)
    if (codes.modes[kind].off) step(maker, { kind, value: "off" });
  step(maker, { kind: "cycle", value: "off" });
  step(maker, { kind: "spindle-stop" });
  step(maker, { kind: "coolant", medium: "all", on: false });
}

function grid(maker: Maker): number {
  return atomsPerUnit[maker.units] / 10 ** maker.format.numbers.length[maker.units].decimals;
}

function length(maker: Maker, cells = 100_000): number {
  return (maker.random.below(2 * cells) - cells) * grid(maker);
}

function feed(maker: Maker): number {
  const { numbers } = maker.format;
  if (maker.inverse)
    return (1 + maker.random.below(5000)) * (1e6 / 10 ** (numbers.inverseTime?.decimals ?? 0));
  const grid = atomsPerUnit[maker.units] / 10 ** numbers.feedPerMinute[maker.units].decimals;
  return (1 + maker.random.below(3)) * 1000 * grid;
}

function any(maker: Maker): void {
  const { random } = maker;
  const pick = random.below(100);
  if (pick < 30) line(maker);
  else if (pick < 50) rapid(maker);
  else if (pick < 70) arc(maker);
  else if (pick < 75) holes(maker);
  else if (pick < 80) machineMove(maker);
  else rare(maker);
}

/** Moves some axes in the work frame to new places; gives the mask of those that are stated. */
function moveAxes(maker: Maker, mask: number): number {
  let stated = 0;
  for (let axis = 0; axis < (maker.batch.abc ? 6 : 3); axis++) {
    const bit = 1 << axis;
    if ((mask & bit) === 0) continue;
    if (maker.incremental && (maker.work & bit) === 0) continue;
    const value = axis < 3 ? length(maker) : (maker.random.below(720_000) - 360_000) * 1000;
    if (value !== maker.place[axis] || (maker.work & bit) === 0) stated |= bit;
    maker.place[axis] = value;
  }
  know(maker, stated);
  return stated;
}

function know(maker: Maker, mask: number): void {
  maker.work |= mask;
  maker.machine &= ~mask;
}

function row(
  maker: Maker,
  kind: number,
  stated: number,
  feed: number,
  c1 = 0,
  c2 = 0,
  turns = 0,
  inMachine = false,
): void {
  const { batch } = maker;
  const row = batch.count++;
  const place = inMachine ? maker.nose : maker.place;
  const known = inMachine ? maker.machine : maker.work;
  const at = (axis: number): number => (known & (1 << axis) ? (place[axis] ?? 0) : 0);
  batch.kind[row] = kind;
  batch.frame[row] = inMachine ? frame.machine : frame.work;
  batch.known[row] = known;
  batch.stated[row] = stated;
  [batch.x[row], batch.y[row], batch.z[row]] = [at(0), at(1), at(2)];
  batch.abc?.forEach((column, index) => (column[row] = at(3 + index)));
  [batch.feed[row], batch.c1[row], batch.c2[row], batch.turns[row]] = [feed, c1, c2, turns];
  batch.aside[row] = -1;
  batch.source[row] = maker.source++;
}

function mask(maker: Maker): number {
  const linear = 1 + maker.random.below(7);
  return maker.batch.abc && maker.random.chance(0.2) ? linear | (1 << (3 + maker.random.below(3))) : linear;
}

function rapid(maker: Maker): void {
  const stated = moveAxes(maker, mask(maker));
  if (stated !== 0) row(maker, rowKind.rapid, stated, 0);
}

function line(maker: Maker): void {
  const stated = moveAxes(maker, mask(maker));
  if (stated !== 0) row(maker, rowKind.line, stated, feed(maker));
}

function machineMove(maker: Maker): void {
  if (!maker.format.codes.machineMove || maker.incremental) return;
  const mask = 1 + maker.random.below(7);
  let stated = 0;
  for (let axis = 0; axis < 3; axis++) {
    const bit = 1 << axis;
    if ((mask & bit) === 0) continue;
    const value = length(maker);
    if (value !== maker.nose[axis] || (maker.machine & bit) === 0) stated |= bit;
    maker.nose[axis] = value;
  }
  maker.machine |= stated;
  maker.work &= ~stated;
  if (stated === 0) return;
  const isLine = maker.random.chance(0.3);
  row(maker, isLine ? rowKind.line : rowKind.rapid, stated, isLine ? feed(maker) : 0, 0, 0, 0, true);
}

function arc(maker: Maker): void {
  const { form } = maker.format.arc;
  if (form === "none" || form === undefined) return;
  const kinds = planeKinds[maker.plane];
  const inPlane = (1 << kinds.first) | (1 << kinds.second);
  if ((maker.work & inPlane) !== inPlane) return;
  const turn = maker.random.chance(0.5) ? 1 : -1;
  const grid = atomsPerUnit[maker.units] / 10 ** maker.format.numbers.arcCentre[maker.units].decimals;
  const offset = (): number => (1 + maker.random.below(50_000)) * grid * (maker.random.chance(0.5) ? 1 : -1);
  const [start1, start2] = [maker.place[kinds.first], maker.place[kinds.second]];
  const full = form !== "radius" && maker.random.chance(0.2);
  const stated = full ? 0 : moveAxes(maker, inPlane | (maker.random.chance(0.3) ? 7 : 0));
  if (!full && (stated & inPlane) === 0) return;
  const turns =
    maker.format.arc.turnsWord && maker.random.chance(0.3) ? turn * (1 + maker.random.below(4)) : turn;
  if (form === "radius") {
    row(maker, kinds.radius, stated, feed(maker), offset(), 0, turns);
    return;
  }
  const second = maker.random.chance(0.3) && form === "incremental-centre" ? 0 : offset();
  row(maker, kinds.centre, stated, feed(maker), start1 + offset(), start2 + second, turns);
}

function holes(maker: Maker): void {
  const { cycles, codes } = maker.format;
  if (!cycles || maker.plane !== "xy" || maker.inverse || (maker.work & 7) !== 7) return;
  const kinds = (["drill", "dwell", "peck", "tap", "ream", "bore-dwell"] as const).filter(
    (kind) => codes.cycles[kind],
  );
  const cycle = kinds[maker.random.below(kinds.length)];
  const hasReturn = codes.cycleReturn.initial && codes.cycleReturn.retract;
  const between = hasReturn
    ? maker.random.chance(0.5)
      ? "initial"
      : "retract"
    : (cycles.levelWithout ?? "retract");
  // Away from the initial level an incremental retract level means different things to different controllers.
  const once = maker.incremental && cycles.levels === "absolute" && between === "retract";
  const z = maker.place[2];
  const retract = z - maker.random.below(5000) * grid(maker);
  const depth = retract - (1 + maker.random.below(20_000)) * grid(maker);
  const level = between === "initial" ? z : retract;
  const peck = cycle === "peck" ? (1 + maker.random.below(5000)) * grid(maker) : 0;
  const dwellGrid = (cycles.dwellUnit === "s" ? 1e6 : 1000) / 10 ** maker.format.numbers.cycleDwell.decimals;
  const dwell = cycle === "dwell" || cycle === "bore-dwell" ? (1 + maker.random.below(50)) * dwellGrid : 0;
  step(maker, { kind: "cycle-definition", cycle, depth, retract, level, between, peck, dwell });
  const feed = feed(maker);
  const count = once ? 1 : 1 + maker.random.below(4);
  for (let hole = 0; hole < count; hole++) {
    const stated = moveAxes(maker, 1 + maker.random.below(3)) || 1;
    maker.place[2] = level;
    know(maker, 7);
    row(maker, rowKind.hole, stated, feed);
  }
  step(maker, { kind: "cycle", value: "off" });
}

function losePlace(maker: Maker): void {
  maker.work = maker.machine = 0;
}

/** One of the rare steps, or a few that belong together. */
function rare(maker: Maker): void {
  const makers = [
    () => switchSpindle(maker),
    () => step(maker, { kind: "coolant", medium: maker.random.chance(0.5) ? "mist" : "flood", on: true }),
    () => step(maker, { kind: "coolant", medium: "all", on: false }),
    () => dwell(maker),
    () => changeTool(maker),
    () => stop(maker),
    () => offsets(maker),
    () => modes(maker),
    () => reference(maker),
    () => extras(maker),
    () => compensate(maker),
  ];
  makers[maker.random.below(makers.length)]();
}

function switchSpindle(maker: Maker): void {
  const { spindle, numbers } = maker.format;
  const grid = 1000 / 10 ** numbers.speed.decimals;
  const speed: Step = { kind: "spindle-speed", rpm: (1 + maker.random.below(24_000)) * grid };
  const start: Step = { kind: "spindle-start", direction: maker.random.chance(0.5) ? "cw" : "ccw" };
  if (maker.running && maker.random.chance(0.3)) {
    step(maker, { kind: "spindle-stop" });
    maker.running = false;
  } else if (maker.running) step(maker, speed);
  else {
    const apartStart = spindle?.order === "start-first" && spindle.blocks === "apart";
    for (const step of apartStart ? [start, speed] : [speed, start]) step(maker, step);
    maker.running = true;
  }
}

function dwell(maker: Maker): void {
  const grid = (maker.format.dwell?.unit === "ms" ? 1000 : 1e6) / 10 ** maker.format.numbers.dwell.decimals;
  step(maker, { kind: "dwell", time: (1 + maker.random.below(500)) * grid });
}

function changeTool(maker: Maker): void {
  step(maker, { kind: "select-tool", tool: 1 + maker.random.below(12) });
  step(maker, { kind: "change-tool" });
  maker.running = false;
}

function stop(maker: Maker): void {
  if (maker.random.chance(0.5)) step(maker, { kind: "message", text: `LOAD TOOL ${maker.random.below(9)}` });
  step(maker, { kind: "pause", optional: maker.random.chance(0.3) });
  losePlace(maker);
}

function offsets(maker: Maker): void {
  const number = maker.random.below(4);
  if (maker.random.chance(0.5)) {
    step(maker, { kind: "work-offset", number: number + 1 });
    if (maker.workOffset !== number + 1) maker.work = 0;
    maker.workOffset = number + 1;
    return;
  }
  step(maker, { kind: "length-offset", number });
  if (maker.lengthOffset !== number) maker.work &= ~axisBit.z;
  maker.lengthOffset = number;
  if (number === 0 || maker.incremental) return;
  const stated = moveAxes(maker, axisBit.z);
  if (stated) row(maker, rowKind.rapid, stated, 0);
}

function modes(maker: Maker): void {
  if (maker.random.chance(0.5)) {
    maker.inverse = !maker.inverse && maker.format.codes.modes["feed-mode"]["inverse-time"] != null;
    step(maker, { kind: "feed-mode", value: maker.inverse ? "inverse-time" : "per-minute" });
  }
  const planes = (["xy", "zx", "yz"] as const).filter((plane) => maker.format.codes.modes.plane[plane]);
  maker.plane = planes[maker.random.below(planes.length)];
  step(maker, { kind: "plane", value: maker.plane });
  if (maker.random.chance(0.5))
    step(maker, { kind: "path", value: maker.random.chance(0.5) ? "blend" : "exact" });
  if (maker.random.chance(0.3)) toggleDistance(maker);
}

function toggleDistance(maker: Maker): void {
  maker.incremental = !maker.incremental;
  step(maker, { kind: "distance", value: maker.incremental ? "incremental" : "absolute" });
}

function reference(maker: Maker): void {
  if (!maker.format.codes.referenceReturn) return;
  const incremental = maker.format.referenceIntermediate === "incremental-zero" && !maker.incremental;
  if (incremental) toggleDistance(maker);
  const axes = 1 + maker.random.below(7);
  step(maker, { kind: "reference-return", axes });
  maker.work &= ~axes;
  maker.machine &= ~axes;
  if (incremental) toggleDistance(maker);
}

function extras(maker: Maker): void {
  const { random } = maker;
  const level = random.chance(0.5) ? "on" : "off";
  if (random.chance(0.5))
    step(maker, { kind: "wait", input: random.below(9), level, timeout: random.below(90) * 100_000 });
  else if (random.chance(0.5))
    step(maker, { kind: "output", number: 1 + random.below(6), on: random.chance(0.5) });
  else step(maker, { kind: "auxiliary", action: "release", code: "" });
}

function compensate(maker: Maker): void {
  if (maker.random.chance(0.5))
    step(maker, { kind: "compensation", value: "left", offset: 1 + maker.random.below(9) });
  step(maker, { kind: "compensation", value: "off", offset: 0 });
}
