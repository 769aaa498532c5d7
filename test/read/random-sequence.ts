import type { Batch, Step, UnitSystem } from "#base";
import { axisBit, createBatch, rowKind } from "#base";
import type { Format } from "#dialect";
import type { Maker } from "./random-maker.ts";
import { createRandom, grid, moveAxes, row, step } from "./random-maker.ts";
import { arc, holes, line, machineMove, rapid } from "./random-motion.ts";

/**
 * Makes a sequence such as sequencing makes it: every mode stated at the head, places known as contracted, every block of
 * actions in its own steps. Geometry is random, so that arcs need not be true ones: a reader states what is said.
 */
export function randomSequence(
  format: Format,
  units: UnitSystem,
  seed: number,
  rows: number,
  rotary: boolean,
): Batch {
  const maker: Maker = {
    batch: createBatch(rows * 8 + 200, rotary),
    random: createRandom(seed),
    format,
    units,
    work: 0,
    machine: 0,
    place: [0, 0, 0, 0, 0, 0],
    nose: [0, 0, 0],
    plane: "xy",
    incremental: false,
    inverse: false,
    running: false,
    lengthOffset: undefined,
    workOffset: undefined,
    source: 0,
  };
  head(maker);
  for (let count = 0; count < rows; count++) any(maker);
  step(maker, { kind: "program-end" });
  return maker.batch;
}

function head(maker: Maker): void {
  const { codes, programNumber } = maker.format;
  step(maker, {
    kind: "program-start",
    number: programNumber ? 1 + maker.random.below(programNumber.to) : 0,
  });
  step(maker, { kind: "feed-mode", value: "per-minute" });
  if (codes.modes.overrides.on) step(maker, { kind: "overrides", value: "on" });
  step(maker, { kind: "plane", value: "xy" });
  if (codes.modes.units.mm) step(maker, { kind: "units", value: maker.units });
  step(maker, { kind: "compensation", value: "off", offset: 0 });
  step(maker, { kind: "path", value: "exact" });
  step(maker, { kind: "distance", value: "absolute" });
  if (codes.modes["arc-centre"].incremental)
    step(maker, {
      kind: "arc-centre",
      value: maker.format.arc.form === "absolute-centre" ? "absolute" : "incremental",
    });
  for (const kind of ["local-shift", "rotation", "scale"] as const)
    if (codes.modes[kind].off) step(maker, { kind, value: "off" });
  step(maker, { kind: "cycle", value: "off" });
  step(maker, { kind: "spindle-stop" });
  step(maker, { kind: "coolant", medium: "all", on: false });
}

function any(maker: Maker): void {
  const { random } = maker;
  const pick = random.below(100);
  if (pick < 30) line(maker);
  else if (pick < 50) rapid(maker);
  else if (pick < 70) arc(maker);
  else if (pick < 75) holes(maker);
  else if (pick < 80) machineMove(maker);
  else rare(maker);
}

function losePlace(maker: Maker): void {
  maker.work = maker.machine = 0;
}

/** One of the rare steps, or a few that belong together. */
function rare(maker: Maker): void {
  const makers = [
    () => switchSpindle(maker),
    () => step(maker, { kind: "coolant", medium: maker.random.chance(0.5) ? "mist" : "flood", on: true }),
    () => step(maker, { kind: "coolant", medium: "all", on: false }),
    () => dwell(maker),
    () => changeTool(maker),
    () => stop(maker),
    () => offsets(maker),
    () => modes(maker),
    () => reference(maker),
    () => extras(maker),
    () => compensate(maker),
  ];
  makers[maker.random.below(makers.length)]();
}

function switchSpindle(maker: Maker): void {
  const { spindle, numbers } = maker.format;
  const increment = 1000 / 10 ** numbers.speed.decimals;
  const speed: Step = { kind: "spindle-speed", rpm: (1 + maker.random.below(24_000)) * increment };
  const start: Step = { kind: "spindle-start", direction: maker.random.chance(0.5) ? "cw" : "ccw" };
  if (maker.running && maker.random.chance(0.3)) {
    step(maker, { kind: "spindle-stop" });
    maker.running = false;
  } else if (maker.running) step(maker, speed);
  else {
    const apartStart = spindle?.order === "start-first" && spindle.blocks === "apart";
    for (const one of apartStart ? [start, speed] : [speed, start]) step(maker, one);
    maker.running = true;
  }
}

