import { describe, expect, it } from "vitest";
import { memorySource } from "#base";
import type { Batch, Finding } from "#base";
import { read } from "#read";
import { ready } from "../support/ready.ts";
import { badPrograms } from "./parametric-bad.ts";

/*
 * Values of parameters, operations and functions, against NISTIR 6556 3.3.2 and values worked out by hand; and bad programs, each
 * with its rule and its line. What an interpreter does with whole programs stands in test/interpreter/parametric.
 */
const shipped = await ready("rs274ngc");
const fine = await ready("leaf.dialect.yaml", {
  "leaf.dialect.yaml":
    "dialect: leaf\ntitle: A fine grid\nextends: rs274ngc\nnumbers: { length: { mm: 7, inch: 5 } }\n",
});

interface Reading {
  readonly findings: Finding[];
  /** X of each motion, mm. */
  readonly x: number[];
  readonly sources: number[];
}

function readText(text: string, withSource = true, made = shipped): Reading {
  const bytes = new TextEncoder().encode(text);
  const findings: Finding[] = [];
  const { format, machine } = made.dialect;
  const options = { units: "mm", ...(withSource ? { source: memorySource(bytes) } : {}) } as const;
  const x: number[] = [];
  const sources: number[] = [];
  const batches: Iterable<Batch> = read([bytes], format, machine, options, (finding) =>
    findings.push(finding),
  );
  for (const batch of batches)
    for (let row = 0; row < batch.count; row++)
      if (batch.aside[row] < 0) {
        x.push(batch.x[row] / 1e7);
        sources.push(batch.source[row]);
      }
  return { findings, x, sources };
}

const head = "%\nG17 G21 G40 G49 G54 G61 G80 G90 G94 G98\n";

/** The value of an expression, as X has it. */
function valueOf(expression: string): number | undefined {
  const { x, findings } = readText(`${head}G0 X${expression}\nM2\n%\n`, true, fine);
  const errors = findings.filter(({ severity }) => severity === "error");
  return errors.length > 0 ? undefined : x[0];
}

/** Expression and value; where nothing else is said, worked out by hand. */
const values: readonly (readonly [string, number])[] = [
  // Operations of one rank go from left to right, ** before * / MOD before + - (NISTIR 6556 3.3.2.3).
  ["[2 + 3 * 4]", 14],
  ["[[2 + 3] * 4]", 20],
  ["[2 * 3 ** 2]", 18],
  ["[2 ** 3 ** 2]", 64],
  ["[24 / 4 / 2]", 3],
  ["[10 - 4 - 3]", 3],
  ["[7 MOD 4 * 2]", 6],
  ["[2 * 7 MOD 4]", 2],
  ["[1 + 7 MOD 4]", 4],
  ["[2.0 / 3 * 1.5 - 5.5 / 11.0]", 0.5], // the example of NISTIR 6556 3.3.2.3, from memory
  ["[1 + acos[0] - [3 ** [4.0 / 2]]]", 82], // the example of NISTIR 6556 3.3.2.2, from memory
  ["[-2 ** 2]", 4],
  ["[3 - -2]", 5],
  ["[5 MOD 3]", 2],
  ["[-7 MOD 3]", 2],
  ["[7 MOD -3]", 1],
  ["[5.5 MOD 2]", 1.5],
  ["[9 ** 0.5]", 3],
  ["[[-2] ** 3]", -8],
  ["[2 ** -1]", 0.5],
  ["[1 AND 0]", 0],
  ["[2 AND -3]", 1],
  ["[0 OR 0]", 0],
  ["[0 OR 0.5]", 1],
  ["[1 XOR 1]", 0],
  ["[0 XOR 7]", 1],
  ["[1 + 1 AND 0]", 0],
  ["[0 AND [1 + 1]]", 0],
  ["[1 EQ 1.00009]", 1], // nearer than 0.0001 is equal, tried on an interpreter
  ["[1 EQ 1.00011]", 0],
  ["[1 NE 1.00009]", 0],
  ["[1 NE 2]", 1],
  ["[2 GT 1]", 1],
  ["[1 GT 1]", 0],
  ["[1 GE 1]", 1],
  ["[1 GE 1.00001]", 0],
  ["[1 LT 2]", 1],
  ["[2 LT 2]", 0],
  ["[2 LE 2]", 1],
  ["[3 LE 2]", 0],
  ["[1 LT 2 + 3]", 1],
  ["[1 LT 2 AND 3 LT 2]", 0],
  // Functions: values of tables.
  ["ABS[-1.5]", 1.5],
  ["ACOS[0.5]", 60],
  ["ASIN[0.5]", 30],
  ["ATAN[1]/[1]", 45],
  ["ATAN[1]/[-1]", 135],
  ["ATAN[-1]/[-1]", -135],
  ["ATAN[0]/[-1]", 180],
  ["COS[60]", 0.5],
  ["EXP[1]", 2.7182818],
  ["FIX[2.8]", 2], // 3.3.2.3: towards less: fix[2.8]=2, fix[-2.8]=-3
  ["FIX[-2.8]", -3],
  ["FUP[2.8]", 3],
  ["FUP[-2.8]", -2],
  ["LN[10]", 2.3025851],
  ["ROUND[2.5]", 3],
  ["ROUND[-2.5]", -3],
  ["ROUND[2.4]", 2],
  ["SIN[30]", 0.5],
  ["SIN[270]", -1],
  ["SQRT[2]", 1.4142136],
  ["TAN[45]", 1],
  ["EXISTS[#<none>]", 0],
  ["-SIN[30]", -0.5],
  ["+[2]", 2],
];

