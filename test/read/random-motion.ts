import type { Plane } from "#base";
import { atomsPerUnit, rowKind } from "#base";
import type { Maker } from "./random-maker.ts";
import { feed, grid, know, length, moveAxes, row, step } from "./random-maker.ts";

const planeKinds = {
  xy: { centre: rowKind.arcXy, radius: rowKind.radiusXy, first: 0, second: 1 },
  zx: { centre: rowKind.arcZx, radius: rowKind.radiusZx, first: 2, second: 0 },
  yz: { centre: rowKind.arcYz, radius: rowKind.radiusYz, first: 1, second: 2 },
} as const satisfies Record<Plane, unknown>;

export function rapid(maker: Maker): void {
  const stated = moveAxes(maker, mask(maker));
  if (stated !== 0) row(maker, rowKind.rapid, stated, 0);
}

export function line(maker: Maker): void {
  const stated = moveAxes(maker, mask(maker));
  if (stated !== 0) row(maker, rowKind.line, stated, feed(maker));
}

function mask(maker: Maker): number {
  const linear = 1 + maker.random.below(7);
  return maker.batch.abc && maker.random.chance(0.2) ? linear | (1 << (3 + maker.random.below(3))) : linear;
}

export function machineMove(maker: Maker): void {
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

export function arc(maker: Maker): void {
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

export function holes(maker: Maker): void {
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
  step(maker, {
    kind: "cycle-definition",
    cycle,
    depth,
    retract,
    level,
    between,
    levelStated: Boolean(hasReturn),
    peck,
    dwell,
  });
  const cut = feed(maker);
  const count = once ? 1 : 1 + maker.random.below(4);
  for (let hole = 0; hole < count; hole++) {
    const stated = moveAxes(maker, 1 + maker.random.below(3)) || 1;
    maker.place[2] = level;
    know(maker, 7);
    row(maker, rowKind.hole, stated, cut);
  }
  step(maker, { kind: "cycle", value: "off" });
}
