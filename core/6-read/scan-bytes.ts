/** Whether a byte is a letter of either case. */
export function isLetter(byte: number): boolean {
  const upper = byte & 0xdf;
  return upper >= 65 && upper <= 90;
}

export function isDigit(byte: number): boolean {
  return byte >= 48 && byte <= 57;
}

/** A blank or a tab. */
export function isBlank(byte: number): boolean {
  return byte === 32 || byte === 9;
}

export function isLineEnd(byte: number): boolean {
  return byte === 10 || byte === 13;
}

/** The number of a letter of either case, A = 0. */
export function letterOf(byte: number): number {
  return (byte & 0xdf) - 65;
}

/** The first index at or after `index` that holds no blank; `end` if there is none. */
export function skipBlanks(bytes: Uint8Array, index: number, end: number): number {
  let at = index;
  while (at < end && isBlank(bytes[at])) at++;
  return at;
}

/** Text between two indices, for messages and the operator's text; bytes that are no UTF-8 show as U+FFFD. */
export function textBetween(bytes: Uint8Array, from: number, to: number): string {
  return new TextDecoder().decode(bytes.subarray(from, to));
}

/** Whether the bytes are well-formed UTF-8. */
export function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}
