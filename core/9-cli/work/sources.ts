import { readFileSync } from "node:fs";
import { memorySource } from "#base";
import type { Sources, SourceText } from "#report";
import type { Input } from "../files/input.ts";
import { byteSource } from "../files/input.ts";
import type { Protected } from "../files/target.ts";
import { protectedDialect } from "../files/target.ts";
import { isSystemError } from "../files/world.ts";
import type { Plan, PlannedJob, PlannedReading } from "./plan.ts";

/** Finds the text of a place among the inputs of a plan and the files of its dialect. */
export function createSources(plan: Plan): Sources {
  const job: PlannedJob | undefined = plan.kind === "post" ? plan.job : plan.against;
  const inputs: Readonly<Record<string, Input | undefined>> = {
    job: job?.input,
    head: headOf(job?.reading),
    setup: job?.setup?.input,
    program: plan.kind === "prove" ? plan.program : undefined,
  };
  return inputSources(inputs, createDialectSources({ ...readingPaths(job?.reading), ...plan.dialect.paths }));
}

/** The head file of a job, where it has one. */
export function headOf(reading: PlannedReading | undefined): Input | undefined {
  return reading === undefined || reading.form === "json" ? undefined : reading.head;
}

/** Paths of the dialect files that a job is read by, by their names in findings. */
export function readingPaths(reading: PlannedReading | undefined): Readonly<Record<string, string>> {
  return reading?.form === "program" ? reading.dialect.paths : {};
}

/** What of a planned job says which files are behind it. */
type FilesOfJob = Pick<PlannedJob, "input" | "reading"> & Partial<Pick<PlannedJob, "setup" | "rack">>;

/** The files that a job is made from. */
export function jobFiles({ input, reading, setup, rack }: FilesOfJob): Input[] {
  return [input, headOf(reading), setup?.input, rack].filter((file) => file !== undefined);
}

/**
 * What nothing that is made of a job may replace: its files, and those of the dialects that it is read and posted by.
 *
 * @param paths dialect files that it is posted by
 */
export function protectedFiles(job: FilesOfJob, paths: readonly string[] = []): Protected[] {
  return [...jobFiles(job), ...protectedDialect([...Object.values(readingPaths(job.reading)), ...paths])];
}

/**
 * Finds the text of a place among the files of a job and those of its dialects.
 *
 * @param paths files of the dialect that it is posted by, by their names in findings
 */
export function jobSources(job: FilesOfJob, paths: Readonly<Record<string, string>> = {}): Sources {
  const inputs = { job: job.input, head: headOf(job.reading), setup: job.setup?.input };
  return inputSources(inputs, createDialectSources({ ...readingPaths(job.reading), ...paths }));
}

/** Finds the text of a place among inputs by their source, and that of another in the files of a dialect. */
export function inputSources(inputs: Readonly<Record<string, Input | undefined>>, dialect: Sources): Sources {
  return (source, file) => {
    const input = inputs[source];
    return input ? { file: input.file, bytes: byteSource(input) } : dialect(source, file);
  };
}

/** Finds the text of a dialect file of the chain; one that has gone since has no text. */
export function createDialectSources(paths: Readonly<Record<string, string>>): Sources {
  const known = new Map<string, SourceText | undefined>();
  return (source, file) => {
    if (source !== "dialect" || file === undefined) return undefined;
    if (!known.has(file)) known.set(file, readText(file, paths[file]));
    return known.get(file);
  };
}

function readText(file: string, path: string | undefined): SourceText | undefined {
  if (path === undefined) return undefined;
  try {
    return { file, bytes: memorySource(new Uint8Array(readFileSync(path))) };
  } catch (error) {
    if (isSystemError(error)) return undefined;
    throw error;
  }
}

/** Finds the text of a place in files that are held in memory, by their name. */
export function createTextSources(texts: Readonly<Record<string, Uint8Array>>): Sources {
  return (_, file) =>
    file !== undefined && Object.hasOwn(texts, file) ? { file, bytes: memorySource(texts[file]) } : undefined;
}
