import type { Argv, CommandModule } from "yargs";
import type { ProveArguments } from "./arguments.ts";
import { againstOption, dialectOptions, examples, fileArgument, simulatingOptions } from "./options.ts";

const footer = `With --against, state the same --only, --from, --spindle-holds, --setup,
--rack, --air-cut, --air-feed and --optional-stops as for post. A program of
--split is that of its operations: --only, as post tells it. --simulate takes
tools and stock from that job, and cuts it as the program says.

${examples(
  ["prove plate.tap -d router.dialect.yaml", "what is wrong with it, block by block"],
  ["prove plate.tap -d router.dialect.yaml --against plate.json", "whether it means this job"],
  [
    "prove plate.tap -d router.dialect.yaml --against plate.json --simulate",
    "and what its motions meet in the stock",
  ],
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
        .options(simulatingOptions)
        .epilogue(footer),
    handler: async (args) => {
      const { runProve } = await import("../run-prove.ts");
      end(await runProve(args));
    },
  };
}
