import type { Argv, CommandModule } from "yargs";
import type { OneDialectArguments, ReportArguments } from "./arguments.ts";
import { examples, reportOptions } from "./options.ts";

type End = (code: number) => void;

/** `tapewright dialect`: list, show, check. */
export function dialectCommand(end: End): CommandModule {
  return {
    command: "dialect",
    describe: "list, show or check dialects",
    builder: (yargs: Argv) =>
      yargs
        .command(listCommand(end))
        .command(showCommand(end))
        .command(checkCommand(end))
        .demandCommand(1, "Say what to do with dialects: list, show or check.")
        .epilogue(
          examples(
            ["dialect list", "the shipped dialects"],
            ["dialect show router.dialect.yaml", "its keys and values, and who states them"],
            ["dialect check router.dialect.yaml", "whether a file of your own is sound"],
          ),
        ),
    handler: () => undefined,
  };
}

function listCommand(end: End): CommandModule<object, ReportArguments> {
  return {
    command: "list",
    describe: "the shipped dialects",
    builder: (yargs: Argv) =>
      yargs.options(reportOptions).epilogue(examples(["dialect list", "names and titles"])),
    handler: async (args) => {
      const { runList } = await import("../run-list.ts");
      end(await runList(args));
    },
  };
}

function showCommand(end: End): CommandModule<object, OneDialectArguments> {
  return {
    command: "show <name>",
    describe: "its keys, each with the file and line that states it",
    builder: (yargs: Argv) =>
      nameArgument(yargs).epilogue(examples(["dialect show router.dialect.yaml", "what it says, and where"])),
    handler: async (args) => {
      const { runShow } = await import("../run-show.ts");
      end(await runShow(args));
    },
  };
}

function checkCommand(end: End): CommandModule<object, OneDialectArguments> {
  return {
    command: "check <name>",
    describe: "whether a dialect file is sound",
    builder: (yargs: Argv) =>
      nameArgument(yargs).epilogue(
        examples(["dialect check router.dialect.yaml", "its faults, each with its line"]),
      ),
    handler: async (args) => {
      const { runCheck } = await import("../run-check.ts");
      end(await runCheck(args));
    },
  };
}

function nameArgument(yargs: Argv) {
  return yargs
    .positional("name", {
      type: "string",
      demandOption: true,
      describe: "a shipped dialect's name, or a file",
    })
    .options(reportOptions);
}
