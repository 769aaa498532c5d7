import type { Ballot, Observed, Value } from "../evidence.ts";
import { counted, largestOf, lineOf, settle, vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import type { Block, Motion } from "../walk.ts";
import { lettersOf } from "./modality.ts";

/** An arc with its places in the plane, as the program counts them. */
interface Arc extends Block {
  readonly motion: Motion;
  readonly start: readonly [number, number];
  readonly end: readonly [number, number];
  /** Centre by each way to say it; undefined where it has no centre words. */
  readonly centreWords: readonly [number, number] | undefined;
  readonly radius: number | undefined;
  /** Centre and sweep (degrees, above 0), where the form is known. */
  centre: readonly [number, number] | undefined;
  sweep: number | undefined;
}

/** The form of arcs, the largest sweep, full circles, helices and planes. */
export function arcs(sample: Sample): Observed[] {
  const all = sample.blocks.flatMap(arcOf);
  if (all.length === 0) return [];
  const form = formOf(all);
  const settled = form.find((one) => one.kind === "settled");
  const value = settled?.value;
  for (const arc of all) locate(arc, value === "absolute-centre", value === "radius");
  return [...form, ...(settled ? [...sweeps(all), ...helices(all)] : []), ...planes(all)];
}

function arcOf(block: Block): Arc[] {
  const { motion, words } = block;
  if (!motion || motion.frame === "machine" || (motion.code !== 20 && motion.code !== 30)) return [];
  const { axes, centre } = lettersOf(motion);
  const [startOne, startTwo] = axes.map((letter) => motion.before[letter]);
  const [endOne, endTwo] = axes.map((letter) => motion.after[letter]);
  if (startOne === undefined || startTwo === undefined || endOne === undefined || endTwo === undefined)
    return [];
  const [one, two] = centre.map((letter) => words.get(letter)?.value);
  const centreWords = one === undefined && two === undefined ? undefined : ([one ?? 0, two ?? 0] as const);
  return [{ ...block, motion, start: [startOne, startTwo], end: [endOne, endTwo], centreWords, radius: words.get("R")?.value, centre: undefined, sweep: undefined }]; // prettier-ignore
}

/** The way to say a centre is the one by which start and end lie on one circle. */
function formOf(all: readonly Arc[]): Observed[] {
  const ballots = all.flatMap((arc): Ballot[] => {
    if (arc.centreWords === undefined)
      return arc.radius === undefined ? [] : [{ value: "radius", line: arc.line }];
    const [one, two] = arc.centreWords;
    const relative = misfit(arc, [arc.start[0] + one, arc.start[1] + two]);
    const absolute = misfit(arc, [one, two]);
    if (Math.abs(relative - absolute) < 1e-9) return [];
    return [{ value: relative < absolute ? "incremental-centre" : "absolute-centre", line: arc.line }];
  });
  return vote("arc.form", ballots, "arcs, by the circle on which both ends lie");
}

function misfit({ start, end }: Arc, centre: readonly [number, number]): number {
  return Math.abs(distance(start, centre) - distance(end, centre));
}

function distance(one: readonly [number, number], other: readonly [number, number]): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1]);
}

function locate(arc: Arc, absolute: boolean, byRadius: boolean): void {
  const { start, end, centreWords, radius, motion } = arc;
  const clockwise = motion.code === 20;
  if (byRadius && radius !== undefined) {
    const chord = distance(start, end);
    const half = (Math.asin(Math.min(1, chord / (2 * Math.abs(radius)))) * 180) / Math.PI;
    arc.sweep = radius < 0 ? 360 - 2 * half : 2 * half;
    arc.centre = centreBeside(start, end, radius, clockwise);
    return;
  }
  if (centreWords === undefined) return;
  const centre = absolute ? centreWords : ([start[0] + centreWords[0], start[1] + centreWords[1]] as const);
  const angle = (place: readonly [number, number]): number =>
    (Math.atan2(place[1] - centre[1], place[0] - centre[0]) * 180) / Math.PI;
  const turned = clockwise ? angle(start) - angle(end) : angle(end) - angle(start);
  arc.centre = centre;
  const same = start[0] === end[0] && start[1] === end[1];
  arc.sweep = same ? 360 : ((turned % 360) + 360) % 360 || 360;
}

/** The centre of an arc by its radius: left of the way from start to end for a short counter-clockwise one. */
function centreBeside(
  start: Arc["start"],
  end: Arc["end"],
  radius: number,
  clockwise: boolean,
): Arc["start"] {
  const chord = distance(start, end);
  if (chord === 0) return start;
  const height = Math.sqrt(Math.max(0, radius * radius - (chord * chord) / 4));
  const side = (clockwise ? -1 : 1) * (radius < 0 ? -1 : 1);
  const [one, two] = [(end[0] - start[0]) / chord, (end[1] - start[1]) / chord];
  return [(start[0] + end[0]) / 2 - side * height * two, (start[1] + end[1]) / 2 + side * height * one];
}

