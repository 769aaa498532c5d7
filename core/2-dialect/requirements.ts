import type { Resolving } from "./resolving.ts";
import { addOne } from "./offers.ts";
import type { TreeNode } from "./tree.ts";
import { isNone, nodeAt } from "./tree.ts";
import { word } from "./values.ts";

/** When a key is stated in a way, another must be stated, too. */
interface Requirement {
  /** Key path, alone: it has a value other than `none`; with `=`: it has that value. */
  readonly when: string;
  readonly needs: string;
  /** Whether the needed key may be said to be `none`. */
  readonly noneWillDo?: true;
}

const requirements: readonly Requirement[] = [
  { when: "dwell.code", needs: "dwell.word" },
  { when: "dwell.code", needs: "dwell.unit" },
  { when: "dwell.code", needs: "dwell.blocks" },
  { when: "spindle.cw", needs: "spindle.order" },
  { when: "spindle.cw", needs: "spindle.blocks" },
  { when: "tools.change", needs: "tools.blocks" },
  { when: "tools.change", needs: "tools.order" },
  { when: "tools.change", needs: "tools.preselect" },
  { when: "compensation.left", needs: "compensation.off" },
  { when: "compensation.right", needs: "compensation.off" },
  { when: "compensation.left", needs: "compensation.word", noneWillDo: true },
  { when: "length-offset.on", needs: "length-offset.off" },
  { when: "length-offset.on", needs: "length-offset.word" },
  { when: "length-offset.on", needs: "length-offset.number" },
  { when: "length-offset.on", needs: "length-offset.added" },
  { when: "feed.per-revolution", needs: "numbers.feed-per-revolution" },
  { when: "cycles.tap-feed=lead", needs: "numbers.feed-per-revolution" },
  { when: "feed.inverse-time", needs: "numbers.inverse-time" },
  { when: "feed.inverse-time", needs: "feed.inverse-time-unit" },
  { when: "path.look-ahead.on", needs: "path.look-ahead.off" },
  { when: "compensation.corner-feed.on", needs: "compensation.corner-feed.off" },
  { when: "arc.form", needs: "arc.cw" },
  { when: "arc.form", needs: "arc.ccw" },
  // A mode that can be left must be one that can be taken up again, or no program could state it.
  { when: "plane.zx", needs: "plane.xy" },
  { when: "plane.yz", needs: "plane.xy" },
  { when: "distance.incremental", needs: "distance.absolute" },
  { when: "cycles.return.initial", needs: "cycles.return.retract" },
  { when: "cycles.return.retract", needs: "cycles.return.initial" },
  { when: "idioms.output-on", needs: "idioms.output-off" },
  { when: "machine.retract.by=machine-move", needs: "machine-move" },
  { when: "motion.machine-move-lasts=until-work-offset", needs: "work-offset" },
  { when: "machine.retract.by=reference-return", needs: "reference-return" },
  { when: "machine.retract.intermediate=incremental-zero", needs: "distance.incremental" },
  { when: "machine.length-offset.form=with-first-z", needs: "length-offset.on" },
  { when: "machine.length-offset.form=own-block", needs: "length-offset.on" },
  { when: "machine.swap=controller", needs: "tools.change" },
  {
    when: "machine.swap=controller",
    needs: "machine.change-effects",
  },
  { when: "machine.swap=rack", needs: "machine.rack" },
  {
    when: "machine.swap=rack",
    needs: "machine.rack.zone",
  },
  { when: "machine.swap=rack", needs: "machine.drawbar" },
  { when: "machine.swap=rack", needs: "idioms.release" },
  { when: "machine.swap=rack", needs: "idioms.clamp" },
  { when: "machine.rack.cover=yes", needs: "idioms.cover-open" },
  { when: "machine.rack.cover=yes", needs: "idioms.cover-close" },
  { when: "machine.drawbar.taper-air=yes", needs: "idioms.taper-air-on" },
  { when: "machine.drawbar.taper-air=yes", needs: "idioms.taper-air-off" },
  { when: "machine.hood=yes", needs: "idioms.hood-up" },
  { when: "machine.hood=yes", needs: "idioms.hood-down" },
  { when: "machine.outputs", needs: "idioms.output-on" },
  { when: "machine.lengths=measured", needs: "idioms.measure" },
  {
    when: "machine.lengths=measured",
    needs: "machine.measure-effects",
  },
  { when: "machine.spindle.orient=yes", needs: "spindle.orient" },
];

/** Reports each key that is missing beside what is stated. */
export function checkRequirements({ tree, fail }: Resolving): void {
  const told = new Set<string>();
  for (const { when, needs, noneWillDo } of requirements) {
    if (told.has(needs) || !holds(tree, when) || isStated(tree, needs, noneWillDo === true)) continue;
    told.add(needs);
    const [key = "", value] = when.split("=");
    const cause = value === undefined ? `\`${key}\` is stated` : `\`${key}\` is ${value}`;
    fail(
      "dialect/undeclared",
      needs,
      `\`${needs}\` is needed, since ${cause}, but no file gives it a value.`,
      addOne(needs),
    );
  }
}

function holds(tree: TreeNode, when: string): boolean {
  const [key = "", value] = when.split("=");
  return value === undefined ? isStated(tree, key, false) : word(tree, key) === value;
}

function isStated(tree: TreeNode, path: string, noneWillDo: boolean): boolean {
  const node = nodeAt(tree, path);
  return node !== undefined && (noneWillDo || !isNone(node));
}
