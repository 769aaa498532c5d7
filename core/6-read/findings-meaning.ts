/**
 * Findings where the meaning of a program is not known. Nothing is guessed: the reader goes on to gather more, but no
 * proof is made. One function a rule; `offset` is the byte offset of the word in the program.
 */
import type { Finding } from "#base";

/** A finding where the meaning of a program is not known. */
export function unclear(
  rule: `read/${string}`,
  offset: number,
  message: string,
  fix: string,
  key?: string,
): Finding {
  const finding: Finding = {
    rule,
    severity: "error",
    message,
    place: { source: "program", offset },
    fix,
  };
  return key === undefined ? finding : { ...finding, key };
}

/** A code that the dialect gives no meaning. */
export function unknownCode(offset: number, word: string, fix: string, key: string | undefined): Finding {
  return unclear("read/unknown-code", offset, `The dialect gives ${word} no meaning.`, fix, key);
}

/** A letter or sign that the dialect does not know. */
export function unknownWord(offset: number, word: string): Finding {
  return unclear(
    "read/unknown-word",
    offset,
    `${word} is no word of this dialect.`,
    "Take it out, or add its letter to `blocks.order`.",
    "blocks.order",
  );
}

/** A number that cannot be taken: malformed, missing, too long, out of its range. */
export function badNumber(offset: number, word: string, reason: string): Finding {
  return unclear(
    "read/number",
    offset,
    `The number of ${word} ${reason}.`,
    "Write a number that the address can take.",
  );
}

/** A decimal point that must not be there, or one that is missing: the value may be off by a thousand. */
export function decimalPoint(offset: number, word: string, missing: boolean, key: string): Finding {
  const message = missing
    ? `${word} has no decimal point, and this dialect always writes one: a controller may count it in least increments.`
    : `${word} has a decimal point, and this dialect counts in least increments.`;
  const fix = missing
    ? `Write a decimal point: ${word}.`
    : "Write the number in least increments, without a point.";
  return unclear("read/decimal", offset, message, fix, key);
}

/** A number with more digits than the controller has. */
export function finerThanGrid(offset: number, word: string, step: string, key: string): Finding {
  return unclear(
    "read/finer-than-grid",
    offset,
    `${word} is finer than the least increment, ${step}.`,
    `Round it to a multiple of ${step}.`,
    key,
  );
}

/** A letter that stands twice in a block. */
export function repeatedWord(offset: number, letter: string): Finding {
  return unclear(
    "read/repeated-word",
    offset,
    `The block has the word ${letter} more than once.`,
    "Leave one of them.",
  );
}

/** Two codes of one modal group, or two codes that want the same words, in one block. */
export function modalConflict(offset: number, word: string, reason: string): Finding {
  return unclear(
    "read/modal-conflict",
    offset,
    `${word} ${reason}.`,
    "Put each of them in a block of its own.",
  );
}

/** A mode that the program uses and never states. */
export function modeUnknown(offset: number, mode: string, assumed: string, key: string): Finding {
  return unclear(
    "read/mode-unknown",
    offset,
    `The program has not stated ${mode} where it first relies on it; it is read as ${assumed}.`,
    `State ${mode} at the head of the program.`,
    key,
  );
}

/** A parameter or an expression: its value is known to the controller alone. */
export function variable(offset: number, text: string): Finding {
  return unclear(
    "read/variable",
    offset,
    `${text} is a parameter or an expression; its value is not in the program.`,
    "Write the number itself.",
  );
}

/** A call, a definition or an end of a subprogram. */
export function subprogram(offset: number, text: string): Finding {
  return unclear(
    "read/subprogram",
    offset,
    `${text} belongs to a subprogram, which is not read.`,
    "Write the blocks of the subprogram out.",
  );
}

/** A jump or a condition. */
export function branch(offset: number, text: string): Finding {
  return unclear(
    "read/branch",
    offset,
    `${text} makes the order of blocks depend on something outside the program.`,
    "Write the blocks in the order in which they are to run.",
  );
}

/** A comment that does not end, that is nested, or that is none in this dialect. */
export function badComment(
  offset: number,
  reason: string,
  fix = "Write it as the dialect has comments.",
): Finding {
  return unclear("read/comment", offset, `The comment ${reason}.`, fix, "comments.style");
}

/** A word that no action of its block has used. */
export function unusedWord(
  offset: number,
  word: string,
  reason = "is used by no code of its block",
  fix = "Take it out, or add the code that it belongs to.",
  key?: string,
): Finding {
  return unclear("read/unused-word", offset, `${word} ${reason}.`, fix, key);
}

/** A word or a code that an action needs and that is not there. */
export function wordMissing(offset: number, message: string, fix: string, key?: string): Finding {
  return unclear("read/word-missing", offset, message, fix, key);
}

/** An arc whose words do not make one. */
export function badArc(offset: number, message: string, fix: string, key?: string): Finding {
  return unclear("read/arc", offset, message, fix, key);
}

/** A fixed cycle whose words do not make one. */
export function badCycle(offset: number, message: string, fix: string, key?: string): Finding {
  return unclear("read/cycle", offset, message, fix, key);
}

/** A place that follows from another which is not known. */
export function unknownPlace(offset: number, word: string, what: string): Finding {
  return unclear(
    "read/position",
    offset,
    `${word} counts from ${what}, which is not known here.`,
    "Go to a known place with absolute words first.",
  );
}

/** Anything but blank lines and comments behind the end of the program. */
export function afterEnd(offset: number): Finding {
  return unclear(
    "read/after-end",
    offset,
    "Blocks follow the end of the program.",
    "Take them out; they are not read.",
  );
}

/** A program that runs out of blocks. */
export function noEnd(offset: number): Finding {
  return unclear(
    "read/no-end",
    offset,
    "The program does not end: its end code is missing.",
    "Add the end code.",
    "stops.end",
  );
}

/** Bytes that are no text of a program. */
export function badBytes(offset: number, what: string): Finding {
  return unclear(
    "read/encoding",
    offset,
    `The program holds ${what}.`,
    "Save it as plain text.",
    "file.characters",
  );
}

/**
 * A block that the operator's switch can skip: it is read as one that runs. Where the switch decides about optional stops, a
 * block that is none would be skipped with them.
 */
export function blockDelete(offset: number, isSwitchForStops: boolean): Finding {
  const message = isSwitchForStops
    ? "The block delete switch is that of the optional stops, and this block is none: the operator would skip it with them."
    : "This block runs only while the block delete switch is off; it is read as one that runs.";
  const fix = "Take the `/` off, or the block out.";
  const finding = unclear("read/block-delete", offset, message, fix, "blocks.delete");
  return isSwitchForStops ? finding : { ...finding, severity: "warning" };
}

/** A number format that the dialect lacks for a word it declares. */
export function undeclared(offset: number, word: string, key: string): Finding {
  return {
    rule: "dialect/undeclared",
    severity: "error",
    message: `The dialect does not say \`${key}\`, which ${word} needs.`,
    place: { source: "program", offset },
    fix: `State \`${key}\`.`,
    key,
  };
}
