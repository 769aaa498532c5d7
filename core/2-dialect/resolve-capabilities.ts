import type { ArcCapabilities, Capabilities, CycleCapabilities } from "#base";
import { inverseTimeUnit, microsecondsPerSecond, milliPerRpm } from "#base";
import { declaredWords } from "./code-keys.ts";
import { arcForm, arcPlanes, largestSweep } from "./resolve-format.ts";
import { increment, rapidFeed, unitGrid } from "./rapid-feed.ts";
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
    distance: word<"absolute" | "incremental">(tree, "distance.programs-in"),
    lengthGrid: unitGrid(tree, "length"),
    centreGrid: unitGrid(tree, "arc-centre"),
    angleGrid: grid(tree, "angle", 1_000_000),
    feedPerMinuteGrid: unitGrid(tree, "feed-per-minute"),
    feedPerRevolutionGrid: unitGrid(tree, "feed-per-revolution"),
    inverseTimeGrid: grid(tree, "inverse-time", inverseTimeOf(tree)),
    speedGrid: grid(tree, "speed", milliPerRpm),
    dwellGrid: timeGrid(tree, "dwell", "dwell.unit"),
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
    preselect: yes(tree, "tools.preselect"),
  };
}

function grid(tree: TreeNode, key: NumberKey, unit: number): number | undefined {
  return increment(decimalsOf(tree, key), unit);
}

/** Base units in 1 of the inverse time word. */
export function inverseTimeOf(tree: TreeNode): number {
  return word(tree, "feed.inverse-time-unit") === "per-second" ? 60 * inverseTimeUnit : inverseTimeUnit;
}

/** Grid of a time in microseconds, by its decimals and the key of its unit. */
export function timeGrid(tree: TreeNode, key: NumberKey, unitPath: string): number | undefined {
  const unit = word<"s" | "ms">(tree, unitPath);
  if (unit === undefined) return undefined;
  return grid(tree, key, unit === "s" ? microsecondsPerSecond : microsecondsPerSecond / 1000);
}

function resolveArcs(tree: TreeNode): ArcCapabilities {
  const turnsWord = wordOrNone(tree, "arc.turns-word");
  return {
    form: arcForm(tree),
    largestSweep: largestSweep(tree),
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
    dwellGrid: timeGrid(tree, "cycle-dwell", "cycles.words.dwell-unit"),
  };
}

/** With both return words the job chooses; with one of them that level is the only one; with none the fixed one. */
function cycleLevels(tree: TreeNode): CycleCapabilities["levels"] {
  const has = (level: string): boolean => {
    const node = nodeAt(tree, `cycles.return.${level}`);
    return node !== undefined && !isNone(node);
  };
  if (has("initial")) return has("retract") ? "both" : "initial";
  return has("retract") ? "retract" : word<"retract" | "initial">(tree, "cycles.return.without");
}
