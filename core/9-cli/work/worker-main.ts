import { join } from "node:path";
import { workerData } from "node:worker_threads";
import type * as WorkingThread from "./worker.ts";
import { loadScript } from "../scripts.ts";
import type { Plan } from "./plan.ts";

/** What becomes dist/worker.js: the working thread from its scripts. */
const file = join(import.meta.dirname, "scripts", "worker.cjs");
const { work } = loadScript(new Map(), file) as typeof WorkingThread;

await work(workerData as Plan);
