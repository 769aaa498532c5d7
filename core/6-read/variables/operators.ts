/** An operation on two values. */
export interface Operator {
  readonly name: string;
  /** Which goes first: a higher one. Equal ones go from left to right (NISTIR 6556 3.3.2.3). */
  readonly rank: number;
  /** The result; a text says why there is none. */
  readonly work: (left: number, right: number) => number | string;
}

/** Rank of sums and differences, and of AND, OR and XOR. */
export const sumRank = 4;
export const logicalRank = 2;

/** Values nearer than this are equal (as interpreters that followed NISTIR 6556 have it; tried on one). */
const nearlyEqual = 0.0001;

const asNumber = (truth: boolean): number => (truth ? 1 : 0);

/**
 * The operations of NISTIR 6556 3.3.2.3, and the comparisons of interpreters that followed. It has AND, OR and XOR go with sums
 * from left to right; those that followed have them go last. An expression in which that matters is refused.
 */
export const operators: readonly Operator[] = [
  { name: "**", rank: 6, work: power },
  { name: "*", rank: 5, work: (left, right) => left * right },
  { name: "/", rank: 5, work: (left, right) => (right === 0 ? "A division by zero" : left / right) },
  { name: "MOD", rank: 5, work: remainder },
  { name: "+", rank: sumRank, work: (left, right) => left + right },
  { name: "-", rank: sumRank, work: (left, right) => left - right },
  { name: "EQ", rank: 3, work: (left, right) => asNumber(Math.abs(left - right) < nearlyEqual) },
  { name: "NE", rank: 3, work: (left, right) => asNumber(Math.abs(left - right) >= nearlyEqual) },
  { name: "GT", rank: 3, work: (left, right) => asNumber(left > right) },
  { name: "GE", rank: 3, work: (left, right) => asNumber(left >= right) },
  { name: "LT", rank: 3, work: (left, right) => asNumber(left < right) },
  { name: "LE", rank: 3, work: (left, right) => asNumber(left <= right) },
  { name: "AND", rank: logicalRank, work: (left, right) => asNumber(left !== 0 && right !== 0) },
  { name: "OR", rank: logicalRank, work: (left, right) => asNumber(left !== 0 || right !== 0) },
  { name: "XOR", rank: logicalRank, work: (left, right) => asNumber((left === 0) !== (right === 0)) },
];

function power(base: number, exponent: number): number | string {
  if (base < 0 && !Number.isInteger(exponent)) return "A power of a negative number that is no whole one";
  if (base === 0 && exponent < 0) return "A negative power of zero";
  return base ** exponent;
}

/** What a division leaves, never negative: -7 MOD 3 = 2. */
function remainder(left: number, right: number): number | string {
  if (right === 0) return "A division by zero (MOD)";
  const rest = left % right;
  return rest < 0 ? rest + Math.abs(right) : rest;
}
