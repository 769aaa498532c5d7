import type { Finding, Place, Report } from "#base";
import type { SoundDraft } from "./draft.ts";
import type { Observed } from "./evidence.ts";
import type { Program } from "./program.ts";
import { mostStudied } from "./program.ts";
import type { Sample } from "./sample.ts";
import type { Line } from "./tokens.ts";

/** Least share of the filled lines that are blocks, comments or frame, in a program. */
const leastShare = 0.8;
/** Places of one contradiction that are told. */
const mostPlaces = 3;

function at(line: Line): Place {
  return { source: "program", offset: line.offset, file: line.file };
}

/** Whether a file can be learned from; why not has been told by `tellSample`. */
export function isProgram(program: Program): boolean {
  return whyNot(program) === undefined;
}

/** Tells what stands in the way of learning from a file, and what was left out of it. */
export function tellSample(program: Program, report: Report): void {
  const why = whyNot(program);
  if (why !== undefined) report(why);
  else for (const finding of doubtsOf(program)) report(finding);
}

function whyNot({ file, lines, binaryAt, size }: Program): Finding | undefined {
  const refuse = (message: string, offset: number): Finding => ({ rule: "dialect/not-a-program", severity: "error", message, place: { source: "program", offset, file }, fix: "Name programs that run on the machine: letters and numbers, a block a line." }); // prettier-ignore
  if (size === 0) return refuse("The file is empty.", 0);
  if (binaryAt !== undefined) return refuse("The file is no text: it holds a control character.", binaryAt);
  const filled = lines.filter(({ kind }) => kind !== "blank");
  const blocks = filled.filter(({ kind }) => kind === "block");
  const junk = filled.filter(({ kind }) => kind === "junk");
  const codes = blocks.some(({ words }) => words.some(({ letter }) => letter === "G" || letter === "M"));
  const [first] = junk;
  if (blocks.length === 0 || !codes) return refuse("The file holds no block with a G or M code.", first?.offset ?? 0); // prettier-ignore
  const share = 1 - junk.length / filled.length;
  if (share >= leastShare) return undefined;
  return refuse(`${String(junk.length)} of ${String(filled.length)} lines are no blocks of letters and numbers.`, first.offset); // prettier-ignore
}

function doubtsOf({ file, lines, size, studied }: Program): Finding[] {
  const junk = lines.filter(({ kind }) => kind === "junk");
  const small = lines.find(({ lowerCase, kind }) => lowerCase && kind === "block");
  return [
    ...junk.slice(0, mostPlaces).map((line): Finding => ({ rule: "dialect/inferred", severity: "warning", message: `Not read: this is no block of letters and numbers${junk.length > mostPlaces ? ` (and ${String(junk.length - 1)} lines more)` : ""}. Variables, expressions and subprograms are beyond a dialect file.`, place: at(line) })), // prettier-ignore
    ...(small ? [{ rule: "dialect/inferred", severity: "warning", message: "Words are written in small letters; programs will have capitals.", place: at(small) } as const] : []), // prettier-ignore
    ...(studied.length < size ? [{ rule: "dialect/inferred", severity: "warning", message: `Of this long program the first ${String(mostStudied.beginning >> 20)} MB and the last ${String(mostStudied.end >> 10)} kB were studied.`, place: { source: "program", offset: studied.length - mostStudied.end, file } } as const] : []), // prettier-ignore
  ];
}

/** Contradictions with their lines, what the reader says of the programs, codes without a meaning, keys left out. */
export function findingsOf(
  observed: readonly Observed[],
  best: SoundDraft & { readonly measured: readonly { readonly findings: readonly Finding[] }[] },
  sample: Sample,
): Finding[] {
  void sample;
  return [
    ...observed.flatMap(contradiction),
    ...best.findings,
    ...best.codes.unknown.map(({ text, blocks }): Finding => ({ rule: "dialect/unknown-code", severity: "warning", message: `What ${text} does is not known; it is on ${String(blocks.length)} blocks.`, key: `codes.${text}`, place: at(blocks[0].line), fix: `Say under \`codes: ${text}\` what it does, or make it the idiom that it is.` })), // prettier-ignore
    ...best.measured.flatMap(({ findings }) => asWarnings(findings)),
  ];
}

/** One finding for each of the first lines. */
function contradiction(one: Observed): Finding[] {
  if (one.kind !== "contradiction") return [];
  const { key, message, lines } = one;
  const all = lines.length === 0 ? "" : ` (lines ${lines.slice(0, 12).map(({ number }) => String(number)).join(", ")}${lines.length > 12 ? ` and ${String(lines.length - 12)} more` : ""})`; // prettier-ignore
  const [first] = lines as readonly (Line | undefined)[];
  return [{ rule: "dialect/contradiction", severity: "warning", key, message: `The programs contradict themselves about \`${key}\`: ${message}${all}.`, fix: "Say in the file which holds.", ...(first ? { place: at(first) } : {}) }]; // prettier-ignore
}

/** What the reader finds is news about the file, not a fault of the programs: they run. */
function asWarnings(findings: readonly Finding[]): Finding[] {
  const seen = new Map<string, number>();
  return findings.flatMap((finding) => {
    const count = (seen.get(finding.rule) ?? 0) + 1;
    seen.set(finding.rule, count);
    return count > mostPlaces ? [] : [{ ...finding, severity: "warning" as const }];
  });
}
