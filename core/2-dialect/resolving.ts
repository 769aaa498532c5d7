import type { Place, Report } from "#base";
import type { TreeNode } from "./tree.ts";
import { addOne, snippet } from "./offers.ts";
import { nodeAt } from "./tree.ts";

/** What the parts of resolving share: the merged tree, and where faults go. */
export interface Resolving {
  readonly tree: TreeNode;
  readonly files: readonly string[];
  /** Reports an error at a key, each once; the dialect is then not usable. */
  readonly fail: (rule: string, path: string, message: string, fix?: string) => void;
  /** The value, or a finding that no file states the key, once all keys have been asked for. */
  readonly need: <T>(value: T | undefined, path: string) => T;
  /** Reports the keys that nobody states: a few one by one, many of a group in one finding. */
  readonly reportMissing: () => void;
  readonly failed: () => boolean;
}

/** From this many on, missing keys of one group are one finding. */
const fewest = 4;

/** Starts resolving a merged tree. */
export function startResolving(tree: TreeNode, files: readonly string[], report: Report): Resolving {
  const reported = new Set<string>();
  const missing = new Set<string>();
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
    need: (value, path) => {
      if (value === undefined) missing.add(path);
      return value as NonNullable<typeof value>;
    },
    reportMissing: () => {
      for (const paths of byGroup(missing)) {
        if (paths.length < fewest)
          for (const path of paths) fail("dialect/undeclared", path, undeclared(path), addOne(path));
        else failTogether(fail, paths);
      }
      missing.clear();
    },
    failed: () => reported.size > 0 || missing.size > 0,
  };
}

/** Key paths by their first key. */
function byGroup(paths: ReadonlySet<string>): string[][] {
  const groups = new Map<string, string[]>();
  for (const path of paths) {
    const [group = ""] = path.split(".");
    groups.set(group, [...(groups.get(group) ?? []), path]);
  }
  return [...groups.values()];
}

/** One finding for the keys of a group, with lines that can be pasted into the group once the question marks are answered. */
function failTogether(fail: Resolving["fail"], paths: readonly string[]): void {
  const [group = ""] = (paths[0] ?? "").split(".");
  const message = `No file of the dialect states ${String(paths.length)} keys of \`${group}\` that it needs, and a value is never guessed.`;
  const fix = `Add these lines to \`${group}\`, with an answer in place of each question mark:`;
  fail("dialect/undeclared", paths[0] ?? group, message, `${fix}\n${snippet(paths)}`);
}

/** A value by its reader and key path, or a finding that no file states it. */
export function must<T>(
  { tree, need }: Resolving,
  read: (tree: TreeNode, path: string) => T | undefined,
  path: string,
): T {
  return need(read(tree, path), path);
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

/** The place of a key, or of the nearest group around it that some file states, or the start of the leaf. */
export function placeOf(tree: TreeNode, path: string, files: readonly string[]): Place {
  for (let at = path; at !== ""; at = at.slice(0, Math.max(at.lastIndexOf("."), 0))) {
    const node = nodeAt(tree, at);
    if (node !== undefined)
      return { source: "dialect", file: files[node.origin.file], offset: node.origin.offset };
  }
  return { source: "dialect", file: files[0], offset: 0 };
}
