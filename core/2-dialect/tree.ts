/** Where a value stands in its file. */
export interface Origin {
  /** Index into the files of the chain, the leaf first. */
  readonly file: number;
  /** 1-based. */
  readonly line: number;
  /** Byte offset. */
  readonly offset: number;
}

/** A value of a dialect file, with its place. Keys live in Maps, so that no key can reach an object's prototype. */
export type TreeNode = MappingNode | ListNode | ScalarNode;

export interface MappingNode {
  readonly kind: "mapping";
  readonly entries: ReadonlyMap<string, TreeNode>;
  /** Place of the key that has this value; of the value itself in a list. */
  readonly origin: Origin;
}

export interface ListNode {
  readonly kind: "list";
  readonly items: readonly TreeNode[];
  readonly origin: Origin;
}

export interface ScalarNode {
  readonly kind: "scalar";
  readonly value: string | number | boolean | null;
  /** The characters of the value as the file has them, so that decimals keep their digits. */
  readonly source: string;
  /** Whether it stands in quotes, of which the first is at its place. */
  readonly quoted?: boolean;
  readonly origin: Origin;
}

/**
 * Finds a value by its key path, such as "arc.form"; items of a list count from 1 ("work-offset.3"). A mapping for which
 * the file says `none` gives that `none` for each key in it. Undefined: no file of the chain states it.
 */
export function nodeAt(root: TreeNode, path: string): TreeNode | undefined {
  return path.split(".").reduce<TreeNode | undefined>(childOf, root);
}

function childOf(node: TreeNode | undefined, key: string): TreeNode | undefined {
  if (node?.kind === "mapping") return node.entries.get(key);
  if (node?.kind === "list") return node.items[Number(key) - 1];
  return node !== undefined && isNone(node) ? node : undefined;
}

/** Whether a value is the word `none`. */
export function isNone(node: TreeNode): boolean {
  return node.kind === "scalar" && node.value === "none";
}

/** Calls `visit` for each value below a node with its key path, parents first. */
export function walkTree(node: TreeNode, visit: (path: string, node: TreeNode) => void, path = ""): void {
  if (path !== "") visit(path, node);
  const below = (key: string | number): string => (path === "" ? String(key) : `${path}.${key}`);
  if (node.kind === "mapping") for (const [key, child] of node.entries) walkTree(child, visit, below(key));
  if (node.kind === "list") node.items.forEach((child, index) => walkTree(child, visit, below(index + 1)));
}

/** Plain data for the schema's validator; objects have no prototype. */
export function plainData(node: TreeNode): unknown {
  if (node.kind === "scalar") return node.value;
  if (node.kind === "list") return node.items.map(plainData);
  const data = Object.create(null) as Record<string, unknown>;
  for (const [key, child] of node.entries) data[key] = plainData(child);
  return data;
}

/** A value that some code holds, and no file, such as an answer: its place is the start of nothing. */
export type PlainValue = string | number | readonly PlainValue[] | { readonly [key: string]: PlainValue };

/** Plain data as a tree, for comparing with a file's. */
export function treeOf(value: PlainValue): TreeNode {
  const origin: Origin = { file: -1, line: 0, offset: 0 };
  if (typeof value === "string" || typeof value === "number")
    return { kind: "scalar", value, source: String(value), origin };
  if (Array.isArray(value)) return { kind: "list", items: value.map(treeOf), origin };
  const entries = Object.entries(value).map(([key, child]) => [key, treeOf(child)] as const);
  return { kind: "mapping", entries: new Map(entries), origin };
}
