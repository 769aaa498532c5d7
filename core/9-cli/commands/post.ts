import type { Argv, CommandModule } from "yargs";
import type { PostArguments } from "./arguments.ts";
import {
  examples,
  fileArgument,
  outputOption,
  postDialects,
  simulatingOptions,
  splitOption,
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
  ["post *.json -d router.dialect.yaml -d rs274ngc", "each job for each dialect, in one report"],
  ["post old.ngc --read-as rs274ngc -d router.dialect.yaml", "a program made for another controller"],
  ["post plate.json -d router.dialect.yaml --simulate", "and what each motion meets in the stock"],
  ["post plate.json -d router.dialect.yaml --air-cut 50", "plate.air-cut.tap: a dry run, 50 mm higher"],
  ["post plate.json -d hand-zeroed --split tool", "plate.t1.tap, plate.t2.tap, ... all proved or none"],
)}`;

/** The same as the command line has them: all dialects in one list, further jobs only where there are some. */
interface PostWords extends Omit<PostArguments, "dialect" | "dialects" | "more"> {
  readonly dialect: readonly string[];
  readonly more?: readonly string[] | undefined;
}

/** `tapewright post`: its arguments and help; the work itself is loaded when it is asked for. */
export function postCommand(end: (code: number) => void): CommandModule<object, PostWords> {
  return {
    command: "post <input> [more..]",
    describe: "make the program of a job, and prove it",
    builder: (yargs: Argv) =>
      fileArgument(yargs, "input", "a job: .json, .apt .cls .cl, or a program with --read-as")
        .positional("more", { type: "string", array: true, describe: "further jobs" })
        .options(postDialects)
        .options(outputOption)
        .options(watchOption)
        .options(splitOption)
        .options(simulatingOptions)
        .epilogue(footer),
    handler: async ({ dialect: dialects, more = [], ...rest }) => {
      const args = { ...rest, dialect: dialects[0], dialects, more };
      if (more.length + dialects.length > 1) {
        const { runBatch } = await import("../batch/run-batch.ts");
        end(await runBatch(args));
      } else {
        const { runPost } = await import("../run-post.ts");
        end(await runPost(args));
      }
    },
  };
}
