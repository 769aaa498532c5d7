import { chunksOf } from "#base";
import type { ByteSource, Finding, Report, UnitSystem } from "#base";
import type { Dialect } from "#dialect";
import type { Job, OpenJob } from "#job";
import { checkOperations, checkTools, readHead } from "#job";
import { read } from "#read";
import { gatherComments } from "./comments.ts";
import * as findings from "./findings.ts";
import { gatheringActions } from "./gather.ts";
import type { Workshop } from "./held.ts";
import { createMoves } from "./moves.ts";
import type { ProgramReading } from "./program-reading.ts";
import { surroundings } from "./surroundings.ts";
import { toJob } from "./to-job.ts";
import { commentAtStop } from "./stop-comment.ts";
import { heldOfHeader, isToolComment, pocketsOfHeader } from "./tool-words.ts";
import { createWalk, endWalk, walkBatch } from "./walk.ts";

/**
 * Reads a program as a job: a first walk gathers its operations and tools, and each operation's moves are read again when they are
 * asked for. Memory does not grow with the moves.
 *
 * @param report gets each finding with its place in the program
 * @returns undefined after an error
 */
export function openProgram(
  source: ByteSource,
  reading: ProgramReading,
  report: Report,
): OpenJob | undefined {
  const { dialect, head: headSource } = reading;
  const counted = { errors: 0, forms: 0 };
  const tell: Report = (finding) => {
    if (finding.severity === "error") counted.errors++;
    report(finding);
  };
  const head = headSource && readHead(headSource, tell);
  const { format, machine } = dialect;
  const units = unitsWithout(dialect, head);
  const comments = gatherComments(format);
  const nameAt = (from: number, to: number): string => nameIn(comments.between(from, to));
  const rack: { pockets?: ReadonlyMap<number, number> } = {};
  const toolOfPocket = (pocket: number): number =>
    // The header has passed when the first swap comes.
    (rack.pockets ??= pocketsOfHeader(comments.head)).get(pocket) ?? pocket;
  const commentAt = (offset: number): string => commentAtStop(source, format, offset);
  const workshop: Workshop = { machine, toolOfPocket, commentAt };
  const { act, gathered } = gatheringActions(machine, head?.stock, tell, nameAt);
  const walk = createWalk(workshop, format.modal.axes === "all", act);
  const readReport = readingReport(dialect, tell, () => counted.forms++);
  const text = chunksOf(source, comments.take);
  for (const batch of read(text, format, machine, { units, source }, readReport)) walkBatch(walk, batch);
  endWalk(walk);
  // A program whose meaning is open may lack what a job needs for the same reason; one of them is enough.
  if (counted.errors > 0) return undefined;
  if (counted.forms > 0) report(findings.formUnasked(counted.forms));
  const own = walk.state.units ?? (format.unitsIn === "job" ? undefined : format.unitsIn);
  if (own === undefined && head === undefined) tell(findings.unitsTaken(units));
  if (machine.swap === "rack" && rack.pockets?.size === 0)
    report(findings.pocketTaken(gathered.stretches[0]?.source ?? 0));
  nameTool(gathered, heldOfHeader(comments.head), report);
  const job = toJob(gathered, surroundings(reading, head, comments, own ?? units, walk.state), tell);
  if (job === undefined) return undefined;
  checkTools(job, (index) => job.tools[index].source, tell);
  checkOperations(job, (index) => job.operations[index].source, tell);
  if (counted.errors > 0) return undefined;
  const moves = createMoves({
    source,
    dialect,
    units,
    stretches: gathered.stretches,
    stock: job.stock,
    workshop,
  });
  return { job, moves: (operation) => moves(job.operations.indexOf(operation)) };
}

function unitsWithout({ format }: Dialect, head: Job | undefined): UnitSystem {
  return format.unitsIn === "job" ? (head?.units ?? "mm") : format.unitsIn;
}

/** A tool that no word names is the one that the header says is in the spindle; or it is called 1. */
function nameTool(
  gathered: ReturnType<typeof gatheringActions>["gathered"],
  held: number,
  report: Report,
): void {
  const nameless = gathered.tools.get(0);
  if (nameless === undefined) return;
  const number = held === 0 ? 1 : held;
  if (held === 0) report(findings.noTool(nameless.source));
  gathered.tools.delete(0);
  if (!gathered.tools.has(number)) gathered.tools.set(number, { ...nameless, number });
  for (const draft of gathered.stretches) if (draft.tool === 0) Object.assign(draft, { tool: number });
}

/** The last comment before an operation is its name, unless it is about a tool. */
function nameIn(comments: readonly string[]): string {
  const names = comments.filter((text) => !isToolComment(text) && !/^(MSG|OPERATOR)\b/i.test(text));
  return (names.at(-1) ?? "").replace(/^SECTION\s+/i, "");
}

/** Modes that a program of another hand seldom states, and that every controller starts with. */
const mildModes = new Set(["plane", "feed", "arc.centre-words", "cycles.return"]);

/** A code that is declared under `codes` is read, and has no counterpart in a job all the same: that way leads nowhere here. */
const noWords =
  "Take the code out: a job has no words for it. Where it is the dialect's word for something that a key names, state it under that key in a leaf of the dialect.";

/**
 * What the reader finds, as of a program that is an input: its form is nobody's business here, and what it leaves to the
 * controller's start is told. Units, and whether words are absolute, must be stated.
 */
function readingReport({ name }: Dialect, report: Report, form: () => void): Report {
  return (found) => {
    if (found.rule.startsWith("block/")) {
      form();
      return;
    }
    const { key, ...rest } = found;
    const isMild = found.rule === "read/mode-unknown" && mildModes.has(key ?? "");
    const fix =
      key === undefined
        ? found.fix
        : key === "codes"
          ? noWords
          : `${found.fix ?? ""} (\`${key}\` of ${name})`.trim();
    const finding: Finding = {
      ...rest,
      // Where the reader warns, what is read has more than one meaning: a block that a switch skips.
      severity: isMild ? "warning" : found.severity === "warning" ? "error" : found.severity,
      ...(found.place ? { place: { ...found.place, source: "job" } } : {}),
      ...(fix === undefined ? {} : { fix }),
    };
    report(finding);
  };
}
