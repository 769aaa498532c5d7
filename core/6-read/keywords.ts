/** Words of controllers that call, define or leave a subprogram: their effect is not in the block. */
const subprogramWords = ["SUB", "ENDSUB", "CALL", "RETURN", "GOSUB", "EXTCALL", "PROC", "RET", "MACRO"];

/** Words that let the program go on elsewhere, or only under a condition. */
const branchWords = [
  "IF",
  "THEN",
  "ELSE",
  "ELSEIF",
  "ENDIF",
  "GOTO",
  "GOTOF",
  "GOTOB",
  "WHILE",
  "ENDWHILE",
  "DO",
  "END",
  "FOR",
  "ENDFOR",
  "REPEAT",
  "ENDREPEAT",
  "UNTIL",
  "LOOP",
  "BREAK",
  "CONTINUE",
  "LABEL",
];

/** G and M codes that call or leave a subprogram wherever the dialect gives them no other meaning (common practice). */
export const subprogramCodes: readonly { readonly letter: "G" | "M"; readonly value: number }[] = [
  { letter: "G", value: 650 },
  { letter: "G", value: 660 },
  { letter: "G", value: 670 },
  { letter: "M", value: 970 },
  { letter: "M", value: 980 },
  { letter: "M", value: 990 },
];

/** What a run of letters without numbers between them is. */
export function keywordKind(run: string): "subprogram" | "branch" | undefined {
  const word = run.toUpperCase();
  if (subprogramWords.includes(word)) return "subprogram";
  return branchWords.includes(word) ? "branch" : undefined;
}
