import type { Chain } from "./chain.ts";
import { dialectSchema, formsAt, partsAt, wordsAmong } from "./schema.ts";
import { inline } from "./show.ts";
import { meaningText } from "./meaning-text.ts";
import type { PlainValue, TreeNode } from "./tree.ts";
import { nodeAt, treeOf } from "./tree.ts";

/** A key of a dialect: its value, where that stands, and what else it could be. */
export interface KeyFacts {
  /** "modal.motion" */
  readonly key: string;
  /** As YAML has it on one line; undefined where no file of the chain states it. */
  readonly value: string | undefined;
  /** Empty where no file states it. */
  readonly file: string;
  /** Counted from 1; 0 where no file states it. */
  readonly line: number;
  /** Its other values, where the schema lists them. */
  readonly others: readonly string[];
}

/** What can be asked about the keys of one dialect. */
export interface KeyBook {
  /** A key by its path; a group that is `none` gives that for each key in it. */
  readonly describe: (key: string) => KeyFacts;
  /** Whether the dialect states such a key or group, or the schema knows it. */
  readonly knows: (key: string) => boolean;
  /** Whether the dialect states this value, however either is written: G0 is G00. */
  readonly says: (key: string, value: PlainValue) => boolean;
}

/** Opens the keys of a chain. */
export function keyBookOf({ links, merged }: Chain): KeyBook {
  const describe = (key: string): KeyFacts => {
    const node = nodeAt(merged, key);
    if (node === undefined) return { key, value: undefined, file: "", line: 0, others: othersOf(key, node) };
    const { file, line } = node.origin;
    return { key, value: inline(node), file: links[file].file, line, others: othersOf(key, node) };
  };
  const knows = (key: string): boolean =>
    nodeAt(merged, key) !== undefined || partsAt(dialectSchema, key.split(".")).length > 0;
  const says = (key: string, value: PlainValue): boolean => {
    const node = nodeAt(merged, key);
    return node !== undefined && meaningText(node) === meaningText(treeOf(value));
  };
  return { describe, knows, says };
}

function othersOf(key: string, node: TreeNode | undefined): string[] {
  const own = node?.kind === "scalar" ? String(node.value) : undefined;
  return wordsAmong(formsAt(dialectSchema, key.split("."))).filter((value) => value !== own);
}
