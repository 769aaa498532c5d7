/**
 * Every name that a generated emitter may use for its own variables, parameters and properties. The constructors take
 * no other, so text of a dialect can't become a name.
 */
export const names = [
  // The two arguments, and what they hold.
  "batches",
  "batch",
  "options",
  "units",
  "header",
  "footer",
  "fragment",
  "trace",
  "start",
  "distance",
  // The columns of a batch.
  "count",
  "kind",
  "frame",
  "known",
  "stated",
  "x",
  "y",
  "z",
  "abc",
  "feed",
  "c1",
  "c2",
  "turns",
  "aside",
  "asides",
  "sections",
  "sectionNames",
  // The fields of steps.
  "step",
  "value",
  "number",
  "offset",
  "tool",
  "rpm",
  "direction",
  "medium",
  "on",
  "input",
  "level",
  "timeout",
  "time",
  "optional",
  "text",
  "cycle",
  "depth",
  "retract",
  "pecks",
  "taps",
  "backOff",
  "dwells",
  "revolutions",
  "tolerance",
  "between",
  "levelStated",
  "peck",
  "dwell",
  "action",
  "code",
  "axes",
  // The state of the emitter.
  "state",
  "bytes",
  "at",
  "base",
  "inch",
  "incremental",
  "centreAbsolute",
  "feedMode",
  "motion",
  "afterRapid",
  "a",
  "b",
  "c",
  "workOffset",
  "lengthOffset",
  "waiting",
  "held",
  "group",
  "early",
  "late",
  "width",
  "miscellaneous",
  "numbered",
  "gear",
  "section",
  "opening",
  "speed",
  "fresh",
  "initial",
  "returnCode",
  "key",
  "returnKey",
  // Local variables and parameters.
  "row",
  "end",
  "address",
  "atoms",
  "angle",
  "cells",
  "whole",
  "fraction",
  "rest",
  "limit",
  "place",
  "digits",
  "length",
  "line",
  "chunk",
  "first",
  "second",
  "word",
  "size",
  "larger",
  "longest",
  "clean",
  "axis",
  // The size of a chunk, and row kinds.
  "chunkSize",
  "rapidRow",
  "lineRow",
  "arcXyRow",
  "arcZxRow",
  "arcYzRow",
  "radiusXyRow",
  "radiusZxRow",
  "radiusYzRow",
  "holeRow",
  "asideRow",
  // Exports that are not functions.
  "traceKeys",
] as const;

/** Constants that hold the code of a character; a letter's name is the letter. */
export const characterNames = [
  "tab",
  "lineFeed",
  "carriageReturn",
  "space",
  "plus",
  "minus",
  "point",
  "zero",
  ..."ABCDEFGHIJKLMNOPQRSTUVWXYZ",
] as const;

/** Letters of words. */
type Letter =
  | "A"
  | "B"
  | "C"
  | "D"
  | "E"
  | "F"
  | "G"
  | "H"
  | "I"
  | "J"
  | "K"
  | "L"
  | "M"
  | "N"
  | "O"
  | "P"
  | "Q"
  | "R"
  | "S"
  | "T"
  | "U"
  | "V"
  | "W"
  | "X"
  | "Y"
  | "Z";

/** The name of a character's constant. */
export type CharacterName =
  "tab" | "lineFeed" | "carriageReturn" | "space" | "plus" | "minus" | "point" | "zero" | Letter;

/** A name of a variable, parameter or property in a generated emitter. */
export type Name = (typeof names)[number] | CharacterName;
