import { packagePlace } from "../package.ts";
import type { Computed } from "./compute.ts";
import type { Plan, Progress } from "./plan.ts";
import { startThread } from "./thread.ts";

/**
 * Inputs of more bytes, and simulations, are worked on by a thread of their own. Less is done within a fraction of a second, in which a
 * signal can wait, and a thread would take longer to start.
 */
const shortWork = 1 << 20;

/** A plan being worked on. */
export interface Work {
  readonly computed: Promise<Computed>;
  /** Ends it at once; nothing is written any more when the promise is done. */
  stop(): Promise<void>;
}

/** Starts the work of a plan, on this thread or on another one. */
export function perform(plan: Plan, progress: Progress): Work {
  const { built } = packagePlace();
  if (!built || (sizeOf(plan) <= shortWork && plan.simulate === undefined))
    return { computed: performHere(plan), stop: () => Promise.resolve() };
  return performAside(plan, progress);
}

/** Does the work of a plan on this thread; it is too short for a progress bar. */
export async function performHere(plan: Plan): Promise<Computed> {
  const { compute } = await import("./compute.ts");
  return compute(plan, () => undefined);
}

function performAside(plan: Plan, progress: Progress): Work {
  const thread = startThread();
  return { computed: thread.compute(plan, progress).finally(() => thread.stop()), stop: () => thread.stop() };
}

function sizeOf(plan: Plan): number {
  if (plan.kind === "post") return plan.job.input.size;
  return plan.program.size + (plan.against?.input.size ?? 0);
}
