import { createReadStream, openSync, unlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { randomUUID } from "node:crypto";
import { writeAll } from "./write.ts";

/**
 * Opens a temporary file without a name: it is gone as soon as its descriptor is closed, however the process ends.
 * Only its owner may read it.
 */
export function openNameless(): number {
  const path = join(tmpdir(), `tapewright-${randomUUID()}`);
  const descriptor = openSync(path, "wx+", 0o600);
  unlinkSync(path);
  return descriptor;
}

/**
 * Copies a stream to a temporary file; waits for it without holding up signals.
 *
 * @returns the descriptor of the copy
 */
export async function spool(descriptor: number): Promise<number> {
  const copy = openNameless();
  const stream = createReadStream("", { fd: descriptor, autoClose: false });
  for await (const chunk of stream) writeAll(copy, chunk as Uint8Array);
  return copy;
}
