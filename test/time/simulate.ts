/*
 * An independent estimate: the tool is moved in small steps of time. It shares no code with the clock, and takes geometry from
 * places along the path. Millimetres and seconds.
 */

export type Triple = readonly [number, number, number];

/** A motion at feed as its places, densely where it is bent. */
export interface Path {
  readonly points: readonly Triple[];
  /** Feed, mm/s. */
  readonly feed: number;
  /** Radius of its bends in the plane, and the axes of the plane; absent on a line. */
  readonly arc?: { readonly radius: number; readonly plane: readonly [number, number] };
}

interface Piece {
  readonly length: number;
  readonly most: number;
  readonly acceleration: number;
  /** Highest speed at its start. */
  readonly entry: number;
}

const minus = (a: Triple, b: Triple): number[] => a.map((value, axis) => value - b[axis]);
const sizeOf = (v: readonly number[]): number => Math.hypot(...v);
const unit = (v: readonly number[]): number[] => v.map((value) => value / sizeOf(v));

function lengthOf({ points }: Path): number {
  return points.slice(1).reduce((sum, point, index) => sum + sizeOf(minus(point, points[index])), 0);
}

/** What the axes can do along a path: on an arc both axes of its plane bear it all, whatever the angle. */
function limitsOf(path: Path, acceleration: Triple): { most: number; acceleration: number } {
  const { points, arc, feed } = path;
  const way = unit(minus(points[1], points[0])).map(Math.abs);
  if (!arc) {
    const own = way.map((share, axis) => (share > 1e-12 ? acceleration[axis] / share : Infinity));
    return { most: feed, acceleration: Math.min(...own) };
  }
  const weaker = Math.min(acceleration[arc.plane[0]], acceleration[arc.plane[1]]);
  const normal = [0, 1, 2].find((axis) => !arc.plane.includes(axis))!;
  const up = way[normal];
  const flat = Math.hypot(way[arc.plane[0]], way[arc.plane[1]]);
  return {
    // v2 / r in the plane may be as much as the weaker axis has.
    most: Math.min(feed, Math.sqrt(weaker * arc.radius) / flat),
    acceleration: Math.min(weaker / flat, up > 1e-12 ? acceleration[normal] / up : Infinity),
  };
}

/** Highest speed at the corner between two motions; the deviation is 0 for exact paths, undefined for a stop at each. */
function corner(
  before: Path,
  after: Path,
  accelerations: readonly number[],
  deviation: number | undefined,
): number {
  if (deviation === undefined) return 0;
  const [a, b] = before.points.slice(-2) as [Triple, Triple];
  const into = unit(minus(b, a));
  const out = unit(minus(after.points[1], after.points[0]));
  const turn = Math.acos(Math.max(-1, Math.min(1, into[0] * out[0] + into[1] * out[1] + into[2] * out[2])));
  if (turn < 2e-3) return Infinity;
  if (deviation === 0 || turn > Math.PI - 1e-6) return 0;
  const radius = deviation / (1 / Math.cos(turn / 2) - 1);
  const room = Math.min(lengthOf(before), lengthOf(after)) / 2 / Math.tan(turn / 2);
  return Math.sqrt(Math.min(...accelerations) * Math.min(radius, room));
}

/** Seconds of motions at feed that follow on one another from rest to rest, by steps of `dt`. */
export function simulateFeeds(
  paths: readonly Path[],
  acceleration: Triple,
  deviation: number | undefined,
  dt = 2e-4,
): number {
  const limits = paths.map((path) => limitsOf(path, acceleration));
  const pieces = paths.map((path, index): Piece => {
    const before = paths[index - 1];
    const accelerations = [limits[index].acceleration, limits[index - 1]?.acceleration ?? Infinity];
    const entry = before ? corner(before, path, accelerations, deviation) : 0;
    return { ...limits[index], length: lengthOf(path), entry };
  });
  const brakes = brakingCurves(pieces, dt);
  let seconds = 0;
  let speed = 0;
  pieces.forEach((piece, index) => {
    let along = 0;
    while (along < piece.length) {
      const allowed = Math.min(piece.most, brakes[index](along));
      const next = Math.max(Math.min(speed + piece.acceleration * dt, allowed), 1e-3);
      const step = ((speed + next) / 2) * dt;
      const part = Math.min(1, (piece.length - along) / step);
      along += step;
      seconds += part * dt;
      speed += (next - speed) * part;
    }
  });
  return seconds;
}

/** For each motion the speed at a place from which all that follows can be met, by going backwards in steps of time. */
function brakingCurves(pieces: readonly Piece[], dt: number): ((along: number) => number)[] {
  const curves: ((along: number) => number)[] = [];
  let speed = 0;
  for (let index = pieces.length - 1; index >= 0; index--) {
    const { length, most, acceleration, entry } = pieces[index];
    const places: number[] = [length];
    const speeds: number[] = [Math.min(speed, most)];
    let at = length;
    speed = Math.min(speed, most);
    while (at > 0 && speed < most) {
      const next = Math.min(speed + acceleration * dt, most);
      at -= ((speed + next) / 2) * dt;
      speed = next;
      places.push(at);
      speeds.push(speed);
    }
    curves.push((along) => {
      // The place that lies just before; further back than the curve goes, nothing has to be braked for.
      let low = 0;
      let high = places.length;
      while (low < high) {
        const middle = (low + high) >> 1;
        if (places[middle] > along) low = middle + 1;
        else high = middle;
      }
      if (low === 0) return speeds[0];
      if (low === places.length) return at > 0 ? Infinity : speeds[low - 1];
      const share = (places[low - 1] - along) / (places[low - 1] - places[low]);
      return speeds[low - 1] + share * (speeds[low] - speeds[low - 1]);
    });
    const atStart = at > 0 ? most : curves[curves.length - 1](0);
    speed = Math.min(atStart, entry, pieces[index - 1]?.most ?? 0);
  }
  return curves.reverse();
}

/** Seconds of a rapid: each axis by itself, or all on the straight way. */
export function simulateRapid(
  way: Triple,
  rates: Triple,
  acceleration: Triple,
  straight: boolean,
  dt = 2e-4,
): number {
  const size = sizeOf(way);
  if (size === 0) return 0;
  if (!straight)
    return Math.max(
      ...way.map((length, axis) => oneAxis(Math.abs(length), rates[axis], acceleration[axis], dt)),
    );
  const shares = unit(way).map(Math.abs);
  const least = (values: Triple): number =>
    Math.min(...shares.map((share, axis) => (share > 1e-12 ? values[axis] / share : Infinity)));
  return oneAxis(size, least(rates), least(acceleration), dt);
}

function oneAxis(length: number, most: number, acceleration: number, dt: number): number {
  if (length === 0) return 0;
  let seconds = 0;
  let at = 0;
  let speed = 0;
  for (;;) {
    // The last step of all: from this speed evenly to rest.
    if (speed * dt >= length - at) return seconds + (2 * (length - at)) / speed;
    // Braking that ends just at the end, as soon as there is no room for more.
    const braking = (speed * speed) / (2 * (length - at));
    const next = braking >= acceleration ? speed - braking * dt : Math.min(speed + acceleration * dt, most);
    at += ((speed + next) / 2) * dt;
    speed = next;
    seconds += dt;
  }
}
