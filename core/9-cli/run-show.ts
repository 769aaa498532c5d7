import type { Finding } from "#base";
import { showDialect } from "#dialect";
import type { Reportable } from "#report";
import { locate } from "#report";
import type { OneDialectArguments } from "./commands/arguments.ts";
import { createFileLoader, pathsOf } from "./dialects/loader.ts";
import { withoutEcho } from "./dialects/own.ts";
import { reportOptionsOf, show } from "./output.ts";
import { createDialectSources } from "./work/sources.ts";

/** `tapewright dialect show`: a dialect with all that it inherits, and which line of which file says it. */
export async function runShow(args: OneDialectArguments): Promise<number> {
  const loader = createFileLoader();
  const said: Finding[] = [];
  const text = await showDialect(args.name, loader, (finding) => said.push(finding));
  const findings = [...loader.findings, ...withoutEcho(said, loader.findings)];
  const result: Reportable = {
    verdict: text === undefined ? "refused" : "read",
    findings: locate(findings, createDialectSources(pathsOf(loader.chain))),
    summary: {
      assumptions: [],
      files: loader.chain.map(({ file }) => file),
      ...(text === undefined ? {} : { dialect: text }),
    },
  };
  return show(result, reportOptionsOf(args), {
    programOnOutput: false,
    text: () => (text ?? "").trimEnd().split("\n"),
    findingsAreResult: true,
  });
}
