import { dialectFileText } from "#dialect";
import type { AnsweredKey, Archetype } from "./answers.ts";

/** What a new dialect file is called, and where its schema is. */
export interface NewDialect {
  /** Its name: that of the file without `.dialect.yaml`. */
  readonly name: string;
  readonly title: string;
  /** Address of the schema, see `editorLine`. */
  readonly schema: string;
}

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
): Promise<string> {
  const named = { dialect: name, title, extends: parent };
  const keys = [
    ...Object.entries(named).map(([key, value]) => ({ key, value, comment: "" })),
    ...answered.map(({ key, value, question, answer }) => ({
      key,
      value,
      comment: "",
      above: `${question.short}: ${answer.choice.words}`,
    })),
  ];
  const head = [
    `What is not stated here is as in ${parent}; \`tapewright dialect show\` prints all of it. Prove the first program out`,
    "above the work, with a hand on feed hold.",
  ];
  return dialectFileText(keys, head, schema);
}
