import type { Batch, Finding } from "#base";
import { axisBit, frame, linearAxes, rowKind } from "#base";
import type { SimulationFacts, SimulationSizes } from "./facts.ts";
import { resultOf } from "./conclude.ts";
import { createField } from "./field.ts";
import type { HeightField } from "./field.ts";
import { createPart, createStretch, endStretch } from "./figures.ts";
import type { Part } from "./figures.ts";
import { depthText, notSimulated } from "./findings.ts";
import { fixtureOf } from "./fixtures.ts";
import { heldAtStart } from "./held.ts";
import { createLedger } from "./ledger.ts";
import { workMotion } from "./motion.ts";
import { createPath } from "./path.ts";
import type { SimulationResult } from "./result.ts";
import { bodyOf, flatShape, thinner } from "./shape.ts";
import type { Body } from "./shape.ts";
import { chooseResolution, usualSizes } from "./sizes.ts";
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
  const notes = resolutionNotes(facts, all, coarsened, cell, bodies);
  return { accept: (batch) => acceptBatch(walk, batch), end: () => resultOf(walk, notes) };
}

/** What is told of the width of the cells: finer is more than the memory holds, or wider than a tool can be seen by. */
function resolutionNotes(
  { units }: SimulationFacts,
  { resolution = 0 }: SimulationSizes,
  coarsened: boolean,
  cell: number,
  bodies: readonly Body[],
): Omit<Finding, "place">[] {
  const width = depthText(cell, units);
  const small = bodies.filter(({ cuts, shape }) => cuts && shape.radius < cell).map(({ number }) => number);
  return [
    ...(coarsened
      ? [
          notSimulated(
            `Cells of ${depthText(resolution, units)} are more than the memory of a simulation holds; they are ${width} wide.`,
            "State a coarser resolution, or a smaller stock.",
          ),
        ]
      : []),
    ...(small.length > 0
      ? [
          notSimulated(
            `Cells of ${width} are wider than the radius of tool ${small.join(", ")}: much of what it cuts, or meets, falls between their centres.`,
            "State a finer resolution.",
          ),
        ]
      : []),
  ];
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
    span: { from: Infinity, to: Infinity },
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
  const { shape, shank, holder } = body;
  const meets = shank !== undefined && shank.radius >= shape.radius - 1e-6;
  const margin = Math.hypot(field.cellX, field.cellY) / 2;
  return {
    ...body,
    slim: thinner(shape, tolerance),
    shankShape: meets ? flatShape(shank.radius + margin) : undefined,
    holderShape: holder && flatShape(holder.radius),
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
  const { facts, at, held, part, span, parts } = walk;
  if (facts.parts.length === 0) {
    if (part?.tool !== held.tool) enterPart(walk, toolPart(walk, held.tool));
    return;
  }
  if (at.offset >= span.from && at.offset < span.to) return;
  const index = facts.parts.findLastIndex(({ from }) => from <= at.offset);
  if (index < 0) return;
  span.from = facts.parts[index].from;
  span.to = facts.parts[index + 1]?.from ?? Infinity;
  if (parts[index] !== part) enterPart(walk, parts[index]);
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
