import type { Place, Report } from "#base";
import type { TreeNode } from "./tree.ts";
import { nodeAt } from "./tree.ts";

/** What the parts of resolving share: the merged tree, and where faults go. */
export interface Resolving {
  readonly tree: TreeNode;
  readonly files: readonly string[];
  /** Reports an error at a key, each once; the dialect is then not usable. */
  readonly fail: (rule: string, path: string, message: string, fix?: string) => void;
  /** The value, or a finding that no file states the key; `example` is a value for it as a file would have it. */
  readonly need: <T>(value: T | undefined, path: string, example: string | number) => T;
  readonly failed: () => boolean;
}

/** Starts resolving a merged tree. */
export function startResolving(tree: TreeNode, files: readonly string[], report: Report): Resolving {
  const reported = new Set<string>();
  const fail: Resolving["fail"] = (rule, path, message, fix) => {
    const identity = `${rule} ${path} ${message}`;
    if (reported.has(identity)) return;
    reported.add(identity);
    const place = placeOf(tree, path, files);
    report({ rule, severity: "error", message, key: path, place, ...(fix === undefined ? {} : { fix }) });
  };
  return {
    tree,
    files,
    fail,
    need: (value, path, example) => {
      if (value === undefined)
        fail("dialect/undeclared", path, undeclared(path), `Add \`${asYaml(path, example)}\`.`);
      return value as NonNullable<typeof value>;
    },
    failed: () => reported.size > 0,
  };
}

/** A value by its reader and key path, or a finding that no file states it. */
export function must<T>(
  { tree, need }: Resolving,
  read: (tree: TreeNode, path: string) => T | undefined,
  path: string,
  example: string | number,
): T {
  return need(read(tree, path), path, example);
}

/** A value as it stands, and where: `units.stated: first-block`, own.yaml:3. */
export function stated({ tree, files }: Resolving, path: string): string {
  const node = nodeAt(tree, path);
  if (node === undefined) return `\`${path}\``;
  const value = node.kind === "scalar" ? `: ${String(node.value)}` : "";
  return `\`${path}${value}\`, ${files[node.origin.file]}:${node.origin.line}`;
}

function undeclared(path: string): string {
  return `No file of the dialect states \`${path}\`, and a value is never guessed.`;
}

/** ("spindle.order", "speed-first") -> "spindle: { order: speed-first }". */
export function asYaml(path: string, value: string | number): string {
  const keys = path.split(".");
  return `${keys.join(": { ")}: ${value}${" }".repeat(keys.length - 1)}`;
}

/** The place of a key, or of the nearest group around it that some file states, or the start of the leaf. */
export function placeOf(tree: TreeNode, path: string, files: readonly string[]): Place {
  for (let at = path; at !== ""; at = at.slice(0, Math.max(at.lastIndexOf("."), 0))) {
    const node = nodeAt(tree, at);
    if (node !== undefined)
      return { source: "dialect", file: files[node.origin.file], offset: node.origin.offset };
  }
  return { source: "dialect", file: files[0], offset: 0 };
}
