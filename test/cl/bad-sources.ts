import type { clRules } from "../../core/1-job/cl/findings.ts";
import type { JobRule } from "../../core/1-job/findings.ts";

/** A source with a fault: the statements that stand in a sound frame, and what is found. */
export interface BadSource {
  readonly name: string;
  readonly statements: string;
  readonly rule: JobRule | (typeof clRules)[number];
  /** Line of the fault among the statements, counted from 1. */
  readonly line: number;
  /** Column, counted from 1; 1 unless it is given. */
  readonly column?: number;
  /** `--cl`; nothing unless it is given. */
  readonly cl?: string;
  /** Stands before the statements; `begin` unless it is given. */
  readonly before?: string;
  /** Stands behind the statements; `end` unless it is given. */
  readonly after?: string;
}

/** A sound beginning of 5 lines: the tool turns and stands at 0, 0, 10; the next motion is a line. */
export const begin = "UNITS/MM\nCUTTER/6\nLOADTL/1\nSPINDL/9000,CLW\nRAPID\nGOTO/0,0,10\nFEDRAT/300,MMPM\n";

/** A sound end. */
export const end = "\nRAPID\nGOTO/0,0,10\nFINI\n";

const bad = (
  name: string,
  statements: string,
  rule: BadSource["rule"],
  line = 1,
  column = 1,
  more: Partial<BadSource> = {},
): BadSource => ({ name, statements, rule, line, column, ...more });

const whole = { before: "", after: "" };

/** Faults of form. */
const form: readonly BadSource[] = [
  bad("an empty source", "", "job/cl-end", 1, 1, whole),
  bad("UTF-16", "\uFEFFG", "job/encoding", 1, 1, whole),
  bad("no end", "GOTO/1,1,1\n", "job/cl-end", 2, 1, { after: "" }),
  bad("cut off in a number", "GOTO/1,1,-", "job/cl-syntax", 1, 10, { after: "" }),
  bad("continued to nothing", "GOTO/1,1, $", "job/cl-syntax", 1, 12, { after: "" }),
  bad("a word behind FINI", "FINI\nGOTO/1,1,1", "job/cl-end", 2, 1, { after: "\n" }),
  bad("a motion behind END", "END\nGOTO/1,1,1", "job/cl-end", 2, 1, { after: "\nFINI\n" }),
  bad("a semicolon", "GOTO/1,1,1;", "job/cl-syntax", 1, 11),
  bad("a name", "P1=POINT/1,1", "job/cl-syntax", 1, 3),
  bad("nesting", "GOTO/(POINT/1,1)", "job/cl-syntax", 1, 6),
  bad("a statement of numbers", "10,20,30", "job/cl-syntax"),
  bad("no comma", "GOTO/1 2,3", "job/cl-syntax", 1, 8),
  bad("two commas", "GOTO/1,,3", "job/cl-syntax", 1, 8),
  bad("no slash", "GOTO 1,2,3", "job/cl-syntax", 1, 6),
  bad("an exponent without a point", "GOTO/1E2,2,3", "job/cl-number", 1, 6),
  bad("two points in a number", "GOTO/1.2.3,2,3", "job/cl-number", 1, 6),
  bad("a number too large", "GOTO/1,2,30000000", "job/range", 1, 10),
  bad("601 items", `CUTTER/${"1,".repeat(601)}1`, "job/limit", 1, 1208),
  bad("a line of 70 kB", `$$ ${"x".repeat(70_000)}`, "job/limit"),
  bad("text that is no UTF-8", "PPRINT \u00ff", "job/encoding"),
  bad("fifty faults", "GOTO/x,1,1\n".repeat(60), "job/more", 50),
];

