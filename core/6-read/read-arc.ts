import { centreOnGrid, exactArc, isNearlyClosed } from "./arc-computed.ts";
import { freeLetters, placeOf } from "./block.ts";
import { checkQuadrant, checkSweep } from "./arc-sweep.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { axesOfLetters, centreLetters, letterName, letterOfAxis, lettersOfAxes } from "./letters.ts";
import { firstOf, lettersText, needModes } from "./need-mode.ts";
import { bitOfAxis, moveAxes } from "./read-axes.ts";
import { feedOfRow } from "./read-feed.ts";
import { readNumber, readWhole } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { hasResidues } from "./residue.ts";
import { pushRow } from "./rows.ts";
import { losePlace, modeBit } from "./state.ts";

/** Letters that belong to an arc beside its end. */
export function arcLetters({ tables }: Reader): number {
  return centreLetters | (1 << tables.radiusLetter);
}

/** An arc in the plane in force; its third axis makes a helix (NISTIR 6556 3.5.3). */
export function readArc(reader: Reader, clockwise: boolean): void {
  const { block, state, tables } = reader;
  const radiusBit = 1 << tables.radiusLetter;
  const words = freeLetters(block);
  const named = axesOfLetters(words);
  const centre = words & centreLetters;
  block.used |= lettersOfAxes(named) | centre | (words & radiusBit);
  const needed = modeBit.units | modeBit.distance | modeBit.plane | (centre ? modeBit.arcCentre : 0);
  if ((state.modes & needed) !== needed) needModes(reader, needed, firstOf(reader, words));
  const turns = (clockwise ? -1 : 1) * readTurns(reader);
  const wrong = faultOf(reader, named, centre, (words & radiusBit) !== 0);
  if (wrong !== undefined) {
    reader.report(findings.badArc(block.start + firstOf(reader, words), ...wrong));
    losePlace(state, named);
    return;
  }
  if (!knowsStart(reader, named, words)) return;
  if (centre) readByCentre(reader, named, turns);
  else readByRadius(reader, named, turns);
}

/** Message, way out and key of what keeps the words of a block from being an arc. */
type Fault = [message: string, fix: string, key?: string];

function faultOf(reader: Reader, named: number, centre: number, radius: boolean): Fault | undefined {
  const { state, format } = reader;
  const { plane } = state;
  const { planes, form } = format.arc;
  if (planes && !planes.includes(plane.name))
    return [
      `This dialect has no arcs in the plane ${plane.name}.`,
      "Take another plane, or lines.",
      "arc.planes",
    ];
  if (named > 7) return ["An arc takes no rotary axis along.", "Move the rotary axis in a block of its own."];
  if (radius && centre) return ["The arc has both a radius and a centre.", "Leave one of them."];
  if (!radius && !centre)
    return ["The arc has neither a centre nor a radius.", "Add the centre words.", "arc.form"];
  if (centre & (1 << plane.foreignCentre)) {
    const wanted = lettersText((1 << plane.firstCentre) | (1 << plane.secondCentre));
    const found = letterName(plane.foreignCentre);
    return [
      `${found} is no centre word of the plane ${plane.name}.`,
      `State the centre by ${wanted}, or the plane.`,
    ];
  }
  if (centre && form === "radius")
    return [
      "This dialect says arcs by their radius.",
      "State the radius in place of the centre.",
      "arc.form",
    ];
  return undefined;
}

/** An arc begins where the tool is: in its plane that must be known. */
function knowsStart(reader: Reader, named: number, words: number): boolean {
  const { state, block } = reader;
  const inPlane = bitOfAxis(state.plane.first) | bitOfAxis(state.plane.second);
  if ((state.workKnown & inPlane) === inPlane) return true;
  const place = block.start + firstOf(reader, words);
  reader.report(findings.unknownPlace(place, "The arc", "the place where it starts"));
  losePlace(state, named);
  return false;
}

/** Turns started; 1 without a word for them. */
function readTurns(reader: Reader): number {
  const { block, tables } = reader;
  const bit = tables.turnsBit & freeLetters(block);
  if (bit === 0) return 1;
  block.used |= bit;
  const letter = 31 - Math.clz32(bit);
  const turns = readWhole(reader, letter, 1) ?? 1;
  if (turns <= 32_767) return turns;
  reader.report(findings.badNumber(placeOf(block, letter), letterName(letter), "is too large"));
  return 1;
}

