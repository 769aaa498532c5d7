import type { Reading } from "#job";
import type { ReadingArguments } from "./commands/arguments.ts";
import type { Input } from "./files/input.ts";
import { byteSource, openInput, standardStream } from "./files/input.ts";
import { usageError } from "./usage.ts";
import type { PlannedReading } from "./work/plan.ts";

/** File endings of cutter location source. */
const clEndings = /\.(apt|cls|cl)$/i;

/**
 * How a job's file is to be read: by its ending, or as --input-form says.
 *
 * @throws a usage error, or a carried finding about the head file
 */
export async function prepareReading(file: string, args: ReadingArguments): Promise<PlannedReading> {
  const { cl = [], head, inputForm } = args;
  if ((inputForm ?? formOf(file)) === "json") {
    if (cl.length > 0 || head !== undefined)
      throw usageError(
        `${cl.length > 0 ? "--cl" : "--head"} is for cutter location source; ${file === standardStream ? "standard input is read as such with --input-form cl" : `${file} is read as JSON`}.`,
      );
    return { form: "json" };
  }
  const { parseClOptions } = await import("#job");
  const options = parseClOptions(cl);
  if (typeof options === "string") throw usageError(options);
  const headInput: Input | undefined = head === undefined ? undefined : await openInput("head", head);
  return { form: "cl", options, head: headInput };
}

function formOf(file: string): "json" | "cl" {
  return clEndings.test(file) ? "cl" : "json";
}

/** How the core is to read a job. */
export function readingOf(reading: PlannedReading): Reading {
  if (reading.form === "json") return reading;
  const { form, options, head } = reading;
  return { form, options, ...(head === undefined ? {} : { head: byteSource(head) }) };
}
