import type { UnitSystem } from "#base";
import { atomsPerInch, atomsPerMillimetre, unitWord } from "#base";
import { clean } from "./clean.ts";
import type { CutFigures, SimulationFigures } from "./outcome.ts";
import type { Layout } from "./text-findings.ts";
import { row } from "./row.ts";

const inch = atomsPerInch / atomsPerMillimetre;

/** What a unit of volume is called, and how many mm3 it has. */
const volumes = {
  mm: { word: "cm3", size: 1000, digits: 2 },
  inch: { word: "in3", size: inch ** 3, digits: 3 },
} as const satisfies Record<UnitSystem, { word: string; size: number; digits: number }>;

/** What a simulation of the stock says: how finely it looked, and what each operation took away. */
export function simulationText(figures: SimulationFigures | undefined, layout: Layout): string[] {
  if (figures === undefined) return [];
  const { units, cell, surestWall, operations, stockVolume, volumeLeft } = figures;
  const how = `cells of ${length(cell, units)}; walls from ${length(surestWall, units, Math.ceil)} on are sure to be seen`;
  const whole = `${volume(stockVolume, units)} of stock, ${volume(volumeLeft, units)} left`;
  const lines = [how, whole, ...operations.map((operation) => operationText(operation, units))];
  return lines.flatMap((text, index) => row(index === 0 ? "simulated" : "", text, layout));
}

function operationText({ id, tool, removed, greatestRate }: CutFigures, units: UnitSystem): string {
  const name = id === `tool ${String(tool)}` ? id : `${clean(id)}, tool ${String(tool)}`;
  const rate = greatestRate > 0 ? `, at most ${volume(greatestRate, units)}/min` : "";
  return `${name}: ${volume(removed, units)}${rate}`;
}

function volume(cubicMillimetres: number, units: UnitSystem): string {
  const { word, size, digits } = volumes[units];
  return `${(cubicMillimetres / size).toFixed(digits)} ${word}`;
}

/** Rounded as said: what is promised is rounded to the safe side. */
function length(
  millimetres: number,
  units: UnitSystem,
  rounded: (value: number) => number = Math.round,
): string {
  const steps = units === "mm" ? 100 : 10_000;
  const value = units === "mm" ? millimetres : millimetres / inch;
  return `${String(rounded(value * steps - 1e-6) / steps)} ${unitWord[units]}`;
}
