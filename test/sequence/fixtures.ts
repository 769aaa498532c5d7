import type {
  Capabilities,
  Confirmation,
  CoolantMedium,
  Expression,
  Finding,
  JobFacts,
  MachineFacts,
  SpindleDirection,
  ToolKind,
} from "#base";
import { atomsPerMillimetre, axisBit, createBatch, frame, linearAxes, pushAside, rowKind } from "#base";
import type { Batch } from "#base";
import type { Job, Operation, Tool } from "#job";
import type { LoweredStep } from "#lower";
import { planJobFacts, sequence } from "#sequence";
import type { SequenceRequest, Setup } from "#sequence";
import { printSteps } from "../support/print-steps.ts";

/** Millimetres in atoms. */
export const mm = (value: number): number => Math.round(value * atomsPerMillimetre);
/** Seconds in microseconds. */
export const s = (value: number): number => Math.round(value * 1_000_000);
/** Revolutions a minute in milli-rpm. */
export const rpm = (value: number): number => value * 1000;

const words = [
  ...["units.mm", "units.inch", "plane.xy", "plane.zx", "plane.yz", "distance.absolute", "distance.incremental"],
  ...["feed.per-minute", "path.exact", "path.blend", "compensation.off", "cancel.cycles", "cancel.overrides"],
  ...["length-offset.on", "length-offset.off", "machine-move", "reference-return", "dwell.code", "tools.change"],
  ...["spindle.cw", "spindle.ccw", "spindle.stop", "spindle.orient", "coolant.mist", "coolant.flood", "coolant.off"],
  ...["stops.stop", "stops.optional", "stops.end", "idioms.message", "idioms.wait-signal", "work-offset.1", "work-offset.2"],
];
const noWords = [
  ...["feed.per-revolution", "feed.inverse-time", "path.stop", "cancel.local-shift", "cancel.rotation", "cancel.scale"],
  ...["arc.centre-words.absolute", "arc.centre-words.incremental", "coolant.air", "coolant.through-tool"],
  ...[3, 4, 5, 6, 7, 8, 9].map((number) => `work-offset.${String(number)}`),
];

/** What a complete controller of the tests can say, but for what `change` says. */
export function capabilitiesOf(change: Partial<Capabilities> = {}, said: Record<string, boolean | undefined> = {}): Capabilities {
  const table: Record<string, boolean> = {};
  for (const word of words) table[word] = true;
  for (const word of noWords) table[word] = false;
  for (const [word, has] of Object.entries(said)) {
    if (has === undefined) Reflect.deleteProperty(table, word);
    else table[word] = has;
  }
  return {
    words: table,
    programsIn: "job",
    distance: "absolute",
    lengthGrid: { mm: 10_000, inch: 25_400 },
    centreGrid: { mm: 10_000, inch: 25_400 },
    angleGrid: 1000,
    feedPerMinuteGrid: { mm: 1_000_000, inch: 2_540_000 },
    feedPerRevolutionGrid: undefined,
    inverseTimeGrid: undefined,
    speedGrid: 1000,
    dwellGrid: 10_000,
    rapids: "dog-leg",
    arcs: {
      form: "incremental-centre",
      largestSweep: 360_000_000,
      fullCircle: true,
      planes: ["xy"],
      helix: true,
      turns: false,
      feedAlong: "path",
      smallestRadius: 0,
      largestRadius: Infinity,
      chordTolerance: undefined,
    },
    cycles: { backOff: {}, levels: "both", dwellGrid: 10_000 },
    spindleOrder: "speed-first",
    spindleBlocks: "together",
    preselect: false,
    ...change,
  };
}

const name = (value: "rpm" | "from_rpm" | "max_rpm" | "spin_up" | "coast_down"): Expression => ({ op: "name", name: value });
const number = (value: number): Expression => ({ op: "number", value });
const halfSecond = number(500_000);

/** "spin_up * max(rpm - from_rpm, from_rpm - rpm) / max_rpm + 0.5 * second" */
export const atSpeedByDwell: Confirmation = {
  by: "dwell",
  time: {
    op: "+",
    of: [
      {
        op: "/",
        of: [
          {
            op: "*",
            of: [
              name("spin_up"),
              {
                op: "max",
                of: [
                  { op: "-", of: [name("rpm"), name("from_rpm")] },
                  { op: "-", of: [name("from_rpm"), name("rpm")] },
                ],
              },
            ],
          },
          name("max_rpm"),
        ],
      },
      halfSecond,
    ],
  },
};

