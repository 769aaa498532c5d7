import { closeSync, openSync } from "node:fs";
import { chunksOf } from "./chunks.ts";
import type { Target } from "./target.ts";
import { writeAll } from "./write.ts";

/** Copies a proved program to standard output, a pipe or a device. */
export function deliver(descriptor: number, target: Target): void {
  const out = target.path === undefined ? 1 : openSync(target.path, "w");
  for (const chunk of chunksOf(descriptor)) writeAll(out, chunk);
  if (out !== 1) closeSync(out);
}
