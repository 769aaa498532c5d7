/** Where the tools of a job go, worked out from its JSON by plain loops that share no code with the package. */

/** The parts of a job that are looked at here. */
export interface PlainJob {
  readonly clearance: number;
  readonly tools: readonly { readonly number: number; readonly flutes?: number; readonly diameter: number }[];
  readonly operations: readonly PlainOperation[];
}

export interface PlainOperation {
  readonly id: string;
  readonly tool: number;
  readonly clearance?: number;
  readonly spindle?: { readonly rpm: number };
  readonly moves: readonly PlainMove[];
}

type Place = Readonly<Partial<Record<"x" | "y" | "z" | "cx" | "cy", number>>>;

interface PlainMove {
  readonly rapid?: Place;
  readonly line?: Place;
  readonly arc?: Place;
  readonly turn?: "cw" | "ccw";
  readonly turns?: number;
  readonly feed?: number;
  readonly spindle?: { readonly rpm: number };
  readonly path?: { readonly kind: "line" | "rapid"; readonly points: readonly (readonly number[])[] };
  readonly holes?: {
    readonly at: readonly (readonly [number, number])[];
    readonly depth: number;
    readonly retract: number;
  };
}

/** Least and most of x, y and z. */
export type Reckoned = [number, number][];

/** What was reckoned of one operation. */
export interface ReckonedOperation {
  readonly id: string;
  readonly tool: number;
  readonly cutting: Reckoned;
  readonly motion: Reckoned;
  readonly lowest: number;
  /** Feeds of motion across and of motion straight down. */
  readonly cut: readonly number[];
  readonly plunge: readonly number[];
  readonly speeds: readonly number[];
}

const empty = (): Reckoned => [0, 1, 2].map(() => [Infinity, -Infinity]);

/** Takes a place into a box. */
export function include(box: Reckoned, at: readonly number[]): void {
  at.forEach((value, axis) => {
    box[axis] = [Math.min(box[axis][0], value), Math.max(box[axis][1], value)];
  });
}

/** Points along an arc, so many that the extent is right to a thousandth of its radius times ten to the minus three. */
function pointsOf(from: readonly number[], { arc, turn, turns = 1 }: PlainMove): number[][] {
  const { x = from[0], y = from[1], z = from[2], cx = 0, cy = 0 } = arc ?? {};
  const start = Math.atan2(from[1] - cy, from[0] - cx);
  const sense = turn === "cw" ? -1 : 1;
  let sweep = sense * (Math.atan2(y - cy, x - cx) - start);
  while (sweep <= 1e-9) sweep += 2 * Math.PI;
  sweep += (turns - 1) * 2 * Math.PI;
  const radius = Math.hypot(from[0] - cx, from[1] - cy);
  return Array.from({ length: 7200 }, (_, index) => {
    const share = (index + 1) / 7200;
    const angle = start + sense * sweep * share;
    const height = from[2] + share * (z - from[2]);
    return [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle), height];
  });
}

/** Reckons every operation of a job. */
export function reckon(job: PlainJob): ReckonedOperation[] {
  return job.operations.map((operation) => {
    const [cutting, motion] = [empty(), empty()];
    const [cut, plunge] = [new Set<number>(), new Set<number>()];
    const speeds = new Set<number>();
    let rpm = operation.spindle?.rpm ?? 0;
    let at = [NaN, NaN, operation.clearance ?? job.clearance];
    let feed = 0;
    const go = (to: number[], isFeed: boolean): void => {
      if (isFeed) {
        include(cutting, at);
        include(cutting, to);
        speeds.add(rpm);
        const isAxial = to[0] === at[0] && to[1] === at[1];
        if (!isAxial) cut.add(feed);
        else if (to[2] < at[2]) plunge.add(feed);
      }
      include(motion, to);
      at = to;
    };
    for (const move of operation.moves) {
      feed = move.feed ?? feed;
      rpm = move.spindle?.rpm ?? rpm;
      const to = ({ x = at[0], y = at[1], z = at[2] }: Place): number[] => [x, y, z];
      if (move.rapid) go(to(move.rapid), false);
      if (move.line) go(to(move.line), true);
      if (move.arc) {
        for (const point of pointsOf(at, move)) go(point, true);
        at = to(move.arc);
      }
      for (const [x = at[0], y = at[1], z = at[2]] of move.path?.points ?? [])
        go([x, y, z], move.path?.kind === "line");
      if (move.holes)
        for (const [x, y] of move.holes.at) {
          go([x, y, Math.max(at[2], move.holes.retract)], false);
          go([x, y, move.holes.retract], false);
          go([x, y, move.holes.depth], true);
          go([x, y, move.holes.retract], false);
        }
    }
    go([at[0], at[1], operation.clearance ?? job.clearance], false);
    const lowest = motion[2][0];
    const { id, tool } = operation;
    return { id, tool, cutting, motion, lowest, cut: [...cut], plunge: [...plunge], speeds: [...speeds] };
  });
}
