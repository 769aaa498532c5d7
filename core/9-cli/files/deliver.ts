import { closeSync, openSync, readSync } from "node:fs";
import type { Target } from "./target.ts";
import { writeAll } from "./write.ts";

/** Copies a proved program to standard output, a pipe or a device. */
export function deliver(descriptor: number, target: Target): void {
  const out = target.path === undefined ? 1 : openSync(target.path, "w");
  const window = new Uint8Array(1 << 16);
  let offset = 0;
  for (let count = 0; (count = readSync(descriptor, window, 0, window.length, offset)) > 0; offset += count) {
    writeAll(out, window.subarray(0, count));
  }
  if (out !== 1) closeSync(out);
}
