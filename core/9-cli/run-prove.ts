import type { Reportable } from "#report";
import { readingText } from "#report";
import type { ProveArguments } from "./commands/arguments.ts";
import { openInput } from "./files/input.ts";
import { isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { prepareDialect, prepareJob, programOptionsOf, refusedResult, simulationOf } from "./prepare.ts";
import { perform } from "./work/perform.ts";
import type { ProvePlan } from "./work/plan.ts";
import { createProgressBar } from "./work/progress.ts";

/** `tapewright prove`: reads a program, and compares it with a job if one is given. Gives the exit code. */
export async function runProve(args: ProveArguments): Promise<number> {
  const result = await prove(args);
  return show(result, reportOptionsOf(args), {
    programOnOutput: false,
    text: readingText,
    findingsAreResult: true,
  });
}

async function prove(args: ProveArguments): Promise<Reportable> {
  const options = programOptionsOf(args);
  const simulate = simulationOf(args);
  const prepared = await prepareDialect(args);
  if ("verdict" in prepared) return prepared;
  try {
    const program = await openInput("program", args.program);
    const against = args.against === undefined ? undefined : await prepareJob(args.against, args, options);
    if (against !== undefined && "verdict" in against) return against;
    return await read({ kind: "prove", dialect: prepared, program, against, simulate });
  } catch (error) {
    if (!isCarried(error)) throw error;
    return refusedResult([error.finding]);
  }
}

async function read(plan: ProvePlan): Promise<Reportable> {
  const bar = createProgressBar("reading");
  try {
    return (await perform(plan, bar.show).computed).result;
  } finally {
    bar.end();
  }
}
