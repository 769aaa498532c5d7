import { createAttempt, trialOf } from "./targets.ts";
import type { TargetName } from "./targets.ts";

/** What the child is asked for: one input, by its number. */
export interface Question {
  readonly target: TargetName;
  readonly seed: number;
  readonly index: number;
}

/** What it answers; the heap is measured after a collection, every hundredth time. */
export interface Answer {
  readonly index: number;
  readonly fault: string | undefined;
  /** Processor time, so that a busy computer finds nothing that is not there. */
  readonly milliseconds: number;
  readonly heap: number | undefined;
}

const attempt = await createAttempt();
const collect = (globalThis as { gc?: () => void }).gc;

async function answer({ target, seed, index }: Question): Promise<Answer> {
  const begin = process.cpuUsage();
  const fault = await attempt(target, trialOf(target, seed, index));
  const { user, system } = process.cpuUsage(begin);
  const milliseconds = (user + system) / 1000;
  if (index % 100 !== 99) return { index, fault, milliseconds, heap: undefined };
  collect?.();
  return { index, fault, milliseconds, heap: process.memoryUsage().heapUsed };
}

process.on("message", (question: Question) => void answer(question).then((said) => process.send?.(said)));
process.send?.("ready");
