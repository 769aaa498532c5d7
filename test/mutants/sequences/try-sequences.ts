import { expect } from "vitest";
import { read } from "#read";
import type { ReadyDialect } from "../../../core/index.ts";
import { gridsOf } from "./alter.ts";
import type { Made } from "./judge.ts";
import { emit, guardAlone, judge, sequenceOf } from "./judge.ts";
import { meaningOf, saidAgain, unwritten } from "./meaning.ts";
import type { Harmless } from "./meaning.ts";
import type { Change } from "./mutate.ts";
import { changes } from "./mutate.ts";
import { shuffled } from "./shuffle.ts";
import { batchOf, rowsOf } from "./rows.ts";

/** What became of a changed sequence on its way through emitter, reader, guard and comparison. */
export type Fate =
  | "no word for it" // the emitter refuses
  | "reader" // the text cannot be read with one meaning
  | "guard" // what was read breaks a rule of safety
  | "comparison alone" // only the comparison with the job shows it
  | "same text" // the text is the right one, byte for byte
  | "said again"; // another text with the same rows

/** Counts of a run. */
export interface Tally {
  readonly fates: Map<Fate, number>;
  /** Reasons of what need not be found, with how many there were. */
  readonly reasons: Map<string, number>;
  /** Changes by their labels: how many, and how many of them the guard alone finds in the sequence. */
  readonly guard: Map<string, { tried: number; found: number }>;
  /** Rules by which the guard alone finds them. */
  readonly rules: Map<string, number>;
}

/** Starts counting. */
export function createTally(): Tally {
  return { fates: new Map(), reasons: new Map(), guard: new Map(), rules: new Map() };
}

const add = <Key>(counts: Map<Key, number>, key: Key): void =>
  void counts.set(key, (counts.get(key) ?? 0) + 1);

/**
 * Tries changes of the sequence of a job, one at a time; what is written of each must not be proved for the job.
 *
 * @param most how many to try; every kind of change has its turn before any has its second
 * @returns what was missed, in words; undefined where the dialect refuses the job
 */
export function trySequences(
  job: string,
  ready: ReadyDialect,
  most: number,
  seed: number,
  tally: Tally,
): string[] | undefined {
  const made = sequenceOf(job, ready);
  if (made === undefined) return undefined;
  const right = emit(made, made.batch);
  if ("refused" in right) throw new Error(right.refused);
  // What is not proved unchanged would seem to find everything.
  expect(judge(made, right.text)).toEqual({ proved: true, read: [], guard: [], compare: [] });
  expect(guardAlone(made, made.batch)).toEqual([]);
  const meaning = readMeaning(made, right.text);
  expect(meaning).toBe(meaningOf(made.rows));

  const missed: string[] = [];
  const all = [...changes(made.rows, gridsOf(made.dialect.capabilities, made.units))];
  for (const change of byTurns(shuffled(all, seed), most, tally)) {
    const batch = batchOf(change.rows());
    countGuard(tally, change.label, guardAlone(made, batch));
    const written = emit(made, batch);
    if ("refused" in written) {
      expect(written.refused, change.label).toContain("The dialect has no word for this step");
      add(tally.fates, "no word for it");
    } else {
      const miss = judgeText({ made, change, tally }, written.text, right.text, meaning);
      if (miss !== undefined) missed.push(`row ${String(change.at)}, ${change.label}: ${miss}`);
    }
  }
  return missed;
}

interface Trial {
  readonly made: Made;
  readonly change: Change;
  readonly tally: Tally;
}

/** What is wrong with the fate of a text, in words; undefined where it is found, or need not be. */
function judgeText(trial: Trial, text: Uint8Array, right: Uint8Array, meaning: string): string | undefined {
  const { made, change, tally } = trial;
  if (Buffer.from(text).equals(right)) return excuse(tally, "same text", change.label, unwritten);
  const verdict = judge(made, text);
  if (verdict.proved) {
    if (readMeaning(made, text) !== meaning) return "proved, and means something else";
    return excuse(tally, "said again", change.label, saidAgain);
  }
  const fate = verdict.read.length > 0 ? "reader" : verdict.guard.length > 0 ? "guard" : "comparison alone";
  add(tally.fates, fate);
  return undefined;
}

function excuse(tally: Tally, fate: Fate, label: string, reasons: readonly Harmless[]): string | undefined {
  const found = reasons.find(({ labels }) => labels.test(label));
  if (found === undefined) return `${fate}, and no reason is known why that is harmless`;
  add(tally.fates, fate);
  add(tally.reasons, `${fate}: ${found.reason}`);
  return undefined;
}

function countGuard(tally: Tally, label: string, rules: readonly string[]): void {
  const counts = tally.guard.get(label) ?? { tried: 0, found: 0 };
  tally.guard.set(label, counts);
  counts.tried++;
  if (rules.length > 0) counts.found++;
  for (const rule of rules) add(tally.rules, rule);
}

function readMeaning({ dialect, machine, units }: Made, text: Uint8Array): string {
  return meaningOf(rowsOf(read([text], dialect.format, machine, { units }, () => undefined)));
}

/** So many changes, by turns of their labels, those first that were tried least often so far. */
function byTurns(all: readonly Change[], most: number, tally: Tally): Change[] {
  const byLabel = new Map<string, Change[]>();
  for (const change of all) {
    const list = byLabel.get(change.label);
    if (list) list.push(change);
    else byLabel.set(change.label, [change]);
  }
  const tried = (label: string): number => tally.guard.get(label)?.tried ?? 0;
  const lists = [...byLabel].sort(([one], [other]) => tried(one) - tried(other)).map(([, list]) => list);
  const chosen: Change[] = [];
  for (let turn = 0; chosen.length < Math.min(most, all.length); turn++)
    for (const list of lists) if (turn < list.length && chosen.length < most) chosen.push(list[turn]);
  return chosen;
}
