import type { CycleDefinition, CycleKind } from "#base";
import { axisBit, rowKind } from "#base";
import { freeLetters, placeOf } from "./block.ts";
import type { CycleNumbers } from "./cycle-numbers.ts";
import { cycleNumbers, needsDwell, needsPeck } from "./cycle-numbers.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { axesOfLetters, axisLetters, letterBit, letterNumber, lettersOfAxes } from "./letters.ts";
import { motion } from "./meanings.ts";
import { firstOf, lettersText, needModes } from "./need-mode.ts";
import { moveAxes } from "./read-axes.ts";
import { feedOfRow } from "./read-feed.ts";
import { readWhole } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { advance, setResidue } from "./residue.ts";
import { pushRow, pushStep } from "./rows.ts";
import { loseMachine, losePlace, modeBit } from "./state.ts";

/**
 * A hole of a fixed cycle (NISTIR 6556 3.5.16): a definition where it is another than before, a rapid up to the retract level
 * where the tool is below, and the hole.
 *
 * @param code the cycle that the block names; undefined where the one in force goes on
 */
export function readCycle(reader: Reader, code: CycleKind | undefined): void {
  const { block, state } = reader;
  const words = freeLetters(block) & axisLetters;
  const kind = code ?? state.cycle.kind;
  if (kind === undefined) return;
  if (code === undefined && words === 0 && (block.unknown & axisLetters) === 0) return;
  const plane = reader.format.cycles?.alongZ === true ? 0 : modeBit.plane;
  needModes(
    reader,
    modeBit.units | modeBit.distance | plane | modeBit.cycleReturn,
    firstOf(reader, block.mask),
  );
  beginSeries(reader, kind, code !== undefined);
  checkMotionWord(reader, code);
  const numbers = cycleNumbers(reader, kind);
  const fault = faultOf(reader, words);
  if (fault !== undefined) reader.report(findings.badCycle(block.start, ...fault));
  if (numbers !== undefined && fault === undefined && isDefinition(reader, code, axesOfLetters(words) & 3)) {
    readDefinition(reader, axesOfLetters(words) & 3);
    return;
  }
  if (numbers === undefined || fault !== undefined || !knowsHole(reader, axesOfLetters(words) & 3)) {
    losePlace(state, axesOfLetters(words));
    block.used |= block.mask;
    return;
  }
  drill(reader, numbers, axesOfLetters(words));
}

/** Numbers are kept while one cycle repeats; the initial level is kept while cycles follow one another. */
function beginSeries(reader: Reader, kind: CycleKind, named: boolean): void {
  const { state, format } = reader;
  const { cycle } = state;
  const anew = cycle.kind === undefined || (named && format.cycles?.initialLevel === "current");
  if (anew) cycle.initial = state.workKnown & axisBit.z ? state.work[2] : undefined;
  if (cycle.kind === kind) return;
  checkSynchronised(reader, kind);
  cycle.kind = kind;
  state.cancelledAnew.delete("cycle");
  cycle.retract = cycle.depth = cycle.peck = cycle.dwell = cycle.backOff = undefined;
}

/** Where a code synchronises taps, each series of them stands behind one, and no other cycle does. */
function checkSynchronised(reader: Reader, kind: CycleKind): void {
  const { state, format, block } = reader;
  const taps = kind === "tap" || kind === "tap-left";
  if (!format.codes.tapSynchronised || taps === state.synchronised) return;
  const message = taps
    ? "The tap is not synchronised: no code locks spindle and feed before it."
    : "The code that locks spindle and feed stands before a cycle that does not tap.";
  const fix = taps ? "State the code in a block before." : "Take the code out.";
  reader.report(findings.badCycle(block.start, message, fix, "cycles.tap-synchronised"));
}

function checkMotionWord(reader: Reader, code: CycleKind | undefined): void {
  const { state, block, format } = reader;
  const always = format.modal.motion === "each-block";
  if (code === undefined && (always || state.motionForgotten))
    reader.report(formFindings.motionWord(block.start, always));
  state.motionForgotten = false;
}

/**
 * Whether the block only defines the cycle, and its holes follow: the first that names the cycle, and each without a place. A
 * later one with a place is a hole that restates its motion word.
 */
function isDefinition({ format, state }: Reader, code: CycleKind | undefined, named: number): boolean {
  if (format.cycles?.definition !== "apart" || code === undefined) return false;
  return named === 0 || state.cycle.definition === undefined;
}

