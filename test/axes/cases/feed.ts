import type { AxisCase } from "../axis-case.ts";
import { jobWith } from "../job-with.ts";

const moves = [
  { rapid: { x: 0, y: 0 } },
  { line: { z: -1 }, feed: 0.1 },
  { line: { x: 20 }, feed: 0.2 },
  { dwell: 0.5 },
];
const probing = jobWith([{ rapid: { x: 0, y: 0 } }, { dwell: 0.5 }], {
  spindle: undefined,
  coolant: "off",
}).replace('"kind":"end-mill","diameter":6,"flutes":2', '"kind":"probe","diameter":6');
const byRevolution = jobWith(moves, { feedMode: "per-revolution" });
const byTime = jobWith(moves, { feedMode: "inverse-time" });

/** Feeds, dwells and their units: the rest of group F. */
export const cases: readonly AxisCase[] = [
  {
    axis: 71,
    title: "feed a revolution, or a minute whatever the job has",
    base: "rs274ngc",
    one: "feed: { per-revolution: G95 }\nnumbers: { feed-per-revolution: { mm: 3, inch: 4 } }",
    other: "feed: { per-revolution: none }",
    job: byRevolution,
    oneTakes: "feed a minute is known there, too",
  },
  {
    axis: 71,
    title: "feed modes by G94 and G95, or by G98 and G99",
    base: "rs274ngc",
    both: "numbers: { feed-per-revolution: { mm: 3, inch: 4 } }\ncycles: none",
    one: "feed: { per-minute: G94, per-revolution: G95 }",
    other: "feed: { per-minute: G98, per-revolution: G99 }",
    job: byRevolution,
  },
  {
    axis: 71,
    title: "inverse time, or none",
    base: "rs274ngc",
    one: "feed: { inverse-time: G93 }",
    other: "feed: { inverse-time: none }",
    job: byTime,
    otherRefuses: "lower/feed-mode",
  },
  {
    axis: 72,
    title: "inverse time in 1/minutes, or in 1/seconds",
    base: "rs274ngc",
    one: "feed: { inverse-time-unit: per-minute }",
    other: "feed: { inverse-time-unit: per-second }",
    job: byTime,
  },
  {
    axis: 75,
    title: "a dwell in a block of its own, or in that of the spindle's start",
    base: "rs274ngc",
    one: "dwell: { blocks: with-start }",
    other: "dwell: { blocks: apart }",
    oneTakes: "a dwell may stand apart there, too",
  },
  {
    axis: 75,
    title: "the same with the start before its speed",
    base: "rs274ngc",
    both: "spindle: { order: start-first }",
    one: "dwell: { blocks: with-start }",
    other: "dwell: { blocks: apart }",
    oneTakes: "a dwell may stand apart there, too",
  },
  {
    axis: 73,
    title: "a highest feed that holds the job's, or one below it",
    base: "rs274ngc",
    one: "machine: { feed: { least: 1, most: 12000 } }",
    other: "machine: { feed: { least: 1, most: 500 } }",
    otherRefuses: "limit/feed",
    guarded: true,
  },
  {
    axis: 74,
    title: "dwells in seconds, or in milliseconds",
    base: "rs274ngc",
    one: "dwell: { unit: s }",
    other: "dwell: { unit: ms }\nnumbers: { dwell: 0 }",
  },
  {
    axis: 74,
    title: "dwells in milliseconds, or in revolutions of the spindle",
    base: "staged-tools",
    both: "file: { program-number: none }",
    one: "dwell: { unit: ms }",
    other: "dwell: { unit: rev }",
  },
  {
    axis: 74,
    title: "dwells in seconds, or in revolutions, where the spindle stands",
    base: "staged-tools",
    both: "file: { program-number: none }",
    job: probing,
    one: "dwell: { unit: s }",
    other: "dwell: { unit: rev }",
    otherRefuses: "lower/dwell",
  },
  {
    axis: 74,
    title: "the time of a dwell behind P, or behind X",
    base: "rs274ngc",
    one: "dwell: { word: P }",
    other: "dwell: { word: X }",
  },
];
