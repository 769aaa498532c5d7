import type { ByteSource, Finding, KeyOrigin, Place, SourceName } from "#base";
import type { Dialect } from "#dialect";
import { originOf } from "#dialect";
import { lineStarts, positionsOf } from "./positions.ts";
import type { Quote } from "./quote.ts";
import { quoteLine } from "./quote.ts";

/** A text that findings point into. */
export interface SourceText {
  /** Its name as the user knows it. */
  readonly file: string;
  readonly bytes: ByteSource;
}

/** Gives the text of a place; undefined where there is none to show. `file` names a dialect file of the chain. */
export type Sources = (source: SourceName, file?: string) => SourceText | undefined;

/** A finding with its place as a person looks it up. */
export interface Located extends Finding {
  /** Name of the file; absent where the finding has no place. */
  readonly file?: string;
  /** Counted from 1; absent where the file has no text to show, or none at all. */
  readonly line?: number;
  /** Counted from 1, in characters. */
  readonly column?: number;
  readonly quote?: Quote;
  /** The dialect key behind it. */
  readonly origin?: KeyOrigin & {
    /** The line of the dialect file; empty where it cannot be read. */ readonly text: string;
  };
}

/**
 * Turns byte offsets into lines, columns and quoted lines, and keys into the lines of the dialect files that state them.
 * Each text is read through once, up to its last finding.
 *
 * @param dialect the dialect in force, for the origins of keys
 * @returns the findings in the same order
 */
export function locate(findings: readonly Finding[], sources: Sources, dialect?: Dialect): Located[] {
  const located: Located[] = findings.map((finding) => ({
    ...finding,
    ...(finding.place?.file === undefined ? {} : { file: finding.place.file }),
    ...describeKey(finding, sources, dialect),
  }));
  for (const group of groupByText(findings, sources)) {
    const offsets = group.findings.map((index) => placeOf(findings[index]).offset);
    positionsOf(group.text.bytes, offsets).forEach(({ line, column, lineStart }, order) => {
      const index = group.findings[order];
      const quote = quoteLine(group.text.bytes, offsets[order], lineStart);
      located[index] = { ...located[index], file: group.text.file, line, column, quote };
    });
  }
  return located;
}

/** Findings, by index, that lie in one text. */
interface Group {
  readonly text: SourceText;
  readonly findings: number[];
}

function groupByText(findings: readonly Finding[], sources: Sources): Iterable<Group> {
  const groups = new Map<string, Group>();
  findings.forEach(({ place }, index) => {
    if (place === undefined) return;
    const key = `${place.source} ${place.file ?? ""}`;
    const known = groups.get(key);
    const text = known?.text ?? sources(place.source, place.file);
    if (known) known.findings.push(index);
    else if (text) groups.set(key, { text, findings: [index] });
  });
  return groups.values();
}

function placeOf(finding: Finding): Place {
  if (finding.place === undefined) throw new Error("a finding without a place was grouped by its text");
  return finding.place;
}

function describeKey({ key }: Finding, sources: Sources, dialect?: Dialect): Pick<Located, "origin"> {
  if (key === undefined) return {};
  const origin = dialect === undefined ? { key, file: "", line: 0 } : originOf(dialect, key);
  const text = origin.line === 0 ? "" : lineOf(sources("dialect", origin.file), origin.line);
  return { origin: { ...origin, text } };
}

/** A line of a dialect file; these are short, so the file is read whole. */
function lineOf(text: SourceText | undefined, line: number): string {
  if (text === undefined) return "";
  const bytes = new Uint8Array(text.bytes.size);
  const start = lineStarts(bytes.subarray(0, text.bytes.read(0, bytes)))[line - 1];
  if (start === undefined) return "";
  const { after } = quoteLine(text.bytes, start, start);
  return after.trim();
}
