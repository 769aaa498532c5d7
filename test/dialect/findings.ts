import type { Finding } from "#base";
import type { Dialect } from "#dialect";
import { resolveDialect } from "#dialect";
import { dialectLoader } from "../support/dialects.ts";

/** What resolving a text gives: the dialect, and each finding as "rule key line". */
export interface Outcome {
  readonly dialect: Dialect | undefined;
  readonly findings: readonly Finding[];
  /** "rule key @ file:line" of each finding. */
  readonly lines: readonly string[];
}

/** Resolves the file `own.yaml` with this text; other files stand beside it. */
export async function resolveText(
  text: string,
  others: Readonly<Record<string, string>> = {},
): Promise<Outcome> {
  const texts: Readonly<Record<string, string>> = { "own.yaml": text, ...others };
  const findings: Finding[] = [];
  const dialect = await resolveDialect("own.yaml", dialectLoader(texts), (finding) => findings.push(finding));
  const lines = findings.map(({ rule, key = "-", place }) => {
    const source = place?.file === undefined ? undefined : texts[place.file];
    const line = source === undefined ? "?" : lineOf(source, place?.offset ?? 0);
    return `${rule} ${key} @ ${place?.file ?? "?"}:${line}`;
  });
  return { dialect, findings, lines };
}

/** 1-based line of a byte offset. */
export function lineOf(text: string, offset: number): number {
  return Buffer.from(text).subarray(0, offset).toString().split("\n").length;
}
