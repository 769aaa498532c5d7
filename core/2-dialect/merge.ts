import type { MappingNode, TreeNode } from "./tree.ts";

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
