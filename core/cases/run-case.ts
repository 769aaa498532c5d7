import type { Finding, Report } from "#base";
import type { Dialect } from "#dialect";
import type { Emitter } from "#emit";
import { prove } from "#prove";
import { read } from "#read";
import type { Case } from "./case.ts";
import type { BlockPair } from "./difference.ts";
import { compareBlocks } from "./difference.ts";
import { readSteps } from "./notation.ts";
import type { Sequence } from "./sequence.ts";
import { startKnown } from "./sequence.ts";

/** What a case is run with. */
export interface Means {
  readonly dialect: Dialect;
  /** Compiled from the dialect's format. */
  readonly emitter: Emitter;
}

/** What came of a case. */
export interface CaseResult {
  readonly name: string;
  readonly passed: boolean;
  /** Whether what is written means the steps that were given. */
  readonly meant: boolean;
  /** Blocks as the dialect writes them; a tab is shown as a blank. Undefined where it has no word for a step. */
  readonly written: readonly string[] | undefined;
  /** Expected against written, block by block; empty where nothing was written. */
  readonly difference: readonly BlockPair[];
}

/**
 * Runs a case: its steps are written by the dialect's emitter, compared with the blocks that are expected, and read back by
 * the dialect's reader, which must find the steps that were given.
 *
 * @param file the name of the file of the case, for findings
 * @param report takes dialect/case where the case is not valid, block/case where other blocks are written, and proof/case
 * where what is written means something else
 * @returns undefined where the case is not valid
 */
export function runCase(one: Case, file: string, means: Means, report: Report): CaseResult | undefined {
  const { dialect, emitter } = means;
  const sequence = readSteps(one, file, dialect, report);
  if (sequence === undefined) return undefined;
  const fail = (rule: string, message: string, offset: number, more: Partial<Finding> = {}): void =>
    report({ rule, severity: "error", message, place: { source: "dialect", file, offset }, ...more });
  const text = written(sequence, dialect, emitter);
  if ("refused" in text) {
    const { refused, key } = text;
    fail("block/case", `\`${one.name}\`: ${refused}`, one.offset, key === undefined ? {} : { key });
    return { name: one.name, passed: false, meant: false, written: undefined, difference: [] };
  }
  const blocks = text.blocks;
  const difference = compareBlocks(
    one.expect.map((expected) => expected.text),
    blocks,
  );
  const equal = difference.every(({ pieces }) => pieces.length === 0);
  if (!equal)
    fail("block/case", `\`${one.name}\`: other blocks are written than are expected.`, one.expectOffset);
  const meant = meaningFaults(text.bytes, sequence, dialect);
  for (const message of meant) fail("proof/case", `\`${one.name}\`: ${message}`, one.offset);
  return {
    name: one.name,
    passed: equal && meant.length === 0,
    meant: meant.length === 0,
    written: blocks,
    difference,
  };
}

interface Written {
  readonly bytes: Uint8Array;
  readonly blocks: readonly string[];
}

/** Why nothing was written, and the key behind it. */
interface Refused {
  readonly refused: string;
  readonly key: string | undefined;
}

function written(sequence: Sequence, { format }: Dialect, emitter: Emitter): Written | Refused {
  const { batch, units, whole } = sequence;
  const start = {
    known: startKnown,
    x: 0,
    y: 0,
    z: 0,
    a: 0,
    b: 0,
    c: 0,
    distance: format.distance,
    feedMode: "per-minute",
  } as const;
  const options = { units, header: [], ...(whole ? {} : { start }) };
  const chunks: Uint8Array[] = [];
  try {
    for (const chunk of emitter.emitUnproved([batch], options)) chunks.push(chunk.slice());
  } catch (error) {
    // The emitter throws where lowering and sequencing would have refused a job.
    const said = error instanceof Error ? error.message : String(error);
    const key = /^The dialect has no word for this step \((.+?)\);/.exec(said)?.[1];
    return { refused: key === undefined ? said : "the dialect has no word for one of its steps.", key };
  }
  const text = new TextDecoder().decode(Uint8Array.from(chunks.flatMap((chunk) => [...chunk])));
  const lines = text.split(format.lineEnd);
  while (lines.at(-1) === "") lines.pop();
  const blocks = whole ? lines : withoutFrame(lines);
  const bytes = whole ? text : blocks.map((block) => block + format.lineEnd).join("");
  return {
    bytes: new TextEncoder().encode(bytes),
    blocks: blocks.map((block) => block.replaceAll("\t", " ")),
  };
}

/** Blocks of the middle of a program: without blank lines at the head, and the marks at both ends. */
function withoutFrame(lines: readonly string[]): string[] {
  const first = lines.findIndex((line) => line !== "" && line !== "%");
  const last = lines.at(-1) === "%" ? lines.length - 1 : lines.length;
  return first < 0 ? [] : lines.slice(first, last);
}

/** What the text says otherwise than the steps that were given, in words. */
function meaningFaults(bytes: Uint8Array, sequence: Sequence, { format, machine }: Dialect): string[] {
  const faults: string[] = [];
  const note = ({ severity, message }: Finding): void => {
    if (severity === "error") faults.push(`read back: ${message}`);
  };
  const { whole, units } = sequence;
  const places = [0, 0, 0, 0, 0, 0];
  const start = { known: startKnown, places, distance: format.distance, feedMode: "per-minute" } as const;
  const options = whole ? { units } : { units, fragment: true, start };
  prove({
    expected: [sequence.batch],
    actual: read([bytes], format, machine, options, note),
    report: note,
    errors: () => faults.length,
    text: undefined,
    facts: () => "",
    locate: ({ offset }) => `step ${String(offset + 1)} of the case`,
  });
  return faults;
}
