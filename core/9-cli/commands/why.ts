import type { Argv, CommandModule } from "yargs";
import type { WhyArguments } from "./arguments.ts";
import { dialectOptions, examples, fileArgument, questionOptions, makingOptions } from "./options.ts";

const footer = `Makes the program once more and writes nothing. State the same --only, --from,
--spindle-holds, --setup, --rack, --air-cut, --air-feed and --optional-stops as
for post, and one of --line, --step and --key.

${examples(
  ["why plate.json -d router.dialect.yaml --line 14", "what line 14 says, and why so"],
  ["why plate.json -d router.dialect.yaml --step 31", "the block of step 31"],
  ["why plate.json -d router.dialect.yaml --key modal.feed", "the lines that the key shaped"],
)}`;

/** `tapewright why`: its arguments and help; the work itself is loaded when it is asked for. */
export function whyCommand(end: (code: number) => void): CommandModule<object, WhyArguments> {
  return {
    command: "why <input>",
    describe: "why a line of a job's program is as it is",
    builder: (yargs: Argv) =>
      fileArgument(yargs, "input", "a job: .json, .apt .cls .cl, or a program with --read-as")
        .options(dialectOptions)
        .options(questionOptions)
        .options(makingOptions)
        .epilogue(footer),
    handler: async (args) => {
      const { runWhy } = await import("../run-why.ts");
      end(await runWhy(args));
    },
  };
}
