/** How far a peck is backed off where neither job nor cycle says it, atoms: 0.25 mm (common practice, no source). */
export const usualBackOff = 2_500_000;
