import Handlebars from "handlebars";
import type { IdiomPart, IdiomValue } from "./dialect.ts";
import { didYouMean } from "./did-you-mean.ts";

/** What a template gives: its parts, or why it is refused. */
export type TemplateResult =
  { readonly parts: readonly IdiomPart[] } | { readonly problem: string; readonly fix?: string };

type Statement = hbs.AST.Statement;

/** Names of what is refused, by the type of the syntax tree's node. */
const refused: Readonly<Record<string, string>> = {
  BlockStatement: "a block",
  PartialStatement: "a partial",
  PartialBlockStatement: "a partial",
  CommentStatement: "a template comment",
  Decorator: "a decorator",
  DecoratorBlock: "a decorator",
};

const plain = "Write literal text and {{name}} alone.";

/**
 * Takes a template apart: `M94 P{{signal}}` -> literal `M94 P`, value `signal`. Only its syntax tree is looked at;
 * nothing of it is ever run. Anything but literal text and the plain name of a value is refused.
 */
export function parseTemplate(text: string, allowed: readonly IdiomValue[]): TemplateResult {
  const parsed = parseTree(text);
  if (parsed === undefined) return { problem: "the braces of the template do not close", fix: plain };
  const parts: IdiomPart[] = [];
  for (const statement of parsed.body) {
    const part = toPart(statement, text, allowed);
    if ("problem" in part) return part;
    parts.push(part);
  }
  return { parts };
}

function parseTree(text: string): hbs.AST.Program | undefined {
  try {
    // Without processing of whitespace: the literal text stays as it stands in the file.
    return Handlebars.parseWithoutProcessing(text);
  } catch {
    return undefined;
  }
}

function toPart(
  statement: Statement,
  text: string,
  allowed: readonly IdiomValue[],
): IdiomPart | { problem: string; fix?: string } {
  if (statement.type === "ContentStatement") return literalPart(statement as hbs.AST.ContentStatement, text);
  if (statement.type !== "MustacheStatement") {
    return { problem: `${refused[statement.type] ?? "this form"} is not allowed in a template`, fix: plain };
  }
  const name = plainName(statement as hbs.AST.MustacheStatement, text);
  if (name === undefined)
    return { problem: "only the plain name of a value may stand in braces", fix: plain };
  const value = allowed.find((candidate) => candidate === name);
  if (value !== undefined) return { value };
  const names = allowed.length === 0 ? "no value" : allowed.map((one) => `{{${one}}}`).join(", ");
  return {
    problem: `{{${name}}} is not a value of this idiom.${didYouMean(name, allowed)}`,
    fix: `It may name ${names}.`,
  };
}

/** A backslash escapes braces in a template; a block has no use for it. */
function literalPart({ value }: hbs.AST.ContentStatement, text: string): IdiomPart | { problem: string } {
  const escaped = text.includes("\\") || value.includes("{{");
  return escaped ? { problem: "a backslash is not allowed in a template" } : { literal: value };
}

/** The name in `{{name}}`; undefined for helpers, paths, literals, data, whitespace control and unescaped forms. */
function plainName(statement: hbs.AST.MustacheStatement, text: string): string | undefined {
  const { start, end } = statement.loc;
  const written = text.slice(start.column, end.column);
  const [, name] = /^\{\{([a-z]+)\}\}$/.exec(written) ?? [];
  const isPath = statement.path.type === "PathExpression";
  const bare =
    isPath && statement.params.length === 0 && (statement.hash as unknown) === undefined && statement.escaped;
  return bare && (statement.path as hbs.AST.PathExpression).original === name ? name : undefined;
}
