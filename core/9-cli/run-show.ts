import type { Finding } from "#base";
import type { KeyDifference, StatedValue } from "#dialect";
import { compareDialects, showDialect } from "#dialect";
import type { Layout, Reportable } from "#report";
import { clean, hang, locate } from "#report";
import type { ShowArguments } from "./commands/arguments.ts";
import { createFileLoader, pathsOf } from "./dialects/loader.ts";
import type { FileLoader } from "./dialects/loader.ts";
import { withoutEcho } from "./dialects/own.ts";
import { reportOptionsOf, show } from "./output.ts";
import { createDialectSources } from "./work/sources.ts";

/** `tapewright dialect show`: a dialect with all that it inherits, and which line of which file says it; or how two differ. */
export async function runShow(args: ShowArguments): Promise<number> {
  return args.diff === undefined ? showOne(args) : showDifference(args, args.diff);
}

async function showOne(args: ShowArguments): Promise<number> {
  const loader = createFileLoader();
  const said: Finding[] = [];
  const text = await showDialect(args.name, loader, (finding) => said.push(finding));
  const result: Reportable = {
    verdict: text === undefined ? "refused" : "read",
    findings: findingsOf(said, [loader]),
    summary: {
      assumptions: [],
      files: filesOf(loader),
      ...(text === undefined ? {} : { dialect: text }),
    },
  };
  return show(result, reportOptionsOf(args), {
    programOnOutput: false,
    text: () => (text ?? "").trimEnd().split("\n"),
    findingsAreResult: true,
  });
}

/** Both have a loader of their own, so that each chain is known. */
async function showDifference(args: ShowArguments, other: string): Promise<number> {
  const loaders = [createFileLoader(), createFileLoader()] as const;
  const said: Finding[] = [];
  const differences = await compareDialects([args.name, other], loaders, (finding) => said.push(finding));
  const chains = loaders.map(filesOf);
  const result: Reportable = {
    verdict: differences === undefined ? "refused" : "read",
    findings: findingsOf(said, loaders),
    summary: {
      assumptions: [],
      files: chains[0],
      otherFiles: chains[1],
      ...(differences === undefined ? {} : { differences: differences.map(asJson) }),
    },
  };
  return show(result, reportOptionsOf(args), {
    programOnOutput: false,
    text: (_, layout) => differenceText(differences ?? [], chains, layout),
    findingsAreResult: true,
  });
}

function findingsOf(said: readonly Finding[], loaders: readonly FileLoader[]): Reportable["findings"] {
  const unreadable = loaders.flatMap(({ findings }) => findings);
  const paths = pathsOf(loaders.flatMap(({ chain }) => chain));
  return locate([...unreadable, ...withoutEcho(said, unreadable)], createDialectSources(paths));
}

function filesOf({ chain }: FileLoader): string[] {
  return chain.map(({ file }) => file);
}

/** A value that no file states is null: JSON leaves out what is undefined. */
function asJson({ key, first, second }: KeyDifference) {
  return { key, first: first ?? null, second: second ?? null };
}

/** What the two are called in the text. */
const sides = ["A", "B"] as const;

/** The two chains, and the keys that differ, under the group that they belong to. */
function differenceText(
  differences: readonly KeyDifference[],
  chains: readonly (readonly string[])[],
  layout: Layout,
): string[] {
  const heads = chains.flatMap((files, index) =>
    hang(`${sides[index]}  `, files.map(clean).join(", which extends "), layout.width),
  );
  const { length } = differences;
  const counted =
    length === 0 ? "No key differs." : `${length} ${length === 1 ? "key differs" : "keys differ"}.`;
  const groups = [...new Set(differences.map(groupOf))];
  const keys = groups.flatMap((group) => {
    const these = differences.filter((difference) => groupOf(difference) === group);
    return ["", layout.paint("rule", clean(group)), ...these.flatMap((one) => keyText(one, layout))];
  });
  return [...heads, counted, ...keys];
}

/** "motion.rapids" -> "motion" */
function groupOf({ key }: KeyDifference): string {
  return key.split(".")[0];
}

/** The key below its group, and what either says. */
function keyText({ key, first, second }: KeyDifference, { width }: Layout): string[] {
  const name = key.split(".").slice(1).join(".");
  const indent = name === "" ? "  " : "    ";
  const said = [first, second].flatMap((one, index) =>
    hang(`${indent}${sides[index]}  `, statedText(one), width),
  );
  return [...(name === "" ? [] : [`  ${clean(name)}`]), ...said];
}

function statedText(said: StatedValue | undefined): string {
  return said === undefined ? "(not stated)" : clean(`${said.value} (${said.file}:${said.line})`);
}
