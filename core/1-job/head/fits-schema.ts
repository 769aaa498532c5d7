import type { Finding, Report } from "#base";
import schema from "../../../schemas/job.schema.json" with { type: "json" };
import * as findings from "../findings.ts";
import type { SchemaError } from "../job-validator.generated.ts";
import { validateJob } from "../job-validator.generated.ts";
import { nearest } from "#base";
import type { Tree } from "./tree.ts";

/** Where an error of the schema stands and what it is about. */
interface Context {
  readonly tree: Tree;
  /** The value's key in words, such as "`clearance`". */
  readonly key: string;
  /** The object's name in words, such as "The tool". */
  readonly owner: string;
  /** Keys that an object may have. */
  readonly known: readonly string[];
}

/** A part of the schema, as far as it is looked at here. */
interface SchemaPart {
  readonly $ref?: string;
  readonly title?: string;
  readonly properties?: Readonly<Record<string, SchemaPart>>;
  readonly items?: SchemaPart;
}

/** Checks the head against schemas/job.schema.json. @returns whether it fits; otherwise each error is reported */
export function fitsSchema(tree: Tree, report: Report): boolean {
  const errors = withoutEchoes(withoutOtherBranches(validateJob(tree.value)));
  const found = errors.map((error) => toFinding(error, contextOf(tree, error)));
  found.sort((first, second) => (first.place?.offset ?? 0) - (second.place?.offset ?? 0));
  for (const finding of found) report(finding);
  return found.length === 0;
}

/**
 * Where one of several forms may stand (`coolant`: a word or a list), only the errors of the form that was meant are of
 * use: the one whose type fits. If none fits, one error of type remains.
 */
function withoutOtherBranches(errors: readonly SchemaError[]): readonly SchemaError[] {
  const branch = ({ schemaPath }: SchemaError): string => /^.*\/anyOf\/\d+/.exec(schemaPath)?.[0] ?? "";
  const refused = new Set(errors.filter(({ keyword }) => keyword === "type").map(branch));
  refused.delete("");
  const kept = errors.filter((error) => error.keyword !== "anyOf" && !refused.has(branch(error)));
  const covered = (path: string): boolean => kept.some(({ instancePath }) => instancePath.startsWith(path));
  return [...kept, ...errors.filter((error) => error.keyword === "anyOf" && !covered(error.instancePath))];
}

/** What is of another type altogether breaks other rules as well; that is no news. */
function withoutEchoes(errors: readonly SchemaError[]): readonly SchemaError[] {
  const mistyped = new Set(
    errors.filter(({ keyword }) => keyword === "type").map(({ instancePath }) => instancePath),
  );
  return errors.filter(({ keyword, instancePath }) => keyword === "type" || !mistyped.has(instancePath));
}

function contextOf(root: Tree, { instancePath }: SchemaError): Context {
  const steps = pointer(instancePath);
  const tree = steps.reduce(
    (inner, step) => inner.members?.get(step)?.tree ?? inner.elements?.[Number(step)] ?? inner,
    root,
  );
  const part = steps.reduce(partAt, schema as SchemaPart);
  const last = steps.at(-1) ?? "";
  const element = /^\d+$/.test(last) ? `Element ${Number(last) + 1} of \`${steps.at(-2)}\`` : `\`${last}\``;
  const key = steps.length === 0 ? "The job" : element;
  const { title, properties } = resolve(part);
  return {
    tree,
    key,
    owner: title === undefined ? key : `The ${title.toLowerCase()}`,
    known: Object.keys(properties ?? {}),
  };
}

/** "/tools/0/a~1b" -> ["tools", "0", "a/b"] (RFC 6901). */
function pointer(path: string): readonly string[] {
  const steps = path.split("/").slice(1);
  return steps.map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~"));
}

function partAt(part: SchemaPart, step: string): SchemaPart {
  const { properties, items } = resolve(part);
  return properties?.[step] ?? items ?? {};
}

/** What a reference leads to; what stands beside it goes before. */
function resolve(part: SchemaPart): SchemaPart {
  const name = part.$ref?.replace("#/$defs/", "");
  return name === undefined ? part : { ...(schema.$defs as Record<string, SchemaPart>)[name], ...part };
}

type ToFinding = (error: SchemaError, context: Context) => Finding;

const types: Readonly<Record<string, string>> = {
  object: "an object",
  array: "a list",
  string: "a text",
  number: "a number",
  integer: "a whole number",
  boolean: "true or false",
};

const atLeast: ToFinding = ({ params }, { tree, key }) =>
  findings.outOfRange(tree.offset, key, `at least ${String(params["limit"])}`);

/** What each keyword of the schema finds. */
const byKeyword: Readonly<Record<string, ToFinding>> = {
  type: ({ params }, { tree, key }) => findings.wrongType(tree.offset, key, types[String(params["type"])]),
  anyOf: (_, { tree, key }) => findings.wrongType(tree.offset, key, "a text or a list"),
  required: ({ params }, { tree, owner }) =>
    findings.missingKey(tree.offset, String(params["missingProperty"]), owner),
  additionalProperties: ({ params }, { tree, owner, known }) => {
    const key = String(params["additionalProperty"]);
    const offset = tree.members?.get(key)?.keyOffset ?? tree.offset;
    return findings.unknownKey(offset, key, owner, nearest(key, known));
  },
  enum: ({ params }, { tree, key }) => {
    const allowed = params["allowedValues"] as readonly string[];
    return findings.wrongWord(tree.offset, key, allowed, nearest(tree.value as string, allowed));
  },
  const: (_, { tree }) => findings.otherVersion(tree.offset),
  pattern: (_, { tree, key }) => findings.blankText(tree.offset, key),
  minimum: atLeast,
  exclusiveMinimum: ({ params }, { tree, key }) =>
    findings.outOfRange(tree.offset, key, `above ${String(params["limit"])}`),
  maximum: ({ params }, { tree, key }) =>
    findings.outOfRange(tree.offset, key, `at most ${String(params["limit"])}`),
  minItems: ({ params }, { tree, key }) =>
    findings.wrongCount(tree.offset, key, elements("at least", params["limit"])),
  maxItems: ({ params }, { tree, key }) =>
    findings.wrongCount(tree.offset, key, elements("at most", params["limit"])),
  uniqueItems: (_, { tree, key }) => findings.repeatedElement(tree.offset, key),
};

function elements(bound: string, count: unknown): string {
  return `${bound} ${String(count)} ${count === 1 ? "element" : "elements"}`;
}

function toFinding(error: SchemaError, context: Context): Finding {
  const known = byKeyword[error.keyword];
  if (known === undefined) throw new Error(`job schema: no finding for keyword ${error.keyword}`);
  return known(error, context);
}
