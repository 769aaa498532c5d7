import { join } from "node:path";
import type * as WorkingThread from "./worker.ts";
import { loadScript } from "../scripts.ts";

/** What becomes dist/worker.js: the working thread from its scripts. */
const file = join(import.meta.dirname, "scripts", "worker.cjs");
const { serve } = loadScript(new Map(), file) as typeof WorkingThread;

serve();
