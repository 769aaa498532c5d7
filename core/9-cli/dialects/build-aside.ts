import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Worker } from "node:worker_threads";
import { packagePlace } from "../package.ts";
import type { BuildOutcome, BuiltDialect } from "./own.ts";

/** What came of a dialect's files, as plain data. */
export interface PlainOutcome extends Omit<BuildOutcome, "built"> {
  readonly built: BuiltDialect | undefined;
}

/** New objects of the thread, MB: the compiler makes many and keeps few, and sweeping often costs less than room for all. */
const youngMegabytes = 1;

/**
 * Resolves a dialect and generates its emitter in a thread that ends before anything is posted, so that the memory of the
 * TypeScript compiler and of the work are not needed at once. Code that runs from its sources has no such thread.
 */
export async function buildAside(name: string): Promise<PlainOutcome> {
  const { root, built } = packagePlace();
  if (!built) return (await import("./own.ts")).buildDialect(name);
  const worker = new Worker(pathToFileURL(join(root, "dist", "builder.js")), {
    workerData: name,
    // Options of whoever runs this process are not meant for the thread, and some of them it refuses.
    execArgv: [],
    resourceLimits: { maxYoungGenerationSizeMb: youngMegabytes },
  });
  return new Promise((resolve, reject) => {
    let outcome: PlainOutcome | undefined;
    worker.on("message", (message: PlainOutcome) => (outcome = message));
    worker.on("error", reject);
    worker.on("exit", (code) => {
      if (outcome) resolve(outcome);
      else reject(new Error(`the building thread ended with ${code} and said nothing`));
    });
  });
}
