/** Names an expression may use. All are speeds in milli-rpm or times in microseconds. */
export type ExpressionName =
  "rpm" | "from_rpm" | "min_rpm" | "max_rpm" | "spin_up" | "spin_down" | "coast_down";

/** Operators and functions of the expression language. */
export type ExpressionOperator = "+" | "-" | "*" | "/" | "min" | "max";

/** An arithmetic expression as data; constants such as `second` are already numbers in base units (lengths.ts). */
export type Expression =
  | { readonly op: "number"; readonly value: number }
  | { readonly op: "name"; readonly name: ExpressionName }
  | { readonly op: ExpressionOperator; readonly of: readonly Expression[] };

/** Values of the names, in base units. */
export type ExpressionValues = Readonly<Record<ExpressionName, number>>;

const operators = {
  "+": (a: number, b: number) => a + b,
  "-": (a: number, b: number) => a - b,
  "*": (a: number, b: number) => a * b,
  "/": (a: number, b: number) => a / b,
  min: (a: number, b: number) => Math.min(a, b),
  max: (a: number, b: number) => Math.max(a, b),
} as const satisfies Record<ExpressionOperator, (a: number, b: number) => number>;

/**
 * Works out an expression. Division by zero gives an infinity or NaN, which the caller refuses.
 *
 * @returns the value in base units (a dwell: microseconds), not rounded
 */
export function evaluate(expression: Expression, values: ExpressionValues): number {
  if (expression.op === "number") return expression.value;
  if (expression.op === "name") return values[expression.name];
  const [first, ...rest] = expression.of.map((part) => evaluate(part, values));
  const apply = operators[expression.op];
  return rest.reduce(apply, first ?? 0);
}
