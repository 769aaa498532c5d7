import { axisBit } from "#base";
import type { CycleKind } from "#base";
import type { Code } from "#dialect";
import { and, both, cases, get, not, or, orElse, same, set, str, when } from "../builders.ts";
import type { Case, Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { hasWord } from "../code-text.ts";
import { canBeIncremental, marksTaps } from "../context.ts";
import { faultOn } from "../fault.ts";
import { codeWithSeparator, keyOf, settled } from "../words.ts";

/** Cycles, and which numbers each has beside its levels (NISTIR 6556 3.5.16). */
const cycleKinds = {
  drill: [],
  dwell: ["dwell"],
  peck: ["peck"],
  "chip-break": ["peck"],
  tap: [],
  "tap-left": [],
  ream: [],
  "bore-dwell": ["dwell"],
  "bore-stop": ["dwell"],
  "bore-manual": ["dwell"],
} as const satisfies Record<CycleKind, readonly ("peck" | "dwell")[]>;

/** A fixed cycle is defined: nothing is written before its first hole. */
export function writeCycleDefinition(context: Context): Statement[] {
  const { cycles } = context.format;
  if (cycles === undefined) return [faultOn("cycles")];
  const fields = (["depth", "retract", "peck", "dwell"] as const).map((name) =>
    set(get("state", name), get("step", name)),
  );
  return [
    settled(),
    ...initialLevel(context),
    set(get("state", "pecks"), false),
    set(get("state", "dwells"), false),
    ...(marksTaps(context) ? [set(get("state", "taps"), false)] : []),
    cases(
      get("step", "cycle"),
      (Object.keys(cycleKinds) as CycleKind[]).map((kind) => cycleCase(context, kind)),
      [faultOn("cycles")],
    ),
    cases(
      get("step", "between"),
      [returnTo(context, "initial"), returnTo(context, "retract")],
      [faultOn("cycles.return")],
    ),
    ...fields,
    ...(cycles.backOffWord === null ? [] : [set(get("state", "backOff"), orElse(get("step", "backOff"), 0))]),
    set(get("state", "fresh"), true),
  ];
}

function cycleCase(context: Context, kind: CycleKind): Case {
  const numbers: readonly ("peck" | "dwell")[] = cycleKinds[kind];
  const found = context.format.codes.cycles[kind];
  const taps = kind === "tap" || kind === "tap-left";
  const stated = hasWord(found) ? numbers.map((number) => set(get("state", `${number}s`), true)) : [];
  if (taps && marksTaps(context)) stated.push(set(get("state", "taps"), true));
  return { of: str(kind), statements: [...stated, ...code(context, "code", `cycles.${kind}`, found)] };
}

/** Keeps a word for the holes, with the index of its key in the traced emitter. */
function code(
  context: Context,
  name: "code" | "returnCode",
  key: string,
  found: Code | null | undefined,
): Statement[] {
  if (!hasWord(found)) return [faultOn(key)];
  const index = set(get("state", name === "code" ? "key" : "returnKey"), keyOf(context, key));
  return [
    set(get("state", name), str(codeWithSeparator(context, found))),
    ...(context.traced ? [index] : []),
  ];
}

/**
 * The word of the level between holes, where the definition states it; a fragment states it in any case. A dialect without
 * the word has the level that its cycles take by themselves.
 */
function returnTo(context: Context, level: "initial" | "retract"): Case {
  const { codes, cycles } = context.format;
  const key = `cycles.return.${level}`;
  const found = codes.cycleReturn[level];
  const isStated = or(get("step", "levelStated"), ...(hasWord(found) ? [get("state", "fragment")] : []));
  const isImplied = hasWord(found) || cycles?.levelWithout === level;
  const unsaid = isImplied ? set(get("state", "returnCode"), str("")) : faultOn(key);
  return { of: str(level), statements: [when(isStated, code(context, "returnCode", key, found), [unsaid])] };
}

/** The level before the first hole of a series, from which relative cycles count. A cycle behind another goes on with the series. */
function initialLevel(context: Context): Statement[] {
  const { cycles } = context.format;
  const take = set(get("state", "initial"), get("state", "z"));
  const isUnknown = not(both(get("state", "known"), axisBit.z));
  const counts =
    context.format.cycles?.levels === "relative" ? isUnknown : and(get("state", "incremental"), isUnknown);
  return [
    ...(context.format.cycles?.levels === "relative" || canBeIncremental(context.format)
      ? [when(counts, [faultOn("cycles.levels")])]
      : []),
    cycles?.initialLevel === "current" ? take : when(same(get("state", "code"), str("")), [take]),
  ];
}
