import type { Capabilities, Confirmation, Expression, MachineFacts } from "#base";
import { atomsPerMillimetre } from "#base";

/** Millimetres in atoms. */
export const mm = (value: number): number => Math.round(value * atomsPerMillimetre);
/** Seconds in microseconds. */
export const s = (value: number): number => Math.round(value * 1_000_000);
/** Revolutions a minute in milli-rpm. */
export const rpm = (value: number): number => value * 1000;

const words = [
  ...["motion.rapid", "motion.line"],
  ...[
    "units.mm",
    "units.inch",
    "plane.xy",
    "plane.zx",
    "plane.yz",
    "distance.absolute",
    "distance.incremental",
  ],
  ...["feed.per-minute", "path.exact", "path.blend", "compensation.off", "cancel.cycles", "cancel.overrides"],
  ...[
    "length-offset.on",
    "length-offset.off",
    "machine-move",
    "reference-return",
    "dwell.code",
    "tools.change",
  ],
  ...[
    "spindle.cw",
    "spindle.ccw",
    "spindle.stop",
    "spindle.orient",
    "coolant.mist",
    "coolant.flood",
    "coolant.off",
  ],
  ...[
    "stops.stop",
    "stops.optional",
    "stops.end",
    "idioms.message",
    "idioms.wait-signal",
    "work-offset.1",
    "work-offset.2",
  ],
];
const noWords = [
  ...[
    "feed.per-revolution",
    "feed.inverse-time",
    "path.stop",
    "cancel.local-shift",
    "cancel.rotation",
    "cancel.scale",
  ],
  ...["path.look-ahead.on", "path.look-ahead.off"],
  ...["compensation.corner-feed.on", "compensation.corner-feed.off"],
  ...["arc.centre-words.absolute", "arc.centre-words.incremental", "coolant.air", "coolant.through-tool"],
  ...[3, 4, 5, 6, 7, 8, 9].map((number) => `work-offset.${String(number)}`),
];

/** What a complete controller of the tests can say, but for what `change` says. */
export function capabilitiesOf(
  change: Partial<Capabilities> = {},
  said: Record<string, boolean | undefined> = {},
): Capabilities {
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
    rapidFeed: null,
    unitsStated: "with-modes",
    axesOfRapid: 6,
    axesAtOnce: 6,
    arcs: {
      form: "incremental-centre",
      largestSweep: 360_000_000,
      quadrants: "any",
      fullCircle: true,
      planes: ["xy"],
      helix: true,
      turns: false,
      feedAlong: "path",
      smallestRadius: 0,
      largestRadius: Infinity,
      chordTolerance: undefined,
    },
    cycles: {
      backOff: {},
      levels: "both",
      dwellGrid: 10_000,
      peckGrid: undefined,
      saysBackOff: false,
      alongZ: false,
      tapLead: false,
    },
    spindleOrder: "speed-first",
    spindleBlocks: "together",
    gears: [],
    stopComment: "own-block",
    toolDigits: 0,
    toolsNamed: true,
    emptyTool: 0,
    freeOffsets: true,
    cancelsBeforeChange: false,
    preselect: false,
    ...change,
  };
}

const name = (value: "rpm" | "from_rpm" | "max_rpm" | "spin_up" | "coast_down"): Expression => ({
  op: "name",
  name: value,
});
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
    of: [
      { op: "/", of: [{ op: "*", of: [name("coast_down"), name("from_rpm")] }, name("max_rpm")] },
      halfSecond,
    ],
  },
};

/** A machine that swaps by its controller and confirms by signals, but for what `change` says. */
export function machineOf(change: Partial<MachineFacts> = {}): MachineFacts {
  return {
    declared: true,
    unsaid: [],
    statable: [
      ...([
        "units",
        "plane",
        "distance",
        "feed-mode",
        "path",
        "compensation",
        "cycle",
        "overrides",
        "coolant",
      ] as const),
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
    afterStop: "keeps-modes",
    endResets: true,
    offWords: [],
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
    changeEffects: {
      position: "unchanged",
      spindle: "stopped",
      coolant: "unchanged",
      lengthOffset: "unchanged",
    },
    cyclesAlongZ: false,
    endsEmpty: false,
    opaqueEffects: {},
    drawbar: undefined,
    rack: undefined,
    park: undefined,
    outputs: [],
    hood: false,
    keepOut: [],
    tapping: undefined,
    feed: { least: 0, most: Infinity },
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
