import type { Argv, CommandModule } from "yargs";
import type { SheetArguments } from "./arguments.ts";
import { dialectOptions, examples, fileArgument, sheetOutput, simulatingOptions } from "./options.ts";

const footer = `Writes a page that stands alone and prints on A4 and Letter: set-up drawing,
work offsets, tools, operations, stops, prove-out. It writes no program. State
the options of post, and the hash on the sheet is that of the program file. The
sheet of a job that is refused says so.

${examples(
  ["sheet plate.json -d router.dialect.yaml", "writes plate.sheet.html beside the job"],
  ["sheet plate.json -d router.dialect.yaml --only op40", "the sheet of one operation"],
)}`;

/** `tapewright sheet`: its arguments and help; the work itself is loaded when it is asked for. */
export function sheetCommand(end: (code: number) => void): CommandModule<object, SheetArguments> {
  return {
    command: "sheet <input>",
    describe: "the set-up sheet of a job for the machine, as a page",
    builder: (yargs: Argv) =>
      fileArgument(yargs, "input", "a job: .json, or .apt .cls .cl")
        .options(dialectOptions)
        .options(sheetOutput)
        .options(simulatingOptions)
        .epilogue(footer),
    handler: async (args) => {
      const { runSheet } = await import("../run-sheet.ts");
      end(await runSheet(args));
    },
  };
}
