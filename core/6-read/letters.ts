/** Addresses as numbers, A = 0 to Z = 25: the index of the columns of a block. */
export const letterA = 0;
export const letterB = 1;
export const letterC = 2;
export const letterF = 5;
export const letterG = 6;
export const letterI = 8;
export const letterJ = 9;
export const letterK = 10;
export const letterL = 11;
export const letterM = 12;
export const letterN = 13;
export const letterO = 14;
export const letterR = 17;
export const letterS = 18;
export const letterT = 19;
export const letterX = 23;
export const letterY = 24;
export const letterZ = 25;

/** Bits of the axis words in a mask of letters. */
export const axisLetters = (1 << letterX) | (1 << letterY) | (1 << letterZ) | 7;

/** Bits of I, J and K. */
export const centreLetters = 7 << letterI;

/** The letter of each axis, in the order of `axes`. */
export const letterOfAxis = [letterX, letterY, letterZ, letterA, letterB, letterC] as const;

/** The number of an upper-case letter as a dialect states it. */
export function letterNumber(text: string): number {
  return text.charCodeAt(0) - 65;
}

/** The bit of a letter that a dialect states; 0 for none. */
export function letterBit(text: string | null | undefined): number {
  return text ? 1 << letterNumber(text) : 0;
}

/** The letter itself: 23 -> "X". */
export function letterName(letter: number): string {
  return String.fromCharCode(65 + letter);
}

/** Axis mask of the axis letters among a mask of letters: X Y Z are bits 23 to 25, A B C bits 0 to 2. */
export function axesOfLetters(letters: number): number {
  return ((letters >>> letterX) & 7) | ((letters & 7) << 3);
}

/** The letters of an axis mask. */
export function lettersOfAxes(axisMask: number): number {
  return ((axisMask & 7) << letterX) | (axisMask >>> 3);
}
