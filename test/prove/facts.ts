import { atomsPerMillimetre, milliPerRpm } from "#base";
import type {
  Confirmation,
  ConfirmationName,
  Effects,
  Expression,
  JobFacts,
  MachineFacts,
  StepKind,
  ToolFacts,
} from "#base";

const second = 1e6;

/** Every kind of step that has a word in the richest of dialects. */
export const allWords: readonly StepKind[] = [
  "units",
  "plane",
  "distance",
  "arc-centre",
  "feed-mode",
  "path",
  "overrides",
  "cycle",
  "local-shift",
  "rotation",
  "scale",
  "compensation",
  "work-offset",
  "length-offset",
  "select-tool",
  "change-tool",
  "spindle-stop",
  "spindle-orient",
  "coolant",
  "reference-return",
  "program-end",
];

export const unchanged: Effects = {
  position: "unchanged",
  spindle: "stopped",
  coolant: "unchanged",
  lengthOffset: "unchanged",
};

/** coast_down * from_rpm / max_rpm + 0.5 s, and the like for running up. */
export const stopTime: Expression = {
  op: "+",
  of: [
    {
      op: "/",
      of: [
        {
          op: "*",
          of: [
            { op: "name", name: "coast_down" },
            { op: "name", name: "from_rpm" },
          ],
        },
        { op: "name", name: "max_rpm" },
      ],
    },
    { op: "number", value: 0.5 * second },
  ],
};

const difference = (a: "rpm" | "from_rpm", b: "rpm" | "from_rpm"): Expression => ({
  op: "-",
  of: [
    { op: "name", name: a },
    { op: "name", name: b },
  ],
});

export const speedTime: Expression = {
  op: "+",
  of: [
    {
      op: "/",
      of: [
        {
          op: "*",
          of: [
            { op: "name", name: "spin_up" },
            { op: "max", of: [difference("rpm", "from_rpm"), difference("from_rpm", "rpm")] },
          ],
        },
        { op: "name", name: "max_rpm" },
      ],
    },
    { op: "number", value: 0.5 * second },
  ],
};

const waitOn = (signal: ConfirmationName): Confirmation => ({ by: "wait", signal, timeout: 10 * second });

export const waits: Partial<Record<ConfirmationName, Confirmation>> = {
  "at-speed": waitOn("at-speed"),
  stopped: waitOn("stopped"),
  released: waitOn("released"),
  clamped: waitOn("clamped"),
  air: waitOn("air"),
};

export const dwells: Partial<Record<ConfirmationName, Confirmation>> = {
  "at-speed": { by: "dwell", time: speedTime },
  stopped: { by: "dwell", time: stopTime },
  released: { by: "dwell", time: { op: "number", value: second } },
  clamped: { by: "dwell", time: { op: "number", value: second } },
};

const length = (value: number): number => value * atomsPerMillimetre;

/** A router of our own: controller swap, waits on signals, retract by machine move. */
export function machineFacts(changes: Partial<MachineFacts> = {}): MachineFacts {
  return {
    declared: true,
    unsaid: [],
    statable: allWords,
    travel: {
      x: [0, length(1220)],
      y: [0, length(810)],
      z: [length(-95), 0],
      a: [-360e6, 360e6],
    },
    spindle: {
      minRpm: 300 * milliPerRpm,
      maxRpm: 24000 * milliPerRpm,
      spinUp: 6 * second,
      spinDown: 6 * second,
      coastDown: 24 * second,
      orient: false,
    },
    confirm: waits,
    onTimeout: "alarm",
    afterStop: "keeps-modes",
    endResets: true,
    offWords: [],
    signals: {
      "at-speed": { input: 4, level: "on", settle: 0.3 * second },
      stopped: { input: 5, level: "on", settle: 0 },
      clamped: { input: 7, level: "on", settle: 0 },
      released: { input: 7, level: "off", settle: 0 },
      air: { input: 6, level: "on", settle: 0 },
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
    changeEffects: unchanged,
    cyclesAlongZ: false,
    endsEmpty: false,
    opaqueEffects: {},
    drawbar: undefined,
    rack: undefined,
    park: { x: length(600), y: length(800) },
    outputs: [],
    hood: true,
    keepOut: [],
    tapping: { kind: "floating", reversal: second, longhand: false },
    feed: { least: 0, most: length(6000) },
    axisFeed: {},
    dynamics: {
      rapidRate: {},
      acceleration: {},
      blending: undefined,
      controllerSwap: undefined,
      operatorSwap: undefined,
    },
    rapids: "dog-leg",
    countsIn: undefined,
    rapidAxes: "together",
    machineMoveLasts: "block",
    arcTolerance: { mm: 20_000, inch: 50_800, relative: 0 },
    ...changes,
  };
}

/** The rack of the quarry router. */
export function rackFacts(changes: Partial<MachineFacts> = {}): MachineFacts {
  return machineFacts({
    swap: "rack",
    drawbar: { travels: "released", taperAir: false },
    rack: {
      style: "drop-in",
      clearZ: length(-5),
      pocketZ: length(-78.4),
      pockets: [
        { x: length(40), y: length(20) },
        { x: length(120), y: length(20) },
        { x: length(200), y: length(20) },
      ],
      zone: { min: [0, 0, length(-95)], max: [length(260), length(60), length(-5)] },
      slide: undefined,
      descendFeed: length(600),
      descendFrom: length(20),
      widest: length(60),
      longest: length(70),
      cover: false,
      atEnd: "return",
    },
    ...changes,
  });
}

/** A tool that may do anything; changes say what is special. */
export function toolFacts(number: number, changes: Partial<ToolFacts> = {}): ToolFacts {
  return {
    number,
    kind: "end-mill",
    diameter: length(6),
    maxRpm: 24000 * milliPerRpm,
    minRpm: 0,
    maxFeed: Infinity,
    lengthOffset: number,
    radiusOffset: number,
    direction: undefined,
    lead: 0,
    length: length(40),
    ...changes,
  };
}

/** A plate of 100 x 80 x 10 mm on work offset 1. Stock top is Z 0. */
export function jobFacts(changes: Partial<JobFacts> = {}): JobFacts {
  return {
    known: true,
    tools: [
      toolFacts(1),
      toolFacts(2, { kind: "drill", diameter: length(4) }),
      toolFacts(3, { kind: "tap", lead: length(1), direction: "cw" }),
    ],
    stock: { min: [0, 0, length(-10)], max: [length(100), length(80), 0] },
    fixtures: [],
    clearance: length(15),
    workOffsets: [
      undefined,
      [length(300), length(200), length(-80)],
      [length(500), length(200), length(-80)],
    ],
    spindleHolds: undefined,
    rack: [1, 2, 3],
    ...changes,
  };
}

/** Nothing is known: a program from elsewhere. */
export const noJob: JobFacts = {
  known: false,
  tools: [],
  stock: undefined,
  fixtures: [],
  clearance: undefined,
  workOffsets: [],
  spindleHolds: undefined,
  rack: [],
};
