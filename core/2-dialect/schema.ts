import dialectJson from "../../schemas/dialect.schema.json" with { type: "json" };
import setupJson from "../../schemas/setup.schema.json" with { type: "json" };

/** A part of a JSON Schema, as far as ours use it. */
export interface SchemaPart {
  readonly title?: string;
  readonly description?: string;
  readonly type?: string;
  readonly enum?: readonly string[];
  readonly const?: string;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly properties?: Readonly<Record<string, SchemaPart>>;
  readonly patternProperties?: Readonly<Record<string, SchemaPart>>;
  readonly items?: SchemaPart;
  readonly anyOf?: readonly SchemaPart[];
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, SchemaPart>>;
  readonly examples?: readonly unknown[];
}

/** The schema of dialect files. */
export const dialectSchema: SchemaPart = dialectJson;

/** The schema of set-up files. */
export const setupSchema: SchemaPart = setupJson;

/** The forms that a part allows: itself, or what it refers to and its branches. The part's own texts are left behind. */
export function formsOf(root: SchemaPart, part: SchemaPart): readonly SchemaPart[] {
  if (part.$ref !== undefined) return formsOf(root, root.$defs![part.$ref.slice("#/$defs/".length)]);
  return part.anyOf === undefined ? [part] : part.anyOf.flatMap((branch) => formsOf(root, branch));
}

/** The parts of a schema that a value at a path must fit; steps are keys, and indices of lists. */
export function partsAt(root: SchemaPart, steps: readonly string[]): readonly SchemaPart[] {
  return steps.reduce<readonly SchemaPart[]>(
    (parts, step) => parts.flatMap((part) => formsOf(root, part)).flatMap((form) => below(form, step)),
    [root],
  );
}

/** The forms that a value at a path may have; see `partsAt`. */
export function formsAt(root: SchemaPart, steps: readonly string[]): readonly SchemaPart[] {
  return partsAt(root, steps).flatMap((part) => formsOf(root, part));
}

/** The words among forms, each once: those of which one is chosen. */
export function wordsAmong(forms: readonly SchemaPart[]): string[] {
  return [...new Set(forms.flatMap((form) => form.enum ?? (form.const === undefined ? [] : [form.const])))];
}

function below(form: SchemaPart, step: string): readonly SchemaPart[] {
  const named =
    form.properties !== undefined && Object.hasOwn(form.properties, step) ? form.properties[step] : undefined;
  if (named !== undefined) return [named];
  const patterns = Object.entries(form.patternProperties ?? {}).filter(([pattern]) =>
    new RegExp(pattern).test(step),
  );
  return [
    ...patterns.map(([, part]) => part),
    ...(form.items !== undefined && /^\d+$/.test(step) ? [form.items] : []),
  ];
}

/** What a value can be, in words: "none, or a mapping with the keys on, start and step". */
export function valuesInWords(root: SchemaPart, part: SchemaPart): string {
  if (part.$ref !== undefined) return root.$defs![part.$ref.slice("#/$defs/".length)].description ?? "";
  if (part.anyOf !== undefined)
    return [...new Set(part.anyOf.map((branch) => valuesInWords(root, branch)))].join(", or ");
  if (part.enum !== undefined) return inWords(part.enum, "or");
  if (part.const !== undefined) return part.const;
  if (part.type === "object")
    return `a mapping with the keys ${inWords(Object.keys(part.properties ?? {}), "and")}`;
  if (part.type === "integer" || part.type === "number") return numberInWords(part);
  const [example] = part.examples ?? [];
  const kind = part.type === "array" ? "a list" : "a text";
  return example === undefined
    ? kind
    : `${kind} such as ${typeof example === "string" ? example : JSON.stringify(example)}`;
}

function numberInWords({ type, minimum, maximum, exclusiveMinimum }: SchemaPart): string {
  const kind = type === "integer" ? "a whole number" : "a number";
  const above = exclusiveMinimum === undefined ? "" : ` above ${exclusiveMinimum}`;
  const from = minimum === undefined ? above : ` from ${minimum}`;
  return maximum === undefined
    ? kind + from
    : `${kind}${from}${from === above && above !== "" ? ", at most" : " to"} ${maximum}`;
}

/** ["a", "b", "c"] -> "a, b or c". */
export function inWords(words: readonly string[], last: "and" | "or"): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}
