import { atomsPerMillimetre, evaluate, milliPerRpm } from "#base";
import type { ConfirmationName, CycleDefinition, JobFacts, MachineFacts, Step, ToolFacts } from "#base";
import type { Item, Move } from "./layout.ts";

/** Machine and job that a sequence is for. */
export interface Setting {
  facts: MachineFacts;
  job: JobFacts;
}

export const step = (value: Step, name?: string): Item =>
  name === undefined ? { step: value } : { step: value, name };
export const move = (value: Move, name?: string): Item =>
  name === undefined ? { move: value } : { move: value, name };

const inMillimetres = (atoms: number): number => atoms / atomsPerMillimetre;

/** A state made certain, as the dialect wants it. */
export function confirm(setting: Setting, name: ConfirmationName, rpm = 0, fromRpm = 0): Item[] {
  const { facts } = setting;
  const way = facts.confirm[name];
  if (way === undefined) throw new Error(`no way to confirm ${name}`);
  if (way.by === "intrinsic") return [];
  if (way.by === "operator") {
    return [
      step({ kind: "message", text: `check: ${name}` }),
      step({ kind: "pause", optional: false }, `confirm ${name}`),
    ];
  }
  if (way.by === "dwell") {
    const { minRpm = 0, maxRpm = 0, spinUp = 0, spinDown = 0, coastDown = 0 } = facts.spindle;
    const time = evaluate(way.time, {
      rpm: rpm * milliPerRpm,
      from_rpm: fromRpm * milliPerRpm,
      min_rpm: minRpm,
      max_rpm: maxRpm,
      spin_up: spinUp,
      spin_down: spinDown,
      coast_down: coastDown,
    });
    return [step({ kind: "dwell", time: Math.ceil(time / 10_000) * 10_000 }, `confirm ${name}`)];
  }
  const signal = facts.signals[way.signal]!;
  const settle = signal.settle ? [step({ kind: "dwell", time: signal.settle }, `settle ${name}`)] : [];
  const { input, level } = signal;
  return [...settle, step({ kind: "wait", input, level, timeout: way.timeout }, `confirm ${name}`)];
}

/** The stop made certain; behind a stop of the program nobody knows where the machine is, so that Z goes up again. */
export function confirmStop(setting: Setting, fromRpm: number): Item[] {
  const asks = setting.facts.confirm.stopped?.by === "operator";
  return [...confirm(setting, "stopped", 0, fromRpm), ...(asks ? retract(setting) : [])];
}

export const coolantOff = (): Item => step({ kind: "coolant", medium: "all", on: false }, "coolant off");

/** Z to swap height, in the machine's way. */
export function retract(setting: Setting, clearance = 15): Item[] {
  const { retract: way } = setting.facts;
  if (way?.by === "clearance") return [move({ kind: "rapid", z: clearance }, "retract")];
  if (way?.by === "machine-move")
    return [move({ kind: "rapid", machine: true, z: inMillimetres(way.z) }, "retract")];
  const there = step({ kind: "reference-return", axes: 4 }, "retract");
  if (way?.intermediate !== "incremental-zero") return [there];
  return [
    step({ kind: "distance", value: "incremental" }, "incremental"),
    there,
    step({ kind: "distance", value: "absolute" }),
  ];
}

/** A mode step only where the dialect has its word. */
function worded(setting: Setting, ...steps: Step[]): Item[] {
  return steps.filter((one) => setting.facts.statable.includes(one.kind)).map((one) => step(one, one.kind));
}

function hasLength(setting: Setting): boolean {
  const form = setting.facts.lengthOffset?.form;
  return form === "with-first-z" || form === "own-block";
}

export const cancelLength = (setting: Setting): Item[] =>
  hasLength(setting) ? [step({ kind: "length-offset", number: 0 }, "cancel length")] : [];

