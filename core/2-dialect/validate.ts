import type { Finding, Report, SourceName } from "#base";
import type { SchemaError } from "./dialect-validator.generated.ts";
import { validateDialect } from "./dialect-validator.generated.ts";
import { didYouMean } from "./did-you-mean.ts";
import type { SchemaPart } from "./schema.ts";
import { dialectSchema, formsAt, partsAt, valuesInWords, wordsAmong } from "./schema.ts";
import type { TreeNode } from "./tree.ts";
import { nodeAt, plainData } from "./tree.ts";

/** A file's tree with the schema it must fit. */
export interface Validating {
  readonly tree: TreeNode;
  readonly file: string;
  readonly source: Extract<SourceName, "dialect" | "setup">;
  readonly schema: SchemaPart;
  readonly validate: (data: unknown) => readonly SchemaError[];
}

/** Checks a dialect file against schemas/dialect.schema.json; gives whether it fits, each fault is reported. */
export function validateTree(tree: TreeNode, file: string, report: Report): boolean {
  return fitsSchema(
    { tree, file, source: "dialect", schema: dialectSchema, validate: validateDialect },
    report,
  );
}

/** Checks a tree; each value that does not fit gives one finding that says what it can be. */
export function fitsSchema(validating: Validating, report: Report): boolean {
  const errors = validating.validate(plainData(validating.tree));
  const paths = new Set(errors.map(({ instancePath }) => instancePath));
  const found = errors
    .filter(({ keyword }) => keyword === "additionalProperties")
    .map((error) => unknownKey(validating, error));
  for (const path of paths) {
    const here = errors.filter(({ instancePath }) => instancePath === path);
    // A form that was not meant fails as a whole; the one that was meant fails in what lies below, or at its keys.
    const explained = here.some(isAboutKeys) || [...paths].some((other) => other.startsWith(`${path}/`));
    if (!explained) found.push(wrongValue(validating, path));
    found.push(
      ...here.filter(({ keyword }) => keyword === "required").map((error) => missingKey(validating, error)),
    );
  }
  found.sort((first, second) => (first.place?.offset ?? 0) - (second.place?.offset ?? 0));
  for (const finding of found) report(finding);
  return errors.length === 0;
}

function isAboutKeys({ keyword }: SchemaError): boolean {
  return keyword === "additionalProperties" || keyword === "required";
}

/** "/machine/keep-out/0" -> ["machine", "keep-out", "0"] (RFC 6901). */
function stepsOf(pointer: string): string[] {
  return pointer
    .split("/")
    .slice(1)
    .map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~"));
}

/** The path in the tree, where items of a list count from 1. */
function pathOf({ tree }: Validating, steps: readonly string[]): string {
  return steps
    .map((step, index) => (isList(tree, steps.slice(0, index)) ? String(Number(step) + 1) : step))
    .join(".");
}

function isList(tree: TreeNode, steps: readonly string[]): boolean {
  let node: TreeNode | undefined = tree;
  for (const step of steps) {
    if (node?.kind === "mapping") node = node.entries.get(step);
    else node = node?.kind === "list" ? node.items[Number(step)] : undefined;
  }
  return node?.kind === "list";
}

function finding(validating: Validating, path: string, message: string): Finding {
  const { file, source, tree } = validating;
  const offset = (path === "" ? tree : nodeAt(tree, path))?.origin.offset ?? 0;
  const place = { source, file, offset };
  return { rule: "dialect/schema", severity: "error", message, place, ...(path === "" ? {} : { key: path }) };
}

function unknownKey(validating: Validating, { instancePath, params }: SchemaError): Finding {
  const { schema } = validating;
  const steps = stepsOf(instancePath);
  const name = String(params["additionalProperty"]);
  const known = formsAt(schema, steps).flatMap((form) => Object.keys(form.properties ?? {}));
  const owner = steps.length === 0 ? "The file" : `\`${pathOf(validating, steps)}\``;
  const message = `${owner} has no key \`${name}\`.${didYouMean(name, known)}`;
  const fix = known.length === 0 ? {} : { fix: `Its keys are ${[...new Set(known)].join(", ")}.` };
  return { ...finding(validating, pathOf(validating, [...steps, name]), message), ...fix };
}

function missingKey(validating: Validating, { instancePath, params }: SchemaError): Finding {
  const path = pathOf(validating, stepsOf(instancePath));
  const owner = path === "" ? "The file" : `\`${path}\``;
  return finding(validating, path, `${owner} must state \`${String(params["missingProperty"])}\`.`);
}

function wrongValue(validating: Validating, instancePath: string): Finding {
  const { schema, tree } = validating;
  const steps = stepsOf(instancePath);
  const path = pathOf(validating, steps);
  const node = path === "" ? tree : nodeAt(tree, path);
  const allowed = [...new Set(partsAt(schema, steps).map((part) => valuesInWords(schema, part)))].join(
    ", or ",
  );
  const given =
    node?.kind === "scalar" ? `\`${node.source}\`` : node?.kind === "list" ? "a list" : "a mapping";
  const hint = node?.kind === "scalar" ? didYouMean(node.source, wordsAmong(formsAt(schema, steps))) : "";
  const name = path === "" ? "The file" : `\`${path}\``;
  return finding(validating, path, `${name} is ${given}; it can be ${allowed}.${hint}`);
}