/** Words and their items. */
const words: readonly BadSource[] = [
  bad("an unknown word", "GOTTO/1,1,1", "job/cl-word"),
  bad("INSERT", "INSERT G54", "job/cl-word"),
  bad("AUXFUN", "AUXFUN/8", "job/cl-word"),
  bad("PREFUN", "PREFUN/64", "job/cl-word"),
  bad("a turning table", "ROTABL/90,CLW", "job/cl-unsupported"),
  bad("a copy", "COPY/1,MODIFY,2", "job/cl-unsupported"),
  bad("a turning table with unknown words gone over", "ROTABL/90", "job/cl-unsupported", 1, 1, {
    cl: "unknown=warn",
  }),
  bad("blocks that a switch skips", "OPSKIP/ON", "job/cl-unsupported"),
  bad("five numbers", "GOTO/1,2,3,4,5", "job/cl-item"),
  bad("one number", "GOTO/1", "job/cl-item"),
  bad("a word for a number", "GOTO/1,2,DOWN", "job/cl-item"),
  bad("a unit that is none", "UNITS/MILES", "job/cl-item", 1, 7),
  bad("a feed with two units", "FEDRAT/300,MMPM,IPM", "job/cl-item"),
  bad("a feed of an unknown unit", "FEDRAT/300,MPS", "job/cl-item", 1, 12),
  bad("a feed of 0", "FEDRAT/0,MMPM", "job/range", 1, 8),
  bad("a coolant that is none", "COOLNT/BEER", "job/cl-item", 1, 8),
  bad("a coolant for taps", "COOLNT/TAPKUL", "job/cl-item", 1, 8),
  bad("a delay without a time", "DELAY/REV", "job/cl-item"),
  bad("a delay of nothing", "DELAY/0", "job/range", 1, 7),
  bad("compensation in another plane", "CUTCOM/LEFT,1,YZPLAN", "job/cl-unsupported", 1, 15),
  bad("compensation without a side", "CUTCOM/1", "job/cl-item", 1, 8),
];

/** Units, places, axes, rapids. */
const places: readonly BadSource[] = [
  bad("no UNITS", "", "job/cl-units", -1, 8, { before: "CUTTER/6\nLOADTL/1\n" }),
  bad("UNITS against the option", "UNITS/INCHES", "job/cl-units", 1, 1, { cl: "units=mm" }),
  bad("a tilted axis", "GOTO/1,2,3,0,1,0", "job/cl-axis", 1, 12),
  bad("a tilted axis among plain points", "GOTO/1,1,1\nGOTO/1,2,3,1,0,0", "job/cl-axis", 2, 12),
  bad("an axis that points down", "GOTO/1,2,3,0,0,-1", "job/cl-axis", 1, 12),
  bad("ORIGIN", "ORIGIN/10,0,0", "job/cl-shift"),
  bad("TRANS", "TRANS/0,0,1", "job/cl-shift"),
  bad("FROM elsewhere", "FROM/5,5,5", "job/cl-place"),
  bad("a step from nowhere", "GODLTA/1,1,1", "job/cl-place", 1, 1, {
    before: "UNITS/MM\nLOADTL/1\nSPINDL/9000,CLW\nRAPID\n",
  }),
  bad(
    "a step behind a cycle",
    "CYCLE/DRILL,FEDTO,2,CLEAR,1\nGOTO/1,1,0\nCYCLE/OFF\nGODLTA/5",
    "job/cl-place",
    4,
  ),
  bad(
    "no Z behind a cycle",
    "CYCLE/DRILL,FEDTO,2,CLEAR,1\nGOTO/1,1,0\nCYCLE/OFF\nGOTO/5,5",
    "job/cl-place",
    4,
  ),
  bad("steps out of reach", "GODLTA/9.E5,0,0\nGODLTA/9.E5,0,0", "job/range", 2),
  bad("a shift out of reach", "GOTO/1,1,1\nTRANS/9.E5,0,0\nGOTO/1,1,1\nGOTO/900000,0,0", "job/range", 4, 1, {
    cl: "trans=add",
  }),
  bad("a feed by turns out of reach", "FEDRAT/9.E5,MMPR\nGOTO/1,1,1", "job/range", 2),
  bad("RETRCT without CLEARP", "RETRCT", "job/cl-clearance"),
  bad("home without FROM", "GOHOME", "job/cl-home", 1, 1, { cl: "home=from" }),
  bad("a fourth number that is refused", "GOTO/1,2,3,90", "job/cl-fourth", 1, 12, { cl: "fourth=refuse" }),
  bad("a line before a rapid", "GOTO/1,1,1", "job/first-move", 1, 1, {
    before: "UNITS/MM\nLOADTL/1\nSPINDL/9000,CLW\nFEDRAT/300,MMPM\n",
  }),
  bad("a line without a feed", "GOTO/1,1,1", "job/feed", 1, 1, {
    before: "UNITS/MM\nLOADTL/1\nSPINDL/9000,CLW\nRAPID\nGOTO/0,0,9\n",
  }),
  bad("a stop below clearance", "GOTO/0,0,-1\nSTOP", "job/pause", 2),
  bad("compensation to the end", "CUTCOM/LEFT", "job/compensation", 4, 5),
  bad("inverse time beside other feeds", "GOTO/1,1,1\nFEDRAT/INVERS,2\nGOTO/2,2,2", "job/cl-feed", -4),
  bad("columns 73 to 80 that may be either", `GOTO/1,1,${"".padEnd(63)}00000012`, "job/cl-columns", 1, 73),
];

