import type { RuleTexts } from "./rule-texts.ts";

/** The simulation of the stock (core/simulate): warnings and notes, since it looks at cells and not at the material itself. */
export const simulateRules = {
  "motion/rapid-through-material": "No rapid goes through material that is left where it goes.",
  "motion/stopped-in-material":
    "Neither spindle nor program stops, ends or changes the tool while the tool stands in material.",
  "motion/not-simulated": "What a simulation leaves out, or takes for granted, is told.",
  "limit/shank": "No cut is deeper than the cutting edges are long, and no wall is left beside the shank.",
  "limit/holder": "The holder stays clear of the material that is left.",
  "limit/below-stock": "No tool goes further below the stock than through it; how far it goes is told.",
  "limit/fixture": "Neither tool nor shank nor holder touches a fixture.",
} as const satisfies RuleTexts;
