import type { BatchEntry } from "./batch-result.ts";
import { cautions } from "./cautions.ts";
import { clean } from "./clean.ts";
import { count } from "./outcome.ts";
import type { Layout } from "./text-findings.ts";
import { findingsText } from "./text-findings.ts";
import { row } from "./row.ts";
import { simulationText } from "./text-simulation.ts";
import { bullets, contents, tally } from "./text-result.ts";

/**
 * A report on several programs: of each what is wrong, then a list of all with what each takes for granted, then the cautions
 * where there is a program to run.
 *
 *     proved     plate.rs274ngc.ngc
 *                for rs274ngc; 12,345 bytes, 678 steps, tool 1, millimetres; 2 notes
 *                Taken for granted: The machine is homed. Work offset 1 is set.
 *     refused    foot.job.json
 *                for longhand; no program was written; 1 error
 */
export function batchText(entries: readonly BatchEntry[], layout: Layout): string[] {
  const made = entries.filter(({ result }) => result.verdict === "proved").length;
  return [
    ...entries.flatMap((entry) => wrongText(entry, layout)),
    ...entries.flatMap((entry) => entryText(entry, layout)),
    "",
    ...row("in all", totals(entries, made), layout),
    ...(made === 0
      ? []
      : ["", layout.paint("warning", "Before any of them runs"), ...bullets(cautions, layout)]),
  ];
}

/** What is wrong with a program, below its name. Notes would fill the screen; the list counts them. */
function wrongText(entry: BatchEntry, layout: Layout): string[] {
  const worse = entry.result.findings.filter(({ severity }) => severity !== "note");
  return worse.length === 0
    ? []
    : [layout.paint("label", `${nameOf(entry)}, ${entry.dialect}`), "", ...findingsText(worse, layout)];
}

function entryText(entry: BatchEntry, layout: Layout): string[] {
  const { result, dialect, fault } = entry;
  const proved = result.verdict === "proved";
  const word = proved ? layout.paint("good", "proved") : layout.paint("error", fault ? "fault" : "refused");
  const plain = proved ? "proved" : fault ? "fault" : "refused";
  const [name] = row("", clean(result.output ?? nameOf(entry)), { ...layout, width: Infinity });
  const facts = [
    `for ${clean(dialect)}`,
    proved ? contents(result.summary) : "no program was written",
    tally(result),
  ];
  const taken = result.summary.assumptions.join(" ");
  return [
    word + name.slice(plain.length),
    ...row("", facts.join("; "), layout),
    ...simulationText(result.summary.simulation, layout),
    ...(proved ? row("", `Taken for granted: ${taken}`, layout) : []),
  ];
}

function nameOf({ job, dialect }: BatchEntry): string {
  return clean(job ?? dialect);
}

function totals(entries: readonly BatchEntry[], made: number): string {
  const programs = `${String(entries.length)} program${entries.length === 1 ? "" : "s"}`;
  const refused = entries.length - made;
  const notes = count(
    entries.flatMap(({ result }) => result.findings),
    "note",
  );
  const more = notes === 0 ? "" : `; --report json has the notes`;
  return `${programs}: ${String(made)} read back, proved and written, ${String(refused)} refused${more}`;
}
