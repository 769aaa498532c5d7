import { frame, linearAxes, rotaryAxes, rowKind } from "#base";
import { freeLetters } from "./block.ts";
import * as findings from "./findings-meaning.ts";
import { axesOfLetters, axisLetters, letterOfAxis, lettersOfAxes } from "./letters.ts";
import { firstOf, needModes } from "./need-mode.ts";
import { moveAxes } from "./read-axes.ts";
import { textAt } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { pushRow, pushStep } from "./rows.ts";
import { losePlace, modeBit } from "./state.ts";

/**
 * Return to the reference point: a rapid to the point that the axis words say, then one of these axes to the reference point
 * (NISTIR 6556 3.5.8). An incremental zero is no rapid. A control without an intermediate point only names axes by words of 0.
 */
export function readReference(reader: Reader): void {
  const { slots, block, state } = reader;
  const slot = slots["non-modal"];
  if (slot?.meaning.kind !== "reference-return") return;
  if (slots.motion?.meaning.kind === "motion" || slots.motion?.meaning.kind === "cycle")
    reader.report(
      findings.modalConflict(
        block.start + slot.at,
        textAt(reader, slot.at),
        `wants the axis words for itself, and so does ${textAt(reader, slots.motion.at)}`,
      ),
    );
  const words = freeLetters(block) & axisLetters;
  const named = axesOfLetters(words);
  block.used |= words;
  if (named !== 0 && (block.unknown & axisLetters) === 0) moveToPoint(reader, named);
  const returned = named | axesOfLetters(block.unknown);
  // Without words all axes go (NISTIR 6556 3.5.8): the rotary ones, too, where the program has any.
  const rotary = (state.workKnown | state.machineKnown) & rotaryAxes;
  const axes = returned === 0 ? linearAxes | rotary : returned;
  pushStep(reader, { kind: "reference-return", axes });
  losePlace(state, axes);
  state.motionForgotten = true;
}

/** The rapid to the intermediate point, where there is one. */
function moveToPoint(reader: Reader, named: number): void {
  const { state, format } = reader;
  needModes(reader, modeBit.units | modeBit.distance, firstOf(reader, lettersOfAxes(named)));
  const justNames = format.referenceIntermediate === "none" || state.incremental;
  if (justNames && isZero(reader, named)) return;
  const reachable = state.incremental ? named & state.workKnown : named;
  const moved = moveAxes(reader, frame.work, named);
  // A point where the tool stands already is a point all the same.
  const stated = moved === 0 ? reachable : moved;
  if (stated !== 0) pushRow(reader, rowKind.rapid, frame.work, stated, 0, 0, 0, 0);
  if (format.modal.feed === "after-rapid") state.feedDue = true;
}

function isZero({ block }: Reader, named: number): boolean {
  for (let axis = 0; axis < 6; axis++)
    if (named & (1 << axis) && block.mantissa[letterOfAxis[axis]] !== 0) return false;
  return true;
}
