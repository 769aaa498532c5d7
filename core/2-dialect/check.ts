import type { Finding, Report } from "#base";
import type { Chain } from "./chain.ts";
import type { Consequence } from "./consequences.ts";
import { consequences, rackConsequences } from "./consequences.ts";
import { mergeTrees } from "./merge.ts";
import { placeOf } from "./resolving.ts";
import { meaningText } from "./meaning-text.ts";
import type { ListNode, ScalarNode, TreeNode } from "./tree.ts";
import { isNone, nodeAt, walkTree } from "./tree.ts";
import { unansweredNotes } from "./unanswered.ts";
import { word, yes } from "./values.ts";

/** What a dialect leaves unsaid or cannot say, and lines of the leaf that change nothing; all of them notes. */
export function reportNotes(chain: Chain, report: Report): void {
  const rack = word(chain.merged, "machine.swap") === "rack" ? rackConsequences : [];
  for (const consequence of [...consequences, ...rack]) {
    const note = unsaid(chain, consequence);
    if (note !== undefined) report(note);
  }
  for (const note of [...unansweredNotes(chain), ...sameAsInherited(chain)]) report(note);
}

/** Whether a consequence holds for a dialect that states other keys so. */
function applies({ merged }: Chain, { where, whereStated, unlessStated }: Consequence): boolean {
  const isStated = (key: string): boolean => nodeAt(merged, key) !== undefined;
  if (where !== undefined && yes(merged, where) !== true) return false;
  return whereStated?.some(isStated) !== false && unlessStated?.some(isStated) !== true;
}

function unsaid(chain: Chain, consequence: Consequence): Finding | undefined {
  if (!applies(chain, consequence)) return undefined;
  const { merged, links } = chain;
  const { key, then, noneIsFine } = consequence;
  const node = nodeAt(merged, key);
  if (node !== undefined && (!isNone(node) || noneIsFine === true)) return undefined;
  const files = links.map(({ file }) => file);
  const message = node === undefined ? `No file states \`${key}\`: ${then}.` : `\`${key}\` is none: ${then}.`;
  const rule = node === undefined ? "dialect/undeclared" : "dialect/none";
  return { rule, severity: "note", message, key, place: placeOf(merged, key, files) };
}

/** Values of the leaf that equal what it would have without them. */
function sameAsInherited({ links }: Chain): Finding[] {
  const [leaf, ...rest] = links;
  if (leaf === undefined || rest.length === 0) return [];
  const inherited = rest
    .map(({ tree }): TreeNode => tree)
    .reduceRight((base, next) => mergeTrees(base, next));
  const found: Finding[] = [];
  walkTree(leaf.tree, (key, node) => {
    const before = nodeAt(inherited, key);
    // The ways of a confirmation exclude one another, so that each file states its own in full.
    if (node.kind === "mapping" || before === undefined || /^(confirm|cases)\b/.test(key)) return;
    if (inList(leaf.tree, key) || !sameValue(node, before)) return;
    const from = `${links[before.origin.file].file}:${before.origin.line}`;
    const message = `\`${key}\` is what ${from} states already.`;
    const place = { source: "dialect", file: leaf.file, offset: node.origin.offset } as const;
    found.push({ rule: "dialect/same", severity: "note", message, key, place, fix: "Leave it out." });
  });
  return found;
}

/** Items of a list are compared with their list. */
function inList(tree: TreeNode, key: string): boolean {
  return nodeAt(tree, key.slice(0, Math.max(key.lastIndexOf("."), 0)))?.kind === "list";
}

function sameValue(one: ListNode | ScalarNode, other: TreeNode): boolean {
  return meaningText(one) === meaningText(other);
}
