import { memorySource } from "#base";
import type { KeyDifference } from "#dialect";
import { compareDialects } from "#dialect";
import type { CompareOutcome, Item, TracedDialect } from "../../core/compare/index.ts";
import { compare } from "../../core/compare/index.ts";
import { createSha256 } from "../../core/sha256.ts";
import { dialectLoader } from "../support/dialects.ts";
import type { Askable } from "../why/asking.ts";
import { askable } from "../why/asking.ts";

/** Dialects by name or path, texts of files that stand in the test alone, and a job. */
export interface Comparing {
  readonly names: readonly string[];
  readonly job: string;
  readonly texts?: Readonly<Record<string, string>>;
  readonly seen?: (item: Item) => void;
}

/** Compares a job under dialects; undefined where one of them cannot be had. */
export async function comparing({
  names,
  job,
  texts = {},
  seen,
}: Comparing): Promise<CompareOutcome | undefined> {
  const loader = dialectLoader(texts);
  const dialects: TracedDialect[] = [];
  for (const name of names) {
    const made = await (Object.hasOwn(texts, name) ? askable(name, loader) : known(name));
    if (made === undefined) return undefined;
    dialects.push({ ...made, createDigest: createSha256 });
  }
  const differences = new Map<string, KeyDifference[]>();
  for (let i = 0; i < names.length; i++)
    for (let j = i + 1; j < names.length; j++)
      differences.set(
        `${i} ${j}`,
        (await compareDialects([names[i], names[j]], [loader, loader], () => undefined)) ?? [],
      );
  return compare({
    job: { source: memorySource(new TextEncoder().encode(job)), options: {} },
    dialects,
    differences: (first, second) => differences.get(`${first} ${second}`) ?? [],
    ...(seen === undefined ? {} : { seen }),
  });
}

const made = new Map<string, Promise<Askable | undefined>>();

/** A dialect of the tree; each is read and compiled once. */
function known(name: string): Promise<Askable | undefined> {
  const found = made.get(name) ?? askable(name, dialectLoader());
  made.set(name, found);
  return found;
}
