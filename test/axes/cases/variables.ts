import type { AxisCase } from "../axis-case.ts";

const sameText =
  "programs that are posted have neither variables nor subprograms: what differs is how others are read";
const head = "%\nG17 G21 G40 G49 G54 G61 G80 G90 G94 G98\nG0 X0 Y0 Z20\n";
const program = (text: string, behind = ""): string => `${head}${text}\nM2\n${behind}%\n`;
const variables = (parameters: string, control: string, nesting = 9): string =>
  `variables: { parameters: ${parameters}, control: ${control}, nesting: ${String(nesting)} }`;

/** Group L: subprograms and variables, and arithmetic in words. */
export const cases: readonly AxisCase[] = [
  {
    axis: 40,
    title: "arithmetic in the place of a number, or numbers alone",
    base: "rs274ngc",
    one: variables("numbered", "none"),
    other: variables("none", "none"),
    program: program("G0 X[10 + 4 / 2]"),
    sameText,
  },
  {
    axis: 117,
    title: "M98 calls a subprogram, or is no code",
    base: "rs274ngc",
    one: variables("none", "calls"),
    other: variables("none", "none"),
    program: program("M98 P100", "O100\nG0 X1\nM99\n"),
    sameText,
  },
  {
    axis: 118,
    title: "a subprogram between O words before its call, or behind the end alone",
    base: "rs274ngc",
    one: variables("none", "o-words"),
    other: variables("none", "calls"),
    program: program("o100 sub\nG91 G0 X1\nG90\no100 endsub\no100 call\no100 call"),
    sameText,
  },
  {
    axis: 119,
    title: "calls two deep, or one",
    base: "rs274ngc",
    one: variables("none", "calls", 2),
    other: variables("none", "calls", 1),
    program: program("M98 P1 L2", "O1\nG0 X1\nM98 P2\nM99\nO2\nG0 X2\nM99\n"),
    sameText,
  },
  {
    axis: 120,
    title: "a subprogram that leaves incremental words in force, or no subprogram",
    base: "rs274ngc",
    one: variables("none", "calls"),
    other: variables("none", "none"),
    program: program("M98 P1\nX5", "O1\nG91 G0 X1\nM99\n"),
    sameText,
  },
  {
    axis: 121,
    title: "parameters with names, or with numbers alone",
    base: "rs274ngc",
    one: variables("named", "none"),
    other: variables("numbered", "none"),
    program: program("#<depth>=3\nG0 Z#<depth>"),
    sameText,
  },
  {
    axis: 121,
    title: "loops by O words, or none",
    base: "rs274ngc",
    one: variables("numbered", "o-words"),
    other: variables("numbered", "calls"),
    program: program("o1 repeat [3]\nG91 G0 X1\no1 endrepeat\nG90"),
    sameText,
  },
  {
    axis: 122,
    title: "a subprogram in the coordinates of its call, or no subprogram",
    base: "rs274ngc",
    one: variables("none", "calls"),
    other: variables("none", "none"),
    program: program("G55\nG0 X0 Y0 Z20\nM98 P1\nG54", "O1\nG0 X1\nM99\n"),
    sameText,
  },
];
