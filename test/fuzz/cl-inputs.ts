import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { ClOptions } from "#job";
import { clChoices, clDefaults } from "#job";
import { writtenSource } from "./cl-written.ts";
import type { Random } from "./mutate.ts";
import { binary, bytesOf, mutate, oddNumbers, pick, upTo } from "./mutate.ts";

const folder = resolve(import.meta.dirname, "../cl/sources");

const sources = readdirSync(folder).map((name) => readFileSync(join(folder, name), "utf8"));

const words = [
  ...new Set(sources.join(" ").match(/[A-Za-z]{2,}/g) ?? []),
  ...["INSERT G54\n", "PREFUN/64\n", "ROTABL/90\n", "CIRCLE/0,0,0,0,0,1,5\n", "CYCLE/OFF\n", "FINI\n"],
  ..."/,$=();\t\r\n\0".split(""),
  "$$",
  "__proto__",
  "constructor/1",
  ...oddNumbers,
];

/** Statements of the sources, to be put together anew. */
const statements = sources.flatMap((text) => text.split("\n")).map((line) => `${line}\n`);

/** An input for the reader of cutter location source. */
export function clInput(random: Random): Uint8Array {
  const kind = random();
  if (kind < 0.3) return bytesOf(writtenSource(random));
  if (kind < 0.65) return bytesOf(mutate(pick(random, [...sources, writtenSource(random)]), random, words));
  if (kind < 0.85) {
    const count = upTo(random, pick(random, [20, 400]));
    const body = Array.from({ length: count }, () => pick(random, statements)).join("");
    return bytesOf(`UNITS/MM\nLOADTL/1\nSPINDL/9000,CLW\nRAPID\nGOTO/0,0,50\n${body}FINI\n`);
  }
  if (kind < 0.95) return bytesOf(pick(random, words).repeat(upTo(random, 30_000)));
  return binary(random);
}

/** How it is read: mostly by default. */
export function clOptions(random: Random): ClOptions {
  const chosen = Object.entries(clChoices).map(([key, { values }]) => [
    key,
    random() < 0.9 ? values[0] : pick<string>(random, values),
  ]);
  return { ...clDefaults, ...(Object.fromEntries(chosen) as Partial<ClOptions>) };
}
