import type { Place, Report } from "#base";
import type { DialectFile, DialectLoader } from "./loader.ts";
import { mergeTrees, withoutLostMessage } from "./merge.ts";
import { didYouMean } from "./did-you-mean.ts";
import { parseYaml } from "./parse-yaml.ts";
import type { MappingNode, TreeNode } from "./tree.ts";
import { nodeAt } from "./tree.ts";
import { validateTree } from "./validate.ts";

/** Most files in a chain. */
const longestChain = 8;

/** A dialect file with its tree. */
export interface ChainLink {
  readonly file: string;
  readonly tree: MappingNode;
}

/** The files of a dialect, the leaf first, and what they say together. */
export interface Chain {
  readonly links: readonly ChainLink[];
  readonly merged: MappingNode;
}

/** Where a file of the chain comes from. */
type Target = { readonly shipped: string } | { readonly path: string };

/**
 * Reads a dialect and what it extends.
 *
 * @param dialect a shipped name, or the path of a file
 * @returns undefined after an error: dialect/file, dialect/extends, dialect/path, or what a file's own text gave
 */
export function loadChain(dialect: string, loader: DialectLoader, report: Report): Chain | undefined {
  const links: ChainLink[] = [];
  const seen = new Set<string>();
  let target: Target | undefined = loader.shipped.includes(dialect)
    ? { shipped: dialect }
    : { path: dialect };
  let from: Place | undefined;
  while (target !== undefined) {
    const found = open(target, loader, report, from);
    if (found === undefined) return undefined;
    const link = readLink(found, links.length, report);
    if (link === undefined) return undefined;
    seen.add(identity(target));
    links.push(link);
    const next = parentOf(link, target, report);
    if (next === "refused") return undefined;
    if (next !== undefined && refuseLoop(next.target, next.place, seen, links, report)) return undefined;
    target = next?.target;
    from = next?.place;
  }
  return { links, merged: mergeLinks(links) };
}

function identity(target: Target): string {
  return "shipped" in target ? `shipped ${target.shipped}` : `file ${target.path}`;
}

function open(target: Target, loader: DialectLoader, report: Report, place?: Place): DialectFile | undefined {
  const found = "shipped" in target ? loader.readShipped(target.shipped) : loader.readFile(target.path);
  if (found !== undefined) return found;
  const name = "shipped" in target ? target.shipped : target.path;
  const hint = didYouMean(name, loader.shipped);
  const message = `There is no dialect file \`${name}\`.${hint}`;
  const fix = `Name a file, or a shipped dialect: ${loader.shipped.join(", ")}.`;
  report({
    rule: "dialect/file",
    severity: "error",
    message,
    fix,
    ...(place === undefined ? {} : { place }),
  });
  return undefined;
}

function readLink(found: DialectFile, index: number, report: Report): ChainLink | undefined {
  const tree = parseYaml({ file: found.file, bytes: found.bytes, index, source: "dialect" }, report);
  if (tree === undefined || !validateTree(tree, found.file, report)) return undefined;
  return { file: found.file, tree: tree as MappingNode };
}

/** What a file extends; undefined where it extends nothing. */
function parentOf(
  link: ChainLink,
  at: Target,
  report: Report,
): { target: Target; place: Place } | "refused" | undefined {
  const node = nodeAt(link.tree, "extends");
  if (node?.kind !== "scalar") return undefined;
  const name = String(node.value);
  const place: Place = { source: "dialect", file: link.file, offset: node.origin.offset };
  if (!/\.ya?ml$/.test(name)) return { target: { shipped: name }, place };
  if ("shipped" in at) return refusePath(name, place, "a shipped dialect extends shipped ones only", report);
  const outside =
    name.split("/").some((part) => part === ".." || part === "." || part === "") || /[\\:~]/.test(name);
  if (outside) return refusePath(name, place, "it leaves the folder of this file", report);
  return { target: { path: folderOf(at.path) + name }, place };
}

function refusePath(name: string, place: Place, why: string, report: Report): "refused" {
  report({
    rule: "dialect/path",
    severity: "error",
    message: `\`extends: ${name}\` is not followed: ${why}.`,
    place,
    fix: "Extend a shipped dialect by its name, or a file in the same folder or below.",
    key: "extends",
  });
  return "refused";
}

/** The folder of a path with its last separator: `a/b.yaml` -> `a/`. */
function folderOf(path: string): string {
  return path.slice(0, Math.max(path.lastIndexOf("/"), path.lastIndexOf("\\")) + 1);
}

function refuseLoop(
  next: Target,
  place: Place,
  seen: ReadonlySet<string>,
  links: readonly ChainLink[],
  report: Report,
): boolean {
  const way = links.map(({ file }) => file).join(" -> ");
  const again = seen.has(identity(next));
  if (!again && links.length < longestChain) return false;
  const message = again
    ? `The chain of \`extends\` comes back to a file that it began with: ${way}.`
    : `The chain of \`extends\` is longer than ${longestChain} files: ${way}.`;
  report({ rule: "dialect/extends", severity: "error", message, place, key: "extends" });
  return true;
}

/** What the files say together; each file's `cases` are about that file, and no part of it. */
function mergeLinks(links: readonly ChainLink[]): MappingNode {
  const trees: TreeNode[] = links.map(({ tree }) => {
    const entries = new Map(tree.entries);
    entries.delete("cases");
    return { ...tree, entries };
  });
  return withoutLostMessage(trees.reduceRight((base, leaf) => mergeTrees(base, leaf)) as MappingNode);
}
