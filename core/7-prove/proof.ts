/** Marks a proof; not exported, so that nothing else can make one. */
const brand: unique symbol = Symbol("proof");

/** Evidence that a text means its job. Only `prove` makes one, and only without any difference or error finding. */
export interface Proof {
  readonly [brand]: true;
  /** Length of the text in bytes. */
  readonly bytes: number;
  /** SHA-256 of the text, 64 hexadecimal digits. */
  readonly sha256: string;
  /** Rows and steps that were compared. */
  readonly steps: number;
  /** Hash of job, dialect and options. */
  readonly facts: string;
}

/**
 * Makes a proof.
 *
 * @throws where the caller's count or digest is none: that is a fault of ours
 */
export function makeProof(evidence: { bytes: number; sha256: string; steps: number; facts: string }): Proof {
  const { bytes, sha256 } = evidence;
  if (!Number.isSafeInteger(bytes) || bytes <= 0) throw new Error(`A proof of ${bytes} bytes`);
  if (!/^[0-9a-f]{64}$/.test(sha256)) throw new Error(`A proof with the digest "${sha256}"`);
  return Object.freeze({ [brand]: true as const, ...evidence });
}
