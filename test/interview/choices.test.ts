import { parse } from "yaml";
import { describe, expect, test } from "vitest";
import type { Answer, Archetype } from "#interview";
import { answeredKeys, clashOf, questions, sampleBlocks } from "#interview";
import { shippedDialects } from "../support/examples.ts";
import { seeded } from "../support/seeded.ts";
import type { Drafted } from "./drafting.ts";
import { answerOf, archetypeOf, choiceOf, draft, neededAnswers, samplesOf, textOf } from "./drafting.ts";

const archetypes = new Map<string, Archetype>();
for (const name of shippedDialects) archetypes.set(name, await archetypeOf(name));

/** What cannot be answered where, each with its reason in the list of questions. */
const clashing: readonly string[] = [
  "din-66025 frame percent-m30",
  "din-66025 frame percent-m2",
  "hand-zeroed comments none",
  "hand-zeroed spindle start-first",
  "staged-tools motion each-block",
  "staged-tools at-speed dwell",
  "staged-tools stopped dwell",
];

const walked = [...archetypes].flatMap(([name, archetype]) =>
  questions.flatMap((question) =>
    question.choices.map((choice) => ({
      title: `${name} ${question.id} ${choice.id}`,
      archetype,
      answers: new Map(neededAnswers(archetype)).set(question.id, answerOf(choice)),
      question,
      choice,
    })),
  ),
);

/** The file's own keys with their values, as YAML reads them. */
function leaves(value: unknown, path = ""): [string, unknown][] {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return [[path, value]];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, path === "" ? key : `${path}.${key}`));
}

/** What is wrong with a file as it is written: nothing is. */
function faultsOf(drafted: Drafted, answers: ReadonlyMap<string, Answer>, archetype: Archetype): string[] {
  const { text, findings, studied } = drafted;
  const faults = findings
    .filter(({ severity, rule }) => severity !== "note" || rule === "dialect/same")
    .map(({ rule, key, message }) => `${rule} ${key ?? ""} ${message}`);
  if (studied === undefined) return [...faults, "refused"];
  const stated = answeredKeys(answers, archetype);
  // What the file says is what was answered, and nothing that the archetype says already.
  const parsed: unknown = parse(text, { version: "1.2" });
  const own = leaves(parsed).filter(([key]) => !/^(dialect|title|extends)$/.test(key));
  const expected = stated.flatMap(({ key, value }) => leaves(value, key));
  if (JSON.stringify(own.sort()) !== JSON.stringify(expected.sort())) faults.push(`states ${own.join("; ")}`);
  for (const { key, value } of stated)
    if (archetype.keys.says(key, value)) faults.push(`${key} is inherited`);
  return faults;
}

describe("each choice of each question gives a file that checks clean, states what differs alone, and has its sample", () => {
  test.each(walked)("$title", async ({ title, archetype, answers, question, choice }) => {
    const before = new Map(answers);
    before.delete(question.id);
    if (clashing.includes(title)) {
      expect(clashOf(choice, archetype, before)).toMatch(/\S/);
      return;
    }
    expect(clashOf(choice, archetype, before)).toBeUndefined();
    const drafted = await draft(answers, archetype);
    expect(faultsOf(drafted, answers, archetype)).toEqual([]);
    for (const [id, blocks] of Object.entries(await samplesOf(drafted)))
      expect({ id, blocks: blocks.length }).toEqual({ id, blocks: id === "frame" ? 6 : sampleBlocks });
  });
});

test("what clashes does so for a reason: the file would be refused, or could not post the sample", async () => {
  for (const title of clashing) {
    const { archetype, answers } = walked.find((one) => one.title === title)!;
    const works = await samplesOf(await draft(answers, archetype)).then(...settled);
    expect({ title, works }).toEqual({ title, works: false });
  }
});

const settled = [() => true, () => false] as const;

test("a choice that clashes with the archetype can be made where an answer before has changed that", async () => {
  const archetype = archetypes.get("staged-tools")!;
  const [dwell, atSpeed, stopped] = ["dwell", "at-speed", "stopped"].map((id) =>
    questions.find((question) => question.id === id)!,
  );
  const answers = new Map([["dwell", answerOf(choiceOf(dwell, "p-seconds"))]]);
  for (const question of [atSpeed, stopped]) {
    const choice = choiceOf(question, "dwell");
    expect(clashOf(choice, archetype, answers)).toBeUndefined();
    answers.set(question.id, answerOf(choice));
  }
  expect(faultsOf(await draft(answers, archetype), answers, archetype)).toEqual([]);
});

test("answers together give sound files, too, and each posts the sample", { timeout: 240_000 }, async () => {
  const random = seeded(20_261_129);
  const all = [...archetypes.values()];
  for (let trial = 0; trial < 24; trial++) {
    const archetype = all[Math.floor(random() * all.length)];
    const answers = neededAnswers(archetype);
    for (const { id, choices } of questions) {
      const choice = choices[Math.floor(random() * choices.length)];
      if (random() < 0.6 && clashOf(choice, archetype, answers) === undefined)
        answers.set(id, answerOf(choice));
    }
    const said = [...answers].map(([id, { choice }]) => `${id}: ${choice.id}`);
    const drafted = await draft(answers, archetype);
    const faults = faultsOf(drafted, answers, archetype);
    expect({ from: archetype.extends, said, faults }).toMatchObject({ faults: [] });
    expect(Object.keys(await samplesOf(drafted))).toHaveLength(questions.length);
  }
});

test("no answer at all gives a file that is its name and what it extends", async () => {
  const { text } = await draft(new Map(), archetypes.get("rs274ngc")!);
  expect(text.split("\n").filter((line) => line !== "" && !line.startsWith("#"))).toEqual([
    "dialect: trial",
    "title: A trial",
    "extends: rs274ngc",
  ]);
});

test("every key stands below a comment with the answer that caused it", async () => {
  for (const { archetype, answers, title } of walked.filter((one) => !clashing.includes(one.title))) {
    const lines = (await textOf(answers, archetype)).split("\n");
    for (const { key, question, answer } of answeredKeys(answers, archetype)) {
      const name = key.slice(key.lastIndexOf(".") + 1);
      const comment = `# ${question.short}: ${answer.choice.words}`;
      const found = lines.some((line, index) => {
        if (!line.trimStart().startsWith(`${name}:`)) return false;
        const indent = /^ */.exec(line)?.[0] ?? "";
        const above = lines.slice(0, index).reverse();
        return above.find((one) => one.startsWith(`${indent}#`)) === indent + comment;
      });
      expect({ title, key, found }).toEqual({ title, key, found: true });
    }
  }
});
