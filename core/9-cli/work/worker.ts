import { parentPort } from "node:worker_threads";
import { compute } from "./compute.ts";
import type { Computed } from "./compute.ts";
import type { Plan } from "./plan.ts";

/** What the thread says as it goes on, and at the end. */
export type WorkerMessage =
  { readonly progress: readonly [number, number] } | { readonly computed: Computed };

/** Pause between two messages on progress, milliseconds. */
const interval = 100;

/**
 * The thread that does long work, so that the first one stays free for signals and for the progress bar: each message to it is
 * a plan, and the next comes when the answer was given.
 */
export function serve(): void {
  // A fault rejects the promise, which ends the thread and is told to the first one.
  parentPort?.on("message", (plan: Plan) => void work(plan));
}

async function work(plan: Plan): Promise<void> {
  const say = (message: WorkerMessage): void => parentPort?.postMessage(message);
  let said = 0;
  const computed = await compute(plan, (done, total) => {
    const now = Date.now();
    if (now - said < interval) return;
    said = now;
    say({ progress: [done, total] });
  });
  say({ computed });
}
