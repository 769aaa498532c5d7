import type { Layout, Reportable } from "#report";
import { hang } from "#report";
import type { ReportArguments } from "./commands/arguments.ts";
import type { ShippedTitle } from "./dialects/titles.ts";
import { shippedTitles } from "./dialects/titles.ts";
import { reportOptionsOf, show } from "./output.ts";

/** `tapewright dialect list`: the shipped dialects. Gives the exit code. */
export async function runList(args: ReportArguments): Promise<number> {
  const dialects = await shippedTitles();
  const result: Reportable = { verdict: "read", findings: [], summary: { assumptions: [], dialects } };
  return show(result, reportOptionsOf(args), {
    programOnOutput: false,
    text: (_, layout) => dialects.flatMap((entry) => listed(entry, layout)),
    findingsAreResult: true,
  });
}

function listed({ name, title }: ShippedTitle, { width, paint }: Layout): string[] {
  const column = name.padEnd(18);
  const [first, ...rest] = hang(column, title, width);
  return [paint("rule", column) + first.slice(column.length), ...rest];
}
