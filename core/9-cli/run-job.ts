import type { Finding } from "#base";
import { openJob, writeJob } from "#job";
import type { Layout, Reportable } from "#report";
import { clean, locate, toolsUsed } from "#report";
import type { JobArguments } from "./commands/arguments.ts";
import { byteSource, openInput, refuseChanged, standardStream } from "./files/input.ts";
import type { StagedText } from "./files/staged.ts";
import { commitText, discard, stageText } from "./files/staged.ts";
import { resolveTarget } from "./files/target.ts";
import type { Target } from "./files/target.ts";
import { isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { refusedResult } from "./prepare.ts";
import { prepareReading, readingOf } from "./reading.ts";
import { headOf, inputSources } from "./work/sources.ts";
import { pendingSignals, tidyOnSignal } from "./work/signals.ts";

/** `tapewright job`: any input as a neutral job in JSON. Gives the exit code. */
export async function runJob(args: JobArguments): Promise<number> {
  const result = await job(args);
  return show(result, reportOptionsOf(args), {
    programOnOutput: (args.output ?? standardStream) === standardStream,
    text: jobText,
    findingsAreResult: false,
    refusal: "no job was written.",
  });
}

async function job(args: JobArguments): Promise<Reportable> {
  try {
    const reading = await prepareReading(args.input, args);
    const input = await openInput("job", args.input);
    const head = headOf(reading);
    const target = resolveTarget(args.output ?? standardStream, head ? [input, head] : [input], "job");
    const findings: Finding[] = [];
    const report = (finding: Finding): void => void findings.push(finding);
    const opened = openJob(byteSource(input), readingOf(reading), report);
    const located = () =>
      locate(
        findings,
        inputSources({ job: input, head }, () => undefined),
      );
    const failed = (): boolean => findings.some(({ severity }) => severity === "error");
    if (opened === undefined) return { ...refusedResult([]), findings: located() };
    const released = await release(target, writeJob(opened, report), () => {
      [input, ...(head ? [head] : [])].forEach(refuseChanged);
      return !failed();
    });
    if (!released) return { ...refusedResult([]), findings: located() };
    const { operations, units } = opened.job;
    return {
      verdict: "read",
      findings: located(),
      output: target.shown,
      summary: {
        assumptions: [],
        operations: operations.length,
        tools: toolsUsed(operations),
        units,
      },
    };
  } catch (error) {
    if (!isCarried(error)) throw error;
    return refusedResult([error.finding]);
  }
}

/** Writes the text aside, and puts it in place if it may be; in every other case nothing of it is left. */
async function release(target: Target, text: Iterable<string>, mayBe: () => boolean): Promise<boolean> {
  const running: { staged?: StagedText } = {};
  const tidy = (): void => {
    if (running.staged) discard(running.staged);
  };
  return tidyOnSignal(tidy, async () => {
    try {
      const staged = (running.staged = stageText(target, text));
      await pendingSignals();
      if (!mayBe()) return false;
      commitText(staged);
      return true;
    } finally {
      tidy();
    }
  });
}

/** What the command says of a job that it wrote. */
function jobText({ output, summary }: Reportable, layout: Layout): string[] {
  const { operations, tools = [], units } = summary;
  const counted = `${String(operations)} ${operations === 1 ? "operation" : "operations"}`;
  const used = `${tools.length === 1 ? "tool" : "tools"} ${tools.join(", ")}`;
  return [layout.paint("rule", clean(output ?? "")), `  ${counted}, ${used}, in ${String(units)}`];
}