export function start(setting: Setting): Item[] {
  const { facts } = setting;
  const early = facts.retract?.cancelLengthFirst ? cancelLength(setting) : [];
  return [
    step({ kind: "program-start", number: 0 }),
    ...worded(
      setting,
      { kind: "units", value: "mm" },
      { kind: "plane", value: "xy" },
      { kind: "distance", value: "absolute" },
      { kind: "arc-centre", value: "incremental" },
      { kind: "feed-mode", value: "per-minute" },
      { kind: "path", value: "exact" },
      { kind: "compensation", value: "off", offset: 0 },
      { kind: "cycle", value: "off" },
      { kind: "local-shift", value: "off" },
      { kind: "rotation", value: "off" },
      { kind: "scale", value: "off" },
      { kind: "overrides", value: "on" },
    ),
    step({ kind: "spindle-stop" }, "first stop"),
    ...confirm(setting, "stopped", 0, (facts.spindle.maxRpm ?? 0) / milliPerRpm),
    coolantOff(),
    ...early,
    ...(facts.retract?.by === "clearance" ? worded(setting, { kind: "work-offset", number: 1 }) : []),
    ...retract(setting).map((item) => ({
      ...item,
      name: item.name === "retract" ? "first retract" : (item.name ?? ""),
    })),
    ...cancelLength(setting),
  ];
}

/** What comes before every swap: Z up, coolant off, hood up, spindle still, old length gone. */
export function beforeSwap(setting: Setting, fromRpm: number, up = false): Item[] {
  const { facts } = setting;
  return [
    ...(up ? [] : retract(setting)),
    coolantOff(),
    ...(facts.hood ? [step({ kind: "auxiliary", action: "hood-up", code: "" })] : []),
    step({ kind: "spindle-stop" }, "stop"),
    ...confirmStop(setting, fromRpm),
    ...(facts.spindle.orient ? [step({ kind: "spindle-orient" }, "orient")] : []),
    ...cancelLength(setting),
  ];
}

export function toolOf(setting: Setting, number: number): ToolFacts {
  return setting.job.tools.find((tool) => tool.number === number)!;
}

/** Controller and operator swaps; the rack's own stand in rack-pieces.ts. */
export function swapTo(setting: Setting, number: number): Item[] {
  const { facts } = setting;
  const select = step({ kind: "select-tool", tool: number }, "select");
  const measure =
    facts.lengths === "measured"
      ? [step({ kind: "auxiliary", action: "measure", code: "" }, "measure"), ...retract(setting)]
      : [];
  if (facts.swap === "operator") {
    const ask = step({ kind: "message", text: `load tool ${number}` });
    return [ask, select, step({ kind: "pause", optional: false }, "swap"), ...retract(setting), ...measure];
  }
  const back = facts.changeEffects?.position === "unknown" ? retract(setting) : [];
  return [select, step({ kind: "change-tool" }, "swap"), ...back, ...measure];
}

export interface Section {
  tool: number;
  rpm: number;
  x: number;
  y: number;
  clearance?: number;
  direction?: "cw" | "ccw";
  workOffset?: number;
  feedMode?: "per-minute" | "per-revolution" | "inverse-time";
  coolant?: "mist" | "flood";
}

/** Spindle to speed, and that confirmed. */
export function spinUp(setting: Setting, rpm: number, direction: "cw" | "ccw" = "cw", fromRpm = 0): Item[] {
  return [
    step({ kind: "spindle-speed", rpm: rpm * milliPerRpm }, "speed"),
    step({ kind: "spindle-start", direction }, "start"),
    ...confirm(setting, "at-speed", rpm, fromRpm),
  ];
}

export function approach(setting: Setting, section: Section): Item[] {
  const { lengthOffset } = toolOf(setting, section.tool);
  return [
    move({ kind: "rapid", x: section.x, y: section.y }, "approach xy"),
    ...(hasLength(setting) ? [step({ kind: "length-offset", number: lengthOffset }, "length")] : []),
    move({ kind: "rapid", z: section.clearance ?? 15 }, "approach z"),
  ];
}

/** What comes after every swap or stop: modes and offset, spindle, hood, coolant, the way down. */
export function afterSwap(setting: Setting, section: Section): Item[] {
  const turning = section.rpm > 0;
  return [
    ...worded(
      setting,
      { kind: "plane", value: "xy" },
      { kind: "distance", value: "absolute" },
      { kind: "feed-mode", value: section.feedMode ?? "per-minute" },
      { kind: "path", value: "blend", tolerance: 200_000 },
      { kind: "work-offset", number: section.workOffset ?? 1 },
    ),
    ...(turning ? spinUp(setting, section.rpm, section.direction) : []),
    ...(setting.facts.hood ? [step({ kind: "auxiliary", action: "hood-down", code: "" })] : []),
    ...(section.coolant ? [step({ kind: "coolant", medium: section.coolant, on: true }, "coolant on")] : []),
    ...approach(setting, section),
  ];
}

