import type { ByteSource, Report } from "#base";
import { linearAxes } from "#base";
import { otherEncoding, byteOrderMark } from "../findings.ts";
import type { Job } from "../job.ts";
import { scales } from "../scan/number.ts";
import type { Scanner } from "../scan/scanner.ts";
import { createScanner, ensure, fail } from "../scan/scanner.ts";
import { countColumns } from "./columns.ts";
import * as findings from "./findings.ts";
import { current, gatheringActions } from "./gather.ts";
import type { Gathered } from "./gather.ts";
import { withinLengths } from "./items.ts";
import { interpret } from "./interpret.ts";
import type { ClOptions } from "./options.ts";
import { takePlainPoint } from "./plain-points.ts";
import type { ClRun, ClState } from "./state.ts";
import { createState } from "./state.ts";
import type { LineHabits, Statement } from "./statement.ts";
import { nextStatement } from "./statement.ts";

/** What the first reading of a source gives. */
export interface Outline {
  readonly gathered: Gathered;
  readonly name: string;
  /** State behind the last statement. */
  readonly state: ClState;
  readonly habits: LineHabits;
  /** What the reading of the moves is told again. */
  readonly headClearance: number | undefined;
}

/** Errors at which reading stops. */
const mostErrors = 50;

/**
 * Reads a source once: every statement is interpreted, and what an operation needs to know before its moves is gathered.
 * Memory does not grow with the moves.
 *
 * @param head the head file's job, for its clearance
 */
export function readOutline(
  source: ByteSource,
  options: ClOptions,
  head: Job | undefined,
  report: Report,
  window: number,
): Outline {
  const limited = limitErrors(report);
  const scanner = createScanner(source, limited.report, { from: 0, to: source.size }, window);
  limited.stop = () => (scanner.failed = true);
  checkBeginning(scanner);
  const columns = scanner.failed ? Infinity : countColumns(source, options, limited.report, window);
  const habits: LineHabits = { columns, textContinues: options.literal === "continued" };
  const state = createState();
  if (options.units !== "refuse") {
    state.scale = scales[options.units];
    state.units = options.units;
  }
  const { act, gathered } = gatheringActions(state, limited.report);
  const headClearance = head?.clearance;
  const run: ClRun = {
    options,
    state,
    act,
    report: limited.report,
    headClearance,
    told: new Set(),
    withoutEffect: new Set(),
  };
  const name = readAll(run, scanner, habits, gathered);
  current(gathered).end = source.size;
  if (!scanner.failed && state.ended === "no")
    limited.report(source.size === 0 ? findings.emptySource() : findings.cutShort(source.size));
  if (run.withoutEffect.size > 0) report(findings.noEffect([...run.withoutEffect].sort()));
  return { gathered, name, state, habits, headClearance };
}

function readAll(run: ClRun, scanner: Scanner, habits: LineHabits, gathered: Gathered): string {
  let name: string | undefined;
  while (!scanner.failed) {
    takePlainPoints(run, scanner, habits, gathered);
    const statement: Statement | undefined = nextStatement(scanner, habits);
    if (statement === undefined) break;
    if (statement.word === "PARTNO") name ??= statement.text;
    interpret(run, statement);
  }
  return name ?? "";
}

/** Lines that are plain points: nothing but the place and the highest Z changes. */
function takePlainPoints(run: ClRun, scanner: Scanner, { columns }: LineHabits, gathered: Gathered): void {
  const { state } = run;
  const { scale } = state;
  const operation = current(gathered);
  if (!isPlain(state) || scale === undefined || !operation.cut || !operation.per.has(state.feed!.per)) return;
  const numbers = new Float64Array(3);
  const [dx, dy, dz] = pointShift(run);
  let highest = operation.highest;
  let taken = false;
  for (;;) {
    const offset = takePlainPoint(scanner, scale, numbers, columns);
    if (offset < 0) break;
    taken = true;
    state.x = numbers[0] + dx;
    state.y = numbers[1] + dy;
    state.z = numbers[2] + dz;
    if (state.z > highest) highest = state.z;
    // A shift can make a place of numbers that are each small enough.
    if (dx !== 0 || dy !== 0 || dz !== 0) withinLengths(run, offset, state.x, state.y, state.z);
  }
  if (!taken) return;
  operation.highest = highest;
  state.toolZ = state.z;
  state.known = linearAxes;
}

/** Whether a point is a line at the feed that holds, with nothing else to see to. */
export function isPlain(state: ClState): boolean {
  const isWaiting = state.rapid || state.afterRapid || state.circle !== undefined || state.cycleOn;
  const isNew = !state.moved || state.cutterFresh || state.spindleFresh || state.spindle === "off";
  return !isWaiting && !isNew && state.tool > 0 && state.feed !== undefined && state.ended === "no";
}

/** What is added to the coordinates of a point: shifts, and the way from the centre of a rounding to the tip. */
export function pointShift({ state, options }: ClRun): readonly [number, number, number] {
  const drop = options.point === "centre" ? (state.cutter?.corner ?? 0) : 0;
  const [x, y, z] = state.shift;
  return [x, y, z - drop];
}

/** Encodings that are not read, and binary data. */
function checkBeginning(scanner: Scanner): void {
  ensure(scanner, 4);
  const [first, second, third] = scanner.bytes;
  if (first === 0xef && second === 0xbb && third === 0xbf) fail(scanner, byteOrderMark());
  else if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
    fail(scanner, otherEncoding());
  else if (scanner.end > 1 && (first === 0 || second === 0)) fail(scanner, findings.binaryData(0));
}

/** A report that ends the reading at so many errors, and says so. */
function limitErrors(report: Report): { report: Report; stop: () => void } {
  const limited = {
    errors: 0,
    stop: (): void => undefined,
    report: (finding: Parameters<Report>[0]): void => {
      if (limited.errors >= mostErrors) return;
      report(finding);
      if (finding.severity !== "error") return;
      limited.errors++;
      if (limited.errors < mostErrors) return;
      report(findings.moreErrors(finding.place?.offset ?? 0, mostErrors));
      limited.stop();
    },
  };
  return limited;
}
