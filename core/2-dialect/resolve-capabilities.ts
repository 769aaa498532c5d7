import type { ArcCapabilities, Capabilities, CycleCapabilities } from "#base";
import { inverseTimeUnit, microRevolutions, microsecondsPerSecond } from "#base";
import { declaredWords } from "./code-keys.ts";
import { increment, rapidFeed, unitGrid } from "./rapid-feed.ts";
import { arcForm, arcPlanes, gearRanges, largestSweep, speedUnit } from "./resolve-format.ts";
import type { NumberKey } from "./resolve-numbers.ts";
import { decimalsOf } from "./resolve-numbers.ts";
import type { TreeNode } from "./tree.ts";
import { isNone, nodeAt } from "./tree.ts";
import { length, number, word, wordOrNone, yes } from "./values.ts";

/** What the dialect can say; nothing is filled in that no file states. */
export function resolveCapabilities(tree: TreeNode): Capabilities {
  return {
    words: declaredWords(tree),
    programsIn: word<"job" | "mm" | "inch">(tree, "units.programs-in"),
    ...programNumbers(tree),
    ...sections(tree),
    distance: word<"absolute" | "incremental">(tree, "distance.programs-in"),
    lengthGrid: unitGrid(tree, "length"),
    centreGrid: unitGrid(tree, "arc-centre"),
    angleGrid: grid(tree, "angle", 1_000_000),
    feedPerMinuteGrid: unitGrid(tree, "feed-per-minute"),
    feedPerRevolutionGrid: unitGrid(tree, "feed-per-revolution"),
    inverseTimeGrid: grid(tree, "inverse-time", inverseTimeOf(tree)),
    speedGrid: speedGrid(tree),
    gears: gearRanges(tree).map(({ from, to }) => ({ from, to })),
    dwellGrid: timeGrid(tree, "dwell", "dwell.unit"),
    ...byTurns(tree, "dwell.unit"),
    rapids: word<"straight" | "dog-leg">(tree, "motion.rapids"),
    axesOfRapid:
      word(tree, "motion.rapid-axes") === "one-at-a-time" ? 1 : number(tree, "motion.axes-at-once"),
    rapidFeed: rapidFeed(tree),
    unitsStated: word<"first-block" | "with-modes">(tree, "units.stated"),
    axesAtOnce: number(tree, "motion.axes-at-once"),
    arcs: resolveArcs(tree),
    cycles: resolveCycleCapabilities(tree),
    spindleOrder: word<"speed-first" | "start-first">(tree, "spindle.order"),
    spindleBlocks: word<"together" | "apart">(tree, "spindle.blocks"),
    stopComment: word<"own-block" | "with-stop">(tree, "stops.comment"),
    toolDigits: toolDigits(tree),
    toolsNamed: yes(tree, "tools.in-operator-swap") === true || word(tree, "machine.swap") !== "operator",
    emptyTool: number(tree, "tools.empty") ?? 0,
    freeOffsets: word(tree, "length-offset.number") !== "tool",
    cancelsBeforeChange: yes(tree, "cancel.before-change"),
    preselect: yes(tree, "tools.preselect"),
  };
}

/** T0105: with two digits or more the tool word states the offset, too. With one (T1) the controller takes the tool's own number. */
function toolDigits(tree: TreeNode): number {
  const digits = number(tree, "numbers.code-width.T") ?? 0;
  return word(tree, "machine.length-offset.form") === "in-tool-word" && digits > 1 ? digits : 0;
}

function programNumbers(tree: TreeNode): Pick<Capabilities, "programNumbers"> {
  const from = number(tree, "file.program-number.from");
  const to = number(tree, "file.program-number.to");
  return from === undefined || to === undefined ? {} : { programNumbers: { from, to } };
}

