import type { Dialect } from "./dialect.ts";

/*
 * A resolved dialect holds infinities ("no limit") and undefined places in lists ("not stated"); JSON would turn both
 * into null, which means "none". Marks with a control character stand for them: no text of a dialect can hold one.
 */
const infinite = "\u0000infinite";
const absent = "\u0000absent";

/** A resolved dialect as JSON text. */
export function packDialect(dialect: Dialect): string {
  return JSON.stringify(dialect, (_key, value: unknown) => {
    if (value === Infinity) return infinite;
    return value === undefined ? absent : value;
  });
}

/** A resolved dialect from the text that `packDialect` gave. */
export function unpackDialect(text: string): Dialect {
  return restore(JSON.parse(text)) as Dialect;
}

function restore(value: unknown): unknown {
  if (value === infinite) return Infinity;
  if (value === absent) return undefined;
  if (Array.isArray(value)) return value.map(restore);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, restore(one)]));
}
