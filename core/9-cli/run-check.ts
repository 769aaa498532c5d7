import type { Inherited } from "#dialect";
import type { Layout, Reportable } from "#report";
import { clean, hang, locate } from "#report";
import type { OneDialectArguments } from "./commands/arguments.ts";
import { pathsOf } from "./dialects/loader.ts";
import type { BuiltDialect } from "./dialects/own.ts";
import { buildDialect } from "./dialects/own.ts";
import { reportOptionsOf, show } from "./output.ts";
import { refusedResult } from "./prepare.ts";
import { createDialectSources } from "./work/sources.ts";

/** `tapewright dialect check`: resolves a dialect from its files, builds its emitter, and says what is to be known of it. */
export async function runCheck(args: OneDialectArguments): Promise<number> {
  const { built, chain, findings } = await buildDialect(args.name, true);
  const sources = createDialectSources(pathsOf(chain));
  const options = reportOptionsOf(args);
  if (built === undefined) return show(refusedResult(findings, sources), options);
  const inherited = built.inherited();
  const result: Reportable = {
    verdict: "read",
    findings: locate(findings, sources, built.dialect),
    summary: { assumptions: [], dialect: built.dialect.name, files: built.dialect.files, inherited },
  };
  return show(result, options, {
    programOnOutput: false,
    text: (_, layout) => [...soundText(built, layout), ...inheritedText(inherited, layout)],
    findingsAreResult: true,
  });
}

function soundText({ dialect }: BuiltDialect, { width, paint }: Layout): string[] {
  return [
    `${paint("good", "sound")}    ${clean(dialect.name)}, ${clean(dialect.title)}`,
    ...hang("         ", dialect.files.map(clean).join(", which extends "), width),
    ...hang("         ", "Whether it says all that a job needs shows when a job is posted with it.", width),
  ];
}

/** What a new file takes over unread, each with the place where it stands. */
function inheritedText(inherited: readonly Inherited[], { width, paint }: Layout): string[] {
  if (inherited.length === 0) return [];
  const rows = inherited.map(({ key, value, file, line }) =>
    hang("  - ", clean(`${key}: ${value} (${file}:${line})`), width),
  );
  return ["", paint("rule", "Inherited: see that it is true of your machine"), ...rows.flat()];
}
