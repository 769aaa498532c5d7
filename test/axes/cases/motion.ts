import type { AxisCase } from "../axis-case.ts";
import { jobWith } from "../job-with.ts";

const into = [{ rapid: { x: 0, y: 0 } }, { line: { z: -1 }, feed: 300 }];

/** Up and across at once above the work: a path that is not the same on every control. */
const diagonal = jobWith([
  ...into,
  { line: { x: 20, y: 10 } },
  { line: { z: 1 } },
  { rapid: { x: 60, y: 50, z: 15 } },
]);

/** A lamp that stands beside the straight path and in the way of the other one. */
const lamp =
  "machine: { keep-out: [{ name: lamp, min: [345, 200, -100], max: [360, 215, -70] }], work-zero: { 1: [300, 200, -80] }, spindle: { min-rpm: 1000, max-rpm: 24000 } }";

/** Not worked out by a reader: to find the feed along a helix again from a rounded word would not give the same number. */
const feedOfWord = "the column of the feed holds what the word says, along the path or along the circle";

const semicircle = jobWith([...into, { arc: { x: 20, y: 0, cx: 10, cy: 0 }, turn: "cw", feed: 600 }]);

const wideArc = jobWith([...into, { arc: { x: 10, y: -10, cx: 10, cy: 0 }, turn: "cw", feed: 600 }]);

const circle = jobWith([...into, { arc: { x: 0, y: 0, cx: 10, cy: 0 }, turn: "cw", feed: 600 }]);

const helix = jobWith([...into, { arc: { x: 20, y: 0, cx: 10, cy: 0, z: -3 }, turn: "ccw", feed: 600 }]);

const turns = jobWith([
  ...into,
  { arc: { x: 0, y: 0, cx: 10, cy: 0, z: -3 }, turn: "ccw", turns: 3, feed: 600 },
]);

const upright = jobWith([
  { rapid: { x: 0, y: 0 } },
  { line: { z: 1 }, feed: 300 },
  { arc: { z: 1, x: 10, cz: 1, cx: 5 }, turn: "cw", plane: "zx", feed: 600 },
]);

const compensated = jobWith(
  [
    ...into,
    { comp: "left" },
    { line: { x: 10, y: 5 }, feed: 600 },
    { line: { x: 30 } },
    { line: { y: 25 } },
    { comp: "off" },
    { line: { x: 40 } },
  ],
  {},
  { tools: [{ number: 1, kind: "end-mill", diameter: 6, radiusOffset: 1 }] },
);

const exact = jobWith([...into, { line: { x: 20 } }], { path: "exact" });

/** A corner that may be left by 0.02 mm. */
const bounded = jobWith([...into, { line: { x: 20 } }, { line: { y: 20 } }], {
  path: "blend",
  tolerance: 0.02,
});

const allowedToo = "fewer or smaller arcs are arcs there, too";

