import { axes } from "#base";
import type { Dialect, Format } from "./dialect.ts";
import type { Resolving } from "./resolving.ts";

/**
 * Where each word acts where it stands, the order of words has to be the meant order of actions: what a motion is to go by
 * before its axis words, the speed before the start, the tool before its change.
 */
export function checkExecution(resolving: Resolving, { format }: Dialect): void {
  if (format.executes === "by-kind") return;
  checkMotion(resolving, format);
  checkOffset(resolving, format);
  checkPairs(resolving, format);
}

const otherwise = "or state `blocks: { executes: by-kind }`";

/** Place of the first axis word in a block. */
function firstAxis({ order, motion }: Format): number {
  return Math.min(
    ...axes.map((axis) => order.indexOf(motion.letters[axis])).map((place) => (place < 0 ? Infinity : place)),
  );
}

function checkMotion({ fail }: Resolving, format: Format): void {
  const { order } = format;
  const axis = order[firstAxis(format)] ?? "X";
  for (const letter of ["G", "F"]) {
    if (order.indexOf(letter) < firstAxis(format)) continue;
    const old = letter === "F" ? "at the feed" : "in the modes";
    const message = `Each word acts where it stands, and ${letter} stands behind ${axis}: a motion would go ${old} of the block before.`;
    fail("dialect/order", "blocks.order", message, `Put ${letter} before ${axis}, ${otherwise}.`);
  }
}

/** A length offset that shares the block of the first Z is to act before it. */
function checkOffset({ fail }: Resolving, format: Format): void {
  const { order, lengthOffset } = format;
  if (lengthOffset?.form !== "with-first-z" || order.indexOf(lengthOffset.word) < firstAxis(format)) return;
  fail(
    "dialect/order",
    "machine.length-offset.form",
    `Each word acts where it stands, and ${lengthOffset.word} stands behind the axis words: Z would move before its offset acts.`,
    `Put ${lengthOffset.word} before them in \`blocks.order\`, state \`form: own-block\`, ${otherwise}.`,
  );
}

/** Words that share a block because one of them follows from the other. */
function checkPairs({ fail }: Resolving, { order, spindle, tools, dwell, codes }: Format): void {
  if (spindle?.order === "start-first" && spindle.blocks === "together")
    fail(
      "dialect/format",
      "spindle.order",
      "Each word acts where it stands: the spindle would start before the speed of its block is said.",
      `State \`order: speed-first\`, or \`blocks: apart\`, ${otherwise}.`,
    );
  const changes = codes.toolChange && tools?.changedBy === "code";
  if (changes && tools.order === "change-first" && tools.blocks === "together")
    fail(
      "dialect/format",
      "tools.order",
      "Each word acts where it stands: the change would take the tool selected before that of its block.",
      `State \`order: select-first\`, or \`blocks: apart\`, ${otherwise}.`,
    );
  if (dwell?.blocks === "with-start" && order.indexOf("M") > order.indexOf("G"))
    fail(
      "dialect/format",
      "dwell.blocks",
      "Each word acts where it stands, and G stands before M: the dwell of a start would be over before the start.",
      `Put M before G in \`blocks.order\`, state \`dwell: { blocks: apart }\`, ${otherwise}.`,
    );
}
