import Handlebars from "handlebars";
import type { PageLine, PageList, PagePart } from "./dialect.ts";
import { didYouMean } from "./did-you-mean.ts";
import type { Resolving } from "./resolving.ts";
import { nodeAt } from "./tree.ts";

/** Names that a line may use, by what it stands for: the program, or one of a list. */
export const pageNames = {
  program: ["program", "number", "dialect", "units"],
  tools: ["number", "description", "diameter", "lengthOffset"],
  operations: ["id", "name"],
  assumptions: ["text"],
} as const satisfies Record<PageList | "program", readonly string[]>;

type Mustache = hbs.AST.MustacheStatement;
type Block = hbs.AST.BlockStatement;

/** The lines of `idioms.header` or `idioms.footer`; undefined where no file states them or they are refused. */
export function resolvePage(resolving: Resolving, path: string): readonly PageLine[] | undefined {
  const node = nodeAt(resolving.tree, path);
  if (node === undefined) return undefined;
  if (node.kind !== "list") return [];
  return node.items.flatMap((item) => {
    const line = pageLine(item.kind === "scalar" ? String(item.value) : "");
    if (!("problem" in line)) return [line];
    const fix = "Write text, {{name}}, and {{#each tools}} or the like around a whole line.";
    resolving.fail("dialect/template", path, `In \`${path}\`: ${line.problem}.`, fix);
    return [];
  });
}

/** Takes a line apart. Only its syntax tree is looked at; nothing of it is ever run. */
function pageLine(text: string): PageLine | { readonly problem: string } {
  const body = parse(text);
  if (body === undefined) return { problem: "the braces of a line do not close" };
  if (text.includes("\\")) return { problem: "a backslash is not allowed in a line" };
  const [only] = body;
  if (only?.type !== "BlockStatement") return withParts(undefined, body);
  if (body.length > 1) return { problem: "{{#each}} stands around the whole line" };
  const list = listOf(only as Block);
  return list === undefined
    ? { problem: "a block is {{#each tools}}, {{#each operations}} or {{#each assumptions}}" }
    : withParts(list, (only as Block).program.body);
}

function parse(text: string): hbs.AST.Statement[] | undefined {
  try {
    return Handlebars.parseWithoutProcessing(text).body;
  } catch {
    return undefined;
  }
}

/** The list that a block goes through; undefined for any other block, and for one with more than that. */
function listOf(block: Block): PageList | undefined {
  const [over, ...rest] = block.params.map(nameOf);
  const isPlain =
    nameOf(block.path) === "each" &&
    rest.length === 0 &&
    (block.hash as unknown) === undefined &&
    (block.inverse as unknown) === undefined &&
    (block.program.blockParams as unknown) === undefined;
  return isPlain && over !== undefined && over !== "program" && Object.hasOwn(pageNames, over)
    ? (over as PageList)
    : undefined;
}

/** The name of a path that is one plain name. */
function nameOf(expression: hbs.AST.Expression): string | undefined {
  if (expression.type !== "PathExpression") return undefined;
  const { original, data, depth, parts } = expression as hbs.AST.PathExpression;
  return !data && depth === 0 && parts.length === 1 && /^[A-Za-z]+$/.test(original) ? original : undefined;
}

function withParts(
  each: PageList | undefined,
  body: readonly hbs.AST.Statement[],
): PageLine | { readonly problem: string } {
  const allowed: readonly string[] = pageNames[each ?? "program"];
  const parts: PagePart[] = [];
  for (const statement of body) {
    if (statement.type === "ContentStatement") {
      parts.push({ literal: (statement as hbs.AST.ContentStatement).value });
      continue;
    }
    const name = statement.type === "MustacheStatement" ? plainName(statement as Mustache) : undefined;
    if (name === undefined) return { problem: "only the plain name of a value may stand in braces" };
    if (!allowed.includes(name))
      return {
        problem: `{{${name}}} is no value here.${didYouMean(name, allowed)} It may name ${allowed.join(", ")}`,
      };
    parts.push({ name });
  }
  return { each, parts };
}

function plainName(statement: Mustache): string | undefined {
  const bare =
    statement.params.length === 0 && (statement.hash as unknown) === undefined && statement.escaped;
  return bare ? nameOf(statement.path) : undefined;
}
