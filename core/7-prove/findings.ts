import { offsetFindings, motionFindings } from "./findings-motion.ts";
import { arcFindings, limitFindings, programFindings } from "./findings-limits.ts";
import { spindleFindings, swapFindings } from "./findings-spindle.ts";
import type { GuardRule } from "./rules.ts";
import type { Draft } from "./watch.ts";

/**
 * The catalogue: one function a rule, and one for each further form that its fault takes. A rule without a function
 * does not compile.
 */
export const findings = {
  ...spindleFindings,
  ...swapFindings,
  ...offsetFindings,
  ...motionFindings,
  ...limitFindings,
  ...arcFindings,
  ...programFindings,
} satisfies Record<GuardRule, (detail: never) => Draft>;
