import { stringify } from "yaml";
import { editorLine } from "./editor-line.ts";
import { rankOf } from "./show.ts";
import type { PlainValue } from "./tree.ts";

/** A key of a dialect file that is to be written. */
export interface WrittenKey {
  /** "modal.motion" */
  readonly key: string;
  readonly value: PlainValue;
  /** Stands behind the value; empty: none. */
  readonly comment: string;
  /** Stands above the key; neighbours that say the same have it once. */
  readonly above?: string;
}

interface Branch {
  readonly leaf: WrittenKey | undefined;
  readonly below: Map<string, Branch>;
}

/**
 * A dialect file as text: keys in the order of the schema, each on a line of its own with its comment.
 *
 *     modal:
 *       motion: each-block # G01 on 412 of 412 line blocks
 *
 * @param head comment lines behind the editor's line, without their marks
 * @param schema its address for editors, see `editorLine`; undefined: no such line
 */
export function writeDialectFile(
  keys: readonly WrittenKey[],
  head: readonly string[],
  schema?: string,
): string {
  const root: Branch = { leaf: undefined, below: new Map() };
  for (const key of keys) put(root, key.key.split("."), key);
  const line = schema === undefined ? [] : [editorLine(schema)];
  const lines = [...line, ...head.map((line) => `# ${oneLine(line)}`), ...branchLines(root, [])];
  return `${lines.join("\n")}\n`;
}

function put({ below }: Branch, [step, ...rest]: readonly string[], key: WrittenKey): void {
  const known = below.get(step);
  if (rest.length === 0) {
    below.set(step, { leaf: key, below: new Map() });
    return;
  }
  const branch = known ?? { leaf: undefined, below: new Map<string, Branch>() };
  below.set(step, branch);
  put(branch, rest, key);
}

function branchLines({ below }: Branch, steps: readonly string[]): string[] {
  const rank = rankOf(steps);
  const ordered = [...below].sort(([first], [second]) => rank(first) - rank(second));
  const indent = "  ".repeat(steps.length);
  let said: string | undefined;
  return ordered.flatMap(([name, branch]) => {
    const before = said;
    said = branch.leaf?.above;
    const key = `${indent}${stringify(name).trimEnd()}:`;
    if (!branch.leaf) return [key, ...branchLines(branch, [...steps, name])];
    const { value, comment, above } = branch.leaf;
    return [
      ...(above === undefined || above === before ? [] : [`${indent}# ${oneLine(above)}`]),
      `${key} ${flow(value)}${comment === "" ? "" : ` # ${oneLine(comment)}`}`,
    ];
  });
}

/** A value on one line: `{ letter: O, digits: 4 }`. */
function flow(value: PlainValue): string {
  return stringify(value, {
    collectionStyle: "flow",
    lineWidth: 0,
    version: "1.2",
    flowCollectionPadding: true,
  })
    .trimEnd()
    .replaceAll(/\n\s*/g, " ");
}

/** What a program or a user says may not end the comment that quotes it. */
function oneLine(text: string): string {
  // eslint-disable-next-line no-control-regex -- a comment of YAML may hold none of them
  return text.replaceAll(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, " ").trim();
}
