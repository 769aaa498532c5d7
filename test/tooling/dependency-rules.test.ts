import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";

const root = resolve(import.meta.dirname, "../..");

/** One file, its text, and every rule that it breaks: the rules must be able to fail, and only where they should. */
interface Case {
  readonly file: string;
  readonly text: string;
  readonly breaks: readonly string[];
}

const cases: readonly Case[] = [
  ...[
    "0-base",
    "1-job",
    "2-dialect",
    "3-lower",
    "4-sequence",
    "5-emit",
    "6-read",
    "7-prove",
    "8-report",
  ].flatMap(breaksStageOrder),
  bad("core/3-lower/deep.ts", 'import "../1-job/inner.ts";', "through-the-index"),
  bad("core/page.ts", 'import "./3-lower/fine.ts";', "pages-through-the-index"),
  bad("core/other-page.ts", 'import "./9-cli/index.ts";', "pages-through-the-index"),
  bad("core/compare/page.ts", 'import "../3-lower/fine.ts";', "pages-through-the-index"),
  bad("core/compare/files.ts", 'import "../9-cli/index.ts";', "pages-through-the-index"),
  bad("core/9-cli/inner.ts", 'import "../compare/fine.ts";', "reach-compare-through-its-index"),
  bad("core/sheet/deep.ts", 'import "../3-lower/fine.ts";', "sheet-through-the-indexes"),
  bad("core/sheet/files.ts", 'import "../9-cli/index.ts";', "sheet-through-the-indexes"),
  bad("core/9-cli/sheets.ts", 'import "../sheet/fine.ts";', "reach-sheet-through-its-index"),
  bad("core/8-report/sheets.ts", 'import "../sheet/index.ts";', "8-report-imports-smaller-numbers"),
  bad("core/4-sequence/inference.ts", 'import "#infer";', "infer-is-called-by-the-command"),
  bad("core/infer/report.ts", 'import "#report";', "infer-through-the-index"),
  bad("core/infer/inner.ts", 'import "../6-read/fine.ts";', "infer-through-the-index"),
  bad("core/time/steps.ts", 'import "#prove";', "time-imports-base-only"),
  bad("core/clockwork.ts", 'import "./time/fine.ts";', "reach-time-through-its-index"),
  bad("core/spares/words.ts", 'import "#report";', "spares-import-base-job-and-time"),
  bad("core/spares/inner.ts", 'import "../1-job/inner.ts";', "spares-import-base-job-and-time"),
  bad("core/wear.ts", 'import "./spares/fine.ts";', "reach-spares-through-its-index"),
  bad("core/4-sequence/wear.ts", 'import "#spares";', "no-stage-takes-spares"),
  bad("core/9-cli/inference.ts", 'import "../infer/fine.ts";', "reach-infer-through-its-index"),
  bad("core/library-page.ts", 'import "./plot/index.ts";', "plot-is-called-by-the-command"),
  bad("core/plot/inner.ts", 'import "../3-lower/fine.ts";', "plot-through-the-indexes"),
  bad("core/9-cli/picture.ts", 'import "../plot/fine.ts";', "reach-plot-through-its-index"),
  bad("core/8-report/eager.ts", 'import "./plot/script/fine.ts";', "page-script-is-bundled"),
  bad("core/simulate/reading.ts", 'import "#read";', "simulate-imports-base-and-job"),
  bad("core/simulate/inner.ts", 'import "../1-job/inner.ts";', "simulate-imports-base-and-job"),
  bad("core/chips.ts", 'import "./simulate/fine.ts";', "reach-simulate-through-its-index"),
  bad("core/4-sequence/chips.ts", 'import "#simulate";', "simulate-is-called-by-pages"),
  bad("core/retrace/report.ts", 'import "#report";', "retrace-imports-0-to-2-and-read"),
  bad("core/retrace/inner.ts", 'import "../6-read/fine.ts";', "retrace-imports-0-to-2-and-read"),
  bad("core/9-cli/retracing.ts", 'import "../retrace/fine.ts";', "reach-retrace-through-its-index"),
  bad("core/8-report/retracing.ts", 'import "#retrace";', "no-stage-retraces"),
  // A ring is reported once, where it is met first.
  bad("core/4-sequence/ring-a.ts", 'import type { B } from "./ring-b.ts"; export type A = B;', "no-cycles"),
  good("core/4-sequence/ring-b.ts", 'import type { A } from "./ring-a.ts"; export type B = A;'),
  good("core/plot/index.ts", ""),
  good("core/plot/fine.ts", ""),
  good("core/8-report/plot/script/fine.ts", ""),
  bad("core/7-prove/job.ts", 'import type {} from "#job";', "prove-imports-base-only"),
  bad("core/7-prove/package.ts", 'import "yaml";', "prove-imports-base-only"),
  bad("core/6-read/emit.ts", 'import "#emit";', "emit-and-read-are-strangers"),
  bad("core/0-base/package.ts", 'import "yaml";', "base-imports-nothing"),
  bad("core/6-read/compiler.ts", 'import type ts from "typescript";', "typescript-in-two-places"),
  bad("core/2-dialect/idiom.ts", 'await import("typescript");', "typescript-in-two-places"),
  bad("core/8-report/arguments.ts", 'import "yargs";', "command-line-in-9-cli"),
  bad("core/8-report/helpers.ts", 'import "yargs/helpers";', "command-line-in-9-cli"),
  bad("core/interview/prompts.ts", 'import "@inquirer/prompts";', "command-line-in-9-cli"),
  bad("core/interview/shown.ts", 'import "#report";', "authoring-imports-0-to-7"),
  bad("core/cases/flow.ts", 'import "#compile";', "authoring-imports-0-to-7"),
  bad("core/cases/asked.ts", 'import "#interview";', "authoring-imports-0-to-7"),
  bad("core/6-read/asking.ts", 'import "#interview";', "authoring-is-for-the-command"),
  bad("core/library.ts", 'import "#cases";', "authoring-is-for-the-command"),
  bad("core/9-cli/asking.ts", 'import "../interview/question.ts";', "through-the-index"),
  bad("core/interview/deep.ts", 'import "../1-job/inner.ts";', "through-the-index"),
  bad("core/3-lower/bar.ts", 'import "cli-progress";', "command-line-in-9-cli"),
  bad("core/8-report/file.ts", 'import "node:fs";', "node-in-9-cli"),
  bad("core/8-report/path.ts", 'import { join } from "path"; join();', "node-in-9-cli"),
  bad("core/9-cli/shipped.ts", 'import "../../dialects/some.ts";', "core-knows-no-dialect"),
  bad("core/3-lower/case.ts", 'import "../../test/some.ts";', "core-knows-no-dialect"),
  bad("core/3-lower/sample.ts", 'import "../../examples/some.ts";', "core-knows-no-dialect"),
  bad("core/9-cli/build.ts", 'import "../build/some.ts";', "core-is-not-its-build"),
  bad("core/9-cli/development.ts", 'import "fast-check";', "no-development-packages"),
  bad("core/9-cli/nowhere.ts", 'import "./nowhere-at-all.ts";', "resolvable"),
  good("core/0-base/fine.ts", 'import "./index.ts";'),
  good("core/1-job/inner.ts", ""),
  good("core/3-lower/fine.ts", 'import "#base"; import "#job"; import "#dialect"; import "yaml";'),
  good("core/7-prove/fine.ts", 'import "#base";'),
  good("core/infer/fine.ts", 'import "#base"; import "#dialect"; import "#emit"; import "#read";'),
  good("core/infer/index.ts", ""),
  good("core/simulate/fine.ts", 'import "#base"; import "#job"; import "./index.ts";'),
  good("core/simulate/index.ts", ""),
  good("core/retrace/fine.ts", 'import "#base"; import "#job"; import "#dialect"; import "#read";'),
  good("core/retrace/index.ts", ""),
  good("core/spares/index.ts", 'import "#base"; import "#job"; import "#time";'),
  good("core/spares/fine.ts", 'import "./index.ts";'),
  good("core/time/index.ts", 'import "#base";'),
  good("core/time/fine.ts", 'import "#base"; import "./index.ts";'),
  good("core/6-read/fine.ts", 'import "#base";'),
  good("core/9-cli/fine-inference.ts", 'import "#infer";'),
  good("core/5-emit/fine.ts", 'import "typescript"; import "#dialect";'),
  good("core/2-dialect/expression-parser.ts", 'await import("typescript");'),
  good("core/9-cli/fine.ts", 'import "yargs"; import "cli-progress"; import "node:fs"; import "#compile";'),
  good("core/interview/index.ts", 'import "#base"; import "#prove"; import "yaml";'),
  good("core/interview/question.ts", 'import "./index.ts";'),
  good("core/cases/index.ts", 'import "#emit"; import "#read"; import "diff";'),
  good("core/9-cli/authoring.ts", 'import "#interview"; import "#cases"; import "@inquirer/prompts";'),
  good("core/compare/fine.ts", 'import "#base"; import "#report";'),
  good("core/sheet/fine.ts", 'import "#base"; import "#report"; import "#compile";'),
  good("core/sheet/index.ts", ""),
  good("core/compile.ts", 'import "#base"; import "#report";'),
  good("core/build/fine.ts", 'import "esbuild"; import "node:fs"; import "../1-job/inner.ts";'),
];

