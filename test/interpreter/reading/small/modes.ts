import { blocks, whole } from "../foreign.ts";

const needsAll = "we assume no mode that a controller may have been left in";

const endBesideMotion = {
  differs: true,
  because:
    "the interpreter tells the end of the motion mode where no motion shares the block with G80; the motions are the same",
};

/** Units, planes, feed modes, offsets, compensation, path modes, and the order in which a block does things. */
export const modePrograms = [
  blocks("inch", "G20\nG0 X1 Y1 Z1\nG1 X1.5 F10\nG2 X2.5 I0.5"),
  blocks("inch, cycle", "G20\nG0 X1 Y1 Z1\nG83 X1 Y1 R0.1 Z-0.5 Q0.2 F10\nG80"),
  blocks("units on the block of a motion", "G20 G0 X1\nG21 X1\nY1\nG20 Y1"),
  blocks("units change, place stays", "G0 X25.4 Y50.8\nG20\nG91 G0 X1\nG90 Y1\nG21 X0"),
  blocks("units change, feed is gone", "G1 X1 F100\nG20\nX2", {
    refused: "motion/feed",
    because: "4.3.3.3 leaves the number of the feed as it is, in other units",
  }),
  blocks("units change, and the feed with them", "G1 X1 F100\nG20\nX2 F10\nG21\nX3 F100"),
  blocks("units and feed in one block, as before", "G21 F100 G1 X1\nG21 X2 F50"),
  blocks("other units and feed in one block", "G1 X1 F100\nG20 X2 F10", {
    refused: "read/modal-conflict",
    because: "Table 8 takes F before the units: 10 mm a minute, and not 10 inch",
  }),
  blocks("both units in one block", "G20 G21", { refused: "read/modal-conflict" }),
  blocks("planes alone", "G17\nG18\nG19\nG17"),
  blocks("two planes in one block", "G17 G18", { refused: "read/modal-conflict" }),
  blocks("inverse time", "G93\nG1 X10 F2\nY10 F4\nG2 X20 I5 F1\nG94 F100\nG1 X0"),
  blocks("inverse time, no feed", "G93\nG1 X10 F2\nY10\nG94", { refused: "motion/feed" }),
  blocks("inverse time, rapids need none", "G93\nG1 X10 F2\nG0 Y10\nG1 X0 F3\nG94"),
  blocks("inverse time, feed on the rapid", "G93\nG0 Y10 F2\nG1 X10", { refused: "motion/feed" }),
  blocks("inverse time with a rotary axis", "G0 A0\nG93\nG1 X10 A20 F2\nA0 F1\nG94"),
  blocks("inverse time by radius", "G93\nG3 X10 R7 F2\nG2 X20 R-7 F2\nG94"),
  blocks("inverse time, helix", "G93\nG3 X10 Z15 I5 F2\nG94"),
  blocks("feed a minute again: the feed is gone", "G1 X1 F100\nG93 X2 F5\nG94\nX3", {
    refused: "motion/feed",
  }),
  blocks("feed a minute said again: the feed stays", "G1 X1 F100\nG94\nX3", {
    because: "3.5.20 says nothing of a feed that is gone when its mode is said again",
  }),
  blocks("feed mode in the block of the line", "G93 G1 X10 F2\nG94 X20 F100"),
  blocks("feed a revolution", "G95 F0.1 S500 M3\nG1 X1", {
    refused: "motion/feed read/unknown-code",
    because: "G95 is in no table of NISTIR 6556",
  }),
  blocks("constant surface speed", "G96 S100", {
    refused: "read/unknown-code",
    because: "G96 is in no table of NISTIR 6556",
  }),
  blocks("work offsets", "G55 G0 X1\nG56 X1\nG57 X1\nG58 X1\nG59 X1\nG59.1 X1\nG59.2 X1\nG59.3 X1\nG54 X1"),
  blocks("work offset alone, axes behind", "G0 X1 Y1\nG55\nX1\nG54\nY1"),
  blocks("work offset said again", "G54\nG54 X2"),
  blocks("work offset with the number padded", "G059 G0 X1\nG59.10 X1\nG5 4 X1"),
  blocks("no such work offset", "G59.4 X1", { refused: "read/unknown-code" }),
  blocks("two work offsets in one block", "G54 G55", { refused: "read/modal-conflict" }),
  blocks("incremental behind a work offset", "G55\nG91 G0 X1", {
    refused: "read/position",
    because: "what an offset holds stands in no program",
  }),
  blocks("arc behind a work offset", "G55\nG2 X-24.4 Y12.7 I0.5 F100", {
    refused: "read/position",
    because: "what an offset holds stands in no program",
  }),
  blocks("origin by G92", "G92 X0 Y0", {
    refused: "read/unknown-code",
    because: "the dialect declares no local shift but its end",
  }),
  blocks("origin cleared by G92.1", "G92.1", {
    refused: "read/unknown-code",
    because: "the dialect declares G92.2 alone",
  }),
  blocks("origin cleared by G92.2", "G92.2\nG0 X1 Y1"),
  blocks("origin back by G92.3", "G92.3", {
    refused: "read/unknown-code",
    because: "the dialect declares G92.2 alone",
  }),
  blocks("origin cleared beside a motion", "G92.2 X1 Y1"),
  blocks("origins set by G10", "G10 L2 P1 X1", {
    refused: "read/unknown-code",
    because: "the dialect declares no setting of offsets",
  }),
  blocks("length offset", "G43 H1 Z10\nX1\nG49 Z20"),
  blocks("length offset in a block of its own", "G43 H2\nG0 Z10\nG49\nZ5"),
  blocks("length offset of another number", "G43 H1 Z10\nG43 H5 Z10\nG49"),
  blocks("length offset 0", "G43 H1 Z10\nG43 H0 Z10"),
  blocks("length offset 0 with a tool in the spindle", "T4 M6\nG43 H0 Z10", {
    differs: true,
    because: "3.5.11: an offset of zero; the interpreter takes the length of the tool in the spindle",
  }),
  blocks("length offset without a number", "G43 Z10", {
    refused: "read/word-missing",
    because: "3.5.11: G43 takes an H",
  }),
  blocks("H without G43", "H1", { refused: "read/unused-word" }),
  blocks("length offset below zero", "G43 H-1", { refused: "read/number" }),
  blocks("length offset of a fraction", "G43 H1.5", { refused: "read/number" }),
  blocks("length offset, incremental Z behind", "G43 H1\nG91 Z1", {
    refused: "read/position",
    because: "how long a tool is stands in no program",
  }),
  blocks("length offset negative", "G44 H1", { refused: "read/unknown-code" }),
  blocks("length offset by a word", "G43.1 Z1", {
    refused: "read/unknown-code",
    because: "G43.1 is in no table of NISTIR 6556",
  }),
  blocks("length offset on an arc", "G43 H1 G2 X10 I5 F100"),
  blocks("compensation left", "G0 X-10\nG41 D1\nG1 X0 F100\nX10\nY10\nG40\nX20"),
  blocks(
    "compensation right with a lead-in in its block",
    "G0 X-10\nG42 D2 G1 X0 F100\nX10\nG2 X20 Y10 J10\nG40 G1 X30",
  ),
  blocks("compensation without D", "T1 M6\nG0 X-10\nG41 G1 X0 F100\nX10\nG40 X20"),
  blocks("compensation said twice", "G41 D1\nG1 X5 F100\nG41 D1\nX10\nG40", { refused: "motion/comp" }),
  blocks("compensation from side to side", "G41 D1\nG1 X5 F100\nG42 D1\nX10\nG40", {
    refused: "motion/comp",
  }),
  blocks("compensation off where none was on", "G40\nG40"),
  blocks("compensation in the plane YZ", "G19\nG41 D1\nG40", { refused: "motion/comp" }),
  blocks("D without compensation", "D1", { refused: "read/unused-word" }),
  blocks("plane under compensation", "G41 D1\nG1 X5 F100\nG18\nX10\nG40", { refused: "read/modal-conflict" }),
  blocks("units under compensation", "G41 D1\nG1 X5 F100\nG20\nG40", {
    refused: "read/modal-conflict",
    because:
      "the radius is not in the new units; the interpreter of NISTIR 6556 refuses it, too (from memory)",
  }),
  blocks("work offset under compensation", "G41 D1\nG1 X5 F100\nG55\nG40", {
    refused: "read/modal-conflict",
  }),
  blocks("length offset under compensation", "G41 D1\nG1 X5 F100\nG43 H1\nG40", {
    refused: "read/modal-conflict",
  }),
  blocks("tool change under compensation", "G41 D1\nG1 X5 F100\nT1 M6\nG40", { refused: "motion/comp" }),
  blocks("compensation entered by a rapid", "G41 D1\nG0 X5\nG1 X10 F100\nG40\nG1 X12", {
    refused: "motion/comp",
    because: "the guard wants a line to begin it",
  }),
  blocks("compensation entered by an arc", "G41 D1\nG2 X10 I5 F100\nG40\nG1 X12", {
    refused: "motion/comp",
    because: "the guard wants a line to begin it",
  }),
  blocks("compensation left by an arc", "G41 D1\nG1 X10 F100\nG40\nG2 X20 I5", {
    refused: "motion/comp",
    because: "the guard wants a straight motion to end it",
  }),
  blocks("compensation and a plunge", "G41 D1\nG1 X10 F100\nZ1\nX20\nG40\nG1 X30"),
  blocks("compensation by a radius of none", "G41 D0\nG1 X10 F100\nG40\nG1 X30"),
  blocks("compensation by a tool that the table has not", "G41 D77\nG1 X10 F100\nG40\nG1 X30", {
    because: "the table of tools is the machine's",
  }),
  blocks("length offset that the table has not", "G43 Z10 H77", {
    because: "the table of tools is the machine's",
  }),
  blocks("one plane twice", "G17 G17", { refused: "read/modal-conflict" }),
  blocks("one distance mode twice", "G90 G90 X1", { refused: "read/modal-conflict" }),
  blocks("length offset on and off", "G43 H1 G49", { refused: "read/modal-conflict" }),
  blocks("compensation on and off", "G40 G41 D1", { refused: "read/modal-conflict read/unused-word" }),
  blocks("both return levels", "G98 G99", { refused: "read/modal-conflict" }),
  blocks("words of offsets beside a line", "G1 X1 D1 H1 F100", { refused: "read/unused-word" }),
  blocks("words of cycles beside a line", "G1 X1 P1 Q1 F100", { refused: "read/unused-word" }),
  blocks("path modes", "G61\nG61.1\nG64\nG61"),
  blocks("path mode with a tolerance", "G64 P0.01", {
    refused: "read/unused-word",
    because: "G64 has no P in NISTIR 6556",
  }),
  blocks("two path modes in one block", "G61 G64", { refused: "read/modal-conflict" }),
  blocks("diameter mode", "G8", {
    refused: "read/unknown-code",
    because: "G8 is in no table of NISTIR 6556",
  }),
  blocks(
    "everything in one block",
    "G90 G94 F200 S800 T2 M6 M3 M8 G4 P1 G17 G21 G40 G43 H2 G55 G64 G99 G1 X1 Y2 Z3 M0",
  ),
  blocks(
    "everything in one block, backwards",
    "M0 Z3 Y2 X1 G1 G99 G64 G55 H2 G43 G40 G21 G17 P1 G4 M8 M3 M6 T2 S800 F200 G94 G90",
  ),
  blocks("feed behind its line", "G1 X1 F100 F50", { refused: "read/repeated-word" }),
  blocks("motion word behind its axes", "X1 Y1 G1 F100\nX2 G0"),
  blocks("absolute behind the axes", "G91\nX1 Y1 G90 G0\nX5 G91"),
  blocks("plane behind the arc", "X10 Z20 I5 G2 G18 F100"),
  blocks("work offset behind the axes", "X1 G0 G55\nY1 G54"),
  blocks("level behind the hole", "X1 R2 Z-3 G81 F100 G98\nX2 G99\nX3"),
  blocks("spindle and coolant behind the motion", "G1 X5 F100 M3 S500 M8\nX6 M5 M9"),
  blocks("stop behind the motion", "G1 X5 F100 M0\nG1 X6 F100"),
  blocks("three motion words", "G0 G1 X1", { refused: "read/modal-conflict" }),
  blocks("one motion word twice", "G1 G1 X1 F100", { refused: "read/modal-conflict" }),
  blocks("cycle and motion word", "G0 G81 X1 R2 Z-3 F100", {
    refused: "read/modal-conflict read/unused-word",
  }),
  blocks("safe line", "G0 G17 G40 G49 G80 G90", {
    differs: true,
    because: "the interpreter makes a motion to where it stands of a motion word without axes beside G80",
  }),
  blocks("end of cycles beside a rapid", "G81 X1 R2 Z-3 F100\nG0 G80 X5\nX6", endBesideMotion),
  blocks("end of cycles beside a line", "G81 X1 R2 Z-3 F100\nG80 G1 X5 Y2\nX6", endBesideMotion),
  blocks("end of cycles beside an arc", "G81 X1 R2 Z-3 F100\nG2 X5 I2 G80\nX6 I0.5", endBesideMotion),
  blocks("safe line without a rapid", "G17 G40 G49 G80 G90 G94"),
  blocks("safe line with a work offset and path mode", "G90 G17 G40 G49 G80 G54 G64 G94 G98 M5 M9"),
  whole("units never said", "G17 G40 G49 G80 G90 G94\nG54 G0 X1 Y1 Z1\nM2\n", {
    refused: "read/mode-unknown",
    because: needsAll,
  }),
  whole("distance mode never said", "G21 G17 G40 G49 G80 G94\nG54 G0 X1 Y1 Z1\nM2\n", {
    refused: "read/mode-unknown",
    because: needsAll,
  }),
  whole("plane never said", "G21 G90 G40 G49 G80 G94\nG54 G0 X0 Y0 Z1\nG2 X1 Y0 I0.5 F100\nM2\n", {
    refused: "read/mode-unknown",
    because: needsAll,
  }),
  whole("feed mode never said", "G21 G90 G40 G49 G80 G17\nG54 G0 X0 Y0 Z1\nG1 X1 F100\nM2\n", {
    refused: "read/mode-unknown",
    because: needsAll,
  }),
  whole("return level never said", "G21 G90 G40 G49 G80 G17 G94\nG54 G0 X0 Y0 Z5\nG81 X1 R2 Z-1 F100\nM2\n", {
    refused: "read/mode-unknown",
    because: needsAll,
  }),
];
