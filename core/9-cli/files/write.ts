import { writeSync } from "node:fs";
import { isSystemError } from "./world.ts";

/** Pause before a full pipe is tried again, milliseconds. */
const patience = 5;

/**
 * Writes bytes to a descriptor to the last one: a pipe may take less than it is given, or nothing for a while.
 *
 * @throws the error of the system
 */
export function writeAll(descriptor: number, bytes: Uint8Array): void {
  for (let offset = 0; offset < bytes.length;) offset += writeSome(descriptor, bytes.subarray(offset));
}

function writeSome(descriptor: number, bytes: Uint8Array): number {
  try {
    return writeSync(descriptor, bytes);
  } catch (error) {
    if (!isSystemError(error) || error.code !== "EAGAIN") throw error;
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, patience);
    return 0;
  }
}

/** Writes text for people or programs; a reader that has gone, such as a pager that was left, is no error. */
export function writeText(descriptor: 1 | 2, text: string): void {
  try {
    writeAll(descriptor, new TextEncoder().encode(text));
  } catch (error) {
    if (!isSystemError(error) || error.code !== "EPIPE") throw error;
  }
}
