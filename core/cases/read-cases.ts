import type { Report } from "#base";
import { nearest } from "#base";
import type { TreeNode } from "#dialect";
import type { Case, PlacedText } from "./case.ts";

/** Keys of a case. */
const caseKeys = ["name", "units", "given", "expect"] as const;

/**
 * Reads the list under `cases` of a dialect file or of a file of cases.
 *
 * @param file the name of the file, for findings
 * @returns undefined after a finding, rule dialect/case
 */
export function readCases(list: TreeNode, file: string, report: Report): Case[] | undefined {
  const found = { faults: 0 };
  const fail: Fail = (node, message, fix) => {
    found.faults++;
    const place = { source: "dialect", file, offset: node.origin.offset } as const;
    report({
      rule: "dialect/case",
      severity: "error",
      message,
      place,
      ...(fix === undefined ? {} : { fix }),
    });
  };
  if (list.kind !== "list" || list.items.length === 0)
    return (fail(list, "`cases` is a list of at least one case.", example), undefined);
  const cases = list.items.flatMap((node, index) => readCase(node, index, fail) ?? []);
  refuseTwice(cases, list.items, fail);
  return found.faults === 0 ? cases : undefined;
}

/** The list of cases of a file that has nothing else in it. */
export function casesOf(tree: TreeNode, file: string, report: Report): TreeNode | undefined {
  const list = tree.kind === "mapping" ? tree.entries.get("cases") : undefined;
  if (list !== undefined && tree.kind === "mapping" && tree.entries.size === 1) return list;
  const message = "A file of cases has one key, `cases`.";
  const place = { source: "dialect", file, offset: tree.origin.offset } as const;
  report({ rule: "dialect/case", severity: "error", message, place, fix: example });
  return undefined;
}

const example = "For instance `cases: [{ given: [rapid x10 y5], expect: [G00 X10. Y5.] }]`.";

type Fail = (node: TreeNode, message: string, fix?: string) => void;

function readCase(node: TreeNode, index: number, fail: Fail): Case | undefined {
  if (node.kind !== "mapping")
    return (fail(node, "A case is a mapping with `given` and `expect`.", example), undefined);
  for (const [key, inner] of node.entries) {
    if ((caseKeys as readonly string[]).includes(key)) continue;
    const near = nearest(key, caseKeys);
    const meant = near === undefined ? "" : ` Did you mean \`${near}\`?`;
    fail(inner, `A case has no key \`${key}\`.${meant}`, `Its keys are ${caseKeys.join(", ")}.`);
  }
  const given = texts(node, "given", fail);
  const expected = texts(node, "expect", fail);
  const units = wordOf(node.entries.get("units"));
  if (units !== undefined && units !== "mm" && units !== "inch")
    fail(node.entries.get("units") ?? node, `\`units\` is \`${units}\`; it can be mm or inch.`);
  if (given === undefined || expected === undefined) return undefined;
  if (given.length === 0) fail(node.entries.get("given") ?? node, "A case gives at least one step.", example);
  return {
    name: wordOf(node.entries.get("name")) ?? `case ${String(index + 1)}`,
    units: units === "inch" ? "inch" : "mm",
    given,
    expect: expected,
    offset: node.origin.offset,
    expectOffset: node.entries.get("expect")?.origin.offset ?? node.origin.offset,
  };
}

function wordOf(node: TreeNode | undefined): string | undefined {
  return node?.kind === "scalar" ? String(node.value) : undefined;
}

function texts(
  node: Extract<TreeNode, { kind: "mapping" }>,
  key: "given" | "expect",
  fail: Fail,
): PlacedText[] | undefined {
  const list = node.entries.get(key);
  if (list?.kind !== "list")
    return (fail(list ?? node, `A case has \`${key}\`, a list of texts.`, example), undefined);
  return list.items.flatMap((item) => {
    if (item.kind !== "scalar" || item.value === null) {
      fail(
        item,
        `What stands under \`${key}\` is a text.`,
        "Put it in quotes where it has a `: `, `{` or `#` in it.",
      );
      return [];
    }
    // A text in quotes begins behind its quote; escapes inside would shift places, and the notation has no use for them.
    const isQuoted = typeof item.value === "string" && item.quoted === true;
    return [{ text: String(item.value), offset: item.origin.offset + (isQuoted ? 1 : 0) }];
  });
}

function refuseTwice(cases: readonly Case[], nodes: readonly TreeNode[], fail: Fail): void {
  cases.forEach(({ name }, index) => {
    if (cases.findIndex((one) => one.name === name) < index)
      fail(nodes[index], `Two cases are called \`${name}\`.`, "Give each a name of its own.");
  });
}
