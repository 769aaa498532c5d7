import type { KeyOrigin } from "#base";
import type { Dialect } from "./dialect.ts";

/**
 * Where the value of a key stands; for a key in a group that is `none` as a whole, where the group stands. `file` is
 * empty and `line` 0 where no file of the chain states it.
 */
export function originOf(dialect: Pick<Dialect, "files" | "origins">, key: string): KeyOrigin {
  for (let path = key; path !== ""; path = path.slice(0, Math.max(path.lastIndexOf("."), 0))) {
    const origin = Object.hasOwn(dialect.origins, path) ? dialect.origins[path] : undefined;
    if (origin !== undefined) return { key, file: dialect.files[origin.file], line: origin.line };
  }
  return { key, file: "", line: 0 };
}
