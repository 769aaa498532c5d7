import type { KeyBook } from "#dialect";
import type { Means } from "../inputs.ts";

/** A dialect with its traced emitter, and what can be asked about its keys. */
export interface TracedDialect extends Means {
  readonly keys: KeyBook;
}
