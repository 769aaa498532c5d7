import { expect, test } from "vitest";
import { keep, questions } from "#interview";
import { partsAt, dialectSchema } from "../../core/2-dialect/schema.ts";

const choices = questions.flatMap(({ id, choices }) =>
  choices.map((choice) => ({ question: id, ...choice })),
);

test("there are at most fifteen questions with the one for the dialect to start from", () => {
  expect(questions.length + 1).toBeLessThanOrEqual(15);
});

test("ids are words for an answers file, each once", () => {
  const ids = questions.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const { id, choices: own } of questions) {
    const words = own.map((choice) => choice.id);
    expect(new Set(words).size).toBe(words.length);
    expect(words).not.toContain(keep);
    for (const word of [id, ...words]) expect(word).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  }
});

test("what a choice sets, and what it clashes with, are keys of the schema", () => {
  const keys = choices.flatMap(({ sets, with: following = {}, clashes, asks = [] }) => [
    ...Object.keys(sets),
    ...Object.keys(following),
    ...(clashes === undefined ? [] : [clashes.key]),
    ...asks.flatMap(({ unless }) => unless ?? []),
  ]);
  for (const key of keys)
    expect({ key, known: partsAt(dialectSchema, key.split(".")).length > 0 }).toEqual({ key, known: true });
});

test("a choice stands on one line of 80 columns, with the mark before it and what is said behind it", () => {
  for (const { id, words, asks } of choices)
    expect({ id, fits: words.length <= (asks === undefined ? 66 : 77) }).toEqual({ id, fits: true });
});

test("each place that a choice leaves open is asked for, and each detail has its place", () => {
  for (const { id, sets, asks = [] } of choices) {
    const places = [...JSON.stringify(sets).matchAll(/"<([a-z]+)>"/g)].map(([, name]) => name);
    expect({ id, places: places.sort() }).toEqual({ id, places: asks.map((one) => one.id).sort() });
  }
});

test("a state is confirmed by a wait or by a time, and trust has a reason that is asked for", () => {
  for (const state of ["at-speed", "stopped"]) {
    const question = questions.find(({ id }) => id === state)!;
    expect(question.choices.map(({ id }) => id)).toEqual(["wait", "dwell", "controller-holds"]);
    expect(question.choices[2].asks?.map(({ id }) => id)).toEqual(["reason"]);
    expect(question.notInherited).toBe(`confirm.${state}.intrinsic`);
  }
});
