import { join } from "node:path";
import type * as CommandLine from "./command-line.ts";
import { loadScript } from "./scripts.ts";

/** What becomes dist/cli.js: the command line from its scripts. */
const file = join(import.meta.dirname, "scripts", "command-line.cjs");
const { runCommandLine } = loadScript(new Map(), file) as typeof CommandLine;

process.exitCode = await runCommandLine(process.argv.slice(2));
