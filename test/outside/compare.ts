import type { Batch, UnitSystem } from "#base";
import { atomsPerMillimetre, axisBit, frame, rowKind } from "#base";
import type { Format } from "#dialect";
import { read } from "#read";
import type { MachineFacts } from "#base";
import type { OutsideMotion } from "./follow.ts";
import { createFollower } from "./follow.ts";

/*
 * What is compared: each rapid, line and arc in work coordinates. The block has one motion for the outside reader, too, of the same
 * code; its end, as far as we know the axes, and for arcs plane, centre and sense agree. What is not:
 * machine coordinates and reference returns, whose zero it does not know; fixed cycles, which it has none of; axis words behind a length
 * offset in a block without a motion word, which it passes over; feeds, turns, path mode, compensation and all that is no motion.
 * After what it does not follow it is put where the tool is.
 */

/** Why a motion is not compared. */
export type Reason = "machine coordinates" | "fixed cycle" | "length offset without motion word";

/** What came of one program or of many. */
export interface Tally {
  compared: number;
  arcs: number;
  readonly left: Record<Reason, number>;
  readonly differences: string[];
}

export function emptyTally(): Tally {
  const left = { "machine coordinates": 0, "fixed cycle": 0, "length offset without motion word": 0 };
  return { compared: 0, arcs: 0, left, differences: [] };
}

/** A row of ours with its place in millimetres. */
interface Motion {
  readonly kind: number;
  readonly machine: boolean;
  readonly known: number;
  readonly stated: number;
  readonly place: readonly [x: number, y: number, z: number];
  readonly c1: number;
  readonly c2: number;
  readonly turns: number;
  readonly source: number;
}

export interface Program {
  readonly text: string;
  readonly format: Format;
  readonly machine: MachineFacts;
  readonly units: UnitSystem;
}

/** Motions of a program as our reader has them; the proof has compared them with the sequence of the job. */
function motionsOf({ text, format, machine, units }: Program): Motion[] {
  const bytes = new TextEncoder().encode(text);
  const batches: Iterable<Batch> = read([bytes], format, machine, { units }, () => undefined);
  const motions: Motion[] = [];
  for (const batch of batches)
    for (let row = 0; row < batch.count; row++) {
      if (batch.kind[row] === rowKind.aside) continue;
      const [x, y, z, c1, c2] = [batch.x, batch.y, batch.z, batch.c1, batch.c2].map(
        (column) => column[row] / atomsPerMillimetre,
      );
      motions.push({
        kind: batch.kind[row],
        machine: batch.frame[row] === frame.machine,
        known: batch.known[row],
        stated: batch.stated[row],
        place: [x, y, z],
        c1,
        c2,
        turns: batch.turns[row],
        source: batch.source[row],
      });
    }
  return motions;
}

/** Words that make the outside reader take or leave the axis words of a block. */
const motionWord = /G0*[0-3](?![0-9.])/;
const lengthOffsetWord = /G(43|44|49)(?![0-9.])/;

function reasonOf(motion: Motion, block: string): Reason | undefined {
  if (motion.machine) return "machine coordinates";
  if (motion.kind === rowKind.hole) return "fixed cycle";
  if (lengthOffsetWord.test(block) && !motionWord.test(block)) return "length offset without motion word";
  return undefined;
}

/** Compares one program, block by block, and adds to the tally. */
export function compareProgram(program: Program, tally: Tally): void {
  const follower = createFollower();
  const lineOf = lineNumbers(program.text);
  const byBlock: Motion[][] = [];
  for (const motion of motionsOf(program)) (byBlock[lineOf(motion)] ??= []).push(motion);
  const increment = incrementOf(program);
  for (const [index, block] of program.text.split(program.format.lineEnd).entries()) {
    const ours = byBlock[index] ?? [];
    const theirs = follower.follow(block);
    const reason = ours.map((motion) => reasonOf(motion, block)).find((one) => one !== undefined);
    if (reason !== undefined) tally.left[reason] += ours.length;
    if (reason === undefined) {
      const found = differencesOf(ours, theirs, increment);
      tally.compared += ours.length;
      tally.arcs += ours.filter(({ turns }) => turns !== 0).length;
      tally.differences.push(...found.map((one) => `block ${index + 1} "${block}": ${one}`));
    }
    if (reason !== undefined) putBack(follower, ours);
  }
}