/** "coast_down * from_rpm / max_rpm + 0.5 * second" */
export const stoppedByDwell: Confirmation = {
  by: "dwell",
  time: {
    op: "+",
    of: [{ op: "/", of: [{ op: "*", of: [name("coast_down"), name("from_rpm")] }, name("max_rpm")] }, halfSecond],
  },
};

/** A machine that swaps by its controller and confirms by signals, but for what `change` says. */
export function machineOf(change: Partial<MachineFacts> = {}): MachineFacts {
  return {
    declared: true,
    statable: [
      ...(["units", "plane", "distance", "feed-mode", "path", "compensation", "cycle", "overrides", "coolant"] as const),
      ...(["spindle-stop", "length-offset", "work-offset", "wait", "dwell", "change-tool"] as const),
    ],
    travel: { x: [0, mm(1220)], y: [0, mm(810)], z: [mm(-95), 0] },
    spindle: {
      minRpm: rpm(3000),
      maxRpm: rpm(24000),
      spinUp: s(6),
      spinDown: s(6),
      coastDown: s(25),
      orient: false,
    },
    confirm: {
      "at-speed": { by: "wait", signal: "at-speed", timeout: s(10) },
      stopped: { by: "wait", signal: "stopped", timeout: s(30) },
    },
    onTimeout: "alarm",
    signals: {
      "at-speed": { input: 4, level: "on", settle: s(0.3) },
      stopped: { input: 5, level: "on", settle: 0 },
    },
    retract: {
      by: "machine-move",
      z: 0,
      actsOn: "spindle-nose",
      cancelLengthFirst: false,
      intermediate: "none",
      changePosition: undefined,
    },
    lengthOffset: { form: "with-first-z", selectMoves: false, cancelMoves: false },
    lengths: "table",
    swap: "controller",
    changeEffects: { position: "unchanged", spindle: "stopped", coolant: "unchanged", lengthOffset: "unchanged" },
    opaqueEffects: {},
    drawbar: undefined,
    rack: undefined,
    park: undefined,
    outputs: [],
    hood: false,
    keepOut: [],
    tapping: undefined,
    feed: { least: 0, most: Infinity },
    rapids: "dog-leg",
    arcTolerance: { mm: mm(0.002), inch: 0, relative: 0 },
    ...change,
  };
}

/** The router at the quarry workshop: six pockets, a pneumatic drawbar. */
export function rackMachine(change: Partial<MachineFacts> = {}): MachineFacts {
  const machine = machineOf();
  return {
    ...machine,
    swap: "rack",
    changeEffects: undefined,
    confirm: {
      ...machine.confirm,
      released: { by: "wait", signal: "released", timeout: s(2) },
      clamped: { by: "wait", signal: "clamped", timeout: s(2) },
      air: { by: "wait", signal: "air", timeout: s(5) },
    },
    signals: {
      ...machine.signals,
      air: { input: 6, level: "on", settle: 0 },
      clamped: { input: 7, level: "on", settle: 0 },
      released: { input: 8, level: "on", settle: 0 },
    },
    drawbar: { travels: "released", taperAir: false },
    rack: {
      style: "drop-in",
      clearZ: mm(-5),
      pocketZ: mm(-78.4),
      pockets: [0, 1, 2, 3, 4, 5].map((pocket) => ({ x: mm(40 + 80 * pocket), y: mm(20) })),
      zone: { min: [0, 0, mm(-95)], max: [mm(500), mm(60), mm(-5)] },
      slide: undefined,
      descendFeed: mm(600),
      descendFrom: mm(20),
      widest: mm(60),
      longest: Infinity,
      cover: false,
      atEnd: "return",
    },
    ...change,
  };
}

/** Idioms of a rack. */
export const rackWords = { "idioms.release": true, "idioms.clamp": true };

export function toolOf(number: number, kind: ToolKind = "end-mill", change: Partial<Tool> = {}): Tool {
  return {
    number,
    kind,
    diameter: mm(6),
    description: "",
    flutes: undefined,
    maxRpm: undefined,
    minRpm: undefined,
    maxFeed: undefined,
    lengthOffset: number,
    radiusOffset: undefined,
    length: undefined,
    fluteLength: undefined,
    stickOut: undefined,
    shank: undefined,
    holder: undefined,
    cornerRadius: undefined,
    tipDiameter: undefined,
    tipAngle: undefined,
    lead: undefined,
    hand: undefined,
    centreCutting: undefined,
    life: undefined,
    measure: undefined,
    source: 0,
    ...change,
  };
}

