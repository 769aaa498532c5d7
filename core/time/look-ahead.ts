import { timeOf } from "./trapezoid.ts";

/*
 * Motions at feed that follow on one another, with the speeds at which they meet. The window is bounded: of what lies behind it
 * the tool is taken to stand, and only its first half is settled, so that the second leaves room to slow down.
 */

const rows = 2048;

/** Cosine of a thousandth of a radian: where the direction changes by less, motions go on straight (common practice, no source). */
const straightOn = 1 - 5e-7;

/** How corners are taken: atoms by which one may be left, 0 for none, or a stop at the end of each motion. */
export type Corners = number | "stop";

/** A motion at feed, atoms and seconds. */
export interface Motion {
  length: number;
  speed: number;
  acceleration: number;
  /** Directions at its start and its end, of length 1. */
  readonly from: [number, number, number];
  readonly to: [number, number, number];
}

/** Motions that wait for what follows them. */
export interface LookAhead {
  /** Sets how corners are taken from here on; the motions before are settled. */
  corners(how: Corners): void;
  /** A straight motion: its way and what limits it. */
  line(
    dx: number,
    dy: number,
    dz: number,
    length: number,
    speed: number,
    acceleration: number,
    owner: number,
  ): void;
  /** Any motion. */
  motion(motion: Motion, owner: number): void;
  /** The tool comes to rest. */
  rest(): void;
}

/** The window: columns of motions, and how the tool comes into the first of them. */
interface Window {
  readonly lengths: Float64Array;
  readonly speeds: Float64Array;
  readonly accelerations: Float64Array;
  readonly owners: Int32Array;
  /** Squares of the highest speed at which each begins. */
  readonly entries: Float64Array;
  /** The same, lowered to what can be slowed down from if nothing follows; worked out anew with each settling. */
  readonly lowered: Float64Array;
  /** Direction at the end of the last motion. */
  readonly last: Float64Array;
  count: number;
  corners: Corners;
  /** Speed at which the first motion begins. */
  start: number;
  readonly take: (owner: number, seconds: number) => void;
}

/**
 * @param take is handed the seconds of motions, in order, and whose they are
 */
export function createLookAhead(take: Window["take"]): LookAhead {
  const column = (): Float64Array => new Float64Array(rows);
  const window: Window = {
    lengths: column(),
    speeds: column(),
    accelerations: column(),
    owners: new Int32Array(rows),
    entries: column(),
    lowered: column(),
    last: new Float64Array(3),
    count: 0,
    corners: "stop",
    start: 0,
    take,
  };
  const { last } = window;
  return {
    corners: (how) => {
      rest(window);
      window.corners = how;
    },
    line: (dx, dy, dz, length, speed, acceleration, owner) => {
      const x = dx / length;
      const y = dy / length;
      const z = dz / length;
      push(window, length, speed, acceleration, last[0] * x + last[1] * y + last[2] * z, owner);
      last[0] = x;
      last[1] = y;
      last[2] = z;
    },
    motion: ({ length, speed, acceleration, from, to }, owner) => {
      const cosine = last[0] * from[0] + last[1] * from[1] + last[2] * from[2];
      push(window, length, speed, acceleration, cosine, owner);
      last.set(to);
    },
    rest: () => {
      rest(window);
    },
  };
}

function push(
  window: Window,
  length: number,
  speed: number,
  acceleration: number,
  cosine: number,
  owner: number,
): void {
  const row = window.count;
  window.entries[row] = entryOf(window, length, speed, acceleration, cosine);
  window.lengths[row] = length;
  window.speeds[row] = speed;
  window.accelerations[row] = acceleration;
  window.owners[row] = owner;
  if (++window.count === rows) settle(window, rows / 2);
}

/** Square of the highest speed at which a motion may begin, for the corner before it. */
function entryOf(
  { count, corners, accelerations, lengths, speeds }: Window,
  length: number,
  speed: number,
  acceleration: number,
  cosine: number,
): number {
  if (count === 0 || corners === "stop") return 0;
  const before = count - 1;
  const least = Math.min(acceleration, accelerations[before]);
  const corner = cornerOf(cosine, Math.min(length, lengths[before]), least, corners);
  const slower = Math.min(speed, speeds[before]);
  return Math.min(corner, slower * slower);
}

/** Square of the speed at which a corner may be taken. */
function cornerOf(cosine: number, shorter: number, acceleration: number, deviation: number): number {
  if (cosine >= straightOn) return Infinity;
  if (deviation === 0 || cosine <= -1) return 0;
  // An arc that leaves the corner by the deviation at most, and begins no further away than half of the shorter motion:
  // deviation = radius (1 / cos(turn / 2) - 1), speed = sqrt(acceleration radius).
  const half = Math.sqrt((1 + cosine) / 2);
  const sine2 = (1 - cosine) / 2;
  const byDeviation = (deviation * half * (1 + half)) / sine2;
  const byLength = (shorter * half) / (2 * Math.sqrt(sine2));
  return acceleration * Math.min(byDeviation, byLength);
}

/** Hands on the first motions, and keeps the rest. */
function settle(window: Window, until: number): void {
  const { count, lengths, speeds, accelerations, owners, entries, lowered, take } = window;
  slowDown(window);
  let entry = window.start;
  let owner = owners[0];
  let seconds = 0;
  for (let row = 0; row < until; row++) {
    if (owners[row] !== owner) {
      take(owner, seconds);
      owner = owners[row];
      seconds = 0;
    }
    const acceleration = accelerations[row];
    const length = lengths[row];
    const next = row + 1 < count ? lowered[row + 1] : 0;
    const exit = Math.sqrt(Math.min(next, entry * entry + 2 * acceleration * length));
    seconds += timeOf(length, entry, exit, speeds[row], acceleration);
    entry = exit;
  }
  take(owner, seconds);
  window.start = entry;
  window.count = count - until;
  if (window.count === 0) return;
  for (const column of [lengths, speeds, accelerations, entries]) column.copyWithin(0, until, count);
  owners.copyWithin(0, until, count);
}

/** Works out from which speeds at the start of motions can be slowed down; behind the last the tool is taken to stand. */
function slowDown({ count, entries, lowered, accelerations, lengths }: Window): void {
  let next = 0;
  for (let row = count - 1; row > 0; row--) {
    next = Math.min(entries[row], next + 2 * accelerations[row] * lengths[row]);
    lowered[row] = next;
  }
}

function rest(window: Window): void {
  if (window.count > 0) settle(window, window.count);
  window.start = 0;
}
