import type { Finding } from "#base";

/**
 * Findings about form: the meaning of the block is clear, but the controller may refuse it. One function a rule; each
 * names the dialect key that asks for another form. `offset` is the byte offset of the word or block in the program.
 */
function form(rule: string, offset: number, message: string, fix: string, key: string): Finding {
  return {
    rule: `block/${rule}`,
    severity: "error",
    message,
    place: { source: "program", offset },
    fix,
    key,
  };
}

/** A motion block that leaves its motion word out where it must be stated. */
export function motionWord(offset: number, always: boolean): Finding {
  const why = always
    ? "and this dialect states it in each"
    : "and the one in force was said before a tool change, a stop, a reference return or the start of a cycle";
  return form(
    "motion-word",
    offset,
    `The block moves without a motion word, ${why}.`,
    "State the motion word in the block.",
    "modal.motion",
  );
}

/** Words in another order than the dialect's. */
export function wordOrder(offset: number, word: string, before: string, key = "blocks.order"): Finding {
  return form(
    "word-order",
    offset,
    `${word} stands behind ${before}; this dialect has it before.`,
    `Put ${word} before ${before}.`,
    key,
  );
}

/** The speed word and the start word the wrong way round. */
export function spindleOrder(offset: number, order: "speed-first" | "start-first"): Finding {
  const message =
    order === "speed-first"
      ? "The spindle is started before its speed is said; this dialect says the speed first."
      : "The speed is said before the spindle is started; this dialect says the start first.";
  const fix = order === "speed-first" ? "Put S before the start." : "Put the start before S.";
  return form("spindle-order", offset, message, fix, "spindle.order");
}

/** A feed block without a feed word where it must have one. */
export function feedWord(offset: number, reason: string): Finding {
  return form(
    "feed-word",
    offset,
    `The block cuts without a feed word ${reason}.`,
    "State the feed.",
    "modal.feed",
  );
}

/** A motion block that leaves axes out where all must be stated. */
export function axisWords(offset: number, missing: string): Finding {
  return form(
    "axis-words",
    offset,
    `The block leaves ${missing} out; this dialect states all axes.`,
    `Add ${missing}.`,
    "modal.axes",
  );
}

/** An arc that leaves end or centre words out where both must be stated. */
export function arcWords(
  offset: number,
  missing: string,
  key: "modal.arc-end" | "modal.arc-centre",
): Finding {
  return form("arc-words", offset, `The arc leaves ${missing} out.`, `Add ${missing}.`, key);
}

/** A hole that leaves words of its cycle out where each must restate them. */
export function cycleWords(
  offset: number,
  missing: string,
  key: "cycles.repeat" | "cycles.positions" = "cycles.repeat",
): Finding {
  const what = key === "cycles.repeat" ? "the words of a cycle" : "its place";
  return form(
    "cycle-words",
    offset,
    `The hole leaves ${missing} out; this dialect restates ${what} at each hole.`,
    `Add ${missing}.`,
    key,
  );
}

/** A block or a comment that is longer than the controller takes. */
export function tooLong(offset: number, what: string, length: number, most: number, key: string): Finding {
  return form(
    "length",
    offset,
    `The ${what} has ${length} characters; at most ${most} are taken.`,
    "Shorten it.",
    key,
  );
}

/** A block number that is missing, or that must not be there. */
export function blockNumber(offset: number, missing: boolean): Finding {
  const message = missing
    ? "The block has no block number; this dialect numbers each."
    : "The block has a block number; this dialect has none.";
  return form(
    "number",
    offset,
    message,
    missing ? "Begin it with N and a number." : "Take the N word off.",
    "blocks.number",
  );
}

/** A number whose value is clear, written otherwise than the dialect writes numbers. */
export function numberForm(offset: number, word: string, what: string, key: string): Finding {
  const fix = "Write all such numbers as the dialect does.";
  return lenient(form("number-form", offset, `${word} ${what}.`, fix, key));
}

/** Words that are not set apart as the dialect does. */
export function separator(offset: number, between: string): Finding {
  return form(
    "separator",
    offset,
    `Words are not set apart as in this dialect, which has ${between} between them and nothing inside.`,
    `Put ${between} between words, and no blank into a word.`,
    "blocks.separator",
  );
}

/** Characters that the dialect does not have. */
export function characters(offset: number, what: string): Finding {
  return form(
    "characters",
    offset,
    `The block holds ${what}.`,
    "Write it in the dialect's characters.",
    "file.characters",
  );
}

/** Tool word and change code that do not stand as the dialect has them: in one block, or the next tool selected ahead. */
export function toolWords(
  offset: number,
  message: string,
  fix: string,
  key: "tools.blocks" | "tools.preselect" | "tools.change" | "tools.in-operator-swap",
): Finding {
  return lenient(form("tool-words", offset, message, fix, key));
}

/** A swap before which compensation or cycles are not cancelled anew. */
export function notCancelled(offset: number, missing: string): Finding {
  const message = `Before the change stands no word for ${missing}; this dialect says it before each.`;
  return form("cancelled", offset, message, "State it in a block before the change.", "cancel.before-change");
}

/** A length offset that does not share the block of the first Z, or does and should not. */
export function lengthBlock(offset: number, word: string, shared: boolean): Finding {
  const message = shared
    ? `${word} shares its block with a motion; this dialect gives it a block of its own.`
    : `The Z motion stands behind ${word}; this dialect has both in one block.`;
  const fix = shared ? `Put ${word} in a block of its own.` : `Put ${word} into the block of the Z motion.`;
  return lenient(form("length-block", offset, message, fix, "machine.length-offset.form"));
}

