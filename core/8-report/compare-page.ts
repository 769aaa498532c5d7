import type { CompareAnswer } from "./compare-answer.ts";

/** The page of a comparison. */
export function comparePage(_answer: CompareAnswer): Promise<string> {
  return Promise.resolve("");
}
