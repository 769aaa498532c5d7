import { stringify } from "yaml";
import type { Chain } from "./chain.ts";
import { dialectSchema, formsAt } from "./schema.ts";
import type { MappingNode, TreeNode } from "./tree.ts";

/** Column at which the origins stand. */
const originColumn = 56;

/**
 * What a dialect says in all, as YAML that stands alone, with the file and line of each value behind it:
 * `  rapids: dog-leg      # explicit-words.dialect.yaml:12`.
 */
export function showChain({ links, merged }: Chain): string {
  const origin = (node: TreeNode): string => `${links[node.origin.file].file}:${node.origin.line}`;
  const head = `# ${links.map(({ file }) => file).join(", which extends ")}`;
  const lines = inOrder(merged, [])
    .filter(([key]) => key !== "extends")
    .flatMap(([key, node]) => show([key], node, origin));
  return [head, ...lines, ""].join("\n");
}

type OriginOf = (node: TreeNode) => string;

/** The keys of a mapping in the order of the schema, which is that of the documentation. */
function inOrder({ entries }: MappingNode, steps: readonly string[]): (readonly [string, TreeNode])[] {
  const rank = rankOf(steps);
  return [...entries].sort(([first], [second]) => rank(first) - rank(second));
}

/** Ranks the keys of the mapping at a path by the order of the schema; keys that it leaves to the file come last. */
export function rankOf(steps: readonly string[]): (key: string) => number {
  const known = formsAt(dialectSchema, steps).flatMap(({ properties = {} }) => Object.keys(properties));
  return (key) => (known.includes(key) ? known.indexOf(key) : known.length);
}

function show(steps: readonly string[], node: TreeNode, origin: OriginOf): string[] {
  const name = `${"  ".repeat(steps.length - 1)}${scalarText(steps.at(-1)!)}:`;
  if (node.kind !== "mapping") return [withOrigin(`${name} ${inline(node)}`, node, origin)];
  if (node.entries.size === 0) return [withOrigin(`${name} {}`, node, origin)];
  return [name, ...inOrder(node, steps).flatMap(([key, child]) => show([...steps, key], child, origin))];
}

function withOrigin(text: string, node: TreeNode, origin: OriginOf): string {
  return `${text.padEnd(originColumn - 1)} # ${origin(node)}`;
}

/** A value on one line. */
export function inline(node: TreeNode): string {
  if (node.kind === "list") return `[${node.items.map(inline).join(", ")}]`;
  if (node.kind === "mapping") {
    return `{ ${[...node.entries].map(([key, child]) => `${scalarText(key)}: ${inline(child)}`).join(", ")} }`;
  }
  return typeof node.value === "number" ? node.source : scalarText(String(node.value), true);
}

/** A string as YAML needs it: bare where that reads as the same string, otherwise in quotes. */
function scalarText(text: string, inFlow = false): string {
  const plain = stringify(text, { lineWidth: 0, version: "1.2" }).trimEnd();
  return plain === text && inFlow && /[[\]{},]/.test(text) ? JSON.stringify(text) : plain;
}
