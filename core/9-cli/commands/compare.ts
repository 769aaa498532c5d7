import type { Argv, CommandModule } from "yargs";
import type { CompareArguments } from "./arguments.ts";
import { examples, fileArgument, makingOptions, severalDialects } from "./options.ts";

const footer = `Posts the job under each dialect, and writes no program. The first dialect that
can post it is what the others are compared with; each difference is laid to the
keys that cause it. --output writes the same as a page that stands alone.

${examples(
  ["compare plate.json -d router.dialect.yaml -d rs274ngc", "what differs, why, and what it means"],
  ["compare plate.json -d A -d B -d C -o plate.html", "the same of three, as a page"],
)}`;

/** `tapewright compare`: its arguments and help; the work itself is loaded when it is asked for. */
export function compareCommand(end: (code: number) => void): CommandModule<object, CompareArguments> {
  return {
    command: "compare <input>",
    describe: "what differs between a job's programs for two dialects or more",
    builder: (yargs: Argv) =>
      fileArgument(yargs, "input", "a job: .json, .apt .cls .cl, or a program with --read-as")
        .options(severalDialects)
        .options(makingOptions)
        .epilogue(footer),
    handler: async (args) => {
      const { runCompare } = await import("../run-compare.ts");
      end(await runCompare(args));
    },
  };
}
