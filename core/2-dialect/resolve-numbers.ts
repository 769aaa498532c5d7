import type { UnitSystem } from "#base";
import type { Format, NumberFormat, UnitFormats } from "./dialect.ts";
import type { Resolving } from "./resolving.ts";
import { must } from "./resolving.ts";
import type { TreeNode } from "./tree.ts";
import { nodeAt } from "./tree.ts";
import { number, wordOrNone, yes } from "./values.ts";

/** Addresses with a number format of their own, below `numbers`. */
export type NumberKey =
  | "length"
  | "arc-centre"
  | "peck"
  | "angle"
  | "feed-per-minute"
  | "feed-per-revolution"
  | "inverse-time"
  | "speed"
  | "dwell"
  | "cycle-dwell"
  | "timeout";

/** Digits behind the point of an address; `units` for those that differ by the units of the program. */
export function decimalsOf(tree: TreeNode, key: NumberKey, units?: UnitSystem): number | undefined {
  const path = `numbers.${key}`;
  if (units !== undefined) return number(tree, `${path}.${units}`);
  return nodeAt(tree, path)?.kind === "mapping" ? number(tree, `${path}.decimals`) : number(tree, path);
}

/** Number formats of all addresses. What is common to all stands in `numbers`; an address may state its own. */
export function resolveNumbers(resolving: Resolving): Format["numbers"] {
  const single = (key: NumberKey): NumberFormat => {
    const decimals = resolving.need(decimalsOf(resolving.tree, key), `numbers.${key}`);
    return formatOf(resolving, key, decimals);
  };
  const stated = (key: NumberKey): boolean => decimalsOf(resolving.tree, key) !== undefined;
  return {
    length: unitFormats(resolving, "length"),
    arcCentre: unitFormats(resolving, "arc-centre"),
    peck: unitFormats(resolving, "peck"),
    angle: single("angle"),
    feedPerMinute: unitFormats(resolving, "feed-per-minute"),
    feedPerRevolution: isStated(resolving.tree, "feed-per-revolution")
      ? unitFormats(resolving, "feed-per-revolution")
      : undefined,
    inverseTime: stated("inverse-time") ? single("inverse-time") : undefined,
    speed: single("speed"),
    dwell: single("dwell"),
    cycleDwell: single("cycle-dwell"),
    timeout: stated("timeout") ? single("timeout") : undefined,
    width: {
      G: codeWidth(resolving, "G"),
      M: codeWidth(resolving, "M"),
      T: codeWidth(resolving, "T"),
      H: codeWidth(resolving, "H"),
      D: codeWidth(resolving, "D"),
    },
  };
}

function isStated(tree: TreeNode, key: NumberKey): boolean {
  return nodeAt(tree, `numbers.${key}`) !== undefined;
}

function unitFormats(resolving: Resolving, key: NumberKey): UnitFormats {
  const of = (units: UnitSystem): NumberFormat => {
    const decimals = decimalsOf(resolving.tree, key, units);
    return formatOf(resolving, key, resolving.need(decimals, `numbers.${key}.${units}`));
  };
  return { mm: of("mm"), inch: of("inch") };
}

function formatOf(resolving: Resolving, key: NumberKey, decimals: number): NumberFormat {
  const { tree } = resolving;
  const states = (name: string): boolean => nodeAt(tree, `numbers.${key}.${name}`) !== undefined;
  const at = (name: string): string => (states(name) ? `numbers.${key}.${name}` : `numbers.${name}`);
  const choice = <T extends string>(name: string): T => must(resolving, wordOrNone<T>, at(name)) as T;
  const point = choice<NumberFormat["point"]>("point");
  const implied = point === "never";
  // A whole number has no zeros that an implied point could be counted from, unless the file says so for this address.
  const counted = implied && (decimals > 0 || states("suppressed-zeros"));
  // `none` is one of the ways here, not the lack of one.
  const suppressed = counted
    ? must(resolving, wordOrNone<"leading" | "trailing">, at("suppressed-zeros"))
    : "leading";
  return {
    decimals,
    point,
    trailingZeros: implied ? "keep" : choice<NumberFormat["trailingZeros"]>("trailing-zeros"),
    leadingZero: implied || choice<"keep" | "drop">("leading-zero") === "keep",
    plus: (directed.has(key) || states("plus")) && must(resolving, yes, at("plus")),
    suppressed,
    wholeDigits: wholeDigits(resolving, at("whole-digits")),
    digits: suppressed === "trailing" || suppressed === "none" ? must(resolving, number, at("digits")) : 0,
  };
}

/** Most digits before the point; 0 for no limit. */
function wholeDigits(resolving: Resolving, path: string): number {
  return must(resolving, wordOrNone, path) === "none" ? 0 : (number(resolving.tree, path) ?? 0);
}

/** Addresses whose numbers have a direction, so that a sign means something. */
const directed: ReadonlySet<NumberKey> = new Set(["length", "arc-centre", "peck", "angle"]);

function codeWidth(resolving: Resolving, letter: string): number {
  const path = `numbers.code-width.${letter}`;
  return resolving.need(number(resolving.tree, path), path);
}
