import type { ByteSource } from "#base";

/** Bytes read at a time. */
export const windowBytes = 1 << 16;

/** Bytes of a source, in chunks that are each valid until the next is pulled. */
export function* chunks(
  source: ByteSource,
  passing: (chunk: Uint8Array) => void = () => undefined,
): Generator<Uint8Array> {
  const window = new Uint8Array(windowBytes);
  for (let offset = 0; offset < source.size;) {
    const length = source.read(offset, window);
    if (length === 0) return;
    offset += length;
    const chunk = window.subarray(0, length);
    passing(chunk);
    yield chunk;
  }
}