/** A swap and the way back to the work. */
export function toolSection(setting: Setting, section: Section, fromRpm: number, first = false): Item[] {
  return [
    ...beforeSwap(setting, fromRpm, first),
    ...swapTo(setting, section.tool),
    ...afterSwap(setting, section),
  ];
}

/** A square slot below the stock top, one line a side, ending at clearance. */
export function slot(feed = 800, clearance = 15): Item[] {
  return [
    move({ kind: "rapid", z: 2 }, "down"),
    move({ kind: "line", z: -2, feed: 200 }, "plunge"),
    move({ kind: "line", x: 50, feed }, "cut"),
    move({ kind: "line", y: 40, feed }),
    move({ kind: "line", x: 10, y: 20, feed }),
    move({ kind: "rapid", z: clearance }, "rise"),
  ];
}

/** Holes of a fixed cycle, cycle off after them. */
export function holes(
  cycle: Partial<CycleDefinition>,
  at: readonly (readonly [number, number])[],
  feed: number,
): Item[] {
  const millimetres = { depth: -8, retract: 2, level: 2, peck: 0 };
  const levels = Object.fromEntries(
    Object.entries(millimetres).map(([key, value]) => [
      key,
      (cycle[key as "depth"] ?? value) * atomsPerMillimetre,
    ]),
  ) as Pick<CycleDefinition, "depth" | "retract" | "level" | "peck">;
  return [
    step(
      {
        kind: "cycle-definition",
        cycle: cycle.cycle ?? "drill",
        between: cycle.between ?? "retract",
        levelStated: true,
        dwell: cycle.dwell ?? 0,
        ...levels,
      },
      "cycle",
    ),
    ...at.map(([x, y], index) => move({ kind: "hole", x, y, feed }, `hole ${index + 1}`)),
    step({ kind: "cycle", value: "off" }, "cycle off"),
  ];
}

/** An operator stop in the middle of an operation, and the way back. */
export function pause(setting: Setting, section: Section, optional = false): Item[] {
  const { facts } = setting;
  return [
    ...retract(setting),
    coolantOff(),
    ...(facts.hood ? [step({ kind: "auxiliary", action: "hood-up", code: "" })] : []),
    step({ kind: "spindle-stop" }, "pause stop"),
    ...confirmStop(setting, section.rpm),
    step({ kind: "message", text: "turn the plate" }),
    step({ kind: "pause", optional }, "pause"),
    ...retract(setting).map((item) => ({
      ...item,
      name: item.name === "retract" ? "retract again" : (item.name ?? ""),
    })),
    ...afterSwap(setting, section),
  ];
}

export function end(setting: Setting, fromRpm: number, back: readonly Item[] = []): Item[] {
  const { facts } = setting;
  return [
    ...retract(setting).map((item) => ({
      ...item,
      name: item.name === "retract" ? "last retract" : (item.name ?? ""),
    })),
    { ...coolantOff(), name: "last coolant off" },
    ...(facts.hood ? [step({ kind: "auxiliary", action: "hood-up", code: "" }, "last hood up")] : []),
    ...facts.outputs.map((output) =>
      step({ kind: "output", number: output.number, on: false }, "output off"),
    ),
    step({ kind: "spindle-stop" }, "last stop"),
    ...confirmStop(setting, fromRpm).map((item) => ({ ...item, name: "last confirm" })),
    ...cancelLength(setting).map((item) => ({ ...item, name: "last cancel" })),
    ...(facts.spindle.orient && back.length > 0 ? [step({ kind: "spindle-orient" }, "last orient")] : []),
    ...back,
    ...(facts.park
      ? [
          move(
            { kind: "rapid", machine: true, x: inMillimetres(facts.park.x), y: inMillimetres(facts.park.y) },
            "park",
          ),
        ]
      : []),
    step({ kind: "program-end" }, "end"),
  ];
}
