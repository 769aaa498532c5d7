import { loadDialect } from "./load.ts";
import { shippedNames } from "./shipped.ts";

/** A shipped dialect as people choose it. */
export interface ShippedTitle {
  readonly name: string;
  readonly title: string;
}

/** Names and titles of the shipped dialects, sorted by name. */
export function shippedTitles(): Promise<ShippedTitle[]> {
  return Promise.all(shippedNames().map(describe));
}

async function describe(name: string): Promise<ShippedTitle> {
  const loaded = await loadDialect(name, true);
  if ("refused" in loaded)
    throw new Error(`the shipped dialect ${name} is refused: ${loaded.findings[0]?.message}`);
  return { name, title: loaded.dialect.title };
}
