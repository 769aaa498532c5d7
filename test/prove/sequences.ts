import { atomsPerMillimetre } from "#base";
import type { MachineFacts, JobFacts } from "#base";
import { allWords, dwells, jobFacts, machineFacts, rackFacts, toolFacts, unchanged, waits } from "./facts.ts";
import type { Item } from "./layout.ts";
import {
  afterSwap,
  approach,
  beforeSwap,
  end,
  holes,
  move,
  pause,
  retract,
  slot,
  spinUp,
  start,
  step,
  toolSection,
} from "./pieces.ts";
import type { Section, Setting } from "./pieces.ts";
import { coverClose, coverOpen, pickTool, returnAtEnd, returnTool } from "./rack-pieces.ts";

/** A sequence that breaks no rule, and what it is for. */
export interface Sequence extends Setting {
  items: Item[];
}

const mill: Section = { tool: 1, rpm: 16000, x: 10, y: 20, coolant: "mist" };
const drill: Section = { tool: 2, rpm: 8000, x: 20, y: 20 };
const tap: Section = { tool: 3, rpm: 600, x: 20, y: 20 };

function setting(facts: MachineFacts, job: JobFacts = jobFacts()): Setting {
  return { facts, job };
}

const sequence = (where: Setting, ...parts: Item[][]): Sequence => ({ ...where, items: parts.flat() });

/** Two tools changed by the controller. */
export function controllerSwap(changes: Partial<MachineFacts> = {}, job = jobFacts()): Sequence {
  const where = setting(machineFacts(changes), job);
  return sequence(
    where,
    start(where),
    toolSection(where, mill, 0, true),
    slot(),
    toolSection(where, drill, 16000),
    holes(
      {},
      [
        [20, 20],
        [40, 20],
        [40, 60],
      ],
      300,
    ),
    [move({ kind: "rapid", z: 15 })],
    end(where, 8000),
  );
}

/** Two tools swapped by the program at the rack; the last one goes back. */
export function rackSwap(changes: Partial<MachineFacts> = {}, job = jobFacts({ spindleHolds: 0 })): Sequence {
  const where = setting(rackFacts(changes), job);
  const open = where.facts.drawbar!.travels === "released";
  return sequence(
    where,
    start(where),
    beforeSwap(where, 0, true),
    coverOpen(where),
    pickTool(where, 1, false),
    coverClose(where),
    afterSwap(where, mill),
    slot(),
    beforeSwap(where, 16000),
    coverOpen(where),
    returnTool(where, 1),
    pickTool(where, 2, open),
    coverClose(where),
    afterSwap(where, drill),
    holes(
      {},
      [
        [20, 20],
        [40, 20],
      ],
      300,
    ),
    [move({ kind: "rapid", z: 15 })],
    end(where, 8000, returnAtEnd(where, 2)),
  );
}

/** The rack with everything: holders slide in, a cover, taper air, a sensed tool, travel with the drawbar clamped. */
export function slideRack(): Sequence {
  const facts = rackFacts();
  const rack = {
    ...facts.rack!,
    style: "slide-in" as const,
    slide: { x: 0, y: -30 * atomsPerMillimetre, feed: 1500 * atomsPerMillimetre },
    cover: true,
  };
  const signals = { ...facts.signals, "tool-present": { input: 9, level: "on" as const, settle: 0 } };
  return rackSwap({
    rack,
    signals,
    drawbar: { travels: "clamped", taperAir: true },
    spindle: { ...facts.spindle, orient: true },
  });
}

/** A rack program that does not know what the spindle holds begins with a stop that asks for an empty one. */
export function rackAsking(): Sequence {
  const known = rackSwap();
  const where = setting(known.facts, jobFacts());
  const first = start(where);
  const ask = [
    step({ kind: "message", text: "empty the spindle" }),
    step({ kind: "pause", optional: false }, "ask"),
  ];
  return sequence(where, first, ask, retract(where), known.items.slice(first.length));
}

/** Words of the stable core: no units, no offsets. */
export const coreWords = [
  "plane",
  "distance",
  "feed-mode",
  "compensation",
  "cycle",
  "spindle-stop",
  "coolant",
  "change-tool",
  "program-end",
] as const;

/** Swaps by hand on a machine that only knows clearance; all is confirmed by time. */
export function operatorSwap(changes: Partial<MachineFacts> = {}, job = jobFacts()): Sequence {
  const where = setting(
    machineFacts({
      swap: "operator",
      statable: coreWords,
      retract: { ...machineFacts().retract!, by: "clearance", actsOn: "tool-tip" },
      lengthOffset: { form: "none", selectMoves: false, cancelMoves: false },
      lengths: "operator",
      confirm: dwells,
      changeEffects: undefined,
      park: undefined,
      hood: false,
      ...changes,
    }),
    job,
  );
  return sequence(
    where,
    start(where),
    toolSection(where, mill, 0, true),
    slot(),
    toolSection(where, drill, 16000),
    holes(
      { cycle: "peck", peck: 3 },
      [
        [20, 20],
        [40, 20],
      ],
      300,
    ),
    [move({ kind: "rapid", z: 15 })],
    end(where, 8000),
  );
}

