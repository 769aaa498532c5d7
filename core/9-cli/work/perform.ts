import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Worker } from "node:worker_threads";
import { packagePlace } from "../package.ts";
import type { Computed } from "./compute.ts";
import type { Plan, Progress } from "./plan.ts";
import type { WorkerMessage } from "./worker.ts";

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

/** Work that is too short for a progress bar. */
async function performHere(plan: Plan): Promise<Computed> {
  const { compute } = await import("./compute.ts");
  return compute(plan, () => undefined);
}

function performAside(plan: Plan, progress: Progress): Work {
  const file = pathToFileURL(join(packagePlace().root, "dist", "worker.js"));
  const worker = new Worker(file, { workerData: plan, execArgv: [] });
  const computed = new Promise<Computed>((resolve, reject) => {
    worker.on("message", (message: WorkerMessage) => {
      if ("progress" in message) progress(...message.progress);
      else resolve(message.computed);
    });
    worker.on("error", reject);
    worker.on("exit", (code) => reject(new Error(`the working thread ended with ${code} and said nothing`)));
  });
  return { computed, stop: async () => void (await worker.terminate()) };
}

function sizeOf(plan: Plan): number {
  if (plan.kind === "post") return plan.job.input.size;
  return plan.program.size + (plan.against?.input.size ?? 0);
}