/** A length offset of another number than the tool's, where each tool has that of its own. */
export function offsetNumber(offset: number, number: number, tool: number): Finding {
  const message = `Length offset ${number} is not that of tool ${tool}; in this dialect each has that of its own number.`;
  return form("offset-number", offset, message, "State the offset of the tool.", "length-offset.number");
}

/** A later hole that says the words of its cycle again. */
export function cycleWordsAgain(offset: number, words: string): Finding {
  const message = `The hole says ${words} again, as they were; in this dialect later holes state their place alone.`;
  return lenient(form("cycle-words", offset, message, "Take these words out.", "cycles.repeat"));
}

/** A form that most controllers take all the same. */
function lenient(finding: Finding): Finding {
  return { ...finding, severity: "warning" };
}

/** More G words than the dialect takes, or modes that share a block. */
export function gWords(offset: number, message: string, key: "blocks.g-words" | "blocks.modes"): Finding {
  return form("g-words", offset, message, "Spread them over several blocks.", key);
}

/** The end of cycles in one block with a motion word. */
export function endBesideMotion(offset: number, end: string, code: string): Finding {
  return form(
    "g-words",
    offset,
    `${end} shares the block with ${code}: some controllers have them in one modal group and refuse the block.`,
    `Put ${end} into a block of its own, before.`,
    "cancel.cycles",
  );
}

/** More M words than the dialect takes. */
export function mWords(offset: number, count: number, most: number): Finding {
  return form(
    "m-words",
    offset,
    `The block has ${count} M words; this dialect takes ${most}.`,
    "Spread them over several blocks.",
    "blocks.m-words",
  );
}

/** More words than a block of the dialect has. */
export function mostWords(offset: number, count: number, most: number): Finding {
  return form(
    "words",
    offset,
    `The block has ${count} words; this dialect takes ${most}.`,
    "Spread them over several blocks.",
    "blocks.most-words",
  );
}

/** The first block of a section that is not marked as such, or another that is. */
export function section(offset: number, message: string, fix: string, key: string): Finding {
  return lenient(form("section", offset, message, fix, key));
}

/** A comment in a block with words, where it must have a block of its own. */
export function commentPlace(offset: number): Finding {
  return form(
    "own-block",
    offset,
    "A comment shares its block with words.",
    "Put it in a block of its own.",
    "comments.place",
  );
}

/** More axes in one block than the controller moves at once. */
export function axesAtOnce(
  offset: number,
  what: "rapid" | "motion",
  count: number,
  most: number,
  key: "motion.rapid-axes" | "motion.axes-at-once",
): Finding {
  return form(
    "axes-at-once",
    offset,
    `The ${what} moves ${count} axes in one block; this dialect moves ${most} at most.`,
    "Move the others in blocks of their own.",
    key,
  );
}

/** A stop, swap, spindle or coolant action in a block with motion: controllers differ about which comes first. */
export function ownBlock(offset: number, word: string): Finding {
  return form(
    "own-block",
    offset,
    `${word} shares its block with a motion; controllers differ about which of them comes first.`,
    `Put ${word} in a block of its own.`,
    "blocks.stops-act",
  );
}

/** A start without a speed; it may be meant to take the one said last. */
export function speedWord(offset: number): Finding {
  const message = "The spindle is started without a speed; this dialect says it at each start.";
  return lenient(form("speed-word", offset, message, "State S.", "modal.speed"));
}

const gearFaults = {
  none: "The spindle turns before a gear range is selected for its speed.",
  outside: "The speed lies outside the gear range in force.",
  turning: "The gear range is changed while the spindle turns.",
} as const;

/** A gear range that is missing, wrong, or changed at the wrong time. */
export function gearRange(offset: number, fault: keyof typeof gearFaults): Finding {
  const fix =
    fault === "turning"
      ? "Stop the spindle first."
      : "Select the range of the speed while the spindle stands, before the speed.";
  return form("gear-range", offset, gearFaults[fault], fix, "spindle.gears");
}

/** The end of the program by the other of the two codes that end programs. */
export function endCode(offset: number, word: string): Finding {
  const message = `${word} ends a program, and this dialect ends it by another code.`;
  return form(
    "end-code",
    offset,
    message,
    "Write the dialect's code, or declare this one: `stops: { end: ? }`.",
    "stops.end",
  );
}

/** The message of a stop in another place than the dialect's. */
export function stopMessage(offset: number, withStop: boolean): Finding {
  return form(
    "stop-message",
    offset,
    withStop
      ? "The message of this stop stands in the block before it; this dialect shows the one in the block of the stop."
      : "The message of this stop shares its block; this dialect has it in a block of its own before the stop.",
    withStop
      ? "Put the message behind the code of the stop."
      : "Put the message into a block before the stop.",
    "stops.comment",
  );
}

/** A dwell in the block of a spindle start: controllers differ about which of the two comes first. */
export function dwellBlock(offset: number, word: string): Finding {
  return form(
    "own-block",
    offset,
    `${word} shares its block with a start of the spindle; this dialect dwells in a block apart.`,
    `Put ${word} in a block behind the start.`,
    "dwell.blocks",
  );
}

/** The frame of the program: delimiters, program number, line ends. */
export function framing(offset: number, message: string, fix: string, key: string): Finding {
  return form("framing", offset, message, fix, key);
}

/** Line ends that most controllers take either way. */
export function lineEnds(offset: number, message: string, key: string): Finding {
  return {
    ...framing(offset, message, "Save the program with the dialect's line ends.", key),
    severity: "warning",
  };
}
