import { realpathSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import type { PostArguments } from "../commands/arguments.ts";
import type { LoadedDialect } from "../dialects/loaded.ts";
import { standardStream } from "../files/input.ts";
import { programBeside } from "../files/target.ts";
import { isSystemError } from "../files/world.ts";
import { usageError } from "../usage.ts";

/** A program that is to be made: one job for one dialect. */
export interface WantedProgram {
  /** The job's file, as the command line has it. */
  readonly input: string;
  readonly dialect: LoadedDialect;
  /** Where the program goes. */
  readonly output: string;
}

/**
 * Every job for every dialect, in the order of the command line. A program stands beside its job, or in the folder that
 * --output names; where there are several dialects its name says which: `plate.rs274ngc.ngc`.
 *
 * @throws a usage error: two programs of one name
 */
export function wantedPrograms(
  inputs: readonly string[],
  dialects: readonly LoadedDialect[],
  { dialects: named, output: folder, airCut }: PostArguments,
): WantedProgram[] {
  const wanted = inputs.flatMap((input) =>
    dialects.map((loaded) => {
      const { name, format } = loaded.dialect;
      const ending = named.length > 1 ? `${name}.${format.extension}` : format.extension;
      const beside = programBeside(input, ending, airCut !== undefined);
      return {
        input,
        dialect: loaded,
        output: folder === undefined ? beside : join(folder, basename(beside)),
      };
    }),
  );
  const taken = new Map<string, WantedProgram>();
  for (const program of wanted) {
    const place = placeOf(program.output);
    const other = taken.get(place);
    if (other !== undefined)
      throw usageError(
        `The programs of ${other.input} and ${program.input} would both be written to ${program.output}; post them one by one, with --output FILE.`,
      );
    taken.set(place, program);
  }
  return wanted;
}

/**
 * What cannot be had of several programs at once.
 *
 * @throws a usage error
 */
export function refuseSingles(
  inputs: readonly string[],
  { watch, split, output, dialects }: PostArguments,
): void {
  if (inputs.includes(standardStream))
    throw usageError("Standard input holds one job; several are posted from files.");
  const twice = inputs.find((input, index) => inputs.indexOf(input) !== index);
  if (twice !== undefined) throw usageError(`The job ${twice} is named twice.`);
  const same = dialects.find((name, index) => dialects.indexOf(name) !== index);
  if (same !== undefined) throw usageError(`The dialect ${same} is stated twice.`);
  if (split !== undefined) throw usageError("--split is for one job and one dialect.");
  if (watch === true) throw usageError("--watch follows one job for one dialect.");
  if (output !== undefined && !isFolder(output))
    throw usageError(`--output names a folder where several programs are made, and ${output} is none.`);
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

/** A name for the place of a file that need not be there, whatever way leads to its folder. */
function placeOf(path: string): string {
  try {
    return join(realpathSync(dirname(path)), basename(path));
  } catch (error) {
    if (isSystemError(error)) return path; // The folder is missing, which is told when the program is to be written.
    throw error;
  }
}
