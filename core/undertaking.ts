import { chunksOf, lengthWithUnit, lineAt } from "#base";
import type { Batch, ByteSource, Finding, JobFacts, MachineFacts, Place, Report, UnitSystem } from "#base";
import type { Dialect, Format } from "#dialect";
import type { Job, Operation } from "#job";
import { checkTrade, chooseOperations } from "#job";
import type { AirCut } from "#lower";
import { lower, onProgramGrid, programUnits, raiseJob, raiseMoves } from "#lower";
import type { Gathering, Summary } from "#report";
import { assumptions, rackReport, reloadSentence, toolsUsed } from "#report";
import type { Guard, Queue } from "#prove";
import { openInput } from "#retrace";
import { planJobFacts, sequence } from "#sequence";
import type { Setup } from "#sequence";
import { takeSpares, tellReplacements, watchLife } from "#spares";
import type { LifeRequest } from "#spares";
import type { Digest, JobInput, Means } from "./inputs.ts";

/** A job made ready for one dialect: what is posted, in which units, and what guard and report know of it. */
export interface Undertaking {
  readonly job: Job;
  readonly operations: readonly Operation[];
  readonly units: UnitSystem;
  /** On the grid of the program. */
  readonly machine: MachineFacts;
  readonly facts: JobFacts;
  /** The sequence, lowered and put in order; pulled once. */
  readonly batches: () => Iterable<Batch>;
  readonly summary: () => Summary;
}

const emptySetup: Setup = { workOffsets: [], lengths: {}, rack: undefined, spindleHolds: undefined };

/** Reads the head of a job and plans it; undefined where the head has errors, which are in the gathering. */
export function undertake(input: JobInput, means: Means, findings: Gathering): Undertaking | undefined {
  const { capabilities, machine: declared, workZero } = means.dialect;
  const jobReport = findings.reportOf("job");
  const opened = openInput(input.source, input.reading ?? { form: "json" }, jobReport);
  if (!opened) return undefined;
  const { airCut, optionalStops = false } = input.options;
  const spared = takeSpares(opened);
  const job = airCut ? raiseJob(spared.job, airCut) : spared.job;
  const operations = chooseOperations(job, input.options, jobReport);
  if (findings.failedBy("job")) return undefined;
  tellReplacements({ ...spared, job }, operations).forEach(jobReport);
  if (airCut) notInAir(job, operations).forEach(findings.reportOf("sequence"));
  tellUnanswered(means.dialect, findings.reportOf("sequence"));
  const units = programUnits(job, capabilities, findings.reportOf("lower"));
  const machine = onProgramGrid(declared, capabilities, units);
  const indexes = operations.map((operation) => job.operations.indexOf(operation));
  const common = { job, operations: indexes, capabilities, machine, units };
  const plan = { ...common, ...rackNowOf(input), setup: setupOf(input), workZero };
  const planned = planJobFacts(plan, findings.reportOf("sequence"));
  const facts = airCut ? { ...planned, airCut: true } : planned;
  const counts = { moves: 0, dropped: 0 };
  /** As the job states them, where an air cut raises them, or a spare takes over. */
  const stated = indexes.map((index) => opened.job.operations[index]);
  const checked = checkTrade(opened, stated, jobReport);
  const batches = (): Iterable<Batch> => {
    const moves = (operation: Operation) => {
      const own = stated[operations.indexOf(operation)];
      const given = followed(checked.moves(own, jobReport), means, input.source);
      return airCut ? raiseMoves(given, own, airCut) : given;
    };
    const lowered = lower({
      ...common,
      operations,
      moves,
      report: findings.reportOf("lower"),
      summary: counts,
    });
    const request = {
      ...common,
      facts,
      airCut: airCut !== undefined,
      optionalStops,
      cleanText: (text: string) => means.emitter.cleanText(text),
    };
    const sequenced = sequence(lowered, request, findings.reportOf("sequence"));
    return unlessInAir(airCut, sequenced, { job, operations, machine, facts }, findings);
  };
  const summary = (): Summary => ({
    moves: counts.moves,
    tools: toolsUsed(operations),
    units,
    assumptions: [
      ...airCutSentence(airCut, units),
      ...assumptions({ job, operations, machine, facts }),
      ...reloadSentence(job.operations, facts),
      ...stopSentence(means.dialect.format),
    ],
    ...rackReport(job, facts),
  });
  return { job, operations, units, machine, facts, batches, summary };
}

