import { linearAxes } from "#base";
import { addMotion, endStretch, noteRate } from "./figures.ts";
import { depthIn } from "./fixtures.ts";
import { enter } from "./ledger.ts";
import type { Kind } from "./findings.ts";
import { setPath } from "./path.ts";
import type { ReadyBody, Walk } from "./walk.ts";
import { radiusAt } from "./shape.ts";
import type { Shape } from "./shape.ts";
import { sweep } from "./sweep.ts";

/** A rate is taken over a way of at least so many cells, and of the tool's diameter. */
const cellsOfRate = 4;

/** Moves the tool at feed along a line to a place, mm; from above where its height before is not known. */
export function cutTo(walk: Walk, x: number, y: number, z: number, minutes: number): void {
  const { path, body, sweeper } = walk;
  begin(walk, x, y, z);
  if (body === undefined || walk.part === undefined) return;
  if (body.cuts) {
    const lowered = path.length === 0 && walk.known === linearAxes ? Math.max(walk.z - z, 0) : 0;
    sweeper.removes = true;
    sweeper.lift = 0;
    sweeper.begun = walk.begun;
    sweep(sweeper, body.shape);
    if (sweeper.removed > 0) noteCutting(walk, body, lowered, minutes);
  }
  meetAbove(walk, body);
  if (walk.fixtures.length > 0) meetFixtures(walk, body);
  noteDepth(walk, z);
  arrive(walk, x, y, z);
  walk.begun = body.cuts;
}

/** Volume, rate and depth of a motion that took material away. */
function noteCutting(walk: Walk, body: ReadyBody, lowered: number, minutes: number): void {
  const { sweeper, part, field, stretch, path } = walk;
  if (!part) return;
  const volume = sweeper.removed * field.cellX * field.cellY;
  const beyond = sweeper.engaged - body.fluteLength;
  if (beyond > walk.sizes.tolerance) tell(walk, "flutes", "", beyond);
  if (path.length === 0) {
    // A plunge goes through air first: the time in material is its share of the way.
    endStretch(stretch);
    part.removed += volume;
    noteRate(part, volume, lowered > 0 ? minutes * Math.min(1, sweeper.engaged / lowered) : minutes);
    return;
  }
  const way = Math.hypot(path.length, path.z1 - path.z0);
  const enough = Math.max(2 * body.shape.radius, cellsOfRate * field.cellX);
  addMotion(stretch, part, volume, minutes, way, enough);
}

/**
 * Moves the tool at rapid along a line to a place, mm. Material that it goes through by more than the tolerance is told, and taken
 * away, so that it is not told again.
 */
export function rapidTo(walk: Walk, x: number, y: number, z: number): void {
  const { body, sweeper } = walk;
  const from = { x: walk.x, y: walk.y, z: walk.z };
  const mayLead = walk.facts.machine.rapids !== "straight" && walk.known === linearAxes;
  begin(walk, x, y, z);
  endStretch(walk.stretch);
  if (body === undefined || walk.part === undefined) return;
  if (mayLead && from.x !== x && from.y !== y) checkCorners(walk, body, from, x, y, z);
  begin(walk, x, y, z);
  if (checkRapid(walk, body) && body.cuts) {
    sweeper.removes = true;
    sweeper.lift = 0;
    sweeper.begun = false;
    sweep(sweeper, body.shape);
  }
  meetAbove(walk, body);
  if (walk.fixtures.length > 0) meetFixtures(walk, body);
  noteDepth(walk, z);
  arrive(walk, x, y, z);
  walk.begun = false;
}

/** Where rapids need not be straight, each axis may run ahead: both ways around the corner are looked at as well. */
function checkCorners(
  walk: Walk,
  body: ReadyBody,
  from: { readonly x: number; readonly y: number; readonly z: number },
  x: number,
  y: number,
  z: number,
): void {
  const low = Math.min(from.z, z);
  for (const [cornerX, cornerY] of [
    [x, from.y],
    [from.x, y],
  ]) {
    setPath(walk.path, from.x, from.y, low, cornerX, cornerY, low);
    if (checkRapid(walk, body)) return;
    setPath(walk.path, cornerX, cornerY, low, x, y, low);
    if (checkRapid(walk, body)) return;
  }
}

function checkRapid(walk: Walk, body: ReadyBody): boolean {
  const depth = depthOf(walk, body.slim, walk.sizes.tolerance);
  if (depth <= 0) return false;
  tell(walk, "rapid", "", depth + walk.sizes.tolerance);
  return true;
}

/** How deep a shape goes into what is left along the path, mm, without taking it away. */
function depthOf(walk: Walk, shape: Shape, lift: number): number {
  const { sweeper } = walk;
  sweeper.removes = false;
  sweeper.begun = false;
  sweeper.lift = lift;
  sweep(sweeper, shape);
  return sweeper.deepest;
}

/** Shank and holder against what is left around the cut. */
function meetAbove(walk: Walk, body: ReadyBody): void {
  const { tolerance } = walk.sizes;
  const { shank, holder, shankShape, holderShape } = body;
  if (shank && shankShape) {
    const depth = depthOf(walk, shankShape, shank.lift + tolerance);
    if (depth > 0) tell(walk, "shank", "", depth + tolerance);
  }
  if (holder && holderShape) {
    const depth = depthOf(walk, holderShape, holder.lift + tolerance);
    if (depth > 0) tell(walk, "holder", "", depth + tolerance);
  }
}

/** Cutting end, shank and holder against the fixtures. */
function meetFixtures(walk: Walk, body: ReadyBody): void {
  const { path, fixtures, sizes } = walk;
  const lowest = Math.min(path.z0, path.z1);
  for (const fixture of fixtures) {
    const meet = (what: string, radius: number, lift: number): void => {
      const depth = depthIn(fixture, path, radius - sizes.tolerance, lift + sizes.tolerance);
      if (depth > 0) tell(walk, "fixture", `${what} ${fixture.name}`, depth + sizes.tolerance);
    };
    if (lowest < fixture.top) meet("the tool cuts into", radiusAt(body.shape, fixture.top - lowest), 0);
    if (body.shank) meet("the shank meets", body.shank.radius, body.shank.lift);
    if (body.holder) meet("the holder meets", body.holder.radius, body.holder.lift);
  }
}

function begin(walk: Walk, x: number, y: number, z: number): void {
  // What is not known of the start is above: the tool comes straight down.
  if (walk.known === linearAxes) setPath(walk.path, walk.x, walk.y, walk.z, x, y, z);
  else setPath(walk.path, x, y, z, x, y, z);
}

function arrive(walk: Walk, x: number, y: number, z: number): void {
  walk.x = x;
  walk.y = y;
  walk.z = z;
  walk.known = linearAxes;
}

function noteDepth({ part, at }: Walk, z: number): void {
  if (part === undefined || z >= part.lowest) return;
  part.lowest = z;
  part.lowestOffset = at.offset;
}

/** Enters what was met in the ledger. */
export function tell(walk: Walk, kind: Kind, detail: string, depth: number): void {
  const { ledger, part, at } = walk;
  if (part) enter(ledger, kind, part.id, part.tool, detail, depth, at);
}