/** What the cases import. */
const targets: readonly string[] = [
  "dialects/some.ts",
  "test/some.ts",
  "examples/some.ts",
  "core/build/some.ts",
];

function bad(file: string, text: string, ...breaks: string[]): Case {
  return { file, text, breaks };
}

function good(file: string, text: string): Case {
  return { file, text, breaks: [] };
}

/** A stage that imports the next one, and one that imports the page that calls it. */
function breaksStageOrder(stage: string, number: number, stages: readonly string[]): Case[] {
  const next = stages[number + 1] ?? "9-cli";
  const alone = { "0-base": ["base-imports-nothing"], "7-prove": ["prove-imports-base-only"] }[stage] ?? [];
  const strangers = stage === "5-emit" ? ["emit-and-read-are-strangers"] : [];
  const rule = `${stage}-imports-smaller-numbers`;
  return [
    bad(`core/${stage}/ahead.ts`, `import "../${next}/index.ts";`, rule, ...alone, ...strangers),
    bad(`core/${stage}/caller.ts`, 'import "#compile";', rule, ...alone),
  ];
}

/** "file: rule" for every breach that the checker reports in the tree, sorted, each once. */
function breachesIn(tree: string): string[] {
  const command = join(root, "node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
  const json = execFileSync(process.execPath, [command, "core", "--output-type", "json"], {
    cwd: tree,
    encoding: "utf8",
    maxBuffer: 2 ** 26,
  });
  const { summary } = JSON.parse(json) as {
    summary: { violations: { from: string; rule: { name: string } }[] };
  };
  return [...new Set(summary.violations.map(({ from, rule }) => `${from}: ${rule.name}`))].sort();
}

function writeTree(tree: string): void {
  const write = (file: string, text: string): void => {
    mkdirSync(dirname(join(tree, file)), { recursive: true });
    writeFileSync(join(tree, file), `${text}\nexport {};\n`);
  };
  for (const file of ["package.json", "tsconfig.json", ".dependency-cruiser.cjs"]) {
    cpSync(join(root, file), join(tree, file));
  }
  symlinkSync(join(root, "node_modules"), join(tree, "node_modules"));
  for (const target of targets) write(target, "");
  for (const { file, text } of cases) write(file, text);
  const stages = new Set(cases.flatMap(({ file }) => /^core\/\d-[^/]+/.exec(file) ?? []));
  for (const stage of stages) write(`${stage}/index.ts`, "");
}

/** The names of the rules as the checker knows them. */
async function ruleNames(): Promise<string[]> {
  const config = (await import(join(root, ".dependency-cruiser.cjs"))) as {
    default: { forbidden: { name: string }[] };
  };
  return config.default.forbidden.map(({ name }) => name).sort();
}

const tree = mkdtempSync(join(tmpdir(), "tapewright-rules-"));
beforeAll(() => writeTree(tree));
afterAll(() => rmSync(tree, { recursive: true, force: true }));

test("each breach of the architecture is reported, and nothing else is", () => {
  const expected = cases.flatMap(({ file, breaks }) => breaks.map((rule) => `${file}: ${rule}`));
  expect(breachesIn(tree)).toEqual(expected.sort());
});

test("every rule has a case that breaks it", async () => {
  expect([...new Set(cases.flatMap(({ breaks }) => breaks))].sort()).toEqual(await ruleNames());
});
