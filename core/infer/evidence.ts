import type { Line } from "./tokens.ts";

/** A value of a dialect file. */
export type Value = string | number | readonly Value[] | { readonly [key: string]: Value };

/** Values of the dialect that the file is to extend, by key path; a group that is none gives none for each key in it. */
export type Base = (key: string) => Value | undefined;

/** A key that the programs show. */
export interface Settled {
  readonly kind: "settled";
  /** Key path, such as "modal.motion". */
  readonly key: string;
  /** The value, or how it comes from what is inherited. */
  readonly value: Value | ((base: Base) => Value);
  /** Whether an inherited value agrees with the programs; equality where it is left out. */
  readonly holds?: (inherited: Value | undefined, base: Base) => boolean;
  /** "on 412 of 412 line blocks, e.g. line 57" */
  readonly evidence: string;
  /** Shown from one side alone, such as the longest block: what is inherited holds, and is asked all the same. */
  readonly limit?: true;
  /** Stated beside another key alone: the key needs it where the file has to state that one. */
  readonly only?: (base: Base) => boolean;
}

/** What the programs say in two ways. */
export interface Contradiction {
  readonly kind: "contradiction";
  readonly key: string;
  /** "G01 on 40 blocks, left out on 12" */
  readonly message: string;
  /** Where the rarer way stands. */
  readonly lines: readonly Line[];
}

/** What one rule found. What it says nothing of is asked. */
export type Observed = Settled | Contradiction;

/** One occurrence that speaks for a value. */
export interface Ballot<T extends Value = Value> {
  readonly value: T;
  readonly line: Line;
}

/** From this share of the occurrences on, the rest is taken for exceptions. */
const enough = 0.95;

/**
 * Settles a key by its occurrences: all alike, or all but a few, which are told; where they are divided nothing is settled.
 *
 * @param of what is counted: "line blocks"
 */
export function vote(key: string, ballots: readonly Ballot[], of: string, say = textOf): Observed[] {
  const groups = grouped(ballots);
  if (groups.length === 0) return [];
  const [most, ...others] = groups;
  const total = ballots.length;
  const lines = others.flatMap((group) => group.map(({ line }) => line));
  const counts = groups.map((group) => `${say(group[0].value)} on ${String(group.length)}`).join(", ");
  const doubt: Contradiction[] =
    others.length === 0
      ? []
      : [{ kind: "contradiction", key, message: `of ${String(total)} ${of}: ${counts}`, lines }];
  if (most.length < enough * total) return doubt;
  return [{ kind: "settled", key, value: most[0].value, evidence: counted(most, total, of) }, ...doubt];
}

/** "412 of 412 line blocks, e.g. line 57" */
export function counted(group: readonly { readonly line: Line }[], total: number, of: string): string {
  const example = group[Math.floor(group.length / 2)].line;
  return `${String(group.length)} of ${String(total)} ${of}, e.g. line ${String(example.number)}`;
}

/** Values with the most occurrences first. */
function grouped(ballots: readonly Ballot[]): Ballot[][] {
  const groups = new Map<string, Ballot[]>();
  for (const ballot of ballots) {
    const name = JSON.stringify(ballot.value);
    const group = groups.get(name);
    if (group) group.push(ballot);
    else groups.set(name, [ballot]);
  }
  return [...groups.values()].sort((a, b) => b.length - a.length);
}

/** A key settled by one observation. */
export function settle(
  key: string,
  value: Settled["value"],
  evidence: string,
  more: Pick<Settled, "holds" | "only" | "limit"> = {},
): Settled {
  return { kind: "settled", key, value, evidence, ...more };
}

/** "line 12" */
export function lineOf({ number }: Line): string {
  return `line ${String(number)}`;
}

/** The largest of many numbers, or a floor below them; a list of any length. */
export function largestOf(numbers: readonly number[], floor = -Infinity): number {
  return numbers.reduce((most, one) => (one > most ? one : most), floor);
}

/** A value as text: a word or a number as it is, a group as JSON. */
export function textOf(value: Value | undefined): string {
  return typeof value === "string" ? value : (JSON.stringify(value) ?? "");
}
