import type { Finding } from "#base";
import type { DialectLoader, WrittenKey } from "#dialect";
import { dialectFileText, resolveDialect } from "#dialect";
import { generateEmitter, loadEmitter } from "#emit";
import type { Archetype } from "./archetype.ts";
import type { CodeKeys } from "./code-keys.ts";
import { codeKeys } from "./code-keys.ts";
import { consequences } from "./consequences.ts";
import { carefulConfirmations, confirmationsOf } from "./confirmations.ts";
import type { Base, Observed, Value } from "./evidence.ts";
import { hintsOf } from "./hints.ts";
import type { Ready } from "./measure.ts";
import type { Asked } from "./questions.ts";
import { openQuestions } from "./questions.ts";
import type { Sample } from "./sample.ts";
import type { StatedKey } from "./stated.ts";
import { divide } from "./stated.ts";

/** What a file would be that extends one dialect. */
export interface Draft {
  readonly archetype: Archetype;
  /** Keys that the programs show, and that the file has to state. */
  readonly stated: readonly StatedKey[];
  /** Keys that the programs show, and that it inherits. */
  readonly inherited: readonly StatedKey[];
  readonly codes: CodeKeys;
  /** What the programs have that bears on a question, by its key. */
  readonly hints: ReadonlyMap<string, string>;
}

/** A file that holds together. */
export interface SoundDraft extends Draft, Ready {
  readonly text: string;
  readonly asked: readonly Asked[];
  /** What the file states beside, since it is not to be inherited; asked. */
  readonly careful: readonly StatedKey[];
  /** Why keys that the programs show are not in the file. */
  readonly findings: readonly Finding[];
}

/** What a file states that extends a dialect. */
export function draft(
  sample: Sample,
  observed: readonly Observed[],
  archetype: Archetype,
  all: readonly Archetype[],
): Draft {
  const codes = codeKeys(sample, archetype, all);
  const known = knownCodes(sample, archetype);
  const { stated, inherited } = divide([...observed, ...codes.settled], archetype.base);
  return { archetype, stated, inherited: [...inherited, ...known], codes, hints: hintsOf(sample) };
}

/** Keys whose code the programs use. */
function knownCodes({ blocks }: Sample, { codes, base }: Archetype): StatedKey[] {
  const names = new Set(blocks.flatMap(({ g, m }) => [...g.map((one) => `G${String(one)}`), ...m.map((one) => `M${String(one)}`)])); // prettier-ignore
  return [...names].flatMap((name) => {
    const key = codes.get(name);
    if (key === undefined) return [];
    return [{ key, value: base(key) ?? "", evidence: "its code is in the programs" }];
  });
}

/** How often a file is tried with a key less. */
const mostTries = 12;

/**
 * Makes the file, resolves it as any dialect file, and leaves out keys at which that fails.
 *
 * @returns undefined where it holds together in no way
 */
export async function complete(
  draftOf: Draft,
  all: readonly Archetype[],
  file: FileFacts,
  loader: DialectLoader,
): Promise<SoundDraft | undefined> {
  const findings: Finding[] = [];
  let { stated } = draftOf;
  for (let tries = 0; tries < mostTries; tries++) {
    const made = await attempt({ ...draftOf, stated }, all, file, loader);
    if ("ready" in made)
      return {
        ...draftOf,
        stated,
        ...made.ready,
        text: made.text,
        asked: made.asked,
        careful: made.careful,
        findings,
      };
    const left = without(stated, made.errors);
    if (left === undefined) return undefined;
    findings.push(...left.findings);
    stated = left.stated;
  }
  return undefined;
}

/** What the head of the file says. */
export interface FileFacts {
  /** Name of the dialect. */
  readonly name: string;
  /** Names of the programs. */
  readonly programs: readonly string[];
  /** Address of the schema for editors. */
  readonly schema?: string;
}

type Attempt =
  | {
      readonly ready: Ready;
      readonly text: string;
      readonly asked: readonly Asked[];
      readonly careful: readonly StatedKey[];
    }
  | { readonly errors: readonly Finding[] };

