import type { Sample } from "./sample.ts";
import { withG } from "./sample.ts";

/** Units of the programs, where all of them state the same by a code of the tables (G20, G21; G70, G71 of older ones). */
export function unitsOf(sample: Sample): "mm" | "inch" | undefined {
  const metric = withG(sample, 210, 710).length > 0;
  const inch = withG(sample, 200, 700).length > 0;
  return metric === inch ? undefined : metric ? "mm" : "inch";
}