describe("values", () => {
  it.each(values)("X%s is %d", (expression, value) => {
    expect(valueOf(expression)).toBe(value);
  });

  it("brackets sixteen deep are read, and seventeen are not", () => {
    const deep = (most: number): string => "[".repeat(most) + "1" + "]".repeat(most);
    expect(valueOf(deep(16))).toBe(1);
    expect(valueOf(deep(17))).toBeUndefined();
  });

  it("three times a third is one, and no place is rounded twice", () => {
    const { x, findings } = readText(`${head}G0 X0\nG91\no1 repeat [30]\nX[10 / 3]\no1 endrepeat\nM2\n%\n`);
    expect(x.slice(1, 4)).toEqual([3.333, 6.667, 10]);
    expect(x.at(-1)).toBe(100);
    expect(findings.map(({ rule }) => rule)).toEqual(["read/rounded"]);
  });

  it("half away from zero, once told", () => {
    const { x, findings } = readText(`${head}G0 X[0.0005]\nX[-0.0005]\nX[1.0004999]\nX[3]\nM2\n%\n`);
    expect(x).toEqual([0.001, -0.001, 1, 3]);
    expect(findings.map(({ rule, severity }) => `${rule} ${severity}`)).toEqual(["read/rounded note"]);
  });
});

describe("the order of blocks", () => {
  it("rows name the line that they come from, each time that it is run", () => {
    const text = `${head}o1 repeat [3]\nG0 X1\nX2\no1 endrepeat\nM2\n%\n`;
    const [one, two] = [text.indexOf("G0 X1"), text.indexOf("X2")];
    expect(readText(text).sources).toEqual([one, two, one, two, one, two]);
  });

  it("a loop over more text than is kept at a time is run as often as it says", () => {
    const blocks = Array.from({ length: 40_000 }, (_, at) => `X${String(at)}.5\n`).join("");
    const { x, findings } = readText(`${head}G0\no1 repeat [2]\n${blocks}o1 endrepeat\nM2\n%\n`);
    expect(findings.filter(({ rule }) => rule.startsWith("read/"))).toEqual([]);
    expect(x.length).toBe(80_000);
    expect(x[40_000]).toBe(0.5);
  });

  it("a finding in a loop is told once", () => {
    const { findings } = readText(`${head}o1 repeat [500]\nG0 X1 E5\no1 endrepeat\nM2\n%\n`);
    expect(findings.map(({ rule }) => rule)).toEqual(["read/unknown-word"]);
  });

  it("a text that cannot be gone back in is refused where it branches", () => {
    const { findings } = readText(`${head}o1 repeat [3]\nG0 X1\no1 endrepeat\nM2\n%\n`, false);
    expect(findings.map(({ rule }) => rule)).toEqual(["read/branch"]);
  });
});

describe("bad parametric programs", () => {
  it.each(badPrograms)("$name: $rule", ({ text, rule, on }) => {
    const program = `${head}${text}\nM2\n%\n`;
    const errors = readText(program).findings.filter(({ severity }) => severity === "error");
    const [first] = errors;
    expect(errors.map((finding) => finding.rule)).toContain(rule);
    expect(first.rule, first.message).toBe(rule);
    const line = (offset: number): number => program.slice(0, offset).split("\n").length;
    expect(line(first.place?.offset ?? -1)).toBe(line(program.indexOf(on)));
    expect(first.fix).toBeTruthy();
  });

  it("are forty at least, over all rules", () => {
    expect(badPrograms.length).toBeGreaterThanOrEqual(40);
    expect(new Set(badPrograms.map(({ rule }) => rule)).size).toBeGreaterThanOrEqual(11);
  });
});
