import type { StepKind } from "#base";
import { isSaid } from "./code-keys.ts";
import type { TreeNode } from "./tree.ts";
import { isNone, nodeAt } from "./tree.ts";

/** Keys any of which gives a word for a kind of step. Kinds that no key says by itself (messages) are not listed. */
const wordsOf = {
  units: ["units.mm", "units.inch"],
  plane: ["plane.xy"],
  distance: ["distance.absolute"],
  "arc-centre": ["arc.centre-words.absolute", "arc.centre-words.incremental"],
  "feed-mode": ["feed.per-minute"],
  path: ["path.exact", "path.stop", "path.blend"],
  "look-ahead": ["path.look-ahead.off"],
  "corner-feed": ["compensation.corner-feed.off"],
  overrides: ["cancel.overrides"],
  cycle: ["cancel.cycles"],
  "local-shift": ["cancel.local-shift"],
  rotation: ["cancel.rotation"],
  scale: ["cancel.scale"],
  compensation: ["compensation.off"],
  "work-offset": ["work-offset.1"],
  "length-offset": ["length-offset.off", "length-offset.on"],
  "change-tool": ["tools.change"],
  "spindle-start": ["spindle.cw", "spindle.ccw"],
  "spindle-stop": ["spindle.stop"],
  "spindle-orient": ["spindle.orient"],
  coolant: [
    "coolant.off",
    "coolant.off.mist",
    "coolant.off.flood",
    "coolant.off.air",
    "coolant.off.through-tool",
  ],
  dwell: ["dwell.code"],
  pause: ["stops.stop"],
  "reference-return": ["reference-return"],
  "program-end": ["stops.end"],
  wait: ["idioms.wait-signal"],
  output: ["idioms.output-on"],
  message: ["idioms.message"],
} as const satisfies Partial<Record<StepKind, readonly string[]>>;

/** Kinds of steps for which the dialect has a word. */
export function statableSteps(tree: TreeNode): StepKind[] {
  return Object.entries(wordsOf)
    .filter(([, paths]) => paths.some((path) => hasWord(tree, path)))
    .map(([kind]) => kind as StepKind);
}

function hasWord(tree: TreeNode, path: string): boolean {
  if (!path.startsWith("idioms.")) return isSaid(tree, path) === true;
  const node = nodeAt(tree, path);
  return node !== undefined && !isNone(node);
}