/** A block that defines a cycle names no hole, and says so by the repeat word 0 where the dialect has one. */
function readDefinition(reader: Reader, named: number): void {
  const { block, format } = reader;
  const word = format.cycles?.repeatWord ?? null;
  const count =
    word === null || !(freeLetters(block) & letterBit(word)) ? undefined : takeCount(reader, word);
  const fix = "Name the holes in blocks of their own behind it.";
  const tell = (message: string): void =>
    reader.report(findings.badCycle(block.start, message, fix, "cycles.definition"));
  if (named !== 0) tell("The block defines a cycle, and names a hole.");
  if (word !== null && count !== 0) tell(`The block defines a cycle, and does not say ${word}0.`);
}

function takeCount(reader: Reader, word: string): number | undefined {
  reader.block.used |= letterBit(word);
  return readWhole(reader, letterNumber(word));
}

/** Message, way out and key of what keeps a block from being a hole. */
type Fault = [message: string, fix: string, key?: string];

function faultOf(reader: Reader, words: number): Fault | undefined {
  const { state } = reader;
  if (words === 0) return ["The cycle has no axis words.", "Add X and Y of the hole."];
  if (state.plane.name !== "xy" && reader.format.cycles?.alongZ !== true)
    return ["Cycles are read in the plane xy alone.", "State the plane xy.", "plane.xy"];
  if (axesOfLetters(words) > 7)
    return ["A cycle takes no rotary axis along.", "Move it in a block of its own."];
  if (state.feedMode === "inverse-time")
    return ["There are no cycles under inverse time.", "State another feed mode.", "feed"];
  if (state.compensated)
    return ["There are no cycles under cutter compensation.", "Cancel it first.", "compensation.off"];
  return undefined;
}

/** Where the hole is must be known: X and Y that the block leaves out, and the level it starts from. */
function knowsHole(reader: Reader, named: number): boolean {
  const { state, block } = reader;
  const missing = 3 & ~named & ~state.workKnown;
  const fromInitial = state.cycle.between === "initial" && state.cycle.initial === undefined;
  if (missing === 0 && !fromInitial) return true;
  const what =
    missing === 0 ? "the level before the first hole" : `the place of ${lettersText(lettersOfAxes(missing))}`;
  reader.report(findings.unknownPlace(block.start, "The hole", what));
  return false;
}

/** Hands the definition, the way up to the retract level and the hole on. */
function drill(reader: Reader, numbers: CycleNumbers, named: number): void {
  const { state, block } = reader;
  const { cycle } = state;
  const { depth, retract, peck, dwell, backOff } = numbers;
  const taps = numbers.cycle === "tap" || numbers.cycle === "tap-left";
  const { between } = cycle;
  const level = between === "initial" ? Math.max(cycle.initial ?? retract, retract) : retract;
  const definition: CycleDefinition = {
    kind: "cycle-definition",
    cycle: numbers.cycle,
    depth,
    retract,
    level,
    between,
    levelStated: cycle.levelSaid,
    peck,
    dwell,
    ...(needsDwell(numbers.cycle) && reader.format.cycles?.dwellUnit === "rev"
      ? { dwellIs: "revolutions" }
      : {}),
    ...(backOff === undefined ? {} : { backOff }),
    ...(taps && reader.format.cycles?.tapLead === true ? { feedIs: "lead" } : {}),
  };
  if (state.workKnown & axisBit.z && state.work[2] < retract) rise(reader, retract);
  const changed = !isSame(cycle.definition, definition);
  if (changed) pushStep(reader, definition);
  else checkRepeat(reader);
  cycle.definition = definition;
  cycle.levelSaid = false;
  checkPositions(reader, named & 3);
  const count = readRepeats(reader);
  block.used |= lettersOfAxes(named & 3);
  const x = state.work[0] + state.residue[0];
  const y = state.work[1] + state.residue[1];
  if ((named & 3) !== 0) moveAxes(reader, 0, named & 3);
  state.work[2] = level;
  setResidue(state, 2, 0);
  state.workKnown |= axisBit.z;
  loseMachine(state, 7);
  // Later holes take the feed of the first, but where every block that cuts states its own.
  const statesFeed = changed || reader.format.modal.feed === "each-block";
  pushRow(reader, rowKind.hole, 0, named & 3, statesFeed ? feedOfRow(reader) : state.feed, 0, 0, 0);
  const steps = state.incremental && count > 1;
  Object.assign(state.repeat, {
    count: count - 1,
    dx: steps ? state.work[0] + state.residue[0] - x : 0,
    dy: steps ? state.work[1] + state.residue[1] - y : 0,
    source: block.start,
  });
}

/** The tool is below the retract level: the cycle rises to it first. */
function rise(reader: Reader, retract: number): void {
  const { state } = reader;
  state.work[2] = retract;
  setResidue(state, 2, 0);
  loseMachine(state, axisBit.z);
  pushRow(reader, rowKind.rapid, 0, axisBit.z, 0, 0, 0, 0);
}

