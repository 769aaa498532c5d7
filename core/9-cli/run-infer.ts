import type { Finding } from "#base";
import type { Inference, SampleText } from "#infer";
import { answerText, inferDialect } from "#infer";
import type { Layout, Located, Reportable } from "#report";
import { clean, hang, locate } from "#report";
import type { InferArguments } from "./commands/arguments.ts";
import { createFileLoader } from "./dialects/loader.ts";
import { newDialectName, newDialectTarget } from "./dialects/new-file.ts";
import type { Input } from "./files/input.ts";
import { byteSource, openInput, readWhole, standardStream } from "./files/input.ts";
import { putText } from "./files/put-text.ts";
import type { Target } from "./files/target.ts";
import { carry, fileFinding, isCarried } from "./files/world.ts";
import { writeText } from "./files/write.ts";
import { reportOptionsOf, show } from "./output.ts";
import { schemaAddress } from "./package.ts";
import { refusedResult } from "./prepare.ts";
import { usageError } from "./usage.ts";

/** Largest program that is read, bytes; its beginning and its end are studied. */
const mostBytes = 512 << 20;

/** `tapewright dialect infer`: a dialect file from programs that run. Gives the exit code. */
export async function runInfer(args: InferArguments): Promise<number> {
  const { result, text } = await infer(args);
  const options = reportOptionsOf(args);
  // Without a file the text itself is what is asked for; the JSON report carries it, too.
  const onOutput = args.output === standardStream || (args.output === undefined && options.report === "text");
  if (text !== undefined && onOutput) writeText(1, text);
  return show(result, options, {
    programOnOutput: onOutput,
    text: inferenceText,
    findingsAreResult: false,
    refusal: "no dialect file was written.",
  });
}

async function infer(args: InferArguments): Promise<{ result: Reportable; text?: string }> {
  const findings: Finding[] = [];
  if (args.programs.length === 0) throw usageError("The name of the file is missing.");
  const name = newDialectName(fileNameOf(args.output), "The file of --output");
  try {
    const target = targetOf(args.output);
    const inputs = await Promise.all(args.programs.map((file) => openInput("program", file)));
    const sources = (_: string, file?: string) => {
      const input = inputs.find((one) => one.file === file);
      return input && { file: input.file, bytes: byteSource(input) };
    };
    const programs = inputs.map(sampleOf);
    const loader = createFileLoader();
    refuseUnknown(args.from, loader.shipped);
    const facts = {
      programs,
      loader,
      name,
      schema: schemaAddress(fileNameOf(args.output)),
      ...(args.from === undefined ? {} : { from: args.from }),
    };
    const found = await inferDialect(facts, (finding) => findings.push(finding));
    if (found === undefined) return { result: refusedResult(findings, sources) };
    if (target !== undefined) await putText(target, found.text);
    return { result: describe(found, locate(findings, sources), target), text: found.text };
  } catch (error) {
    if (!isCarried(error)) throw error;
    return { result: refusedResult([...findings, error.finding]) };
  }
}

function sampleOf(input: Input): SampleText {
  if (input.size > mostBytes)
    throw carry(fileFinding("dialect/not-a-program", input.file, "The file is larger than 512 MB.", "Name a shorter program of the same machine.")); // prettier-ignore
  return { file: input.file, bytes: readWhole(input) };
}

function refuseUnknown(from: string | undefined, shipped: readonly string[]): void {
  if (from !== undefined && !shipped.includes(from))
    throw usageError(`--from is the name of a shipped dialect (${shipped.join(", ")}), and not ${from}.`);
}

/** Where the text is meant to stand; one that goes to standard output will be put into this folder. */
function fileNameOf(output: string | undefined): string {
  return output === undefined || output === standardStream ? "inferred.dialect.yaml" : output;
}

/** Where the file goes; undefined: to standard output alone. */
function targetOf(output: string | undefined): Target | undefined {
  if (output === undefined || output === standardStream) return undefined;
  return newDialectTarget(output, false, "Name another file with --output FILE.");
}

function describe(found: Inference, findings: readonly Located[], target: Target | undefined): Reportable {
  const { archetype, candidates, stated, inherited, asked, measured, text, dialect } = found;
  return {
    verdict: "read",
    findings,
    ...(target === undefined ? {} : { output: target.shown }),
    summary: {
      assumptions: [],
      dialect: dialect.name,
      extends: archetype.name,
      candidates,
      lines: text.split("\n").length - 1,
      stated,
      shown: inherited.length,
      unanswered: dialect.unanswered,
      questions: asked.map(({ keys, ask, answers }) => ({
        keys,
        ask,
        answers: answers.map((one) => one ?? null),
      })),
      measured: measured.map(({ findings: said, ...counts }) => ({ ...counts, findings: said.length })),
      text,
    },
  };
}

/** What the report says, beside findings: the choice, the measure, the questions. */
function inferenceText({ summary, output }: Reportable, { width, paint }: Layout): string[] {
  const { candidates, measured, questions, lines, stated, unanswered } = summary as unknown as Told;
  const [nearest, next] = candidates;
  const row = (name: string, text: string): string[] => hang(name.padEnd(11), clean(text), width);
  const chosen = candidates.find(({ name }) => name === summary.extends) ?? nearest;
  const second = chosen === nearest ? next : nearest;
  return [
    ...row(
      "dialect",
      `${output ?? "not written to a file"}, ${String(lines)} lines, ${String(stated.length)} keys`,
    ),
    ...row("extends", `${chosen.name}${second === undefined ? "" : `; next is ${second.name}, with ${String(second.keys)} keys`}`), // prettier-ignore
    ...measured.flatMap((one) => row("measured", measuredText(one))),
    "",
    paint("warning", "Not shown by the programs: answer these before anything runs"),
    ...unanswered.flatMap((key) => hang("  ! ", clean(key), width)),
    ...questions.flatMap((one) => hang("  - ", clean(`${one.ask} Now ${answerText(one)}`), width)),
  ];
}

interface Told {
  readonly candidates: Inference["candidates"];
  readonly measured: Inference["measured"];
  readonly questions: Inference["asked"];
  readonly lines: number;
  readonly stated: Inference["stated"];
  readonly unanswered: readonly string[];
}

/** "identical 412 of 415 blocks; first differing: line 17: ... / ..." */
function measuredText({
  file,
  blocks,
  identical,
  renumbered,
  reordered,
  added,
  different,
}: Told["measured"][number]): string {
  const parts = [
    `${file}: identical ${String(identical)} of ${String(blocks)} blocks`,
    ...(renumbered > 0 ? [`${String(renumbered)} with another block number`] : []),
    ...(reordered > 0 ? [`${String(reordered)} with the same words in another order`] : []),
    ...(added > 0 ? [`${String(added)} written that are not there`] : []),
  ];
  const [first] = different;
  const shown = first === undefined ? "" : `; first differing: line ${String(first.line)}: ${first.was} / ${first.now === "" ? "(nothing)" : first.now}`; // prettier-ignore
  return parts.join(", ") + shown;
}
