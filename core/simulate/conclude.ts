import type { Finding } from "#base";
import { volumeLeft } from "./field.ts";
import type { HeightField } from "./field.ts";
import { byTool, figuresOf } from "./figures.ts";
import { breaksThrough, notSimulated } from "./findings.ts";
import { enter, findingsOf } from "./ledger.ts";
import type { HeightMap, SimulationResult } from "./result.ts";
import { surestWall } from "./sizes.ts";
import type { Walk } from "./walk.ts";

/** What a walk came to, with the notes that were due before it. */
export function resultOf(walk: Walk, notes: readonly Omit<Finding, "place">[]): SimulationResult {
  const { field, parts, facts } = walk;
  const operations = parts.map((part) => figuresOf(part, field.bottom));
  const { cellX, cellY } = field;
  return {
    findings: [...notes, ...leftOut(walk), ...depthFindings(walk), ...findingsOf(walk.ledger)],
    done: {
      units: facts.units,
      cell: Math.max(cellX, cellY),
      surestWall: surestWall(cellX, cellY),
      operations,
      tools: byTool(operations),
      stockVolume: (field.top - field.bottom) * field.columns * field.rows * cellX * cellY,
      volumeLeft: volumeLeft(field),
      map: mapOf(field),
    },
  };
}

function mapOf({ tiles: _, ...field }: HeightField): HeightMap {
  return field;
}

/** What was not simulated, and what was taken for granted of tools. */
function leftOut({ left, bodies, parts }: Walk): Finding[] {
  const used = new Set(parts.map(({ tool }) => tool));
  const assumed = [...bodies.values()].filter(({ assumed, number }) => assumed !== "" && used.has(number));
  return [
    ...[...left].map((what) => notSimulated(`Not simulated: ${what}.`, "Look at these motions yourself.")),
    ...assumed.map(({ number, assumed }) =>
      notSimulated(
        `The simulation takes tool ${String(number)} to have ${assumed}; the job does not say it.`,
        "State `tipAngle` or `cornerRadius` of the tool.",
      ),
    ),
  ];
}

/** How far tools go below the stock: a warning where it is far, and one note for all the others. */
function depthFindings({ parts, field, sizes, facts, ledger, bodies }: Walk): Finding[] {
  const below = parts.filter(({ lowest }) => field.bottom - lowest > sizes.tolerance);
  const usual = below.filter(
    ({ lowest, tool }) => field.bottom - lowest <= sizes.throughDepth + (bodies.get(tool)?.point ?? 0),
  );
  for (const part of below) {
    if (usual.includes(part)) continue;
    const at = { row: 0, offset: part.lowestOffset };
    enter(ledger, "below", part.id, part.tool, "", field.bottom - part.lowest, at);
  }
  if (usual.length === 0) return [];
  const deepest = field.bottom - Math.min(...usual.map(({ lowest }) => lowest));
  const place = { source: facts.source, offset: usual[0].lowestOffset };
  return [
    {
      ...breaksThrough(
        usual.map(({ id }) => id),
        deepest,
        facts.units,
      ),
      place,
    },
  ];
}
