import type { Batch, Finding } from "#base";
import { axisBit, frame, linearAxes, rowKind } from "#base";
import type { SimulationFacts, SimulationSizes } from "./facts.ts";
import { createField, volumeLeft } from "./field.ts";
import type { HeightField } from "./field.ts";
import { byTool, createPart, createStretch, endStretch, figuresOf } from "./figures.ts";
import type { Part } from "./figures.ts";
import { breaksThrough, depthText, notSimulated } from "./findings.ts";
import { fixtureOf } from "./fixtures.ts";
import { heldAtStart } from "./held.ts";
import { createLedger, enter, findingsOf } from "./ledger.ts";
import { workMotion } from "./motion.ts";
import { createPath } from "./path.ts";
import type { HeightMap, SimulationResult } from "./result.ts";
import { bodyOf, thinner } from "./shape.ts";
import type { Body } from "./shape.ts";
import { chooseResolution, surestWall, usualSizes } from "./sizes.ts";
import { hear } from "./steps.ts";
import { createSweeper } from "./sweep.ts";
import type { ReadyBody, Walk } from "./walk.ts";

/** A simulation of the stock: it is shown every batch of a sequence in order, and asked for what came of it. */
export interface Simulation {
  /** Takes the rows of a batch; the batch is free again afterwards. */
  accept(batch: Batch): void;
  end(): SimulationResult;
}

/**
 * Cuts the stock as the sequence says, on a field of heights, and looks at each motion for what it meets. It finds nothing
 * that the guard does not look at, too, but from what is left instead of from the box of the stock, and with the whole tool. All
 * findings are warnings and notes, one for each cause and operation.
 *
 * @param facts what is known of tools, stock and fixtures
 * @param sizes width of cells and tolerances, where they are not the usual ones
 */
export function createSimulation(facts: SimulationFacts, sizes: Partial<SimulationSizes> = {}): Simulation {
  const { stock } = facts;
  if (stock === undefined) {
    const note = notSimulated(
      "The job states no stock, so that nothing is simulated.",
      "State the stock in the job.",
    );
    return { accept: () => undefined, end: () => ({ findings: [note] }) };
  }
  const all = { ...usualSizes, ...sizes };
  const bodies = facts.tools.flatMap((tool) => bodyOf(tool) ?? []);
  const { cell, coarsened } = chooseResolution(stock, bodies, all);
  const field = createField(stock, cell);
  const walk = createWalk(facts, all, field, bodies);
  const notes = coarsened
    ? [
        notSimulated(
          `Cells of ${depthText(all.resolution ?? 0, facts.units)} are more than the memory of a simulation holds; they are ${depthText(cell, facts.units)} wide.`,
          "State a coarser resolution, or a smaller stock.",
        ),
      ]
    : [];
  return { accept: (batch) => acceptBatch(walk, batch), end: () => resultOf(walk, notes) };
}

function createWalk(
  facts: SimulationFacts,
  sizes: SimulationSizes,
  field: HeightField,
  bodies: readonly Body[],
): Walk {
  const path = createPath();
  const parts = facts.parts.map(({ id, tool }) => createPart(id, tool));
  return {
    facts,
    sizes,
    field,
    path,
    sweeper: createSweeper(field, path),
    ledger: createLedger(facts),
    bodies: new Map(bodies.map((body) => [body.number, readyBody(body, field, sizes)])),
    fixtures: facts.fixtures.map(fixtureOf),
    parts,
    part: undefined,
    body: undefined,
    held: heldAtStart(facts),
    stretch: createStretch(),
    x: 0,
    y: 0,
    z: 0,
    known: 0,
    begun: false,
    workOffset: 0,
    lengthOffset: 0,
    at: { row: 0, offset: 0 },
    feedMode: "per-minute",
    rpm: 0,
    cycle: undefined,
    contour: undefined,
    left: new Set(),
  };
}

