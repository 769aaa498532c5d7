import type { NumberFormat } from "#dialect";
import {
  add,
  and,
  atLeast,
  back,
  call,
  choose,
  constant,
  decrease,
  differs,
  div,
  func,
  increase,
  less,
  loop,
  math,
  more,
  mul,
  or,
  pick,
  put,
  rem,
  same,
  set,
  sub,
  variable,
  when,
  whole32,
} from "./builders.ts";
import type { Expression, FunctionDeclaration, Statement } from "./builders.ts";
import type { Printer } from "./calls.ts";
import type { Context } from "./context.ts";
import { faultOn } from "./fault.ts";

/** Below this a number of cells fits the integer arithmetic of 32 bits, which is much the fastest. */
const integerLimit = 2 ** 31;

/** The name of the printer for a number format; formats that print alike share one. */
export function printerFor(context: Context, format: NumberFormat): Printer {
  const wanted = JSON.stringify(format);
  for (const [name, known] of context.printers) if (JSON.stringify(known) === wanted) return name;
  const plain: Printer = `writeDecimals${format.decimals}`;
  const name: Printer = context.printers.has(plain) ? `${plain}Style${context.printers.size + 1}` : plain;
  context.printers.set(name, format);
  return name;
}

/**
 * The printer of one number format: a number of grid cells as bytes, by whole-number arithmetic alone, so that there is
 * neither an exponent nor a rounding of the last digit, and never "-0".
 *
 *     12500 cells, 3 decimals -> "12.500" | "12.5" | "12500" (implied) | "00125" (implied, trailing zeros left out)
 */
export function defineDecimals(name: Printer, format: NumberFormat): FunctionDeclaration {
  const digits = format.point === "never" ? impliedDigits(format) : pointedDigits(format);
  return func(
    name,
    ["bytes", "at", "value"],
    [constant("cells", math("floor", add(math("abs", "value"), 0.5))), signOf(format), ...digits],
  );
}

function signOf(format: NumberFormat): Statement {
  const negative = and(less("value", 0), more("cells", 0));
  return when(negative, [put("minus")], format.plus ? [put("plus")] : undefined);
}

/** An implied point: the number counts cells, and the zeros at one end may be left out. */
function impliedDigits(format: NumberFormat): Statement[] {
  if (format.suppressed === "leading") return [back(call("writeLarge", "bytes", "at", "cells"))];
  const room = [
    when(atLeast("cells", 10 ** format.digits), [faultOn("numbers.digits")]),
    set("at", call("writePadded", "bytes", "at", "cells", format.digits)),
  ];
  if (format.suppressed === "none") return [...room, back("at")];
  // Zeros go from the right; the first digit stays, so that the number doesn't vanish.
  const isZero = same(pick("bytes", sub("at", 1)), "zero");
  return [
    constant("first", "at"),
    ...room,
    loop(and(more(sub("at", 1), "first"), isZero), [decrease("at", 1)]),
    back("at"),
  ];
}

/** A number with a point, where it has decimals at all. */
function pointedDigits(format: NumberFormat): Statement[] {
  const { decimals, trailingZeros } = format;
  if (decimals === 0) return [back(call("writeLarge", "bytes", "at", "cells"))];
  const fast = whole32(div(whole32("cells"), 10 ** decimals));
  const exact = math("floor", div("cells", 10 ** decimals));
  return [
    constant("whole", choose(less("cells", integerLimit), fast, exact)),
    variable("fraction", whole32(sub("cells", mul("whole", 10 ** decimals)))),
    wholeDigits(format),
    ...(trailingZeros === "drop" ? [bareWhole(format)] : []),
    ...(trailingZeros === "keep" ? fixedFraction(decimals) : shortFraction(decimals, trailingZeros)),
  ];
}

/** The digits before the point; a lone zero may be left out where a digit follows the point. */
function wholeDigits(format: NumberFormat): Statement {
  const write = set("at", call("writeLarge", "bytes", "at", "whole"));
  if (format.leadingZero) return write;
  const alone = differs("whole", 0);
  return when(format.trailingZeros === "drop" ? or(alone, same("fraction", 0)) : alone, [write]);
}

/** A whole number whose zeros at the end are dropped ends with the point, or without it. */
function bareWhole(format: NumberFormat): Statement {
  const end = format.point === "always" ? [put("point"), back("at")] : [back("at")];
  return when(same("fraction", 0), end);
}

const lastDigit = (): Expression => add("zero", rem("fraction", 10));
const dropDigit = (): Statement => set("fraction", whole32(div("fraction", 10)));

function fixedFraction(decimals: number): Statement[] {
  return [
    set(pick("bytes", "at"), "point"),
    variable("place", add("at", decimals)),
    ...fractionDigits(add("at", decimals + 1)),
  ];
}

function shortFraction(decimals: number, trailingZeros: "drop" | "one"): Statement[] {
  const isZero = same(rem("fraction", 10), 0);
  const more1 = trailingZeros === "one" ? and(more("digits", 1), isZero) : isZero;
  return [
    variable("digits", decimals),
    loop(more1, [dropDigit(), decrease("digits", 1)]),
    set(pick("bytes", "at"), "point"),
    variable("place", add("at", "digits")),
    ...fractionDigits(add(add("at", "digits"), 1)),
  ];
}

/** Writes the digits from the last to the first, `place` going down to the point. */
function fractionDigits(end: Expression): Statement[] {
  const digit = set(pick("bytes", "place"), lastDigit());
  return [loop(more("place", "at"), [digit, dropDigit(), decrease("place", 1)]), back(end)];
}

/** Printers of whole numbers from 0 on: up to 2^31, of any size that is exact, and with a least number of digits. */
export function defineWholes(): FunctionDeclaration[] {
  return [defineWhole(), defineLarge(), definePadded()];
}

function defineWhole(): FunctionDeclaration {
  return func(
    "writeWhole",
    ["bytes", "at", "whole"],
    [
      variable("end", add("at", 1)),
      variable("limit", 10),
      loop(atLeast("whole", "limit"), [increase("end", 1), set("limit", mul("limit", 10))]),
      variable("place", sub("end", 1)),
      loop(more("place", "at"), [
        set(pick("bytes", "place"), add("zero", rem("whole", 10))),
        set("whole", whole32(div("whole", 10))),
        decrease("place", 1),
      ]),
      set(pick("bytes", "at"), add("zero", "whole")),
      back("end"),
    ],
  );
}

function defineLarge(): FunctionDeclaration {
  const lower = sub("whole", mul("rest", 1e9));
  return func(
    "writeLarge",
    ["bytes", "at", "whole"],
    [
      when(less("whole", integerLimit), [back(call("writeWhole", "bytes", "at", whole32("whole")))]),
      constant("rest", math("floor", div("whole", 1e9))),
      set("at", call("writeWhole", "bytes", "at", whole32("rest"))),
      back(call("writePadded", "bytes", "at", lower, 9)),
    ],
  );
}

function definePadded(): FunctionDeclaration {
  return func(
    "writePadded",
    ["bytes", "at", "whole", "width"],
    [
      variable("digits", 1),
      variable("limit", 10),
      loop(atLeast("whole", "limit"), [increase("digits", 1), set("limit", mul("limit", 10))]),
      loop(less("digits", "width"), [put("zero"), increase("digits", 1)]),
      back(call("writeLarge", "bytes", "at", "whole")),
    ],
  );
}
