import type { Argv, CommandModule } from "yargs";
import type { PostArguments } from "./arguments.ts";
import {
  dialectOptions,
  examples,
  fileArgument,
  outputOption,
  programOptions,
  readingOptions,
  reportOptions,
  splitOption,
  watchOption,
} from "./options.ts";

const footer = `Nothing is written unless it was read back and proved equal to the job.

A set-up file is JSON; each part of it may be left out:
  { "workOffsets": { "1": [X, Y, Z] }, "lengths": { "TOOL": L },
    "rack": [TOOL, ...], "spindleHolds": TOOL }

${examples(
  ["post plate.json -d router.dialect.yaml", "writes plate.tap beside the job; the ending is the dialect's"],
  ["post plate.json -d router.dialect.yaml -o -", "prints the program"],
  [
    "post plate.json -d router.dialect.yaml --watch",
    "and again on each change, with the blocks that changed",
  ],
  ["post plate.json -d router.dialect.yaml --from op40", "the rest of it, from op40 on"],
  ["post plate.json -d router.dialect.yaml --air-cut 50", "plate.air-cut.tap: a dry run, 50 mm higher"],
  ["post plate.json -d hand-zeroed --split tool", "plate.t1.tap, plate.t2.tap, ... all proved or none"],
)}`;

/** `tapewright post`: its arguments and help; the work itself is loaded when it is asked for. */
export function postCommand(end: (code: number) => void): CommandModule<object, PostArguments> {
  return {
    command: "post <input>",
    describe: "make the program of a job, and prove it",
    builder: (yargs: Argv) =>
      fileArgument(yargs, "input", "a job: .json, or .apt .cls .cl")
        .options(dialectOptions)
        .options(outputOption)
        .options(watchOption)
        .options(splitOption)
        .options(programOptions)
        .options(readingOptions)
        .options(reportOptions)
        .epilogue(footer),
    handler: async (args) => {
      const { runPost } = await import("../run-post.ts");
      end(await runPost(args));
    },
  };
}
