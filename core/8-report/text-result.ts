import { cautions } from "./cautions.ts";
import { clean } from "./clean.ts";
import { counted } from "./counts.ts";
import type { Reportable, Summary } from "./outcome.ts";
import { count } from "./outcome.ts";
import { rackText } from "./rack-plan.ts";
import type { Layout } from "./text-findings.ts";
import { column, row } from "./row.ts";
import { simulationText } from "./text-simulation.ts";
import { timeText } from "./time-text.ts";
import { hang } from "./wrap.ts";

/** What a command that made a program says: where it stands, its proof, what is assumed, and the cautions. */
export function programText(result: Reportable, layout: Layout): string[] {
  return [
    ...row("program", result.output === undefined ? "not written" : clean(result.output), {
      ...layout,
      width: Infinity,
    }),
    ...dialectText(result.summary, layout),
    ...row("holds", contents(result.summary), layout),
    ...timeRow(result.summary, layout),
    ...proofText(result, layout),
    ...simulationText(result.summary.simulation, layout),
    ...rackText(result.summary, layout),
    ...assumptionsText(result.summary, layout),
    "",
    layout.paint("warning", "Before it runs"),
    ...bullets(cautions, layout),
  ];
}

/** What `prove` says of a program: proved equal to a job, or only read. */
export function readingText(result: Reportable, layout: Layout): string[] {
  const { verdict, summary } = result;
  const said = {
    proved: layout.paint("good", "proved"),
    read: layout.paint(count(result.findings, "error") === 0 ? "good" : "error", "read"),
    failed: layout.paint("error", "differs"),
    refused: layout.paint("error", "refused"),
  }[verdict];
  const explained = {
    proved: "equal to the job",
    read: "under this dialect; nothing to compare it with (--against JOB)",
    failed: "from the job, or its meaning is unclear",
    refused: "",
  }[verdict];
  return [
    ...row("program", `${said} ${explained}`.trimEnd(), { ...layout, width: Infinity }),
    ...dialectText(summary, layout),
    ...row("found", tally(result), layout),
    ...row("holds", contents(summary), layout),
    ...timeRow(summary, layout),
    ...proofText(result, layout),
    ...simulationText(summary.simulation, layout),
    ...(verdict === "proved" ? assumptionsText(summary, layout) : []),
  ];
}

/** How many findings of which severity: "1 error, 2 notes". */
export function tally(result: Pick<Reportable, "findings">): string {
  const { findings } = result;
  const parts = (["error", "warning", "note"] as const).flatMap((severity) => {
    const number = count(findings, severity);
    return number === 0 ? [] : [counted(number, severity)];
  });
  return parts.length === 0 ? "no findings" : parts.join(", ");
}

/** Holds a time such as "2 min 05 s" together where lines are broken. */
const noBreak = "\u00a0";

function timeRow({ time }: Summary, layout: Layout): string[] {
  if (time === undefined) return [];
  const joined = timeText(time).replaceAll(/(?<=\d) (?=s|min|h)|(?<=min|h) (?=\d)/g, noBreak);
  return row("time", joined, layout).map((line) => line.replaceAll(noBreak, " "));
}

function dialectText({ dialect }: Summary, layout: Layout): string[] {
  return dialect === undefined ? [] : row("for", clean(dialect), layout);
}

/** What a program holds, in numbers. */
export function contents({ bytes, blocks, moves, steps, tools, units }: Summary): string {
  const known = (number: number | undefined, name: string): string[] =>
    number === undefined ? [] : [counted(number, name)];
  const numbers = [
    known(bytes, "byte"),
    known(blocks, "block"),
    known(moves, "move"),
    known(steps, "step"),
    tools === undefined || tools.length === 0
      ? []
      : [`tool${tools.length === 1 ? "" : "s"} ${tools.join(" ")}`],
    units === undefined ? [] : [units === "mm" ? "millimetres" : "inches"],
  ].flat();
  return numbers.length === 0 ? "nothing" : numbers.join(", ");
}

function proofText({ proof }: Reportable, layout: Layout): string[] {
  if (proof === undefined) return [];
  const facts = `${counted(proof.bytes, "byte")}, ${counted(proof.steps, "step")}, sha256 ${proof.sha256.slice(0, 16)}`;
  const equal = " ".repeat(column) + layout.paint("good", "read back and proved equal to the job");
  return [...row("proof", facts, layout), equal];
}

function assumptionsText({ assumptions }: Summary, layout: Layout): string[] {
  if (assumptions.length === 0) return [];
  return ["", layout.paint("rule", "Taken for granted at the machine"), ...bullets(assumptions, layout)];
}

/** Sentences, one a bullet. */
export function bullets(texts: readonly string[], { width }: Layout): string[] {
  return texts.flatMap((text) => hang("  - ", clean(text), width));
}
