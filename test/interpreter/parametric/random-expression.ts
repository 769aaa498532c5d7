import type { Chance } from "../reading/written/chance.ts";

/**
 * An expression over all operations and functions that has a value whatever comes up: what a function cannot take is kept from
 * it. Steps (FIX, comparisons) are taken of fractions alone, since a sine may differ in its last digit from one library to another.
 *
 * @param names parameters that have a value, such as "#1"
 * @returns text in brackets
 */
export function randomExpression(chance: Chance, names: readonly string[], depth = 3): string {
  if (depth === 0) return leaf(chance, names);
  const inner = (): string => randomExpression(chance, names, depth - 1);
  const rational = (): string => fraction(chance, depth - 1);
  const { pick } = chance;
  switch (chance.whole(9)) {
    case 0:
    case 1:
      return `[${inner()} ${pick(["+", "-", "*"])} ${inner()}]`;
    case 2:
      return `[${inner()} / [1.5 + ABS[${inner()}]]]`;
    case 3:
      return `${pick(["SIN", "COS", "ABS"])}[${inner()}]`;
    case 4:
      return pick([
        `SQRT[ABS[${inner()}]]`,
        `LN[1 + ABS[${inner()}]]`,
        `EXP[SIN[${inner()}]]`,
        `TAN[40 * SIN[${inner()}]]`,
      ]);
    case 5:
      return pick([
        `ASIN[SIN[${inner()}] / 1.1]`,
        `ACOS[COS[${inner()}] / 1.1]`,
        `ATAN[${inner()}]/[2 + ABS[${inner()}]]`,
      ]);
    case 6:
      return `[[1 + ABS[${rational()}]] ** ${pick(["2", "0.5", "-1", "1.25"])}]`;
    case 7:
      return pick([
        `[${rational()} MOD 7]`,
        `FIX[${rational()}]`,
        `FUP[${rational()}]`,
        `ROUND[${rational()}]`,
      ]);
    default:
      return truth(chance, depth - 1);
  }
}

/** A value of which a step may be taken: +, -, * and / alone, put off whole numbers. */
function fraction(chance: Chance, depth: number): string {
  const part = (deep: number): string => {
    if (deep === 0) return plain(chance);
    const [one, other] = [part(deep - 1), part(deep - 1)];
    return chance.happens(0.2) ? `[${one} / 3]` : `[${one} ${chance.pick(["+", "-", "*"])} ${other}]`;
  };
  return `[${part(Math.min(depth, 2))} + 0.371]`;
}

function truth(chance: Chance, depth: number): string {
  const compare = (): string =>
    `[${fraction(chance, depth)} ${chance.pick(["EQ", "NE", "GT", "GE", "LT", "LE"])} ${plain(chance)}]`;
  return `[${compare()} ${chance.pick(["AND", "OR", "XOR"])} ${compare()}]`;
}

function plain(chance: Chance): string {
  return `${chance.happens(0.3) ? "-" : ""}${String(chance.between(0, 90) / chance.pick([1, 2, 4, 10]))}`;
}

function leaf(chance: Chance, names: readonly string[]): string {
  if (names.length === 0 || chance.happens(0.4)) return plain(chance);
  return (chance.happens(0.2) ? "-" : "") + chance.pick(names);
}

/** An expression of which the value lies from 0 to below `most`, of at most 75 characters: the interpreter takes lines of 252. */
export function boundedExpression(chance: Chance, names: readonly string[], most: number): string {
  for (;;) {
    const text = `[${randomExpression(chance, names)} MOD ${String(most)}]`;
    if (text.length <= 75) return text;
  }
}
