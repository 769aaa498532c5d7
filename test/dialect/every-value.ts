import { allCodeKeys } from "../../core/2-dialect/code-keys.ts";
import type { SchemaPart } from "../../core/2-dialect/schema.ts";
import { dialectSchema, formsOf, wordsAmong } from "../../core/2-dialect/schema.ts";

/** One value that a key may have: "modal.motion", "each-block". */
export interface KeyValue {
  readonly key: string;
  readonly value: string;
}

/** Keys that shape no program, and those of which a file makes its own. */
const apart = ["dialect", "title", "extends", "sources", "cases", "unanswered", "codes", "idioms"];

/** Codes that the standards leave to builders. */
const freeCodes = ["G131", "M131"];

/** Every value of each key of which the schema lists the values; and of each code `none` and a code of a builder. */
export function everyValue(): KeyValue[] {
  const found = new Map<string, KeyValue>();
  const add = (key: string, value: string): void => void found.set(`${key} ${value}`, { key, value });
  const walk = (part: SchemaPart, path: readonly string[]): void => {
    const forms = formsOf(dialectSchema, part);
    for (const value of valuesAmong(forms)) add(path.join("."), value);
    for (const { properties = {} } of forms)
      for (const [name, below] of Object.entries(properties)) walk(below, [...path, name]);
  };
  for (const [name, part] of Object.entries(dialectSchema.properties ?? {}))
    if (!apart.includes(name)) walk(part, [name]);
  for (const key of allCodeKeys()) add(key, "none");
  return [...found.values()];
}

function valuesAmong(forms: readonly SchemaPart[]): string[] {
  const patterns = forms.flatMap(({ pattern }) => (pattern === undefined ? [] : [new RegExp(pattern)]));
  const codes = ["none", ...freeCodes].filter((text) => patterns.some((pattern) => pattern.test(text)));
  return [...wordsAmong(forms), ...codes];
}
