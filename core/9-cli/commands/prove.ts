import type { Argv, CommandModule } from "yargs";
import type { ProveArguments } from "./arguments.ts";
import {
  againstOption,
  dialectOptions,
  examples,
  fileArgument,
  programOptions,
  readingOptions,
  reportOptions,
} from "./options.ts";

const footer = `With --against, state the same --only, --from, --spindle-holds, --setup,
--air-cut, --air-feed and --optional-stops as for post. A program of --split
is that of its operations: --only, as post tells it.

${examples(
  ["prove plate.tap -d router.dialect.yaml", "what is wrong with it, block by block"],
  ["prove plate.tap -d router.dialect.yaml --against plate.json", "whether it means this job"],
)}`;

/** `tapewright prove`: its arguments and help; the work itself is loaded when it is asked for. */
export function proveCommand(end: (code: number) => void): CommandModule<object, ProveArguments> {
  return {
    command: "prove <program>",
    describe: "read any program, check it, and compare it with a job",
    builder: (yargs: Argv) =>
      fileArgument(yargs, "program", "a program")
        .options(dialectOptions)
        .options(againstOption)
        .options(programOptions)
        .options(readingOptions)
        .options(reportOptions)
        .epilogue(footer),
    handler: async (args) => {
      const { runProve } = await import("../run-prove.ts");
      end(await runProve(args));
    },
  };
}
