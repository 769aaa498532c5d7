import type { programJobRules } from "#retrace";
import { quarryRouter } from "../support/dialects.ts";

/** A program with a fault: the lines that stand in a sound frame, and what is found. */
export interface BadProgram {
  readonly name: string;
  readonly lines: string;
  readonly rule: (typeof programJobRules)[number] | `read/${string}` | `job/${string}` | `offset/${string}`;
  /** Line of the fault among the lines, counted from 1. */
  readonly line: number;
  readonly severity?: "warning" | "note";
  /** Stands before the lines; `begin` unless it is given. */
  readonly before?: string;
  /** Stands behind the lines; `end` unless it is given. */
  readonly after?: string;
  /** rs274ngc unless it is given. */
  readonly dialect?: string;
  /** A head file; none unless it is given. */
  readonly head?: string;
}

/** A dialect that leaves the units to its job. */
export const noUnits = "no-units.dialect.yaml";
export const noUnitsText =
  "dialect: no-units\ntitle: No units\nextends: iso-6983\nunits: { programs-in: job }\n";

/** A sound beginning: the tool turns and stands at 0, 0, 20. */
export const begin =
  "G21 G90 G17 G94 G40 G80 G54\n(T1 D=6 END MILL)\nT1 M6\nS9000 M3\nG0 X0 Y0\nG43 Z20 H1\n";

/** A sound end. */
export const end = "\nG0 Z20\nG53 G0 Z0\nM5\nM2\n";

const bad = (
  name: string,
  lines: string,
  rule: BadProgram["rule"],
  line = 1,
  more: Partial<BadProgram> = {},
): BadProgram => ({
  name,
  lines,
  rule,
  line,
  ...more,
});

const cut = "G1 Z-1 F200";

const head = (units: string, more = ""): string =>
  JSON.stringify({
    job: "1",
    name: "head",
    units,
    clearance: 20,
    tools: [{ number: 1, kind: "end-mill", diameter: 6 }],
  }).replace("}]}", `}]${more}}`);

/** A head file whose spare states no length offset. */
const spareHead = head("mm").replace(
  "}]",
  ',"life":9,"lengthOffset":1},{"number":2,"kind":"end-mill","diameter":6,"spareFor":1}]',
);

/** What the reader cannot take a meaning from; its rules hold as they are. */
const unread: readonly BadProgram[] = [
  bad("a code of no meaning", "G1 Z-1 F200\nM77", "read/unknown-code", 2),
  bad("no end", cut, "read/no-end", 3, { after: "\nG0 Z20\n" }),
  bad("a parameter that is never set", "G1 X#100 F200", "read/run-time-value"),
  bad("a subprogram of another file", `${cut}\nM98 P100`, "read/unknown-subprogram", 2),
  bad("incremental words from an unknown place", "G91\nG0 Z-5\nG1 X10 F200", "read/position", 2, {
    before: "G21 G17 G94 G54\nT1 M6\nS9000 M3\n",
  }),
  bad("units that nobody states", "G0 X0 Y0", "read/mode-unknown", 1, {
    before: "G90 G17 G94 G54\nT1 M6\nS9000 M3\n",
  }),
  bad("neither absolute nor incremental", "G0 X0 Y0", "read/mode-unknown", 1, {
    before: "G21 G17 G94 G54\nT1 M6\nS9000 M3\n",
  }),
  bad("no feed", "G1 Z-1", "job/program-feed"),
  bad("no motion word", "X10", "read/word-missing", 1, {
    before: begin.replace("G0 X0 Y0\nG43 Z20 H1\n", ""),
  }),
  bad("an arc without a centre", `${cut}\nG2 X10`, "read/arc", 2),
  bad("a letter twice", "G1 Z-1 Z-2 F200", "read/repeated-word"),
  bad("two motions in one block", "G0 G1 X10 F200", "read/modal-conflict"),
  bad("a word that nothing asks for", `${cut}\nG1 X10 P3`, "read/unused-word", 2),
  bad("a cycle without a depth", "G81 X10 R2 F100", "read/word-missing"),
  bad("a cycle under inverse time", "G93\nG81 X10 Z-5 R2 F100", "read/cycle", 2),
  bad("a comment that does not end", "(FACE\nG1 Z-1 F200", "read/comment"),
  bad("finer than the least increment", "G1 Z-1.00001 F200", "read/finer-than-grid"),
  bad("blocks behind the end", cut, "read/after-end", 6, { after: "\nG0 Z20\nG53 G0 Z0\nM5\nM2\nG0 X0\n" }),
  bad("bytes that are no text", "G1 Z-1 F200 \u0001", "read/encoding"),
  bad("a length offset without its number", "G43 Z5", "read/word-missing"),
  bad("a decimal point where there is none", "G90 G00 X1.5 Y0", "read/decimal", 1, {
    dialect: "least-increment",
    before: "",
  }),
];

