import { dirname, join, resolve } from "node:path";
import { parse, stringify } from "yaml";
import type { DifferenceKey } from "#report";
import { showDialect } from "#dialect";
import { dialectLoader, shippedFolder } from "../support/dialects.ts";
import { shippedDialects } from "../support/examples.ts";

/** A dialect that says some keys as another one does. */
export interface ChangedDialect {
  readonly name: string;
  readonly text: string;
  /** A leaf, or all keys of a dialect in one file, where a key has to be unstated. */
  readonly way: "leaf" | "whole";
}

type Values = readonly { readonly key: string; readonly value: string | undefined }[];

/** The values of keys in one of the dialects that were compared. */
export function valuesIn(keys: readonly DifferenceKey[], side: "first" | "second"): Values {
  return keys.map((key) => ({ key: key.key, value: key[side]?.value }));
}

/** A leaf that gives a dialect other values; what the other does not state cannot be said in a leaf and stays. */
export function leafOf(dialect: string, values: Values): ChangedDialect | undefined {
  const stated = values.filter(({ value }) => value !== undefined);
  if (stated.length === 0) return undefined;
  const isShipped = shippedDialects.includes(dialect);
  const base = isShipped ? dialect : relativeName(dialect);
  const name = isShipped
    ? join(shippedFolder, "changed.dialect.yaml")
    : join(dirname(dialect), "changed.dialect.yaml");
  const tree: Record<string, unknown> = { dialect: "changed", extends: base };
  for (const { key, value } of stated) put(tree, key.split("."), parse(value!));
  return { name, text: stringify(tree), way: "leaf" };
}

/** All that a dialect says, with other values, and without the keys that the other does not state. */
export async function wholeOf(dialect: string, values: Values): Promise<ChangedDialect> {
  const shown = (await showDialect(dialect, dialectLoader(), () => undefined))!;
  const tree = parse(shown) as Record<string, unknown>;
  for (const { key, value } of values) {
    if (value === undefined) remove(tree, key.split("."));
    else put(tree, key.split("."), parse(value));
  }
  return { name: resolve("changed.dialect.yaml"), text: stringify(tree), way: "whole" };
}

function relativeName(path: string): string {
  return path.split("/").at(-1)!;
}

function put(tree: Record<string, unknown>, [first, ...rest]: readonly string[], value: unknown): void {
  if (rest.length === 0) {
    tree[first] = value;
    return;
  }
  const below = tree[first];
  const isGroup = typeof below === "object" && below !== null && !Array.isArray(below);
  if (!isGroup) tree[first] = {};
  put(tree[first] as Record<string, unknown>, rest, value);
}

function remove(tree: Record<string, unknown>, [first, ...rest]: readonly string[]): void {
  const below = tree[first];
  if (rest.length === 0) delete tree[first];
  else if (typeof below === "object" && below !== null) remove(below as Record<string, unknown>, rest);
}
