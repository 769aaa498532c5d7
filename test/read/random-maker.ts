import type { Batch, Plane, Step, UnitSystem } from "#base";
import { atomsPerUnit, frame, pushAside } from "#base";
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

/** What a sequence in the making knows, as contracted for stages that tell known places from unknown ones. */
export interface Maker {
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

export function step(maker: Maker, step: Step): void {
  pushAside(maker.batch, step, maker.source++);
}

export function grid(maker: Maker): number {
  return atomsPerUnit[maker.units] / 10 ** maker.format.numbers.length[maker.units].decimals;
}

export function length(maker: Maker, cells = 100_000): number {
  return (maker.random.below(2 * cells) - cells) * grid(maker);
}

export function feed(maker: Maker): number {
  const { numbers } = maker.format;
  if (maker.inverse)
    return (1 + maker.random.below(5000)) * (1e6 / 10 ** (numbers.inverseTime?.decimals ?? 0));
  const grid = atomsPerUnit[maker.units] / 10 ** numbers.feedPerMinute[maker.units].decimals;
  return (1 + maker.random.below(3)) * 1000 * grid;
}

/** Moves some axes in the work frame to new places; gives the mask of those that are stated. */
export function moveAxes(maker: Maker, mask: number): number {
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

export function know(maker: Maker, mask: number): void {
  maker.work |= mask;
  maker.machine &= ~mask;
}

export function row(
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
