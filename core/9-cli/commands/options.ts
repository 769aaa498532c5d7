import type { Argv, Options } from "yargs";

/** Options of every command. */
export const reportOptions = {
  report: { choices: ["text", "json"], default: "text", describe: "how to report" },
  quiet: { type: "boolean", describe: "say nothing but errors and warnings" },
  "no-color": { type: "boolean", describe: "no colour, as NO_COLOR=1 does" },
} as const satisfies Record<string, Options>;

/** Options of every command that takes a dialect. */
export const dialectOptions = {
  dialect: {
    alias: "d",
    type: "string",
    requiresArg: true,
    demandOption: true,
    describe: "a shipped dialect's name, or a file",
  },
  "no-cache": { type: "boolean", describe: "build a dialect file anew, and keep nothing" },
} as const satisfies Record<string, Options>;

/** The same of the command that takes several, each for a program of its own. */
export const postDialects = {
  dialect: {
    ...dialectOptions.dialect,
    array: true,
    nargs: 1,
    describe: "a shipped dialect's name, or a file; each one stated gets its program",
  },
  "no-cache": dialectOptions["no-cache"],
} as const satisfies Record<string, Options>;

/** The option for a command's own product. */
export const outputOption = {
  output: {
    alias: "o",
    type: "string",
    requiresArg: true,
    describe: "file for the program, - for standard output; else it goes beside the job",
  },
} as const satisfies Record<string, Options>;

/** The option for posting more than once. */
export const watchOption = {
  watch: { type: "boolean", describe: "post again when job, set-up or dialect changes; Ctrl-C ends it" },
} as const satisfies Record<string, Options>;

/** The option for a program a tool. */
export const splitOption = {
  split: {
    choices: ["tool"],
    describe: "a program for each tool: plate.t1.tap, plate.t2.tap; not at a rack",
  },
} as const satisfies Record<string, Options>;

/** Options of the command that compares dialects. */
export const severalDialects = {
  dialect: {
    alias: "d",
    type: "string",
    array: true,
    nargs: 1,
    requiresArg: true,
    demandOption: true,
    describe: "a shipped dialect's name, or a file; state it twice or more",
  },
  output: {
    alias: "o",
    type: "string",
    requiresArg: true,
    describe: "file for the comparison as a page, .html",
  },
} as const satisfies Record<string, Options>;

/** The option of the command that writes a set-up sheet. */
export const sheetOutput = {
  output: {
    alias: "o",
    type: "string",
    requiresArg: true,
    describe: "file for the sheet, .html, - for standard output; else it goes beside the job",
  },
} as const satisfies Record<string, Options>;

/** Options of the command that draws. */
export const plotOptions = {
  dialect: {
    ...dialectOptions.dialect,
    demandOption: false,
    describe: "draw the program for it: a name, or a file",
  },
  "no-cache": dialectOptions["no-cache"],
  output: {
    alias: "o",
    type: "string",
    requiresArg: true,
    describe: "file for the picture, .svg or .html; else NAME.svg beside the job",
  },
} as const satisfies Record<string, Options>;

/** Options of the command that writes a module. */
export const moduleOptions = {
  output: {
    alias: "o",
    type: "string",
    requiresArg: true,
    describe: "file for the module, .js or .mjs, or - for standard output; else DIALECT.emitter.js here",
  },
  traced: { type: "boolean", describe: "an emitter that reports which keys shaped each word" },
  force: { type: "boolean", describe: "replace a file even if it is no generated module" },
} as const satisfies Record<string, Options>;

/** Options of the command that writes a dialect file. */
export const newOptions = {
  from: {
    type: "string",
    requiresArg: true,
    describe: "dialect to start from: a shipped one, or a file beside or below FILE; else it is asked for",
  },
  answers: {
    type: "string",
    requiresArg: true,
    describe: "YAML file with the answers, - for standard input; nothing is asked then",
  },
  force: { type: "boolean", describe: "replace FILE if it is there" },
} as const satisfies Record<string, Options>;

/** The option of the command that runs cases. */
export const testOptions = {
  update: { type: "boolean", describe: "rewrite the expected blocks with those that are written now" },
} as const satisfies Record<string, Options>;

/** Options of the command that infers a dialect file. */
export const inferOptions = {
  output: {
    alias: "o",
    type: "string",
    requiresArg: true,
    describe: "NAME.dialect.yaml, or - for standard output, where it goes without this",
  },
  from: { type: "string", requiresArg: true, describe: "the shipped dialect to extend; else the nearest" },
} as const satisfies Record<string, Options>;

/** The file that a command is about. */
export function fileArgument<Name extends string>(yargs: Argv, name: Name, describe: string) {
  return (
    yargs
      .positional(name, { type: "string", demandOption: true, describe: `${describe}; - is standard input` })
      // Otherwise "-" would be taken for an option without a name.
      .nargs(name, 1)
  );
}

