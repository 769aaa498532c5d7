const degrees = 180 / Math.PI;

/** Beyond this, ROUND of the interpreters that we know gives another number: it counts in 32 bits. */
const mostRounded = 2 ** 31;

/**
 * The functions of one value (NISTIR 6556 3.3.2.3), angles in degrees; a text says why there is no result. ATAN has two values and
 * EXISTS none, so they stand where expressions are read.
 */
export const functions: ReadonlyMap<string, (value: number) => number | string> = new Map<
  string,
  (value: number) => number | string
>([
  ["ABS", Math.abs],
  ["ACOS", (value) => (Math.abs(value) > 1 ? "ACOS of more than 1" : Math.acos(value) * degrees)],
  ["ASIN", (value) => (Math.abs(value) > 1 ? "ASIN of more than 1" : Math.asin(value) * degrees)],
  ["COS", (value) => Math.cos(value / degrees)],
  ["EXP", Math.exp],
  ["FIX", Math.floor],
  ["FUP", Math.ceil],
  ["LN", (value) => (value <= 0 ? "LN of what is not above zero" : Math.log(value))],
  ["ROUND", round],
  ["SIN", (value) => Math.sin(value / degrees)],
  ["SQRT", (value) => (value < 0 ? "SQRT of a negative number" : Math.sqrt(value))],
  ["TAN", (value) => Math.tan(value / degrees)],
]);

/** To the nearest whole number, a half away from zero: -2.5 -> -3. */
function round(value: number): number | string {
  if (Math.abs(value) >= mostRounded) return "ROUND of so large a number";
  return Math.trunc(value + (value < 0 ? -0.5 : 0.5));
}

/** The angle of ATAN[y]/[x], degrees, -180 to 180. */
export function angleOf(y: number, x: number): number {
  return Math.atan2(y, x) * degrees;
}
