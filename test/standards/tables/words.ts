import type { Sourced } from "./row.ts";

/** Order of words in a block. */
export const dinOrder: Sourced & { readonly order: readonly string[] } = {
  // P, Q and R stand with the dimensions, and E with F.
  order: ["N", "G", "XYZUVWPQRABC", "IJK", "FE", "S", "T", "D", "M"],
  source: "DIN 66025-1, as a teaching page reproduces it",
  confidence: "read",
};

/** An address letter and the numbers that it takes. */
export interface Address extends Sourced {
  readonly letter: string;
  readonly meaning: string;
  /** "real": any decimal number. "integer": a whole one. */
  readonly number: "real" | "integer";
  /** Whether it may be below 0. */
  readonly sign: boolean;
  /** A block with {n} in the place of the number. */
  readonly block: string;
}

const table3 = {
  source: "NISTIR 6556 Table 3, with 3.3.2 and the clause of each code",
  confidence: "read",
} as const;

// prettier-ignore
export const addresses: readonly Address[] = [
  { letter: "A", meaning: "rotation about X", number: "real", sign: true, block: "G0 A{n}", ...table3 },
  { letter: "B", meaning: "rotation about Y", number: "real", sign: true, block: "G0 B{n}", ...table3 },
  { letter: "C", meaning: "rotation about Z", number: "real", sign: true, block: "G0 C{n}", ...table3 },
  { letter: "D", meaning: "radius offset", number: "integer", sign: false, block: "G41 D{n}", ...table3 },
  { letter: "F", meaning: "feed", number: "real", sign: false, block: "G1 X1 F{n}", ...table3 },
  { letter: "H", meaning: "length offset", number: "integer", sign: false, block: "G43 H{n}", ...table3 },
  { letter: "I", meaning: "centre along X", number: "real", sign: true, block: "G0 X0 Y0\nF9\nG2 X0 Y0 I{n}", ...table3 },
  { letter: "J", meaning: "centre along Y", number: "real", sign: true, block: "G0 X0 Y0\nF9\nG2 X0 Y0 J{n}", ...table3 },
  { letter: "K", meaning: "centre along Z", number: "real", sign: true, block: "G18\nG0 X0 Z0\nF9\nG2 X0 Z0 K{n}", ...table3 },
  { letter: "L", meaning: "repeats of a cycle", number: "integer", sign: false, block: "G0 X0 Y0 Z9\nF9\nG99 G81 X1 Z-1 R1 L{n}", ...table3 },
  { letter: "P", meaning: "dwell, seconds", number: "real", sign: false, block: "G4 P{n}", ...table3 },
  { letter: "Q", meaning: "peck", number: "real", sign: false, block: "G0 X0 Y0 Z9\nF9\nG99 G83 X1 Z-1 R1 Q{n}", ...table3 },
  { letter: "R", meaning: "radius, or the level of a cycle", number: "real", sign: true, block: "G0 X0 Y0\nF9\nG2 X0.5 Y0 R{n}", ...table3 },
  { letter: "S", meaning: "spindle speed", number: "real", sign: false, block: "S{n} M3", ...table3 },
  { letter: "T", meaning: "tool", number: "integer", sign: false, block: "T{n}", ...table3 },
  { letter: "X", meaning: "axis", number: "real", sign: true, block: "G0 X{n}", ...table3 },
  { letter: "Y", meaning: "axis", number: "real", sign: true, block: "G0 Y{n}", ...table3 },
  { letter: "Z", meaning: "axis", number: "real", sign: true, block: "G0 Z{n}", ...table3 },
];

/** Units of a dwell, how a dialect calls them, and what 2 of them come to: microseconds, or millionths of a revolution. */
export interface DwellUnit extends Sourced {
  readonly unit: string;
  readonly time: number | undefined;
  readonly revolutions: number | undefined;
}

// prettier-ignore
export const dwellUnits: readonly DwellUnit[] = [
  { unit: "s", time: 2_000_000, revolutions: undefined, source: "NISTIR 6556 3.5.4: G4 P in seconds", confidence: "read" },
  { unit: "rev", time: undefined, revolutions: 2_000_000, source: "ISO 6983-1: seconds or revolutions of the spindle", confidence: "memory" },
  { unit: "ms", time: 2000, revolutions: undefined, source: "common practice, no source", confidence: "memory" },
];

/** Letters of the dwell word: the maker's choice. ISO 6983-1, from memory. */
export const dwellLetters: readonly string[] = ["X", "F", "P"];
