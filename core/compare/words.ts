/** The words of blocks: what each is about, and its role, by which words of two programs are paired. */
import type { WrittenWord } from "../why-blocks.ts";
import type { SaidBlock } from "./blocks.ts";
import type { TopicName } from "./topics.ts";

/** A word of a block with its place in a comparison. */
export interface RoleWord {
  readonly word: WrittenWord;
  readonly block: SaidBlock;
  /** What the word is about. */
  readonly subject: Subject;
  /** The same for words that say the same thing, whatever their letter. */
  readonly role: string;
}

/** What a word is about: finer than a topic where words are paired by it. */
export type Subject = TopicName;

/** Keys of words, the most telling first, and what such words are about. */
const subjects: readonly (readonly [pattern: RegExp, subject: Subject])[] = [
  [/^idioms\.wait-signal/, "at-speed"],
  [/^idioms\.hood/, "hood"],
  [/^idioms\.(release|clamp|taper|cover)/, "swap"],
  [/^idioms\.message/, "message"],
  [/^(idioms|codes)\b/, "opaque"],
  [/^feed\.(per|inverse)/, "feed-mode"],
  [/^plane\b/, "plane"],
  [/^units\b/, "units"],
  [/^distance\b/, "distance"],
  [/^compensation\b/, "compensation"],
  [/^path\b/, "path"],
  [/^cancel\.overrides/, "overrides"],
  [/^cancel\.local-shift/, "local-shift"],
  [/^cancel\.rotation/, "rotation"],
  [/^cancel\.scale/, "scale"],
  [/^cancel\.cycles/, "cancel-cycle"],
  [/^work-offset\b/, "work-offset"],
  [/^length-offset\b/, "length-offset"],
  [/^(tools\.change)\b/, "swap"],
  [/^(tools|machine\.length-offset\.form)\b/, "select-tool"],
  [/^(spindle\.orient)/, "orient"],
  [/^(spindle\.(order|blocks|speed-unit|full-speed)|numbers\.speed)/, "speed"],
  [/^spindle\b/, "spindle"],
  [/^coolant\b/, "coolant"],
  [/^dwell\b/, "dwell"],
  [/^cycles\.(drill|dwell|peck|chip-break|tap|tap-left|ream|bore-[a-z]+)$/, "cycle-code"],
  [/^(cycles|numbers\.(peck|cycle-dwell))\b/, "cycle-words"],
  [/^(modal\.arc-centre|numbers\.arc-centre|arc\.(form|radius-word|turns-word))/, "centre"],
  [/^(motion\.(rapid|line)|arc\.c?cw)$/, "motion-word"],
  [/^modal\.feed|^numbers\.(feed|inverse)/, "feed-word"],
  [/^stops\.end/, "program-end"],
  [/^stops\b/, "pause"],
  [/^(reference-return|machine-move)/, "retract"],
];

/** Keys that only furnish a block, and say nothing. */
const furniture = /^(blocks\.number|file\.end-of-block|file\.blank-lines|blocks\.delete)/;

/** Whether a word says something, and is not the number or the mark of its block. */
export function isSpoken({ keys }: WrittenWord): boolean {
  return !keys.some((key) => furniture.test(key));
}

/** The number of a block; undefined where it has none. */
export function blockNumber({ written }: SaidBlock): WrittenWord | undefined {
  return written.words.find(({ keys }) => keys.includes("blocks.number"));
}

/** Tells the subjects of words; the few sets of keys that words have are looked through once. */
export interface Subjects {
  readonly of: (word: WrittenWord) => Subject;
}

/** Makes a teller of subjects. */
export function createSubjects(): Subjects {
  const known = new Map<string, Subject>();
  return {
    of: ({ keys }) => {
      const name = keys.join(" ");
      const subject = known.get(name) ?? subjectOf(keys);
      known.set(name, subject);
      return subject;
    },
  };
}

/** The spoken words of blocks, with their roles. */
export function roleWords(blocks: readonly SaidBlock[], subjects: Subjects): RoleWord[] {
  return blocks.flatMap((block) =>
    block.written.words.filter(isSpoken).map((word) => {
      const subject = subjects.of(word);
      return { word, block, subject, role: `${subject} ${roleOf(word)}` };
    }),
  );
}

function subjectOf(keys: readonly string[]): Subject {
  for (const [pattern, subject] of subjects) if (keys.some((key) => pattern.test(key))) return subject;
  return "axes";
}

/** A code by its key, which says what it does; a number by the letter, or by the key where that chooses the letter. */
function roleOf({ text, keys }: WrittenWord): string {
  const chosen = keys.find((key) =>
    /(^|\.)(word|words\.[a-z]+|radius-word|tolerance-word|turns-word)$/.test(key),
  );
  if (chosen !== undefined) return chosen;
  if (/^[GM]\d/.test(text)) return keys[0];
  return text.replace(/[^A-Z:].*$/, "");
}
