import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { SchemaPart } from "../../2-dialect/schema.ts";
import { formsOf, valuesInWords } from "../../2-dialect/schema.ts";
import type { Product } from "./product.ts";
import {
  casesText,
  fromPrograms,
  introduction,
  keysIntroduction,
  questionsIntroduction,
  recipesIntroduction,
  whichOne,
} from "./dialects-texts.ts";
import { cell } from "./markdown-cell.ts";
import { questionsTable } from "./questions-table.ts";
import { recipes } from "./recipes.ts";

/** A shipped dialect as the page lists it. */
interface ShippedDialect {
  readonly name: string;
  /** What stands at the head of the file. */
  readonly about: string;
  readonly parent: string | undefined;
}

/** The page on the keys of dialect files, dialects/README.md. */
export function dialectsReadmePage(): Product {
  const schema = "schemas/dialect.schema.json";
  return {
    target: "dialects/README.md",
    needs: [schema],
    make: (root) =>
      dialectsReadme(JSON.parse(readFileSync(join(root, schema), "utf8")) as SchemaPart, shippedIn(root)),
  };
}

/** The shipped dialects: the folder is the list, the root first. */
function shippedIn(root: string): ShippedDialect[] {
  const ending = ".dialect.yaml";
  const files = readdirSync(join(root, "dialects")).filter((name) => name.endsWith(ending));
  const all = files.map((file): ShippedDialect => {
    const text = readFileSync(join(root, "dialects", file), "utf8");
    const value = (key: string): string | undefined => new RegExp(`^${key}: (.*)$`, "m").exec(text)?.[1];
    const head = (/^(?:#.*\n)+/.exec(text)?.[0] ?? "").replace(/^# ?/gm, "").trim().replaceAll("\n", " ");
    return { name: file.slice(0, -ending.length), about: head, parent: value("extends") };
  });
  return [...all.filter((one) => one.parent === undefined), ...all.filter((one) => one.parent !== undefined)];
}

/** Chapters of the page with the top-level keys that they take. A key in none of them fails the build. */
const chapters = [
  { title: "The dialect itself", keys: ["dialect", "title", "extends", "sources", "cases", "unanswered"] },
  { title: "Framing: the file and its marks", keys: ["file"] },
  { title: "Block syntax and comments", keys: ["blocks", "comments"] },
  { title: "Variables and subprograms: what a program from elsewhere may hold", keys: ["variables"] },
  { title: "Numbers", keys: ["numbers"] },
  { title: "Modality: how often a word is said", keys: ["modal"] },
  {
    title: "Units, planes, coordinates and offsets",
    keys: ["units", "distance", "plane", "axes", "work-offset", "machine-move", "reference-return", "cancel"],
  },
  { title: "Motion, arcs, feeds and dwell", keys: ["motion", "arc", "path", "feed", "dwell"] },
  { title: "Spindle and coolant", keys: ["spindle", "coolant"] },
  { title: "Tools, length offsets and compensation", keys: ["tools", "length-offset", "compensation"] },
  { title: "Fixed cycles", keys: ["cycles"] },
  { title: "Stops, start and end", keys: ["stops"] },
  { title: "Accessories: idioms, waits and codes of the builder", keys: ["idioms", "wait", "codes"] },
  { title: "Confirmations: what the program makes sure of", keys: ["confirm"] },
  { title: "The machine", keys: ["machine"] },
] as const;

/** A page that a machinist can read: each key with its values, unit, meaning, an example, and what a wrong value does. */
export function dialectsReadme(schema: SchemaPart, shipped: readonly ShippedDialect[]): string {
  const keys = schema.properties ?? {};
  const missing = Object.keys(keys).filter(
    (key) => !chapters.some((chapter) => (chapter.keys as readonly string[]).includes(key)),
  );
  if (missing.length > 0) throw new Error(`dialects/README.md has no chapter for ${missing.join(", ")}`);
  const contents = chapters.map(({ title }) => `- [${title}](#${anchor(title)})`).join("\n");
  const texts = chapters.map(({ title, keys: own }) => chapterText(schema, title, own));
  return [
    introduction,
    shippedText(shipped),
    recipesText(),
    `## From a program that runs\n\n${fromPrograms}\n`,
    `## What \`dialect new\` asks\n\n${questionsIntroduction}\n\n${questionsTable()}\n`,
    casesText,
    `## All keys\n\n${keysIntroduction}\n\n${contents}\n`,
    ...texts,
  ].join("\n");
}

/** As a page of Markdown names a heading in links. */
function anchor(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^a-z0-9 -]/g, "")
    .replaceAll(" ", "-");
}

function shippedText(shipped: readonly ShippedDialect[]): string {
  const rows = shipped.map(
    ({ name, about, parent }) => `| \`${name}\` | ${cell(about)} | ${parent ?? "-"} |`,
  );
  return `## Which one to start from\n\n${whichOne}\n\n| file | what it is | extends |\n|---|---|---|\n${rows.join("\n")}\n`;
}

