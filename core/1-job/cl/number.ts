import type { Scale } from "../scan/number.ts";
import { toBaseUnits } from "../scan/number.ts";

/** Longest number, in characters. */
const longest = 1000;

/**
 * A number of APT in the form that JSON has for it: "1." -> "1", ".005" -> "0.005", "+2" -> "2", "1.0E2" -> "1.0E2".
 *
 * @returns undefined if it is none: an exponent needs a decimal point
 */
export function plainDigits(text: string): string | undefined {
  if (text.length > longest) return undefined;
  const [, sign, whole = "", fraction, exponent] =
    /^([-+]?)(\d*)(?:\.(\d*))?(?:[Ee]([-+]?\d{1,3}))?$/.exec(text) ?? [];
  if (sign === undefined || (whole === "" && (fraction ?? "") === "")) return undefined;
  if (exponent !== undefined && fraction === undefined) return undefined;
  const digits = whole.replace(/^0+(?=\d)/, "") || "0";
  const part = fraction === undefined || fraction === "" ? "" : `.${fraction}`;
  return `${sign === "-" ? "-" : ""}${digits}${part}${exponent === undefined ? "" : `E${exponent}`}`;
}

/** Base units of a number of APT, exactly, half away from zero; undefined if it is none or too large. */
export function aptBaseUnits(text: string, scale: Scale): number | undefined {
  const digits = plainDigits(text);
  return digits === undefined ? undefined : toBaseUnits(digits, scale);
}
