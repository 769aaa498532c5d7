import type { Archetype } from "./archetype.ts";
import type { Base, Value } from "./evidence.ts";
import { textOf } from "./evidence.ts";
import type { StatedKey } from "./stated.ts";

/** States that every program relies on, and those of a rack. */
const always = ["confirm.at-speed", "confirm.stopped"];
const atRack = ["confirm.released", "confirm.clamped", "confirm.air"];

/** The confirmations that a dialect needs; no program shows that one is safe. */
export function confirmationsOf(base: Base): string[] {
  return base("machine.swap") === "rack" ? [...always, ...atRack] : always;
}

/**
 * What the file states of confirmations: where the dialect to extend trusts the controller or the operator, which nobody has
 * said of this machine, the longest dwell that any shipped dialect takes stands in its place.
 */
export function carefulConfirmations({ base }: Archetype, all: readonly Archetype[]): StatedKey[] {
  const stated = always.flatMap((key): StatedKey[] => {
    const own = base(key);
    if (way(own, "wait") !== undefined || way(own, "dwell") !== undefined) return [];
    const evidence = "not shown by a program, and not taken from the dialect that is extended: asked";
    return [{ key, value: { dwell: longestDwell(key, all) }, evidence }];
  });
  // A time cannot be waited for in turns of the spindle; of the other units this one makes the largest number.
  const isRevolutions = base("dwell.unit") === "rev" && stated.length > 0;
  const unit = { key: "dwell.unit", value: "ms", evidence: "revolutions confirm nothing; asked" };
  return isRevolutions ? [...stated, unit] : stated;
}

function way(value: Value | undefined, name: string): Value | undefined {
  if (typeof value !== "object" || Array.isArray(value)) return undefined;
  return (value as Readonly<Record<string, Value>>)[name];
}

function longestDwell(key: string, all: readonly Archetype[]): string {
  const seconds = all.flatMap(({ base }) => {
    const [, digits] = /^(\d+(?:\.\d+)?) s$/.exec(textOf(way(base(key), "dwell"))) ?? [];
    return digits === undefined ? [] : [Number(digits)];
  });
  return `${String(Math.max(0, ...seconds))} s`;
}