function sections(tree: TreeNode): Pick<Capabilities, "sectionsBeginAt" | "sectionModes"> {
  const beginAt = word<"operation" | "tool">(tree, "blocks.sections.begin-at");
  const modes = word<"restated" | "kept">(tree, "blocks.sections.modes");
  return {
    ...(beginAt === undefined ? {} : { sectionsBeginAt: beginAt }),
    ...(modes === undefined ? {} : { sectionModes: modes }),
  };
}

function grid(tree: TreeNode, key: NumberKey, unit: number): number | undefined {
  return increment(decimalsOf(tree, key), unit);
}

/** Base units in 1 of the inverse time word. */
export function inverseTimeOf(tree: TreeNode): number {
  return word(tree, "feed.inverse-time-unit") === "per-second" ? 60 * inverseTimeUnit : inverseTimeUnit;
}

function speedGrid(tree: TreeNode): number | undefined {
  const unit = speedUnit(tree);
  return unit === undefined ? undefined : grid(tree, "speed", unit);
}

/** Whether a dwell is counted in revolutions of the spindle. */
function byTurns(tree: TreeNode, unitPath: string): { readonly dwellByTurns?: true } {
  return word(tree, unitPath) === "rev" ? { dwellByTurns: true } : {};
}

/** Grid of a time in microseconds, or of a dwell in millionths of a revolution, by its decimals and the key of its unit. */
export function timeGrid(tree: TreeNode, key: NumberKey, unitPath: string): number | undefined {
  const unit = timeUnit(tree, unitPath);
  return unit === undefined ? undefined : grid(tree, key, unit);
}

/** Base units in 1 of a time or a dwell: microseconds, or millionths of a revolution. */
export function timeUnit(tree: TreeNode, unitPath: string): number | undefined {
  const unit = word<"s" | "ms" | "rev">(tree, unitPath);
  if (unit === undefined) return undefined;
  if (unit === "rev") return microRevolutions;
  return unit === "s" ? microsecondsPerSecond : microsecondsPerSecond / 1000;
}

function resolveArcs(tree: TreeNode): ArcCapabilities {
  const turnsWord = wordOrNone(tree, "arc.turns-word");
  return {
    form: arcForm(tree),
    largestSweep: largestSweep(tree),
    quadrants: word<"any" | "one">(tree, "arc.quadrants"),
    fullCircle: yes(tree, "arc.full-circle"),
    planes: arcPlanes(tree),
    helix: yes(tree, "arc.helix"),
    turns: turnsWord === undefined ? undefined : turnsWord !== "none",
    feedAlong: word<"path" | "circle">(tree, "arc.feed-along"),
    smallestRadius: length(tree, "arc.smallest-radius") ?? 0,
    largestRadius: length(tree, "arc.largest-radius") ?? Infinity,
    chordTolerance: length(tree, "arc.chord-tolerance"),
  };
}

function resolveCycleCapabilities(tree: TreeNode): CycleCapabilities {
  const peck = length(tree, "cycles.back-off.peck");
  const chipBreak = length(tree, "cycles.back-off.chip-break");
  return {
    backOff: {
      ...(peck === undefined ? {} : { peck }),
      ...(chipBreak === undefined ? {} : { "chip-break": chipBreak }),
    },
    levels: cycleLevels(tree),
    peckGrid: unitGrid(tree, "peck"),
    saysBackOff: word(tree, "cycles.words.back-off") !== undefined,
    alongZ: word(tree, "cycles.axis") === "z",
    tapLead: word(tree, "cycles.tap-feed") === "lead",
    dwellGrid: timeGrid(tree, "cycle-dwell", "cycles.words.dwell-unit"),
    ...byTurns(tree, "cycles.words.dwell-unit"),
  };
}

/** With return words the job chooses (either needs the other, see requirements.ts); without them there is the fixed level. */
function cycleLevels(tree: TreeNode): CycleCapabilities["levels"] {
  const initial = nodeAt(tree, "cycles.return.initial");
  if (initial !== undefined && !isNone(initial)) return "both";
  return word<"retract" | "initial">(tree, "cycles.return.without");
}
