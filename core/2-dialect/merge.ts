import type { MappingNode, TreeNode } from "./tree.ts";
import { isNone, nodeAt } from "./tree.ts";

/** Keys that say how a state is confirmed; a file that states one of them states the confirmation anew. */
const ways = ["wait", "dwell", "intrinsic"] as const;

/**
 * Lays a file over what it extends: mappings are merged key by key; lists, single values and `none` replace. A
 * confirmation that names its way (`wait`, `dwell`, `intrinsic`) replaces the whole, since the ways exclude one another.
 */
export function mergeTrees(base: TreeNode, leaf: TreeNode, path = ""): TreeNode {
  if (base.kind !== "mapping" || leaf.kind !== "mapping" || startsAnew(leaf, path)) return leaf;
  const entries = new Map(base.entries);
  for (const [key, value] of leaf.entries) {
    const before = base.entries.get(key);
    const below = path === "" ? key : `${path}.${key}`;
    entries.set(key, before === undefined ? value : mergeTrees(before, value, below));
  }
  return { kind: "mapping", entries, origin: leaf.origin };
}

function startsAnew(leaf: MappingNode, path: string): boolean {
  return path.startsWith("confirm.") && ways.some((way) => leaf.entries.has(way));
}

/**
 * A file that states that there are no comments takes away the message of those that it extends, since a message is a
 * comment; one that it states itself stays, and is refused with the rest of its checks.
 */
export function withoutLostMessage(merged: MappingNode): MappingNode {
  const idioms = merged.entries.get("idioms");
  const [message, style] = [nodeAt(merged, "idioms.message"), nodeAt(merged, "comments.style")];
  if (idioms?.kind !== "mapping" || message === undefined || style === undefined) return merged;
  if (!isNone(style) || message.origin.file <= style.origin.file) return merged;
  const entries = new Map(idioms.entries).set("message", style);
  return { ...merged, entries: new Map(merged.entries).set("idioms", { ...idioms, entries }) };
}