function recipesText(): string {
  const rows = recipes.map(
    ({ says, write }) => `| ${cell(says)} | ${write.map((line) => `\`${line}\``).join("<br>")} |`,
  );
  return `## From the controller's manual to the file\n\n${recipesIntroduction}\n\n| the manual says, or the machine does | write |\n|---|---|\n${rows.join("\n")}\n`;
}

const tableHead = "| key | values | what it says | if it is wrong |\n|---|---|---|---|";

function chapterText(schema: SchemaPart, title: string, keys: readonly string[]): string {
  const told = new Map<string, string>();
  const rows = keys.flatMap((key) => {
    const part = schema.properties?.[key];
    return part === undefined ? [] : rowsOf(schema, key, part, told);
  });
  return `### ${title}\n\n${tableHead}\n${rows.join("\n")}\n`;
}

/**
 * A key and, below it, the keys of its mapping. Mappings of the same form are told once: `told` has the first key of each form.
 */
function rowsOf(schema: SchemaPart, path: string, part: SchemaPart, told: Map<string, string>): string[] {
  const forms = formsOf(schema, part);
  const inner = forms.flatMap((form) => [
    ...Object.entries(form.properties ?? {}).map(([key, below]) => [`${path}.${key}`, below] as const),
    ...Object.values(form.patternProperties ?? {}).map(
      (below) => [`${path}.${nameFor(path)}`, below] as const,
    ),
  ]);
  // How one number differs from the rest is said once, with the keys that hold for all numbers.
  const own = inner.filter(([, below]) => below.$ref?.startsWith("#/$defs/own-") !== true);
  const shape = own.map(([key, below]) => [key.slice(path.length), below.description ?? below.$ref]).join();
  const first = told.get(shape);
  if (own.length > 1 && first !== undefined) return [row(schema, path, part, `the keys of \`${first}\``)];
  told.set(shape, path);
  return [
    row(schema, path, part, own.length > 0 ? "" : undefined),
    ...own.flatMap(([key, below]) => rowsOf(schema, key, below, told)),
  ];
}

/** A placeholder for keys that the user names. */
function nameFor(path: string): string {
  return { codes: "CODE", "machine.outputs": "NAME", "machine.work-zero": "NUMBER" }[path] ?? "KEY";
}

/** @param keys what stands for the values of a mapping; undefined for a single value */
function row(schema: SchemaPart, path: string, part: SchemaPart, keys: string | undefined): string {
  const { meaning, unit, wrong } = splitDescription(part.description ?? "");
  // The example stands behind the meaning.
  const own = valuesInWords(schema, part.$ref === undefined ? withoutExamples(part) : part);
  const values =
    keys === undefined ? own : [groupValues(schema, part), keys].filter((text) => text !== "").join(" ");
  const inUnit = unit === "" || keys !== undefined ? "" : ` (${unit})`;
  const [example] = part.examples ?? [];
  const shown =
    example === undefined || keys !== undefined
      ? ""
      : ` For instance \`${lastKey(path)}: ${flow(example)}\`.`;
  return `| ${[`\`${path}\``, values + inUnit, meaning + shown, wrong].map(cell).join(" | ")} |`;
}

function lastKey(path: string): string {
  return path.slice(path.lastIndexOf(".") + 1);
}

function withoutExamples({ examples: _examples, ...part }: SchemaPart): SchemaPart {
  return part;
}

/** Of a group only what it can be beside a mapping. */
function groupValues(schema: SchemaPart, part: SchemaPart): string {
  const others = (part.anyOf ?? []).filter((branch) =>
    formsOf(schema, branch).every(({ type }) => type !== "object"),
  );
  return others.map((branch) => `${valuesInWords(schema, branch)}, or:`).join(" ");
}

/** A description is the meaning, "Unit: ..." and "If wrong: ...", parted by blank lines. */
export function splitDescription(description: string): { meaning: string; unit: string; wrong: string } {
  const parts = description.split("\n\n");
  const after = (mark: string): string =>
    parts.find((part) => part.startsWith(mark))?.slice(mark.length) ?? "";
  return { meaning: parts[0] ?? "", unit: after("Unit: ").replace(/\.$/, ""), wrong: after("If wrong: ") };
}

/** A value on one line as YAML has it: [1, 2], { a: 1 }. */
function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(", ")}]`;
  if (typeof value === "object" && value !== null) {
    return `{ ${Object.entries(value)
      .map(([key, inner]) => `${key}: ${flow(inner)}`)
      .join(", ")} }`;
  }
  const text = String(value);
  return typeof value === "string" && /[{}[\],:#]/.test(text) ? `"${text}"` : text;
}
