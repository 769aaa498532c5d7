import { dialectSchema, formsAt, inWords, wordsAmong } from "./schema.ts";
import { standardCodes } from "./standard-codes.ts";

/** What a finding offers for a key: a value that the standards give, or `?` with what is to be found out. */
export interface Offer {
  /** As a file would have it: "R", "G40" or "?". */
  readonly value: string;
  /** "s, ms or rev", "time it with a watch": a comment behind the value; short, so that a snippet is not wrapped. */
  readonly comment: string;
}

/** Letters of words in NISTIR 6556 Table 3, and its codes that ISO 6983-1 does not assign. */
const published: Readonly<Record<string, string>> = {
  "cycles.words.retract": "R",
  "cycles.words.peck": "Q",
  "cycles.words.dwell": "P",
  "dwell.word": "P",
  "arc.radius-word": "R",
  "compensation.word": "D",
  "length-offset.word": "H",
  "length-offset.on": "G43",
  "length-offset.off": "G49",
  "machine-move": "G53",
  "reference-return": "G28",
};

/**
 * What to offer for a key that no file states. A value that is pasted unread must not be an invented one, least of all a time, a
 * place or a choice that decides what the machine does: only letters and codes that the standards publish are offered.
 */
export function offerOf(path: string): Offer {
  const known = published[path];
  if (known !== undefined) return { value: known, comment: "NISTIR 6556; see your manual" };
  const code = Object.entries(standardCodes).find(([, keys]) => keys.length === 1 && keys[0] === path)?.[0];
  if (code !== undefined) return { value: code, comment: "ISO 6983-1; see your manual" };
  return { value: "?", comment: choicesOf(path) };
}

/** What takes the place of the question mark. */
function choicesOf(path: string): string {
  const forms = formsAt(dialectSchema, path.split("."));
  const words = wordsAmong(forms);
  const others = forms.filter((form) => form.enum === undefined && form.const === undefined);
  if (others.length === 0 && words.length > 0) return inWords(words, "or");
  const patterns = others.map(({ pattern }) => pattern ?? "");
  const orNone = words.includes("none") || patterns.some((pattern) => pattern.includes("none|"));
  const none = orNone ? ", or none" : "";
  if (patterns.some((pattern) => pattern.includes("ms|min"))) return `time it with a watch: 2.5 s${none}`;
  if (patterns.some((pattern) => pattern.startsWith("^[GM]"))) return `the code, from the manual${none}`;
  if (patterns.some((pattern) => /^\^\(?(none\|)?\[A-Z/.test(pattern)))
    return `the letter, from the manual${none}`;
  if (path.startsWith("machine.") || path.startsWith("confirm."))
    return `measure it, or see the manual${none}`;
  return `see the manual${none}`;
}

/** ("cycles.levels") -> "Add `cycles: { levels: ? }`, with absolute, relative or from-initial in place of `?`." */
export function addOne(path: string): string {
  const { value, comment } = offerOf(path);
  const keys = path.split(".");
  const yaml = `${keys.join(": { ")}: ${value}${" }".repeat(keys.length - 1)}`;
  return value === "?"
    ? `Add \`${yaml}\`; in place of the question mark: ${comment}.`
    : `Add \`${yaml}\` (${comment}).`;
}

/** Lines of YAML for keys of one group, one a key: "  levels: ? # absolute, relative or from-initial". */
export function snippet(paths: readonly string[]): string {
  const lines: string[] = [];
  let before: readonly string[] = [];
  for (const path of [...paths].sort((a, b) => deep(a) - deep(b))) {
    const keys = path.split(".");
    let shared = 0;
    while (shared < keys.length - 1 && keys[shared] === before[shared]) shared++;
    for (let depth = shared; depth < keys.length - 1; depth++)
      lines.push(`${"  ".repeat(depth)}${keys[depth]}:`);
    const { value, comment } = offerOf(path);
    lines.push(`${"  ".repeat(keys.length - 1)}${keys.at(-1)}: ${value} # ${comment}`);
    before = keys.slice(0, -1);
  }
  return lines.join("\n");
}

/** Keys of a group before those of the groups in it, so that each group is opened once. */
const deep = (path: string): number => path.split(".").length;
