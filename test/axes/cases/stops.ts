import type { AxisCase } from "../axis-case.ts";
import { sampleJob } from "../sample-job.ts";

/** The sample job with a stop at the end of its first operation. */
function jobWithPause(how: object): string {
  const job = JSON.parse(sampleJob) as { operations: { moves: object[] }[] };
  job.operations[0]?.moves.push({ pause: "TURN THE CLAMP", ...how }, { rapid: { x: 0, y: 0 } });
  return JSON.stringify(job);
}

/** A job whose last operation is in inverse time. */
function jobInInverseTime(): string {
  const job = JSON.parse(sampleJob) as { operations: object[] };
  const moves = [{ rapid: { x: 0, y: 0 } }, { line: { z: 1 }, feed: 4 }, { rapid: { z: 15 } }];
  const [first] = job.operations;
  return JSON.stringify({ ...job, operations: [{ ...first, feedMode: "inverse-time", moves }] });
}

/** The ends of a program, its modes at the start, and stops in between. */
export const cases: readonly AxisCase[] = [
  {
    axis: 7,
    title: "the program ends with M02 or with M30",
    base: "rs274ngc",
    one: "stops: { end: M02 }",
    other: "stops: { end: M30 }",
  },
  {
    axis: 8,
    title: "the end puts the modes back by itself, or the program does so before it",
    base: "rs274ngc",
    one: "stops: { end-resets: yes }",
    other: "stops: { end-resets: no }",
    job: jobInInverseTime(),
    oneTakes: "modes that are put back twice do no harm",
  },
  {
    axis: 46,
    title: "G98 and G99 are feed modes, or levels between holes",
    base: "rs274ngc",
    one: `feed: { per-minute: G98, per-revolution: G99 }
numbers: { feed-per-revolution: { mm: 3, inch: 4 } }
cycles: { return: { initial: none, retract: none, without: initial } }`,
    other: "cycles: { return: { initial: G98, retract: G99, without: none } }",
  },
  {
    axis: 47,
    title: "units are stated at the start, or hold by what the machine is set to",
    base: "rs274ngc",
    one: "units: { mm: G21, inch: G20, programs-in: job }",
    other: "units: { mm: none, inch: none, programs-in: mm }",
  },
  {
    axis: 123,
    title: "an optional stop, or none",
    base: "rs274ngc",
    one: "stops: { optional: M01 }",
    other: "stops: { optional: none }",
    job: jobWithPause({ optional: true }),
    otherRefuses: "lower/word",
  },
  {
    axis: 123,
    title: "the message of a stop in a block before it, or in its own",
    base: "rs274ngc",
    both: "machine: { swap: operator }",
    one: "stops: { comment: own-block }",
    other: "stops: { comment: with-stop }",
    job: jobWithPause({}),
  },
  {
    axis: 124,
    title: "a stop loses the modes, or keeps them",
    base: "rs274ngc",
    one: "stops: { resume: keeps-modes }",
    other: "stops: { resume: loses-modes }",
    job: jobWithPause({}),
    oneTakes: "modes that are stated again do no harm where they were kept",
  },
  {
    axis: 125,
    title: "modes at the start together, or each in a block of its own",
    base: "rs274ngc",
    one: "blocks: { modes: together }",
    other: "blocks: { modes: apart }",
    oneTakes: "a control that takes several modes in a block takes one alone",
  },
  {
    axis: 128,
    title: "overrides are enabled at the start, or there is no word for it",
    base: "rs274ngc",
    one: "cancel: { overrides: M48 }",
    other: "cancel: { overrides: none }",
  },
];
