import { atomsPerMillimetre, milliPerRpm } from "#base";
import type { Material } from "./materials.ts";

/** A speed is told from half as much again over the fastest of the sources. */
export const tooFast = 1.5;

/** And from a quarter of the slowest; small tools are slow wherever the spindle can turn them no faster. */
export const tooSlow = 0.25;

/** Cutting speed Vc = pi D n / 1000, m/min: D8 at 24 000 -> 603.2. Diameter in atoms, speed in milli-rpm. */
export function cuttingSpeed(diameter: number, rpm: number): number {
  return (Math.PI * (diameter / atomsPerMillimetre) * (rpm / milliPerRpm)) / 1000;
}

/**
 * Whether a cutting speed is well outside of what the sources give for a material. Too slow counts only where the job says that
 * the tool may turn more than twice as fast: what the spindle can do is not known here.
 *
 * @param reserve greatest speed of the tool over its speed; 1 where the job states none
 */
export function outsideSpeed(
  { slowest, fastest }: Material,
  speed: number,
  reserve: number,
): "slow" | "fast" | undefined {
  if (fastest !== undefined && speed > fastest.speed * tooFast) return "fast";
  return slowest !== undefined && speed < slowest.speed * tooSlow && reserve > 2 ? "slow" : undefined;
}
