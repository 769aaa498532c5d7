import { createHash } from "node:crypto";
import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import type { Batch, ByteSource } from "#base";
import { gather } from "#report";
import { createGuard, createQueue, prove as compare } from "#prove";
import { readJob, readMoves } from "#job";
import { lower } from "#lower";
import { read } from "#read";
import type { ReadyDialect } from "../../core/in-memory.ts";
import type { Undertaking } from "../../core/undertaking.ts";
import { guarded, undertake, watched } from "../../core/undertaking.ts";
import { median } from "./measure.ts";

/** What one stage costs of the whole, warm and in one process. */
export interface StageCost {
  readonly stage: string;
  /** Nanoseconds of CPU time a move. */
  readonly perMove: number;
  /** Share of the whole. */
  readonly share: number;
}

/** The flow of `core/compile.ts` cut off behind one of its stages. */
type Prefix = (input: Input) => void;

interface Input {
  readonly source: ByteSource;
  readonly ready: ReadyDialect;
}

const createDigest = () => {
  const hash = createHash("sha256");
  return { update: (chunk: Uint8Array) => void hash.update(chunk), hex: () => hash.digest("hex") };
};

function begin({ source, ready }: Input): Undertaking & { findings: ReturnType<typeof gather> } {
  const findings = gather();
  const work = undertake({ source, options: {} }, { ...ready, createDigest }, findings);
  if (!work) throw new Error("the job of the benchmark is refused");
  return { ...work, findings };
}

function pull(batches: Iterable<unknown>): void {
  for (const batch of batches) void batch;
}

const quiet = (): void => undefined;

function lowered(input: Input, work: Undertaking): Iterable<Batch<unknown>> {
  const { job, operations, units, machine } = work;
  const { capabilities } = input.ready.dialect;
  const moves = (operation: (typeof operations)[number]) => readMoves(input.source, job, operation, quiet);
  const summary = { moves: 0, dropped: 0 };
  return lower({ job, operations, moves, capabilities, machine, units, report: quiet, summary });
}

function guardedBatches(work: ReturnType<typeof begin>): Iterable<Batch> {
  return watched(work.batches(), createGuard(work.machine, work.facts, quiet, "job"));
}

function text(input: Input, work: Undertaking, batches: Iterable<Batch>): Iterable<Uint8Array> {
  return input.ready.emitter.emitUnproved(batches, { units: work.units, header: [], footer: [] });
}

function readBack(input: Input, work: Undertaking, chunks: Iterable<Uint8Array>): Iterable<Batch> {
  return read(chunks, input.ready.dialect.format, work.machine, { units: work.units }, quiet);
}

/** Each goes one stage farther than the one before. */
const prefixes: Readonly<Record<string, Prefix>> = {
  "outline of the job": (input) => void readJob(input.source, quiet),
  "scan of the moves": (input) => {
    const { job, operations } = begin(input);
    for (const operation of operations) pull(readMoves(input.source, job, operation, quiet));
  },
  lower: (input) => {
    pull(lowered(input, begin(input)));
  },
  sequence: (input) => {
    pull(begin(input).batches());
  },
  guard: (input) => {
    pull(guardedBatches(begin(input)));
  },
  emit: (input) => {
    const work = begin(input);
    pull(text(input, work, guardedBatches(work)));
  },
  "read back": (input) => {
    const work = begin(input);
    pull(readBack(input, work, text(input, work, guardedBatches(work))));
  },
  "guard again": (input) => {
    const work = begin(input);
    const again = createGuard(work.machine, work.facts, quiet, "program");
    pull(watched(readBack(input, work, text(input, work, guardedBatches(work))), again));
  },
  "copy and compare": (input) => {
    const work = begin(input);
    const copies = createQueue();
    const guard = createGuard(work.machine, work.facts, quiet, "job");
    const again = createGuard(work.machine, work.facts, quiet, "program");
    const chunks = text(input, work, guarded(work.batches(), guard, copies, work.findings));
    compare({
      expected: copies,
      actual: watched(readBack(input, work, chunks), again),
      report: ({ message }) => {
        throw new Error(message);
      },
      errors: () => 0,
      // Without a text there is no proof, which is not what is measured here.
      text: undefined,
      facts: () => "",
    });
  },
};

/** A file as the stages read it. */
export function fileSource(file: string): ByteSource & { close(): void } {
  const descriptor = openSync(file, "r");
  const { size } = fstatSync(descriptor);
  return {
    size,
    read: (offset, target) => readSync(descriptor, target, 0, Math.min(target.length, size - offset), offset),
    close: () => {
      closeSync(descriptor);
    },
  };
}

/** CPU time of a run in milliseconds, this thread's and its helpers'. */
function cpuOf(run: () => void): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/**
 * What each stage costs: the flow is run as far as each stage, by turns, and each costs what it adds to the one before.
 * The first round warms up and does not count.
 *
 * @param moves how many the job has
 */
export function stageCosts(file: string, ready: ReadyDialect, moves: number, rounds = 7): StageCost[] {
  const source = fileSource(file);
  const names = Object.keys(prefixes);
  const times = names.map((): number[] => []);
  for (let round = 0; round <= rounds; round++)
    names.forEach((name, index) => {
      const time = cpuOf(() => prefixes[name]?.({ source, ready }));
      if (round > 0) times[index]?.push(time);
    });
  source.close();
  const sums = times.map(median);
  const whole = sums.at(-1) ?? NaN;
  return names.map((stage, index) => {
    const own = (sums[index] ?? NaN) - (sums[index - 1] ?? 0);
    return { stage, perMove: (own * 1e6) / moves, share: own / whole };
  });
}
