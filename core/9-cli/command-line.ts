import type { Argv } from "yargs";
import createParser from "yargs";
import { compareCommand } from "./commands/compare.ts";
import { dialectCommand } from "./commands/dialect.ts";
import { postCommand } from "./commands/post.ts";
import { plotCommand } from "./commands/plot.ts";
import { jobCommand } from "./commands/job.ts";
import { sheetCommand } from "./commands/sheet.ts";
import { proveCommand } from "./commands/prove.ts";
import { whyCommand } from "./commands/why.ts";
import { examples } from "./commands/options.ts";
import { exit } from "./exit-code.ts";
import { packageVersion } from "./package.ts";
import { isUsageError, longName, usageError } from "./usage.ts";

/** Width of the help pages, in columns. */
const helpWidth = 80;

/**
 * Runs a command line.
 *
 * @param words without the interpreter and the script
 * @returns the exit code
 */
export async function runCommandLine(words: readonly string[]): Promise<number> {
  const ended = { code: exit.good as number };
  const parser = createCommands(words, (code) => (ended.code = code));
  try {
    await parser.parseAsync();
    return ended.code;
  } catch (error) {
    const { showFault, showUsageError } = await import("./trouble.ts");
    return isUsageError(error) ? showUsageError(error, words) : showFault(error);
  }
}

function createCommands(words: readonly string[], end: (code: number) => void): Argv {
  return createParser([...words])
    .scriptName("tapewright")
    .usage("$0 <command>\n\nMakes the program that one particular controller accepts, and proves it.")
    .command(postCommand(end))
    .command(proveCommand(end))
    .command(compareCommand(end))
    .command(whyCommand(end))
    .command(sheetCommand(end))
    .command(plotCommand(end))
    .command(jobCommand(end))
    .command(dialectCommand(end, words))
    .epilogue(
      examples(
        ["post plate.json -d router.dialect.yaml", "makes the program and proves it"],
        ["post --help", "how a command works"],
      ),
    )
    .demandCommand(1, "Say what to do: post, prove, compare, why, sheet, plot, job or dialect.")
    .check(refuseRepeats, true)
    .strict()
    .parserConfiguration({ "boolean-negation": false, "dot-notation": false, "parse-numbers": false })
    .detectLocale(false)
    .wrap(Math.min(helpWidth, process.stdout.isTTY ? process.stdout.columns : helpWidth))
    .help("help", "show this page")
    .version("version", "show the version", packageVersion())
    .alias({ help: "h", version: "V" })
    .exitProcess(false)
    .fail(rethrow);
}

/** yargs throws its own errors for some mistakes of the user, and gives a text for others. */
function rethrow(said: string, error?: Error): never {
  if (error === undefined || error.name === "YError") throw usageError(said || (error?.message ?? ""));
  throw error;
}

/** An option that is given twice would silently mean its last value; `programs` and `more` are lists of words. */
function refuseRepeats(values: Readonly<Record<string, unknown>>): true {
  const [command] = values["_"] as readonly unknown[];
  const severalDialects = command === "compare" || command === "post";
  const lists = ["_", "--", "cl", "programs", "more", ...(severalDialects ? ["dialect", "d"] : [])];
  const repeated = Object.keys(values).find((name) => !lists.includes(name) && Array.isArray(values[name]));
  if (repeated !== undefined) throw usageError(`${longName(repeated)} is given twice.`);
  return true;
}