/** What a job has no words for. */
const unsaid: readonly BadProgram[] = [
  bad("an empty program", "", "job/program-empty", 1, { before: "", after: "M2\n" }),
  bad("no work", "G0 X0 Y0", "job/program-empty", -100, { before: "G21 G90\n", after: "\nM2\n" }),
  bad("a cycle that stops the spindle", "G86 X10 Z-5 R2 P1 F100", "job/program-hole"),
  bad("a cycle that stops for the operator", "G88 X10 Z-5 R2 P1 F100", "job/program-hole"),
  bad("a tap without a speed", "G84 X10 Z-5 R2 F100", "job/program-hole", 1, {
    before: begin.replace("S9000 M3", "M3"),
  }),
  bad("the hood in the work", `G01 X10 F200\nM24\nG01 X20 F200`, "job/program-code", 2, {
    dialect: quarryRouter,
    before: "%\nG94 G17 G21 G90 G54\nM03 S9000\nG00 X0 Y0\nG43 G00 Z20 H01\nG01 Z-1 F200\nM23\n",
  }),
  bad("a cut in machine coordinates", "G53 G1 X-100 F500", "job/program-machine-frame"),
  bad(
    "a cut in machine coordinates before the work",
    "G53 G1 X-100 F500\nG0 X0 Y0\nG43 Z20 H1",
    "job/program-machine-frame",
    1,
    {
      before: "G21 G90 G17 G94 G54\nT1 M6\nS9000 M3\n",
    },
  ),
  bad("a cut before the place is known", "G1 X10 Y10 F200", "job/program-place", 1, {
    before: "G21 G90 G17 G94 G54\nT1 M6\nS9000 M3\n",
  }),
  bad("a cut at an unknown Z", "G1 X10 F200", "job/program-place", 1, {
    before: begin.replace("G43 Z20 H1\n", ""),
  }),
  bad("Z lost by a reference return of X", `${cut}\nG28 X0\nG1 Y10`, "job/program-place", 3),
  bad("Z lost by another length offset", `${cut}\nG43 H2\nG1 X10`, "job/program-place", 3),
  bad("two length offsets of one tool", `${cut}\nG43 H2 Z-1\nG1 X10`, "job/program-offset", 2),
  bad("a work offset that changes in the work", `${cut}\nG55\nG1 X10`, "job/program-place", 3),
  bad("no spindle", cut, "job/program-spindle", -1, { before: begin.replace("S9000 M3\n", "") }),
  bad(
    "a spindle that the tool change has stopped",
    `${cut}\nG0 Z20\nT2 M6\nS5000\nG0 X20 Y0\nG43 Z20 H2\nG1 Z-2`,
    "job/program-spindle",
    5,
  ),
  bad(
    "a way at the height of the machine that a job would go at clearance",
    `${cut}\nG53 G0 Z0\nG0 X50 Y50\nZ2\nG1 Z-1`,
    "job/program-clearance",
    3,
  ),
  bad(
    "a way in machine coordinates at working height",
    `${cut}\nG0 Z5\nG53 G0 X-100 Y-200\nG0 X40 Y40\nG1 Z-1`,
    "job/program-machine-frame",
    3,
  ),
  bad(
    "a reference return of X and Y at working height",
    `${cut}\nG91 G28 X0 Y0\nG90 G0 X40 Y40\nG1 X50`,
    "job/program-machine-frame",
    2,
  ),
  bad(
    "a cut from where a reference return has left X",
    `${cut}\nG0 Z20\nG91 G28 X0\nG90 G0 Y40\nG1 X50 Z-1`,
    "job/program-place",
    5,
  ),
  bad("two radius offsets", `${cut}\nG41 D11 G1 X20\nG40 X0\nG41 D1 X20\nG40 X0`, "job/program-offset", 4),
  bad("no length offset", cut, "job/program-offset", -1, { before: begin.replace("G43 Z20 H1", "Z20") }),
  bad(
    "a second tool under the length offset of the first",
    `${cut}\nG0 Z20\nM5\nT2 M6\nS9000 M3\nG0 X0 Y30 Z20\nG1 Z-1 F200`,
    "job/program-offset",
    6,
  ),
  bad("a length offset that is cancelled alone", cut, "job/program-offset", -2, {
    before: begin.replace("G43 Z20 H1", "G49\nZ20"),
  }),
  bad(
    "a side without its radius offset, and one with it",
    `${cut}\nG41 G1 X20\nG40 X0\nG41 D1 X20\nG40 X0`,
    "job/program-offset",
    2,
  ),
  bad("no length offset, and a spare of the head file without one", cut, "job/program-offset", -1, {
    before: begin.replace("G43 Z20 H1", "Z20"),
    head: spareHead,
  }),
  bad("no length offset, and a head file that does not state it", cut, "job/program-offset", -1, {
    before: begin.replace("G43 Z20 H1", "Z20"),
    head: head("mm"),
  }),
  bad("a tool word without its length offset", "G01 Z-1. F200.", "job/program-offset", -1, {
    dialect: "staged-tools",
    before: "%\nO1001\nG94 G17 G21 G40 G90\nT0100\nM06\nG54 S9000 M03\nG00 X0. Y0.\nZ20.\n",
    after: "\nG00 Z20.\nM05\nG91 G28 Z0.\nG90\nM30\n%\n",
  }),
  bad(
    "cuts with a length offset and without",
    `${cut}\nG0 Z20\nG49\nG0 Z30\nG1 Z-1`,
    "job/program-offset",
    5,
  ),
  bad(
    "a tool that comes out while the spindle stands",
    `${cut}\nM5\nG0 Z15\nS9000 M3\nG0 X10\nG1 Z-1`,
    "job/program-spindle",
    3,
  ),
  bad("a block that a switch skips", `${cut}\n/G0 Z15\nG1 X10`, "read/block-delete", 2),
  bad(
    "a stop behind a tool word that asks for something else",
    "G01 Z-1. F200.\nG00 Z20.\nM05\nT2\n(MSG, TURN THE PART OVER)\nM00\nS9000 M03\nG00 X0. Y0.\nG01 Z-1.",
    "job/program-stop",
    6,
    {
      dialect: "iso-6983",
      before: "G90 G94\nT1\n(MSG, LOAD TOOL 1)\nM00\nS9000 M03\nG00 X0. Y0.\nZ20.\n",
      after: "\nG00 Z20.\nM05\nM30\n",
    },
  ),
  bad("a spindle that stops in the work", `${cut}\nM5\nG1 X10`, "job/program-spindle", 3),
  bad("a spindle that starts in the work", `${cut}\nS9000 M3\nG1 X10`, "job/program-spindle", -1, {
    before: begin.replace("S9000 M3\n", ""),
  }),
  bad("a spindle that turns the other way", `${cut}\nM4\nG1 X10`, "job/program-spindle", 3),
  bad("inverse time in a part of an operation", `${cut}\nG93\nG1 X10 F5`, "job/program-feed", 3),
  bad("an arc whose radii differ", `${cut}\nG2 X10 Y0 I5.5 J0`, "job/program-arc", 2),
  bad("an arc that ends in its centre", `${cut}\nG2 X5 Y0 I5 J0`, "job/program-arc", 2),
  bad("a radius that does not reach", `${cut}\nG2 X10 Y0 R4`, "job/program-arc", 2),
  bad("linear and rotary together", `${cut}\nG1 X10 A30`, "job/program-rotary", 2),
  bad("compensation at the end", `G1 Z-1 F200\nG41 D1 X20\nG0 Z20`, "job/program-compensation", 3, {
    after: "\nG53 G0 Z0\nM5\nM2\n",
  }),
  bad(
    "compensation at a stop",
    `G1 Z-1 F200\nG41 D1 X20\nG0 Z20\nM0\nG0 X40\nG40 X50`,
    "job/program-compensation",
    4,
  ),
  bad("a stop in the work", `${cut}\nM0\nG1 X10`, "job/program-pause", 2),
  bad("a depth above the retract level", "G81 X10 Z5 R2 F100", "read/cycle"),
  bad("too many steps between two motions", `${"M8\nM9\n".repeat(2100)}${cut}`, "job/program-limit", 4096),
  bad("a wait on an input that is none of the machine", `${cut}\nM94 P99 R1 Q5.0`, "job/program-code", 2, {
    dialect: "explicit-words",
  }),
];

