import type { Argv, CommandModule } from "yargs";
import type {
  BuildArguments,
  InferArguments,
  NewArguments,
  OneDialectArguments,
  ReportArguments,
  ShowArguments,
  TestArguments,
} from "./arguments.ts";
import {
  diffOption,
  examples,
  inferOptions,
  moduleOptions,
  newOptions,
  reportOptions,
  testOptions,
} from "./options.ts";

type End = (code: number) => void;

/** `tapewright dialect`: list, show, new, infer, check, test, build. */
export function dialectCommand(end: End, words: readonly string[]): CommandModule {
  return {
    command: "dialect",
    describe: "list, show, write, infer, check, test or build dialects",
    builder: (yargs: Argv) =>
      yargs
        .command(listCommand(end))
        .command(showCommand(end))
        .command(newCommand(end))
        .command(checkCommand(end))
        .command(testCommand(end))
        .command(buildCommand(end))
        .command(inferCommand(end, words))
        .demandCommand(1, "Say what to do with dialects: list, show, new, infer, check, test or build.")
        .epilogue(
          examples(
            ["dialect list", "the shipped dialects"],
            ["dialect show router.dialect.yaml", "its keys and values, and who states them"],
            ["dialect new router.dialect.yaml", "asks about your controller, and writes the file"],
            ["dialect check router.dialect.yaml", "whether a file of your own is sound"],
            ["dialect test router.dialect.yaml", "whether it writes the blocks that you expect"],
            ["dialect build router.dialect.yaml", "its emitter, for a program of your own"],
            ["dialect infer plate.nc", "a dialect file from a program that runs"],
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

function showCommand(end: End): CommandModule<object, ShowArguments> {
  return {
    command: "show <name>",
    describe: "its keys, each with the file and line that states it",
    builder: (yargs: Argv) =>
      nameArgument(yargs.options(diffOption)).epilogue(
        examples(
          ["dialect show router.dialect.yaml", "what it says, and where"],
          ["dialect show router.dialect.yaml --diff rs274ngc", "the keys about which the two differ"],
        ),
      ),
    handler: async (args) => {
      const { runShow } = await import("../run-show.ts");
      end(await runShow(args));
    },
  };
}

const newFooter = `Fourteen questions about the controller, and before them which shipped dialect
comes nearest. After each answer stand five blocks of a small job as the file
would write them. The file has what differs from the dialect that it starts
from, and each key says which answer caused it. dialects/README.md lists the
questions, and the words for a file of answers.

${examples(
  ["dialect new router.dialect.yaml", "asks at the terminal"],
  ["dialect new router.dialect.yaml --from rs274ngc", "starts from a shipped dialect"],
  ["dialect new router.dialect.yaml --answers a.yaml", "takes the answers from a file"],
)}`;

function newCommand(end: End): CommandModule<object, NewArguments> {
  return {
    command: "new <file>",
    describe: "a dialect file for your controller, by questions and answers",
    builder: (yargs: Argv) =>
      yargs
        .positional("file", {
          type: "string",
          demandOption: true,
          describe: "the file to write, NAME.dialect.yaml",
        })
        .options({ ...newOptions, ...reportOptions })
        .epilogue(newFooter),
    handler: async (args) => {
      const { runNew } = await import("../run-new.ts");
      end(await runNew(args));
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

const testFooter = `Cases stand under \`cases\` in the dialect file, or beside it in NAME.cases.yaml:
steps in a short notation, and the blocks that are expected for them.
dialects/README.md explains the notation.

${examples(
  ["dialect test router.dialect.yaml", "what differs, word by word"],
  ["dialect test router.dialect.yaml --update", "shows it, and takes it over"],
)}`;

function testCommand(end: End): CommandModule<object, TestArguments> {
  return {
    command: "test <name>",
    describe: "whether a dialect writes the blocks that its cases expect",
    builder: (yargs: Argv) => nameArgument(yargs.options(testOptions)).epilogue(testFooter),
    handler: async (args) => {
      const { runTest } = await import("../run-test.ts");
      end(await runTest(args));
    },
  };
}

const buildFooter = `The module runs without tapewright, under Node and in a browser; its types go
beside it, into FILE.d.ts. It writes what it is given: nothing that it prints
has been guarded or proved.

${examples(
  ["dialect build router.dialect.yaml", "writes router.emitter.js and router.emitter.d.ts here"],
  ["dialect build router.dialect.yaml -o -", "prints the module, without its types"],
)}`;

function buildCommand(end: End): CommandModule<object, BuildArguments> {
  return {
    command: "build <name>",
    describe: "its emitter, as a module that runs by itself",
    builder: (yargs: Argv) => nameArgument(yargs.options(moduleOptions)).epilogue(buildFooter),
    handler: async (args) => {
      const { runBuild } = await import("../run-build.ts");
      end(await runBuild(args));
    },
  };
}

const inferFooter = `What the programs do not show is listed as questions, with the answer that holds
until you give another. Whether the spindle is up to speed or stands is never
taken from a program: it is told on every post until it is answered.

${examples(
  ["dialect infer plate.nc", "prints the file, and says what it rests on"],
  ["dialect infer a.nc b.nc -o my-router.dialect.yaml", "learns from both, and writes the file"],
)}`;

function inferCommand(end: End, words: readonly string[]): CommandModule<object, InferArguments> {
  return {
    command: "infer <programs..>",
    describe: "a dialect file from programs that run",
    builder: (yargs: Argv) =>
      yargs
        .positional("programs", {
          type: "string",
          array: true,
          demandOption: true,
          describe: "programs known to run on the machine; - is standard input",
        })
        .options({ ...inferOptions, ...reportOptions })
        .epilogue(inferFooter),
    handler: async (args) => {
      const { runInfer } = await import("../run-infer.ts");
      end(await runInfer({ ...args, programs: [...args.programs, ...standardInput(words)] }));
    },
  };
}

/** Among several files yargs takes "-" for an option without a name: it is found in the words themselves. */
function standardInput(words: readonly string[]): string[] {
  const isFree = words.some((word, index) => word === "-" && !["-o", "--output"].includes(words[index - 1] ?? "")); // prettier-ignore
  return isFree ? ["-"] : [];
}

function nameArgument<Options>(yargs: Argv<Options>) {
  return yargs
    .positional("name", {
      type: "string",
      demandOption: true,
      describe: "a shipped dialect's name, or a file",
    })
    .options(reportOptions);
}
