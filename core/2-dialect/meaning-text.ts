import type { TreeNode } from "./tree.ts";
import { codeText } from "./code-text.ts";
import { parseCode } from "./values.ts";

/** Text that is the same for values that mean the same: G0 and G00, 2 and 2.0. */
export function meaningText(node: TreeNode): string {
  if (node.kind === "list") return `[${node.items.map(meaningText).join()}]`;
  if (node.kind === "mapping")
    return `{${[...node.entries]
      .map(([key, child]) => `${key}:${meaningText(child)}`)
      .sort()
      .join()}}`;
  if (typeof node.value === "string" && /^[GM]\d{1,3}(\.\d)?$/.test(node.value))
    return codeText(parseCode(node.value));
  return String(node.value);
}
