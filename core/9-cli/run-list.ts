import type { Layout, Reportable } from "#report";
import { hang } from "#report";
import type { ReportArguments } from "./commands/arguments.ts";
import { loadDialect } from "./dialects/load.ts";
import { shippedNames } from "./dialects/shipped.ts";
import { reportOptionsOf, show } from "./output.ts";

/** A shipped dialect in the list. */
interface Entry {
  readonly name: string;
  readonly title: string;
}

/** `tapewright dialect list`: the shipped dialects. Gives the exit code. */
export async function runList(args: ReportArguments): Promise<number> {
  const dialects = await Promise.all(shippedNames().map(describe));
  const result: Reportable = { verdict: "read", findings: [], summary: { assumptions: [], dialects } };
  return show(result, reportOptionsOf(args), {
    programOnOutput: false,
    text: (_, layout) => dialects.flatMap((entry) => listed(entry, layout)),
    findingsAreResult: true,
  });
}

async function describe(name: string): Promise<Entry> {
  const loaded = await loadDialect(name, true);
  if ("refused" in loaded)
    throw new Error(`the shipped dialect ${name} is refused: ${loaded.findings[0]?.message}`);
  return { name, title: loaded.dialect.title };
}

function listed({ name, title }: Entry, { width, paint }: Layout): string[] {
  const column = name.padEnd(18);
  const [first, ...rest] = hang(column, title, width);
  return [paint("rule", column) + first.slice(column.length), ...rest];
}
