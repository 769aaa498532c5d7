// The architecture as rules: `npm run lint` fails when an import breaks one.

const stages = [
  "0-base",
  "1-job",
  "2-dialect",
  "3-lower",
  "4-sequence",
  "5-emit",
  "6-read",
  "7-prove",
  "8-report",
  "9-cli",
];

/** Folders beside the stages that help to write a dialect file: the interview, and its test cases. */
const authoring = "interview|cases";

/** core/build makes the package and is no part of it, so the rules for stages leave it out. */
const coreButBuild = "^core/(?!build/)";

/** One rule a stage: it imports smaller numbers only, and never the page that calls it. */
const onlySmallerNumbers = stages.slice(0, -1).map((stage, number) => ({
  name: `${stage}-imports-smaller-numbers`,
  comment: "The folders are the pipeline: a stage knows what comes before it.",
  severity: "error",
  from: { path: `^core/${stage}/` },
  to: { path: [`^core/[${number + 1}-9]-`, "^core/(compile|why|index)\\.ts$", "^core/(compare|sheet)/"] },
}));

/** Folders beside the stages, each of which is entered by its index.ts alone. */
const besideTheStages = ["compare", "sheet", "plot", "infer", "retrace", "simulate", "spares", "time"];

const enteredByTheIndex = besideTheStages.map((folder) => ({
  name: `reach-${folder}-through-its-index`,
  comment: "What stands behind its index.ts is its own business.",
  severity: "error",
  from: { path: "^core/", pathNot: `^core/${folder}/` },
  to: { path: `^core/${folder}/(?!index\\.ts$)` },
}));

/** Folders beside the stages that are pages as compile.ts is one. */
const throughTheIndexes = ["sheet", "plot"].map((folder) => ({
  name: `${folder}-through-the-indexes`,
  comment: "It reaches stages through their index.ts alone, and leaves 9-cli alone.",
  severity: "error",
  from: { path: `^core/${folder}/` },
  to: { path: ["^core/[0-8]-[^/]+/(?!index\\.ts$)", "^core/9-cli/"] },
}));

