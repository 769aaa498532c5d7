import { readSync } from "node:fs";

const windowBytes = 1 << 18;

/** A file from its first byte to its last, whatever its descriptor stood at; each chunk is valid until the next one. */
export function* chunksOf(descriptor: number): Generator<Uint8Array> {
  const window = new Uint8Array(windowBytes);
  let offset = 0;
  for (;;) {
    const count = readSync(descriptor, window, 0, window.length, offset);
    if (count === 0) return;
    offset += count;
    yield window.subarray(0, count);
  }
}