function isSame(a: CycleDefinition | undefined, b: CycleDefinition): boolean {
  return (
    a !== undefined &&
    a.cycle === b.cycle &&
    a.depth === b.depth &&
    a.retract === b.retract &&
    a.level === b.level &&
    a.between === b.between &&
    a.peck === b.peck &&
    a.backOff === b.backOff &&
    a.dwell === b.dwell
  );
}

/** Under a dialect whose holes state both X and Y, neither may be left out. */
function checkPositions(reader: Reader, named: number): void {
  const { format, block } = reader;
  const missing = 3 & ~named;
  if (format.cycles?.positions !== "both" || missing === 0) return;
  reader.report(
    formFindings.cycleWords(block.start, lettersText(lettersOfAxes(missing)), "cycles.positions"),
  );
}

/** Later holes restate the words of their cycle in one dialect, and leave them out in another. */
function checkRepeat(reader: Reader): void {
  const { format, block, state } = reader;
  const { cycles } = format;
  if (cycles === undefined || state.cycle.kind === undefined) return;
  const kind = state.cycle.kind;
  const wanted =
    letterBit("Z") |
    letterBit(cycles.retractWord) |
    (needsPeck(kind) ? letterBit(cycles.peckWord) : 0) |
    (needsDwell(kind) ? letterBit(cycles.dwellWord) : 0);
  if (cycles.repeat === "positions") {
    // Incremental levels count from where the tool is, so that they may have to be said again.
    const again = state.incremental ? 0 : wanted & block.mask;
    if (again !== 0) reader.report(formFindings.cycleWordsAgain(block.start, lettersText(again)));
    return;
  }
  const missing = wanted & ~block.mask;
  checkReturnWord(reader);
  if (missing !== 0) reader.report(formFindings.cycleWords(block.start, lettersText(missing)));
}

/** Where all words of a cycle are restated, the one for the level between holes is among them. */
function checkReturnWord(reader: Reader): void {
  const { format, block, slots } = reader;
  const { initial, retract } = format.codes.cycleReturn;
  const hasWords = Boolean(initial) && Boolean(retract);
  if (hasWords && slots["cycle-return"] === undefined && format.gWords === "any")
    reader.report(formFindings.cycleWords(block.start, "the return level"));
}

/** More repeats of one block than this are no program for a machine: a slip of the pen. */
const mostRepeats = 10_000;

/** The repeat word: the hole again and again, in incremental mode each a step further. */
function readRepeats(reader: Reader): number {
  const { block, format } = reader;
  const word = format.cycles?.repeatWord ?? null;
  if (word === null || (freeLetters(block) & letterBit(word)) === 0) return 1;
  block.used |= letterBit(word);
  const letter = letterNumber(word);
  const repeats = readWhole(reader, letter, 1) ?? 1;
  if (repeats <= mostRepeats) return repeats;
  reader.report(findings.badNumber(placeOf(block, letter), word, `is more than ${mostRepeats} repeats`));
  return 1;
}

/** One of the holes that a block repeats; the caller sees to it that there is room. */
export function pushRepeat(reader: Reader): void {
  const { state } = reader;
  const { repeat } = state;
  repeat.count--;
  state.work[0] += advance(reader, state.work, 0, repeat.dx);
  state.work[1] += advance(reader, state.work, 1, repeat.dy);
  const stated = (repeat.dx === 0 ? 0 : 1) | (repeat.dy === 0 ? 0 : 2);
  reader.block.start = repeat.source;
  pushRow(reader, rowKind.hole, 0, stated === 0 ? 1 : stated, state.feed, 0, 0, 0);
}

/** No cycle is on any more; a feed that was the lead of a thread is none for what follows. */
export function leaveSeries({ state, format }: Reader): void {
  const { kind } = state.cycle;
  if (format.cycles?.tapLead === true && (kind === "tap" || kind === "tap-left")) {
    state.feed = 0;
    state.feedDue = true;
  }
  state.synchronised = false;
  state.cycle.kind = state.cycle.definition = undefined;
}

/** A motion code while a cycle is on: it ends the series, unless the dialect ends it by its cancel code alone. */
export function endSeries(reader: Reader, place: number): void {
  const { state, format } = reader;
  if (format.cycles?.endedBy === "cancel-code")
    reader.report(
      findings.badCycle(
        place,
        "A fixed cycle is still on: this dialect ends it by its cancel code alone.",
        "Put the cancel code into a block before.",
        "cycles.ended-by",
      ),
    );
  // The end is not said, so there is no step for it.
  leaveSeries(reader);
  state.motion = motion.none;
}
