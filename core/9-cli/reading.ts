import type { InputReading } from "#retrace";
import type { ReadingArguments } from "./commands/arguments.ts";
import type { Input } from "./files/input.ts";
import type { RefusedDialect } from "./dialects/loaded.ts";
import { loadDialect } from "./dialects/load.ts";
import { byteSource, openInput, standardStream } from "./files/input.ts";
import { usageError } from "./usage.ts";
import type { PlannedReading } from "./work/plan.ts";

/** File endings of cutter location source. */
const clEndings = /\.(apt|cls|cl)$/i;

/**
 * How a job's file is to be read: by its ending, or as --input-form says; under --read-as it is a program.
 *
 * @returns the dialect of --read-as where that is refused
 * @throws a usage error, or a carried finding about the head file
 */
export async function prepareReading(
  file: string,
  args: ReadingArguments,
): Promise<PlannedReading | RefusedDialect> {
  const { cl = [], head, inputForm, readAs } = args;
  if (readAs !== undefined) return prepareProgram(readAs, args);
  if ((inputForm ?? formOf(file)) === "json") {
    if (cl.length > 0 || head !== undefined)
      throw usageError(
        `${cl.length > 0 ? "--cl is for cutter location source" : "--head is for cutter location source and programs"}; ${file === standardStream ? "standard input is read as such with --input-form cl" : `${file} is read as JSON`}.`,
      );
    return { form: "json" };
  }
  const { parseClOptions } = await import("#job");
  const options = parseClOptions(cl);
  if (typeof options === "string") throw usageError(options);
  const headInput: Input | undefined = head === undefined ? undefined : await openInput("head", head);
  return { form: "cl", options, head: headInput };
}

/** How a program or a source begins, and no JSON does: a mark, a comment, a word, `PARTNO`. */
const otherBeginning = /^\s*[%(;:/A-Z$]/;

/**
 * Refuses what is no JSON from its first letter on, before the job is read for one mistake after the other.
 *
 * @throws a usage error
 */
export function refuseOtherForm(input: Input, { form }: PlannedReading): void {
  if (form !== "json") return;
  const window = new Uint8Array(64);
  const length = byteSource(input).read(0, window);
  if (!otherBeginning.test(new TextDecoder().decode(window.subarray(0, length)))) return;
  throw usageError(
    `${input.file} is no job in JSON. A program is read with --read-as DIALECT, cutter location source with --input-form cl.`,
  );
}

async function prepareProgram(
  readAs: string,
  { cl = [], head, inputForm, noCache }: ReadingArguments,
): Promise<PlannedReading | RefusedDialect> {
  if (cl.length > 0) throw usageError("--cl is for cutter location source, and --read-as for a program.");
  if (inputForm !== undefined)
    throw usageError(`--read-as says that the job is a program, and --input-form that it is ${inputForm}.`);
  const dialect = await loadDialect(readAs, noCache !== true);
  if ("refused" in dialect) return dialect;
  return { form: "program", dialect, head: head === undefined ? undefined : await openInput("head", head) };
}

function formOf(file: string): "json" | "cl" {
  return clEndings.test(file) ? "cl" : "json";
}

/** How the core is to read a job. */
export function readingOf(reading: PlannedReading): InputReading {
  if (reading.form === "json") return reading;
  const head = reading.head === undefined ? {} : { head: byteSource(reading.head) };
  if (reading.form === "program") return { form: "program", dialect: reading.dialect.dialect, ...head };
  return { form: "cl", options: reading.options, ...head };
}
