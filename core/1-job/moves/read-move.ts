import { rotaryAxes } from "#base";
import { noKind, outOfRange, strayKey, twoKinds } from "../findings.ts";
import { readNumber, scanNumber } from "../scan/number.ts";
import { offsetOf, peek } from "../scan/scanner.ts";
import { skipValue } from "../scan/skip.ts";
import { nextMember, openObject } from "../scan/structure.ts";
import { noName, scanKey } from "../scan/text.ts";
import { arc, planeWords, turnWords } from "./arc.ts";
import { comp } from "./comp.ts";
import { coolant } from "./coolant.ts";
import { dwell } from "./dwell.ts";
import { holes } from "./holes.ts";
import type { KindOfMove } from "./kind.ts";
import { line } from "./line.ts";
import { note } from "./note.ts";
import { path } from "./path.ts";
import { pause } from "./pause.ts";
import { rapid } from "./rapid.ts";
import type { BesideKey, MoveKind, MoveReader } from "./reader.ts";
import { besideKeys, keyIndex, moveKeys, moveKinds, moveWords, slot } from "./reader.ts";
import { spindle } from "./spindle.ts";
import { readBoolean, readWord, refuseKey, refuseRepeated, valueOffset, wholeNumber } from "./values.ts";

const kinds = {
  rapid,
  line,
  arc,
  holes,
  path,
  dwell,
  pause,
  note,
  spindle,
  coolant,
  comp,
} satisfies Record<MoveKind, KindOfMove>;

const mostTurns = 32767;

/** Reads the values of keys beside the kind's own. @returns whether there is no fault */
const besides = {
  feed: ({ scanner, feedScale, move }) =>
    readNumber(scanner, feedScale, move.values, slot.feed, true, "`feed`"),
  turn: ({ scanner, move }) => (move.turn = readWord(scanner, turnWords, "`turn`")) >= 0,
  plane: ({ scanner, move }) => (move.plane = readWord(scanner, planeWords, "`plane`")) >= 0,
  turns: readTurns,
  optional: ({ scanner, move }) => {
    const value = readBoolean(scanner, "`optional`");
    move.optional = value === true;
    return value !== undefined;
  },
  park: ({ scanner, move }) => {
    const value = readBoolean(scanner, "`park`");
    move.park = value === true;
    return value !== undefined;
  },
} satisfies Record<BesideKey, (reader: MoveReader) => boolean>;

function readTurns({ scanner, move }: MoveReader): boolean {
  const digits = scanNumber(scanner, "`turns`");
  const turns = digits === undefined ? undefined : wholeNumber(scanner, digits, "`turns`");
  if (turns === undefined) return false;
  move.values[slot.turns] = turns;
  if (turns >= 1 && turns <= mostTurns) return true;
  scanner.report(outOfRange(scanner.tokenAt, "`turns`", `a whole number from 1 to ${mostTurns}`));
  return false;
}

/** By index of the key: the kind of move, or what reads the value beside it. */
const kindTable: readonly KindOfMove[] = moveKinds.map((kind) => kinds[kind]);
const besideTable: readonly ((reader: MoveReader) => boolean)[] = besideKeys.map((key) => besides[key]);

/** By index of the kind: bits of the keys that the move may have. */
const allowedKeys = kindTable.map(({ beside }, index) =>
  beside.reduce((mask, key) => mask | (1 << keyIndex[key]), 1 << index),
);

/** Reads a whole move into `reader.move`; its rows are written by `finishMove`, when it is known that there is room. */
export function readMove(reader: MoveReader): void {
  const { scanner, move } = reader;
  peek(scanner);
  move.source = offsetOf(scanner);
  move.kind = -1;
  move.seen = 0;
  move.words = 0;
  const errors = reader.errors;
  for (let more = openObject(scanner, "A move"); more; more = nextMember(scanner)) readMember(reader);
  if (move.kind < 0 && reader.errors === errors) reader.report(noKind(move.source, moveKinds));
  else if (move.kind >= 0) checkBeside(reader);
  move.faulty = reader.errors !== errors;
}

function readMember(reader: MoveReader): void {
  const { scanner, move } = reader;
  const key = scanKey(scanner, moveWords);
  if (key < 0) {
    if (key !== noName) refuseKey(scanner, "The move", moveWords);
    return;
  }
  const bit = 1 << key;
  if ((move.seen & bit) !== 0) {
    refuseRepeated(scanner, moveKeys[key]);
    return;
  }
  move.seen |= bit;
  move.keyAt[key] = scanner.tokenAt;
  if (key >= kindTable.length) {
    besideTable[key - kindTable.length](reader);
  } else if (move.kind < 0) {
    move.kind = key;
    move.valueAt = valueOffset(scanner);
    kindTable[key].read(reader);
  } else {
    reader.report(twoKinds(scanner.tokenAt, moveKeys[move.kind], moveKeys[key]));
    skipValue(scanner, `\`${moveKeys[key]}\``);
  }
}

/** Keys that do not belong to the kind; which one it is may stand behind them. */
function checkBeside(reader: MoveReader): void {
  const { move } = reader;
  const kindBits = (1 << kindTable.length) - 1;
  const strays = move.seen & ~kindBits & ~allowedKeys[move.kind];
  if (strays === 0) return;
  moveKeys.forEach((key, index) => {
    if ((strays & (1 << index)) === 0) return;
    reader.report(
      strayKey(
        move.keyAt[index],
        key,
        `A move of kind \`${moveKeys[move.kind]}\``,
        "it belongs to other kinds",
      ),
    );
  });
}

/** Whether the rows of the move at hand need rotary columns. */
export function namesRotary({ move }: MoveReader): boolean {
  return move.kind <= keyIndex.line && (move.words & rotaryAxes) !== 0;
}

/** Checks what the move at hand means and writes its rows; the batch has room for two. */
export function finishMove(reader: MoveReader): void {
  const { move } = reader;
  // What a faulty move does is open, so nothing is said any more about what depends on it.
  if (move.faulty) reader.lost = true;
  else kindTable[move.kind].finish(reader);
}
