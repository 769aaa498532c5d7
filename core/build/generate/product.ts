/** A file that is generated and checked in. Paths are relative to the root of the repository. */
export interface Product {
  /** The file to write. */
  readonly target: string;
  /** Files or folders that it is made from. */
  readonly needs: readonly string[];
  /** Gives the whole text of the file; the same sources always give the same bytes. */
  readonly make: (root: string) => string | Promise<string>;
}

/** The first lines of a generated TypeScript file. */
export function generatedBanner(sources: readonly string[]): string {
  return `/* Generated from ${sources.join(", ")} by \`npm run generate\`. Do not edit. */`;
}