function dwell(maker: Maker): void {
  const increment =
    (maker.format.dwell?.unit === "ms" ? 1000 : 1e6) / 10 ** maker.format.numbers.dwell.decimals;
  step(maker, { kind: "dwell", time: (1 + maker.random.below(500)) * increment });
}

function changeTool(maker: Maker): void {
  step(maker, { kind: "select-tool", tool: 1 + maker.random.below(12) });
  step(maker, { kind: "change-tool" });
  maker.running = false;
}

function stop(maker: Maker): void {
  if (maker.random.chance(0.5)) step(maker, { kind: "message", text: `LOAD TOOL ${maker.random.below(9)}` });
  step(maker, { kind: "pause", optional: maker.random.chance(0.3) });
  losePlace(maker);
}

function offsets(maker: Maker): void {
  const number = maker.random.below(4);
  if (maker.random.chance(0.5)) {
    step(maker, { kind: "work-offset", number: number + 1 });
    if (maker.workOffset !== number + 1) maker.work = 0;
    maker.workOffset = number + 1;
    return;
  }
  step(maker, { kind: "length-offset", number });
  if (maker.lengthOffset !== number) maker.work &= ~axisBit.z;
  maker.lengthOffset = number;
  if (number === 0 || maker.incremental) return;
  const stated = moveAxes(maker, axisBit.z);
  if (stated) row(maker, rowKind.rapid, stated, 0);
}

function modes(maker: Maker): void {
  if (maker.random.chance(0.5)) {
    maker.inverse = !maker.inverse && Boolean(maker.format.codes.modes["feed-mode"]["inverse-time"]);
    step(maker, { kind: "feed-mode", value: maker.inverse ? "inverse-time" : "per-minute" });
  }
  const planes = (["xy", "zx", "yz"] as const).filter((plane) => maker.format.codes.modes.plane[plane]);
  maker.plane = planes[maker.random.below(planes.length)];
  step(maker, { kind: "plane", value: maker.plane });
  if (maker.random.chance(0.5))
    step(maker, maker.random.chance(0.5) ? blended(maker) : { kind: "path", value: "exact" });
  if (maker.random.chance(0.3)) toggleDistance(maker);
}

/** A blended path, within a tolerance now and then where the dialect has a word for it. */
function blended(maker: Maker): Step {
  const bounded = Boolean(maker.format.toleranceWord) && maker.random.chance(0.5);
  const tolerance = (1 + maker.random.below(2000)) * grid(maker);
  return { kind: "path", value: "blend", ...(bounded ? { tolerance } : {}) };
}

function toggleDistance(maker: Maker): void {
  maker.incremental = !maker.incremental;
  step(maker, { kind: "distance", value: maker.incremental ? "incremental" : "absolute" });
}

function reference(maker: Maker): void {
  if (!maker.format.codes.referenceReturn) return;
  const incremental = maker.format.referenceIntermediate === "incremental-zero" && !maker.incremental;
  if (incremental) toggleDistance(maker);
  const axes = 1 + maker.random.below(7);
  step(maker, { kind: "reference-return", axes });
  maker.work &= ~axes;
  maker.machine &= ~axes;
  if (incremental) toggleDistance(maker);
}

function extras(maker: Maker): void {
  const { random } = maker;
  const level = random.chance(0.5) ? "on" : "off";
  const pick = random.below(4);
  if (pick < 2)
    step(maker, { kind: "wait", input: random.below(9), level, timeout: random.below(90) * 100_000 });
  else if (pick === 2) step(maker, { kind: "output", number: 1 + random.below(6), on: random.chance(0.5) });
  else step(maker, { kind: "auxiliary", action: "release", code: "" });
}

function compensate(maker: Maker): void {
  if (maker.random.chance(0.5))
    step(maker, { kind: "compensation", value: "left", offset: 1 + maker.random.below(9) });
  step(maker, { kind: "compensation", value: "off", offset: 0 });
}
