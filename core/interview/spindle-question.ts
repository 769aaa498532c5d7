import type { Question } from "./question.ts";

/** What stands before the first cut. */
export const spindleQuestion: Question = {
  id: "spindle",
  ask: "What does your controller want before it starts the spindle: speed first, or M3 first?",
  short: "Spindle start",
  moment: "spindle",
  choices: [
    {
      id: "speed-first",
      words: "S12000 M3: the speed first, in one block",
      sets: { "spindle.order": "speed-first", "spindle.blocks": "together" },
    },
    {
      id: "speed-first-apart",
      words: "S12000, then M3 in the next block",
      sets: { "spindle.order": "speed-first", "spindle.blocks": "apart" },
    },
    {
      id: "start-first",
      words: "M3 S12000: M3 first, in one block",
      sets: { "spindle.order": "start-first", "spindle.blocks": "together" },
      clashes: {
        key: "blocks.executes",
        value: "left-to-right",
        why: "each word acts where it stands, so that the spindle would start before its speed is said",
      },
    },
    {
      id: "start-first-apart",
      words: "M3, then S12000 in the next block",
      sets: { "spindle.order": "start-first", "spindle.blocks": "apart" },
      with: { "modal.speed": "each-start" },
    },
  ],
};
