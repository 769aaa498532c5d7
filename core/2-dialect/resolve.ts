import type { Effects, Report } from "#base";
import { reportNotes } from "./check.ts";
import { checkSense } from "./checks.ts";
import type { Chain } from "./chain.ts";
import { loadChain } from "./chain.ts";
import type { Dialect } from "./dialect.ts";
import { differencesOf } from "./difference.ts";
import { resolveIdioms } from "./idioms.ts";
import { inheritedOf } from "./inherited.ts";
import { largestNumbers } from "./largest-numbers.ts";
import { keyBookOf } from "./key-facts.ts";
import type { DialectLoader } from "./loader.ts";
import { resolveCapabilities } from "./resolve-capabilities.ts";
import { resolveConfirm } from "./resolve-confirm.ts";
import { resolveFormat } from "./resolve-format.ts";
import { resolveEffects, resolveMachine, resolveWorkZero } from "./resolve-machine.ts";
import type { Resolving } from "./resolving.ts";
import { startResolving } from "./resolving.ts";
import { showChain } from "./show.ts";
import { nodeAt, plainData, walkTree } from "./tree.ts";
import { unansweredKeys } from "./unanswered.ts";
import { codeText } from "./code-text.ts";
import { parseCode, word } from "./values.ts";

export { differencesOf, inheritedOf, keyBookOf, loadChain, plainData, reportNotes, showChain };

/** Reads a dialect and its chain; undefined after an error. */
export async function resolveFiles(
  dialect: string,
  loader: DialectLoader,
  report: Report,
): Promise<{ chain: Chain; dialect: Dialect } | undefined> {
  const chain = loadChain(dialect, loader, report);
  if (chain === undefined) return undefined;
  const files = chain.links.map(({ file }) => file);
  const resolving = startResolving(chain.merged, files, report);
  const resolved = await resolveTree(resolving);
  resolving.reportMissing();
  if (!resolving.failed()) checkSense(resolving, resolved);
  resolving.reportMissing();
  if (resolving.failed()) return undefined;
  const largest = largestNumbers(resolved.format, resolved.capabilities);
  const capabilities = { ...resolved.capabilities, ...(largest === undefined ? {} : { largest }) };
  return { chain, dialect: { ...resolved, capabilities } };
}

async function resolveTree(resolving: Resolving): Promise<Dialect> {
  const { tree, files } = resolving;
  const confirm = await resolveConfirm(resolving);
  const idioms = resolveIdioms(resolving);
  return {
    name: word(tree, "dialect") ?? "",
    title: word(tree, "title") ?? "",
    files,
    format: resolveFormat(resolving, idioms),
    capabilities: resolveCapabilities(tree),
    machine: resolveMachine(resolving, { confirm, opaqueEffects: opaqueEffects(resolving) }),
    workZero: resolveWorkZero(tree),
    unanswered: unansweredKeys(tree),
    origins: originsOf(resolving),
  };
}

/** Effects of builder's codes by the code (M93), and of the controller's measurement by the word `measure`. */
function opaqueEffects(resolving: Resolving): Record<string, Effects> {
  const node = nodeAt(resolving.tree, "codes");
  const names = node?.kind === "mapping" ? [...node.entries.keys()] : [];
  const all = [
    ...names.map((name) => [codeText(parseCode(name)), `codes.${name}`] as const),
    ["measure", "machine.measure-effects"] as const,
  ];
  const found = all.map(([name, path]) => [name, resolveEffects(resolving, path)] as const);
  return Object.fromEntries(found.filter((pair): pair is [string, Effects] => pair[1] !== undefined));
}

function originsOf({ tree }: Resolving): Dialect["origins"] {
  const origins: Record<string, { file: number; line: number }> = {};
  walkTree(tree, (path, { origin }) => {
    origins[path] = { file: origin.file, line: origin.line };
  });
  return origins;
}
