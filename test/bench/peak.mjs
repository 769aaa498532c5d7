// Preloaded into a measured process: says its peak memory (kB) and CPU time (µs) when it exits. Threads of it load this, too, and
// say nothing: what they used counts in the process.
import { writeSync } from "node:fs";
import { isMainThread } from "node:worker_threads";

if (isMainThread) {
  process.on("exit", () => {
    const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
    writeSync(3, `${String(maxRSS)} ${String(userCPUTime + systemCPUTime)}`);
  });
}
