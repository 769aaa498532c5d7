import type { Batch, FeedMode, UnitSystem } from "#base";
import { axes, axisBit, isArc, rowKind } from "#base";
import type { Holes, JobStep } from "../job.ts";
import { scales } from "../scan/number.ts";
import type { WritingScales } from "./numbers.ts";
import { member, numberText, object, scalesOf } from "./numbers.ts";
import { mediaText } from "./write-head.ts";

/** The state of writing the moves of one operation. */
export interface MoveWriter {
  readonly scales: WritingScales;
  readonly mode: FeedMode;
  /** Feed that holds; 0: none. */
  feed: number;
  /** The holes that are being written, and how many places so far. */
  holes: Holes | undefined;
  places: number;
}

export function createMoveWriter(units: UnitSystem, mode: FeedMode): MoveWriter {
  return { scales: scalesOf(units, mode), mode, feed: 0, holes: undefined, places: 0 };
}

/** Planes by row kind: name, and the axes of the centre's columns. */
const planes: Readonly<
  Record<number, { readonly name: string; readonly centre: readonly [string, string] }>
> = {
  [rowKind.arcXy]: { name: "xy", centre: ["cx", "cy"] },
  [rowKind.arcZx]: { name: "zx", centre: ["cz", "cx"] },
  [rowKind.arcYz]: { name: "yz", centre: ["cy", "cz"] },
};

/**
 * A row as a move of JSON.
 *
 * @returns the whole move, or a part of one: holes are begun, gone on with and ended by rows of their own
 */
export function rowText(
  writer: MoveWriter,
  batch: Batch<JobStep>,
  row: number,
): { text: string; ends: boolean } {
  const kind = batch.kind[row];
  if (kind === rowKind.aside) return asideText(writer, batch.asides[batch.aside[row]]);
  if (kind === rowKind.hole) return { text: placeText(writer, batch, row), ends: false };
  if (kind === rowKind.rapid) return whole(object(member("rapid", axesText(writer, batch, row))));
  if (isArc(kind)) return whole(arcText(writer, batch, row));
  return whole(
    object([...member("line", axesText(writer, batch, row)), ...feedText(writer, batch.feed[row])]),
  );
}

const whole = (text: string): { text: string; ends: boolean } => ({ text, ends: true });

function axisWords({ scales: { length } }: MoveWriter, batch: Batch<JobStep>, row: number): string[] {
  const linear = [batch.x, batch.y, batch.z];
  return axes.flatMap((axis, index) => {
    if ((batch.stated[row] & axisBit[axis]) === 0) return [];
    const value = index < 3 ? linear[index][row] : (batch.abc?.[index - 3][row] ?? 0);
    return [`"${axis}": ${numberText(value, index < 3 ? length : scales.degree)}`];
  });
}

const axesText = (writer: MoveWriter, batch: Batch<JobStep>, row: number): string =>
  object(axisWords(writer, batch, row));

/** The feed, where it is not the one that holds already. */
function feedText(writer: MoveWriter, feed: number): string[] {
  if (feed === writer.feed && writer.mode !== "inverse-time") return [];
  writer.feed = feed;
  return [`"feed": ${numberText(feed, writer.scales.feed)}`];
}

function arcText(writer: MoveWriter, batch: Batch<JobStep>, row: number): string {
  const { name, centre } = planes[batch.kind[row]];
  const { length } = writer.scales;
  const turns = batch.turns[row];
  const words = [
    ...axisWords(writer, batch, row),
    `"${centre[0]}": ${numberText(batch.c1[row], length)}`,
    `"${centre[1]}": ${numberText(batch.c2[row], length)}`,
  ];
  return object([
    ...member("arc", object(words)),
    ...member("turn", turns < 0 ? `"cw"` : `"ccw"`),
    ...member("plane", name === "xy" ? undefined : `"${name}"`),
    ...member("turns", Math.abs(turns) === 1 ? undefined : String(Math.abs(turns))),
    ...feedText(writer, batch.feed[row]),
  ]);
}

function placeText(writer: MoveWriter, batch: Batch<JobStep>, row: number): string {
  const { length } = writer.scales;
  const comma = writer.places++ === 0 ? "" : ", ";
  return `${comma}[${numberText(batch.x[row], length)}, ${numberText(batch.y[row], length)}]`;
}

function asideText(writer: MoveWriter, step: JobStep): { text: string; ends: boolean } {
  switch (step.kind) {
    case "holes":
      writer.holes = step;
      writer.places = 0;
      return { text: `{ "holes": { "kind": "${step.cycle}", "at": [`, ends: false };
    case "holes-end":
      return whole(endHoles(writer));
    case "dwell":
      return whole(object(member("dwell", numberText(step.time, scales.second))));
    case "pause":
      return whole(
        object([
          ...member("pause", JSON.stringify(step.text)),
          ...member("optional", step.optional ? "true" : undefined),
          ...member("park", step.park ? "true" : undefined),
        ]),
      );
    case "note":
      return whole(object(member("note", JSON.stringify(step.text))));
    case "spindle":
      return whole(object(member("spindle", object(member("rpm", numberText(step.rpm, scales.rpm))))));
    case "coolant":
      return whole(object(member("coolant", mediaText(step.media))));
    case "compensation":
      return whole(object(member("comp", JSON.stringify(step.side))));
  }
}

/** Everything of holes that stands behind their places. */
function endHoles(writer: MoveWriter): string {
  const { holes, scales: own } = writer;
  if (holes === undefined) throw new Error("holes end that have not begun");
  const length = (key: "peck" | "backOff" | "lead"): string[] =>
    member(key, holes[key] === 0 ? undefined : numberText(holes[key], own.length));
  const words = [
    ...member("top", numberText(holes.top, own.length)),
    ...member("depth", numberText(holes.depth, own.length)),
    ...member("retract", numberText(holes.retract, own.length)),
    ...length("peck"),
    ...length("backOff"),
    ...member("dwell", holes.dwell === 0 ? undefined : numberText(holes.dwell, scales.second)),
    ...length("lead"),
    ...member("feedOut", holes.feedOut === 0 ? undefined : numberText(holes.feedOut, own.feed)),
    ...member("between", holes.between === "initial" ? `"initial"` : undefined),
  ];
  const feed = holes.feed === 0 ? "" : `, "feed": ${numberText(holes.feed, own.feed)}`;
  writer.holes = undefined;
  // The feed of holes is theirs alone, and none from before them comes back.
  writer.feed = 0;
  return `], ${words.join(", ")} }${feed} }`;
}
