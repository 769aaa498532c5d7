import { guardRules, proofRules } from "./rules.ts";
import type { Rule } from "./rules.ts";

/** A rule for the documentation. */
export interface RuleDescription extends Rule {
  /** Rule id, such as "spindle/at-speed". */
  readonly rule: string;
}

/** All rules of the guard and of the comparison, with what they ask for and who says so. */
export function describeRules(): RuleDescription[] {
  return Object.entries<Rule>({ ...guardRules, ...proofRules }).map(([rule, description]) => ({
    rule,
    ...description,
  }));
}
