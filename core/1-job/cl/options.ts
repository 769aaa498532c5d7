import { nearest } from "#base";

/**
 * Where the standards leave open what a word of cutter location source means, the user says which: `--cl KEY=VALUE`. Each key
 * has its values, the default first; "refuse" means that without a choice the source is refused where it matters.
 */
export const clChoices = {
  units: { values: ["refuse", "mm", "inch"], about: "unit of a source without UNITS" },
  rapid: { values: ["one-shot", "modal"], about: "RAPID holds for one motion, or until FEDRAT" },
  circle: { values: ["right-handed", "left-handed"], about: "sense of CIRCLE about its axis" },
  "full-circle": { values: ["refuse", "turn", "none"], about: "CIRCLE that ends where it starts" },
  depth: { values: ["distance", "signed", "z"], about: "FEDTO: distance down, signed increment, or Z" },
  cycle: {
    values: ["keywords", "positional"],
    about: "CYCLE/kind, depth, feed, unit, clearance by position",
  },
  point: { values: ["tip", "centre"], about: "the point of the tool that GOTO leads" },
  feed: { values: ["per-minute", "per-revolution"], about: "FEDRAT without a unit" },
  home: { values: ["clearance", "from"], about: "GOHOME: Z to clearance, or there and to FROM" },
  origin: { values: ["refuse", "ignore", "add", "subtract"], about: "ORIGIN that is not 0,0,0" },
  trans: { values: ["refuse", "add", "subtract"], about: "TRANS that is not 0,0,0" },
  literal: { values: ["text", "continued"], about: "$ at the end of PPRINT and its like" },
  columns: { values: ["by-itself", "72", "free"], about: "sequence field in columns 73 to 80" },
  fourth: { values: ["feed", "refuse"], about: "fourth number of GOTO" },
  unknown: { values: ["refuse", "warn"], about: "unknown words, INSERT, AUXFUN, PREFUN" },
} as const;

type Choices = typeof clChoices;
type ChoiceKey = keyof Choices;

/** What the user says of a cutter location source; a choice that is not stated takes its default. */
export type ClOptions = { readonly [Key in ChoiceKey]: Choices[Key]["values"][number] } & {
  /** Z of safe travel as the user wrote it, in the unit of the source; undefined: from the source. */
  readonly clearance: string | undefined;
};

/** Every choice by default. */
export const clDefaults: ClOptions = {
  ...(Object.fromEntries(
    Object.entries(clChoices).map(([key, { values }]) => [key, values[0]]),
  ) as unknown as ClOptions),
  clearance: undefined,
};

/**
 * Reads choices as a command line has them.
 *
 * @param texts each one or more "key=value" with commas between: ["rapid=modal,units=mm"]
 * @returns the choices, or what is wrong in one sentence
 */
export function parseClOptions(texts: readonly string[]): ClOptions | string {
  const stated = new Map<string, string>();
  for (const pair of texts.flatMap((text) => text.split(","))) {
    const [, key, value] = /^\s*([\w-]+)\s*=\s*(\S+)\s*$/.exec(pair) ?? [];
    if (key === undefined || value === undefined)
      return `--cl takes key=value with commas between, such as rapid=modal, and not "${pair}".`;
    if (stated.has(key) && stated.get(key) !== value) return `--cl states \`${key}\` twice.`;
    const wrong = wrongChoice(key, value);
    if (wrong !== undefined) return wrong;
    stated.set(key, value);
  }
  return { ...clDefaults, ...(Object.fromEntries(stated) as Partial<ClOptions>) };
}

function wrongChoice(key: string, value: string): string | undefined {
  if (key === "clearance")
    return /^[-+]?\d*\.?\d+$/.test(value) ? undefined : `--cl clearance is a number, and not ${value}.`;
  const keys = [...Object.keys(clChoices), "clearance"];
  if (!Object.hasOwn(clChoices, key)) {
    const meant = nearest(key, keys);
    return `--cl has no key \`${key}\`${meant === undefined ? `: it has ${keys.join(", ")}.` : `; did you mean \`${meant}\`?`}`;
  }
  const values: readonly string[] = clChoices[key as ChoiceKey].values;
  return values.includes(value) ? undefined : `--cl ${key} is ${values.join(" or ")}, and not ${value}.`;
}
