import { dirname, isAbsolute, relative, sep } from "node:path";
import type { Finding } from "#base";
import { studyDialect } from "#dialect";
import type { Archetype } from "#interview";
import type { Reportable } from "#report";
import { createFileLoader, pathsOf } from "../dialects/loader.ts";
import { withoutEcho } from "../dialects/own.ts";
import { shippedNames } from "../dialects/shipped.ts";
import { refusedResult } from "../prepare.ts";
import { usageError } from "../usage.ts";
import { createDialectSources } from "../work/sources.ts";

/** Where answers start from, or why they cannot. */
export async function openArchetype(from: string, file: string): Promise<Archetype | Reportable> {
  const parent = extendsOf(from, file);
  const loader = createFileLoader();
  const said: Finding[] = [];
  const studied = await studyDialect(from, loader, (finding) => said.push(finding));
  const findings = [...loader.findings, ...withoutEcho(said, loader.findings)];
  if (studied === undefined) return refusedResult(findings, createDialectSources(pathsOf(loader.chain)));
  return { extends: parent, keys: studied.keys };
}

/** What `extends` says: a shipped name, or the way from the folder of the file that is written. */
function extendsOf(from: string, file: string): string {
  // A name that is neither shipped nor a file of YAML is found missing when it is read, with the name that was meant.
  if (shippedNames().includes(from) || !/\.ya?ml$/.test(from)) return from;
  const way = relative(dirname(file), from);
  if (!isAbsolute(way) && !way.startsWith("..")) return way.split(sep).join("/");
  throw usageError(
    `--from is a shipped dialect, or a file in the folder of ${file} or below, and not ${from}.`,
  );
}
