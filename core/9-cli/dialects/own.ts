import type { Finding } from "#base";
import type { Dialect, StudiedDialect } from "#dialect";
import type { ChainFile } from "./loader.ts";
import { createFileLoader } from "./loader.ts";

/** A dialect resolved from its files, with its emitter. */
export interface BuiltDialect {
  readonly dialect: Dialect;
  /** Source of the emitter's module. */
  readonly emitterSource: string;
}

/** What came of a dialect's files. */
export interface BuildOutcome {
  readonly findings: readonly Finding[];
  /** Every file that was read, the leaf first. */
  readonly chain: readonly ChainFile[];
  /** Undefined after an error finding. */
  readonly built: (BuiltDialect & StudiedDialect) | undefined;
}

/**
 * Resolves a dialect from its files and generates its emitter. Loads the YAML reader and the TypeScript compiler, which
 * no other way to a program does.
 *
 * @param name a shipped name or the path of a file
 * @param thorough also notes what the dialect leaves undeclared and cannot say
 * @param traced an emitter that reports which keys shaped each word
 */
export async function buildDialect(name: string, thorough = false, traced = false): Promise<BuildOutcome> {
  const [{ studyDialect }, { generateEmitter }] = await Promise.all([import("#dialect"), import("#emit")]);
  const loader = createFileLoader();
  const said: Finding[] = [];
  const studied = await studyDialect(name, loader, (finding) => said.push(finding), thorough);
  const findings = [...loader.findings, ...withoutEcho(said, loader.findings)];
  const failed = studied === undefined || findings.some(({ severity }) => severity === "error");
  if (failed) return { findings, chain: loader.chain, built: undefined };
  const emitterSource = generateEmitter(studied.dialect.format, { traced });
  return { findings, chain: loader.chain, built: { ...studied, emitterSource } };
}

/** A file that cannot be read was named with the reason; stage 2 says on top that there is no such file. */
export function withoutEcho(said: readonly Finding[], unreadable: readonly Finding[]): readonly Finding[] {
  return said.filter(({ rule }) => unreadable.length === 0 || rule !== "dialect/file");
}
