/** A seekable input. All offsets and sizes are in bytes. */
export interface ByteSource {
  readonly size: number;
  /** Fills `target` from `offset` on as far as the input goes; gives the number of bytes read, 0 at the end. */
  read(offset: number, target: Uint8Array): number;
}

/** A byte source over bytes in memory. */
export function memorySource(bytes: Uint8Array): ByteSource {
  return {
    size: bytes.length,
    read(offset, target) {
      const part = bytes.subarray(offset, offset + target.length);
      target.set(part);
      return part.length;
    },
  };
}
