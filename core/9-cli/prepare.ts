import type { Finding, Report } from "#base";
import { atomsPerUnit, memorySource } from "#base";
import type { Reportable, Sources } from "#report";
import { locate } from "#report";
import type { SimulationChoice } from "#compile";
import type { DialectArguments, ProgramArguments, SimulationArguments } from "./commands/arguments.ts";
import { loadDialect } from "./dialects/load.ts";
import type { Input } from "./files/input.ts";
import type { LoadedDialect, RefusedDialect } from "./dialects/loaded.ts";
import { closeInput, openInput, readWhole } from "./files/input.ts";
import { prepareReading, refuseOtherForm } from "./reading.ts";
import { usageError } from "./usage.ts";
import type { PlannedJob, ProgramOptions } from "./work/plan.ts";
import { createDialectSources } from "./work/sources.ts";

/** A result that is nothing but findings. */
export function refusedResult(findings: readonly Finding[], sources: Sources = () => undefined): Reportable {
  return { verdict: "refused", findings: locate(findings, sources), summary: { assumptions: [] } };
}

/** The dialect that a command names, or why it cannot be had. */
export async function prepareDialect(args: DialectArguments): Promise<LoadedDialect | Reportable> {
  const loaded = await loadDialect(args.dialect, args.noCache !== true);
  return "refused" in loaded ? refusedDialect(loaded) : loaded;
}

/** Why a dialect cannot be had. */
export function refusedDialect({ findings, paths }: RefusedDialect): Reportable {
  return refusedResult(findings, createDialectSources(paths));
}

/**
 * The job that a command names, with its set-up and options, or why it cannot be had.
 *
 * @throws a carried finding about a file
 */
export async function prepareJob(
  file: string,
  args: ProgramArguments,
  options: ProgramOptions,
): Promise<PlannedJob | Reportable> {
  const reading = await prepareReading(file, args);
  if ("refused" in reading) return refusedDialect(reading);
  const input = await openInput("job", file);
  refuseOtherForm(input, reading);
  if (args.setup === undefined && args.rack === undefined)
    return { input, reading, setup: undefined, rack: undefined, options };
  const { readRack, readSetup } = await import("#dialect");
  const setup = args.setup === undefined ? undefined : await readSetupFile("set-up", args.setup, readSetup);
  if (setup !== undefined && "verdict" in setup) return setup;
  if (args.rack === undefined) return { input, reading, setup, rack: undefined, options };
  if (setup?.content.rack !== undefined)
    throw usageError(
      "A set-up with `rack` says how the rack is loaded when the program starts, and --rack what is in it now: state one of them.",
    );
  const rack = await readSetupFile("rack", args.rack, readRack);
  if ("verdict" in rack) return rack;
  return { input, reading, setup, rack: rack.input, options: { ...options, rackNow: rack.content } };
}

/** How a file of the set-up is read: the set-up itself, or what is in the rack now. */
type ReadContent<Content> = (
  named: { readonly file: string; readonly bytes: Uint8Array },
  report: Report,
) => Promise<Content | undefined>;

/**
 * A file of the set-up with what stands in it, or why that cannot be had.
 *
 * @throws a carried finding about the file
 */
async function readSetupFile<Content>(
  role: "set-up" | "rack",
  file: string,
  read: ReadContent<Content>,
): Promise<{ readonly input: Input; readonly content: Content } | Reportable> {
  const input = await openInput(role, file);
  const findings: Finding[] = [];
  const bytes = readWhole(input);
  const content = await read({ file: input.file, bytes }, (finding) => findings.push(finding));
  if (content !== undefined) return { input, content };
  closeInput(input);
  return refusedResult(findings, () => ({ file: input.file, bytes: memorySource(bytes) }));
}

/**
 * The options that change a program.
 *
 * @throws a usage error
 */
export function programOptionsOf(args: ProgramArguments): ProgramOptions {
  const { only, from, spindleHolds, airCut, airFeed, optionalStops } = args;
  if (airFeed !== undefined && airCut === undefined)
    throw usageError("--air-feed is the highest feed of an air cut, and needs --air-cut HEIGHT.");
  return {
    only: only === undefined ? undefined : idList(only),
    from,
    spindleHolds: spindleHolds === undefined ? undefined : heldTool(spindleHolds),
    airCut:
      airCut === undefined
        ? undefined
        : { height: lengthOf("--air-cut", airCut), feed: lengthOf("--air-feed", airFeed ?? usualAirFeed) },
    optionalStops: optionalStops === true,
  };
}

/**
 * How the stock is simulated; undefined where it is not.
 *
 * @throws a usage error
 */
export function simulationOf({ simulate, resolution }: SimulationArguments): SimulationChoice | undefined {
  if (simulate !== true) {
    if (resolution !== undefined) throw usageError("--resolution goes with --simulate.");
    return undefined;
  }
  if (resolution === undefined) return {};
  const width = Number(resolution);
  if (!/^[0-9.]+$/.test(resolution) || !(width > 0))
    throw usageError(
      `--resolution is a length above 0 in the job's units, such as 0.5, and not ${resolution}.`,
    );
  return { resolution: width };
}

/** Highest feed of an air cut where none is stated, mm/min (no source): fast enough for a dry run, slow enough to stop it. */
const usualAirFeed = "2000";

/** "50", "50 mm" or "2in" in atoms; above 0. */
function lengthOf(option: string, text: string): number {
  const [, digits, unit] = /^(\d{1,6}(?:\.\d{1,6})?) ?(mm|in)?$/.exec(text) ?? [];
  const atoms = Math.round(Number(digits) * atomsPerUnit[unit === "in" ? "inch" : "mm"]);
  if (digits !== undefined && atoms > 0) return atoms;
  throw usageError(`${option} is a length above 0, in mm or with in behind it (50, 2in), and not ${text}.`);
}

function idList(text: string): string[] {
  const ids = text.split(",").map((id) => id.trim());
  if (ids.includes(""))
    throw usageError("--only lists the ids of operations with commas between, such as op10,op20.");
  return ids;
}

function heldTool(text: string): number | "none" {
  if (text === "none") return "none";
  const tool = Number(text);
  if (/^[0-9]+$/.test(text) && Number.isSafeInteger(tool) && tool > 0) return tool;
  throw usageError(`--spindle-holds is the number of a tool, or none, and not ${text}.`);
}
