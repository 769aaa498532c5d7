import { pendingSignals, tidyOnSignal } from "../work/signals.ts";
import { commitText, discard, stageText } from "./staged.ts";
import type { Target } from "./target.ts";

/**
 * Writes a text that is no program aside, and puts it in its place when it is whole; a signal leaves nothing of it.
 *
 * @param check called right before the text takes its place; what it throws keeps the old file
 * @throws a carried finding
 */
export async function putText(
  target: Target,
  text: string | Iterable<string>,
  check: () => void = () => undefined,
): Promise<void> {
  const staged = stageText(target, text);
  await tidyOnSignal(
    () => discard(staged),
    async () => {
      try {
        await pendingSignals();
        check();
        commitText(staged);
      } finally {
        discard(staged);
      }
    },
  );
}