/** The least increment of lengths, millimetres. */
function incrementOf({ format, units }: Program): number {
  return 10 ** -format.numbers.length[units].decimals * (units === "inch" ? 25.4 : 1);
}

/** The block that a byte of the program stands in, counted from 0. */
function lineNumbers(text: string): (motion: Motion) => number {
  const starts = [0];
  new TextEncoder().encode(text).forEach((byte, index) => byte === 10 && starts.push(index + 1));
  return ({ source }) => {
    let line = 0;
    let high = starts.length;
    while (high - line > 1) {
      const middle = (line + high) >> 1;
      if (starts[middle] <= source) line = middle;
      else high = middle;
    }
    return line;
  };
}

function putBack(follower: ReturnType<typeof createFollower>, ours: readonly Motion[]): void {
  const last = ours.filter(({ machine }) => !machine).at(-1);
  if (last === undefined) return;
  const [x, y, z] = last.place;
  follower.place({ x, y, z });
}

function differencesOf(
  ours: readonly Motion[],
  theirs: readonly OutsideMotion[],
  increment: number,
): string[] {
  if (ours.length !== theirs.length) return [`${ours.length} motions for us, ${theirs.length} for the other`];
  return ours.flatMap((motion, index) => differences(motion, theirs[index], increment));
}

/** A number may be off by the half of its last digit in a sum of two, and by rounding in binary. */
const binary = 1e-9;

function differences(ours: Motion, theirs: OutsideMotion, increment: number): string[] {
  const found: string[] = [];
  const near = (what: string, a: number, b: number): void => {
    if (!(Math.abs(a - b) <= increment + binary)) found.push(`${what} is ${a} for us, ${b} for the other`);
  };
  const code = codeOf(ours);
  if (code !== theirs.motion) found.push(`motion is ${code} for us, ${theirs.motion} for the other`);
  for (const [axis, name] of (["x", "y", "z"] as const).entries())
    if (ours.known & axisBit[name]) near(name, ours.place[axis], theirs.to[name]);
  if (ours.turns === 0) return found;
  const plane = planes[(ours.kind - rowKind.arcXy) % 3];
  if (plane.code !== theirs.plane) found.push(`plane is ${plane.code} for us, ${theirs.plane} for the other`);
  if (theirs.centre === undefined) return [...found, "an arc for us, a line for the other"];
  const [first, second] = plane.axes;
  const centre = [theirs.centre[first], theirs.centre[second]];
  if (ours.kind < rowKind.radiusXy) {
    near(`centre ${first}`, ours.c1, centre[0]);
    near(`centre ${second}`, ours.c2, centre[1]);
    return found;
  }
  // By radius: it works out a centre; that lies a radius from both ends, on the side of the shorter way where the radius is positive.
  const to = [theirs.to[first] - centre[0], theirs.to[second] - centre[1]];
  const from = [theirs.from[first] - centre[0], theirs.from[second] - centre[1]];
  near("radius at the end", Math.abs(ours.c1), Math.hypot(...to));
  near("radius at the start", Math.abs(ours.c1), Math.hypot(...from));
  const cross = (from[0] * to[1] - from[1] * to[0]) * Math.sign(ours.turns) * Math.sign(ours.c1);
  if (!(cross >= -increment * Math.abs(ours.c1))) found.push("the centre lies on the other side");
  return found;
}

const planes = [
  { code: "G17", axes: ["x", "y"] },
  { code: "G18", axes: ["z", "x"] },
  { code: "G19", axes: ["y", "z"] },
] as const;

function codeOf({ kind, turns }: Motion): string {
  if (kind === rowKind.rapid) return "G0";
  if (turns === 0) return "G1";
  return turns < 0 ? "G2" : "G3";
}
