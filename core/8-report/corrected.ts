import type { Batch, ByteSource, Finding, MachineFacts, Step, UnitSystem } from "#base";
import { batchColumns, createBatch, isArc, pushAside, rowKind } from "#base";
import type { Format } from "#dialect";
import type { Emitter, EmitStart } from "#emit";
import { read } from "#read";
import { linesOf } from "./wanted-lines.ts";
import { missingSteps, needsStepsBefore } from "./missing-steps.ts";

/** What is needed to show how a block should read. */
export interface Correction {
  /** The program once more, and where it can be gone back in. */
  readonly chunks: Iterable<Uint8Array>;
  readonly source: ByteSource;
  readonly format: Format;
  readonly machine: MachineFacts;
  readonly emitter: Emitter;
  readonly units: UnitSystem;
}

/**
 * Gives each finding about a program the corrected block: its steps, and the ones that are missing before them, as the
 * dialect writes them with every modal word restated. The program is read once more for this, so that nothing has to
 * be kept while it is read.
 *
 * @returns the findings, in their order; those whose block has no meaning stay as they are
 */
export function withCorrectedBlocks(findings: readonly Finding[], correction: Correction): Finding[] {
  const wanted = findings.filter(isAboutBlock);
  if (wanted.length === 0) return [...findings];
  const blocks = blocksAt(
    wanted.map((finding) => finding.place?.offset ?? 0),
    correction,
  );
  return findings.map((finding) => {
    const block = isAboutBlock(finding) ? blocks.get(finding.place?.offset ?? -1) : undefined;
    if (!block || !helps(finding, block)) return finding;
    const text = write(block, missingSteps(finding.rule, correction.machine), correction);
    return text === undefined || text === "" ? finding : { ...finding, corrected: text };
  });
}

/**
 * Whether the block written anew is what is wanted: where its form is at fault, or a step in front of it is missing. Where the
 * meaning itself is wrong (a place, a speed, a difference from the job) the block would only repeat it.
 */
function isAboutBlock({ place, rule, severity }: Finding): boolean {
  const isWritable = rule.startsWith("block/") || needsStepsBefore(rule);
  return place?.source === "program" && severity !== "note" && isWritable;
}

/**
 * Whether the block written anew takes the finding away: a wait for the speed does nothing for a spindle that stands still, and
 * a motion word that was lost behind an arc may have been any.
 */
function helps({ rule }: Finding, { rows, turns }: BlockRows): boolean {
  if (rule === "spindle/at-speed") return turns;
  return rule !== "block/motion-word" || !rows.kind.subarray(0, rows.count).some(isArc);
}

/** The rows of one block, copied, and the state of the controller before it. */
interface BlockRows {
  readonly rows: Batch;
  readonly start: EmitStart;
  /** The cycle in force, if one is. */
  readonly cycle: Step | undefined;
  /** Whether the spindle turns before the block. */
  readonly turns: boolean;
}

/** Reads the program again and keeps the blocks in which the offsets lie: each as it is run for the first time. */
function blocksAt(offsets: readonly number[], correction: Correction): Map<number, BlockRows> {
  const { chunks, source, format, machine, units } = correction;
  const lines = linesOf(source, offsets);
  const waiting = new Set(lines.values());
  const blocks = new Map<number, BlockRows>();
  const now = startState();
  let line = -1;
  let open: BlockRows | undefined;
  for (const batch of read(chunks, format, machine, { units, source }, () => undefined)) {
    if (waiting.size === 0 && open === undefined) break;
    for (let row = 0; row < batch.count; row++) {
      if (batch.source[row] !== line) {
        line = batch.source[row];
        open = waiting.delete(line) ? startBlock(now, batch.abc !== undefined) : undefined;
        if (open) blocks.set(line, open);
      }
      if (open && open.rows.count < 63) copyRow(open.rows, batch, row);
      follow(now, batch, row);
    }
  }
  return new Map(
    [...lines].flatMap(([offset, begin]) => {
      const block = blocks.get(begin);
      return block ? [[offset, block] as const] : [];
    }),
  );
}

function startBlock({ start, cycle, turns }: Following, rotary: boolean): BlockRows {
  return { rows: createBatch(64, rotary), start: { ...start }, cycle, turns };
}

interface Following {
  start: { -readonly [Key in keyof EmitStart]: EmitStart[Key] };
  cycle: Step | undefined;
  turns: boolean;
}

function startState(): Following {
  return {
    start: { known: 0, x: 0, y: 0, z: 0, a: 0, b: 0, c: 0, distance: "absolute", feedMode: "per-minute" },
    cycle: undefined,
    turns: false,
  };
}

/** Takes a row into the state of the controller. */
function follow(now: Following, batch: Batch, row: number): void {
  if (batch.kind[row] === rowKind.aside) {
    const step = batch.asides[batch.aside[row]];
    if (step.kind === "distance") now.start.distance = step.value;
    if (step.kind === "feed-mode") now.start.feedMode = step.value;
    if (step.kind === "spindle-start") now.turns = true;
    if (step.kind === "spindle-stop" || step.kind === "change-tool" || step.kind === "pause")
      now.turns = false;
    if (step.kind === "cycle-definition") now.cycle = step;
    if (step.kind === "cycle") now.cycle = undefined;
    return;
  }
  if (batch.frame[row] !== 0) return;
  const { start } = now;
  start.known = batch.known[row];
  [start.x, start.y, start.z] = [batch.x[row], batch.y[row], batch.z[row]];
  if (batch.abc) [start.a, start.b, start.c] = [batch.abc[0][row], batch.abc[1][row], batch.abc[2][row]];
}

function copyRow(into: Batch, from: Batch, row: number): void {
  if (from.kind[row] === rowKind.aside) {
    pushAside(into, from.asides[from.aside[row]], from.source[row]);
    return;
  }
  const index = into.count++;
  for (const column of batchColumns) into[column][index] = from[column][row];
  for (let axis = 0; axis < 3; axis++) if (into.abc && from.abc) into.abc[axis][index] = from.abc[axis][row];
}

/** A block with what is missing before it, as the dialect writes it. */
function write(
  { rows, start, cycle }: BlockRows,
  before: readonly Step[],
  { emitter, units }: Correction,
): string | undefined {
  const batch = createBatch(128, rows.abc !== undefined);
  for (const step of before) pushAside(batch, step, 0);
  const hasHole = rows.kind.subarray(0, rows.count).includes(rowKind.hole);
  if (hasHole && cycle && !rows.asides.some((step) => step.kind === "cycle-definition"))
    pushAside(batch, cycle, 0);
  for (let row = 0; row < rows.count; row++) copyRow(batch, rows, row);
  return emitText(emitter, batch, start, units);
}

/** The text of a fragment; nothing where the dialect has no word for one of its steps. */
function emitText(emitter: Emitter, batch: Batch, start: EmitStart, units: UnitSystem): string | undefined {
  const decoder = new TextDecoder();
  let text = "";
  try {
    for (const chunk of emitter.emitUnproved([batch], { units, header: [], fragment: true, start }))
      text += decoder.decode(chunk, { stream: true });
  } catch {
    // A program from elsewhere may use a step that this dialect never writes; then there is no block to show.
    return undefined;
  }
  return text.trimEnd();
}
