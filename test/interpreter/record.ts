import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gunzipSync, gzipSync } from "node:zlib";
import type { CanonicalCall } from "./canonical-calls.ts";
import { readCanonicalCalls } from "./canonical-calls.ts";
import type { MeantProgram } from "./programs.ts";
import { hashOf } from "./programs.ts";

/** What the interpreter did with a program, kept in the tree. */
export interface InterpreterRecord {
  /** Name of the job, see `programs.ts`. */
  readonly name: string;
  /** SHA-256 of the job and of the program's text. */
  readonly job: string;
  readonly program: string;
  readonly calls: readonly CanonicalCall[];
}

const file = join(import.meta.dirname, "recorded-calls.txt.gz");

/** How the records are made anew. */
export const howToRecord =
  "Where the change is meant, record anew, on a machine with the interpreter: TAPEWRIGHT_RECORD=1 npm run test:interpreter";

/** How many programs are recorded. */
export const recordedPrograms = 200;
const shareByFeature = 8;

/**
 * The programs that are recorded: the examples; then, in their order, those random ones that show a feature which fewer than
 * eight programs so far have shown; then the first of the rest, up to 200.
 *
 * A feature is a G or M code of the text, or a kind of arc: plane, sense, helix or not, full or not.
 */
export function chooseRecorded(programs: readonly MeantProgram[]): MeantProgram[] {
  const shown = new Map<string, number>();
  const isWanted = ({ name, program }: MeantProgram): boolean => {
    const features = featuresOf(program);
    const isNew = features.some((feature) => (shown.get(feature) ?? 0) < shareByFeature);
    if (!isNew && name.startsWith("random")) return false;
    for (const feature of features) shown.set(feature, (shown.get(feature) ?? 0) + 1);
    return true;
  };
  const wanted = new Set(programs.filter(isWanted).slice(0, recordedPrograms));
  for (const program of programs) if (wanted.size < recordedPrograms) wanted.add(program);
  return programs.filter((program) => wanted.has(program));
}

/** G and M codes, and arcs with the plane, the sense and the axes that they name. */
export function featuresOf(program: string): string[] {
  const features = new Set<string>();
  let plane = "G17";
  for (const block of program.replace(/\(.*?\)/g, "").split("\n")) {
    const words = block.split(" ").filter((word) => word !== "");
    plane = words.find((word) => /^G1[789]$/.test(word)) ?? plane;
    for (const word of words) if (/^[GM]\d/.test(word)) features.add(word);
    const arc = words.find((word) => /^G[23]$/.test(word));
    if (arc)
      features.add([plane, arc, ...words.flatMap((word) => word.match(/^[XYZ]/)?.[0] ?? [])].join(" "));
  }
  return [...features];
}

/** Writes the records. One program: a line with name and hashes, then its calls as printed, without their numbers. */
export function writeRecords(runs: readonly (MeantProgram & { readonly output: string })[]): void {
  const text = runs.map(({ name, job, program, output }) => {
    const calls = output.replace(/^ *\d+ (N\S*) */gm, "$1 ");
    return `# ${hashOf(job)} ${hashOf(program)} ${name}\n${calls.trimEnd()}\n`;
  });
  writeFileSync(file, gzipSync(text.join(""), { level: 9 }));
}

/** The records of the tree. */
export function readRecords(): InterpreterRecord[] {
  const [, ...parts] = gunzipSync(readFileSync(file)).toString("utf8").split(/^# /m);
  return parts.map((part) => {
    const end = part.indexOf("\n");
    const [job, program, ...name] = part.slice(0, end).split(" ");
    const calls = part.slice(end + 1).replace(/^(?=N)/gm, "0 ");
    return { job, program, name: name.join(" "), calls: readCanonicalCalls(calls) };
  });
}
