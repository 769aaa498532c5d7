import { basename } from "node:path";
import { chunksOf } from "#base";
import type { Emitter } from "#emit";
import type { HashedFile, Plot, Reportable, SetupSheet } from "#report";
import { locate, sheetPage, sheetText } from "#report";
import { plotPosted } from "../plot/index.ts";
import type { NamedInputs, SheetOutcome } from "../sheet/index.ts";
import { sheet } from "../sheet/index.ts";
import type { SheetArguments } from "./commands/arguments.ts";
import type { programOptions, readingOptions } from "./commands/options.ts";
import type { LoadedDialect } from "./dialects/loaded.ts";
import { readChain } from "./dialects/read-chain.ts";
import { exitCode } from "./exit-code.ts";
import type { Input } from "./files/input.ts";
import { byteSource, refuseChanged, standardStream } from "./files/input.ts";
import { putText } from "./files/put-text.ts";
import { besideInput, programBeside, resolveTarget } from "./files/target.ts";
import type { Target } from "./files/target.ts";
import { isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { packing } from "./packing.ts";
import { prepareDialect, prepareJob, programOptionsOf, refusedResult, simulationOf } from "./prepare.ts";
import { usageError } from "./usage.ts";
import { createDigest, jobInput } from "./work/compute.ts";
import type { PlannedJob } from "./work/plan.ts";
import { headOf, jobFiles, jobSources, protectedFiles } from "./work/sources.ts";

/** `tapewright sheet`: the set-up sheet of a job, proved or refused. Gives the exit code that `post` gives. */
export async function runSheet(args: SheetArguments): Promise<number> {
  const options = programOptionsOf(args);
  const simulate = simulationOf(args);
  const { output } = args;
  if (output !== undefined && output !== standardStream && !/\.html?$/i.test(output))
    throw usageError(`--output is the name of a page, such as plate.html, and not ${output}.`);
  const reporting = reportOptionsOf(args);
  const loaded = await prepareDialect(args);
  if ("verdict" in loaded) return show(loaded, reporting);
  try {
    const job = await prepareJob(args.input, args, options);
    if ("verdict" in job) return show(job, reporting);
    const target = targetOf(args, job, loaded);
    const emitter = (await import(loaded.emitter)) as Emitter;
    const means = { dialect: loaded.dialect, emitter, createDigest };
    const simulation = simulate === undefined ? {} : { simulate };
    const made = sheet({ ...means, ...simulation, named: namedInputs(args, job, loaded), ...jobInput(job) });
    const drawn =
      made.sheet.verdict === "proved"
        ? plotPosted({ ...means, ...jobInput(job) }, made.outcome, packing).plot
        : undefined;
    const result = await writeSheet(made, drawn, target, job, loaded);
    const isProved = made.sheet.verdict === "proved";
    return show(result, reporting, {
      programOnOutput: target.shown === "standard output",
      text: (_, layout) => sheetText(result, made.sheet, layout),
      findingsAreResult: false,
      ...(isProved ? {} : { refusal: `${target.shown} was written, and says NOT PROVED.` }),
      code: exitCode(result),
    });
  } catch (error) {
    if (!isCarried(error)) throw error;
    return show(refusedResult([error.finding]), reporting);
  }
}

/** Undefined: beside the input; a job from standard input has no place beside it. */
function targetOf({ input, output }: SheetArguments, job: PlannedJob, { paths }: LoadedDialect): Target {
  const name = output ?? (input === standardStream ? standardStream : besideInput(input, "sheet.html"));
  return resolveTarget(name, protectedFiles(job, Object.values(paths)), "page");
}

async function writeSheet(
  { outcome, sheet: facts }: SheetOutcome,
  plot: Plot | undefined,
  target: Target,
  job: PlannedJob,
  { dialect, findings, paths }: LoadedDialect,
): Promise<Reportable> {
  const located = locate([...findings, ...outcome.findings], jobSources(job, paths), dialect);
  const page = await sheetPage({
    sheet: facts,
    findings: located,
    ...(plot === undefined ? {} : { backplot: { plot, packing } }),
  });
  await putText(target, page, () => jobFiles(job).forEach(refuseChanged));
  const { proof, verdict } = outcome;
  return {
    verdict,
    findings: located,
    summary: { ...outcome.summary, dialect: dialect.name, sheet: facts satisfies SetupSheet },
    ...(proof === undefined ? {} : { proof }),
    output: target.shown,
  };
}

/** The files behind a sheet with their hashes, and what `post` would call the program: names alone, since folders are those of this computer. */
function namedInputs(args: SheetArguments, job: PlannedJob, loaded: LoadedDialect): NamedInputs {
  const { input, reading, setup } = job;
  const head = headOf(reading);
  const file = args.input === standardStream ? "program" : args.input;
  return {
    job: hashed(input),
    ...(head === undefined ? {} : { head: hashed(head) }),
    ...(setup === undefined ? {} : { setup: hashed(setup.input) }),
    ...(reading.form === "program" ? { readAs: readChain(reading.dialect) } : {}),
    dialect: readChain(loaded),
    program: basename(programBeside(file, loaded.dialect.format.extension, job.options.airCut !== undefined)),
    options: optionsOf(args),
  };
}

function hashed(input: Input): HashedFile {
  const digest = createDigest();
  for (const chunk of chunksOf(byteSource(input))) digest.update(chunk);
  return { file: basename(input.file), sha256: digest.hex() };
}

/** Options that change the program or how the job is read, as they can be typed again. */
function optionsOf(args: SheetArguments): string[] {
  const stated: Record<
    keyof typeof programOptions | keyof typeof readingOptions,
    string | readonly string[] | boolean | undefined
  > = {
    only: args.only,
    from: args.from,
    "spindle-holds": args.spindleHolds,
    setup: args.setup,
    rack: args.rack,
    "air-cut": args.airCut,
    "air-feed": args.airFeed,
    "optional-stops": args.optionalStops,
    head: args.head,
    "read-as": args.readAs,
    "input-form": args.inputForm,
    cl: args.cl,
  };
  return Object.entries(stated).flatMap(([name, value = []]) => {
    if (typeof value === "boolean") return value ? [`--${name}`] : [];
    return [value].flat().map((one) => `--${name} ${one}`);
  });
}
