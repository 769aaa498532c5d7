import type { Chain } from "./chain.ts";
import { inline } from "./show.ts";
import { nodeAt, walkTree } from "./tree.ts";

/** A value that a dialect has from a file that it extends. */
export interface Inherited {
  /** "machine.retract.by" */
  readonly key: string;
  /** As the file has it. */
  readonly value: string;
  readonly file: string;
  readonly line: number;
}

/** Keys and groups whose values hurt when they are wrong for the machine: they read well, and no program shows it. */
const telling = [
  "units.programs-in",
  "distance.programs-in",
  "numbers.point",
  "arc.form",
  "cycles.levels",
  "dwell.unit",
  "stops.resume",
  "motion.machine-move-lasts",
  "motion.rapids",
  "machine.swap",
  "machine.change-effects",
  "machine.retract",
  "machine.length-offset",
  "machine.lengths",
  "machine.tapping",
  "machine.waits",
  "confirm",
] as const;

/** What the leaf has of these from the files that it extends, in that order; nothing for a dialect that extends none. */
export function inheritedOf({ links, merged }: Chain): Inherited[] {
  const found: Inherited[] = [];
  for (const group of telling) {
    const start = nodeAt(merged, group);
    if (start === undefined) continue;
    const take = (key: string, node: typeof start): void => {
      if (node.kind === "mapping" || node.origin.file === 0) return;
      const { file, line } = node.origin;
      found.push({ key, value: inline(node), file: links[file].file, line });
    };
    if (start.kind === "mapping") walkTree(start, (key, node) => take(`${group}.${key}`, node));
    else take(group, start);
  }
  // Items of a list stand in their list.
  return found.filter(({ key }) => !found.some((list) => key.startsWith(`${list.key}.`)));
}
