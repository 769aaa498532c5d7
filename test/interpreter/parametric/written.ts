import type { Expected, ForeignProgram } from "../reading/foreign.ts";
import { blocks, whole } from "../reading/foreign.ts";

const head = "G17 G21 G40 G49 G54 G61 G80 G90 G94 G98\nG0 X0 Y0 Z20\nF240\n";

/** A program with subprograms before it and numbered ones behind it. */
function program(name: string, text: string, subprograms = "", numbered = ""): ForeignProgram {
  return whole(name, `%\n${subprograms}${head}${text}\nG0 Z20\nM2\n${numbered}%\n`);
}

/** Parametric programs as they are written by hand for a part (common practice, no source). */
export const writtenParametric: readonly ForeignProgram[] = [
  program(
    "bolt circle, drilled",
    "#<holes>=6 #<radius>=25 #<first>=15 #<k>=0\nG0 Z5\no1 while [#<k> LT #<holes>]\n  #<angle>=[#<first> + 360 * #<k> / #<holes>]\n  G99 G81 X[40 + #<radius> * COS[#<angle>]] Y[30 + #<radius> * SIN[#<angle>]] Z-4 R1\n  #<k>=[#<k> + 1]\no1 endwhile\nG80",
  ),
  program(
    "grid of pecked holes by two loops",
    "G0 Z5\n#1=0\no1 repeat [4]\n  #2=0\n  o2 repeat [3]\n    G98 G83 X[10 + #1 * 12.7] Y[10 + #2 * 9.525] Z-6 R0.5 Q2\n    #2=[#2 + 1]\n  o2 endrepeat\n  #1=[#1 + 1]\no1 endrepeat\nG80",
  ),
  program(
    "round pocket from the middle, in depths",
    "#<z>=0\no10 while [#<z> GT -4.5]\n  #<z>=[#<z> - 1.5]\n  G1 X30 Y30 Z#<z> F120\n  #<r>=0\n  o11 while [#<r> LT 14]\n    #<r>=[#<r> + 2.25]\n    o12 if [#<r> GT 14]\n      #<r>=14\n    o12 endif\n    G1 X[30 + #<r>] F400\n    G3 I[-#<r>]\n  o11 endwhile\n  G0 Z5\no10 endwhile",
  ),
  program(
    "helix down a bore, then a clean-up circle",
    "#1=9.5 #2=0\nG0 X[50 + #1] Y50 Z1\nG1 Z0\no1 do\n  #2=[#2 - 0.8]\n  G2 I[-#1] Z#2\no1 while [#2 GT -4]\nG2 I[-#1]\nG1 X50",
  ),
  program(
    "slots by a subprogram with a length and an angle",
    "o100 call [20] [20] [30] [0]\no100 call [20] [40] [25] [22.5]\no100 call [60] [20] [18] [-37.2]",
    "o100 sub\n  G0 X#1 Y#2 Z2\n  G1 Z-1.2 F90\n  G1 X[#1 + #3 * COS[#4]] Y[#2 + #3 * SIN[#4]] F300\n  G0 Z2\no100 endsub\n",
  ),
  program(
    "an arm of three joints: calls in calls",
    "o<arm> call [10] [10] [0] [3]",
    "o<arm> sub\n  G1 X#1 Y#2\n  o1 if [#4 GT 0]\n    #5=[#3 + 31]\n    o<arm> call [#1 + 9 * COS[#5]] [#2 + 9 * SIN[#5]] [#5] [#4 - 1]\n    G1 X#1 Y#2\n    o<arm> call [#1 + 9 * COS[#3 - 24]] [#2 + 9 * SIN[#3 - 24]] [#3 - 24] [#4 - 1]\n  o1 endif\no<arm> endsub\n",
  ),
  program(
    "a value handed back",
    "o<hypotenuse> call [30] [40]\nG1 X#<_value>\no<hypotenuse> call [5] [12]\nG1 Y[#<_value> * #<_value_returned>]",
    "o<hypotenuse> sub\n  o1 if [#1 LE 0]\n    o<hypotenuse> return [0]\n  o1 endif\no<hypotenuse> endsub [SQRT[#1 ** 2 + #2 ** 2]]\n",
  ),
  program(
    "numbered subprogram, incremental, several times",
    "G0 X5 Y5 Z1\nM98 P200 L4\nG90 G0 X80",
    "",
    "O200\nG91 G1 Z-1.5 F60\nX[10 / 3] F200\nZ1.5\nG0 X4\nG90\nM99\n",
  ),
  program(
    "an ellipse in chords",
    "#1=0\no1 while [#1 LE 360]\n  G1 X[50 + 30 * COS[#1]] Y[40 + 18 * SIN[#1]]\n  #1=[#1 + 7.5]\no1 endwhile",
  ),
  program(
    "facing passes, there and back",
    "#<y>=0 #<way>=1\nG0 X-5 Y0 Z0\no1 while [#<y> LE 30]\n  o2 if [#<way> EQ 1]\n    G1 X95\n  o2 else\n    G1 X-5\n  o2 endif\n  #<way>=[1 - #<way>]\n  #<y>=[#<y> + 4.2]\n  G1 Y#<y>\no1 endwhile",
  ),
  program(
    "thread of arcs with computed centres in another plane",
    "G18\nG1 X40 Z0\n#1=6\nG2 X[40 + #1] Z[-#1] I0 K[-#1]\nG17\nG1 X10",
  ),
  program(
    "a table of places by parameters of parameters",
    "#101=12 #102=30 #103=48 #104=9.5\n#1=101\no1 do\n  G0 X##1 Y[#[#1] / 2]\n  #1=[#1 + 1]\no1 while [#1 LE 104]",
  ),
  program(
    "rounded corners by a quarter of a circle each",
    "#1=50 #2=30 #3=6.35\nG0 X#3 Y0 Z-1\nG1 X[#1 - #3]\nG3 X#1 Y#3 I0 J#3\nG1 Y[#2 - #3]\nG3 X[#1 - #3] Y#2 I[-#3] J0\nG1 X#3\nG3 X0 Y[#2 - #3] I0 J[-#3]\nG1 Y#3\nG3 X#3 Y0 I#3 J0",
  ),
  program(
    "feeds and speeds worked out",
    "#<flutes>=2 #<chip>=0.05 #<rpm>=FIX[150 * 1000 / [3.14159 * 8]]\nS#<rpm> M3\nG1 X10 F[#<flutes> * #<chip> * #<rpm>]\nG4 P[60 / 24]\nX20 F[#<rpm> / 10]\nM5",
  ),
  program(
    "sizes of a family by a condition",
    "#<size>=2\no1 if [#<size> EQ 1]\n  #<w>=20\no1 elseif [#<size> EQ 2]\n  #<w>=35\no1 else\n  #<w>=50\no1 endif\nG1 X#<w>\nY[#<w> / 2]\nX0\nY0",
  ),
  program(
    "inches by a factor, numbered blocks, lower case",
    "n10 #1=[1 / 25.4]\nn20 g20\nn30 g1 x[10 * #1] y[25.4*#1] f[300 * #1]\nn40 o5 repeat [2]\nn50 g91 x[2.54 * #1]\nn60 o5 endrepeat\nn70 g90 g21",
  ),
];