/** Arcs. */
const arcs: readonly BadSource[] = [
  bad("a full circle, or none", "CIRCLE/5,0,10,0,0,1,5\nGOTO/0,0,10", "job/cl-circle", 2),
  bad("an arc that is nearly a full circle", "CIRCLE/5,0,10,0,0,1,5\nGOTO/0,.001,10", "job/cl-circle", 2),
  bad("a circle of another radius", "CIRCLE/5,0,10,0,0,1,6\nGOTO/10,0,10", "job/arc-radius"),
  bad("an end off the circle", "CIRCLE/5,0,10,0,0,1,5\nGOTO/11,0,10", "job/arc-radius", 2),
  bad("a slanting circle", "CIRCLE/5,0,10,0,1,1,5\nGOTO/10,0,10", "job/cl-circle", 1, 15),
  bad("a circle without an axis", "CIRCLE/5,0,10,5\nGOTO/10,0,10", "job/cl-circle"),
  bad("a circle without an end", "CIRCLE/5,0,10,0,0,1,5\nRAPID", "job/cl-circle", 2),
  bad("a circle to a step", "CIRCLE/5,0,10,0,0,1,5\nGODLTA/10,0,0", "job/cl-circle", 2),
  bad("two circles", "CIRCLE/5,0,10,0,0,1,5\nCIRCLE/5,0,10,0,0,1,5\nGOTO/10,0,10", "job/cl-circle", 2),
  bad("a circle at rapid", "RAPID\nCIRCLE/5,0,10,0,0,1,5\nGOTO/10,0,10", "job/cl-circle", 2),
  bad("a circle of six numbers", "CIRCLE/5,0,10,0,0,1\nGOTO/10,0,10", "job/cl-item"),
];

/** Holes. */
const off = "\nGOTO/1,1,0\nCYCLE/OFF";
const holes: readonly BadSource[] = [
  bad("numbers without names", `CYCLE/DRILL,2,100,MMPM,1${off}`, "job/cl-cycle", 1, 13),
  bad("a depth below 0", `CYCLE/DRILL,FEDTO,-2,CLEAR,1${off}`, "job/cl-cycle", 1, 19),
  bad("a bottom above the point", `CYCLE/DRILL,FEDTO,2,CLEAR,1${off}`, "job/cl-cycle", 1, 1, {
    cl: "depth=z",
  }),
  bad("no depth", `CYCLE/DRILL,CLEAR,1${off}`, "job/cl-cycle", 1, 7),
  bad("no clearance", `CYCLE/DRILL,FEDTO,2${off}`, "job/cl-cycle", 1, 7),
  bad("pecks without a step", `CYCLE/DEEP,FEDTO,2,CLEAR,1${off}`, "job/cl-cycle", 1, 7),
  bad("a tap without a lead", `CYCLE/TAP,FEDTO,2,CLEAR,1${off}`, "job/cl-cycle", 1, 7),
  bad("a step where none belongs", `CYCLE/DRILL,FEDTO,2,CLEAR,1,STEP,1${off}`, "job/cl-cycle", 1, 29),
  bad("a depth twice", `CYCLE/DRILL,FEDTO,2,FEDTO,3,CLEAR,1${off}`, "job/cl-cycle", 1, 21),
  bad("a word without its number", `CYCLE/DRILL,FEDTO,2,CLEAR${off}`, "job/cl-cycle", 1, 21),
  bad("a level below the start", `CYCLE/DRILL,FEDTO,2,CLEAR,3,RTRCTO,1${off}`, "job/cl-cycle", 1, 29),
  bad("a cycle that is none", `CYCLE/DRIL,FEDTO,2,CLEAR,1${off}`, "job/cl-item", 1, 7),
  bad("a bore that stops the spindle", `CYCLE/BORE,FEDTO,2,CLEAR,1,ORIENT,0${off}`, "job/cl-item", 1, 28),
  bad("a cycle on that was never stated", "CYCLE/ON", "job/cl-cycle"),
  bad("a cycle at a tool change", "CYCLE/DRILL,FEDTO,2,CLEAR,1\nGOTO/1,1,0\nLOADTL/2", "job/cl-cycle", 3),
  bad(
    "a dwell by turns without speed",
    `CYCLE/FACE,FEDTO,2,CLEAR,1,DWELL,5,REV${off}`,
    "job/cl-spindle",
    1,
    34,
    {
      before: "UNITS/MM\nLOADTL/1\nRAPID\nGOTO/0,0,9\nFEDRAT/300,MMPM\n",
    },
  ),
  bad("a lead of nothing", `CYCLE/TAP,FEDTO,2,MMPM,.0001,CLEAR,1${off}`, "job/range", 1, 7, {
    before: begin.replace("9000", "90000000"),
  }),
  bad("holes out of reach", `CYCLE/DRILL,FEDTO,9.E5,CLEAR,1\nGOTO/1,1,-900000\nCYCLE/OFF`, "job/range", 2),
  bad("a cycle at a stop", "CYCLE/DRILL,FEDTO,2,CLEAR,1\nGOTO/1,1,0\nSTOP", "job/cl-cycle", 3),
  bad("a circle under a cycle", "CYCLE/DRILL,FEDTO,2,CLEAR,1\nCIRCLE/5,0,10,0,0,1,5", "job/cl-cycle", 2),
];