/** Group F: motion, arcs and paths. */
export const cases: readonly AxisCase[] = [
  {
    axis: 59,
    title: "rapids on a straight path, or each axis at its own rate",
    base: "rs274ngc",
    both: lamp,
    one: "motion: { rapids: straight }",
    other: "motion: { rapids: dog-leg }",
    job: diagonal,
    guarded: true,
    oneTakes: "a rapid that goes up first is straight in its parts",
  },
  {
    axis: 60,
    title: "all axes of a rapid in one block, or each in its own",
    base: "rs274ngc",
    one: "motion: { rapid-axes: together }",
    other: "motion: { rapid-axes: one-at-a-time }",
    job: diagonal,
  },
  {
    axis: 60,
    title: "the same where the way up is clearance and the operator swaps",
    base: "iso-6983",
    both: "machine: { retract: { by: clearance } }",
    one: "motion: { rapid-axes: together }",
    other: "motion: { rapid-axes: one-at-a-time }",
    job: diagonal,
  },
  {
    axis: 61,
    title: "rapids by G0, or lines at the feed of a rapid",
    base: "rs274ngc",
    one: "motion: { rapid: G0, rapid-feed: none }",
    other: "motion: { rapid: none, rapid-feed: 6000 }",
  },
  {
    axis: 61,
    title: "a feed below that of a rapid, or as fast: the job's F900 would be a rapid",
    base: "rs274ngc",
    both: "dwell: { code: G4 }",
    one: "motion: { rapid: none, rapid-feed: 6000 }",
    other: "motion: { rapid: none, rapid-feed: 900 }",
    otherRefuses: "lower/rapid-feed",
  },
  {
    axis: 62,
    title: "three axes at once, or two: rapids are split",
    base: "rs274ngc",
    one: "motion: { axes-at-once: 3 }",
    other: "motion: { axes-at-once: 2 }",
    job: diagonal,
    oneTakes: "a rapid of two axes is a rapid there, too",
  },
  {
    axis: 62,
    title: "helices and lines in space, or neither",
    base: "rs274ngc",
    one: "motion: { axes-at-once: 3 }",
    other: "motion: { axes-at-once: 2 }",
    job: jobWith([...into, { line: { x: 10, y: 10, z: -2 } }]),
    otherRefuses: "lower/axes-at-once",
  },
  {
    axis: 62,
    title: "a helix of three axes, or none where two move at once",
    base: "rs274ngc",
    one: "motion: { axes-at-once: 3 }",
    other: "motion: { axes-at-once: 2 }",
    job: helix,
    otherRefuses: "lower/axes-at-once",
  },
  {
    axis: 63,
    title: "arcs, or chords in their place",
    base: "rs274ngc",
    one: "arc: { form: incremental-centre }",
    other: "arc: { form: none, cw: none, ccw: none }",
    oneTakes: "chords are lines",
  },
  {
    axis: 63,
    title: "arcs in all planes, or in XY alone",
    base: "rs274ngc",
    one: "arc: { planes: [xy, zx, yz] }",
    other: "arc: { planes: [xy] }\nplane: { zx: none, yz: none }",
    job: upright,
    oneTakes: "chords are lines",
  },
  {
    axis: 64,
    title: "centres counted from the start, or as coordinates",
    base: "rs274ngc",
    one: "arc: { form: incremental-centre }",
    other: "arc: { form: absolute-centre }",
  },
  {
    axis: 64,
    title: "arcs by their centre, or by their radius",
    base: "rs274ngc",
    one: "arc: { form: incremental-centre, centre-words: { incremental: G91.1, absolute: G90.1 } }",
    other: "arc: { form: radius, full-circle: no }",
  },
  {
    axis: 65,
    title: "arcs of any sweep, or of a quadrant at most",
    base: "rs274ngc",
    one: "arc: { largest-sweep: 360 }",
    other: "arc: { largest-sweep: 90, full-circle: no }",
    job: semicircle,
    oneTakes: allowedToo,
  },
  {
    axis: 65,
    title: "arcs over the quadrant lines of their circle, or split at them",
    base: "rs274ngc",
    one: "arc: { quadrants: any, full-circle: no }",
    other: "arc: { quadrants: one, full-circle: no }",
    job: semicircle,
    oneTakes: allowedToo,
  },
  {
    axis: 66,
    title: "full circles in one block, or in parts",
    base: "rs274ngc",
    one: "arc: { full-circle: yes }",
    other: "arc: { full-circle: no, largest-sweep: 180 }",
    job: circle,
    oneTakes: allowedToo,
  },
  {
    axis: 67,
    title: "a radius below 0 for the larger arc, or none: arcs of a sixth at most",
    base: "rs274ngc",
    one: "arc: { form: radius, full-circle: no, largest-sweep: 359 }",
    other: "arc: { form: radius, full-circle: no, largest-sweep: 60 }",
    job: wideArc,
    program: "%\nG17 G21 G90 G94\nG0 X0 Y0 Z0\nG2 X10 Y-10 R-10 F100\nM2\n%\n",
    oneTakes: allowedToo,
  },
  {
    axis: 68,
    title: "radii that may differ by 0.002 mm, or by less than the least increment can hold",
    base: "rs274ngc",
    one: "arc: { tolerance: { mm: 0.002, inch: 0.0002, relative: 0 } }",
    other: "arc: { tolerance: { mm: 0.0000001, inch: 0.0000001, relative: 0 } }",
    job: jobWith([...into, { arc: { x: 17.0713, y: 7.0711, cx: 10, cy: 0 }, turn: "cw", feed: 600 }]),
    otherRefuses: "arc/radius",
    guarded: true,
  },
  {
    axis: 69,
    title: "helices, or chords in their place",
    base: "rs274ngc",
    one: "arc: { helix: yes }",
    other: "arc: { helix: no }",
    job: helix,
    oneTakes: "chords are lines",
  },
  {
    axis: 69,
    title: "a word for several turns, or a block for each",
    base: "rs274ngc",
    one: "arc: { turns-word: P }",
    other: "arc: { turns-word: none }",
    job: turns,
    oneTakes: allowedToo,
  },
  {
    axis: 70,
    title: "the feed of a helix along its path, or along its circle",
    base: "rs274ngc",
    one: "arc: { feed-along: path }",
    other: "arc: { feed-along: circle }",
    job: helix,
    oneTakes: feedOfWord,
    otherTakes: feedOfWord,
  },
  {
    axis: 76,
    title: "G61 and G64, or G60 alone",
    base: "rs274ngc",
    one: "path: { exact: G61, blend: G64 }",
    other: "path: { exact: G60, stop: none, blend: none }",
    job: exact,
  },
  {
    axis: 76,
    title: "a word for the exact path, or only one for the stop at each corner",
    base: "rs274ngc",
    one: "path: { exact: G61, stop: none, blend: G64 }",
    other: "path: { exact: none, stop: G61.1, blend: G64 }",
    job: exact,
  },
  {
    axis: 76,
    title: "a word for the tolerance of a blended path, or the exact path in its place",
    base: "rs274ngc",
    one: "path: { tolerance-word: P }",
    other: "path: { tolerance-word: none }",
    job: bounded,
    oneTakes: "the exact path is a path there, too",
  },
  {
    axis: 76,
    title: "the tolerance behind P or behind Q",
    base: "rs274ngc",
    one: "path: { tolerance-word: P }",
    other: "path: { tolerance-word: Q }",
    job: bounded,
  },
  {
    axis: 76,
    title: "a tolerance that is said, or one that nothing holds",
    base: "iso-6983",
    one: "path: { blend: G64, tolerance-word: P }",
    other: "path: { blend: G64, tolerance-word: none }",
    job: bounded,
    otherRefuses: "lower/tolerance",
  },
  {
    axis: 77,
    title: "look-ahead that is turned on and off, or left to the control",
    base: "rs274ngc",
    one: "path: { look-ahead: { on: M90 P1, off: M90 P0 } }",
    other: "path: { look-ahead: none }",
  },
  {
    axis: 78,
    title: "the feed lowered at inside corners while compensation acts, or not",
    base: "rs274ngc",
    one: "compensation: { corner-feed: { on: G36, off: G37 } }",
    other: "compensation: { corner-feed: none }",
    job: compensated,
  },
];
