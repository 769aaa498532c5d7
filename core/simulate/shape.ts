import type { ToolKind } from "#base";
import { atomsPerMillimetre, isDiameterKnown, turns } from "#base";
import type { Tool } from "#job";

/** What the simulation goes by of a tool; a tool of the job is one. Lengths in atoms, the angle in micro-degrees. */
export type SimulationTool = Pick<
  Tool,
  | "number"
  | "kind"
  | "diameter"
  | "cornerRadius"
  | "tipAngle"
  | "tipDiameter"
  | "fluteLength"
  | "stickOut"
  | "shank"
  | "holder"
  | "length"
>;

/**
 * The cutting end as a body of revolution, by the height of its surface above the tip at each radius (see `rise`): flat up to
 * `flat`, then a cone of `slope` or a corner of radius `corner`, and upright at `radius`. Lengths in mm.
 */
export interface Shape {
  readonly kind: "flat" | "cone" | "corner";
  readonly radius: number;
  /** Radius of the flat end; 0 for a point or a ball. */
  readonly flat: number;
  /** Cones: rise for each mm of radius. */
  readonly slope: number;
  /** Corners: their radius; that of the tool for a ball. */
  readonly corner: number;
}

/** A part of the tool above its cutting edges, as a cylinder; mm. */
export interface Cylinder {
  readonly radius: number;
  /** Height of its lower face above the tip. */
  readonly lift: number;
}

/** A tool as the simulation sees it. */
export interface Body {
  readonly number: number;
  readonly shape: Shape;
  /** Whether it takes material away; a probe, a knife and a pen do not. */
  readonly cuts: boolean;
  /** Length of a drill's point, by which it goes through further than its hole does, mm; 0 for others. */
  readonly point: number;
  /** Height of the cutting edges, mm; infinite where the job does not say it. */
  readonly fluteLength: number;
  readonly shank: Cylinder | undefined;
  readonly holder: Cylinder | undefined;
  /** What was taken for granted of it, in words; "" for nothing. */
  readonly assumed: string;
}

/** Point angles that are meant where none is stated, degrees (common practice, no source). */
const usualAngles: Partial<Record<ToolKind, number>> = {
  drill: 118,
  "spot-drill": 90,
  "v-bit": 90,
  engraver: 90,
  chamfer: 90,
};

/** A flat end, or a cylinder of the tool. */
export function flatShape(radius: number): Shape {
  return { kind: "flat", radius, flat: radius, slope: 0, corner: 0 };
}

/** The body of a tool; undefined where nobody knows its diameter. */
export function bodyOf(tool: SimulationTool): Body | undefined {
  if (!isDiameterKnown(tool.diameter)) return undefined;
  const radius = tool.diameter / atomsPerMillimetre / 2;
  const assumed: string[] = [];
  const shape = shapeOf(tool, radius, assumed);
  const flutes = inMillimetres(tool.fluteLength);
  const shank = (inMillimetres(tool.shank) ?? 2 * radius) / 2;
  const out = stickOutOf(tool);
  return {
    number: tool.number,
    shape,
    cuts: turns(tool.kind),
    point: tool.kind === "drill" ? rise(shape, radius) : 0,
    fluteLength: flutes ?? Infinity,
    shank: flutes === undefined ? undefined : { radius: shank, lift: flutes },
    holder:
      tool.holder && out !== undefined
        ? { radius: tool.holder.diameter / atomsPerMillimetre / 2, lift: out }
        : undefined,
    assumed: assumed.join(", "),
  };
}

function inMillimetres(length: number | undefined): number | undefined {
  return length === undefined ? undefined : length / atomsPerMillimetre;
}

/** From the holder's face to the tip, mm: as stated, or the gauge length without the holder's. */
function stickOutOf({ stickOut, length, holder }: SimulationTool): number | undefined {
  if (stickOut !== undefined) return stickOut / atomsPerMillimetre;
  if (length === undefined || holder === undefined || length <= holder.length) return undefined;
  return (length - holder.length) / atomsPerMillimetre;
}

function shapeOf(tool: SimulationTool, radius: number, assumed: string[]): Shape {
  const usual = usualAngles[tool.kind];
  if (usual !== undefined) return coneOf(tool, radius, usual, assumed);
  if (tool.kind === "ball-mill") return cornerOf(radius, radius);
  if (tool.kind === "bull-nose" && tool.cornerRadius === undefined) assumed.push("sharp corners");
  const corner = Math.min(inMillimetres(tool.cornerRadius) ?? 0, radius);
  return corner > 0 ? cornerOf(radius, corner) : flatShape(radius);
}

function cornerOf(radius: number, corner: number): Shape {
  return { kind: "corner", radius, flat: radius - corner, slope: 0, corner };
}

function coneOf(tool: SimulationTool, radius: number, usual: number, assumed: string[]): Shape {
  if (tool.tipAngle === undefined) assumed.push(`a point of ${String(usual)} degrees`);
  const degrees = tool.tipAngle === undefined ? usual : tool.tipAngle / 1e6;
  const flat = Math.min((inMillimetres(tool.tipDiameter) ?? 0) / 2, radius);
  // The height of the point over its half: radius / tan(angle / 2), standards of drill points alike.
  const slope = degrees >= 180 ? 0 : 1 / Math.tan((degrees * Math.PI) / 360);
  return slope === 0 || flat === radius
    ? flatShape(radius)
    : { kind: "cone", radius, flat, slope, corner: 0 };
}

/** Height of the surface above the tip at a radius up to that of the tool; mm. */
export function rise(shape: Shape, radius: number): number {
  const beyond = radius - shape.flat;
  if (beyond <= 0) return 0;
  if (shape.kind === "cone") return beyond * shape.slope;
  const { corner } = shape;
  return corner - Math.sqrt(Math.max(corner * corner - beyond * beyond, 0));
}

/** The greatest radius at which the surface is no more than `height` above the tip; mm. */
export function radiusAt(shape: Shape, height: number): number {
  if (shape.kind === "flat" || height >= rise(shape, shape.radius)) return shape.radius;
  if (height <= 0) return shape.flat;
  if (shape.kind === "cone") return shape.flat + height / shape.slope;
  const rest = shape.corner - height;
  return shape.flat + Math.sqrt(shape.corner * shape.corner - rest * rest);
}

/** The same shape, thinner by `less` at its side; what is left of the point stays where it is. */
export function thinner(shape: Shape, less: number): Shape {
  const radius = Math.max(shape.radius - less, 0);
  return shape.kind === "flat" ? flatShape(radius) : { ...shape, radius, flat: Math.min(shape.flat, radius) };
}