/** Blocks that have their own end. */
function ended(name: string, text: string, expected: Expected = {}): ForeignProgram {
  return whole(name, `%\n${head}${text}\n%\n`, expected);
}

/** Small ones: what each word of the language means, and what we refuse though it is run. */
export const smallParametric: readonly ForeignProgram[] = [
  blocks("parameter", "#1=5\nG0 X#1"),
  blocks("settings count from the next block on", "#1=5\n#1=6 #2=#1 G0 X#1\nX#2\nX#1"),
  blocks("the last of two settings counts", "#1=5 #1=7\nG0 X#1"),
  blocks("names: case and blanks do not count", "#<Hole Depth>=5\nG0 X#<holedepth> Y#< HOLE depth >"),
  blocks("blanks anywhere", "# 1 = 1 2 . 5\nG 0 X # 1 Y S I N [ 3 0 ]\n#10=3\nG0 X#1 0"),
  blocks("signs", "#1=3\nG0 X-#1 Y+#1 Z-[#1]\nX[3 - -#1] Y[3*-2] Z-SIN[30]\nX[-2**2] Y[2**-1] Z[-[2]**2]"),
  blocks("functions before their bracket", "G0 Xsqrt[4] Yatan[1]/[2] ZABS[-3]"),
  blocks(
    "operations by rank",
    "G0 X[2 + 3 * 4 ** 2 / 2 - 1] Y[2**3**2] Z[10 - 4 - 3]\nX[7 MOD 3 * 2] Y[24 / 4 / 2] Z[1 + 1 AND 0]",
  ),
  blocks(
    "comparisons",
    "G0 X[1 LT 2 + 3] Y[1 EQ 1.00009] Z[1 EQ 1.0002]\nX[2 GT 1 AND 3 LT 2] Y[5 XOR 0] Z[0 OR 2]\nX[1 GE 1] Y[1 LE 0.99999] Z[1 NE 1.00009]",
  ),
  blocks("remainders", "G0 X[-7 MOD 3] Y[7 MOD -3] Z[5.5 MOD 2]"),
  blocks(
    "rounding",
    "G0 XFIX[-2.8] YFUP[-2.8] ZROUND[-2.5]\nXFIX[2.8] YFUP[2.8] ZROUND[2.5]\nXROUND[2.4] YROUND[-2.4] ZFIX[3]",
  ),
  blocks("codes that are worked out", "#1=1 #2=90\nF100 G#1 X1\nG[#2 + 1] X1\nG#2 X1"),
  blocks("a code that is none", "G[1.234] X1", { refused: "read/number" }),
  blocks("words that are whole numbers", "#1=2\nT#1 M6\nG43 H#1\nG0 X1 Z1"),
  blocks("EXISTS", "#<x>=3\nG0 X EXISTS[#<x>] Y EXISTS[#<y>] Z EXISTS[#3]"),
  blocks("a thousand to the power", "G0 X[10 ** 3] Y[0 ** 0] Z[[-2] ** 3]"),
  blocks("logical and sum", "G0 X[0 AND 1 + 1]", {
    refused: "read/expression",
    because: "3.3.2.3 has AND go with sums from left to right, the interpreter after them",
  }),
  blocks("parameter that was never set", "G0 X#100", {
    refused: "read/run-time-value",
    because: "what it holds from before is in the controller's file",
  }),
  blocks("argument outside of a subprogram", "G0 X#1", {
    refused: "read/run-time-value",
    because: "what it holds from before is in the controller's memory",
  }),
  blocks("place of the machine", "G0 X[#5420 + 1]", {
    refused: "read/run-time-value",
    because: "where the machine is, is known while it runs",
  }),
  blocks("value of the last call, without one", "G0 X#<_value>", {
    refused: "read/run-time-value",
    because: "what it holds from before is in the controller's memory",
  }),
  blocks("work offset set by its parameter", "#5221=1\nG0 X1", {
    refused: "read/machine-parameter",
    because: "it changes the set-up of the machine",
  }),
  blocks("place set", "#5420=1", { refused: "read/machine-parameter" }),
  blocks("name of the controller set", "#<_x>=1", { refused: "read/machine-parameter" }),
  blocks("name not set", "G0 X#<a>", { refused: "read/parameter" }),
  ended("names are a subprogram's own", "#<x>=3\no1 call\nG0 X#<x>\nM2\no1 sub\nG0 X#<x>\no1 endsub", {
    refused: "read/parameter",
  }),
  blocks(
    "global names",
    "#<_shared>=3\no1 sub\nG0 X#<_shared>\n#<_shared>=4\no1 endsub\no1 call\nG0 X#<_shared>",
  ),
  blocks("division by zero", "G0 X[1/0]", { refused: "read/arithmetic" }),
  blocks("root of a negative number", "G0 XSQRT[-1]", { refused: "read/arithmetic" }),
  blocks("ATAN of nothing", "G0 XATAN[0]/[0] YATAN[1]/[-1] ZATAN[-1]/[-1]"),
  blocks("bracket not closed", "G0 X[1+2", { refused: "read/expression" }),
  blocks("comment in an expression", "G0 X[1 (c) + 2]", { refused: "read/expression" }),
  blocks("loop", "o1 repeat [2]\nG91 G0 X1\no1 endrepeat\nG90"),
  blocks(
    "repeats are rounded",
    "#1=0\no1 repeat [2.6]\n#1=[#1+1]\nG0 X#1\no1 endrepeat\no2 repeat [-1]\nG0 X100\no2 endrepeat",
  ),
  blocks("condition", "o1 if [1 GT 0]\nG0 X1\no1 endif"),
  blocks("condition without brackets", "o1 if 1\nG0 X1\no1 endif", { refused: "read/expression" }),
  blocks("what is not run may be anything", "o1 if [0]\nG0 X[1/0] nonsense\no1 endif\nG0 X1"),
  blocks("call", "o100 sub\nG0 X1\no100 endsub\no100 call"),
  blocks("values that are not given are 0", "o100 sub\nG0 X#1 Y#2 Z#30\no100 endsub\no100 call [5]"),
  blocks(
    "labels with zeros, names, and worked out",
    "o001 sub\nG0 X#1\no1 endsub\no01 call [3]\n#1=1\no#1 call [4]\no[2-1] call [5]\no<a b> sub\nG0 Y#1\no<AB> endsub\no<ab> call [7]",
  ),
  blocks("words behind a call", "o100 sub\nG0 X1\no100 endsub\no100 call [1] G0 Y3", {
    refused: "read/expression",
  }),
  blocks("O word behind a word", "G0 X1 o1 if [1]", { refused: "read/branch read/subprogram" }),
  blocks(
    "labels of a subprogram are its own",
    "o100 sub\no1 if [1]\nG0 X1\no1 endif\no100 endsub\no1 if [1]\nG0 X3\no1 endif\no100 call",
  ),
  blocks("label twice", "o1 if [1]\nG0 X1\no1 endif\no1 if [1]\nG0 X2\no1 endif", {
    refused: "read/structure",
  }),
  blocks("BREAK out of a REPEAT", "o1 repeat [4]\nG0 X1\no1 break\no1 endrepeat", {
    refused: "read/structure",
  }),
  blocks("subprogram in a subprogram", "o1 sub\no2 sub\nG0 X1\no2 endsub\no2 call\no1 endsub\no1 call", {
    refused: "read/structure",
  }),
  blocks("running into a subprogram that was called", "o100 call [1]\no100 sub\nG0 X#1\no100 endsub", {
    refused: "read/structure",
  }),
  blocks("call of what is not there", "o100 call", { refused: "read/unknown-subprogram" }),
  blocks(
    "DO behind a BREAK out of a WHILE",
    "#1=0\no1 while [1]\n#1=[#1+1]\no3 if [#1 EQ 2]\no1 break\no3 endif\no1 endwhile\n#1=1\no2 do\nG0 X#1\n#1=[#1+1]\no2 while [#1 LT 4]",
    {
      refused: "read/structure",
      because: "the interpreter leaves the DO after one round, whatever its condition",
    },
  ),
  blocks(
    "CONTINUE in a DO",
    "#1=0\no1 do\n#1=[#1+1]\no2 if [#1 EQ 2]\no1 continue\no2 endif\nG0 X#1\no1 while [#1 LT 4]",
  ),
  blocks("end of the program in a subprogram", "o1 sub\nG0 X1\nM2\no1 endsub\no1 call\nG0 X9"),
  blocks("end of the program in a branch", "o1 if [1]\nG0 X1\nM2\no1 endif\nG0 X9"),
  blocks("calls too deep", "#31=0\no1 sub\n#31=[#31+1]\nG0 X#31\no1 call\no1 endsub\no1 call", {
    refused: "read/nesting",
  }),
  blocks(
    "calls as deep as may be",
    "o1 sub\nG0 X#1\no2 if [#1 GT 1]\no1 call [#1-1]\no2 endif\no1 endsub\no1 call [9]",
  ),
  ended("M98 among words", "G0 X1 M98 P100\nM2\nO100\nG0 Y1\nM99", { refused: "read/subprogram" }),
  blocks("M98 calls what SUB begins", "o100 sub\nG0 X1\no100 endsub\nM98 P100 L3", {
    refused: "read/structure",
  }),
  ended("M98 not at all", "G0 X1\nM98 P100 L0\nM2\nO100\nG0 Y1\nM99"),
  ended(
    "M98 shares parameters, not names",
    "#1=5\n#40=1\nM98 P100 L2\nG0 X#1 Z#40\nM2\nO100\nG0 Y#1\n#1=[#1+2]\n#40=[#40+1]\n#<b>=3\nG0 Z#<b>\nM99",
  ),
  ended("M98 in M98, with zeros", "M98 P0100\nM2\nO100\nG0 Y1\nM98 P200 L2\nM99\nO200\nG91 G0 X1\nG90\nM99"),
  blocks("running into a numbered subprogram", "G0 X1\nO100\nG0 Y1\nM99", {
    refused: "read/structure",
    because: "M99 without a call ends or repeats the program: controllers differ",
  }),
  blocks("circle that the grid alone closes", "G0 X10 Y0\nF100\nG3 X[10 + 0.000001] Y0 I-5", {
    refused: "read/arc",
    because: "next to nothing, or a full circle where the end is rounded",
  }),
];
