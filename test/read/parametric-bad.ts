/** A program that is refused, behind a head and before its end. */
interface BadProgram {
  readonly name: string;
  readonly text: string;
  /** Rule of the first error. */
  readonly rule: string;
  /** Text of the line on which it stands. */
  readonly on: string;
}

function bad(rule: string, name: string, text: string, on = text.split("\n")[0]): BadProgram {
  return { name, text, rule: `read/${rule}`, on };
}

const often = "X2 L9999";
const cycle = "G0 X0 Y0 Z20\nG99 G81 X1 Z-5 R2 F100";
const manyHoles = `${cycle}\no1 repeat [400000]\n${often}\no1 endrepeat`;
const holesCalled = `${cycle}\nM98 P100 L400000\nM2\nO100\n${often}\nM99`;
const holesInOneRound = `${cycle}\no1 repeat [1]\n${`${often}\n`.repeat(400)}X3 L9999\nX4\no1 endrepeat`;
const endless = "#1=1\no1 while [#1]\nG0 X1\no1 endwhile";

/** Bad input, by rule. */
export const badPrograms: readonly BadProgram[] = [
  bad("run-time-value", "a result of probing", "G0 X#5061"),
  bad("run-time-value", "the place of the machine", "G0 X1\nG0 X[#5420 + 1]", "G0 X[#5420"),
  bad("run-time-value", "a value of the tool table", "G0 Z[#5403]"),
  bad("run-time-value", "a work offset", "G0 X#5221"),
  bad("run-time-value", "the number of the work offset", "#1=#5220"),
  bad("run-time-value", "a parameter that is not set", "#2=1\nG0 X#100", "G0 X#100"),
  bad("run-time-value", "a parameter set in the same block", "#100=1 G0 X#100"),
  bad("run-time-value", "a name of the controller", "G0 X#<_feed>"),
  bad("run-time-value", "a global name that is not set", "G0 X#<_gap>"),
  bad("run-time-value", "whether a global name is set", "G0 X[EXISTS[#<_gap>]]"),
  bad("run-time-value", "a condition on a probed value", "o1 if [#5070 EQ 1]\nG0 X1\no1 endif"),
  bad(
    "parameter",
    "a name of another subprogram",
    "o1 sub\nG0 X#<x>\no1 endsub\n#<x>=1\no1 call",
    "G0 X#<x>",
  ),
  bad("parameter", "a number that is none", "#1.5=2"),
  bad("parameter", "parameter 0", "#0=2"),
  bad("parameter", "a number beyond all", "G0 X#9999"),
  bad("parameter", "a name that is empty", "#<>=2"),
  bad("parameter", "a name that does not end", "#<depth=2"),
  bad("machine-parameter", "the place set", "#5420=1"),
  bad("machine-parameter", "a work offset set", "#5221=1"),
  bad("machine-parameter", "a name of the controller set", "#<_rpm>=1"),
  bad("expression", "a bracket that is not closed", "G0 X[1 + 2"),
  bad("expression", "a bracket too many in the condition", "o1 if [1]]\nG0 X1\no1 endif"),
  bad("expression", "no value", "G0 X[]"),
  bad("expression", "an operation without its second value", "G0 X[1 +]"),
  bad("expression", "an operation that is none", "G0 X[1 ? 2]"),
  bad("expression", "letters that are no operation", "G0 X[1 PLUS 2]"),
  bad("expression", "two points in a number", "G0 X[1.2.3]"),
  bad("expression", "a setting without a value", "#1="),
  bad("expression", "a parameter on its own", "#1"),
  bad("expression", "ATAN with one value", "G0 XATAN[1]"),
  bad("expression", "a function without brackets", "G0 X[SIN 30]"),
  bad("expression", "AND and a sum behind it", "G0 X[1 AND 0 + 1]"),
  bad("expression", "a comment inside", "G0 X[1 (one) + 2]"),
  bad("expression", "IF without brackets", "o1 if 1\nG0 X1\no1 endif"),
  bad("expression", "words behind a call", "o1 sub\nG0 X1\no1 endsub\no1 call G0 Y1", "o1 call"),
  bad("unknown-function", "a function that is none", "G0 X[SEC[1]]"),
  bad("unknown-function", "one behind an address", "G0 XLOG[1]"),
  bad("arithmetic", "a division by zero", "#1=0\nG0 X[1 / #1]", "G0 X[1"),
  bad("arithmetic", "MOD zero", "G0 X[5 MOD 0]"),
  bad("arithmetic", "the root of a negative number", "G0 XSQRT[-1]"),
  bad("arithmetic", "LN of zero", "G0 XLN[0]"),
  bad("arithmetic", "ASIN of two", "G0 XASIN[2]"),
  bad("arithmetic", "ACOS of two", "G0 XACOS[-2]"),
  bad("arithmetic", "a power that is no real number", "G0 X[[-8] ** 0.5]"),
  bad("arithmetic", "zero to a negative power", "G0 X[0 ** -1]"),
  bad("arithmetic", "too large a number", "G0 XEXP[1000]"),
  bad("arithmetic", "a repeat without a number", "o1 repeat [1 / 0]\nG0 X1\no1 endrepeat"),
  bad("number", "a place that is too far", "G0 X[10 ** 8]"),
  bad("number", "a code that is none", "G[1.234] X1"),
  bad("number", "a tool that is no whole number", "T[1.5] M6"),
  bad("repeated-word", "a word twice", "G0 X[1] X[2]"),
  bad("nesting", "brackets too deep", `G0 X${"[".repeat(17)}1${"]".repeat(17)}`),
  bad("nesting", "signs without end", `G0 X[${"-".repeat(100)}1]`),
  bad("nesting", "marks without end", `G0 X${"#".repeat(100)}1`),
  bad("nesting", "a subprogram that calls itself", "o1 sub\nG0 X1\no1 call\no1 endsub\no1 call", "o1 call"),
  bad("structure", "no ENDSUB", "o1 sub\nG0 X1"),
  bad("structure", "no ENDIF", "o1 if [1]\nG0 X1"),
  bad("structure", "no ENDWHILE", "o1 while [0]\nG0 X1"),
  bad("structure", "no WHILE behind DO", "o1 do\nG0 X1"),
  bad("structure", "no M99", "M98 P5\nM2\nO5\nG0 X1", "O5"),
  bad("structure", "ELSE without IF", "o1 else"),
  bad("structure", "ENDWHILE of another label", "o1 while [0]\no2 endwhile\no1 endwhile", "o2 endwhile"),
  bad("structure", "structures that cross", "o1 if [1]\no2 if [1]\no1 endif\no2 endif", "o1 endif"),
  bad("structure", "a label twice", "o1 if [1]\no1 endif\no1 if [2]\no1 endif", "o1 if [2]"),
  bad("structure", "BREAK in no loop", "o1 if [1]\no1 break\no1 endif", "o1 break"),
  bad("structure", "RETURN in no subprogram", "o1 return"),
  bad("structure", "a subprogram in a subprogram", "o1 sub\no2 sub\no2 endsub\no1 endsub", "o2 sub"),
  bad("structure", "two subprograms of one label", "o1 sub\no1 endsub\no1 sub (again)\no1 endsub", "(again)"),
  bad("structure", "a keyword that is none", "o1 unless [1]"),
  bad("structure", "an O word without a label", "o if [1]\nG0 X1\no endif"),
  bad("structure", "M98 without P", "M98 L2"),
  bad(
    "structure",
    "more values than a call takes",
    `o1 sub\no1 endsub\no1 call ${"[1]".repeat(31)}`,
    "o1 call",
  ),
  bad("unknown-subprogram", "a call of nothing", "o100 call [1]"),
  bad("unknown-subprogram", "a call of a name in no line", "o<hole> call"),
  bad("unknown-subprogram", "M98 of nothing", "M98 P1234"),
  bad("step-limit", "a loop without an end", endless, "o1 while"),
  bad("step-limit", "a loop whose block repeats holes", manyHoles, "X2"),
  bad("step-limit", "a subprogram run often whose block repeats holes", holesCalled, "X2"),
  bad("step-limit", "blocks without a branch inside of a loop", holesInOneRound, "X3"),
];
