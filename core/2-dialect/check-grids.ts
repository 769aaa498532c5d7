import { atomsPerUnit } from "#base";
import { inverseTimeOf, timeGrid, timeUnit } from "./resolve-capabilities.ts";
import { speedUnit } from "./resolve-format.ts";
import type { NumberKey } from "./resolve-numbers.ts";
import { decimalsOf } from "./resolve-numbers.ts";
import type { Resolving } from "./resolving.ts";
import type { TreeNode } from "./tree.ts";
import { time } from "./values.ts";

/** Numbers have no more decimals than the base units can hold, and stated times lie on the grid of their word. */
export function checkGrids(resolving: Resolving): void {
  const { tree, fail } = resolving;
  for (const { path, decimals, unit } of gridsOf(tree)) {
    if (decimals === undefined || unit === undefined || unit / 10 ** decimals >= 1) continue;
    const most = Math.floor(Math.log10(unit));
    fail(
      "dialect/grid",
      path,
      `\`${path}\` has ${decimals} decimals; at most ${most} have a meaning.`,
      `State ${most} or fewer.`,
    );
  }
  const step = (speedUnit(tree) ?? 0) / 10 ** (decimalsOf(tree, "speed") ?? 0);
  if (step >= 1 && !Number.isInteger(step))
    fail(
      "dialect/grid",
      "spindle.speed-unit",
      "A step of S is no whole number of thousandths of a revolution a minute.",
      "State fewer decimals in `numbers.speed`, or a rounder `spindle.full-speed`.",
    );
  for (const state of ["at-speed", "stopped", "released", "clamped", "air", "hold-down"]) {
    const path = `confirm.${state}.timeout`;
    const grid = timeGrid(tree, "timeout", "wait.timeout-unit");
    const timeout = time(tree, path);
    if (timeout === undefined || grid === undefined || timeout % grid === 0) continue;
    const message = `\`${path}\` cannot be written with the decimals of \`numbers.timeout\`.`;
    fail("dialect/grid", path, message, "Round it up, or state more decimals.");
  }
}

interface Grid {
  readonly path: string;
  readonly decimals: number | undefined;
  /** Base units in one unit of the word; undefined where the unit is not stated. */
  readonly unit: number | undefined;
}

function gridsOf(tree: TreeNode): Grid[] {
  const one = (key: NumberKey, unit: number | undefined): Grid => ({
    path: `numbers.${key}`,
    decimals: decimalsOf(tree, key),
    unit,
  });
  const lengths = (
    ["length", "arc-centre", "peck", "feed-per-minute", "feed-per-revolution"] as const
  ).flatMap((key) =>
    (["mm", "inch"] as const).map((units) => ({
      path: `numbers.${key}.${units}`,
      decimals: decimalsOf(tree, key, units),
      unit: atomsPerUnit[units],
    })),
  );
  return [
    ...lengths,
    one("angle", 1_000_000),
    one("inverse-time", inverseTimeOf(tree)),
    one("speed", speedUnit(tree)),
    one("dwell", timeUnit(tree, "dwell.unit")),
    one("cycle-dwell", timeUnit(tree, "cycles.words.dwell-unit")),
    one("timeout", timeUnit(tree, "wait.timeout-unit")),
  ];
}
