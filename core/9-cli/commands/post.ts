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
  watchOption,
} from "./options.ts";

const footer = `Nothing is written unless it was read back and proved equal to the job.

A set-up file is JSON; each part of it may be left out:
  { "workOffsets": { "1": [X, Y, Z] }, "lengths": { "TOOL": L },
    "rack": [TOOL, ...], "spindleHolds": TOOL }
Its "rack" is how the rack is loaded when the program starts. --rack tells what
is in it now: what stays there and what is exchanged before the start is
reported. With more tools than pockets the program stops for the rest.

${examples(
  ["post plate.json -d router.dialect.yaml", "writes plate.tap beside the job; the ending is the dialect's"],
  ["post plate.json -d router.dialect.yaml -o -", "prints the program"],
  [
    "post plate.json -d router.dialect.yaml --watch",
    "and again on each change, with the blocks that changed",
  ],
  ["post plate.json -d router.dialect.yaml --from op40", "the rest of it, from op40 on"],
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
