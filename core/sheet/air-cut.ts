/** How far a program has to be raised, and can be, to run above the work. */
import type { MachineFacts } from "#base";
import { atomsPerMillimetre, atomsPerUnit } from "#base";
import type { AirCut } from "#report";
import type { Undertaking } from "../undertaking.ts";
import { createSpan, isSeen, widen } from "./span.ts";
import type { ReachTally } from "./tally.ts";
import type { Measure } from "./units.ts";

/** Steps of the raise, atoms: whole tens of millimetres, or half inches. */
const steps = { mm: 10 * atomsPerMillimetre, inch: 0.5 * atomsPerUnit.inch } as const;

/**
 * The least whole step that lifts the lowest point of a program to the clearance of its operations, which lies above stock and
 * clamps; undefined where no motion is known.
 */
export function airCutOf(
  { operations, machine, facts }: Undertaking,
  reaches: readonly ReachTally[],
  { length, units }: Measure,
): AirCut | undefined {
  const z = createSpan();
  for (const { motion } of reaches) [motion[2].least, motion[2].most].forEach((place) => widen(z, place));
  if (!isSeen(z)) return undefined;
  const above = Math.max(...operations.map(({ clearance }) => clearance));
  const step = steps[units];
  const raise = Math.max(1, Math.ceil((above - z.least) / step)) * step;
  const room = roomAbove(machine, facts, reaches);
  return {
    lowest: length(z.least),
    above: length(above),
    raise: length(raise),
    ...(room === undefined ? {} : { room: length(room) }),
  };
}

/** What travel leaves above the highest place of the spindle nose: the tip and the tool's length above it (ISO 841: + is up). */
function roomAbove(
  { travel, lengthOffset }: MachineFacts,
  { workOffsets, tools }: Undertaking["facts"],
  reaches: readonly ReachTally[],
): number | undefined {
  const byHand = lengthOffset === undefined || lengthOffset.form === "none";
  if (travel.z === undefined || byHand) return undefined;
  const [, top] = travel.z;
  const rooms = reaches.map(({ tool, workOffset, motion }) => {
    const origin = workOffsets[workOffset];
    const length = tools.find(({ number }) => number === tool)?.length;
    return origin === undefined || length === undefined ? NaN : top - (origin[2] + length + motion[2].most);
  });
  const least = Math.min(...rooms);
  return Number.isFinite(least) ? least : undefined;
}
