/**
 * The whole flow on one page.
 *
 *     job ─read─▶ moves ─lower─▶ steps ─sequence─▶ sequence ─guard─┬─emit─▶ text ─read─▶ sequence ─guard─▶ compare ─▶ Proof
 *                                                                  └──────────────── copies ────────────────▲
 *
 * Batches are pulled from the right: the comparison asks for what was read, the reader for text, the emitter for the
 * sequence. Nothing is kept but the copies that the comparison has not caught up with. No file access here.
 */
import { chunksOf } from "#base";
import { createGuard, createQueue, prove as compare } from "#prove";
import { read } from "#read";
import { gather, withCorrectedBlocks } from "#report";
import { createClock } from "#time";
import type { Outcome, PostInput, ProveInput } from "./inputs.ts";
import { footerOf, headerOf } from "./page.ts";
import { simulating } from "./simulated.ts";
import {
  errorsOnly,
  guarded,
  hashFacts,
  lineWords,
  noJobFacts,
  shownTo,
  tellUnanswered,
  unclearIsError,
  undertake,
  unlessFailed,
  watched,
} from "./undertaking.ts";

export type {
  Digest,
  JobInput,
  Means,
  Outcome,
  PostInput,
  ProgramOptions,
  ProveInput,
  SimulationChoice,
} from "./inputs.ts";

/**
 * Posts a job. The text goes to the sink while it is being proved; it may be used only if the outcome has a proof.
 *
 * @returns "proved" with the proof, or "refused" with the findings up to the first stage that has errors
 */
export function post(input: PostInput): Outcome {
  const findings = gather();
  const work = undertake(input, input, findings);
  if (!work) return { verdict: "refused", findings: findings.findings(), summary: { assumptions: [] } };
  const { format } = input.dialect;
  const { machine, facts, units } = work;

  const copies = createQueue();
  const guard = createGuard(machine, facts, findings.reportOf("guard"), "job");
  const simulation = simulating(work, input.simulate, "job");
  const clock = createClock(machine, facts, work.operations);
  const sequence = guarded(simulation.passing(shownTo(work.batches(), clock)), guard, copies, findings);

  const digest = input.createDigest();
  const written = { bytes: 0 };
  function* staged(chunks: Iterable<Uint8Array>): Generator<Uint8Array> {
    for (const chunk of chunks) {
      input.sink.write(chunk);
      digest.update(chunk);
      written.bytes += chunk.length;
      yield chunk;
    }
  }
  const page = { header: headerOf(work, input), footer: footerOf(work, input) };
  const text = staged(input.emitter.emitUnproved(sequence, { units, ...page }));

  const guardAgain = createGuard(machine, facts, errorsOnly(findings.reportOf("guard-again")), "program");
  const readBack = watched(read(text, format, machine, { units }, findings.reportOf("read")), guardAgain);

  const proof = compare({
    expected: copies,
    actual: readBack,
    report: findings.reportOf("compare"),
    errors: () => findings.errors(),
    text: { bytes: () => written.bytes, sha256: () => digest.hex() },
    facts: () => hashFacts(input, input),
  });
  const summary = { ...work.summary(), bytes: written.bytes, ...simulation.figures(findings) };
  if (!proof) return { verdict: "refused", findings: findings.findings(), summary };
  return {
    verdict: "proved",
    findings: findings.findings(),
    proof,
    summary: { ...summary, steps: proof.steps, time: clock.end() },
  };
}

/**
 * Reads a program under a dialect, guards it, and compares it with a job if there is one.
 *
 * @returns "read" without a job, "proved" or "failed" with one, "refused" where the job cannot be had
 */
export function prove(input: ProveInput): Outcome {
  const findings = gather();
  const { against, program, dialect, emitter } = input;
  const work = against && undertake(against, input, findings);
  if (!against) tellUnanswered(dialect, findings.reportOf("read"));
  if (against && !work)
    return { verdict: "refused", findings: findings.findings(), summary: { assumptions: [] } };
  const { format } = dialect;
  const machine = work?.machine ?? dialect.machine;
  const units = work?.units ?? input.units ?? (format.unitsIn === "job" ? "mm" : format.unitsIn);

  const digest = input.createDigest();
  const text = chunksOf(program, (chunk, done) => {
    digest.update(chunk);
    input.progress?.(done, program.size);
  });
  const facts = work?.facts ?? { ...noJobFacts, workOffsets: dialect.workZero };
  const guard = createGuard(machine, facts, findings.reportOf("guard-again"), "program");
  const readReport = findings.reportOf("read");
  const simulation = simulating(work, input.simulate, "program");
  const steps = read(
    text,
    format,
    machine,
    { units, source: program },
    work ? unclearIsError(readReport) : readReport,
  );
  const readBack = watched(simulation.passing(steps), guard);
  const clock = createClock(machine, facts, work?.operations ?? []);

  const proof = work
    ? compare({
        expected: unlessFailed(shownTo(work.batches(), clock), findings),
        actual: readBack,
        report: findings.reportOf("compare"),
        errors: () => findings.errors(),
        text: { bytes: () => program.size, sha256: () => digest.hex() },
        facts: () => hashFacts(against, input),
        locate: lineWords(against.source),
      })
    : drain(shownTo(readBack, clock));
  if (findings.failedBy("sequence"))
    return { verdict: "refused", findings: findings.findings(), summary: { assumptions: [] } };
  const figures = simulation.figures(findings);
  const shown = withCorrectedBlocks(findings.all(), {
    chunks: chunksOf(program),
    source: program,
    format,
    machine,
    emitter,
    units,
  });
  const summary = { ...(work?.summary() ?? { assumptions: [] }), bytes: program.size, ...figures };
  if (proof && work) {
    const whole = { ...summary, steps: proof.steps, time: clock.end() };
    return { verdict: "proved", findings: shown, proof, summary: whole };
  }
  if (work) return { verdict: "failed", findings: shown, summary };
  // What is wrong, or not known, may take any time.
  const time = findings.errors() === 0 ? { time: clock.end() } : {};
  return { verdict: "read", findings: shown, summary: { ...summary, ...time } };
}

/** Pulls everything; a program without a job is read for its findings alone. */
function drain(batches: Iterable<unknown>): undefined {
  for (const batch of batches) void batch;
  return undefined;
}