/** Tools and spindle. */
const tools: readonly BadSource[] = [
  bad("a motion without a tool", "RAPID\nGOTO/1,1,1", "job/cl-tool", 2, 1, { before: "UNITS/MM\n" }),
  bad("a tool number that is none", "LOADTL/1.5", "job/range", 1, 8),
  bad("a tool without a number", "LOADTL", "job/cl-item"),
  bad("a tool of two sizes", "CUTTER/8\nGOTO/1,1,1", "job/cl-tool"),
  bad("a tool of two lengths", "LOADTL/1,LENGTH,80\nLOADTL/1,LENGTH,90", "job/cl-tool", 2),
  bad("a word that no tool change has", "LOADTL/2,QUICK", "job/cl-item", 1, 10),
  bad("a corner too large", "CUTTER/6,4", "job/range", 1, 10),
  bad("a tool that does not turn", "GOTO/1,1,1", "job/spindle", -3, 1, {
    before: "UNITS/MM\nLOADTL/1\nRAPID\nGOTO/0,0,9\nFEDRAT/300,MMPM\n",
  }),
  bad("a cut behind SPINDL/OFF", "SPINDL/OFF\nGOTO/1,1,1", "job/cl-spindle", 2),
  bad("a cut before SPINDL", "GOTO/1,1,1\nSPINDL/9000,CLW", "job/cl-spindle", 2, 1, {
    before: "UNITS/MM\nLOADTL/1\nRAPID\nGOTO/0,0,9\nFEDRAT/300,MMPM\n",
  }),
  bad("a speed without a direction", "SPINDL/9000", "job/cl-spindle", 1, 1, {
    before: "UNITS/MM\nLOADTL/1\n",
  }),
  bad("a spindle that resumes nothing", "SPINDL/ON", "job/cl-spindle", 1, 1, {
    before: "UNITS/MM\nLOADTL/1\n",
  }),
  bad("a surface speed", "SPINDL/100,SMM,CLW", "job/cl-unsupported", 1, 12),
  bad("an oriented spindle", "SPINDL/ORIENT,90", "job/cl-unsupported", 1, 8),
  bad("a dwell in turns at standstill", "DELAY/5,REV", "job/cl-spindle", 1, 1, {
    before: "UNITS/MM\nLOADTL/1\n",
  }),
  bad("no motion at all", "", "job/cl-end", 0, 1, { before: "UNITS/MM\n", after: "FINI\n" }),
  bad("a rounding of the tool before", "LOADTL/2\nSPINDL/9000,CLW\nRAPID\nGOTO/1,1,9", "job/cl-tip", 4, 1, {
    cl: "point=centre",
  }),
  bad("a rounded tool without CUTTER led by its centre", "GOTO/1,1,1", "job/cl-tip", -1, 1, {
    before: "UNITS/MM\nLOADTL/1\nSPINDL/9000,CLW\nRAPID\nGOTO/0,0,9\nFEDRAT/300,MMPM\n",
    cl: "point=centre",
  }),
];

/** All of them. */
export const badSources: readonly BadSource[] = [...form, ...words, ...places, ...arcs, ...holes, ...tools];
