import type { DifferencePlace } from "#report";
import type { SaidBlock } from "./blocks.ts";
import type { TopicName } from "./topics.ts";

/** One difference at one place. */
export interface Item {
  readonly level: "meaning" | "form";
  readonly topic: TopicName;
  /** What differs about it, in words: "order of words". */
  readonly aspect: string;
  /** Differing keys that account for it. */
  readonly keys: readonly string[];
  /** Byte offset in the job, or the place of the start. */
  readonly place: number;
  readonly example: { readonly first: string; readonly second: string };
  readonly first: readonly SaidBlock[];
  readonly second: readonly SaidBlock[];
  readonly said?: DifferencePlace["said"];
}
