import type { Base, Observed, Settled, Value } from "./evidence.ts";

/** A key that the file has to state, since what it would inherit is another. */
export interface StatedKey {
  readonly key: string;
  readonly value: Value;
  readonly evidence: string;
  /** Stated, and asked all the same: a limit that is shown from one side, or what goes with another key. */
  readonly asked?: true;
}

/** What is settled, beside what a dialect has: what must be stated, and what is inherited rightly. */
export interface Divided {
  readonly stated: readonly StatedKey[];
  readonly inherited: readonly StatedKey[];
}

/** Single numbers of a dialect file that can also be a mapping. */
const numberGroups = ["angle", "inverse-time", "speed", "dwell", "cycle-dwell", "timeout"];

/** Divides what is settled by whether the dialect to extend says the same. The first word on a key holds. */
export function divide(observed: readonly Observed[], base: Base): Divided {
  const stated = new Map<string, StatedKey>();
  const inherited = new Map<string, StatedKey>();
  for (const one of observed) {
    if (one.kind !== "settled" || stated.has(one.key) || inherited.has(one.key)) continue;
    if (one.only && !one.only(base)) continue;
    const value = typeof one.value === "function" ? one.value(base) : one.value;
    const entry: StatedKey = {
      key: one.key,
      value,
      evidence: one.evidence,
      ...(one.limit ? { asked: true } : {}),
    };
    if (!agrees(one, value, base)) stated.set(one.key, entry);
    else if (one.limit !== true) inherited.set(one.key, entry);
  }
  return { stated: asMappings([...stated.values()], base), inherited: [...inherited.values()] };
}

function agrees({ key, holds }: Settled, value: Value, base: Base): boolean {
  const own = base(key);
  return holds ? holds(own, base) : sameValue(own, value);
}

/** "G0" and "G00" are one code; mappings and lists are compared item by item. */
export function sameValue(one: Value | undefined, other: Value | undefined): boolean {
  return canonical(one) === canonical(other);
}

function canonical(value: Value | undefined): string {
  if (typeof value === "string" && /^[GM]\d+(\.\d)?$/.test(value))
    return `${value[0]}${String(Number(value.slice(1)))}`;
  if (Array.isArray(value)) return `[${value.map((one: Value) => canonical(one)).join()}]`;
  if (typeof value === "object")
    return `{${Object.entries(value).map(([key, one]) => `${key}:${canonical(one)}`).sort().join()}}`; // prettier-ignore
  return String(value);
}

/** A number of decimals with further keys below it becomes a mapping. */
function asMappings(stated: readonly StatedKey[], base: Base): StatedKey[] {
  return numberGroups.reduce<readonly StatedKey[]>((keys, group) => {
    const path = `numbers.${group}`;
    const below = keys.filter(({ key }) => key.startsWith(`${path}.`));
    if (below.length === 0) return keys;
    const own = keys.find(({ key }) => key === path);
    const inherited = base(path);
    const decimals = own?.value ?? (typeof inherited === "object" ? (inherited as { decimals?: Value }).decimals : inherited); // prettier-ignore
    const entries = below.map(({ key, value }) => [key.slice(path.length + 1), value] as const);
    const value = { ...(decimals === undefined ? {} : { decimals }), ...Object.fromEntries(entries) };
    const evidence = [own, ...below].flatMap((one) => (one ? [one.evidence] : [])).join("; ");
    return [...keys.filter((key) => key !== own && !below.includes(key)), { key: path, value, evidence }];
  }, stated) as StatedKey[];
}
