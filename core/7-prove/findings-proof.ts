import type { Finding } from "#base";
import type { Difference } from "./align.ts";
import type { ProofRule } from "./rules.ts";
import { differenceText, rowText } from "./row-words.ts";
import type { RowWords } from "./row-words.ts";

/** A finding of the comparison before it has a place. */
type ProofDraft = Pick<Finding, "message"> & { readonly rule: ProofRule; readonly fix: string };

type Of<K extends Difference["kind"]> = Extract<Difference, { kind: K }>;

/** The catalogue of the comparison: one function a rule. `meant` says where the job states it. */
export const proofFindings = {
  differs: (difference: Of<"differs">, words: RowWords, meant = ""): ProofDraft => ({
    rule: "proof/differs",
    message: `The program does not say what the job means (${meant}): ${differenceText(difference.expected, difference.actual, words)}.`,
    fix: `Make it ${rowText(difference.expected, words)}.`,
  }),
  missing: (difference: Of<"missing">, words: RowWords, meant = ""): ProofDraft => ({
    rule: "proof/missing-step",
    message: `The program leaves out, before this block: ${rowText(difference.expected, words)} (${meant}).`,
    fix: `Put it in: ${rowText(difference.expected, words)}.`,
  }),
  extra: (difference: Of<"extra">, words: RowWords): ProofDraft => ({
    rule: "proof/extra-step",
    message: `The program says more than the job means: ${rowText(difference.actual, words)}.`,
    fix: "See why it is there: if the job means it, state it there; if not, take it out.",
  }),
  more: (count: number): ProofDraft => ({
    rule: "proof/differs",
    message: `${count} more differences are not listed.`,
    fix: "Correct the ones listed above first; later ones often follow from them.",
  }),
};
