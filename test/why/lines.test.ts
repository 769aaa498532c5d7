import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import type { ExplainedBlock } from "#report";
import { dialectLoader } from "../support/dialects.ts";
import { dialectName, examples } from "../support/examples.ts";
import { seeded } from "../support/seeded.ts";
import { ask, askable } from "./asking.ts";

const goldens = resolve(import.meta.dirname, "../goldens");
const cases = examples.flatMap(({ name, job, dialects }) =>
  dialects.flatMap((dialect) => {
    const file = join(goldens, `${name}.${dialectName(dialect)}.program.txt`);
    return existsSync(file) ? [{ title: `${name} under ${dialectName(dialect)}`, job, dialect, file }] : [];
  }),
);

const mostLines = 3000;

/** All lines of a program, or so many of them that a seed chooses. */
function chosenLines(count: number): number[] {
  const all = Array.from({ length: count }, (_, index) => index + 1);
  if (count <= mostLines) return all;
  const random = seeded(1);
  return all.filter(() => random() < mostLines / count);
}

test("there are goldens to ask about", () => {
  expect(cases.length).toBeGreaterThan(15);
});

describe.each(cases)("$title", ({ job, dialect, file }) => {
  const program = readFileSync(file, "utf8").split(/\r?\n/);
  if (program.at(-1) === "") program.pop();

  test("each line has its text, a key for each word, and a place in the job or at start or end", async () => {
    const made = (await askable(dialect, dialectLoader()))!;
    const lines = chosenLines(program.length);
    const { answer, outcome } = ask(made, job, { lines });
    expect(outcome.verdict).toBe("proved");
    expect(answer?.lines).toBe(program.length);
    expect(answer?.blocks.map(({ line }) => line)).toEqual(lines);
    for (const block of answer!.blocks) {
      expect(block.text).toBe(program[block.line - 1]);
      expect([block.text, block.words.filter(({ keys }) => keys.length === 0)]).toEqual([block.text, []]);
      expect([block.text, unstated(block)]).toEqual([block.text, []]);
      expect([block.text, hasPlace(block)]).toEqual([block.text, true]);
    }
    expect(new Set(answer!.blocks.map(({ part }) => part)).size).toBe(3);
    expect(answer!.blocks.flatMap(otherThanSaid)).toEqual([]);
    expect(stepNumbers(answer!.blocks)).toEqual(
      Array.from({ length: outcome.summary.steps! }, (_, index) => index + 1),
    );
    // One line alone has the same answer as among the others.
    for (const line of [1, 2, Math.ceil(lines.length / 2), program.length]) {
      const alone = ask(made, job, { lines: [line] }).answer?.blocks;
      expect(alone).toEqual(answer!.blocks.filter((block) => block.line === line));
    }
  });
});

/** Keys that no file of the dialect states, for which there is nothing to show. */
function unstated({ words }: ExplainedBlock): string[] {
  return words.flatMap(({ keys }) => keys.filter(({ line }) => line === 0).map(({ key }) => key));
}

function hasPlace({ part, source, operation }: ExplainedBlock): boolean {
  return part === "operation" ? source !== undefined && operation !== undefined : true;
}

/** What a block says that has a word of one of these keys. */
const meanings: Readonly<Record<string, RegExp>> = {
  "motion.rapid": /^rapid to /,
  "motion.line": /^line to /,
  "arc.cw": /^arc /,
  "arc.ccw": /^arc /,
  "plane.xy": /^plane XY$/,
  "spindle.stop": /^spindle stop$/,
  "spindle.speed": /^spindle speed /,
  "dwell.code": /^dwell /,
  "stops.end": /^program end$/,
};

/** Blocks whose steps are not what their words mean. */
function otherThanSaid({ text, words, steps }: ExplainedBlock): string[] {
  const wanted = words.flatMap(({ keys }) =>
    keys.flatMap(({ key }) => (Object.hasOwn(meanings, key) ? [meanings[key]] : [])),
  );
  return wanted
    .filter((meaning) => !steps.some((said) => meaning.test(said.text)))
    .map((meaning) => `${text} ${meaning.source}`);
}

/** The numbers of all steps; a block that repeats a cycle counts those that it does not list. */
function stepNumbers(blocks: readonly ExplainedBlock[]): number[] {
  return blocks.flatMap(({ steps, moreSteps }) => [
    ...steps.map(({ step }) => step),
    ...Array.from({ length: moreSteps }, (_, index) => steps.at(-1)!.step + index + 1),
  ]);
}
