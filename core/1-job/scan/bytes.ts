/** Bytes that JSON is made of (RFC 8259 section 2), by name. */
export const quote = 34;
export const plus = 43;
export const comma = 44;
export const minus = 45;
export const point = 46;
export const zero = 48;
export const nine = 57;
export const colon = 58;
export const openBracket = 91;
export const backslash = 92;
export const closeBracket = 93;
export const openBrace = 123;
export const closeBrace = 125;

/** Whether a number can begin with a byte. */
export function beginsNumber(byte: number): boolean {
  return byte === minus || (byte >= zero && byte <= nine);
}
