import type { CycleKind } from "#base";
import { freeLetters, placeOf } from "./block.ts";
import * as findings from "./findings-meaning.ts";
import { letterName, letterNumber, letterZ } from "./letters.ts";
import type { Quantity } from "./quantities.ts";
import { readNumber, wordText } from "./read-number.ts";
import type { Reader } from "./reader.ts";

/** Which numbers a cycle needs beside Z and R (NISTIR 6556 3.5.16). */
const needs = {
  drill: {},
  dwell: { dwell: true },
  peck: { peck: true },
  "chip-break": { peck: true },
  tap: {},
  "tap-left": {},
  ream: {},
  "bore-dwell": { dwell: true },
  "bore-stop": { dwell: true },
  "bore-manual": { dwell: true },
} as const satisfies Record<CycleKind, { peck?: true; dwell?: true }>;

export function needsPeck(kind: CycleKind): boolean {
  return "peck" in needs[kind];
}

export function needsDwell(kind: CycleKind): boolean {
  return "dwell" in needs[kind];
}

/** The numbers of a hole, absolute and in base units. */
export interface CycleNumbers {
  readonly cycle: CycleKind;
  readonly depth: number;
  readonly retract: number;
  readonly peck: number;
  readonly dwell: number;
  /** Undefined where no word says it. */
  readonly backOff: number | undefined;
}

/**
 * Reads the words of a cycle and completes them by the sticky ones; undefined, with findings, where the hole cannot be known.
 */
export function cycleNumbers(reader: Reader, kind: CycleKind): CycleNumbers | undefined {
  const { state, quantities, format } = reader;
  const { cycle, length } = state;
  const { cycles } = format;
  if (cycles === undefined) return undefined;
  cycle.depth = take(reader, letterZ, length, cycle.depth);
  cycle.retract = take(reader, letterNumber(cycles.retractWord), length, cycle.retract);
  const retract = needed(
    reader,
    cycle.retract,
    letterNumber(cycles.retractWord),
    "the retract level",
    "cycles.words.retract",
  );
  const depth = needed(reader, cycle.depth, letterZ, "the depth", "cycles");
  let peck: number | undefined = 0;
  let dwell: number | undefined = 0;
  let backOff: number | undefined;
  if (needsPeck(kind)) {
    const letter = letterNumber(cycles.peckWord);
    cycle.peck = take(reader, letter, quantities.peck[state.units], cycle.peck);
    peck = needed(reader, cycle.peck, letter, "the depth of a peck", "cycles.words.peck");
    if (cycles.backOffWord !== null && peck !== undefined) {
      backOff = readBackOff(reader, letterNumber(cycles.backOffWord));
      if (backOff === undefined) return undefined;
    }
  }
  if (needsDwell(kind)) {
    const letter = letterNumber(cycles.dwellWord);
    cycle.dwell = take(reader, letter, quantities.cycleDwell, cycle.dwell);
    dwell = needed(reader, cycle.dwell, letter, "the dwell", "cycles.words.dwell");
  }
  if (retract === undefined || depth === undefined || peck === undefined || dwell === undefined)
    return undefined;
  const levels = absoluteLevels(reader, retract, depth);
  if (levels === undefined || !areSound(reader, kind, levels, peck, dwell)) return undefined;
  return { cycle: kind, ...levels, peck, dwell, backOff };
}

/** The back-off of a peck, where a word says it: it is needed, and not below 0. */
function readBackOff(reader: Reader, letter: number): number | undefined {
  const { state, quantities, block } = reader;
  const { cycle } = state;
  cycle.backOff = take(reader, letter, quantities.peck[state.units], cycle.backOff);
  const backOff = needed(reader, cycle.backOff, letter, "the back-off", "cycles.words.back-off");
  if (backOff === undefined || backOff >= 0) return backOff;
  const place = block.mask & (1 << letter) ? placeOf(block, letter) : block.start;
  reader.report(findings.badCycle(place, `${letterName(letter)} is below 0.`, "Correct the number."));
  return undefined;
}

/** The number of a word; without the word, the one that was said before. One word cannot be of the cycle and of a dwell. */
function take(
  reader: Reader,
  letter: number,
  quantity: Quantity,
  before: number | undefined,
): number | undefined {
  const { block } = reader;
  const bit = 1 << letter;
  if (block.unknown & bit) return undefined;
  if (block.mask & block.reserved & bit) {
    const reason = "belongs to another code of its block, and the cycle wants it, too";
    reader.report(findings.modalConflict(placeOf(block, letter), wordText(reader, letter), reason));
    return undefined;
  }
  if ((freeLetters(block) & bit) === 0) return before;
  block.used |= bit;
  return readNumber(reader, letter, quantity);
}

function needed(
  reader: Reader,
  value: number | undefined,
  letter: number,
  what: string,
  key: string,
): number | undefined {
  const { block } = reader;
  const isSaid = (block.unknown | (block.mask & block.reserved)) & (1 << letter);
  if (value === undefined && isSaid === 0)
    reader.report(
      findings.wordMissing(
        block.start,
        `The cycle does not say ${what}; numbers are kept only while the same cycle repeats.`,
        `Add ${letterName(letter)}.`,
        key,
      ),
    );
  return value;
}

/**
 * Levels as absolute Z. Incremental words, and those of a dialect with relative levels, count R from the initial level and Z
 * from R, or from the initial level, too. NISTIR 6556 3.5.16 counts incremental R from where the tool is, which is the same as
 * long as it stands at the initial level; where it does not, controllers differ.
 */
function absoluteLevels(
  reader: Reader,
  retract: number,
  depth: number,
): { retract: number; depth: number } | undefined {
  const { state, format, block } = reader;
  const counting = format.cycles?.levels;
  const relative = counting === "relative" || counting === "from-initial";
  if (!relative && !state.incremental) return { retract, depth };
  const { initial } = state.cycle;
  if (initial === undefined) {
    reader.report(findings.unknownPlace(block.start, "The retract level of the cycle", "a level"));
    return undefined;
  }
  if (!relative && state.work[2] !== initial) {
    const message =
      "The incremental retract level counts from the initial level or from where the tool is: controllers differ.";
    const fix = "State absolute words, or return to the initial level.";
    reader.report(findings.badCycle(block.start, message, fix, "cycles.levels"));
    return undefined;
  }
  const depthFrom = counting === "from-initial" ? initial : initial + retract;
  return { retract: initial + retract, depth: depthFrom + depth };
}

/** Numbers that no hole can have. */
function areSound(
  reader: Reader,
  kind: CycleKind,
  levels: { retract: number; depth: number },
  peck: number,
  dwell: number,
): boolean {
  const { block } = reader;
  const refuse = (letter: number, message: string): false => {
    const place = block.mask & (1 << letter) ? placeOf(block, letter) : block.start;
    const text = block.mask & (1 << letter) ? wordText(reader, letter) : letterName(letter);
    reader.report(findings.badCycle(place, `${text} ${message}`, "Correct the number."));
    return false;
  };
  const cycles = reader.format.cycles;
  if (levels.retract < levels.depth) return refuse(letterZ, "lies above the retract level.");
  if (needsPeck(kind) && peck <= 0)
    return refuse(letterNumber(cycles?.peckWord ?? "Q"), "is no depth of a peck: it is not above 0.");
  if (dwell < 0) return refuse(letterNumber(cycles?.dwellWord ?? "P"), "is a time below 0.");
  return true;
}
