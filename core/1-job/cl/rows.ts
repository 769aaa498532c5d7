import { axisBit, linearAxes } from "#base";
import { finishMove } from "../moves/read-move.ts";
import type { MoveReader } from "../moves/reader.ts";
import { keyIndex, slot } from "../moves/reader.ts";
import { beginMove, setTarget, stateFeed } from "./begin-move.ts";
import { holeActions } from "./hole-rows.ts";
import type { ClActions, ClState } from "./state.ts";

/** Planes about x, y, z: index among the planes of a job, and the bits of the centre's words. */
const planes = [
  { index: 2, centre: 0b110_000 },
  { index: 1, centre: 0b101_000 },
  { index: 0, centre: 0b011_000 },
] as const;

/** Actions that write the rows of one operation, through the routines that those of a job in JSON go through. */
export function rowActions(reader: MoveReader, state: ClState): ClActions {
  return {
    operation: () => undefined,
    tool: () => undefined,
    toolData: () => undefined,
    ...motionActions(reader, state),
    ...holeActions(reader, state),
    ...rareActions(reader, state),
  };
}

function motionActions(reader: MoveReader, state: ClState): Pick<ClActions, "rapid" | "line" | "arc"> {
  const { move } = reader;
  return {
    rapid: (axes, source) => {
      beginMove(reader, "rapid", source);
      move.words = axes & linearAxes;
      setTarget(reader, state);
      finishMove(reader);
    },
    line: (source, feed = state.feed) => {
      beginMove(reader, "line", source);
      move.words = axisBit.x | axisBit.y | axisBit.z;
      setTarget(reader, state);
      stateFeed(reader, feed, state);
      finishMove(reader);
    },
    arc: ({ plane, turn, centre }, source) => {
      beginMove(reader, "arc", source);
      move.words = linearAxes | planes[plane].centre;
      move.seen |= (1 << keyIndex.plane) | (1 << keyIndex.turn);
      move.plane = planes[plane].index;
      move.turn = turn === "cw" ? 0 : 1;
      setTarget(reader, state);
      move.values.set(centre, slot.cx);
      stateFeed(reader, state.feed, state);
      finishMove(reader);
    },
  };
}

type RareAction = "spindle" | "coolant" | "note" | "pause" | "dwell" | "compensation";

function rareActions(reader: MoveReader, state: ClState): Pick<ClActions, RareAction> {
  const { move } = reader;
  return {
    // Speed and coolant of before the first motion are the operation's own.
    spindle: (rpm, _, source) => {
      if (!reader.moved || rpm === reader.rpm) return;
      beginMove(reader, "spindle", source);
      move.values[slot.rpm] = rpm;
      finishMove(reader);
    },
    coolant: (media, source) => {
      if (!reader.moved || isSame(media, state.coolant)) return;
      beginMove(reader, "coolant", source);
      move.media = { kind: "coolant", media };
      finishMove(reader);
    },
    note: (text, source) => {
      beginMove(reader, "note", source);
      move.text = text;
      finishMove(reader);
    },
    pause: (text, optional, source) => {
      beginMove(reader, "pause", source);
      move.text = text;
      move.seen |= 1 << keyIndex.optional;
      move.optional = optional;
      finishMove(reader);
    },
    dwell: (time, source) => {
      beginMove(reader, "dwell", source);
      move.values[slot.dwell] = time;
      finishMove(reader);
    },
    compensation: (side, source) => {
      beginMove(reader, "comp", source);
      move.choice = ["left", "right", "off"].indexOf(side);
      finishMove(reader);
    },
  };
}

function isSame(first: readonly string[], second: readonly string[]): boolean {
  return first.length === second.length && first.every((medium) => second.includes(medium));
}
