import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import type { Format } from "#dialect";
import type { ReadyDialect } from "../../core/index.ts";
import { memorySource, postText, prove } from "../../core/index.ts";
import { dialectName, examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import type { Form, HarmlessClass } from "./mutate.ts";
import { mutants } from "./mutate.ts";

/** How many mutants all goldens shall give at least; more are tried with TAPEWRIGHT_MUTANTS=80000 or any other number. */
const wanted = Number(process.env["TAPEWRIGHT_MUTANTS"] ?? 6_000);

/** Blocks at the head and at the end of a program, of which four times as many mutants are tried as of the rest. */
const edge = 75;

/**
 * Every golden program with one thing wrong at a time. `prove --against` must find each mutant, but those in block numbers,
 * in comment text and in zero or code padding.
 *
 * @param part each part tries its own mutants of every golden, so that parts can run side by side
 */
export function tryMutants(part: number, parts: number): void {
  const tried = { mutants: 0, found: 0 };
  const harmless = new Map<HarmlessClass, number>();
  const goldens = examples.flatMap(({ name, job, dialects }) =>
    dialects.map((dialect) => ({ name, job, dialect, short: dialectName(dialect) })),
  );

  describe.each(goldens)("$name under $short", ({ job, dialect }) => {
    it("no mutant is missed", async () => {
      const made = await ready(dialect);
      const { program } = postText({ job }, made);
      if (program === undefined) return;
      const missed: string[] = [];
      for (const mutant of chosen(program, formOf(made.dialect.format), goldens.length, part, parts)) {
        const verdict = verdictOf(mutant.text(), job, made);
        tried.mutants++;
        if (verdict !== "proved") tried.found++;
        else if (mutant.harmless) harmless.set(mutant.harmless, (harmless.get(mutant.harmless) ?? 0) + 1);
        else missed.push(`${mutant.kind}: ${mutant.before} -> ${mutant.after}`);
      }
      expect(missed, dialectName(dialect)).toEqual([]);
    }, 7_200_000);
  });

  it(`are ${String(Math.ceil(wanted / parts))} at least`, () => {
    const passed = JSON.stringify(Object.fromEntries(harmless));
    console.info(`${String(tried.mutants)} mutants, ${String(tried.found)} found, harmless: ${passed}`);
    expect(tried.mutants).toBeGreaterThanOrEqual(wanted / parts);
  });
}

/** The mutants of one golden that a part tries, evenly over the program, its head and end four times as densely. */
function* chosen(program: string, form: Form, goldens: number, part: number, parts: number) {
  const last = program.split(form.lineEnd).length - edge;
  const isEdge = (block: number): boolean => block < edge || block > last;
  let weight = 0;
  for (const { block } of mutants(program, form)) weight += isEdge(block) ? 4 : 1;
  // Refused jobs give no program, and short programs have fewer mutants than their share.
  const share = (2.5 * wanted) / goldens / weight;
  let due = 0;
  let turn = 0;
  for (const mutant of mutants(program, form)) {
    due += share * (isEdge(mutant.block) ? 4 : 1);
    if (due < 1) continue;
    due = Math.min(due - 1, 1);
    if (turn++ % parts === part) yield mutant;
  }
}

function formOf({ lineEnd, separator, comments, idioms }: Format): Form {
  const first = idioms.message?.blocks[0]?.[0];
  const mark =
    first !== undefined && "literal" in first ? first.literal.replace(/^[(;]/, "").trim() : undefined;
  return { lineEnd, separator, comments: comments.style, message: mark };
}

/** What `prove --against` says; Node's own hash, since it is asked for so often. */
function verdictOf(program: string, job: string, made: ReadyDialect): string {
  const createDigest = () => {
    const hash = createHash("sha256");
    return { update: (chunk: Uint8Array) => void hash.update(chunk), hex: () => hash.digest("hex") };
  };
  const source = (text: string) => memorySource(new TextEncoder().encode(text));
  return prove({
    ...made,
    program: source(program),
    against: { source: source(job), options: {} },
    createDigest,
  }).verdict;
}
