import type { AxisCase } from "../axis-case.ts";

/** Group E: units and coordinates. */
export const cases: readonly AxisCase[] = [
  {
    axis: 48,
    title: "G21 and G20 for millimetres and inches, or G71 and G70",
    base: "rs274ngc",
    one: "units: { mm: G21, inch: G20 }",
    other: "units: { mm: G71, inch: G70 }",
  },
  {
    axis: 48,
    title: "a control in millimetres alone, or in inches alone",
    base: "rs274ngc",
    one: "units: { mm: G21, inch: none, programs-in: mm }",
    other: "units: { mm: none, inch: G20, programs-in: inch }",
  },
  {
    axis: 50,
    title: "absolute or incremental words",
    base: "explicit-words",
    one: "distance: { programs-in: absolute, incremental: none }",
    other: "distance: { programs-in: incremental }",
    program: "%\nN10 G17\nN20 G00 X10.000\nN30 G00 X20.000\nN40 M30\n%\n",
  },
  {
    axis: 50,
    title: "a word for absolute coordinates, or a control that has no others",
    base: "explicit-words",
    one: "distance: { absolute: G90, incremental: none }",
    other: "distance: { absolute: none, incremental: none }",
  },
  {
    axis: 51,
    title: "G54 and G55, or presets of the builder",
    base: "rs274ngc",
    one: "work-offset: [G54, G55]",
    other: "work-offset: [G154, G155]",
  },
  {
    axis: 52,
    title: "machine coordinates by G53, or by another code",
    base: "rs274ngc",
    one: "machine-move: G53",
    other: "machine-move: G153",
  },
  {
    axis: 52,
    title: "a move in machine coordinates, or none: the way up is the reference return",
    base: "explicit-words",
    one: "machine-move: G53",
    other:
      "machine-move: none\nreference-return: G28\nmachine: { retract: { by: reference-return, acts-on: spindle-nose, intermediate: none } }",
  },
  {
    axis: 53,
    title: "a reference return that takes its words as an intermediate point, or as names of axes",
    base: "rs274ngc",
    one: "machine: { retract: { by: reference-return, intermediate: incremental-zero } }",
    other: "machine: { retract: { by: reference-return, intermediate: none } }",
    program: "%\nG17 G21 G90 G94\nG28 Z0\nM2\n%\n",
  },
  {
    axis: 55,
    title: "planes that are selected by words, or one plane and no word",
    base: "explicit-words",
    one: "plane: { xy: G17, zx: G18, yz: G19 }",
    other: "plane: { xy: none, zx: none, yz: none }\narc: { planes: [xy] }",
  },
  {
    axis: 58,
    title: "a travel that holds the work, or one that is too short",
    base: "rs274ngc",
    one: "machine: { travel: { x: [0, 400] }, spindle: { min-rpm: 1000, max-rpm: 24000 } }",
    other: "machine: { travel: { x: [0, 40] }, spindle: { min-rpm: 1000, max-rpm: 24000 } }",
    otherRefuses: "limit/travel",
    guarded: true,
  },
];
