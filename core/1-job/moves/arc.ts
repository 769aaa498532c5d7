import { atomsPerMillimetre, rowKind } from "#base";
import { compensationOn, missingKey, radiusDiffers, radiusNothing, strayKey } from "../findings.ts";
import { readNumber } from "../scan/number.ts";
import { nextMember, openObject } from "../scan/structure.ts";
import { noName, scanKey } from "../scan/text.ts";
import { createWords } from "../scan/words.ts";
import { radiiDiffer } from "./arc-radius.ts";
import type { KindOfMove } from "./kind.ts";
import { checkMoved, effectiveFeed } from "./motion.ts";
import type { MoveReader } from "./reader.ts";
import { keyIndex, slot } from "./reader.ts";
import { moveTo, pushRow } from "./rows.ts";
import { refuseKey, refuseRepeated } from "./values.ts";

/** Bits of the first three are those of the axes. */
const arcWords = createWords(["x", "y", "z", "cx", "cy", "cz"]);
const wordSlots = [slot.x, slot.y, slot.z, slot.cx, slot.cy, slot.cz];
const wordLabels = arcWords.names.map((name) => `\`${name}\``);

/** Planes in the order of `planeWords`; first and second axis as the row's centre has them (NISTIR 6556 Table 9). */
const planes = [
  { name: "xy", row: rowKind.arcXy, first: 0, second: 1 },
  { name: "zx", row: rowKind.arcZx, first: 2, second: 0 },
  { name: "yz", row: rowKind.arcYz, first: 1, second: 2 },
] as const;

type ArcPlane = (typeof planes)[number];

/** Names of planes, for the key `plane`. */
export const planeWords = createWords(planes.map(({ name }) => name));

/** Senses of an arc, for the key `turn`. */
export const turnWords = createWords(["cw", "ccw"]);

/** { "arc": { "x": 20, "y": 5, "cx": 15, "cy": 5 }, "turn": "cw", "plane": "xy", "turns": 1, "feed": 800 } */
export const arc: KindOfMove = {
  beside: ["turn", "plane", "turns", "feed"],
  read: readArc,
  finish: finishArc,
};

function readArc(reader: MoveReader): boolean {
  const { scanner, move } = reader;
  const errors = reader.errors;
  let seen = 0;
  for (let more = openObject(scanner, "The arc"); more; more = nextMember(scanner)) {
    const word = scanKey(scanner, arcWords);
    if (word < 0) {
      if (word === noName) return false;
      refuseKey(scanner, "The arc", arcWords);
    } else if ((seen & (1 << word)) !== 0) {
      refuseRepeated(scanner, arcWords.names[word]);
    } else {
      seen |= 1 << word;
      move.wordAt[word] = scanner.tokenAt;
      readNumber(scanner, reader.length, move.values, wordSlots[word], false, wordLabels[word]);
    }
  }
  move.words = seen;
  return reader.errors === errors;
}

function finishArc(reader: MoveReader): void {
  const { move } = reader;
  const plane = planes[(move.seen & (1 << keyIndex.plane)) === 0 ? 0 : move.plane];
  checkMoved(reader);
  if (!hasWords(reader, plane)) {
    reader.lost = true;
    return;
  }
  if (reader.compensated && plane.name !== "xy")
    reader.report(compensationOn(move.source, "in an arc outside of the XY plane"));
  const c1 = move.values[slot.cx + plane.first];
  const c2 = move.values[slot.cx + plane.second];
  if (!reader.lost) checkRadius(reader, plane, c1, c2);
  const count = (move.seen & (1 << keyIndex.turns)) === 0 ? 1 : move.values[slot.turns];
  const turns = move.turn === 0 ? -count : count;
  const words = move.words & 7;
  moveTo(reader, words);
  pushRow(reader, plane.row, words, effectiveFeed(reader, "The arc"), c1, c2, turns, move.source);
}

/** Both ends and both centres of the plane, `turn`, and no centre of the third axis. */
function hasWords(reader: MoveReader, { name, first, second }: ArcPlane): boolean {
  const { words, wordAt, valueAt, source, seen } = reader.move;
  const errors = reader.errors;
  for (const word of [first, second, 3 + first, 3 + second])
    if ((words & (1 << word)) === 0)
      reader.report(missingKey(valueAt, arcWords.names[word], `The arc in ${name}`));
  const third = 6 - first - second;
  if ((words & (1 << third)) !== 0)
    reader.report(
      strayKey(wordAt[third], arcWords.names[third], `The arc in ${name}`, "a centre is in the plane"),
    );
  if ((seen & (1 << keyIndex.turn)) === 0) reader.report(missingKey(source, "turn", "The arc"));
  return reader.errors === errors;
}

function checkRadius(reader: MoveReader, plane: ArcPlane, c1: number, c2: number): void {
  const { place, move } = reader;
  const start = distance(place[plane.first] - c1, place[plane.second] - c2);
  const end = distance(move.values[plane.first] - c1, move.values[plane.second] - c2);
  if (start === 0 || end === 0) reader.report(radiusNothing(move.valueAt));
  else if (radiiDiffer(start, end))
    reader.report(radiusDiffers(move.valueAt, inMillimetres(start), inMillimetres(end)));
}

/** Lengths are at most 1e13 atoms, so that the squares stay far below the largest Float64. */
function distance(first: number, second: number): number {
  return Math.sqrt(first * first + second * second);
}

function inMillimetres(atoms: number): string {
  return String(Math.round(atoms / 10) / (atomsPerMillimetre / 10));
}
