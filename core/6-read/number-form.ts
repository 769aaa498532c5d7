import type { NumberFormat } from "#dialect";
import { placeOf } from "./block.ts";
import * as formFindings from "./findings-form.ts";
import type { Quantity } from "./quantities.ts";
import type { Reader } from "./reader.ts";
import { firstTime } from "./reader.ts";

/** What is odd about a number, and the key under `numbers` that asks for another form; undefined: the key of its address. */
interface Oddity {
  readonly what: string;
  readonly key?: "plus" | "leading-zero" | "trailing-zeros" | "suppressed-zeros" | "point";
}

const parts = /^[A-Za-z]([+-]?)(\d*)(\.?)(\d*)/;

/** Tells once for each key that a number is written otherwise than in this dialect; its value is clear. */
export function checkNumberForm(
  reader: Reader,
  letter: number,
  word: string,
  { format, key }: Quantity,
): void {
  const found = oddityOf(format, word);
  if (found === undefined) return;
  const asks = found.key === undefined ? key : `numbers.${found.key}`;
  if (firstTime(reader, asks))
    reader.report(formFindings.numberForm(placeOf(reader.block, letter), word, found.what, asks));
}

function oddityOf(format: NumberFormat, word: string): Oddity | undefined {
  const [, sign = "", whole = "", point = "", fraction = ""] = parts.exec(word) ?? [];
  if (format.plus ? sign === "" : sign === "+")
    return { what: format.plus ? "has no sign" : "has a plus sign", key: "plus" };
  const isPadded = /^0\d/.test(whole);
  if (format.point === "never")
    return isPadded && format.suppressed === "leading"
      ? { what: "begins with zeros", key: "suppressed-zeros" }
      : undefined;
  if (isPadded) return { what: "begins with zeros", key: "leading-zero" };
  if (point === "") return undefined;
  if (format.decimals === 0) return { what: "has a decimal point, and this dialect writes it whole" };
  return leadingOddity(format, whole, fraction) ?? trailingOddity(format, fraction);
}

/** A zero that is too many before the point, or one that is missing. A bare point would be no number: 0. stays. */
function leadingOddity(format: NumberFormat, whole: string, fraction: string): Oddity | undefined {
  const stays = format.leadingZero || (format.trailingZeros === "drop" && fraction === "");
  if (stays ? whole !== "" : whole !== "0") return undefined;
  return {
    what: stays ? "has no digit before the point" : "has a zero before the point",
    key: "leading-zero",
  };
}

function trailingOddity(format: NumberFormat, fraction: string): Oddity | undefined {
  const { trailingZeros, decimals } = format;
  const key = "trailing-zeros";
  if (trailingZeros === "keep")
    return fraction.length === decimals
      ? undefined
      : { what: `has ${fraction.length} digits behind the point, and this dialect ${decimals}`, key };
  const least = trailingZeros === "one" ? 1 : 0;
  if (fraction.length < least) return { what: "has no digit behind the point", key };
  if (fraction.length > least && fraction.endsWith("0")) return { what: "ends in a zero", key };
  return fraction === "" && format.point === "when-needed"
    ? { what: "ends in a point", key: "point" }
    : undefined;
}