/** The tool is in the spindle already: no swap, everything else. */
export function singleTool(changes: Partial<MachineFacts> = {}): Sequence {
  const where = setting(machineFacts(changes), jobFacts({ spindleHolds: 1 }));
  return sequence(
    where,
    start(where),
    beforeSwap(where, 0, true),
    afterSwap(where, mill),
    slot(),
    end(where, 16000),
  );
}

/** One tool with a body of its own. */
export function withBody(
  section: Section,
  body: Item[],
  changes: Partial<MachineFacts> = {},
  job = jobFacts(),
): Sequence {
  const where = setting(machineFacts(changes), job);
  return sequence(where, start(where), toolSection(where, section, 0, true), body, end(where, section.rpm));
}

export const rise = (z = 15): Item => move({ kind: "rapid", z }, "rise");

/** Tapping by cycle; speed and direction are restated after it, before the next feed. */
export function tapping(): Sequence {
  const where = setting(machineFacts());
  const body = [
    ...holes(
      { cycle: "tap" },
      [
        [20, 20],
        [40, 20],
      ],
      600,
    ),
    ...spinUp(where, 600),
    ...holes({ cycle: "tap", depth: -5 }, [[60, 20]], 600),
    rise(),
  ];
  return withBody(tap, body);
}

/** Arcs by centre and by radius, in all planes, helix and several turns. */
export function arcs(): Sequence {
  return withBody(mill, [
    move({ kind: "rapid", z: 2 }),
    move({ kind: "line", z: 0, feed: 300 }),
    move({ kind: "arcXy", x: 30, y: 20, z: -1, c1: 20, c2: 20, turns: 1, feed: 600 }, "half"),
    move({ kind: "arcXy", x: 30, y: 20, c1: 40, c2: 20, turns: -1, feed: 600 }, "full"),
    move({ kind: "arcXy", z: -3, c1: 40, c2: 20, turns: 2, feed: 600 }, "two turns"),
    move({ kind: "radiusXy", x: 40, y: 30, c1: 10, turns: -1, feed: 600 }, "quarter by radius"),
    move({ kind: "radiusXy", x: 50, y: 20, c1: -10, turns: 1, feed: 600 }, "three quarters by radius"),
    step({ kind: "plane", value: "zx" }, "plane zx"),
    move({ kind: "arcZx", x: 54, c1: -3, c2: 52, turns: 1, feed: 600 }, "arc zx"),
    step({ kind: "plane", value: "yz" }, "plane yz"),
    move({ kind: "arcYz", y: 24, c1: 22, c2: -3, turns: -1, feed: 600 }, "arc yz"),
    step({ kind: "plane", value: "xy" }),
    rise(),
  ]);
}

/** A stop in the middle, then an optional one. */
export function pausing(): Sequence {
  const where = setting(machineFacts());
  return withBody(mill, [
    ...slot(),
    ...pause(where, mill),
    ...slot(),
    ...pause(where, mill, true),
    ...slot(),
  ]);
}

/** A contour under compensation. */
export function compensated(): Sequence {
  return withBody(mill, [
    move({ kind: "rapid", z: 2 }),
    move({ kind: "line", z: -2, feed: 200 }),
    step({ kind: "compensation", value: "left", offset: 1 }, "on"),
    move({ kind: "line", x: 20, y: 30, feed: 800 }, "entry"),
    move({ kind: "line", x: 60, y: 30, feed: 800 }),
    move({ kind: "arcXy", x: 70, y: 40, c1: 60, c2: 40, turns: 1, feed: 800 }, "corner"),
    step({ kind: "compensation", value: "off", offset: 0 }, "off"),
    move({ kind: "line", x: 70, y: 50, feed: 800 }, "exit"),
    rise(),
  ]);
}

/** Feed by the revolution. */
export function perRevolution(): Sequence {
  return withBody({ ...mill, feedMode: "per-revolution", rpm: 10000 }, [
    move({ kind: "rapid", z: 2 }),
    move({ kind: "line", z: -2, feed: 0.05 }, "plunge"),
    move({ kind: "line", x: 50, feed: 0.1 }, "cut"),
    rise(),
  ]);
}

/** Inverse time with a rotary axis. */
export function inverseTime(): Sequence {
  return withBody({ ...mill, feedMode: "inverse-time" }, [
    move({ kind: "rapid", a: 0 }),
    move({ kind: "rapid", z: 2 }),
    move({ kind: "line", z: -2, feed: 50 }, "plunge"),
    move({ kind: "line", x: 50, a: 90, feed: 20 }, "cut"),
    move({ kind: "arcXy", x: 70, c1: 60, c2: 20, turns: 1, feed: 10 }),
    rise(),
    step({ kind: "feed-mode", value: "per-minute" }),
  ]);
}