function readyBody(body: Body, field: HeightField, { tolerance }: SimulationSizes): ReadyBody {
  const flat = (radius: number) => ({ kind: "flat" as const, radius, flat: radius, slope: 0, corner: 0 });
  const { shape, shank, holder } = body;
  const meets = shank !== undefined && shank.radius >= shape.radius - 1e-6;
  const margin = Math.hypot(field.cellX, field.cellY) / 2;
  return {
    ...body,
    slim: thinner(shape, tolerance),
    shankShape: meets ? flat(shank.radius + margin) : undefined,
    holderShape: holder && flat(holder.radius),
  };
}

function acceptBatch(walk: Walk, batch: Batch): void {
  for (let row = 0; row < batch.count; row++) {
    walk.at.row++;
    walk.at.offset = batch.source[row];
    if (batch.kind[row] === rowKind.aside) {
      hear(walk, batch.asides[batch.aside[row]]);
      continue;
    }
    if (batch.frame[row] === frame.machine) leaveWork(walk, batch, row);
    else if (isSeen(walk, batch, row)) {
      findPart(walk);
      workMotion(walk, batch, row);
    }
  }
}

/** A motion in machine coordinates: the place in the work is known no longer. Only at the rack is it one of interest. */
function leaveWork(walk: Walk, batch: Batch, row: number): void {
  const moved = batch.stated[row] & linearAxes;
  walk.known &= ~moved;
  walk.begun = false;
  if (moved & axisBit.x) walk.held.x = batch.x[row];
  if (moved & axisBit.y) walk.held.y = batch.y[row];
}

/** Whether a motion can be followed: in the work offset of the stock, with no rotary axis turned. */
function isSeen(walk: Walk, batch: Batch, row: number): boolean {
  const { workOffset, facts } = walk;
  const elsewhere = workOffset !== 0 && workOffset !== facts.workOffset;
  if (elsewhere)
    walk.left.add(`what is done under work offset ${String(workOffset)}, where the stock does not stand`);
  const turned = batch.abc?.some((column) => column[row] !== 0) === true;
  if (turned) walk.left.add("motions with a rotary axis turned");
  if (!elsewhere && !turned) return true;
  walk.known = 0;
  walk.begun = false;
  return false;
}

/** Finds the part of the work that a row belongs to, and the tool of it. */
function findPart(walk: Walk): void {
  const { facts, at, held, part } = walk;
  if (facts.parts.length === 0) {
    if (part?.tool !== held.tool) enterPart(walk, toolPart(walk, held.tool));
    return;
  }
  const { parts } = facts;
  const now = part === undefined ? -1 : walk.parts.indexOf(part);
  const inside = (index: number): boolean =>
    index >= 0 && at.offset >= parts[index].from && !(at.offset >= (parts[index + 1]?.from ?? Infinity));
  if (inside(now)) return;
  const next = parts.findIndex((_, index) => inside(index));
  if (next >= 0) enterPart(walk, walk.parts[next]);
}

function toolPart(walk: Walk, tool: number): Part {
  const known = walk.parts.find((part) => part.tool === tool);
  const part = known ?? createPart(`tool ${String(tool)}`, tool);
  if (!known) walk.parts.push(part);
  return part;
}

function enterPart(walk: Walk, part: Part): void {
  walk.part = part;
  walk.body = walk.bodies.get(part.tool);
  walk.begun = false;
  endStretch(walk.stretch);
  if (walk.body === undefined)
    walk.left.add(
      part.tool === 0
        ? "motions before a tool is known"
        : `tool ${String(part.tool)}, whose size is not known`,
    );
}

function resultOf(walk: Walk, notes: readonly Omit<Finding, "place">[]): SimulationResult {
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
function depthFindings({ parts, field, sizes, facts, ledger }: Walk): Finding[] {
  const below = parts.filter(({ lowest }) => field.bottom - lowest > sizes.tolerance);
  const usual = below.filter(({ lowest }) => field.bottom - lowest <= sizes.throughDepth);
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
