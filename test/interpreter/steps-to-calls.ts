import type { Batch, CycleDefinition, FeedMode, Plane, SpindleDirection, Step, UnitSystem } from "#base";
import { frame, isArc, milliPerRpm, rowKind } from "#base";
import { holeMeanings } from "./cycle-meanings.ts";
import type { MachineState } from "./machine-state.ts";
import {
  createMachine,
  go,
  goHome,
  inUnits,
  lengthInches,
  printedPlace,
  programPlace,
  takeUpLastMotion,
  workOffsetInches,
} from "./machine-state.ts";
import type { Meaning } from "./meaning.ts";
import { meaning } from "./meaning.ts";

/** What is in force while steps are gone through. */
interface Walk {
  readonly machine: MachineState;
  feedMode: FeedMode;
  path: string;
  plane: Plane;
  cycle: CycleDefinition | undefined;
  /** Whether a hole has been made since the last other motion or cycle-off: a series keeps its old Z (3.5.16.1). */
  inSeries: boolean;
  oldZ: number;
  lastDwell: number;
  /** Sense of the spindle as it was last started: some cycles stop it, and start it again. */
  sense: SpindleDirection;
  readonly coolant: Set<"mist" | "flood">;
  /** Whether the exact path mode of a cycle is on, see `openCycle`. */
  cycleOpen: boolean;
  readonly from: "job" | "program";
}

/**
 * What our steps mean, as canonical machining functions of NISTIR 6556 4.3: our statement, made from steps and never from a
 * text. Steps for which the language has no function are faults here.
 *
 * @param batches the sequence of a job, or what a program was read as
 * @param units units of the program, or those in which it begins
 * @param from "job": the level between holes is worked out here and checked against the definition of the cycle; "program": it is
 * taken from the definition, since a motion word alone ends a series and is no step
 */
export function stepMeanings(
  batches: Iterable<Batch>,
  units: UnitSystem,
  from: "job" | "program" = "job",
): Meaning[] {
  const walk: Walk = {
    machine: createMachine(units),
    feedMode: "per-minute",
    path: "CANON_CONTINUOUS",
    plane: "xy",
    cycle: undefined,
    inSeries: false,
    oldZ: 0,
    lastDwell: 0,
    sense: "cw",
    coolant: new Set(),
    cycleOpen: false,
    from,
  };
  const made: Meaning[] = [];
  for (const batch of batches) {
    for (let row = 0; row < batch.count; row++) {
      const kind = batch.kind[row];
      if (kind === rowKind.aside) made.push(...ofStep(batch.asides[batch.aside[row]], walk));
      else if (kind === rowKind.hole) made.push(...ofHole(batch, row, walk));
      else if (isOfHole(batch, row, walk)) made.push(...openCycle(walk), ...ofMotion(batch, row, walk));
      else made.push(...ofMotion(batch, row, walk));
    }
  }
  return made;
}

function ofMotion(batch: Batch, row: number, walk: Walk): Meaning[] {
  const { machine } = walk;
  walk.inSeries = false;
  const before = programPlace(machine);
  go(machine, batch, row);
  if (batch.kind[row] === rowKind.rapid) return [meaning("STRAIGHT_TRAVERSE", printedPlace(machine))]; // Table 9
  if (batch.frame[row] === frame.machine && walk.from === "job")
    throw new Error("No job asks for a feed motion in machine coordinates.");
  const feed = batch.feed[row];
  if (isArc(batch.kind[row])) return [ofArc(batch, row, walk, before)];
  const after = programPlace(machine);
  const [dx, dy, dz, da, db, dc] = after.map((value, axis) => value - before[axis]);
  const linear = inUnits(machine, Math.hypot(dx, dy, dz));
  const length = linear > 0 ? linear : Math.hypot(da, db, dc) / 1e6;
  return [meaning("STRAIGHT_FEED", [...printedPlace(machine), rate(feed, length, walk)])]; // Table 9
}

