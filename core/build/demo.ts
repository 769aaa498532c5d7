/*
 * Shows the package at work, through the built command: posts each job of examples/weather-plate with the dialect file of its
 * machine into demo-output, prints the beginning of the program, and writes the set-up sheet and the picture beside it.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, readdirSync } from "node:fs";
import { join, relative, resolve } from "node:path";

const root = resolve(import.meta.dirname, "../..");
const example = join(root, "examples/weather-plate");
const folder = join(root, "demo-output");
const shownLines = 45;

function filesOf(suffix: string): string[] {
  return readdirSync(example).filter((name) => name.endsWith(suffix));
}

/** Runs one command on a job; ends the demonstration where it does not succeed. */
function tapewright(verb: string, job: string, dialect: string, ending: string): string {
  const output = join(folder, job.replace(/\.job\.json$/, ending));
  const quiet = verb === "post" ? [] : ["--quiet"];
  const words = [verb, join(example, job), "--dialect", join(example, dialect), "--output", output, ...quiet];
  const named = words.map((word) => (word.startsWith(root) ? relative(process.cwd(), word) : word));
  console.log(`$ tapewright ${named.join(" ").replaceAll(" --", " \\\n      --")}\n`);
  const { status } = spawnSync(process.execPath, [join(root, "dist/cli.js"), ...named], { stdio: "inherit" });
  if (status !== 0) process.exit(status ?? 1);
  return output;
}

function showBeginning(program: string): void {
  const lines = readFileSync(program, "utf8").split(/\r?\n/);
  console.log(
    `\nThe first ${shownLines} of ${lines.length - 1} lines of ${relative(process.cwd(), program)}:\n`,
  );
  for (const line of lines.slice(0, shownLines)) console.log(`  ${line}`);
}

mkdirSync(folder, { recursive: true });
const [dialect] = filesOf(".dialect.yaml");
for (const job of filesOf(".job.json")) {
  showBeginning(tapewright("post", job, dialect, ".tap"));
  console.log();
  tapewright("sheet", job, dialect, ".sheet.html");
  tapewright("plot", job, dialect, ".plot.html");
  console.log(`Open the two pages in ${relative(process.cwd(), folder)} with a browser.`);
}
