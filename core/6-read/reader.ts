import type { Batch, ByteSource, FeedMode, MachineFacts, Report, UnitSystem } from "#base";
import { createBatch } from "#base";
import type { ExtraCode, Format } from "#dialect";
import type { Block } from "./block.ts";
import { createBlock } from "./block.ts";
import type { Flow } from "./flow/flow.ts";
import { createFlow } from "./flow/flow.ts";
import { limitReport } from "./limit-report.ts";
import type { Group, Slot, Slots } from "./modal-groups.ts";
import { createSlots } from "./modal-groups.ts";
import type { Quantities } from "./quantities.ts";
import { createQuantities } from "./quantities.ts";
import type { State } from "./state.ts";
import { createState, modeBit } from "./state.ts";
import type { Runs } from "./scan-run.ts";
import { createRuns } from "./scan-run.ts";
import type { Parameters } from "./variables/parameters.ts";
import { createParameters } from "./variables/parameters.ts";
import type { Tables } from "./tables.ts";
import { createTables, isDeclared } from "./tables.ts";
import { letterM } from "./letters.ts";

/** How a program is to be read. */
export interface ReadOptions {
  /** Units of the numbers where neither the program nor the dialect states them: those of the job. */
  readonly units?: UnitSystem;
  /** Blocks out of a program: without a delimiter, program number, block numbers, start and end. */
  readonly fragment?: boolean;
  /** Where a fragment starts: its modes are known then, with the plane XY; a program starts nowhere. */
  readonly start?: ReadStart;
  /** The text once more, to go back and forth in: a program with loops or subprograms is refused without it. */
  readonly source?: ByteSource;
  /** Whether no line takes the short way of a run: the same is read, and slower. Tests compare both. */
  readonly blockByBlock?: boolean;
}

/** State of the controller where a fragment starts. */
export interface ReadStart {
  /** Mask of the axes whose place in work coordinates is known. */
  readonly known: number;
  /** Places by axis, atoms and micro-degrees; 0 where unknown. */
  readonly places: readonly number[];
  readonly distance: "absolute" | "incremental";
  readonly feedMode: FeedMode;
}

/** An extra code of a block, and where it stands, bytes from the start of the line. */
export interface PlacedExtra {
  readonly code: ExtraCode;
  readonly at: number;
}

/** A reader at work: the dialect as it was looked up, the block at hand, what is in force, and the rows so far. */
export interface Reader {
  readonly format: Format;
  readonly machine: MachineFacts;
  readonly fragment: boolean;
  /** Whether the units are known without a word of the program. */
  readonly unitsGiven: boolean;
  readonly report: Report;
  /** Reports how many findings were held back. */
  readonly closeReport: () => void;
  readonly tables: Tables;
  readonly quantities: Quantities;
  readonly runs: Runs;
  readonly block: Block;
  readonly slots: Slots;
  /** The groups that have a code in the block at hand: the others' slots are empty. */
  readonly filled: Group[];
  /** Coolant words of the block at hand, in the order of the text. */
  readonly coolants: Slot[];
  /** Extra codes of the block at hand. */
  readonly extras: PlacedExtra[];
  readonly state: State;
  batch: Batch;
  /** Rows handed on in the batches before. */
  rowsBefore: number;
  /** The bytes in which the line at hand stands, and where it begins in them. */
  bytes: Uint8Array;
  from: number;
  /** Set when a line was too long to be read: the reader gives up. */
  refused: boolean;
  /** Parameters that the program has set; unused under a dialect without. */
  readonly parameters: Parameters;
  /** Whether words may have parameters and arithmetic in the place of numbers. */
  readonly computes: boolean;
  /** How blocks follow one another, where not all do in their order; undefined under a dialect without. */
  readonly flow: Flow | undefined;
  /** Once-only findings that were given. */
  readonly told: Set<string>;
}

/** Makes a reader. */
export function createReader(
  format: Format,
  machine: MachineFacts,
  options: ReadOptions,
  report: Report,
): Reader {
  const fragment = options.fragment ?? false;
  const units = format.unitsIn === "job" ? options.units : format.unitsIn;
  const { variables } = format;
  const tables = createTables(format, fragment);
  const flow = createFlow(variables, options.source, (code) => isDeclared(tables, letterM, 10 * code));
  const limited = limitReport(report, flow !== undefined);
  const quantities = createQuantities(format);
  return {
    format,
    machine,
    fragment,
    unitsGiven: units !== undefined,
    report: limited.report,
    closeReport: limited.close,
    tables,
    runs: createRuns(format, tables, options.blockByBlock ?? false),
    quantities,
    block: createBlock(),
    slots: createSlots(),
    filled: [],
    coolants: [],
    extras: [],
    state: startedState(createState(format, quantities, units ?? "mm"), options.start),
    batch: createBatch(),
    rowsBefore: 0,
    bytes: new Uint8Array(0),
    from: 0,
    refused: false,
    parameters: createParameters(),
    computes: variables !== undefined && variables.parameters !== "none",
    flow,
    told: new Set(),
  };
}

/** The state where a fragment starts; that of a program is left as it is. */
function startedState(state: State, start: ReadStart | undefined): State {
  if (start === undefined) return state;
  state.workKnown = start.known;
  state.work.set(start.places);
  state.incremental = start.distance === "incremental";
  state.feedMode = start.feedMode;
  state.modes = Object.values(modeBit).reduce((all, bit) => all | bit, 0);
  return state;
}

/** Whether this is the first time that something is told. */
export function firstTime(reader: Reader, what: string): boolean {
  if (reader.told.has(what)) return false;
  reader.told.add(what);
  return true;
}
