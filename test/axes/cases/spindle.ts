import type { AxisCase } from "../axis-case.ts";
import { sampleJob } from "../sample-job.ts";

/** One end mill and one move, with what a case changes about the operation. */
function smallJob(operation: object, tools: object = {}): string {
  return JSON.stringify({
    job: "1",
    name: "Rain gauge",
    units: "mm",
    clearance: 15,
    tools: [{ number: 1, kind: "end-mill", diameter: 6, ...tools }],
    operations: [
      {
        id: "op10",
        tool: 1,
        spindle: { rpm: 12000, direction: "cw" },
        moves: [{ rapid: { x: 0, y: 0 } }, { line: { z: 1 }, feed: 300 }, { line: { z: 15 } }],
        ...operation,
      },
    ],
  });
}

/** Group G: spindle, coolant, accessories. */
export const cases: readonly AxisCase[] = [
  {
    axis: 79,
    title: "the speed before the start, or behind it",
    base: "rs274ngc",
    one: "spindle: { order: speed-first }",
    other: "spindle: { order: start-first }",
  },
  {
    axis: 79,
    title: "speed and start in one block, or each in its own and the start first",
    base: "explicit-words",
    one: "spindle: { order: speed-first, blocks: together }",
    other: "spindle: { order: start-first, blocks: apart }",
  },
  {
    axis: 80,
    title: "the speed in revolutions a minute, or in percent of the full speed",
    base: "rs274ngc",
    one: "spindle: { speed-unit: rpm }",
    other: "spindle: { speed-unit: percent, full-speed: 24000 }\nnumbers: { speed: 1 }",
  },
  {
    axis: 81,
    title: "a gear range before the speed, or one range for all speeds",
    base: "rs274ngc",
    one: "spindle: { gears: [{ code: M41, from: 100, to: 10000 }, { code: M42, from: 8000, to: 20000 }] }",
    other: "spindle: { gears: none }",
  },
  {
    axis: 81,
    title: "ranges that meet at one speed or at another",
    base: "rs274ngc",
    one: "spindle: { gears: [{ code: M41, from: 100, to: 10000 }, { code: M42, from: 10000, to: 20000 }] }",
    other:
      "spindle: { gears: [{ code: M41, from: 100, to: 8000 }, { code: M42, from: 8000, to: 11000 }, { code: M43, from: 11000, to: 20000 }] }",
  },
  {
    axis: 81,
    title: "a speed that one of the ranges has, or none",
    base: "rs274ngc",
    one: "spindle: { gears: [{ code: M41, from: 100, to: 20000 }] }",
    other: "spindle: { gears: [{ code: M42, from: 100, to: 11000 }] }",
    otherRefuses: "limit/speed",
  },
  {
    axis: 45,
    title: "the speed where it changes, or at each start",
    base: "rs274ngc",
    one: "modal: { speed: changed }",
    other: "modal: { speed: each-start }",
    job: sampleJob.replace('"rpm": 12000', '"rpm": 9000'),
    oneTakes: "a speed that is said again is the same speed",
  },
  {
    axis: 82,
    title: "a code for the start that is not M03",
    base: "rs274ngc",
    one: "spindle: { cw: M03 }",
    other: "spindle: { cw: M93 }",
  },
  {
    axis: 82,
    title: "a spindle that turns either way, or one way only",
    base: "rs274ngc",
    one: "spindle: { ccw: M04 }",
    other: "spindle: { ccw: none }",
    job: smallJob({ spindle: { rpm: 12000, direction: "ccw" } }),
    otherRefuses: "lower/word",
  },
  {
    axis: 83,
    title: "the speed is waited for by the control, or by a dwell",
    base: "rs274ngc",
    // The dwell at a stop changes the other way, so that neither text will do for both.
    one: 'confirm: { at-speed: { intrinsic: "the control holds the block" }, stopped: { dwell: 30 s } }',
    other: 'confirm: { at-speed: { dwell: 5 s }, stopped: { intrinsic: "the control holds the block" } }',
  },
  {
    axis: 83,
    title: "the speed is confirmed by a signal, or by a dwell",
    base: "explicit-words",
    one: "confirm: { at-speed: { wait: at-speed, timeout: 20 s } }",
    other: "confirm: { at-speed: { dwell: 5 s } }",
  },
  {
    axis: 84,
    title: "the stop is confirmed by a signal, or by a dwell that is long enough",
    base: "explicit-words",
    one: "confirm: { stopped: { wait: stopped, timeout: 60 s } }",
    other: "confirm: { stopped: { dwell: 40 s } }",
  },
  {
    axis: 85,
    title: "the spindle is oriented before a swap, or stands as it stops",
    base: "rs274ngc",
    one: "spindle: { orient: M19 }\nmachine: { spindle: { min-rpm: 100, max-rpm: 24000, orient: yes } }",
    other: "spindle: { orient: none }\nmachine: { spindle: { min-rpm: 100, max-rpm: 24000, orient: no } }",
  },
  {
    axis: 86,
    title: "M05 and M09 act before or after the motion of their block",
    base: "rs274ngc",
    one: "blocks: { stops-act: before-motion }",
    other: "blocks: { stops-act: after-motion }",
    program: "%\nG0 X0 M9\nM2\n%\n",
    sameText: "stops are written in blocks of their own in any case",
  },
  {
    axis: 87,
    title: "which code is which medium",
    base: "rs274ngc",
    one: "coolant: { mist: M07, flood: M08 }",
    other: "coolant: { mist: M08, flood: M07 }",
  },
  {
    axis: 87,
    title: "air by a word of the builder, or none",
    base: "rs274ngc",
    one: "coolant: { air: M25 }",
    other: "coolant: { air: none }",
    job: smallJob({ coolant: "air" }),
    otherRefuses: "lower/coolant",
  },
  {
    axis: 88,
    title: "one word turns off all coolant, or each medium has its own",
    base: "rs274ngc",
    one: "coolant: { off: M09 }",
    other: "coolant: { off: { mist: M97, flood: M98 } }",
  },
  {
    axis: 21,
    title: "two media are turned on in one block, or each in its own",
    base: "rs274ngc",
    one: "coolant: { blocks: together }",
    other: "coolant: { blocks: apart }",
    job: smallJob({ coolant: ["mist", "flood"] }),
    oneTakes: "a control that takes two coolant words in a block takes one alone",
  },
  {
    axis: 21,
    title: "two media are turned off in one block, or each in its own",
    base: "rs274ngc",
    one: "coolant: { off: { mist: M97, flood: M98 }, blocks: together }",
    other: "coolant: { off: { mist: M97, flood: M98 }, blocks: apart }",
    oneTakes: "a control that takes two coolant words in a block takes one alone",
  },
  {
    axis: 89,
    title: "the dust hood is worked by the program, or is not there",
    base: "rs274ngc",
    one: "machine: { hood: yes }\nidioms: { hood-up: M23, hood-down: M24 }",
    other: "machine: { hood: no }",
  },
  {
    axis: 89,
    title: "outputs by a code with their number, or one output by two codes of its own",
    base: "rs274ngc",
    both: "machine: { outputs: { extraction: { number: 3, during: cutting } } }",
    one: 'idioms: { output-on: "M95 P{{output}}", output-off: "M96 P{{output}}" }',
    other: 'idioms: { output-on: "M97 P1 Q{{output}}", output-off: "M97 P0 Q{{output}}" }',
  },
  {
    axis: 89,
    title: "the work is held as it is, or a signal says so",
    base: "explicit-words",
    one: "machine: { signals: { hold-down: 9 } }",
    other:
      "machine: { signals: { hold-down: 9 } }\nconfirm: { hold-down: { wait: hold-down, timeout: 10 s } }",
    oneTakes: "a wait more does no harm",
  },
  {
    axis: 96,
    title: "the control's own tool change leaves the spindle standing, or starts it again",
    base: "rs274ngc",
    one: "machine: { change-effects: { spindle: stopped } }",
    other: "machine: { change-effects: { spindle: restarts } }",
    oneTakes: "a spindle that stands may be stopped",
  },
  {
    axis: 131,
    title: "how long starts and stops take, by how fast the spindle speeds up and slows down",
    base: "rs274ngc",
    both: `confirm:
  at-speed: { dwell: "spin_up * rpm / max_rpm + 0.5 * second" }
  stopped: { dwell: "spin_down * from_rpm / max_rpm + 0.5 * second" }`,
    one: "machine: { spindle: { min-rpm: 1000, max-rpm: 24000, spin-up: 3 s, spin-down: 8 s } }",
    other: "machine: { spindle: { min-rpm: 1000, max-rpm: 24000, spin-up: 8 s, spin-down: 3 s } }",
  },
];
