// Preloaded into a measured process: says its peak memory when it exits. Threads of it load this, too, and say nothing.
import { writeSync } from "node:fs";
import { isMainThread } from "node:worker_threads";

if (isMainThread) {
  process.on("exit", () => {
    writeSync(3, String(process.resourceUsage().maxRSS));
  });
}