/** An operation with a tool; `turns` is its speed in rpm and direction. */
export function operationOf(tool: number, turns = 18000, change: Partial<Operation> = {}, direction: SpindleDirection = "cw"): Operation {
  return {
    id: `op${String(tool)}`,
    name: "",
    tool,
    spindle: turns === 0 ? undefined : { rpm: rpm(turns), direction },
    coolant: [],
    feedMode: "per-minute",
    workOffset: 1,
    clearance: mm(15),
    hood: undefined,
    tolerance: undefined,
    path: undefined,
    moves: { start: 0, end: 0 },
    source: 0,
    ...change,
  };
}

export function jobOf(operations: readonly Operation[], tools?: readonly Tool[]): Job {
  const numbers = [...new Set(operations.map((operation) => operation.tool))];
  return {
    name: "",
    units: "mm",
    program: { number: undefined, name: undefined },
    stock: undefined,
    fixtures: [],
    workOffset: 1,
    clearance: mm(15),
    tools: tools ?? numbers.map((tool) => toolOf(tool)),
    operations,
  };
}

/** A place in mm, with a feed in mm a minute where it is cut. */
export interface Move {
  readonly x?: number;
  readonly y?: number;
  readonly z?: number;
  readonly feed?: number;
}

/** One thing that lowering hands on. */
export type Item = Move | LoweredStep;

/** An operation as lowering gives it: to `x0 y0` at clearance, the items, and Z back to clearance. */
export function lowered(index: number, operation: Operation, ...items: Item[]): Batch<LoweredStep> {
  const batch = createBatch<LoweredStep>(64);
  const at: { x: number; y: number; z: number } = { x: 0, y: 0, z: operation.clearance };
  pushAside(batch, { kind: "operation-start", index }, 0);
  const move = (item: Move): void => {
    let stated = 0;
    for (const axis of ["x", "y", "z"] as const) {
      const value = item[axis];
      if (value === undefined) continue;
      stated |= axisBit[axis];
      at[axis] = mm(value);
    }
    const row = batch.count++;
    Object.entries(at).forEach(([axis, value]) => (batch[axis as "x"][row] = value));
    batch.kind[row] = item.feed === undefined ? rowKind.rapid : rowKind.line;
    batch.frame[row] = frame.work;
    batch.known[row] = linearAxes;
    batch.stated[row] = stated;
    batch.feed[row] = mm(item.feed ?? 0);
    batch.aside[row] = -1;
  };
  const given = items.length > 0 ? items : [{ x: 10, y: 20 }, { z: -1, feed: 200 }];
  for (const item of given) {
    if ("kind" in item) pushAside(batch, item, 0);
    else move(item);
  }
  if (at.z !== operation.clearance) move({ z: operation.clearance / atomsPerMillimetre });
  pushAside(batch, { kind: "operation-end", index }, 0);
  return batch;
}

/** What a run of sequencing gave. */
export interface Outcome {
  readonly lines: readonly string[];
  readonly findings: readonly Finding[];
  readonly facts: JobFacts;
}

/** A request over a whole job. */
export interface Given {
  readonly job: Job;
  readonly machine: MachineFacts;
  readonly capabilities?: Capabilities;
  readonly setup?: Partial<Setup>;
  readonly units?: "mm" | "inch";
  readonly airCut?: boolean;
}

export const noSetup: Setup = { workOffsets: [], lengths: {}, rack: undefined, spindleHolds: undefined };

/** The request for a job, and the findings of planning it. */
export function requestOf(given: Given): { request: SequenceRequest; findings: Finding[] } {
  const findings: Finding[] = [];
  const common = {
    job: given.job,
    operations: given.job.operations.map((_, index) => index),
    machine: given.machine,
    capabilities: given.capabilities ?? capabilitiesOf(),
    units: given.units ?? ("mm" as const),
  };
  const setup = { ...noSetup, ...given.setup };
  const facts = planJobFacts({ ...common, setup, workZero: [] }, (finding) => findings.push(finding));
  return { request: { ...common, facts, airCut: given.airCut ?? false, cleanText: (text) => text }, findings };
}

/** Sequences a job whose operations hold the items given, or one short cut each. */
export function run(given: Given, ...items: readonly (readonly Item[])[]): Outcome {
  const { request, findings } = requestOf(given);
  const batches = given.job.operations.map((operation, index) => lowered(index, operation, ...(items[index] ?? [])));
  const lines = printSteps(sequence(batches, request, (finding) => findings.push(finding)));
  return { lines, findings, facts: request.facts };
}

/** The lines of one operation: from behind a line to before another. */
export function between(lines: readonly string[], from: string, to: string): readonly string[] {
  const start = lines.indexOf(from);
  return lines.slice(start + 1, lines.indexOf(to, start + 1));
}

/** Media of a coolant request. */
export const coolantRequest = (...media: CoolantMedium[]): LoweredStep => ({ kind: "coolant-request", media });
