/**
 * Index of the first byte that begins no well-formed character (Unicode 15, table 3-7), or -1. Longer forms than needed,
 * halves of surrogate pairs and characters above U+10FFFF are faults.
 */
export function utf8Fault(bytes: Uint8Array): number {
  let at = 0;
  while (at < bytes.length) {
    const length = characterLength(bytes, at);
    if (length === 0) return at;
    at += length;
  }
  return -1;
}

/** Bytes of the character at an index, 0 if it is none. */
function characterLength(bytes: Uint8Array, at: number): number {
  const lead = bytes[at];
  if (lead < 0x80) return 1;
  const second = bytes[at + 1];
  if (lead >= 0xc2 && lead < 0xe0) return isTail(second) ? 2 : 0;
  if (!isTail(bytes[at + 2])) return 0;
  if (lead === 0xe0) return second >= 0xa0 && second < 0xc0 ? 3 : 0;
  if (lead === 0xed) return second >= 0x80 && second < 0xa0 ? 3 : 0;
  if (lead > 0xe0 && lead < 0xf0) return isTail(second) ? 3 : 0;
  if (!isTail(bytes[at + 3])) return 0;
  if (lead === 0xf0) return second >= 0x90 && second < 0xc0 ? 4 : 0;
  if (lead === 0xf4) return second >= 0x80 && second < 0x90 ? 4 : 0;
  return lead > 0xf0 && lead < 0xf4 && isTail(second) ? 4 : 0;
}

/** Bytes past the end read as undefined, which is no tail. */
function isTail(byte: number | undefined): boolean {
  return byte !== undefined && byte >= 0x80 && byte < 0xc0;
}

/** Texts up to this many bytes are mostly keys and words, for which a decoder costs more than the text. */
const shortText = 64;

/** The text of well-formed UTF-8. */
export function decodeUtf8(bytes: Uint8Array): string {
  const { length } = bytes;
  let text = "";
  let at = 0;
  if (length <= shortText) while (at < length && bytes[at] < 0x80) text += String.fromCharCode(bytes[at++]);
  return at === length ? text : new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
}