/** Planes by row kind: first, second and normal axis (Table 9: XZ has Z first). */
const planes: Readonly<Record<number, readonly [number, number, number]>> = {
  [rowKind.arcXy]: [0, 1, 2],
  [rowKind.arcZx]: [2, 0, 1],
  [rowKind.arcYz]: [1, 2, 0],
  [rowKind.radiusXy]: [0, 1, 2],
  [rowKind.radiusZx]: [2, 0, 1],
  [rowKind.radiusYz]: [1, 2, 0],
};

/**
 * The centre of an arc by its radius (3.5.3.1): left of its chord for the shorter way round counter-clockwise, and on the
 * other side for either the other sense or a radius below 0.
 */
function centreOf(radius: number, turns: number, from: number[], to: number[]): [number, number] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const chord = Math.hypot(dx, dy);
  const away =
    Math.sqrt(Math.max(0, radius * radius - (chord / 2) ** 2)) * Math.sign(turns) * Math.sign(radius);
  return [(from[0] + to[0]) / 2 - (dy / chord) * away, (from[1] + to[1]) / 2 + (dx / chord) * away];
}

/** 3.5.3 and Table 9: end and centre on the plane's axes, turns with their sense, end along the normal, rotary axes. */
function ofArc(batch: Batch, row: number, walk: Walk, before: readonly number[]): Meaning {
  const { machine } = walk;
  const [first, second, normal] = planes[batch.kind[row]];
  const after = programPlace(machine);
  const turns = batch.turns[row];
  const byRadius = batch.kind[row] >= rowKind.radiusXy;
  const ends = [before, after].map((place) => [place[first], place[second]]);
  const [c1, c2] = byRadius
    ? centreOf(batch.c1[row], turns, ends[0], ends[1])
    : [batch.c1[row], batch.c2[row]];
  const from = Math.atan2(before[second] - c2, before[first] - c1);
  const to = Math.atan2(after[second] - c2, after[first] - c1);
  const full = 2 * Math.PI;
  const part = ((Math.sign(turns) * (to - from)) % full) + full;
  // An arc that ends where it began is a full circle; each turn begun before the last is one, too.
  const isWhole = before[first] === after[first] && before[second] === after[second];
  const sweep = (isWhole ? full : part % full) + (Math.abs(turns) - 1) * full;
  const radius = Math.hypot(before[first] - c1, before[second] - c2);
  const length = inUnits(machine, Math.hypot(sweep * radius, after[normal] - before[normal]));
  const printed = printedPlace(machine);
  const centre = [inUnits(machine, c1), inUnits(machine, c2)];
  const said = [printed[first], printed[second], ...centre, turns, printed[normal], ...printed.slice(3)];
  return meaning("ARC_FEED", [...said, rate(batch.feed[row], length, walk)]);
}

/**
 * Feed rate in program units a minute or a revolution; inverse time times the length of the motion (Table 5: G93), but not
 * below 0.1: known difference "slowest inverse time".
 */
function rate(feed: number, length: number, { feedMode, machine }: Walk): number {
  return feedMode === "inverse-time" ? Math.max(0.1, (feed / 1e6) * length) : inUnits(machine, feed);
}

/** Whether a row is of the block of the hole behind it: the way up to R (3.5.16.1), or the hole before where one block has several. */
function isOfHole(batch: Batch, row: number, { from }: Walk): boolean {
  let next = row + 1;
  while (next < batch.count && batch.kind[next] === rowKind.aside) next++;
  const isHole = next < batch.count && batch.kind[next] === rowKind.hole;
  return from === "program" && isHole && batch.source[next] === batch.source[row];
}

const exactPath = "CANON_EXACT_PATH";

/** Known difference "exact path in cycles": once a block. */
function openCycle(walk: Walk): Meaning[] {
  if (walk.path === exactPath || walk.cycleOpen) return [];
  walk.cycleOpen = true;
  return [meaning("SET_MOTION_CONTROL_MODE", [], exactPath)];
}

function closeCycle(walk: Walk): Meaning[] {
  if (!walk.cycleOpen) return [];
  walk.cycleOpen = false;
  return [meaning("SET_MOTION_CONTROL_MODE", [], walk.path)];
}

