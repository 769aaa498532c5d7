import type { Style } from "./style.ts";

/** Numbers as a person of one habit writes them; written from whole units by hand, so that no routine of core marks its own work. */
export interface NumberHabit {
  readonly decimals: number;
  readonly point: Style["numbers.point"];
  readonly zeros: Style["numbers.trailing-zeros"];
  readonly leading: Style["numbers.leading-zero"];
  readonly plus: boolean;
}

/** (12500, 3 decimals) -> "12.500", "12.5" or "+12.5" */
export function printNumber(units: number, { decimals, point, zeros, leading, plus }: NumberHabit): string {
  const sign = units < 0 ? "-" : plus ? "+" : "";
  if (decimals === 0) return sign + String(Math.abs(units));
  const digits = String(Math.abs(units)).padStart(decimals + 1, "0");
  const whole = digits.slice(0, -decimals);
  let behind = digits.slice(-decimals);
  const isWhole = /^0*$/.test(behind);
  if (isWhole && point === "when-needed") return sign + whole;
  if (zeros !== "keep") behind = behind.replace(/0+$/, "");
  if (zeros === "one" && behind === "") behind = "0";
  return `${sign}${whole === "0" && leading === "drop" && behind !== "" ? "" : whole}.${behind}`;
}
