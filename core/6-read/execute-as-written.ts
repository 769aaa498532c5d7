import { axisLetters, centreLetters, letterBit, letterF, letterS, letterT } from "./letters.ts";
import type { Group } from "./modal-groups.ts";
import { readCompensation } from "./read-compensation.ts";
import { readOneCoolant } from "./read-coolant.ts";
import { readDwell } from "./read-dwell.ts";
import { readExtra } from "./read-extra.ts";
import { readFeed } from "./read-feed.ts";
import { readMessage } from "./read-message.ts";
import { readCycleReturn, readMode, readSynchronising } from "./read-modes.ts";
import { readMotion } from "./read-motion.ts";
import { readLengthOffset, readWorkOffset } from "./read-offsets.ts";
import { readPath } from "./read-path.ts";
import { readReference } from "./read-reference.ts";
import { readEarlyStop, readGear, readLateStop, readSpeed, readSpindleStart } from "./read-spindle.ts";
import { readStop } from "./read-stop.ts";
import { readToolChange, readToolSelection } from "./read-tool.ts";
import type { Reader } from "./reader.ts";

type Act = (reader: Reader) => void;

/** Where an act stands in its block, bytes from the start of the line; whatever for one that the block does not have. */
type PlaceOf = (reader: Reader) => number;

const ofGroup =
  (group: Group): PlaceOf =>
  ({ slots }) =>
    slots[group]?.at ?? 0;

const ofLetter =
  (letter: number): PlaceOf =>
  ({ block }) =>
    block.at[letter];

/** A code whose number is a word of its own acts when both have been read. */
const withWord =
  (group: Group, letters: (reader: Reader) => number): PlaceOf =>
  (reader) =>
    Math.max(ofGroup(group)(reader), ...placesOf(reader, letters(reader)));

/** A motion goes where the first of its axes or centre words stands, whatever stands behind that. */
const ofMotion: PlaceOf = (reader) => {
  const places = placesOf(reader, axisLetters | centreLetters);
  if (places.length > 0) return Math.min(...places);
  return ofGroup(reader.slots.motion ? "motion" : "cycle-end")(reader);
};

function placesOf({ block }: Reader, letters: number): number[] {
  const places: number[] = [];
  for (let letter = 0; letter < 26; letter++)
    if (block.mask & ~block.reserved & letters & (1 << letter)) places.push(block.at[letter]);
  return places;
}

/** What a block may do; those at one place in this order. Coolant and extra codes may stand in it several times. */
const acts: readonly (readonly [Act, PlaceOf])[] = [
  [readMode("feed-mode"), ofGroup("feed-mode")],
  [readFeed, ofLetter(letterF)],
  [readGear, ofGroup("gear")],
  [readSpeed, ofLetter(letterS)],
  [readToolSelection, ofLetter(letterT)],
  [readToolChange, ofGroup("tool-change")],
  [readSpindleStart, ofGroup("spindle")],
  [readEarlyStop, ofGroup("spindle")],
  [readLateStop, ofGroup("spindle")],
  [readMode("overrides"), ofGroup("overrides")],
  [readDwell, ofGroup("non-modal")],
  [readMode("plane"), ofGroup("plane")],
  [readMode("units"), ofGroup("units")],
  [readCompensation, withWord("compensation", ({ format }) => letterBit(format.compensationWord))],
  [readLengthOffset, withWord("length-offset", ({ format }) => letterBit(format.lengthOffset?.word))],
  [readWorkOffset, ofGroup("work-offset")],
  [readPath, ofGroup("path")],
  [readMode("look-ahead"), ofGroup("look-ahead")],
  [readMode("corner-feed"), ofGroup("corner-feed")],
  [readMode("distance"), ofGroup("distance")],
  [readMode("arc-centre"), ofGroup("arc-centre")],
  [readCycleReturn, ofGroup("cycle-return")],
  [readSynchronising, ofGroup("tap-synchronised")],
  [readMode("non-modal"), ofGroup("non-modal")],
  [readMode("rotation"), ofGroup("rotation")],
  [readMode("scale"), ofGroup("scale")],
  [readReference, ofMotion],
  [readMotion, ofMotion],
  [readStop, ofGroup("stop")],
];

/**
 * Does what a block says in the order in which it stands there, under a dialect whose control goes from left to right. The
 * message comes first: it is on the screen when the block begins.
 */
export function executeAsWritten(reader: Reader): void {
  const { coolants, extras } = reader;
  readMessage(reader);
  const placed = [
    ...acts.map(([act, placeOf]) => ({ at: placeOf(reader), run: () => void act(reader) })),
    ...coolants.map((slot) => ({ at: slot.at, run: () => void readOneCoolant(reader, slot) })),
    ...extras.map((extra) => ({ at: extra.at, run: () => void readExtra(reader, extra) })),
  ];
  placed.sort((one, other) => one.at - other.at);
  for (const { run } of placed) run();
}
