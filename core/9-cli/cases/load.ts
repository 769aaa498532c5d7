import { existsSync } from "node:fs";
import type { Finding, Report } from "#base";
import type { Case } from "#cases";
import { casesOf, readCases } from "#cases";
import type { StudiedDialect, TreeNode } from "#dialect";
import { readYaml } from "#dialect";
import { shippedNames, shippedPath } from "../dialects/shipped.ts";
import type { Input } from "../files/input.ts";
import { openInput, readWhole } from "../files/input.ts";

/** Cases of one file. */
export interface CasesFile {
  readonly input: Input;
  readonly bytes: Uint8Array;
  /** Undefined where they are not valid. */
  readonly cases: readonly Case[] | undefined;
}

/**
 * Finds the cases of a dialect: under `cases` in its file, and beside it in NAME.cases.yaml.
 *
 * @param dialect a shipped name or the path of a file
 * @throws a carried finding about a file
 */
export async function loadCases(
  dialect: string,
  studied: Pick<StudiedDialect, "cases">,
  report: Report,
): Promise<CasesFile[]> {
  const path = shippedNames().includes(dialect) ? shippedPath(dialect) : dialect;
  const found: CasesFile[] = [];
  if (studied.cases !== undefined)
    found.push(await openCases(path, studied.cases.list, studied.cases.file, report));
  const beside = casesPath(path);
  if (existsSync(beside)) found.push(await openCases(beside, undefined, beside, report));
  if (found.length === 0) report(noCases(path, beside));
  return found;
}

/** `shop/mill.dialect.yaml` -> `shop/mill.cases.yaml` */
function casesPath(path: string): string {
  return `${path.replace(/(\.dialect)?\.ya?ml$/, "")}.cases.yaml`;
}

async function openCases(
  path: string,
  list: TreeNode | undefined,
  file: string,
  report: Report,
): Promise<CasesFile> {
  const input = await openInput("cases", path);
  const bytes = readWhole(input);
  const tree = list === undefined ? await readYaml({ file, bytes }, report) : undefined;
  const found = list ?? (tree && casesOf(tree, file, report));
  return { input: { ...input, file }, bytes, cases: found && readCases(found, file, report) };
}

function noCases(path: string, beside: string): Finding {
  return {
    rule: "dialect/case",
    severity: "error",
    message: "The dialect has no cases.",
    fix: `Put them under \`cases\` in the file, or into ${beside}; dialects/README.md explains how they are written.`,
    place: { source: "command", offset: 0, file: path },
  };
}
