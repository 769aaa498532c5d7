import type { Code } from "./dialect.ts";

/** { letter: "G", value: 591 } -> G59.1; the way codes are named in findings. A word beside the code is left out. */
export function codeText({ letter, value }: Pick<Code, "letter" | "value">): string {
  return value % 10 === 0 ? `${letter}${value / 10}` : `${letter}${Math.floor(value / 10)}.${value % 10}`;
}
