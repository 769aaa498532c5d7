import type { Resolving } from "./resolving.ts";
import { asYaml } from "./resolving.ts";
import type { TreeNode } from "./tree.ts";
import { isNone, nodeAt } from "./tree.ts";
import { word } from "./values.ts";

/** When a key is stated in a way, another must be stated, too. */
interface Requirement {
  /** Key path, alone: it has a value other than `none`; with `=`: it has that value. */
  readonly when: string;
  readonly needs: string;
  /** A value for the needed key as a file would have it. */
  readonly example: string;
  /** Whether the needed key may be said to be `none`. */
  readonly noneWillDo?: true;
}

const requirements: readonly Requirement[] = [
  { when: "dwell.code", needs: "dwell.word", example: "P" },
  { when: "dwell.code", needs: "dwell.unit", example: "s" },
  { when: "dwell.code", needs: "dwell.blocks", example: "apart" },
  { when: "spindle.cw", needs: "spindle.order", example: "speed-first" },
  { when: "spindle.cw", needs: "spindle.blocks", example: "together" },
  { when: "tools.change", needs: "tools.blocks", example: "together" },
  { when: "tools.change", needs: "tools.order", example: "select-first" },
  { when: "tools.change", needs: "tools.preselect", example: "no" },
  { when: "compensation.left", needs: "compensation.off", example: "G40" },
  { when: "compensation.right", needs: "compensation.off", example: "G40" },
  { when: "compensation.left", needs: "compensation.word", example: "D", noneWillDo: true },
  { when: "length-offset.on", needs: "length-offset.off", example: "G49" },
  { when: "length-offset.on", needs: "length-offset.word", example: "H" },
  { when: "length-offset.on", needs: "length-offset.number", example: "free" },
  { when: "length-offset.on", needs: "length-offset.added", example: "0" },
  { when: "feed.per-revolution", needs: "numbers.feed-per-revolution", example: "{ mm: 3, inch: 4 }" },
  { when: "cycles.tap-feed=lead", needs: "numbers.feed-per-revolution", example: "{ mm: 3, inch: 4 }" },
  { when: "feed.inverse-time", needs: "numbers.inverse-time", example: "4" },
  { when: "feed.inverse-time", needs: "feed.inverse-time-unit", example: "per-minute" },
  { when: "path.look-ahead.on", needs: "path.look-ahead.off", example: "M98" },
  { when: "compensation.corner-feed.on", needs: "compensation.corner-feed.off", example: "G63" },
  { when: "arc.cw", needs: "arc.ccw", example: "G3" },
  { when: "idioms.output-on", needs: "idioms.output-off", example: '"M96 P{{output}}"' },
  { when: "machine.retract.by=machine-move", needs: "machine-move", example: "G53" },
  { when: "motion.machine-move-lasts=until-work-offset", needs: "work-offset", example: "[G54]" },
  { when: "machine.retract.by=reference-return", needs: "reference-return", example: "G28" },
  { when: "machine.retract.intermediate=incremental-zero", needs: "distance.incremental", example: "G91" },
  { when: "machine.length-offset.form=with-first-z", needs: "length-offset.on", example: "G43" },
  { when: "machine.length-offset.form=own-block", needs: "length-offset.on", example: "G43" },
  { when: "machine.swap=controller", needs: "tools.change", example: "M6" },
  {
    when: "machine.swap=controller",
    needs: "machine.change-effects",
    example: "{ position: unknown, spindle: stopped, coolant: off, length-offset: unchanged }",
  },
  { when: "machine.swap=rack", needs: "machine.rack", example: "{ style: drop-in }" },
  {
    when: "machine.swap=rack",
    needs: "machine.rack.zone",
    example: "{ min: [0, 0, -95], max: [500, 60, -5] }",
  },
  { when: "machine.swap=rack", needs: "machine.drawbar", example: "{ travels: clamped, taper-air: no }" },
  { when: "machine.swap=rack", needs: "idioms.release", example: "M21" },
  { when: "machine.swap=rack", needs: "idioms.clamp", example: "M22" },
  { when: "machine.rack.cover=yes", needs: "idioms.cover-open", example: "M27" },
  { when: "machine.rack.cover=yes", needs: "idioms.cover-close", example: "M28" },
  { when: "machine.drawbar.taper-air=yes", needs: "idioms.taper-air-on", example: "M25" },
  { when: "machine.drawbar.taper-air=yes", needs: "idioms.taper-air-off", example: "M26" },
  { when: "machine.hood=yes", needs: "idioms.hood-up", example: "M23" },
  { when: "machine.hood=yes", needs: "idioms.hood-down", example: "M24" },
  { when: "machine.outputs", needs: "idioms.output-on", example: '"M95 P{{output}}"' },
  { when: "machine.lengths=measured", needs: "idioms.measure", example: "M29" },
  {
    when: "machine.lengths=measured",
    needs: "machine.measure-effects",
    example: "{ position: unknown, spindle: stopped, coolant: unchanged, length-offset: active }",
  },
  { when: "machine.spindle.orient=yes", needs: "spindle.orient", example: "M19" },
];

/** Reports each key that is missing beside what is stated. */
export function checkRequirements({ tree, fail }: Resolving): void {
  for (const { when, needs, example, noneWillDo } of requirements) {
    if (!holds(tree, when) || isStated(tree, needs, noneWillDo === true)) continue;
    const [key = "", value] = when.split("=");
    const cause = value === undefined ? `\`${key}\` is stated` : `\`${key}\` is ${value}`;
    fail(
      "dialect/undeclared",
      needs,
      `\`${needs}\` is needed, since ${cause}, but no file gives it a value.`,
      `Add \`${asYaml(needs, example)}\`.`,
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
