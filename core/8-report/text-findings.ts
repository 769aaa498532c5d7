import type { Severity } from "#base";
import { clean } from "./clean.ts";
import { frameQuote } from "./frame.ts";
import type { Located } from "./locate.ts";
import type { Paint } from "./paint.ts";
import { hang } from "./wrap.ts";

/** How a text report is laid out. */
export interface Layout {
  /** In characters. */
  readonly width: number;
  readonly paint: Paint;
}

/** Findings of one severity that are shown in full; the rest is counted by rule. */
const shownInFull = 25;

const severities = ["error", "warning", "note"] as const satisfies readonly Severity[];
const label = (text: string): string => `  ${text}`.padEnd(9);
const indent = label("");

/**
 * The places in the list of the findings that are shown in full: where there are too many, the first of each rule, then the
 * second of each, and so on. A program from elsewhere may have one matter of form in every block, and one rapid that goes
 * through the clamps.
 */
function chosen(findings: readonly Located[]): Set<number> {
  const times = new Map<string, number>();
  const ranked = findings.map(({ rule }, index) => {
    const rank = times.get(rule) ?? 0;
    times.set(rule, rank + 1);
    return { index, rank };
  });
  ranked.sort((one, other) => one.rank - other.rank);
  return new Set(ranked.slice(0, shownInFull).map(({ index }) => index));
}

/** All findings as lines of text, the worst first, each followed by an empty line. */
export function findingsText(findings: readonly Located[], layout: Layout): string[] {
  return severities.flatMap((severity) => {
    const these = findings.filter((finding) => finding.severity === severity);
    const shown = chosen(these);
    const lines = these.flatMap((finding, index) =>
      shown.has(index) ? [...findingText(finding, layout), ""] : [],
    );
    const rest = these.filter((_, index) => !shown.has(index));
    return [...lines, ...restText(rest, severity, layout)];
  });
}

/**
 * One finding: its rule, what is wrong, where, the way out, and the line of the dialect file behind it.
 *
 *     error    motion/rapid-in-stock
 *              The rapid to X10 Y5 passes through the stock at Z-2.
 *       at     plate.job.json:41:7
 *              41  { "rapid": { "x": 10, "y": 5 } },
 *                  ^
 *       fix    Go up to the clearance first.
 */
export function findingText(finding: Located, layout: Layout): string[] {
  const { paint, width } = layout;
  const head = `${paint(finding.severity, finding.severity.padEnd(9))}${paint("rule", finding.rule)}`;
  return [
    head,
    ...hang(indent, sentence(cleanLines(finding.message)), width),
    ...placeText(finding, layout),
    ...(finding.fix === undefined ? [] : labelled("fix", sentence(cleanLines(finding.fix)), layout)),
    ...(finding.corrected === undefined ? [] : verbatim("write", finding.corrected, layout)),
    ...originText(finding, layout),
  ];
}

/** Where it is: the place, the quoted line, and a mark below it. */
export function placeText(
  { file, line, column, quote, severity }: Pick<Located, "file" | "line" | "column" | "quote" | "severity">,
  layout: Layout,
): string[] {
  if (file === undefined) return [];
  const where = line === undefined ? clean(file) : `${clean(file)}:${line}:${column}`;
  const place = labelled("at", where, { ...layout, width: Infinity });
  if (quote === undefined) return place;
  const gutter = `${indent}${layout.paint("label", `${line}`)}  `;
  const gutterWidth = indent.length + `${line}`.length + 2;
  const frame = frameQuote(quote, Math.max(20, layout.width - gutterWidth));
  const caret = " ".repeat(gutterWidth + frame.caret) + layout.paint(severity, "^");
  return [...place, gutter + frame.text, caret];
}

function originText({ rule, origin, file, line }: Located, layout: Layout): string[] {
  if (origin === undefined) return [];
  // The place itself may be the line that states the key.
  if (origin.file === file && origin.line === line) return labelled("key", origin.key, layout);
  if (origin.line === 0) {
    const isMissing = rule === "dialect/undeclared";
    return labelled(
      "key",
      isMissing ? `${origin.key}, which no file of the dialect states` : origin.key,
      layout,
    );
  }
  const stated = labelled("key", `${origin.key}, ${clean(origin.file)}:${origin.line}`, {
    ...layout,
    width: Infinity,
  });
  if (origin.text === "") return stated;
  const quote = { before: "", after: origin.text, cutLeft: false, cutRight: false };
  const gutterWidth = indent.length + `${origin.line}`.length + 2;
  const { text } = frameQuote(quote, Math.max(20, layout.width - gutterWidth));
  return [...stated, `${indent}${layout.paint("label", `${origin.line}`)}  ${text}`];
}

/** `  fix    text`, the text hanging behind the label. */
function labelled(name: string, text: string, { width, paint }: Layout): string[] {
  const [first, ...rest] = hang(indent, text, width);
  return [paint("label", label(name)) + first.slice(indent.length), ...rest];
}

/** Blocks of a program are never wrapped. */
function verbatim(name: string, text: string, layout: Layout): string[] {
  return labelled(name, cleanLines(text).trimEnd(), { ...layout, width: Infinity });
}

/** Begins with a capital and ends with a stop, whatever wrote it: "a, b" -> "A, b." */
function sentence(text: string): string {
  const stopped = /[.!?:]$/.test(text) ? text : `${text}.`;
  return stopped.slice(0, 1).toUpperCase() + stopped.slice(1);
}

function cleanLines(text: string): string {
  return text
    .split(/\r\n|\r|\n/)
    .map(clean)
    .join("\n");
}

function restText(findings: readonly Located[], severity: Severity, { width, paint }: Layout): string[] {
  if (findings.length === 0) return [];
  const counts = new Map<string, number>();
  for (const { rule } of findings) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  const rules = [...counts].map(([rule, times]) => `${rule} (${times})`).join(", ");
  const text = `${findings.length} more are not shown: ${rules}. --report json lists them all.`;
  const [first, ...rest] = hang(indent, text, width);
  return [paint(severity, severity.padEnd(9)) + first.slice(indent.length), ...rest, ""];
}
