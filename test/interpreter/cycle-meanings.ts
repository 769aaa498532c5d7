import { atomsPerInch, atomsPerUnit } from "#base";
import type { CycleDefinition } from "#base";
import type { MachineState } from "./machine-state.ts";
import { goTo, printedPlace, programPlace } from "./machine-state.ts";
import type { Meaning } from "./meaning.ts";
import { meaning } from "./meaning.ts";

/** What a hole needs to know besides its definition. */
export interface HoleContext {
  readonly machine: MachineState;
  /** Feed rate, program units a minute. */
  readonly feed: number;
  /** Z before the first hole of the series, atoms in program coordinates: the "old Z" of 3.5.16.1. */
  readonly oldZ: number;
  /** Dwell of the last cycle that had one, seconds. */
  readonly lastDwell: number;
  /** The function that starts the spindle as it turned before. */
  readonly start: string;
}

/** What a fixed cycle does at one place, by NISTIR 6556 3.5.16 and `known-differences.ts`; apart from core on purpose. */
export function holeMeanings(
  definition: CycleDefinition,
  x: number,
  y: number,
  context: HoleContext,
): Meaning[] {
  const { machine, oldZ } = context;
  const { retract, between } = definition;
  const made: Meaning[] = [];
  // 3.5.16.1: up to R if the tool is below; across at the level where it is; down to R.
  if (programPlace(machine)[2] < retract) made.push(traverse(machine, retract));
  goTo(machine, 0, x);
  goTo(machine, 1, y);
  const across = meaning("STRAIGHT_TRAVERSE", printedPlace(machine));
  const inside = [across, traverse(machine, retract)];
  const clear = between === "initial" && oldZ > retract ? oldZ : retract;
  if (clear !== definition.level)
    throw new Error(`The cycle says that it ends at ${definition.level}; by 3.5.16 it ends at ${clear}.`);
  return [...made, ...inside, ...bottom(definition, clear, context)];
}

function traverse(machine: MachineState, z: number): Meaning {
  goTo(machine, 2, z);
  return meaning("STRAIGHT_TRAVERSE", printedPlace(machine));
}

function feedTo(z: number, { machine, feed }: HoleContext): Meaning {
  goTo(machine, 2, z);
  return meaning("STRAIGHT_FEED", [...printedPlace(machine), feed]);
}

/** From R down and out again. */
function bottom(definition: CycleDefinition, clear: number, context: HoleContext): Meaning[] {
  const { machine } = context;
  const { depth, retract, dwell } = definition;
  const rest = meaning("DWELL", [dwell / 1e6]);
  switch (definition.cycle) {
    case "drill": // 3.5.16.2
      return [feedTo(depth, context), traverse(machine, clear)];
    case "dwell": // 3.5.16.3
      return [feedTo(depth, context), rest, traverse(machine, clear)];
    case "peck":
      return pecks(definition, clear, context);
    case "tap":
      return tap(depth, clear, context);
    case "ream": // 3.5.16.6 and known difference "initial level last"
      return [feedTo(depth, context), feedTo(retract, context), traverse(machine, clear)];
    case "bore-stop": // 3.5.16.7
      return [feedTo(depth, context), rest, stop, traverse(machine, clear), meaning(context.start)];
    case "bore-manual": // 3.5.16.9: the operator takes the tool out, to the level where the next motion expects it
      return [
        feedTo(depth, context),
        rest,
        stop,
        meaning("PROGRAM_STOP"),
        ...lifted(machine, clear, context),
      ];
    case "bore-dwell": // 3.5.16.10
      return [feedTo(depth, context), rest, feedTo(clear, context)];
    default:
      throw new Error(`The language has no cycle ${definition.cycle}.`);
  }
}

const stop = meaning("STOP_SPINDLE_TURNING");

function lifted(machine: MachineState, clear: number, { start }: HoleContext): Meaning[] {
  traverse(machine, clear);
  return [meaning(start)];
}

/**
 * 3.5.16.4: down by Q, out, back to 0.010 inch above the bottom so far, and so on; and known difference "initial level last".
 *
 * Counted in doubles of program units, as the interpreter counts: where the last peck ends at the bottom, the sum of all decides
 * whether it takes another one of no length.
 */
function pecks({ depth, retract, peck }: CycleDefinition, clear: number, context: HoleContext): Meaning[] {
  const { machine } = context;
  const [unit, backOff] = [atomsPerUnit[machine.units], 0.01 * atomsPerInch];
  const [from, step, bottomZ] = [retract / unit, peck / unit, depth / unit];
  const made: Meaning[] = [];
  for (let z = from - step; z > bottomZ; z -= step) {
    const atoms = Math.round(z * unit);
    made.push(feedTo(atoms, context), traverse(machine, retract), traverse(machine, atoms + backOff));
  }
  return [...made, feedTo(depth, context), traverse(machine, clear)];
}

/** 3.5.16.5: in, stop, the other way round, out at feed, stop, cw; and known difference "tap". */
function tap(depth: number, clear: number, context: HoleContext): Meaning[] {
  return [
    meaning("DISABLE_FEED_OVERRIDE"),
    meaning("DISABLE_SPEED_OVERRIDE"),
    feedTo(depth, context),
    meaning("STOP_SPINDLE_TURNING"),
    meaning("START_SPINDLE_COUNTERCLOCKWISE"),
    meaning("DWELL", [context.lastDwell]),
    feedTo(clear, context),
    meaning("STOP_SPINDLE_TURNING"),
    meaning("START_SPINDLE_CLOCKWISE"),
    meaning("ENABLE_FEED_OVERRIDE"),
    meaning("ENABLE_SPEED_OVERRIDE"),
  ];
}
