import type { Format, NumberFormat } from "#dialect";
import type { Printer } from "./calls.ts";
import { hasWord } from "./code-text.ts";

/** What the generator carries along: the dialect's format, and what the generated code turns out to need. */
export interface Context {
  readonly format: Format;
  /** Whether each word reports the dialect keys behind it. */
  readonly traced: boolean;
  /** Dialect keys that words report, in the order of their indices. */
  readonly keys: string[];
  /** Number printers in use, by their name. */
  readonly printers: Map<Printer, NumberFormat>;
}

/** A context with nothing generated yet. */
export function createContext(format: Format, traced: boolean): Context {
  return { format, traced, keys: [], printers: new Map() };
}

/** The index under which a word reports a dialect key. */
export function keyIndex(context: Context, key: string): number {
  const found = context.keys.indexOf(key);
  return found >= 0 ? found : context.keys.push(key) - 1;
}

/** Whether a program may have incremental words: by the dialect's own choice, or since it has a word for them. */
export function canBeIncremental({ distance, codes }: Format): boolean {
  return distance === "incremental" || hasWord(codes.modes.distance.incremental);
}

/** Whether a tapping cycle is written in another way than the rest: with its lead, or behind a synchronising code. */
export function marksTaps({ format }: Context): boolean {
  return format.cycles?.tapLead === true || hasWord(format.codes.tapSynchronised);
}