module.exports = {
  forbidden: [
    ...onlySmallerNumbers,
    ...enteredByTheIndex,
    ...throughTheIndexes,
    {
      name: "through-the-index",
      comment: "Another stage, or a tool for authors, is reached through its index.ts alone.",
      severity: "error",
      from: { path: `^core/([0-9]-[^/]+|${authoring})/` },
      to: {
        path: `^core/([0-9]-|(${authoring})/)`,
        pathNot: ["^core/$1/", `^core/([0-9]-[^/]+|${authoring})/index\\.ts$`],
      },
    },
    {
      name: "authoring-imports-0-to-7",
      comment:
        "What helps to write a dialect uses the stages that make and prove programs, and shows nothing itself.",
      severity: "error",
      from: { path: `^core/(${authoring})/` },
      to: { path: ["^core/[89]-", "^core/[^/]+\\.ts$", `^core/(${authoring})/`], pathNot: "^core/$1/" },
    },
    {
      name: "authoring-is-for-the-command",
      comment: "The flow from a job to a program needs nothing of it.",
      severity: "error",
      from: { path: ["^core/[0-8]-", "^core/[^/]+\\.ts$"] },
      to: { path: `^core/(${authoring})/` },
    },
    {
      name: "pages-through-the-index",
      comment:
        "compile.ts, index.ts and compare reach stages through their index.ts alone, and leave 9-cli alone.",
      severity: "error",
      from: { path: "^core/(compare/)?[^/]+\\.ts$" },
      to: { path: ["^core/[0-8]-[^/]+/(?!index\\.ts$)", "^core/9-cli/"] },
    },
    {
      name: "plot-is-called-by-the-command",
      comment: "Plotting stands beside the pipeline: the command calls it, and nothing else.",
      severity: "error",
      from: { path: "^core/", pathNot: ["^core/plot/", "^core/9-cli/"] },
      to: { path: "^core/plot/" },
    },
    {
      name: "page-script-is-bundled",
      comment: "The script of a page runs in a browser: it is made into a text, and nothing imports it.",
      severity: "error",
      from: { path: "^core/", pathNot: "^core/8-report/plot/script/" },
      to: { path: "^core/8-report/plot/script/" },
    },
    {
      name: "infer-is-called-by-the-command",
      comment:
        "Inferring stands beside the pipeline: the command and the library's index call it, and nothing else.",
      severity: "error",
      from: { path: "^core/", pathNot: ["^core/infer/", "^core/9-cli/", "^core/index\\.ts$"] },
      to: { path: "^core/infer/" },
    },
    {
      name: "infer-through-the-index",
      comment: "It reaches stages 0 to 7 through their index.ts alone, and is reached through its own.",
      severity: "error",
      from: { path: "^core/infer/" },
      to: { path: ["^core/[0-7]-[^/]+/(?!index\\.ts$)", "^core/[89]-", "^core/[^/]+\\.ts$"] },
    },
    {
      name: "retrace-imports-0-to-2-and-read",
      comment:
        "It makes jobs of what the reader gives: through the index.ts of stages 0, 1, 2 and 6, and nothing else.",
      severity: "error",
      from: { path: "^core/retrace/" },
      to: {
        path: [
          "^core/[0126]-[^/]+/(?!index\\.ts$)",
          "^core/[345789]-",
          "^core/[^/]+\\.ts$",
          "^core/(compare|infer|cases|interview)/",
        ],
      },
    },
    {
      name: "no-stage-retraces",
      comment: "The stages take a job as it comes, whatever it was read from.",
      severity: "error",
      from: { path: "^core/[0-8]-" },
      to: { path: "^core/retrace/" },
    },
    {
      name: "simulate-imports-base-and-job",
      comment: "The simulation sees a sequence and the types of a job, and nothing of how either came about.",
      severity: "error",
      from: { path: "^core/simulate/" },
      to: { pathNot: ["^core/simulate/", "^core/0-base/index\\.ts$", "^core/1-job/index\\.ts$"] },
    },
    {
      name: "simulate-is-called-by-pages",
      comment: "A stage has no need of it: it stands beside the pipeline.",
      severity: "error",
      from: { path: "^core/[0-8]-" },
      to: { path: "^core/simulate/" },
    },
    {
      name: "spares-import-base-job-and-time",
      comment: "Which tool does an operation hangs on the job alone; how long it cuts, on the clock.",
      severity: "error",
      from: { path: "^core/spares/" },
      to: {
        pathNot: [
          "^core/spares/",
          "^core/0-base/index\\.ts$",
          "^core/1-job/index\\.ts$",
          "^core/time/index\\.ts$",
        ],
      },
    },
    {
      name: "no-stage-takes-spares",
      comment: "The stages see a job whose operations have their tools.",
      severity: "error",
      from: { path: "^core/[0-8]-" },
      to: { path: "^core/spares/" },
    },
    {
      name: "time-imports-base-only",
      comment: "The clock sees steps and facts of the machine, as the guard does, and nothing else.",
      severity: "error",
      from: { path: "^core/time/" },
      to: { pathNot: ["^core/time/", "^core/0-base/index\\.ts$"] },
    },
    {
      name: "no-cycles",
      comment: "Two files that need each other are one file, or miss a third.",
      severity: "error",
      from: { path: "^core/" },
      to: { circular: true },
    },
    {
      name: "prove-imports-base-only",
      comment: "The proof must not share a fault with what it proves.",
      severity: "error",
      from: { path: "^core/7-prove/" },
      to: { pathNot: ["^core/7-prove/", "^core/0-base/index\\.ts$"] },
    },
    {
      name: "emit-and-read-are-strangers",
      comment: "Code that both share would cancel its own errors out in the round trip.",
      severity: "error",
      from: { path: "^core/(5-emit|6-read)/" },
      to: { path: "^core/(5-emit|6-read)/", pathNot: "^core/$1/" },
    },
    {
      name: "base-imports-nothing",
      comment: "0-base is what all stages mean by their words; it stands alone.",
      severity: "error",
      from: { path: "^core/0-base/" },
      to: { pathNot: "^core/0-base/" },
    },
    {
      name: "typescript-in-two-places",
      comment: "It is large: only the emitter's generator and the expression parser load it.",
      severity: "error",
      from: { path: coreButBuild, pathNot: ["^core/5-emit/", "^core/2-dialect/expression[^/]*\\.ts$"] },
      to: { path: "(^|/)node_modules/(@types/)?typescript/" },
    },
    {
      name: "command-line-in-9-cli",
      comment: "Outside 9-cli the code runs in a browser, too.",
      severity: "error",
      from: { path: coreButBuild, pathNot: "^core/9-cli/" },
      to: { path: "(^|/)node_modules/(@types/)?(yargs|cli-progress|@inquirer)/" },
    },
    {
      name: "node-in-9-cli",
      comment: "Outside 9-cli the code runs in a browser, too.",
      severity: "error",
      from: { path: coreButBuild, pathNot: "^core/9-cli/" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "core-knows-no-dialect",
      comment: "core never names a dialect, and does not lean on a test or an example.",
      severity: "error",
      from: { path: coreButBuild },
      to: { path: "^(dialects|test|examples)/" },
    },
    {
      name: "core-is-not-its-build",
      comment: "What makes the package is not in the package.",
      severity: "error",
      from: { path: coreButBuild },
      to: { path: "^core/build/" },
    },
    {
      name: "no-development-packages",
      comment: "What the package runs on must stand under dependencies.",
      severity: "error",
      from: { path: coreButBuild },
      to: { dependencyTypes: ["npm-dev", "npm-no-pkg", "npm-unknown"], pathNot: "(^|/)node_modules/@types/" },
    },
    {
      name: "resolvable",
      comment: "An import that leads nowhere would pass every other rule.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "types", "default"] },
  },
};
