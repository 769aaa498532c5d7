import { existsSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { expect, test } from "vitest";
import type { ExplainedBlock, ShapedWord } from "#report";
import { dialectLoader } from "../support/dialects.ts";
import { dialectName, examples, shippedDialects } from "../support/examples.ts";
import { seeded } from "../support/seeded.ts";
import { ask, askable } from "./asking.ts";

/*
 * What `why` names is what decides: another value of a key that is named for a word changes the word or its block, or the dialect
 * or the job is refused for it. Changed dialects are compiled anew, so the sample is of the two small examples.
 */

const goldens = resolve(import.meta.dirname, "../goldens");
const cases = examples
  .filter(({ name }) => name !== "weather-plate")
  .flatMap(({ name, job, dialects }) =>
    dialects
      .filter((dialect) => existsSync(join(goldens, `${name}.${dialectName(dialect)}.program.txt`)))
      .map((dialect) => ({ name, job, dialect })),
  );
type Case = (typeof cases)[number];

/** A word, its block, and a key of it with the values that it could have instead. */
interface Sample {
  readonly example: Case;
  readonly block: ExplainedBlock;
  /** All blocks of its program. */
  readonly among: readonly ExplainedBlock[];
  readonly word: ShapedWord;
  readonly key: string;
  readonly values: readonly string[];
}

/** How many words are tried; TAPEWRIGHT_WHY_WORDS sets the number. */
const words = Number(process.env["TAPEWRIGHT_WHY_WORDS"] ?? 200);

const every = Array.from({ length: 4000 }, (_, index) => index + 1);

async function explained({ job, dialect }: Case, key?: string, value?: string) {
  const own = key === undefined ? undefined : variant(dialect, key, value!);
  const made = await askable(own?.name ?? dialect, dialectLoader(own && { [own.name]: own.text }));
  return made && ask(made, job, { lines: every }).answer?.blocks;
}

/** A dialect that extends another and says one key otherwise: "a.b", "v" -> `a: { b: v }`. */
function variant(dialect: string, key: string, value: string): { name: string; text: string } {
  const steps = key.split(".");
  const nested = steps.reduceRight((inner, step) => `{ ${step}: ${inner} }`, value);
  const isShipped = shippedDialects.includes(dialect);
  const base = isShipped ? dialect : `${dialectName(dialect)}.dialect.yaml`;
  const name = isShipped ? "own.yaml" : join(dirname(dialect), "own.yaml");
  return { name, text: `dialect: own\nextends: ${base}\n${nested.slice(2, -2)}\n` };
}

/** Samples that a seed chooses: a key by turns, then one of the words that it shaped. */
async function chooseSamples(count: number): Promise<Sample[]> {
  const byKey = new Map<string, Sample[]>();
  for (const example of cases) {
    const among = (await explained(example))!;
    for (const block of among)
      for (const word of block.words)
        for (const { key, others: values } of word.keys) {
          if (values.length === 0) continue;
          const list = byKey.get(`${key} ${values.join(" ")}`) ?? [];
          list.push({ example, block, among, word, key, values });
          byKey.set(`${key} ${values.join(" ")}`, list);
        }
  }
  const random = seeded(20);
  const lists = [...byKey.values()];
  return Array.from({ length: count }, (_, turn) => {
    const list = lists[turn % lists.length];
    return list[Math.floor(random() * list.length)];
  });
}

/** The text of a block without its number, which changes with what stands before. */
function bare({ text }: ExplainedBlock, key: string): string {
  return key.startsWith("blocks.number") ? text : text.replace(/^[N:]\d+\s*/, "");
}

/** How often the block, known by its place in the job and by what it says, stands in a program as it was. */
function timesIn(blocks: readonly ExplainedBlock[], { block, key }: Sample): number {
  return blocks.filter(
    (other) =>
      other.part === block.part &&
      other.source === block.source &&
      JSON.stringify(other.steps.map(({ text }) => text)) ===
        JSON.stringify(block.steps.map(({ text }) => text)) &&
      bare(other, key) === bare(block, key),
  ).length;
}

test("some other value of a key that is named changes the word or its block, or is refused", async () => {
  const samples = await chooseSamples(words);
  const known = new Map<string, Awaited<ReturnType<typeof explained>>>();
  const tally = { changed: 0, refused: 0 };
  const unchanged: string[] = [];
  for (const sample of samples) {
    const { example, key, values, word, block } = sample;
    const found = { refused: false, changed: false };
    for (const value of values) {
      const name = `${example.name} ${example.dialect} ${key} ${value}`;
      if (!known.has(name)) known.set(name, await explained(example, key, value));
      const blocks = known.get(name);
      if (blocks === undefined) found.refused = true;
      else if (timesIn(blocks, sample) < timesIn(sample.among, sample)) found.changed = true;
      if (found.changed) break;
    }
    if (found.changed) tally.changed++;
    else if (found.refused) tally.refused++;
    else unchanged.push(`${example.name} ${example.dialect} ${key}: ${word.text} of ${block.text}`);
  }
  expect(unchanged).toEqual([]);
  // Most are changes that could be looked at; a sample that is refused all through would show nothing.
  expect(tally.changed).toBeGreaterThan(0.8 * words);
  console.log(
    `${tally.changed} of ${samples.length} words change, ${tally.refused} are refused under another value`,
  );
}, 600_000);
