/** Which keys decide what shares a block, and in which order its words stand. */
import type { StepKind } from "#base";
import type { RowMatch } from "./cells.ts";
import type { Causes } from "./keys.ts";
import { topicOfStep } from "./topics.ts";
import type { TopicName } from "./topics.ts";
import type { RoleWord } from "./words.ts";

/** Keys that put actions of a kind into one block or into blocks of their own. */
const cuts = {
  speed: ["spindle.blocks"],
  spindle: ["spindle.blocks"],
  swap: ["tools.blocks"],
  "select-tool": ["tools.blocks"],
  coolant: ["coolant.blocks"],
  dwell: ["dwell.blocks"],
  "length-offset": ["machine.length-offset.form"],
  cycle: ["cycles.definition"],
  units: ["units.stated"],
} as const satisfies Partial<Record<TopicName, readonly string[]>>;

/** Keys of how much goes into any block, from the most telling on. */
const limits = [
  ["blocks.modes"],
  ["blocks.g-words", "blocks.m-words", "blocks.most-words", "blocks.longest"],
];

/** Why two steps stand in one block here and in two there. */
export function cutKeys(
  one: RowMatch,
  next: RowMatch,
  _together: boolean,
  causes: Causes,
): { topic: TopicName; keys: readonly string[] } {
  const names = [one, next].map(({ first }) => nameOf(first!.row.record.step?.kind));
  const own = causes.among(names.flatMap((name) => (name in cuts ? cuts[name as keyof typeof cuts] : [])));
  const topic = names[1];
  if (own.length > 0) return { topic, keys: own };
  for (const tier of limits) {
    const keys = causes.among(tier);
    if (keys.length > 0) return { topic: "modes", keys };
  }
  return { topic, keys: [] };
}

function nameOf(kind: StepKind | undefined): TopicName {
  return kind === undefined ? "motion" : topicOfStep[kind];
}

/** Why two words stand in another order. */
export function orderKeys(one: RoleWord, next: RoleWord, causes: Causes): readonly string[] {
  const subjects = [one.subject, next.subject];
  const isSpindle = subjects.every((subject) => subject === "speed" || subject === "spindle");
  if (isSpindle && causes.differ("spindle.order")) return causes.among(["spindle.order"]);
  const isTool = subjects.every((subject) => subject === "select-tool" || subject === "swap");
  if (isTool && causes.differ("tools.order")) return causes.among(["tools.order"]);
  return causes.among(["blocks.order"]);
}