/** Largest sweeps are shown from below; a limit shows where a circle goes on in the next block. */
function sweeps(all: readonly Arc[]): Observed[] {
  const known = all.filter(({ sweep }) => sweep !== undefined);
  if (known.length === 0) return [];
  const largest = known.reduce((most, arc) => (arc.sweep! > most.sweep! ? arc : most));
  const full = known.filter(({ sweep }) => sweep! > 359.99);
  const joined = joints(all);
  const fullCircle =
    full.length > 0
      ? [settle("arc.full-circle", "yes", counted(full, known.length, "arcs are full circles"))] // prettier-ignore
      : joined.length > 0
        ? [settle("arc.full-circle", "no", `${String(joined.length)} circles go on in the next block, e.g. ${lineOf(joined[0].second.line)}; none is full`)] // prettier-ignore
        : [];
  return [...fullCircle, ...limits(known, joined, largest)];
}

interface Joint {
  readonly first: Arc;
  readonly second: Arc;
}

/** Arcs that go on along the same circle in the next block. */
function joints(all: readonly Arc[]): Joint[] {
  return all.slice(1).flatMap((second, index) => {
    const first = all[index];
    const adjoins = first.line.number + 1 === second.line.number && first.motion.code === second.motion.code;
    if (!adjoins || first.radius !== second.radius) return [];
    const isSame =
      first.centre && second.centre
        ? distance(first.centre, second.centre) < 1e-3 * Math.max(1, distance(first.centre, first.start)) // prettier-ignore
        : first.radius !== undefined && first.sweep !== undefined && first.sweep > 179;
    return isSame ? [{ first, second }] : [];
  });
}

function limits(known: readonly Arc[], joined: readonly Joint[], largest: Arc): Observed[] {
  const seen = Math.min(360, Math.ceil(largest.sweep! - 0.01));
  const atLeast = (inherited: Value | undefined): boolean =>
    typeof inherited === "number" && inherited >= seen;
  const crossing = known.find((arc) => arc.centre && crosses(arc));
  const any = crossing
    ? [settle("arc.quadrants", "any", `the arc on ${lineOf(crossing.line)} crosses a quadrant line`)]
    : [];
  const lone = settle("arc.largest-sweep", seen > 180 ? 360 : 180, `${String(seen)} degrees on ${lineOf(largest.line)}; the limit itself is asked`, { holds: atLeast, limit: true }); // prettier-ignore
  if (joined.length === 0) return [...any, lone];
  const atLines = joined.filter(({ first }) => first.centre && onQuadrantLine(first));
  const quarters = joined.filter(({ first }) => first.sweep! <= 90.01);
  if (!crossing && atLines.length === joined.length && quarters.length === joined.length && known.every(({ centre }) => centre)) // prettier-ignore
    return [settle("arc.quadrants", "one", counted(joined.map(({ second }) => second), joined.length, "circles that go on do so at a quadrant line"))]; // prettier-ignore
  // Halves of whole circles show that none is written in one block, and not how far an arc may go.
  const halves = joined.every(
    ({ first, second }) => first.sweep! > 179.9 && distance(first.start, second.end) < 1e-6,
  );
  if (halves) return [...any, lone];
  const cut = Math.round(largestOf(joined.map(({ first }) => first.sweep!)));
  return [...any, settle("arc.largest-sweep", cut, `${String(joined.length)} circles go on in the next block after at most ${String(cut)} degrees, e.g. ${lineOf(joined[0].second.line)}`)]; // prettier-ignore
}

function onQuadrantLine({ centre, end }: Arc): boolean {
  const limit = 2e-3 * Math.max(1, distance(centre!, end));
  return Math.abs(end[0] - centre![0]) < limit || Math.abs(end[1] - centre![1]) < limit;
}

/** Whether an arc goes over a quadrant line of its circle between its ends. */
function crosses({ centre, start, end, motion, sweep }: Arc): boolean {
  if (sweep! > 90.5) return true;
  const quadrant = ([one, two]: readonly [number, number]): number =>
    Math.atan2(two - centre![1], one - centre![0]);
  const [from, to] = motion.code === 20 ? [quadrant(end), quadrant(start)] : [quadrant(start), quadrant(end)];
  const slack = 0.01;
  const span = (((to - from) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  const next = (Math.floor((from + slack) / (Math.PI / 2)) + 1) * (Math.PI / 2);
  return next < from + span - slack;
}

function helices(all: readonly Arc[]): Observed[] {
  const third = { 17: "Z", 18: "Y", 19: "X" } as const;
  const rising = all.filter(({ motion, words }) => {
    const letter = third[motion.plane];
    return words.has(letter) && motion.before[letter] !== motion.after[letter];
  });
  return rising.length === 0
    ? []
    : [settle("arc.helix", "yes", counted(rising, all.length, "arcs move the third axis"))];
}

const planeNames = { 17: "xy", 18: "zx", 19: "yz" } as const;

function planes(all: readonly Arc[]): Observed[] {
  const seen = [...new Set(all.map(({ motion }) => planeNames[motion.plane]))];
  const holds = (inherited: Value | undefined): boolean =>
    Array.isArray(inherited) && seen.every((plane) => inherited.includes(plane));
  return [settle("arc.planes", ["xy", "zx", "yz"].filter((plane) => seen.includes(plane as "xy")), `arcs in ${seen.join(", ")}`, { holds })]; // prettier-ignore
}