async function attempt(
  draftOf: Draft,
  all: readonly Archetype[],
  { name, programs, schema }: FileFacts,
  loader: DialectLoader,
): Promise<Attempt> {
  const { archetype, stated, inherited } = draftOf;
  const careful = [...carefulConfirmations(archetype, all), ...consequences(draftOf)].filter(({ key }) => !stated.some((one) => one.key === key)); // prettier-ignore
  const keys = [...stated, ...careful];
  const answers = laidOver(keys, archetype.base);
  const shown = [...stated.filter((one) => one.asked !== true), ...inherited].map(({ key }) => key);
  const asked = openQuestions(new Set(shown), answers, draftOf.hints);
  const risky = asked.flatMap(({ safety, keys: open }) => (safety ? open : []));
  // That a code without a known meaning changes nothing is a guess, which could be a drawbar.
  const opaque = keys.flatMap(({ key }) => /^codes\.[^.]+/.exec(key) ?? []);
  const unanswered = [...new Set([...confirmationsOf(answers), ...risky, ...opaque])];
  const written: WrittenKey[] = [
    { key: "dialect", value: name, comment: "" },
    { key: "title", value: `Inferred from ${titleOf(programs)}`, comment: "" },
    { key: "extends", value: archetype.name, comment: "" },
    { key: "unanswered", value: unanswered, comment: "no program shows these; take a key out when you have stated it" }, // prettier-ignore
    ...keys.map(({ key, value, evidence }) => ({ key, value, comment: evidence })),
  ];
  const text = await dialectFileText(written, headOf(asked, programs), schema);
  const errors: Finding[] = [];
  const path = `${name}.dialect.yaml`;
  const bytes = new TextEncoder().encode(text);
  const own: DialectLoader = { ...loader, shipped: loader.shipped, readShipped: (one) => loader.readShipped(one), readFile: (one) => (one === path ? { file: path, bytes } : loader.readFile(one)) }; // prettier-ignore
  const dialect = await resolveDialect(path, own, (finding) => errors.push(finding));
  if (dialect === undefined) return { errors: errors.filter(({ severity }) => severity === "error") };
  const emitter = await loadEmitter(generateEmitter(dialect.format, { traced: false }));
  return { ready: { dialect, emitter }, text, asked, careful };
}

function titleOf(programs: readonly string[]): string {
  const names = programs.map((program) => program.split(/[/\\]/).at(-1) ?? program);
  return names.join(", ").slice(0, 100);
}

/** The questions, those that can hurt somebody first: "! How is ...?" */
function headOf(asked: readonly Asked[], programs: readonly string[]): string[] {
  const lines = (safety: boolean): string[] =>
    asked
      .filter((one) => one.safety === safety)
      .map((one) => `${safety ? "!" : "-"} ${one.ask} ${answerText(one)}`);
  return [
    `Inferred from ${titleOf(programs)}; a line's comment is its evidence.`,
    "Answer these before anything runs: state the key below, and take it out of `unanswered`. What stands behind a question holds until then.",
    ...lines(true),
    "The programs do not show these either; state below what is otherwise.",
    ...lines(false),
  ];
}

/** The keys that a question leaves open with the values that hold: "dwell.unit: s". */
export function answerText({ keys, answers }: Asked): string {
  return keys.map((key, index) => `${key}: ${valueText(answers[index])}`).join(", ");
}

function valueText(value: Value | null | undefined): string {
  // A report as JSON has null for it.
  if (value === undefined || value === null) return "not stated";
  const text = typeof value === "object" ? JSON.stringify(value).replaceAll('"', "") : String(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

/** Values of a file over what it extends. */
function laidOver(keys: readonly StatedKey[], base: Base): Base {
  return (key) => keys.find((one) => one.key === key)?.value ?? base(key);
}

/** The keys without those at which the file fails. */
function without(
  stated: readonly StatedKey[],
  errors: readonly Finding[],
): { stated: StatedKey[]; findings: Finding[] } | undefined {
  const blamed = (key: string): Finding | undefined =>
    errors.find((error) => error.key !== undefined && (key === error.key || key.startsWith(`${error.key}.`) || error.key.startsWith(`${key}.`))); // prettier-ignore
  const left = stated.filter(({ key }) => !blamed(key));
  if (left.length === stated.length) return undefined;
  const findings = stated.flatMap(({ key, evidence }): Finding[] => {
    const error = blamed(key);
    return error === undefined ? [] : [{ rule: "dialect/inferred", severity: "warning", message: `\`${key}\` is left out, although the programs show it (${evidence}): ${error.message}`, key }]; // prettier-ignore
  });
  return { stated: left, findings };
}
