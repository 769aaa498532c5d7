import { readFileSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { ruleChapters, rulesPage } from "#report";

const core = resolve(import.meta.dirname, "../../core");

/** Rule ids start with one of these and no other word. */
const prefixes = "job|dialect|lower|spindle|swap|offset|motion|limit|arc|program|block|read|proof";

const literal = new RegExp(`"((?:${prefixes})/[a-z0-9-]+)"`, "g");

/** A catalogue's own key, and an index into it: they name a function, whose finding names the rule. */
const keyOrIndex = new RegExp(`^ *"(?:${prefixes})/[a-z0-9-]+": |\\["(?:${prefixes})/[a-z0-9-]+"\\]`, "gm");

/** Where the prefix is put in front of a word: rule: `read/${rule}`. The function around it is called with the word. */
const composition = new RegExp(`\`(${prefixes})/\\$\\{`, "g");

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sourceFiles(path);
    return entry.name.endsWith(".ts") && !entry.name.includes(".generated.") ? [path] : [];
  });
}

/** Rule ids that a text gives to findings. */
function rulesIn(text: string): string[] {
  const plain = [...text.replace(keyOrIndex, "").matchAll(literal)].map(([, rule]) => rule);
  const composed = [...text.matchAll(composition)].flatMap(({ 1: prefix, index }) => {
    const name = [...text.slice(0, index).matchAll(/function (\w+)\(|const (\w+) = \(/g)].at(-1);
    const calls = text.matchAll(new RegExp(`\\b${name?.[1] ?? name?.[2]}\\(\\s*"([a-z0-9-]+)"`, "g"));
    return [...calls].map(([, word]) => `${prefix}/${word}`);
  });
  return [...plain, ...composed];
}

/** Every rule id in use, with a file that uses it. The catalogue of texts itself does not count. */
function rulesInUse(): Map<string, string> {
  const files = sourceFiles(core).filter((path) => !path.includes("8-report/rules"));
  return new Map(
    files.flatMap((path) => rulesIn(readFileSync(path, "utf8")).map((rule) => [rule, path] as const)),
  );
}

const listed = ruleChapters.flatMap(({ rules }) => Object.keys(rules));

test("ids are found however a stage writes them", () => {
  expect(rulesIn('report({ rule: "job/json" }); const rule = bad ? "dialect/order" : "lower/arc";')).toEqual([
    "job/json",
    "dialect/order",
    "lower/arc",
  ]);
  expect(
    rulesIn('  "program/start-stop": (detail) =>\n    error("program/start", findings["spindle/key"]())'),
  ).toEqual(["program/start"]);
  const unclear = "function unclear(rule: string): Finding {\n  return { rule: `read/${rule}` };\n}\n";
  expect(rulesIn(`${unclear}unclear(\n    "number", offset)`)).toEqual(["read/number"]);
});

test("every rule that a stage reports is in the list, and every rule in the list is reported", () => {
  const inUse = rulesInUse();
  const unlisted = [...inUse].filter(([rule]) => !listed.includes(rule));
  expect(unlisted).toEqual([]);
  expect(listed.filter((rule) => !inUse.has(rule))).toEqual([]);
});

test("each rule is listed once, under a title, with one sentence", () => {
  expect(new Set(listed).size).toBe(listed.length);
  for (const { rules } of ruleChapters)
    for (const text of Object.values(rules)) expect(text).toMatch(/^[A-Z`].*\.$/);
});

test("the page is as generated", () => {
  expect(readFileSync(join(core, "8-report/rules.md"), "utf8")).toBe(rulesPage());
});
