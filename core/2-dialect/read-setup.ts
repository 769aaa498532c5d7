import type { Report } from "#base";
import type { DialectFile } from "./loader.ts";
import { parseYaml } from "./parse-yaml.ts";
import { setupSchema } from "./schema.ts";
import { validateSetup } from "./setup-validator.generated.ts";
import type { Setup } from "./setup.ts";
import type { ScalarNode, TreeNode } from "./tree.ts";
import { nodeAt } from "./tree.ts";
import { fitsSchema } from "./validate.ts";
import { number, parseLength, place } from "./values.ts";

/** Reads a set-up file (YAML or JSON); undefined after a finding. */
export function readSetupFile({ file, bytes }: DialectFile, report: Report): Setup | undefined {
  const tree = parseYaml({ file, bytes, index: 0, source: "setup" }, report);
  if (tree === undefined) return undefined;
  if (!fitsSchema({ tree, file, source: "setup", schema: setupSchema, validate: validateSetup }, report))
    return undefined;
  const setup: Setup = {
    workOffsets: Array.from({ length: 10 }, (_, offset) => place(tree, `workOffsets.${offset}`)),
    lengths: readLengths(tree),
    rack: readRack(tree),
    spindleHolds: readSpindle(tree),
  };
  return toolsAreOnce(setup, tree, file, report) ? setup : undefined;
}

function readLengths(tree: TreeNode): Record<number, number> {
  const node = nodeAt(tree, "lengths");
  const entries = node?.kind === "mapping" ? [...node.entries] : [];
  return Object.fromEntries(entries.map(([tool, length]) => [tool, parseLength(length as ScalarNode)]));
}

function readRack(tree: TreeNode): number[] | undefined {
  const node = nodeAt(tree, "rack");
  return node?.kind === "list" ? node.items.map((item) => Number((item as ScalarNode).source)) : undefined;
}

function readSpindle(tree: TreeNode): number | undefined {
  const node = nodeAt(tree, "spindleHolds");
  return node === undefined ? undefined : (number(tree, "spindleHolds") ?? 0);
}

/** A tool is in one place: in one pocket, or in the spindle. */
function toolsAreOnce(
  { rack = [], spindleHolds = 0 }: Setup,
  tree: TreeNode,
  file: string,
  report: Report,
): boolean {
  let fits = true;
  const fail = (path: string, message: string): void => {
    fits = false;
    const offset = nodeAt(tree, path)?.origin.offset ?? 0;
    report({
      rule: "dialect/setup",
      severity: "error",
      message,
      place: { source: "setup", file, offset },
      key: path,
    });
  };
  for (const [index, tool] of rack.entries()) {
    if (tool === 0) continue;
    const first = rack.indexOf(tool);
    if (first < index)
      fail(`rack.${index + 1}`, `Tool ${tool} is in pocket ${first + 1} and in pocket ${index + 1}.`);
    if (tool === spindleHolds)
      fail(`rack.${index + 1}`, `Tool ${tool} is in the spindle and in pocket ${index + 1}.`);
  }
  return fits;
}
