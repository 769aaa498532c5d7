import type { Chain } from "./chain.ts";
import { inline, rankOf } from "./show.ts";
import type { MappingNode, TreeNode } from "./tree.ts";
import { isNone } from "./tree.ts";

/** What a dialect says of a key, and where. */
export interface StatedValue {
  /** As YAML has it on one line. */
  readonly value: string;
  readonly file: string;
  /** Counted from 1. */
  readonly line: number;
}

/** A key about which two dialects differ. */
export interface KeyDifference {
  /** "motion.rapids" */
  readonly key: string;
  /** Undefined: no file of that dialect's chain states it. */
  readonly first: StatedValue | undefined;
  readonly second: StatedValue | undefined;
}

type Node = TreeNode | undefined;

/**
 * The keys whose values differ between two dialects with all that they inherit, in the order of the schema. Values count
 * and not their writing: `0.10` is `0.1`. A group that is `none` as a whole is `none` for each key in it, at the group's line.
 */
export function differencesOf(first: Chain, second: Chain): KeyDifference[] {
  const say = ({ links }: Chain, node: Node): StatedValue | undefined =>
    node && { value: inline(node), file: links[node.origin.file].file, line: node.origin.line };
  return pairsBelow([], first.merged, second.merged)
    .filter(([key, one, other]) => key !== "extends" && !sameValue(one, other))
    .map(([key, one, other]) => ({ key, first: say(first, one), second: say(second, other) }));
}

type Pair = readonly [key: string, one: Node, other: Node];

/** The values of both, key by key, as deep as both can be followed. */
function pairsBelow(steps: readonly string[], one: Node, other: Node): Pair[] {
  if (!isFollowed(one, other)) return [[steps.join("."), one, other]];
  const rank = rankOf(steps);
  return [...new Set([...keysOf(one), ...keysOf(other)])]
    .sort((a, b) => rank(a) - rank(b))
    .flatMap((key) => pairsBelow([...steps, key], below(one, key), below(other, key)));
}

/** Whether to look into a group: where the other has another form of the key, such as a word, both are shown whole. */
function isFollowed(one: Node, other: Node): boolean {
  const isGroup = (node: Node): node is MappingNode => node?.kind === "mapping" && node.entries.size > 0;
  const isOpen = (node: Node): boolean => node === undefined || isGroup(node) || isNone(node);
  return (isGroup(one) || isGroup(other)) && isOpen(one) && isOpen(other);
}

function keysOf(node: Node): Iterable<string> {
  return node?.kind === "mapping" ? node.entries.keys() : [];
}

function below(node: Node, key: string): Node {
  return node?.kind === "mapping" ? node.entries.get(key) : node;
}

function sameValue(one: Node, other: Node): boolean {
  if (one === undefined || other === undefined) return one === other;
  if (one.kind === "scalar") return other.kind === "scalar" && one.value === other.value;
  if (one.kind === "list") {
    if (other.kind !== "list" || one.items.length !== other.items.length) return false;
    return one.items.every((item, index) => sameValue(item, other.items[index]));
  }
  if (other.kind !== "mapping" || one.entries.size !== other.entries.size) return false;
  return [...one.entries].every(([key, child]) => sameValue(child, other.entries.get(key)));
}
