import type { FindingCase } from "./builders.ts";
import { casesOfForm } from "./form.ts";
import { casesOfHead } from "./head.ts";
import { casesOfMoves } from "./moves.ts";
import { casesOfText } from "./text.ts";

/** Every spoilt job, by what is wrong with it: the text, the form, the meaning of its head and of its moves. */
export const findingCases: readonly FindingCase[] = [
  ...casesOfText,
  ...casesOfForm,
  ...casesOfHead,
  ...casesOfMoves,
];
