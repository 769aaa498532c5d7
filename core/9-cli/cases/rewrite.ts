import type { CaseResult } from "#cases";
import { withNewBlocks } from "#cases";
import { refuseChanged } from "../files/input.ts";
import { putText } from "../files/put-text.ts";
import { resolveTarget } from "../files/target.ts";
import type { CasesFile } from "./load.ts";

/** Whether the blocks of a case may take the place of those that it expects: they mean what was given, and are others. */
export function isToRewrite({ passed, written, meant }: CaseResult): boolean {
  return !passed && written !== undefined && meant;
}

/**
 * Puts what is written now in the place of what cases expect, in their file. A case whose blocks mean something else than
 * its steps stays as it is.
 *
 * @returns whether the file was rewritten
 * @throws a carried finding: the file has changed since it was read, or cannot be written
 */
export async function rewrite({ input, bytes }: CasesFile, results: readonly CaseResult[]): Promise<boolean> {
  const updates = results.flatMap((result, index) =>
    isToRewrite(result) ? [{ index, blocks: result.written ?? [] }] : [],
  );
  if (updates.length === 0) return false;
  const text = withNewBlocks(new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes), updates);
  const target = resolveTarget(input.file, [], "dialect file");
  await putText(target, text, () => refuseChanged(input));
  return true;
}
