/** Axes that no key covers yet: subprograms, variables and what a milling program of one channel does not touch. */
export const notYet: readonly number[] = [
  10, 27, 40, 54, 57, 90, 101, 116, 117, 118, 119, 120, 121, 122, 126, 127, 129,
];

/** How many axes there are. */
export const axisCount = 131;
