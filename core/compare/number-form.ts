/** In which ways two writings of a number differ, and by which keys of the dialect. */

/** A number word in its parts: "X-0.500". */
interface WrittenNumber {
  readonly letter: string;
  readonly sign: string;
  readonly whole: string;
  readonly point: boolean;
  readonly fraction: string;
  readonly value: number;
}

/** Takes a word apart; undefined where it is no letter with a number. */
export function numberOf(text: string): WrittenNumber | undefined {
  const found = /^([A-Z:]+)([+-]?)(\d*)(\.?)(\d*)$/.exec(text);
  if (found === null || found[3] + found[5] === "") return undefined;
  const [, letter, sign, whole, point, fraction] = found;
  return {
    letter,
    sign,
    whole,
    point: point !== "",
    fraction,
    value: Number(`${sign}${whole === "" ? "0" : whole}.${fraction}`),
  };
}

/** Key names under `numbers` of how digits are written, whatever the address. */
const styles = {
  plus: "plus",
  leadingZero: "leading-zero",
  trailingZeros: "trailing-zeros",
  point: "point",
} as const;

/** All keys that shape digits, for numbers that differ in more than their zeros. */
export const allStyles = [...Object.values(styles), "suppressed-zeros", "digits", "whole-digits"].map(
  (name) => `numbers.${name}`,
);

/** A way in which digits differ, and the keys that decide it. */
export interface NumberForm {
  readonly ways: readonly string[];
  readonly keys: readonly string[];
}

/**
 * How two writings of one value differ.
 *
 *     X-28.000, X-28    ->   zeros at the end, decimal point
 *     X0.5, X.5         ->   zero before the point
 *
 * @param grids the `numbers` keys that the emitter named, such as numbers.length
 */
export function numberForm(
  first: WrittenNumber,
  second: WrittenNumber,
  grids: readonly string[],
): NumberForm {
  const ways: { readonly way: string; readonly keys: readonly string[]; readonly is: boolean }[] = [
    { way: "plus sign", keys: ["numbers.plus"], is: first.sign !== second.sign },
    {
      way: "zero before the point",
      keys: ["numbers.leading-zero"],
      is: first.whole !== second.whole && (first.whole === "" || second.whole === ""),
    },
    {
      way: "leading zeros",
      keys: [...allStyles, ...grids],
      is: first.whole !== second.whole && first.whole !== "" && second.whole !== "",
    },
    {
      way: "digits after the point",
      keys: ["numbers.trailing-zeros", ...grids],
      is: first.fraction !== second.fraction,
    },
    { way: "decimal point", keys: ["numbers.point"], is: first.point !== second.point },
  ];
  const found = ways.filter(({ is }) => is);
  return { ways: found.map(({ way }) => way), keys: found.flatMap(({ keys }) => keys) };
}
