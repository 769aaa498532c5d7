import type { Archetype } from "./archetype.ts";
import type { Base, Settled, Value } from "./evidence.ts";
import { counted, settle } from "./evidence.ts";
import type { Sample } from "./sample.ts";
import type { Block } from "./walk.ts";

/** A code that the programs use. */
interface UsedCode {
  /** Letter and tenths: "G590". */
  readonly name: string;
  /** As the file has it: "G59", "M06". */
  readonly text: string;
  readonly blocks: readonly Block[];
}

/** What the programs' codes mean where the dialect to extend has no meaning for them. */
export interface CodeKeys {
  readonly settled: readonly Settled[];
  /** Codes that nothing gives a meaning, with blocks that have them. */
  readonly unknown: readonly UsedCode[];
}

/** Codes that the tables leave to the reader's own rules, and need no key. */
const alwaysKnown: ReadonlySet<string> = new Set(["G1000", "G920"]);

/** Finds a meaning for each code that the programs use, among those that the shipped dialects have. */
export function codeKeys(sample: Sample, { codes, base }: Archetype, all: readonly Archetype[]): CodeKeys {
  const foreign = usedCodes(sample).filter(({ name }) => !codes.has(name) && !alwaysKnown.has(name));
  const settled: Settled[] = [];
  const unknown: UsedCode[] = [];
  for (const used of foreign) {
    const found = meaningOf(used, all);
    if (found === undefined) unknown.push(used);
    else settled.push(...keysFor(used, found, base));
  }
  return { settled: [...settled, ...unknown.filter(({ name }) => name.endsWith("0")).map(opaque)], unknown };
}

function usedCodes({ blocks }: Sample): UsedCode[] {
  const used = new Map<string, Block[]>();
  for (const block of blocks)
    for (const [letter, values] of [
      ["G", block.g],
      ["M", block.m],
    ] as const)
      for (const value of new Set(values)) {
        const name = `${letter}${String(value)}`;
        const known = used.get(name);
        if (known) known.push(block);
        else used.set(name, [block]);
      }
  return [...used].map(([name, of]) => ({ name, text: textOf(name), blocks: of }));
}

/** "G590" -> "G59", "M60" -> "M06", "G591" -> "G59.1" */
function textOf(name: string): string {
  const tenths = Number(name.slice(1));
  const whole = String(Math.floor(tenths / 10)).padStart(2, "0");
  return `${name[0]}${whole}${tenths % 10 === 0 ? "" : `.${String(tenths % 10)}`}`;
}

/** A key that a shipped dialect has the code at, and that dialect. */
interface Meaning {
  readonly key: string;
  readonly from: Archetype;
}

function meaningOf({ name, blocks }: UsedCode, all: readonly Archetype[]): Meaning | undefined {
  const found = all.flatMap((from): Meaning[] => {
    const key = from.codes.get(name);
    return key === undefined ? [] : [{ key, from }];
  });
  const keys = new Set(found.map(({ key }) => key));
  if (keys.size <= 1) return found[0];
  // One code with two meanings in the tables (G74): a fixed cycle has a retract level.
  const isCycle = blocks.some(({ words }) => words.has("R"));
  return found.find(({ key }) => key.startsWith("cycles.") === isCycle);
}

/** The keys that give a code its meaning, and those that have to stand beside them. */
function keysFor(used: UsedCode, { key, from }: Meaning, base: Base): Settled[] {
  const { text, blocks } = used;
  const seen = `${text} on ${counted(blocks, blocks.length, "blocks")}; its meaning is that in ${from.name}`;
  const take = (path: string, evidence: string): Settled[] => {
    const value = from.base(path);
    return value === undefined ? [] : [settle(path, value, evidence, { limit: true })];
  };
  if (key.startsWith("work-offset."))
    return [settle("work-offset", from.base("work-offset") ?? "none", seen)];
  if (key.startsWith("idioms.")) return take(key, seen);
  const [group] = key.split(".");
  const beside = base(group) === "none" || base(group) === undefined ? groupKeys(group, key, from) : [];
  const more = companions[key]?.flatMap((path) => (base(path) === undefined || base(path) === "none" ? take(path, `goes with ${text} in ${from.name}`) : [])) ?? []; // prettier-ignore
  return [settle(key, text, seen), ...beside, ...more];
}

/** What must be stated beside a key, where it is not. */
const companions: Readonly<Record<string, readonly string[]>> = {
  "feed.per-revolution": ["numbers.feed-per-revolution"],
  "feed.inverse-time": ["numbers.inverse-time", "feed.inverse-time-unit"],
  "units.mm": ["units.inch"],
  "units.inch": ["units.mm"],
  "length-offset.on": ["length-offset.off"],
  "cycles.return.initial": ["cycles.return.retract"],
  "cycles.return.retract": ["cycles.return.initial"],
};

/** The other keys of a group that the dialect to extend does not have at all. */
function groupKeys(group: string, key: string, from: Archetype): Settled[] {
  const value = from.base(group);
  if (typeof value !== "object" || Array.isArray(value)) return [];
  return Object.entries(value as Readonly<Record<string, Value>>)
    .filter(([name]) => !key.startsWith(`${group}.${name}`))
    .map(([name, one]) =>
      settle(`${group}.${name}`, one, `goes with it in ${from.name}; asked`, { limit: true }),
    );
}

/** A code that nobody knows: read, never written. */
function opaque({ text, blocks }: UsedCode): Settled {
  const value = { does: `not known; seen on ${String(blocks.length)} blocks`, position: "unchanged", spindle: "unchanged", coolant: "unchanged", "length-offset": "unchanged" }; // prettier-ignore
  return settle(
    `codes.${text}`,
    value,
    `e.g. line ${String(blocks[0].line.number)}; what it does is asked: read, and never written`,
  );
}
