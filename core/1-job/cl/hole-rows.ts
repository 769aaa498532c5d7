import { axisBit, pushAside, rowKind } from "#base";
import { holeBit, holeKindNames } from "../moves/holes.ts";
import { finishMove } from "../moves/read-move.ts";
import type { MoveReader } from "../moves/reader.ts";
import { slot } from "../moves/reader.ts";
import { moveTo, pushRow } from "../moves/rows.ts";
import { offsetOf } from "../scan/scanner.ts";
import { beginMove, setTarget, stateFeed } from "./begin-move.ts";
import type { ClActions, ClState, Cycle } from "./state.ts";
import { turnsToTime } from "./words/spindle.ts";

const xy = axisBit.x | axisBit.y;

const wordsOfAll =
  holeBit.kind | holeBit.at | holeBit.between | holeBit.top | holeBit.depth | holeBit.retract;

/** Rows of holes: their head, one row a point, their end. */
export function holeActions(
  reader: MoveReader,
  state: ClState,
): Pick<ClActions, "holes" | "hole" | "endHoles"> {
  const { move, stream } = reader;
  return {
    holes: ({ cycle, kind, top, depth, retract, between }, source) => {
      beginMove(reader, "holes", source);
      move.words = wordsOfAll;
      move.choice = holeKindNames.indexOf(kind);
      move.between = between === "retract" ? 0 : 1;
      move.values[slot.top] = top;
      move.values[slot.depth] = depth;
      move.values[slot.retract] = retract;
      setHoleWords(reader, cycle, state);
      if (kind !== "tap") stateFeed(reader, cycle.feed ?? state.feed, state);
      // The points follow as statements, so that reading goes on where it is.
      move.listAt = offsetOf(reader.scanner);
      finishMove(reader);
    },
    hole: (source) => {
      if (stream.row < 0) return;
      setTarget(reader, state);
      moveTo(reader, xy);
      pushRow(reader, rowKind.hole, xy, stream.feed, 0, 0, 0, source);
    },
    endHoles: (source) => {
      if (stream.row < 0) return;
      pushAside(reader.batch, { kind: "holes-end" }, source);
      stream.row = -1;
    },
  };
}

/** The words that only some kinds of holes have. */
function setHoleWords({ move }: MoveReader, cycle: Cycle, { rpm }: ClState): void {
  const { values } = move;
  if (cycle.peck > 0) {
    move.words |= holeBit.peck;
    values[slot.peck] = cycle.peck;
  }
  if (cycle.lead > 0) {
    move.words |= holeBit.lead;
    values[slot.lead] = cycle.lead;
  }
  if (cycle.dwell === 0) return;
  move.words |= holeBit.dwell;
  values[slot.dwell] = cycle.dwellTurns ? turnsToTime(cycle.dwell, rpm) : cycle.dwell;
}
