import type { Idiom } from "./dialect.ts";
import { parseTemplate } from "./idiom-template.ts";
import type { Resolving } from "./resolving.ts";
import { isNone, nodeAt } from "./tree.ts";
import { word } from "./values.ts";

const marks = { parentheses: { open: "(", close: ")" }, semicolon: { open: ";", close: "" } } as const;

/** Characters that would end the comment, or are not allowed in one. */
const unsafe = /[()%:;]/;

/**
 * The idiom for a message to the operator: one whole comment that begins with a mark of its own, `(MSG, {{text}})`, so
 * that a message and a remark are told apart when the program is read back.
 *
 * @returns undefined where there is none, or after a finding
 */
export function messageIdiom(
  resolving: Resolving,
  text: string,
): { idiom: Idiom; code: undefined } | undefined {
  const refuse = (rule: string, problem: string): undefined => {
    resolving.fail(rule, "idioms.message", `In \`idioms.message\`: ${problem}.`, example(resolving));
    return undefined;
  };
  const template = parseTemplate(text, ["text"]);
  if ("problem" in template) return refuse("dialect/template", template.problem);
  const style = word<keyof typeof marks>(resolving.tree, "comments.style");
  if (style === undefined)
    return refuse("dialect/idiom-meaning", "the dialect has no comments to write a message in");
  const { open, close } = marks[style];
  const [before, value, after = { literal: "" }, ...rest] = template.parts;
  const shaped = before !== undefined && "literal" in before && value !== undefined && "value" in value;
  if (
    !shaped ||
    !("literal" in after) ||
    rest.length > 0 ||
    !before.literal.startsWith(open) ||
    after.literal !== close
  ) {
    return refuse("dialect/template", "a message is one whole comment that ends with {{text}}");
  }
  const mark = before.literal.slice(open.length).trim();
  if (mark === "")
    return refuse("dialect/idiom-meaning", "without a word before {{text}} each comment would be a message");
  if (unsafe.test(mark))
    return refuse("dialect/characters", "a mark that begins or ends a comment stands in its text");
  return { idiom: { blocks: [template.parts] }, code: undefined };
}

function example(resolving: Resolving): string {
  const style = nodeAt(resolving.tree, "comments.style");
  if (style === undefined || isNone(style)) return "State `idioms: { message: none }`.";
  return word(resolving.tree, "comments.style") === "semicolon"
    ? 'Write ";MSG {{text}}".'
    : 'Write "(MSG, {{text}})".';
}
