import type { Finding } from "#base";
import type { Chain } from "./chain.ts";
import type { Resolving } from "./resolving.ts";
import { placeOf, stated } from "./resolving.ts";
import { dialectSchema, partsAt } from "./schema.ts";
import type { TreeNode } from "./tree.ts";
import { nodeAt } from "./tree.ts";

/** Keys of which nobody has said yet that they are true of the machine, as the dialect lists them. */
export function unansweredKeys(tree: TreeNode): string[] {
  const node = nodeAt(tree, "unanswered");
  if (node?.kind !== "list") return [];
  return node.items.flatMap((item) => (item.kind === "scalar" ? [String(item.value)] : []));
}

/** Each is a key that there is; and a confirmation that nobody answers for is a wait or a dwell. */
export function checkUnanswered(resolving: Resolving): void {
  const { tree, fail } = resolving;
  unansweredKeys(tree).forEach((key, index) => {
    const path = `unanswered.${String(index + 1)}`;
    if (partsAt(dialectSchema, key.split(".")).length === 0) {
      fail("dialect/unanswered", path, `There is no key \`${key}\` that could be answered.`, "Name a key path, such as confirm.at-speed."); // prettier-ignore
      return;
    }
    const trusted = trustedWith(tree).find((one) => one === key || one.startsWith(`${key}.`) || key.startsWith(`${one}.`)); // prettier-ignore
    if (trusted === undefined) return;
    const message = `\`${key}\` is listed as unanswered, and yet the controller or the operator is trusted with \`${trusted}\` (${stated(resolving, trusted)}).`;
    fail(
      "dialect/unanswered",
      path,
      message,
      `State a wait or a dwell, or take \`${key}\` out of \`unanswered\`.`,
    );
  });
}

/** Confirmations that are neither a wait nor a dwell. */
function trustedWith(tree: TreeNode): string[] {
  const group = nodeAt(tree, "confirm");
  if (group?.kind !== "mapping") return [];
  return [...group.entries].flatMap(([name, node]) =>
    node.kind === "scalar" || nodeAt(node, "intrinsic") !== undefined ? [`confirm.${name}`] : [],
  );
}

/** What is noted of each key when a file is checked. */
export function unansweredNotes({ merged, links }: Chain): Finding[] {
  const files = links.map(({ file }) => file);
  return unansweredKeys(merged).map((key, index) => ({
    rule: "dialect/unanswered",
    severity: "note",
    message: `Nobody who knows the machine has said yet that \`${key}\` is true of it.`,
    key,
    place: placeOf(merged, `unanswered.${String(index + 1)}`, files),
    fix: `State it as it is at the machine, and take it out of \`unanswered\`.`,
  }));
}
