/** A seekable input. All offsets and sizes are in bytes. */
export interface ByteSource {
  readonly size: number;
  /** Fills `target` from `offset` on as far as the input goes; gives the number of bytes read, 0 at the end. */
  read(offset: number, target: Uint8Array): number;
}

/** Bytes read at a time. */
const windowBytes = 1 << 16;

/**
 * Bytes of a source, in chunks that are each valid until the next is pulled.
 *
 * @param passing called with each chunk and the bytes up to its end before it is handed on
 */
export function* chunksOf(
  source: ByteSource,
  passing: (chunk: Uint8Array, done: number) => void = () => undefined,
): Generator<Uint8Array> {
  const window = new Uint8Array(windowBytes);
  for (let offset = 0; offset < source.size;) {
    const length = source.read(offset, window);
    if (length === 0) return;
    offset += length;
    const chunk = window.subarray(0, length);
    passing(chunk, offset);
    yield chunk;
  }
}

const lineFeed = 10;

/** Line of a place, counted from 1. The bytes before it are counted through. @param place byte offset */
export function lineAt(source: ByteSource, place: number): number {
  let [line, from] = [1, 0];
  for (const chunk of chunksOf(source)) {
    const end = Math.min(chunk.length, place - from);
    for (let at = chunk.indexOf(lineFeed); at >= 0 && at < end; at = chunk.indexOf(lineFeed, at + 1)) line++;
    from += chunk.length;
    if (from >= place) break;
  }
  return line;
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
