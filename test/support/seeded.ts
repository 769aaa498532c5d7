/** Numbers from 0 up to 1 that are the same for the same seed (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  const state = { value: seed | 0 };
  return () => {
    state.value = (state.value + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state.value ^ (state.value >>> 15), 1 | state.value);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
