import type { ArcMove } from "./arc-move.ts";
import type { Lowering } from "./state.ts";
import { need } from "./state.ts";

const fullTurn = 2 * Math.PI;

/**
 * Largest sweep by radius word. A rounded radius moves the middle of the arc by 1 / cos(sweep / 2) - 1 times its error: 1 at 120
 * degrees, without bound towards 180. NISTIR 6556 3.5.3.1 advises against sweeps of 165 to 195 degrees for this.
 */
const largestRadiusSweep = (120 / 180) * Math.PI;

/** Codes of the planes (ISO 6983-1). */
const planeCodes = { xy: "G17", zx: "G18", yz: "G19" } as const;

/** Whether the dialect has an arc for this move; otherwise chords take its place. */
export function canSayArc(state: Lowering, arc: ArcMove): boolean {
  const { arcs } = state.capabilities;
  const key = (path: string, example: string) => ({
    path,
    why: "since it has arcs",
    example,
    offset: arc.source,
  });
  if (
    need(
      state,
      arcs.form,
      key("arc.form", "arc: { form: ? } # incremental-centre, absolute-centre, radius or none"),
      "none" as const,
    ) === "none"
  )
    return false;
  if (
    !need(state, arcs.planes, key("arc.planes", "arc: { planes: ? } # a list of xy, zx and yz"), []).includes(
      arc.plane,
    )
  )
    return false;
  const plane = `plane.${arc.plane}`;
  if (
    !need<boolean>(
      state,
      state.capabilities.words[plane],
      { ...key(plane, `plane: { ${arc.plane}: ${planeCodes[arc.plane]} }`), why: "for its arcs" },
      true,
    )
  )
    return arc.plane === "xy";
  if (arc.radius < arcs.smallestRadius || arc.radius > arcs.largestRadius) return false;
  if (arc.from === arc.to) return true;
  if (state.axesAtOnce < 3) return false;
  return need(
    state,
    arcs.helix,
    { ...key("arc.helix", "arc: { helix: ? } # yes or no"), why: "since it has helices" },
    false,
  );
}

/** Whether an arc of several turns must be written turn by turn. */
export function needsNewTurn(state: Lowering, sweep: number): boolean {
  return (
    sweep > fullTurn * (1 + 1e-9) &&
    !(state.capabilities.arcs.turns === true && largestPiece(state) >= fullTurn)
  );
}

/** Whether no row may cross a quadrant line of its circle. */
export function staysInQuadrant(state: Lowering): boolean {
  const key = {
    path: "arc.quadrants",
    why: "since it has arcs",
    example: "arc: { quadrants: ? } # any or one",
    offset: 0,
  };
  return need(state, state.capabilities.arcs.quadrants, key, "any") === "one";
}

/** The largest sweep of one row, radians. */
export function largestPiece(state: Lowering): number {
  const { arcs } = state.capabilities;
  const key = (path: string, example: string) => ({ path, why: "since it has arcs", example, offset: 0 });
  if (arcs.form === "radius") return Math.min(largestRadiusSweep, declaredSweep(state));
  const full = need(
    state,
    arcs.fullCircle,
    key("arc.full-circle", "arc: { full-circle: ? } # yes or no"),
    true,
  );
  const sweep = declaredSweep(state);
  if (arcs.turns === true && full && sweep >= fullTurn) return Infinity;
  return full ? sweep : Math.min(sweep, Math.PI);
}

/** The most by which rounded ends may carry an arc by radius past the sweep of its pieces, radians: 120 degrees become 126. */
const mostCarried = 0.1;

/**
 * The largest sweep of an arc that stays whole. A piece by radius, read from a program as an arc of its own, has its ends on the grid,
 * which can carry its sweep a little past that of a piece: it is not to be split once more.
 */
export function largestWhole(state: Lowering, { radius }: ArcMove): number {
  const piece = largestPiece(state);
  if (state.capabilities.arcs.form !== "radius") return piece;
  const carried = Math.min(mostCarried, (2 * state.grids.length) / radius);
  return Math.max(piece, Math.min(largestRadiusSweep + carried, declaredSweep(state)));
}

function declaredSweep(state: Lowering): number {
  const key = {
    path: "arc.largest-sweep",
    why: "since it has arcs",
    example: "arc: { largest-sweep: ? } # degrees",
    offset: 0,
  };
  const micro = need(state, state.capabilities.arcs.largestSweep, key, 360_000_000);
  return (micro / 180_000_000) * Math.PI;
}
