import { whole } from "../foreign.ts";

const head = "G21 G90 G17 G40 G49 G80 G94 G98\n";

/** Whole small programs in the habits of CAM output (common practice, no source). */
export const habitPrograms = [
  whole(
    "numbered, padded, safe line, change, offset with Z",
    [
      "%",
      "(PLATE 120X80, WORKSHOP)",
      "(T1 END MILL 6)",
      "N10 G21 G90 G94 G17 G40 G49 G80",
      "N15 G91 G28 Z0",
      "N20 G90",
      "N25 T1 M06",
      "N30 S16000 M03",
      "N35 G54 G00 X-12.5 Y10.",
      "N40 G43 H1 Z15. M08",
      "N45 Z2.",
      "N50 G01 Z-1.5 F300.",
      "N55 X0. F900.",
      "N60 G02 X5. Y5. I5. J0.",
      "N65 G01 X50.",
      "N70 G03 X55. Y10. R5.",
      "N75 G00 Z15.",
      "N80 M09",
      "N85 M05",
      "N90 G91 G28 Z0.",
      "N95 G28 X0. Y0.",
      "N100 G90",
      "N105 M02",
      "%",
    ].join("\n"),
  ),
  whole(
    "no blanks, no numbers, R arcs, drilling with sticky words",
    `${head}T3M6\nS4000M3\nG54G0X0Y0\nG43H3Z25\nG99G83X10Y10Z-12R2Q3F120\nX20\nY20\nX10\nG80\nG0Z25\nM5\nM2\n`,
  ),
  whole(
    "absolute levels, incremental pattern",
    `${head}T2 M6\nS5000 M3\nG54 G0 X10 Y10\nG43 H2 Z20\nG98 G81 X10 Y10 Z-5 R2 F100\nG91 X10 R-18 Z-7 L4\nG90 G80\nG0 Z20\nM2\n`,
  ),
  whole(
    "lower case with comments behind words",
    "%\ng21 g90 g17 g94 (modes)\ng54 g0 x0 y0 (start)\ns12000 m3\ng43 h1 z10 (length)\ng1 z-1 f200 (in)\nx10 (along)\ng2 x20 y10 j10 (round)\ng0 z10\nm5 (stop)\nm2\n%\n",
  ),
  whole(
    "facing by incremental passes",
    `${head}G54 G0 X-5 Y0\nS8000 M3\nZ5\nG1 Z-0.5 F200\nG91\nX110 F1200\nY5\nX-110\nY5\nX110\nY5\nX-110\nG90\nG0 Z20\nM5\nM2\n`,
  ),
  whole(
    "helix into a pocket, then circles by their centre",
    `${head}G54 G0 X20 Y20\nS8000 M3\nZ5\nG1 Z0 F200\nX25\nG3 X25 Y20 Z-1 I-5 J0\nG3 X25 Y20 Z-2 I-5 J0\nG3 X25 Y20 I-5 J0\nG1 X20\nG0 Z20\nM5\nM2\n`,
  ),
  whole(
    "machine coordinates to leave",
    `${head}G54 G0 X20 Y20\nG43 H1 Z5\nG1 Z-1 F100\nG53 G0 Z0\nG53 G0 X0 Y0\nM5\nM2\n`,
  ),
  whole(
    "two tools, optional stop between",
    `${head}T1 M6\nS9000 M3\nG54 G0 X0 Y0\nG43 H1 Z10\nG1 Z-1 F100\nX10\nG0 Z10\nM5\nM1\nT2 M6\nG43 H2\nS5000 M3\nG0 X5 Y5 Z10\nG81 Z-3 R1 F80\nG80\nG0 Z10\nM5\nM2\n`,
  ),
  whole("stop with a message", `${head}G54 G0 X0 Y0 Z10\n(MSG, TURN THE PART)\nM0\nG0 X1 Y1 Z10\nM2\n`),
  whole(
    "inverse time for a rotary axis",
    `${head}G54 G0 X0 Y0 Z10 A0\nS9000 M3\nG1 Z0 F100\nG93\nG1 X1 A5 F12.5\nX2 A10 F12.5\nX3 A15.125 F10\nG94\nG0 Z10\nM5\nM2\n`,
  ),
  whole(
    "plane ZX surface",
    `${head}G54 G0 X0 Y0 Z10\nS9000 M3\nG1 Z0 F100\nG18\nG2 X10 Z0 I5 K0 F300\nG1 Y1\nG3 X0 Z0 I-5 K0\nG17\nG0 Z10\nM5\nM2\n`,
  ),
  whole(
    "two work offsets",
    `${head}S9000 M3\nG54 G0 X0 Y0 Z10\nG81 X1 Y1 Z-1 R2 F50\nG80\nG55 G0 X0 Y0 Z10\nG81 X1 Y1 Z-1 R2\nG80\nM5\nM2\n`,
  ),
  whole(
    "inch program",
    "G20 G90 G17 G40 G49 G80 G94 G98\nT1 M6\nS9000 M3\nG54 G0 X-.5 Y1.25\nG43 H1 Z1.\nZ.1\nG1 Z-.0625 F10.\nX2. F25.5\nG2 X2.5 Y1.75 I0. J.5\nG0 Z1.\nM5\nM2\n",
  ),
  whole("rapid word on the safe line", "G00 G17 G21 G40 G49 G90 G94\nG80\nG54 X1 Y1 Z10\nM2\n", {
    refused: "read/word-missing",
  }),
  whole(
    "cycles from R level to R level in rising order",
    `${head}S9000 M3\nG54 G0 X0 Y0 Z30\nG99 G81 X1 Y1 Z-5 R2 F100\nX5 Z-5 R6\nX9 Z-5 R10\nG98 X12\nG80\nG0 X0\nM5\nM2\n`,
    {
      differs: true,
      because:
        "3.5.16.1 goes up to R before it goes across; within a series the interpreter goes up and across in one",
    },
  ),
  whole(
    "block numbers of six digits, tabs",
    "N100000\tG21\tG90\tG17\tG94\nN100010\tG54\tG0\tX1.\tY1.\tZ1.\nN100020\tM2\n",
  ),
];
