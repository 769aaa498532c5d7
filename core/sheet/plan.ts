/** The facts of a sheet about a job that can be read. */
import type { MachineFacts, SimulationFigures, TimeParts, Times } from "#base";
import { chooseOperations } from "#job";
import type { SheetMachine, SheetPlan, SheetProgram } from "#report";
import { openInput } from "#retrace";
import type { Undertaking } from "../undertaking.ts";
import { airCutOf } from "./air-cut.ts";
import { beforeStart, proveOutSteps } from "./checks.ts";
import type { SheetInput } from "./input.ts";
import { jobTexts } from "./job-texts.ts";
import { sheetOperation } from "./operations.ts";
import type { ProgramRow } from "./program-rows.ts";
import { removedBy } from "./removed.ts";
import { createSpan, widen } from "./span.ts";
import { sheetStops } from "./stops.ts";
import { takeRow } from "./take-row.ts";
import type { Tally } from "./tally.ts";
import { createTally } from "./tally.ts";
import { sheetTools } from "./tools.ts";
import type { Measure } from "./units.ts";
import { boxOf, createMeasure, rangeOf, rounded, rpmOf } from "./units.ts";
import { sheetOffsets } from "./work-offsets.ts";

/**
 * Counts the rows of a program and puts together what a sheet says of it.
 *
 * @param rows of the program where it is proved, otherwise as far as they can be had
 */
export function sheetPlan(
  input: SheetInput,
  work: Undertaking,
  rows: Iterable<ProgramRow>,
  {
    program,
    simulation,
    time,
  }: {
    readonly program: SheetProgram | undefined;
    readonly simulation: SimulationFigures | undefined;
    readonly time: Times | undefined;
  },
): SheetPlan {
  const tally = count(work, rows);
  const measure = createMeasure(work.units);
  const { format } = input.dialect;
  const reaches = [...tally.reaches.values()];
  const texts = textsOf(input);
  const tools = sheetTools({ work, setup: input.setup, format, reaches, measure });
  const isAirCut = work.facts.airCut === true;
  const airCut = isAirCut ? undefined : airCutOf(work, reaches, measure);
  const facts = {
    ...jobFacts(work, measure),
    workOffsets: sheetOffsets(work, format, reaches, measure),
    tools: tools.map((tool) => ({
      ...tool,
      ...secondsOf(time?.tools.find((one) => one.tool === tool.number)),
    })),
    rack: work.facts.rack.map((tool, index) => ({ pocket: index + 1, tool })),
    ...(work.facts.spindleHolds === undefined ? {} : { spindleHolds: work.facts.spindleHolds }),
    operations: tally.operations.map((one, index) => ({
      ...sheetOperation(one, texts.notes[index], measure),
      ...secondsOf(time?.operations.find(({ id }) => id === one.operation.id)),
      ...removedBy(one.operation.id, simulation, work.units),
    })),
    stops: sheetStops({ tally, texts, tools, machine: work.machine }),
    assumptions: work.summary().assumptions,
    ...(airCut === undefined ? {} : { airCut }),
    ...(time === undefined ? {} : { time }),
  };
  const checks = { ...facts, program, airCut, isAirCut };
  return { ...facts, before: beforeStart(checks), proveOut: proveOutSteps(checks) };
}

function secondsOf(parts: TimeParts | undefined): { time?: number } {
  return parts === undefined ? {} : { time: rounded(parts.total, 1) };
}

function count({ job, operations, machine, facts }: Undertaking, rows: Iterable<ProgramRow>): Tally {
  const tally = createTally(operations, job.tools, machine.swap, facts.spindleHolds);
  for (const { batch, row, line } of rows) takeRow(tally, batch, row, line);
  return tally;
}

/** The job is opened once more: what its moves say to people stands in no row of a program. */
function textsOf({ source, reading, options }: SheetInput) {
  const opened = openInput(source, reading ?? { form: "json" }, () => undefined);
  if (opened === undefined) return { pauses: new Map<number, string>(), notes: [] };
  return jobTexts(
    opened,
    chooseOperations(opened.job, options, () => undefined),
  );
}

function jobFacts({ job, operations, units, machine }: Undertaking, measure: Measure) {
  const { number, name } = job.program;
  const clearance = createSpan();
  operations.forEach((operation) => widen(clearance, operation.clearance));
  const { stock, fixtures } = job;
  return {
    name: job.name,
    program: { ...(number === undefined ? {} : { number }), ...(name === undefined ? {} : { name }) },
    units,
    machine: machineFacts(machine, measure),
    ...(stock && {
      stock: {
        ...boxOf("stock", stock.min, stock.max, measure),
        ...(stock.material === undefined ? {} : { material: stock.material }),
      },
    }),
    fixtures: fixtures.map((box) => boxOf(box.name, box.min, box.max, measure)),
    clearance: rangeOf(clearance, measure.length) ?? { least: 0, most: 0 },
  };
}

function machineFacts({ travel, spindle, swap, lengths }: MachineFacts, { length }: Measure): SheetMachine {
  const of = (axis: "x" | "y" | "z") => {
    const range = travel[axis];
    return range === undefined ? {} : { [axis]: { least: length(range[0]), most: length(range[1]) } };
  };
  const { minRpm, maxRpm } = spindle;
  const isSpindleKnown = minRpm !== undefined && maxRpm !== undefined;
  return {
    travel: { ...of("x"), ...of("y"), ...of("z") },
    ...(isSpindleKnown ? { spindle: { least: rpmOf(minRpm), most: rpmOf(maxRpm) } } : {}),
    ...(swap === undefined ? {} : { toolChange: swap }),
    ...(lengths === undefined ? {} : { lengths }),
  };
}
