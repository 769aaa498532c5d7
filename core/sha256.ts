/** SHA-256 (FIPS 180-4), synchronous and in pieces, for use where no platform offers it. */

const roundConstants = Int32Array.from(fractionalBits(64, 1 / 3));
const initialState = fractionalBits(8, 1 / 2);
const blockBytes = 64;

/** Takes bytes piece by piece; `hex` ends it and gives the hash. */
export function createSha256(): { update(chunk: Uint8Array): void; hex(): string } {
  const state = Uint32Array.from(initialState);
  const block = new Uint8Array(blockBytes);
  const words = new Int32Array(64);
  let total = 0;
  const update = (chunk: Uint8Array): void => {
    for (let offset = 0; offset < chunk.length;) {
      const start = total % blockBytes;
      const piece = chunk.subarray(offset, offset + blockBytes - start);
      block.set(piece, start);
      offset += piece.length;
      total += piece.length;
      if (total % blockBytes === 0) compress(state, words, block);
    }
  };
  const hex = (): string => {
    update(padding(total));
    return [...state].map((word) => word.toString(16).padStart(8, "0")).join("");
  };
  return { update, hex };
}

/** Section 5.1.1: a one bit, zeros, and the length in bits as a 64-bit number. */
function padding(total: number): Uint8Array {
  const zeros = (blockBytes * 2 - 9 - (total % blockBytes)) % blockBytes;
  const bytes = new Uint8Array(1 + zeros + 8);
  const view = new DataView(bytes.buffer);
  bytes[0] = 0x80;
  view.setUint32(1 + zeros, Math.floor(total / 2 ** 29));
  view.setUint32(1 + zeros + 4, (total * 8) >>> 0);
  return bytes;
}

/** Section 6.2.2: one block into the state. */
function compress(state: Uint32Array, words: Int32Array, block: Uint8Array): void {
  schedule(words, block);
  let [a, b, c, d, e, f, g, h] = Int32Array.from(state);
  for (let round = 0; round < 64; round++) {
    const sum1 = rotate(e, 6) ^ rotate(e, 11) ^ rotate(e, 25);
    const first = (h + sum1 + ((e & f) ^ (~e & g)) + roundConstants[round] + words[round]) | 0;
    const sum0 = rotate(a, 2) ^ rotate(a, 13) ^ rotate(a, 22);
    const second = (sum0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + first) | 0;
    d = c;
    c = b;
    b = a;
    a = (first + second) | 0;
  }
  const added = [a, b, c, d, e, f, g, h];
  for (let index = 0; index < 8; index++) state[index] += added[index];
}

function schedule(words: Int32Array, block: Uint8Array): void {
  const view = new DataView(block.buffer);
  for (let index = 0; index < 16; index++) words[index] = view.getInt32(index * 4);
  for (let index = 16; index < 64; index++) {
    const early = words[index - 15];
    const late = words[index - 2];
    const sigma0 = rotate(early, 7) ^ rotate(early, 18) ^ (early >>> 3);
    const sigma1 = rotate(late, 17) ^ rotate(late, 19) ^ (late >>> 10);
    words[index] = words[index - 16] + sigma0 + words[index - 7] + sigma1;
  }
}

function rotate(value: number, bits: number): number {
  return (value >>> bits) | (value << (32 - bits));
}

/** Sections 4.2.2 and 5.3.3: the first 32 bits behind the point of the roots of the first primes. */
function fractionalBits(count: number, exponent: number): Uint32Array {
  const primes: number[] = [];
  for (let candidate = 2; primes.length < count; candidate++) {
    if (primes.every((prime) => candidate % prime !== 0)) primes.push(candidate);
  }
  return Uint32Array.from(primes, (prime) => (prime ** exponent % 1) * 2 ** 32);
}
