import { confirmations } from "./confirmations.ts";
import { formQuestions } from "./form-questions.ts";
import { motionQuestions } from "./motion-questions.ts";
import type { Question } from "./question.ts";
import { spindleQuestion } from "./spindle-question.ts";

/** Every question about the controller, in the order in which they are asked. dialects/README.md lists them. */
export const questions: readonly Question[] = [
  ...formQuestions,
  ...motionQuestions,
  spindleQuestion,
  ...confirmations,
];