/** The same tool goes on at another work offset, then at another speed, then the other way round. */
export function sameTool(changes: Partial<MachineFacts> = {}): Sequence {
  const where = setting(machineFacts(changes));
  const next = { ...mill, workOffset: 2 };
  const middle = [
    ...retract(where),
    step({ kind: "work-offset", number: 2 }, "other work offset"),
    ...approach(where, next),
    ...slot(),
    step({ kind: "spindle-speed", rpm: 9_000_000 }, "other speed"),
    ...afterSpeed(where),
    ...slot(),
    ...beforeSwap(where, 9000).filter((item) => item.name !== "cancel length"),
    ...spinUp(where, 9000, "ccw"),
    step({ kind: "length-offset", number: 1 }),
    move({ kind: "rapid", z: 15 }),
    ...slot(),
  ];
  return withBody(mill, [...slot(), ...middle], changes);
}

function afterSpeed(where: Setting): Item[] {
  return spinUp(where, 9000).slice(2);
}

/** Probe, knife and pen never turn. */
export function knife(): Sequence {
  const job = jobFacts({ tools: [toolFacts(1, { kind: "drag-knife" })] });
  return withBody({ ...mill, rpm: 0 }, slot(), {}, job);
}

/** Good sequences by name; each is made anew, so that a test may break it. */
export const goodSequences: Readonly<Record<string, () => Sequence>> = {
  "controller swap": () => controllerSwap(),
  "controller swap that loses the position": () =>
    controllerSwap({ changeEffects: { ...unchanged, position: "unknown" } }),
  "controller swap at swap height": () =>
    controllerSwap({ changeEffects: { ...unchanged, position: "swap-height" } }),
  "controller swap, straight rapids": () => controllerSwap({ rapids: "straight" }),
  "offset in the tool word": () =>
    controllerSwap({ lengthOffset: { form: "in-tool-word", selectMoves: false, cancelMoves: false } }),
  "offset in its own block": () =>
    controllerSwap({ lengthOffset: { form: "own-block", selectMoves: true, cancelMoves: true } }),
  "cancelled before the first retract": () =>
    controllerSwap({
      retract: { ...machineFacts().retract!, actsOn: "tool-tip", cancelLengthFirst: true },
      // Later retracts take the tip there, and the nose stands above it by the longest tool.
      travel: { ...machineFacts().travel, z: [-95 * atomsPerMillimetre, 40 * atomsPerMillimetre] },
    }),
  "reference return": () =>
    controllerSwap({
      retract: { ...machineFacts().retract!, by: "reference-return", intermediate: "incremental-zero" },
    }),
  "reference return, direct": () =>
    controllerSwap({ retract: { ...machineFacts().retract!, by: "reference-return" } }),
  "measured lengths": () => controllerSwap({ lengths: "measured" }),
  "oriented spindle": () => controllerSwap({ spindle: { ...machineFacts().spindle, orient: true } }),
  "controller that holds by itself": () =>
    controllerSwap({ confirm: { ...waits, "at-speed": { by: "intrinsic", reason: "holds at start" } } }),
  "stop confirmed by the operator": () =>
    controllerSwap({ confirm: { ...waits, stopped: { by: "operator" } } }),
  "rack, drop-in": () => rackSwap(),
  "rack, clamped travel": () => rackSwap({ drawbar: { travels: "clamped", taperAir: false } }),
  "rack, last tool kept": () => {
    const kept = rackSwap();
    return {
      ...kept,
      facts: { ...kept.facts, rack: { ...kept.facts.rack!, atEnd: "keep" } },
      items: kept.items,
    };
  },
  "rack, slide-in with cover": () => slideRack(),
  "rack, spindle unknown": () => rackAsking(),
  "operator swap at clearance": () => operatorSwap(),
  "operator swap by machine move": () => controllerSwap({ swap: "operator", statable: allWords }),
  "single tool": () => singleTool(),
  "tool without a swap": () => singleTool({ swap: undefined }),
  tapping: () => tapping(),
  arcs: () => arcs(),
  pauses: () => pausing(),
  compensation: () => compensated(),
  "per revolution": () => perRevolution(),
  "inverse time": () => inverseTime(),
  "same tool": () => sameTool(),
  knife: () => knife(),
  boring: () => withBody(mill, [...holes({ cycle: "bore-dwell", dwell: 200_000 }, [[20, 20]], 100), rise()]),
  "holes from the initial level": () =>
    withBody(drill, [
      ...holes(
        { cycle: "chip-break", peck: 2, level: 15, between: "initial" },
        [
          [20, 20],
          [30, 20],
        ],
        300,
      ),
      rise(),
    ]),
  "longhand pecks": () =>
    withBody(drill, [
      move({ kind: "rapid", z: 2 }),
      move({ kind: "line", z: -3, feed: 200 }),
      move({ kind: "rapid", z: 2 }),
      move({ kind: "rapid", z: -2.75 }, "re-entry"),
      move({ kind: "line", z: -6, feed: 200 }),
      rise(),
    ]),
};
