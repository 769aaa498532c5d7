/** Findings about parameters and arithmetic: one function a rule; `offset` is the byte of the program at which it is seen. */
import type { Finding } from "#base";
import { unclear } from "../findings-meaning.ts";

/** A value that is there while the machine runs, and not in the program. */
export function runTimeValue(offset: number, text: string, reason: string): Finding {
  return unclear(
    "read/run-time-value",
    offset,
    `${text} ${reason}: its value is known while the machine runs, and not from the program.`,
    "Set the parameter in the program before it is used, or write the number itself.",
  );
}

/** What stands in the place of a number and makes no value. */
export function badExpression(offset: number, reason: string, fix = "Mend the expression."): Finding {
  return unclear("read/expression", offset, `The expression ${reason}.`, fix);
}

/** A function that the language does not have. */
export function unknownFunction(offset: number, name: string): Finding {
  return unclear(
    "read/unknown-function",
    offset,
    `${name} is no function.`,
    "Take one of ABS, ACOS, ASIN, ATAN, COS, EXP, FIX, FUP, LN, ROUND, SIN, SQRT, TAN.",
  );
}

/** An operation that has no number for its result. */
export function noNumber(offset: number, reason: string): Finding {
  return unclear(
    "read/arithmetic",
    offset,
    `${reason}: this has no number for its result.`,
    "Mend the values.",
  );
}

/** Brackets, structures or calls inside one another beyond what is read. */
export function tooDeep(offset: number, what: string, most: number): Finding {
  return unclear(
    "read/nesting",
    offset,
    `${what} are more than ${String(most)} deep.`,
    "Work in several steps, or write a loop.",
  );
}

/** A parameter that cannot be one: its number or its name. */
export function badParameter(offset: number, text: string, reason: string): Finding {
  return unclear(
    "read/parameter",
    offset,
    `${text} ${reason}.`,
    "Take a parameter from 1 to 5000, or a name.",
  );
}

/** A setting of a parameter that belongs to the machine. */
export function machineParameter(offset: number, text: string, whose: string): Finding {
  return unclear(
    "read/machine-parameter",
    offset,
    `${text} is ${whose}: a program that sets it changes the machine, or is stopped.`,
    "Set the machine up by hand, and keep to parameters from 1 to 5000.",
  );
}

/** Whether numbers that were worked out have been rounded: told once. */
export function rounded(offset: number, word: string, step: string): Finding {
  return {
    rule: "read/rounded",
    severity: "note",
    message: `${word} is worked out, and rounded to the least increment, ${step}, as all that are worked out.`,
    place: { source: "program", offset },
  };
}