/** The option for a dialect to compare with. */
export const diffOption = {
  diff: {
    type: "string",
    requiresArg: true,
    describe: "only what differs from this dialect, a name or a file",
  },
} as const satisfies Record<string, Options>;

/** The option for a job to compare with. */
export const againstOption = {
  against: { type: "string", requiresArg: true, describe: "the job that it is to be equal to" },
} as const satisfies Record<string, Options>;

/** The options of which one says what is asked. */
export const questionOptions = {
  line: { type: "string", requiresArg: true, describe: "a line of the program, counted from 1" },
  step: { type: "string", requiresArg: true, describe: "a step of the sequence, counted from 1" },
  key: { type: "string", requiresArg: true, describe: "a key of the dialect: the lines that it shaped" },
} as const satisfies Record<string, Options>;

/** Options that change a program. */
export const programOptions = {
  only: { type: "string", requiresArg: true, describe: "ids of the operations, with commas between" },
  from: { type: "string", requiresArg: true, describe: "id of the operation to begin with" },
  "spindle-holds": {
    type: "string",
    requiresArg: true,
    describe: "tool in the spindle at the start: N or none",
  },
  setup: { type: "string", requiresArg: true, describe: "set-up file: offsets, lengths, rack" },
  rack: {
    type: "string",
    requiresArg: true,
    describe: "file of what is in the rack now: [TOOL, ...] or {POCKET: TOOL}",
  },
  "air-cut": {
    type: "string",
    requiresArg: true,
    describe: "dry run, all motion in the work this much higher: 50, 2in",
  },
  "air-feed": {
    type: "string",
    requiresArg: true,
    describe: "highest feed of an air cut, a minute: 3000, 120in; else 2000",
  },
  "optional-stops": { type: "boolean", describe: "an optional stop before each tool's first operation" },
} as const satisfies Record<string, Options>;

/** Options of the commands that simulate the stock. */
export const simulationOptions = {
  simulate: { type: "boolean", describe: "cut the stock in a simulation, and look what each motion meets" },
  resolution: {
    type: "string",
    requiresArg: true,
    describe: "width of its cells in the job's units; else by stock and tools",
  },
} as const satisfies Record<string, Options>;

/** How a job's file is read; `tapewright job --help` lists the keys of --cl. */
export const readingOptions = {
  cl: {
    type: "string",
    array: true,
    nargs: 1,
    requiresArg: true,
    describe: "cutter location source: KEY=VALUE, ... for what it leaves open",
  },
  "read-as": {
    type: "string",
    requiresArg: true,
    describe: "the job is a program in this dialect: a shipped name, or a file",
  },
  head: {
    type: "string",
    requiresArg: true,
    describe: "head file of source or program: a job without operations",
  },
  "input-form": { choices: ["json", "cl"], describe: "form of the job, if its name does not end so" },
} as const satisfies Record<string, Options>;

/** Options of every command that makes the program of a job. */
export const makingOptions = { ...programOptions, ...readingOptions, ...reportOptions };

/** The same where the stock can be simulated. */
export const simulatingOptions = {
  ...programOptions,
  ...simulationOptions,
  ...readingOptions,
  ...reportOptions,
};

/** Every option there is, for "did you mean". */
export const optionNames: readonly string[] = [
  reportOptions,
  dialectOptions,
  outputOption,
  watchOption,
  splitOption,
  moduleOptions,
  newOptions,
  testOptions,
  inferOptions,
  diffOption,
  againstOption,
  questionOptions,
  programOptions,
  simulationOptions,
  readingOptions,
  { help: {}, version: {} },
].flatMap(Object.keys);

/** Short names, without the dash. */
export const shortOptions: Readonly<Record<string, string>> = {
  d: "dialect",
  o: "output",
  h: "help",
  V: "version",
};

/** Every command, and every command of `dialect`. */
export const commands: readonly string[] = [
  "post",
  "prove",
  "compare",
  "why",
  "sheet",
  "plot",
  "job",
  "dialect",
];
export const dialectCommands: readonly string[] = ["list", "show", "new", "infer", "check", "test", "build"];

/** Codes of the end, for the foot of a help page. */
const exitCodes =
  "Exit code 0: no error. 1: errors in the program. 2: job, dialect, file or usage is invalid. 3: a fault of tapewright.";

/** Examples for the foot of a help page: the command line, and below it what it does. */
export function examples(...pairs: readonly (readonly [command: string, meaning: string])[]): string {
  const lines = pairs.flatMap(([command, meaning]) => [`  tapewright ${command}`, `      ${meaning}`]);
  return ["Examples:", ...lines, "", exitCodes].join("\n");
}