function ofHole(batch: Batch, row: number, walk: Walk): Meaning[] {
  const { machine, cycle } = walk;
  if (!cycle) throw new Error("A hole without a cycle.");
  if (cycle.feedIs) throw new Error("A lead in place of a feed is not meant here.");
  if (!walk.inSeries) walk.oldZ = programPlace(machine)[2];
  walk.inSeries = true;
  const place = programPlace(machine);
  const [x, y] = [batch.x, batch.y].map((column, axis) =>
    (batch.stated[row] & (1 << axis)) === 0 ? place[axis] : column[row],
  );
  const { lastDwell, sense } = walk;
  const oldZ = walk.from === "program" ? cycle.level : walk.oldZ;
  const hole = { machine, feed: inUnits(machine, batch.feed[row]), oldZ, lastDwell, start: starts[sense] };
  const made = [...openCycle(walk), ...holeMeanings(cycle, x, y, hole)];
  return isOfHole(batch, row, walk) ? made : [...made, ...closeCycle(walk)];
}

/** Cycles with a dwell (3.5.16). */
const dwelling: ReadonlySet<CycleDefinition["cycle"]> = new Set([
  "dwell",
  "bore-dwell",
  "bore-stop",
  "bore-manual",
]);
const pathModes = { exact: "CANON_EXACT_PATH", stop: "CANON_EXACT_STOP", blend: "CANON_CONTINUOUS" } as const;
const planeNames = { xy: "CANON_PLANE_XY", zx: "CANON_PLANE_XZ", yz: "CANON_PLANE_YZ" } as const;
const starts = { cw: "START_SPINDLE_CLOCKWISE", ccw: "START_SPINDLE_COUNTERCLOCKWISE" } as const;
const media = { mist: "MIST_ON", flood: "FLOOD_ON" } as const;

/** What a rare step means; the numbers are sections and tables of NISTIR 6556. */
function ofStep(step: Step, walk: Walk): Meaning[] {
  switch (step.kind) {
    case "program-start":
      return [];
    case "distance": // the canonical functions know absolute places alone
    case "arc-centre":
      return [];
    case "dwell": // 3.5.4
      return [meaning("DWELL", [step.time / 1e6])];
    case "pause": // 3.6.1
      return [meaning(step.optional ? "OPTIONAL_PROGRAM_STOP" : "PROGRAM_STOP")];
    case "message": // 3.3.4
      return [meaning("MESSAGE", [], step.text)];
    case "spindle-speed": // Table 9: revolutions a minute
      return [meaning("SET_SPINDLE_SPEED", [step.rpm / milliPerRpm])];
    case "spindle-start": // 3.6.2
      walk.sense = step.direction;
      return [meaning(starts[step.direction])];
    case "spindle-stop": // 3.6.2
      return [meaning("STOP_SPINDLE_TURNING")];
    case "coolant":
      return [...ofCoolant(step, walk.coolant)];
    case "select-tool": // Table 9
      walk.machine.selected = step.tool;
      return [meaning("SELECT_TOOL", [step.tool])];
    case "change-tool": // 3.6.3: the spindle stands after it
      takeUpLastMotion(walk.machine);
      return [meaning("STOP_SPINDLE_TURNING"), meaning("CHANGE_TOOL", [walk.machine.selected])];
    case "cycle-definition":
      walk.cycle = step;
      if (dwelling.has(step.cycle)) walk.lastDwell = step.dwell / 1e6;
      return [];
    case "reference-return": // 3.5.8: from the point where it stands, the axes that it names
      return [traverse(walk), traverse(walk, step.axes)];
    case "work-offset":
    case "length-offset":
      return ofOffset(step, walk);
    case "program-end":
      return programEnd(walk);
    default:
      return ofMode(step, walk);
  }
}

function traverse({ machine }: Walk, home = 0): Meaning {
  goHome(machine, home);
  return meaning("STRAIGHT_TRAVERSE", printedPlace(machine));
}

