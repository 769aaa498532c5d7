import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { validateDialect } from "../../core/2-dialect/dialect-validator.generated.ts";
import { validateSetup } from "../../core/2-dialect/setup-validator.generated.ts";
import type { SchemaPart } from "../../core/2-dialect/schema.ts";
import { dialectSchema, formsOf, setupSchema } from "../../core/2-dialect/schema.ts";
import { dialectsReadmePage, splitDescription } from "../../core/build/generate/dialects-readme.ts";
import { resolveText } from "./findings.ts";

const root = resolve(import.meta.dirname, "../..");

interface Key {
  /** Steps from the root; `*` stands for an item of a list. */
  readonly steps: readonly string[];
  readonly part: SchemaPart;
}

/** Names for keys that a file chooses itself. */
const chosen: Readonly<Record<string, string>> = {
  codes: "M27",
  outputs: "extraction",
  "work-zero": "3",
  workOffsets: "3",
  lengths: "7",
};

/** Every key of a schema, groups and items of lists that are mappings included. */
function keysOf(schema: SchemaPart, part: SchemaPart = schema, steps: readonly string[] = []): Key[] {
  const below = formsOf(schema, part).flatMap((form) => [
    ...Object.entries(form.properties ?? {}),
    ...Object.values(form.patternProperties ?? {}).map(
      (inner) => [chosen[steps.at(-1) ?? ""] ?? "?", inner] as const,
    ),
    ...(form.items?.properties === undefined ? [] : [["*", form.items] as const]),
  ]);
  return below.flatMap(([name, inner]) => {
    const path = [...steps, name];
    return [{ steps: path, part: inner }, ...keysOf(schema, inner, path)];
  });
}

/** {a: {b: value}} from ["a", "b"]; `*` makes a list of one. */
function nest(steps: readonly string[], value: unknown): unknown {
  return steps.reduceRight<unknown>((inner, step) => (step === "*" ? [inner] : { [step]: inner }), value);
}

const keys = keysOf(dialectSchema).map((key) => ({ ...key, name: key.steps.join(".") }));
const setupKeys = keysOf(setupSchema).map((key) => ({ ...key, name: key.steps.join(".") }));
const isGroup = ({ part }: Key): boolean =>
  formsOf(dialectSchema, part).some((form) => form.type === "object");

describe("the schema of dialects explains each key", () => {
  test("there are keys", () => {
    expect(keys.length).toBeGreaterThan(250);
  });

  test.each(keys)("$name", (key) => {
    const part = explained(key.part);
    const { meaning, unit, wrong } = splitDescription(part.description ?? "");
    expect(part.title?.length).toBeGreaterThan(2);
    expect(meaning).toMatch(/^\S.{8,}\.$|^\S.{8,}$/s);
    expect(part.examples?.length).toBeGreaterThan(0);
    if (isGroup(key)) return;
    expect(wrong).toMatch(/^\S.{8,}\.$/);
    if (measures(part)) expect(unit.length).toBeGreaterThan(0);
  });
});

/** How one number differs from the rest is explained where it is defined. */
function explained(part: SchemaPart): SchemaPart {
  return part.title === undefined ? dialectSchema.$defs![part.$ref!.slice("#/$defs/".length)] : part;
}

/** Whether the value is a number, a length, a time or a feed. */
function measures(part: SchemaPart): boolean {
  const definition = part.$ref?.slice("#/$defs/".length) ?? "";
  const quantity = ["length", "lengthOrNone", "time", "feed", "acceleration", "point", "place"].includes(
    definition,
  );
  return quantity || formsOf(dialectSchema, part).some(({ type }) => type === "integer" || type === "number");
}

describe("the schema takes what it shows", () => {
  test.each(keys)("the examples of $name", ({ steps, part }) => {
    for (const example of part.examples ?? []) {
      const value =
        steps[0] === "dialect"
          ? { dialect: example }
          : { dialect: "own", ...(nest(steps, example) as object) };
      const errors = validateDialect(value).filter(({ keyword }) => keyword !== "required");
      // An item that is only shown in part lacks its other keys, which is not the example's fault.
      expect(steps.includes("*") ? errors.filter(({ keyword }) => keyword !== "anyOf") : errors).toEqual([]);
    }
  });

  test("every enumerated word", () => {
    const words = keys.flatMap((key) => wordsOf(key.part).map((word) => ({ ...key, word })));
    expect(words.length).toBeGreaterThan(150);
    for (const { name, steps, word } of words) {
      const all = validateDialect({ dialect: "own", ...(nest(steps, word) as object) });
      // An item of a list that is shown in part lacks its other keys.
      const errors = steps.includes("*") ? all.filter(({ keyword }) => keyword !== "required") : all;
      expect({ name, word, errors }).toEqual({ name, word, errors: [] });
    }
  });

  test.each(setupKeys)("the examples of the set-up's $name", ({ steps, part }) => {
    for (const example of part.examples ?? []) expect(validateSetup(nest(steps, example))).toEqual([]);
  });
});

