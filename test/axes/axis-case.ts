import type { Batch, Finding } from "#base";
import { memorySource } from "#base";
import { read } from "#read";
import type { ReadyDialect } from "../../core/index.ts";
import { postText, proveText } from "../../core/index.ts";
import { errorRules, ready } from "../support/ready.ts";
import { allOfSteps } from "./all-of-steps.ts";
import { sampleJob } from "./sample-job.ts";

/** Two controllers that disagree about one axis of variation. */
export interface AxisCase {
  /** Number of the axis, as DEVELOPERS.md lists them. */
  readonly axis: number;
  /** What the two disagree about: "dwell in seconds or in milliseconds". */
  readonly title: string;
  /** Dialect that both leaves extend. */
  readonly base: string;
  /** Further lines that both leaves have: what the keys below need to be used at all. */
  readonly both?: string;
  /** What the one states, and the other; YAML without `dialect`, `title` and `extends`. */
  readonly one: string;
  readonly other: string;
  /** The job, JSON text; the sample job where it is left out. */
  readonly job?: string;
  /** Rule by which the other refuses the job, where it cannot say it or must not. */
  readonly otherRefuses?: string;
  /** Where text alone does not show it: a program that the two read in different ways. */
  readonly program?: string;
  /** Why both write the same: what differs is how a program of somebody else's is read. */
  readonly sameText?: string;
  /** Why the one has nothing against what the other wrote: a stricter form, which is right there, too. */
  readonly oneTakes?: string;
  /** Why the other has nothing against what the one wrote: the words are the same, and what differs shows in no reading. */
  readonly otherTakes?: string;
  /** The two read alike, but their machines do not do the same: it is the guard by which the other objects. */
  readonly guarded?: true;
}

/** What became of a case: texts, and how each reader takes the other's text. */
export interface AxisResult {
  readonly oneText: string | undefined;
  readonly otherText: string | undefined;
  readonly otherRules: readonly string[];
  /** Whether each reader (or the guard behind it) objects to the other's text, or reads other steps from it. */
  readonly otherDisagrees: boolean;
  readonly oneDisagrees: boolean;
}

/** Posts the case under both leaves and has each read the other's text. Throws with the findings where a leaf is refused. */
export async function tryCase(axisCase: AxisCase): Promise<AxisResult> {
  const job = axisCase.job ?? sampleJob;
  const [one, other] = await Promise.all([leaf(axisCase, "one"), leaf(axisCase, "other")]);
  const first = postText({ job }, one);
  const second = postText({ job }, other);
  if (first.program === undefined) throw new Error(`one: ${listed(first.outcome.findings)}`);
  const refuses = axisCase.otherRefuses !== undefined;
  if (second.program === undefined && !refuses) throw new Error(`other: ${listed(second.outcome.findings)}`);
  const shown = axisCase.program ?? first.program;
  const answer = axisCase.program ?? second.program;
  const own = axisCase.program === undefined;
  return {
    oneText: first.program,
    otherText: second.program,
    otherRules: errorRules(second.outcome.findings),
    otherDisagrees: axisCase.guarded
      ? objects(shown, other) && !objects(shown, one)
      : disagree(shown, one, other, first.outcome.summary.units, own),
    oneDisagrees: answer === undefined || disagree(answer, other, one, second.outcome.summary.units, own),
  };
}

function leaf(axisCase: AxisCase, which: "one" | "other"): Promise<ReadyDialect> {
  const lines = [
    "dialect: leaf",
    "title: A leaf",
    `extends: ${axisCase.base}`,
    axisCase.both ?? "",
    axisCase[which],
  ];
  return ready("leaf.dialect.yaml", { "leaf.dialect.yaml": lines.join("\n") });
}

function listed(findings: readonly Finding[]): string {
  return findings
    .filter(({ severity }) => severity !== "note")
    .map(({ rule, message, key }) => `${rule}: ${message} (${key ?? "-"})`)
    .join("\n");
}

/** Whether the guard has anything against a text, read without a job. */
function objects(text: string, reader: ReadyDialect): boolean {
  return errorRules(proveText(text, reader).findings).length > 0;
}

/** Whether a text of `writer` is objected to, or read as other steps, by `reader`; one that it wrote it must not object to itself. */
function disagree(
  text: string,
  writer: ReadyDialect,
  reader: ReadyDialect,
  units: "mm" | "inch" | undefined,
  wroteIt: boolean,
): boolean {
  const own = readAll(text, writer, units);
  if (wroteIt && own.told.length > 0)
    throw new Error(`The writer objects to its own text:\n${listed(own.told)}`);
  const foreign = readAll(text, reader, units);
  return foreign.findings > own.findings || foreign.steps !== own.steps;
}

function readAll(text: string, ready: ReadyDialect, units: "mm" | "inch" | undefined) {
  const { dialect } = ready;
  const isLoud = ({ severity }: Finding): boolean => severity !== "note";
  const told: Finding[] = [];
  const bytes = new TextEncoder().encode(text);
  const batches: Iterable<Batch> = read(
    [bytes],
    dialect.format,
    dialect.machine,
    { ...(units ? { units } : {}), source: memorySource(bytes) },
    (finding) => {
      if (isLoud(finding)) told.push(finding);
    },
  );
  const steps = allOfSteps(batches).join("\n");
  // What a machine needs confirmed does not show in the words alone: the guard sees it.
  const guarded = proveText(text, ready).findings.filter(
    (finding) => isLoud(finding) && !/^(?:read|block)\//.test(finding.rule),
  );
  return { findings: told.length + guarded.length, told, steps };
}