function readByCentre(reader: Reader, named: number, turns: number): void {
  const { state, format } = reader;
  const { plane } = state;
  checkWords(reader, named);
  const first = state.work[plane.first];
  const second = state.work[plane.second];
  let c1 = centreOf(reader, plane.firstCentre, first);
  let c2 = centreOf(reader, plane.secondCentre, second);
  const exact = hasResidues(reader) ? exactArc(reader) : undefined;
  const normal = state.work[plane.normal];
  moveAxes(reader, 0, named);
  const end1 = state.work[plane.first];
  const end2 = state.work[plane.second];
  if (exact) {
    if (isNearlyClosed(reader, exact, [first, second], [end1, end2])) reportNearlyClosed(reader);
    [c1, c2] = centreOnGrid(reader, exact, [first, second], [end1, end2]);
  }
  if (end1 === first && end2 === second && format.arc.fullCircle === false)
    reportDialect(reader, "no full circle in one block", "arc.full-circle");
  checkHelix(reader, named, normal);
  checkSweep(reader, first - c1, second - c2, end1 - c1, end2 - c2, turns);
  checkQuadrant(reader, first - c1, second - c2, end1 - c1, end2 - c2, turns);
  pushRow(reader, plane.byCentre, 0, named, feedOfRow(reader), c1, c2, turns);
}

/** Ends that are worked out and lie nearer than a step of the grid. */
function reportNearlyClosed({ report, block }: Reader): void {
  const message =
    "The ends of the arc are worked out, and lie nearer than the least increment: it may be run as a full circle, or hardly at all.";
  report(findings.badArc(block.start, message, "Round the ends, or split the circle."));
}

/** Absolute place of the centre on one axis; a word that is left out stands for the start itself. */
function centreOf(reader: Reader, letter: number, start: number): number {
  const { block, state } = reader;
  if ((block.mask & (1 << letter)) === 0) {
    if (state.arcAbsolute)
      reader.report(
        findings.badArc(
          block.start,
          `The absolute centre lacks ${letterName(letter)}.`,
          `Add ${letterName(letter)}.`,
        ),
      );
    return start;
  }
  const value = readNumber(reader, letter, state.centre);
  return state.arcAbsolute ? value : start + value;
}

function readByRadius(reader: Reader, named: number, turns: number): void {
  const { state, block, tables } = reader;
  const { plane } = state;
  const letter = tables.radiusLetter;
  checkEndWords(reader, named);
  const radius = readNumber(reader, letter, state.centre);
  const first = state.work[plane.first];
  const second = state.work[plane.second];
  const normal = state.work[plane.normal];
  moveAxes(reader, 0, named);
  const closed = state.work[plane.first] === first && state.work[plane.second] === second;
  if (closed || radius === 0) {
    const message = closed ? "An arc by its radius cannot be a full circle." : "The arc has the radius 0.";
    reader.report(
      findings.badArc(placeOf(block, letter), message, "State the centre in place of the radius."),
    );
    return;
  }
  checkHelix(reader, named, normal);
  const { largestSweep, quadrants } = reader.format.arc;
  if (quadrants === "one")
    reportDialect(
      reader,
      "no arc by its radius, which leaves open where its quadrant lines are",
      "arc.quadrants",
    );
  if (radius < 0 && largestSweep !== undefined && largestSweep <= 180_000_000)
    reportDialect(reader, "no arc of more than 180 degrees in one block", "arc.largest-sweep");
  pushRow(reader, plane.byRadius, 0, named, feedOfRow(reader), radius, 0, turns);
}

/** Under a dialect that states both end and centre words, none of them may be left out. */
function checkWords(reader: Reader, named: number): void {
  const { block, state, format } = reader;
  checkEndWords(reader, named);
  const both = (1 << state.plane.firstCentre) | (1 << state.plane.secondCentre);
  const missing = both & ~block.mask;
  if (missing !== 0 && format.modal.arcCentre === "both" && !state.arcAbsolute)
    reader.report(formFindings.arcWords(block.start, lettersText(missing), "modal.arc-centre"));
}

function checkEndWords(reader: Reader, named: number): void {
  const { block, state, format } = reader;
  if (format.modal.arcEnd !== "both") return;
  const missing = (bitOfAxis(state.plane.first) | bitOfAxis(state.plane.second)) & ~named;
  if (missing !== 0)
    reader.report(formFindings.arcWords(block.start, lettersText(lettersOfAxes(missing)), "modal.arc-end"));
}

function checkHelix(reader: Reader, named: number, before: number): void {
  const { state, format } = reader;
  const { normal } = state.plane;
  if ((named & bitOfAxis(normal)) === 0 || state.work[normal] === before) return;
  const { mostAxes } = reader.tables;
  if (mostAxes < 3)
    reader.report(formFindings.axesAtOnce(reader.block.start, "motion", 3, mostAxes, "motion.axes-at-once"));
  if (format.arc.helix === false)
    reportDialect(reader, `no arc that moves ${letterName(letterOfAxis[normal])}, too`, "arc.helix");
}

/** An arc that the dialect says its controller does not run. */
function reportDialect(reader: Reader, what: string, key: string): void {
  reader.report(
    findings.badArc(reader.block.start, `This dialect has ${what}.`, "Split the arc, or take lines.", key),
  );
}