/** Head files. */
const heads: readonly BadProgram[] = [
  bad("a head file with operations", cut, "job/unknown-key", -100, { head: head("mm", ',"operations":[]') }),
  bad("a head file that is no JSON", cut, "job/json", -100, { head: "{ tools" }),
  bad("a spindle with a tool that never turns", cut, "job/spindle", -1, {
    head: head("mm").replace("end-mill", "pen"),
  }),
];

/** What is told, and stops nothing. */
const told: readonly BadProgram[] = [
  bad("a tool without a size", cut, "job/program-tool", -1, {
    severity: "warning",
    before: begin.replace("(T1 D=6 END MILL)\n", ""),
  }),
  bad("no tool word", cut, "job/program-tool", -1, {
    severity: "note",
    before: begin.replace("T1 M6\n", ""),
  }),
  bad("no length offset, and a head file that states it", cut, "job/program-offset", -1, {
    severity: "warning",
    before: begin.replace("G43 Z20 H1", "Z20"),
    head: head("mm").replace(":6}", ':6,"lengthOffset":1}'),
  }),
  bad("a plane that nobody states", `${cut}\nG2 X10 Y0 I5 J0`, "read/mode-unknown", 2, {
    severity: "warning",
    before: begin.replace("G17 ", ""),
  }),
  bad("rapids that lead to no work", `${cut}\nG0 Z20\nG53 G0 Z0\nG0 X0 Y0`, "job/program-idle", 4, {
    severity: "note",
    after: "\nM5\nM2\n",
  }),
  bad("the top of a hole", "G81 X10 Z-5 R2 F100", "job/program-hole", 1, { severity: "note" }),
  bad("where it travels", cut, "job/program-clearance", -1, { severity: "note" }),
  bad("two path modes", `G61\n${cut}\nG64\nX10`, "job/program-path", -1, { severity: "note" }),
  bad("stops at corners", `G61.1\n${cut}`, "job/program-path", -1, { severity: "note" }),
  bad("feeds per minute and per revolution", `${cut}\nG95 F0.1\nG1 X10.`, "job/program-feed", 3, {
    severity: "note",
    dialect: "staged-tools",
    before: "%\nO1001\nG94 G17 G21 G40 G90\nT0101\nM06\nG54 S9000 M03\nG00 X0. Y0.\nZ20.\nG01 Z-1. F200.\n",
  }),
  bad("units that neither says", "G90 G94 G17 S9000 M03\nG00 X0. Y0. Z20.", "job/program-units", -100, {
    severity: "warning",
    dialect: noUnits,
    before: "",
    after: "\nG01 Z-1. F200.\nG00 Z20.\nM30\n",
  }),
  bad("form", "G1 F200 Z-1", "job/program-form", -100, { severity: "note" }),
];

/** All of them. */
export const badPrograms: readonly BadProgram[] = [...unread, ...unsaid, ...heads, ...told];
