import { closeSync, openSync, statSync } from "node:fs";
import { basename } from "node:path";
import type { Reportable } from "#report";
import { changedText, clean, programText, wrap } from "#report";
import type { PostArguments } from "../commands/arguments.ts";
import { standardStream } from "../files/input.ts";
import type { ReportOptions } from "../output.ts";
import { layoutOf, reportOptionsOf, show } from "../output.ts";
import { usageError } from "../usage.ts";
import { changedBlocks } from "./changed-blocks.ts";
import { watchFiles } from "./changes.ts";
import type { Posted } from "./posted.ts";

/** A program that stands in its file, held open so that the next one can be compared with it. */
interface Standing {
  readonly output: string;
  readonly descriptor: number;
  /** Time of day when it was posted. */
  readonly since: string;
  /** Notes that have been told. */
  readonly told: ReadonlySet<string>;
}

/**
 * `tapewright post --watch`: posts, and posts again whenever a file that the program is made from changes, until a signal
 * ends the process. A program that is refused leaves the last good one in its file, and says so.
 *
 * @throws a usage error: no file to read or none to write
 */
export async function runWatch(
  args: PostArguments,
  postOnce: (args: PostArguments) => Promise<Posted>,
): Promise<number> {
  requireFiles(args);
  const options = reportOptionsOf(args);
  const { input, setup } = args;
  const changes = await watchFiles(setup === undefined ? [input] : [input, setup]);
  let standing: Standing | undefined;
  let watched = "";
  for (;;) {
    const { result, madeFrom } = await postOnce(args);
    changes.alsoWatch(madeFrom);
    standing = tell(result, standing, options);
    const files = listed(madeFrom.map((file) => basename(file)));
    if (options.report === "text" && !options.quiet && files !== watched)
      say(wrap(`watching ${files}; Ctrl-C ends it`, layoutOf(2, options).width));
    watched = files;
    await changes.next();
  }
}

/** Reports one posting; gives the program that stands now. */
function tell(
  result: Reportable,
  before: Standing | undefined,
  options: ReportOptions,
): Standing | undefined {
  const since = timeOfDay();
  const refusal =
    before === undefined ? "no program was written." : `${before.output} is still that of ${before.since}.`;
  if (result.output === undefined) {
    show(result, options, { programOnOutput: false, text: () => [], findingsAreResult: false, refusal });
    return before;
  }
  const told = new Set([...(before?.told ?? []), ...result.findings.map(noteOf)]);
  const standing = { output: result.output, descriptor: openSync(result.output, "r"), since, told };
  if (before === undefined) {
    show(result, options, { programOnOutput: false, text: programText, findingsAreResult: false });
    return standing;
  }
  const changed = changedBlocks(before.descriptor, standing.descriptor);
  closeSync(before.descriptor);
  const same = changed.gone + changed.added === 0;
  const again = { ...result, summary: { ...result.summary, changed } };
  const shown = options.report === "json" ? again : { ...again, findings: withoutTold(again, before.told) };
  show(shown, options, {
    programOnOutput: false,
    text: (_, layout) => [
      `${layout.paint("label", since)}  ${clean(standing.output)} posted again, read back and proved`,
      ...changedText(changed, layout),
      ...(same
        ? []
        : [layout.paint("warning", "It is another program now: prove it out again before it cuts.")]),
    ],
    findingsAreResult: false,
  });
  return standing;
}

/** What a posting finds, without the notes that one before it has told. */
function withoutTold({ findings }: Reportable, told: ReadonlySet<string>): Reportable["findings"] {
  return findings.filter((finding) => finding.severity !== "note" || !told.has(noteOf(finding)));
}

function noteOf({ rule, message }: Reportable["findings"][number]): string {
  return `${rule} ${message}`;
}

function requireFiles({ input, output }: PostArguments): void {
  if (input === standardStream) throw usageError("--watch needs a job in a file: standard input comes once.");
  if (output === undefined) return;
  const isFile = output !== standardStream && (statSync(output, { throwIfNoEntry: false })?.isFile() ?? true);
  if (!isFile) throw usageError("--watch needs a file for the program: name one with --output FILE.");
}

function listed(files: readonly string[]): string {
  return files.length === 1 ? files[0] : `${files.slice(0, -1).join(", ")} and ${files.at(-1)}`;
}

function say(lines: readonly string[]): void {
  process.stderr.write(lines.map((line) => `${clean(line)}\n`).join(""));
}

function timeOfDay(): string {
  return new Date().toTimeString().slice(0, 8);
}
