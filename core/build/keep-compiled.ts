import { join } from "node:path";
import type * as CommandLine from "../9-cli/command-line.ts";
import type { Scripts } from "../9-cli/scripts.ts";
import type * as Own from "../9-cli/dialects/own.ts";
import { keepCompiled, loadScript } from "../9-cli/scripts.ts";

/* A process of its own, see compile-ahead.ts: does what users do most, and keeps the compiled code of all that was loaded. */

const [root = "", dist = "", folder = ""] = process.argv.slice(2);
const scripts: Scripts = new Map();
const script = (name: string): unknown => loadScript(scripts, join(dist, "scripts", name));
const { runCommandLine } = script("command-line.cjs") as typeof CommandLine;
const { buildDialect } = script("own.cjs") as typeof Own;
script("worker.cjs");

const job = join(root, "examples/weather-plate/weather-plate.job.json");
const own = join(root, "examples/weather-plate/quarry-router.dialect.yaml");
const program = join(folder, "program.txt");
const words = ["--dialect", "explicit-words", "--quiet"];
const codes = [
  await runCommandLine(["post", job, ...words, "--output", program]),
  await runCommandLine(["prove", program, ...words, "--against", job]),
];
const { built } = await buildDialect(own);
if (built === undefined) throw new Error(`${own} is refused`);
if (codes.some((code) => code !== 0)) throw new Error(`exit codes ${codes.join(", ")}`);
keepCompiled(scripts);
