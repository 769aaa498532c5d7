import { stringify } from "yaml";
import type { PlainValue } from "#dialect";
import { editorLine } from "#dialect";
import type { AnsweredKey, Archetype } from "./answers.ts";

/** What a new dialect file is called, and where its schema is. */
export interface NewDialect {
  /** Its name: that of the file without `.dialect.yaml`. */
  readonly name: string;
  readonly title: string;
  /** Address of the schema, see `editorLine`. */
  readonly schema: string;
}

/** Groups of keys, and in them the keys with the answer behind each. */
type Group = Map<string, Group | AnsweredKey>;

/**
 * The text of a dialect file: what the answers state, each key below a comment with the answer that caused it. Neighbours
 * that one answer caused share their comment.
 *
 *     spindle:
 *       # Spindle start: M3 S12000: M3 first, in one block
 *       order: start-first
 */
export function writeDialect(
  { name, title, schema }: NewDialect,
  { extends: parent }: Archetype,
  answered: readonly AnsweredKey[],
): string {
  const head = [
    editorLine(schema),
    `# What is not stated here is as in ${parent}; \`tapewright dialect show\` prints all of it. Prove the first program out`,
    "# above the work, with a hand on feed hold.",
    `dialect: ${flow(name)}`,
    `title: ${flow(title)}`,
    `extends: ${flow(parent)}`,
  ];
  return `${[...head, ...groupLines(grouped(answered), "")].join("\n")}\n`;
}

function grouped(answered: readonly AnsweredKey[]): Group {
  const root: Group = new Map();
  for (const one of answered) {
    const steps = one.key.split(".");
    let group = root;
    for (const step of steps.slice(0, -1)) {
      const inner = group.get(step);
      const next = inner instanceof Map ? inner : (new Map() as Group);
      group.set(step, next);
      group = next;
    }
    group.set(steps.at(-1) ?? "", one);
  }
  return root;
}

function groupLines(group: Group, indent: string): string[] {
  let before: AnsweredKey | undefined;
  return [...group].flatMap(([key, inner]) => {
    if (inner instanceof Map) {
      before = undefined;
      return [`${indent}${key}:`, ...groupLines(inner, `${indent}  `)];
    }
    const { question, answer, value } = inner;
    const comment =
      before?.question === question ? [] : [`${indent}# ${question.short}: ${answer.choice.words}`];
    before = inner;
    return [...comment, `${indent}${key}: ${flow(value)}`];
  });
}

/** A value on one line as YAML has it. */
function flow(value: PlainValue): string {
  return stringify(value, { lineWidth: 0, version: "1.2", collectionStyle: "flow" }).trimEnd();
}
