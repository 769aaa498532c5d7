import type { RuleTexts } from "./rule-texts.ts";

/** The simulation of the stock (core/simulate): warnings and notes, since it looks at cells and not at the material itself. */
export const simulateRules = {
  "motion/rapid-through-material":
    "No rapid goes through material that is left where it goes (`--simulate`).",
  "motion/stopped-in-material":
    "Neither spindle nor program stops, ends or changes the tool while the tool stands in material (`--simulate`).",
  "motion/not-simulated": "What a simulation leaves out, or takes for granted, is told (`--simulate`).",
  "limit/shank":
    "No cut is deeper than the cutting edges are long, and no wall is left beside the shank (`--simulate`).",
  "limit/holder": "The holder stays clear of the material that is left (`--simulate`).",
  "limit/below-stock":
    "No tool goes further below the stock than through it; how far it goes is told (`--simulate`).",
  "limit/fixture": "Neither tool nor shank nor holder touches a fixture (`--simulate`).",
} as const satisfies RuleTexts;
