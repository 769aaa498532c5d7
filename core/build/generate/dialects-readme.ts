import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { SchemaPart } from "../../2-dialect/schema.ts";
import { formsOf, valuesInWords } from "../../2-dialect/schema.ts";
import type { Product } from "./product.ts";

/** The page on the keys of dialect files, dialects/README.md. */
export function dialectsReadmePage(): Product {
  const schema = "schemas/dialect.schema.json";
  return {
    target: "dialects/README.md",
    needs: [schema],
    make: (root) => dialectsReadme(JSON.parse(readFileSync(join(root, schema), "utf8")) as SchemaPart),
  };
}

/** Chapters of the page with the top-level keys that they take. A key in none of them fails the build. */
const chapters = [
  { title: "The dialect itself", keys: ["dialect", "title", "extends", "sources"] },
  { title: "File", keys: ["file", "comments"] },
  { title: "Blocks", keys: ["blocks"] },
  { title: "Numbers", keys: ["numbers"] },
  { title: "Modal words", keys: ["modal"] },
  {
    title: "Units and coordinates",
    keys: ["axes", "units", "distance", "plane", "work-offset", "machine-move", "reference-return", "cancel"],
  },
  { title: "Motion", keys: ["motion", "arc", "path", "feed", "dwell"] },
  { title: "Spindle and coolant", keys: ["spindle", "coolant"] },
  { title: "Tools", keys: ["tools", "length-offset", "compensation"] },
  { title: "Fixed cycles", keys: ["cycles"] },
  { title: "Stops and end", keys: ["stops"] },
  { title: "Machine", keys: ["machine"] },
  { title: "Confirmations and waits", keys: ["confirm", "wait"] },
  { title: "Idioms and codes of the builder", keys: ["idioms", "codes"] },
] as const;

const introduction = `# Dialect files

<!-- Made from schemas/dialect.schema.json by \`npm run generate\`. Do not edit. -->

A dialect file, NAME.dialect.yaml, says what one controller and its machine want. Each file in this folder is a shipped
dialect; yours can stand anywhere and extend one of them:

\`\`\`yaml
dialect: my-router
title: The router in the shed
extends: rs274ngc
modal: { motion: each-block } # it wants the motion word in every block
confirm:
  at-speed: { dwell: 8 s } # nothing waits for the spindle by itself
\`\`\`

- State only what differs. Mappings are merged key by key; lists, single values and \`none\` replace what is inherited.
- \`none\` says that the controller has no such word or the machine no such thing. A job that needs it is refused.
- A key that no file of the chain states is never guessed: a job that needs it is refused, and the finding says which
  line to add. \`tapewright dialect check FILE\` lists them, \`tapewright dialect show FILE\` prints all values with the file
  and line each comes from.
- Lengths are in millimetres, or have their unit behind them: \`12.7\`, \`0.5 in\`. Feeds are in mm/min, or \`20 in/min\`. Times
  always have a unit: \`6 s\`, \`500 ms\`, \`2 min\`. Angles are in degrees, spindle speeds in rpm.
- A dwell of a confirmation may be an expression: \`"spin_up * rpm / max_rpm + 0.5 * second"\`. It has numbers, \`+ - * / ( )\`,
  \`min\`, \`max\`, the constants second, minute, mm, inch and rev, and the names below; it must come out as a time.

| name | value |
|---|---|
| \`rpm\` | speed after the change (at-speed only) |
| \`from_rpm\` | speed before it, the highest speed where it is not known (at-speed and stopped) |
| \`min_rpm\`, \`max_rpm\`, \`spin_up\`, \`spin_down\`, \`coast_down\` | the keys of \`machine.spindle\` |
`;

/** A page that a machinist can read: each key with its meaning, values, unit, an example, and what a wrong value does. */
export function dialectsReadme(schema: SchemaPart): string {
  const keys = schema.properties ?? {};
  const missing = Object.keys(keys).filter(
    (key) => !chapters.some((chapter) => (chapter.keys as readonly string[]).includes(key)),
  );
  if (missing.length > 0) throw new Error(`dialects/README.md has no chapter for ${missing.join(", ")}`);
  const texts = chapters.map(({ title, keys: own }) => chapterText(schema, title, own));
  return [introduction, ...texts].join("\n");
}

const tableHead = "| key | meaning | values | unit | example | if it is wrong |\n|---|---|---|---|---|---|";

function chapterText(schema: SchemaPart, title: string, keys: readonly string[]): string {
  const rows = keys.flatMap((key) => rowsOf(schema, key, schema.properties![key]));
  return `## ${title}\n\n${tableHead}\n${rows.join("\n")}\n`;
}

/** A key and, below it, the keys of its mapping. */
function rowsOf(schema: SchemaPart, path: string, part: SchemaPart): string[] {
  const inner = formsOf(schema, part).flatMap((form) => [
    ...Object.entries(form.properties ?? {}).map(([key, below]) => [`${path}.${key}`, below] as const),
    ...Object.values(form.patternProperties ?? {}).map(
      (below) => [`${path}.${nameFor(path)}`, below] as const,
    ),
  ]);
  // How one number differs from the rest is said once, with the keys that hold for all numbers.
  const own = inner.filter(([, below]) => below.$ref?.startsWith("#/$defs/own-") !== true);
  return [
    row(schema, path, part, inner.length > 0),
    ...own.flatMap(([key, below]) => rowsOf(schema, key, below)),
  ];
}

/** A placeholder for keys that the user names. */
function nameFor(path: string): string {
  return { codes: "CODE", "machine.outputs": "NAME", "machine.work-zero": "NUMBER" }[path] ?? "KEY";
}

function row(schema: SchemaPart, path: string, part: SchemaPart, isGroup: boolean): string {
  const { meaning, unit, wrong } = splitDescription(part.description ?? "");
  // The example stands in a column of its own.
  const own = valuesInWords(schema, part.$ref === undefined ? withoutExamples(part) : part);
  const values = isGroup ? groupValues(schema, part) : own;
  const [example] = part.examples ?? [];
  const text = example === undefined || isGroup ? "" : `\`${flow(example)}\``;
  return `| ${[`\`${path}\``, meaning, values, unit, text, wrong].map(cell).join(" | ")} |`;
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

function cell(text: string): string {
  return text.replaceAll("|", "\\|").replaceAll("\n", " ");
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
