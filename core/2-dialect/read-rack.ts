import type { Report } from "#base";
import type { DialectFile } from "./loader.ts";
import { parseYaml } from "./parse-yaml.ts";
import type { TreeNode } from "./tree.ts";

/** Most pockets that a file may list; `rack` of a set-up file has the same bound. */
const mostPockets = 200;

/** Greatest number of a tool, as in a set-up file. */
const greatestTool = 99_999;

/**
 * Reads what is in a rack now (JSON or YAML): a list of tool numbers, pocket 1 first and 0 for an empty pocket, or a mapping of
 * pockets to tools, such as { "1": 4, "3": 7 }.
 *
 * @returns tool in each pocket, index 0 is pocket 1; undefined after a finding (dialect/setup)
 */
export function readRackFile({ file, bytes }: DialectFile, report: Report): number[] | undefined {
  const tree = parseYaml({ file, bytes, index: 0, source: "setup" }, report);
  if (tree === undefined) return undefined;
  const counted = { errors: 0 };
  const fail = (message: string, { origin }: TreeNode): void => {
    counted.errors++;
    report({
      rule: "dialect/setup",
      severity: "error",
      message,
      place: { source: "setup", file, offset: origin.offset },
      fix: 'Write the tools by pocket, such as [4, 0, 7] or { "1": 4, "3": 7 }.',
    });
  };
  const rack: number[] = [];
  for (const [pocket, node] of pocketsOf(tree, fail)) {
    const tool = toolOf(node, fail);
    while (rack.length < pocket) rack.push(0);
    if (tool !== 0 && rack.includes(tool))
      fail(`Tool ${tool} is in pocket ${rack.indexOf(tool) + 1} and in pocket ${pocket}.`, node);
    rack[pocket - 1] = tool;
  }
  return counted.errors === 0 ? rack : undefined;
}

type Fail = (message: string, node: TreeNode) => void;

/** Pockets that are listed, counted from 1, with what is said of them. */
function pocketsOf(tree: TreeNode, fail: Fail): (readonly [pocket: number, node: TreeNode])[] {
  const listed: (readonly [number, TreeNode])[] =
    tree.kind === "list"
      ? tree.items.map((item, index) => [index + 1, item] as const)
      : tree.kind === "mapping"
        ? [...tree.entries].map(
            ([key, node]) => [/^[1-9]\d{0,2}$/.test(key) ? Number(key) : 0, node] as const,
          )
        : [];
  if (tree.kind === "scalar") fail("The file says no pockets.", tree);
  const good = listed.filter(([pocket]) => pocket >= 1 && pocket <= mostPockets);
  for (const [pocket, node] of listed)
    if (pocket < 1 || pocket > mostPockets) fail(`Pockets are numbers from 1 to ${mostPockets}.`, node);
  return good;
}

/** A tool's number, or 0. */
function toolOf(node: TreeNode, fail: Fail): number {
  const value = node.kind === "scalar" ? node.value : undefined;
  if (typeof value === "number" && Number.isInteger(value) && value >= 0 && value <= greatestTool)
    return value;
  fail("A pocket holds the number of a tool, or 0.", node);
  return 0;
}
