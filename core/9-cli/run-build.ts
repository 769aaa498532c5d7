import { closeSync, openSync, readSync } from "node:fs";
import { basename } from "node:path";
import type { Finding } from "#base";
import type { ModuleOrigin } from "#emit";
import { emitterTypes, generateEmitter, isGeneratedModule } from "#emit";
import type { Reportable } from "#report";
import { locate, moduleText } from "#report";
import type { BuildArguments } from "./commands/arguments.ts";
import type { ChainFile } from "./dialects/loader.ts";
import { pathsOf } from "./dialects/loader.ts";
import type { BuiltDialect } from "./dialects/own.ts";
import { buildDialect } from "./dialects/own.ts";
import { standardStream } from "./files/input.ts";
import type { StagedText } from "./files/staged.ts";
import { commitText, discard, stageText } from "./files/staged.ts";
import type { Target } from "./files/target.ts";
import { protectedDialect, resolveTarget } from "./files/target.ts";
import { carry, fileFinding, isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { packageVersion } from "./package.ts";
import { refusedResult } from "./prepare.ts";
import { usageError } from "./usage.ts";
import { createDialectSources } from "./work/sources.ts";
import { pendingSignals, tidyOnSignal } from "./work/signals.ts";

/** `tapewright dialect build`: the emitter of a dialect, as a module that runs by itself. Gives the exit code. */
export async function runBuild(args: BuildArguments): Promise<number> {
  const result = await build(args);
  return show(result, reportOptionsOf(args), {
    programOnOutput: args.output === standardStream,
    text: moduleText,
    findingsAreResult: false,
    refusal: "no module was written.",
  });
}

async function build(args: BuildArguments): Promise<Reportable> {
  const { built, chain, findings } = await buildDialect(args.name);
  const sources = createDialectSources(pathsOf(chain));
  if (built === undefined) return refusedResult(findings, sources);
  try {
    const targets = targetsOf(args, built.dialect.name, chain);
    await place(targets, generate(args, built, chain));
    return describe(args, built, targets, (more) => locate([...findings, ...more], sources, built.dialect));
  } catch (error) {
    if (!isCarried(error)) throw error;
    return refusedResult([...findings, error.finding], sources);
  }
}

/** A module and its types, as texts. */
interface Texts {
  readonly source: string;
  readonly types: string;
}

function generate(
  { traced = false }: BuildArguments,
  { dialect }: BuiltDialect,
  chain: readonly ChainFile[],
): Texts {
  // A module is handed on; the folders in which its maker keeps the files are nobody's business.
  const files = chain.map(({ path, sha256 }) => ({ name: basename(path), sha256 }));
  const origin: ModuleOrigin = { name: dialect.name, title: dialect.title, files, version: packageVersion() };
  return {
    source: generateEmitter(dialect.format, { traced, origin }),
    types: emitterTypes({ traced, origin }),
  };
}

/** Where a module goes, and its types; a stream gets no types. */
interface Targets {
  readonly source: Target;
  readonly types: Target | undefined;
}

/**
 * Finds out where everything goes before anything is written, and whether it may.
 *
 * @throws a usage error, or a carried finding
 */
function targetsOf({ output, force }: BuildArguments, dialect: string, chain: readonly ChainFile[]): Targets {
  const name = output ?? `${dialect}.emitter.js`;
  const inputs = protectedDialect(chain.map(({ path }) => path));
  const source = resolveTarget(name, inputs, "module");
  if (source.kind === "stream") return { source, types: undefined };
  if (!/\.m?js$/.test(name))
    throw usageError(`--output is the name of a module, such as router.js or router.mjs, and not ${name}.`);
  const types = resolveTarget(name.replace(/\.(m?)js$/, ".d.$1ts"), inputs, "module");
  if (force !== true) for (const target of [source, types]) refuseForeign(target);
  return { source, types };
}

/** A file that this command did not generate is somebody's work. */
function refuseForeign(target: Target): void {
  if (target.kind === "stream" || target.mode === undefined || isGeneratedModule(beginningOf(target.path)))
    return;
  const message = "The file is there already, and its first line does not say that it was generated.";
  const fix = "Name another file with --output FILE.js, or replace it with --force.";
  throw carry(fileFinding("program/not-generated", target.shown, message, fix));
}

/** Enough of a file to hold the first line of a generated one. */
function beginningOf(path: string): string {
  const descriptor = openSync(path, "r");
  const bytes = new Uint8Array(256);
  const count = readSync(descriptor, bytes);
  closeSync(descriptor);
  return new TextDecoder().decode(bytes.subarray(0, count));
}

/** Writes both files aside, and puts them in place when both are whole; in every other case nothing of them is left. */
async function place({ source, types }: Targets, texts: Texts): Promise<void> {
  const staged: StagedText[] = [];
  const tidy = (): void => staged.forEach(discard);
  await tidyOnSignal(tidy, async () => {
    try {
      if (types !== undefined) staged.push(stageText(types, texts.types));
      staged.push(stageText(source, texts.source));
      await pendingSignals();
      staged.forEach(commitText);
    } finally {
      tidy();
    }
  });
}

function describe(
  { traced = false }: BuildArguments,
  { dialect }: BuiltDialect,
  { source, types }: Targets,
  findings: (more: readonly Finding[]) => Reportable["findings"],
): Reportable {
  return {
    verdict: "read",
    findings: findings(types === undefined ? [noTypes(source)] : []),
    output: source.shown,
    summary: {
      assumptions: [],
      dialect: dialect.name,
      title: dialect.title,
      files: dialect.files,
      traced,
      exports: ["emitUnproved", "cleanText", ...(traced ? ["traceKeys"] : [])],
      ...(types === undefined ? {} : { types: types.shown }),
    },
  };
}

function noTypes({ shown }: Target): Finding {
  const message = "The types of the module are left out: they go into a file beside it.";
  return {
    rule: "program/no-types",
    severity: "note",
    message,
    fix: "Name a file with --output FILE.js to have both.",
    place: { source: "command", offset: 0, file: shown },
  };
}
