import type { Slot } from "./modal-groups.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";

/** Coolant that is switched on. */
export function readCoolantOn(reader: Reader): void {
  for (const { meaning } of reader.coolants)
    if (meaning.kind === "coolant") pushStep(reader, { kind: "coolant", medium: meaning.medium, on: true });
}

/** Coolant off before the motion of its block, under a dialect that stops first (NISTIR 6556 Table 8). */
export function readEarlyCoolantOff(reader: Reader): void {
  if (reader.format.stopsAct === "before-motion") readCoolantOff(reader);
}

/** Coolant off behind the motion of its block (the ISO order, from memory). */
export function readLateCoolantOff(reader: Reader): void {
  if (reader.format.stopsAct === "after-motion") readCoolantOff(reader);
}

/** One coolant word, on or off, for a dialect in which each acts where it stands. */
export function readOneCoolant(reader: Reader, { meaning }: Slot): void {
  if (meaning.kind === "coolant" || meaning.kind === "coolant-off")
    pushStep(reader, { kind: "coolant", medium: meaning.medium, on: meaning.kind === "coolant" });
}

function readCoolantOff(reader: Reader): void {
  for (const { meaning } of reader.coolants)
    if (meaning.kind === "coolant-off")
      pushStep(reader, { kind: "coolant", medium: meaning.medium, on: false });
}
