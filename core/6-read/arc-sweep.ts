import { microDegreesPerTurn } from "#base";
import * as findings from "./findings-meaning.ts";
import type { Reader } from "./reader.ts";

/** Ends are rounded, so an arc that was split just so may sweep a little more: 0.05 degrees. */
const allowance = 50_000;

/** Where a controller bounds the sweep of one block, a longer arc is not run as it is said. Radii as vectors, atoms. */
export function checkSweep(
  reader: Reader,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  turns: number,
): void {
  const { largestSweep } = reader.format.arc;
  if (largestSweep === undefined || largestSweep >= microDegreesPerTurn) return;
  const sweep = sweepOf(x0, y0, x1, y1, turns);
  if (sweep <= largestSweep + allowance) return;
  const most = `${largestSweep / 1_000_000} degrees`;
  reader.report(
    findings.badArc(
      reader.block.start,
      `The arc sweeps ${(sweep / 1_000_000).toFixed(2)} degrees; this dialect takes at most ${most} in one block.`,
      "Split the arc.",
      "arc.largest-sweep",
    ),
  );
}

/** Where a controller takes no arc over a quadrant line of its circle; nothing is allowed for, since ends can lie on a line exactly. */
export function checkQuadrant(
  reader: Reader,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  turns: number,
): void {
  if (reader.format.arc.quadrants !== "one") return;
  // Both ends in one closed quadrant, and the shorter way between them: the cross product has the sign of the turn.
  const together = x0 * x1 >= 0 && y0 * y1 >= 0;
  const cross = x0 * y1 - y0 * x1;
  const isShort = cross !== 0 && cross > 0 === turns > 0;
  if (together && isShort && Math.abs(turns) === 1) return;
  reader.report(
    findings.badArc(
      reader.block.start,
      "The arc crosses a quadrant line of its circle; this dialect takes no such arc in one block.",
      "Split the arc where it is straight above, below or beside its centre.",
      "arc.quadrants",
    ),
  );
}

/** Sweep in micro-degrees; end = start is a full circle. */
function sweepOf(x0: number, y0: number, x1: number, y1: number, turns: number): number {
  const angle = Math.atan2(x0 * y1 - y0 * x1, x0 * x1 + y0 * y1) * Math.sign(turns);
  const share = angle / (2 * Math.PI);
  const part = share <= 0 ? share + 1 : share;
  return (Math.abs(turns) - 1 + part) * microDegreesPerTurn;
}