/** Words that stay in force. */
function ofMode(step: Step, walk: Walk): Meaning[] {
  switch (step.kind) {
    case "units": // 4.3.3.3
      walk.machine.units = step.value;
      return [meaning("USE_LENGTH_UNITS", [], step.value === "mm" ? "CANON_UNITS_MM" : "CANON_UNITS_INCHES")];
    case "plane": // Table 9: XZ is our ZX
      walk.plane = step.value;
      return [meaning("SELECT_PLANE", [], planeNames[step.value])];
    case "feed-mode": // Table 5: G93, G94
      walk.feedMode = step.value;
      return [meaning("FEED_MODE", [], step.value)];
    case "path": // Table 5: G61, G61.1, G64
      walk.path = pathModes[step.value];
      return [meaning("SET_MOTION_CONTROL_MODE", [], walk.path)];
    case "overrides": // Table 4: M48 switches both on
      if (step.value === "off") throw new Error("Overrides are not switched off here.");
      return [meaning("ENABLE_FEED_OVERRIDE"), meaning("ENABLE_SPEED_OVERRIDE")];
    case "compensation": // Table 5: G40, G41, G42
      return [meaning("COMPENSATION", [], step.value)];
    case "local-shift": // Table 5: G92.2 makes the offsets 0
      return [meaning("SET_G92_OFFSET", [0, 0, 0, 0, 0, 0])];
    case "cycle": // 3.5.16, Table 5: G80
      walk.inSeries = false;
      walk.cycle = undefined;
      return [meaning("CYCLE_OFF")];
    default:
      throw new Error(`This language has no function for the step ${step.kind}.`);
  }
}

/** 3.6.4: M7 and M8 add to each other, M9 ends both. */
function* ofCoolant(
  { medium, on }: Extract<Step, { kind: "coolant" }>,
  turnedOn: Walk["coolant"],
): Generator<Meaning> {
  if (!on) {
    if (medium !== "all") throw new Error("Coolant goes off all at once.");
    turnedOn.clear();
    yield meaning("MIST_OFF");
    yield meaning("FLOOD_OFF");
  } else if (medium === "mist" || medium === "flood") {
    turnedOn.add(medium);
    yield meaning(media[medium]);
  } else throw new Error(`This language has no function for ${medium}.`);
}

/** 3.5.11, 3.5.13: origins and lengths, in program units; neither moves anything. */
function ofOffset(
  step: Extract<Step, { kind: "work-offset" | "length-offset" }>,
  { machine }: Walk,
): Meaning[] {
  const perInch = machine.units === "mm" ? 25.4 : 1;
  if (step.kind === "length-offset") {
    machine.lengthOffset = step.number;
    const length = lengthInches(step.number) * perInch;
    return [meaning("USE_TOOL_LENGTH_OFFSET", [0, 0, length, 0, 0, 0, 0, 0, 0])];
  }
  const changes = machine.workOffset !== step.number;
  machine.workOffset = step.number;
  const origin = workOffsetInches(step.number).map((value) => value * perInch);
  const said = meaning("SET_G5X_OFFSET", [step.number, ...origin, 0, 0, 0]);
  // G92 adds to the origin (Table 5), so that it is said with another one.
  return changes ? [said, meaning("SET_G92_OFFSET", [0, 0, 0, 0, 0, 0])] : [said];
}

/** 3.6.1: first coordinate system, XY plane, spindle and coolant off, end. The rest of what it resets is so by then, or not printed. */
function programEnd(walk: Walk): Meaning[] {
  const off = [...walk.coolant]
    .sort()
    .reverse()
    .map((medium) => meaning(medium === "mist" ? "MIST_OFF" : "FLOOD_OFF"));
  const [origin] = ofOffset({ kind: "work-offset", number: 1 }, walk);
  const plane = walk.plane === "xy" ? [] : [meaning("SELECT_PLANE", [], planeNames.xy)];
  return [origin, ...plane, meaning("STOP_SPINDLE_TURNING"), ...off, meaning("PROGRAM_END")];
}
