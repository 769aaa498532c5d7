import type { Finding } from "#base";
import { checkTrade, writeJob } from "#job";
import type { Layout, Reportable } from "#report";
import { clean, locate, toolsUsed } from "#report";
import { openInput as openJobInput } from "#retrace";
import type { JobArguments } from "./commands/arguments.ts";
import { byteSource, openInput, refuseChanged, standardStream } from "./files/input.ts";
import { putText } from "./files/put-text.ts";
import { resolveTarget } from "./files/target.ts";
import { carry, isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { refusedDialect, refusedResult } from "./prepare.ts";
import { prepareReading, readingOf, refuseOtherForm } from "./reading.ts";
import { jobFiles, jobSources, protectedFiles } from "./work/sources.ts";

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
    if ("refused" in reading) return refusedDialect(reading);
    const input = await openInput("job", args.input);
    refuseOtherForm(input, reading);
    const files = { input, reading };
    const target = resolveTarget(args.output ?? standardStream, protectedFiles(files), "job");
    const findings: Finding[] = [];
    const report = (finding: Finding): void => void findings.push(finding);
    const failed = (): boolean => findings.some(({ severity }) => severity === "error");
    const located = () => locate(findings, jobSources(files));
    const opened = openJobInput(byteSource(input), readingOf(reading), report);
    if (opened === undefined) return { ...refusedResult([]), findings: located() };
    const checked = checkTrade(opened, opened.job.operations, report);
    await putText(target, writeJob(checked, report), () => {
      jobFiles(files).forEach(refuseChanged);
      if (failed()) throw carry(findings[0]);
    }).catch((error: unknown) => {
      if (!failed()) throw error;
    });
    if (failed()) return { ...refusedResult([]), findings: located() };
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

/** What the command says of a job that it wrote. */
function jobText({ output, summary }: Reportable, layout: Layout): string[] {
  const { operations, tools = [], units } = summary;
  const counted = `${String(operations)} ${operations === 1 ? "operation" : "operations"}`;
  const used = `${tools.length === 1 ? "tool" : "tools"} ${tools.join(", ")}`;
  return [layout.paint("rule", clean(output ?? "")), `  ${counted}, ${used}, in ${String(units)}`];
}
