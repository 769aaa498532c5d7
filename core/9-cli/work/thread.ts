import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Worker } from "node:worker_threads";
import { packagePlace } from "../package.ts";
import type { Computed } from "./compute.ts";
import type { Plan, Progress } from "./plan.ts";
import type { WorkerMessage } from "./worker.ts";

/** A working thread; it does one plan after the other, and what it has compiled for one serves the next. */
export interface Thread {
  /** Does the work of a plan; the plan before must be done. Rejected where the thread has a fault; it has ended then. */
  compute(plan: Plan, progress: Progress): Promise<Computed>;
  /** Ends it at once; nothing is written any more when the promise is done. */
  stop(): Promise<void>;
}

/** Starts a working thread. There is one in the built command only. */
export function startThread(): Thread {
  const file = pathToFileURL(join(packagePlace().root, "dist", "worker.js"));
  const worker = new Worker(file, { execArgv: [] });
  return {
    compute: (plan, progress) =>
      new Promise<Computed>((resolve, reject) => {
        worker.removeAllListeners();
        worker.on("message", (message: WorkerMessage) => {
          if ("progress" in message) progress(...message.progress);
          else resolve(message.computed);
        });
        worker.on("error", reject);
        worker.on("exit", (code) =>
          reject(new Error(`the working thread ended with ${code} and said nothing`)),
        );
        worker.postMessage(plan);
      }),
    stop: async () => void (await worker.terminate()),
  };
}