/** Watches what tools wear; in the air none does. */
function unlessInAir(
  airCut: AirCut | undefined,
  batches: Iterable<Batch>,
  program: Omit<LifeRequest, "report">,
  findings: Gathering,
): Iterable<Batch> {
  return airCut ? batches : watchLife(batches, { ...program, report: findings.reportOf("sequence") });
}

/** An air cut is only one if it is known what it has to stay above, and how fast it goes. */
function notInAir({ stock, workOffset }: Job, operations: readonly Operation[]): Finding[] {
  const refused = (message: string, fix: string, offset?: number): Finding => ({
    rule: "motion/air-cut",
    severity: "error",
    message,
    place: offset === undefined ? { source: "command", offset: 0 } : { source: "job", offset },
    fix,
  });
  return [
    ...(stock
      ? []
      : [
          refused(
            "The job does not state its stock, so that nobody knows what an air cut has to stay above.",
            'State it in the job or the head file: "stock": { "min": [x, y, z], "max": [x, y, z] }',
          ),
        ]),
    ...operations.flatMap(({ id, workOffset: own, feedMode, source }) => [
      ...(own === workOffset
        ? []
        : [
            refused(
              `Operation ${id} works in work offset ${own}, and the stock stands in ${workOffset}: nobody knows what this one has to stay above.`,
              "Make the air cut of the others with `--only`.",
              source,
            ),
          ]),
      ...(feedMode === "inverse-time"
        ? [
            refused(
              `Operation ${id} has inverse-time feeds, which an air cut does not cap.`,
              "Make the air cut of the others with `--only`, and prove this one out with the feed override.",
              source,
            ),
          ]
        : []),
    ]),
  ];
}

/** Stands first wherever it is told what a program takes for granted: at its head, in the report, on the sheet. */
function airCutSentence(airCut: AirCut | undefined, units: UnitSystem): string[] {
  if (!airCut) return [];
  const [height, feed] = [airCut.height, airCut.feed].map((atoms) =>
    lengthWithUnit(atoms, units, { mm: 3, inch: 4 }),
  );
  return [
    `AIR CUT: all motion in the work is ${height} higher, the spindle and the coolant stay off, feeds are at most ${feed}/min.`,
  ];
}

/** A stop with a block delete mark is skipped, not made, while the switch is on. */
function stopSentence({ optionalStopMark: mark }: Format): string[] {
  return mark === "" ? [] : [`Block delete ${mark} is off, for optional stops to stop.`];
}

/** Says of each key that nobody has answered for that the program rests on a guess. */
export function tellUnanswered({ unanswered, files }: Dialect, report: Report): void {
  for (const key of unanswered)
    report({
      rule: "dialect/unanswered",
      severity: "note",
      message: `Nobody who knows the machine has said yet that \`${key}\` is true of it; it is taken as the dialect has it.`,
      key,
      place: { source: "command", offset: 0, ...(files[0] === undefined ? {} : { file: files[0] }) },
      fix: `See that it is, state it in the dialect file, and take it out of \`unanswered\`.`,
    });
}

/** What is known of a job when there is none: a program from elsewhere. */
export const noJobFacts: JobFacts = {
  known: false,
  tools: [],
  stock: undefined,
  fixtures: [],
  clearance: undefined,
  workOffsets: [],
  spindleHolds: undefined,
  rack: [],
};

/** The set-up with what the command line says of it. */
function setupOf({ setup = emptySetup, options }: JobInput): Setup {
  if (options.spindleHolds === undefined) return setup;
  return { ...setup, spindleHolds: options.spindleHolds === "none" ? 0 : options.spindleHolds };
}