function wordsOf(part: SchemaPart): readonly string[] {
  return formsOf(dialectSchema, part).flatMap(({ enum: words = [], const: one }) =>
    one === undefined ? words : [one],
  );
}

test("a mapping in the place of a single value is refused", () => {
  for (const { name, steps } of keys.filter((key) => !isGroup(key) && !key.steps.includes("*"))) {
    const errors = validateDialect({ dialect: "own", ...(nest(steps, { odd: 1 }) as object) });
    expect({ name, refused: errors.length > 0 }).toEqual({ name, refused: true });
  }
});

describe("findings of the schema", () => {
  test.each([
    ["extnds: rs274ngc", "extnds", "Did you mean `extends`?"],
    ["spindle: { ordr: start-first }", "spindle.ordr", "Did you mean `order`?"],
    [
      "spindle: { order: start-frist }",
      "spindle.order",
      "speed-first or start-first. Did you mean `start-first`?",
    ],
    ["motion: { rapid: G }", "motion.rapid", "is `G`; it can be a code such as G54 or M6, or none."],
    ["machine: { rack: { pockets: [[1, 2, 3]] } }", "machine.rack.pockets.1", "a list of two lengths"],
    ["machine: { keep-out: [{ name: vise, min: [0, 0, 0] }] }", "machine.keep-out.1", "must state `max`"],
    ["cycles: nono", "cycles", "Did you mean `none`?"],
    ["confirm: { stopped: { wait: stoped } }", "confirm.stopped.wait", "Did you mean `stopped`?"],
    ["file: { last-line-end: true }", "file.last-line-end", "it can be yes or no"],
    ["machine: { spindle: { spin-up: 6 } }", "machine.spindle.spin-up", "a time such as 6 s"],
    ["numbers: { speed: { decimals: 9 } }", "numbers.speed.decimals", "a whole number from 0 to 7"],
    ["spindle:", "spindle", "it can be a mapping"],
  ])("%s", async (line, key, message) => {
    const { findings, lines } = await resolveText(
      `dialect: own\nextends: rs274ngc\n${line}\n`.replace("extends: rs274ngc\nextnds", "extnds"),
    );
    expect(lines).toEqual([`dialect/schema ${key} @ own.yaml:${line.startsWith("extnds") ? 2 : 3}`]);
    expect(findings[0]?.message).toContain(message);
  });

  test("all of them are gathered, in the order of the file", async () => {
    const { lines } = await resolveText(
      "dialect: own\nmotion: { rapid: 1 }\nfile:\n  a: 1\n  b: 2\nspindle: 5\n",
    );
    expect(lines).toEqual([
      "dialect/schema motion.rapid @ own.yaml:2",
      "dialect/schema file.a @ own.yaml:4",
      "dialect/schema file.b @ own.yaml:5",
      "dialect/schema spindle @ own.yaml:6",
    ]);
  });

  test("a file must say its name", async () => {
    expect((await resolveText("extends: rs274ngc\n")).findings[0]?.message).toBe(
      "The file must state `dialect`.",
    );
  });
});

test("the page on dialect files is that of the schema", async () => {
  expect(await dialectsReadmePage().make(root)).toBe(readFileSync(join(root, "dialects/README.md"), "utf8"));
});

test("the page has a row for each key, or for one of the same form", async () => {
  const page = await dialectsReadmePage().make(root);
  const hasRow = (path: string, text = ""): boolean => page.includes(`| \`${path}\` | ${text}`);
  // How one number differs from the rest is said once; keys that a file chooses have a placeholder.
  const rows = keys.filter(({ part, steps }) => part.$ref?.includes("own-") !== true && !steps.includes("*"));
  for (const { name } of rows) {
    const path = name
      .replace("codes.M27", "codes.CODE")
      .replace("outputs.extraction", "outputs.NAME")
      .replace("work-zero.3", "work-zero.NUMBER");
    const folded = new RegExp(`\\| \`${path.slice(0, path.lastIndexOf("."))}\` \\| [^|]*the keys of`).test(
      page,
    );
    expect(hasRow(path) || folded, path).toBe(true);
  }
});
