/*
 * Shows the package at work: posts each job of examples/weather-plate with the dialect file of its machine through the
 * built command, into demo-output, and prints the beginning of the program.
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

/** Posts one job and gives the path of its program; ends the demonstration where the command does not succeed. */
function post(job: string, dialect: string): string {
  const program = join(folder, job.replace(/\.job\.json$/, ".tap"));
  const words = ["post", join(example, job), "--dialect", join(example, dialect), "--output", program];
  const named = words.map((word) => (word.startsWith(root) ? relative(process.cwd(), word) : word));
  console.log(`$ tapewright ${named.join(" ").replaceAll(" --", " \\\n      --")}\n`);
  const { status } = spawnSync(process.execPath, [join(root, "dist/cli.js"), ...named], { stdio: "inherit" });
  if (status !== 0) process.exit(status ?? 1);
  return program;
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
for (const job of filesOf(".job.json")) showBeginning(post(job, dialect));