/** What is in the rack now, where the command line says so. */
function rackNowOf({ options: { rackNow } }: JobInput): { readonly rackNow?: readonly number[] } {
  return rackNow === undefined ? {} : { rackNow };
}

/** Says with each batch how far the job is read. */
function* followed<B extends Batch<unknown>>(
  batches: Iterable<B>,
  means: Means,
  source: ByteSource,
): Generator<B> {
  for (const batch of batches) {
    if (batch.count > 0) means.progress?.(batch.source[batch.count - 1], source.size);
    yield batch;
  }
}

/** Puts a place in the job into words; the text is counted through, which is done for the few differences that are listed. */
export function lineWords(source: ByteSource): (place: Place) => string {
  return ({ offset }) => `line ${String(lineAt(source, offset))} of the job`;
}

/** Hash of all that decides a program: the job's bytes and how they are read, the dialect, the set-up and the options. */
export function hashFacts(input: JobInput, means: Means): string {
  const digest: Digest = means.createDigest();
  const { format, capabilities, machine, workZero } = means.dialect;
  const { reading, setup, options } = input;
  const read = reading === undefined || reading.form === "json" ? {} : { reading: withoutBytes(reading) };
  const decided = { format, capabilities, machine, workZero, setup, options, ...read };
  // JSON has no infinity: it is told apart from `null` by its name.
  const plain = JSON.stringify(decided, (_key, value: unknown) => (value === Infinity ? "Infinity" : value));
  digest.update(new TextEncoder().encode(plain));
  for (const chunk of chunksOf(input.source)) digest.update(chunk);
  // Its size keeps the end of the one apart from the begin of the other.
  digest.update(new TextEncoder().encode(`,${input.source.size},`));
  if (reading !== undefined && reading.form !== "json" && reading.head)
    for (const chunk of chunksOf(reading.head)) digest.update(chunk);
  return digest.hex();
}

/** What decides how an input is read, but for the bytes of its head file. */
function withoutBytes(reading: Exclude<NonNullable<JobInput["reading"]>, { form: "json" }>): unknown {
  if (reading.form === "cl") return reading.options;
  const { format, machine, capabilities } = reading.dialect;
  return { format, machine, capabilities };
}

/** Errors at which a run ends: enough to work on. */
const enoughErrors = 100;

/** Guards a sequence on its way and keeps copies of it. */
export function* guarded(
  batches: Iterable<Batch>,
  guard: Guard,
  copies: Queue,
  findings: Gathering,
): Generator<Batch> {
  for (const batch of unlessFailed(watched(batches, guard), findings)) {
    copies.push(batch);
    yield batch;
  }
}

/** Hands on nothing any more once a stage up to the guard has reported an error, but goes on pulling, to gather more. */
export function* unlessFailed(batches: Iterable<Batch>, findings: Gathering): Generator<Batch> {
  for (const batch of batches) {
    if (findings.errors() >= enoughErrors) return;
    if (!findings.failedBy("guard")) yield batch;
  }
}

/** Shows a sequence to who looks on, batch by batch, and passes it on; `ended` is called when all of it has passed. */
export function* shownTo(
  batches: Iterable<Batch>,
  onlooker: { accept(batch: Batch): void },
  ended: () => void = () => undefined,
): Generator<Batch> {
  for (const batch of batches) {
    onlooker.accept(batch);
    yield batch;
  }
  ended();
}

/** Passes a sequence by the guard. */
export function watched(batches: Iterable<Batch>, guard: Guard): Generator<Batch> {
  return shownTo(batches, guard, () => guard.end());
}

/** A report that takes what has no one meaning (a block that a switch can skip) for an error: such a text proves nothing. */
export function unclearIsError(report: Report): Report {
  return (finding) => {
    const isUnclear = finding.severity === "warning" && finding.rule.startsWith("read/");
    report(isUnclear ? { ...finding, severity: "error" } : finding);
  };
}

/** A report that lets errors through alone: the second guard would repeat the notes and warnings of the first. */
export function errorsOnly(report: Report): Report {
  return (finding) => {
    if (finding.severity === "error") report(finding);
  };
}
