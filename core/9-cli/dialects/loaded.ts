import type { Finding } from "#base";
import type { Dialect } from "#dialect";

/** A dialect ready for use. Plain data, so that another thread can have it. */
export interface LoadedDialect {
  readonly dialect: Dialect;
  /** Address of its emitter, for `import()`. */
  readonly emitter: string;
  /** Warnings and notes that its files gave. */
  readonly findings: readonly Finding[];
  /** Path of each file of the chain, by the name under which findings and origins know it. */
  readonly paths: Readonly<Record<string, string>>;
}

/** A dialect that cannot be used, and why. */
export interface RefusedDialect {
  readonly refused: true;
  readonly findings: readonly Finding[];
  /** As in LoadedDialect, of the files that were read. */
  readonly paths: Readonly<Record<string, string>>;
}
