import { describe, expect, it } from "vitest";
import type { Severity } from "#base";
import { clChoices, parseClOptions } from "#job";
import { jobText, clReading, lineOf, readSource } from "./reading.ts";

/*
 * What the standards leave open: each choice by default (a note where it mattered, a refusal where a wrong guess could
 * crash), and what each value makes of the same source.
 */

const begin = "UNITS/MM\nCUTTER/6\nLOADTL/1\nSPINDL/9000,CLW\nRAPID\nGOTO/0,0,10\nFEDRAT/300,MMPM\n";
const framed = (statements: string): string => `${begin}${statements}\nRAPID\nGOTO/0,0,10\nFINI\n`;

/** The moves between the first rapid and the last of a framed source. */
function movesOf(text: string, cl: string): unknown[] {
  const job = JSON.parse(jobText(text, clReading(cl))) as { operations: { moves: unknown[] }[] };
  return job.operations.flatMap(({ moves }) => moves).slice(1, -1);
}

interface ChoiceCase {
  readonly key: string;
  readonly source: string;
  /** What is said by default; undefined: nothing. */
  readonly said: { readonly severity: Severity; readonly rule: string; readonly line: number } | undefined;
  /** Moves by value; undefined: refused. */
  readonly moves: Readonly<Record<string, readonly unknown[] | undefined>>;
}

const arc = (turn: string, x: number) => ({ arc: { x, y: 0, z: 10, cx: 5, cy: 0 }, turn, feed: 300 });
const hole = (depth: number) => [
  { holes: { kind: "drill", at: [[1, 1]], top: 5, depth, retract: 6 }, feed: 300 },
];
const cycle = (depth: string): string => framed(`CYCLE/DRILL,FEDTO,${depth},CLEAR,1\nGOTO/1,1,5\nCYCLE/OFF`);
const line = (x: number, y: number, z: number, feed?: number) => ({
  line: { x, y, z },
  ...(feed === undefined ? {} : { feed }),
});

const cases: readonly ChoiceCase[] = [
  {
    key: "rapid",
    source: framed("RAPID\nGOTO/1,1,9\nGOTO/2,2,8"),
    said: { severity: "note", rule: "job/cl-rapid", line: 10 },
    moves: {
      "one-shot": [{ rapid: { x: 1, y: 1, z: 9 } }, line(2, 2, 8, 300)],
      modal: [{ rapid: { x: 1, y: 1, z: 9 } }, { rapid: { x: 2, y: 2, z: 8 } }],
    },
  },
  {
    key: "circle",
    source: framed("CIRCLE/5,0,10,0,0,1,5\nGOTO/10,0,10"),
    said: { severity: "note", rule: "job/cl-circle", line: 8 },
    moves: { "right-handed": [arc("ccw", 10)], "left-handed": [arc("cw", 10)] },
  },
  {
    key: "full-circle",
    source: framed("CIRCLE/5,0,10,0,0,1,5\nGOTO/0,0,10"),
    said: { severity: "error", rule: "job/cl-circle", line: 9 },
    moves: { refuse: undefined, turn: [arc("ccw", 0)], none: [line(0, 0, 10, 300)] },
  },
  {
    key: "depth",
    source: cycle("-12"),
    said: { severity: "error", rule: "job/cl-cycle", line: 8 },
    moves: { distance: undefined, signed: hole(-7), z: hole(-12) },
  },
  {
    key: "cycle",
    source: framed("CYCLE/DRILL,12,150,MMPM,1\nGOTO/1,1,5\nCYCLE/OFF"),
    said: { severity: "error", rule: "job/cl-cycle", line: 8 },
    moves: {
      keywords: undefined,
      positional: [{ holes: { kind: "drill", at: [[1, 1]], top: 5, depth: -7, retract: 6 }, feed: 150 }],
    },
  },
  {
    key: "point",
    source: framed("GOTO/1,1,1").replace("CUTTER/6", "CUTTER/6,.5"),
    said: { severity: "note", rule: "job/cl-tip", line: 6 },
    moves: { tip: [line(1, 1, 1, 300)], centre: [line(1, 1, 0.5, 300)] },
  },
  {
    key: "feed",
    source: framed("FEDRAT/.1\nGOTO/1,1,1").replace("300,MMPM", "300"),
    said: { severity: "note", rule: "job/cl-feed", line: 7 },
    moves: { "per-minute": [line(1, 1, 1, 0.1)], "per-revolution": [line(1, 1, 1, 0.1)] },
  },
  {
    key: "home",
    source: framed("GOTO/1,1,1\nGOHOME").replace("LOADTL/1\n", "LOADTL/1\nFROM/50,60,40\n"),
    said: { severity: "note", rule: "job/cl-home", line: 10 },
    moves: {
      clearance: [line(1, 1, 1, 300), { rapid: { z: 10 } }],
      from: [line(1, 1, 1, 300), { rapid: { z: 10 } }, { rapid: { x: 50, y: 60 } }],
    },
  },
  {
    key: "origin",
    source: framed("ORIGIN/100,0,0\nGOTO/1,1,1\nORIGIN/0,0,0"),
    said: { severity: "error", rule: "job/cl-shift", line: 8 },
    moves: {
      refuse: undefined,
      ignore: [line(1, 1, 1, 300)],
      add: [line(101, 1, 1, 300)],
      subtract: [line(-99, 1, 1, 300)],
    },
  },
  {
    key: "trans",
    source: framed("TRANS/0,0,1\nGOTO/1,1,1\nTRANS/0,0,0"),
    said: { severity: "error", rule: "job/cl-shift", line: 8 },
    moves: { refuse: undefined, add: [line(1, 1, 2, 300)], subtract: [line(1, 1, 0, 300)] },
  },
  {
    key: "literal",
    source: framed("PPRINT MIND THE $\nREMARK HOSE\nGOTO/1,1,1"),
    said: { severity: "note", rule: "job/cl-literal", line: 8 },
    moves: {
      text: [{ note: "MIND THE $" }, line(1, 1, 1, 300)],
      continued: [{ note: "MIND THE REMARK HOSE" }, line(1, 1, 1, 300)],
    },
  },
  {
    key: "columns",
    source: framed(`GOTO/1,1,1${"".padEnd(62)}00000012`),
    said: { severity: "error", rule: "job/cl-columns", line: 8 },
    moves: { "by-itself": undefined, "72": [line(1, 1, 1, 300)], free: undefined },
  },
  {
    key: "fourth",
    source: framed("GOTO/1,1,1,90"),
    said: { severity: "note", rule: "job/cl-fourth", line: 8 },
    moves: { feed: [line(1, 1, 1, 90)], refuse: undefined },
  },
  {
    key: "unknown",
    source: framed("INSERT G54\nSTRANGE/1\nAUXFUN/8\nCOOLNT/FLOOD,TAPKUL\nGOTO/1,1,1"),
    said: { severity: "error", rule: "job/cl-word", line: 8 },
    moves: { refuse: undefined, warn: [{ coolant: "flood" }, line(1, 1, 1, 300)] },
  },
  {
    key: "units",
    source: framed("GOTO/1,1,1").replace("UNITS/MM\n", "$$\n"),
    said: { severity: "error", rule: "job/cl-units", line: 2 },
    moves: {
      refuse: undefined,
      mm: [line(1, 1, 1, 300)],
      // 300 mm/min, since the feed has a unit of its own: the fewest digits of an inch that say so.
      inch: [line(1, 1, 1, 11.811023622)],
    },
  },
];

describe.each(cases.map((one) => [one.key, one] as const))("--cl %s", (key, { source, said, moves }) => {
  it("is said by default where it matters", () => {
    const found = readSource(source).findings.map(({ severity, rule, place }) => ({
      severity,
      rule,
      line: lineOf(source, place?.offset ?? 0),
    }));
    if (said !== undefined) expect(found).toContainEqual(said);
    if (said?.severity !== "error") expect(found.filter(({ severity }) => severity === "error")).toEqual([]);
  });

  it.each(Object.entries(moves))("%s", (value, expected) => {
    if (expected === undefined) expect(() => movesOf(source, `${key}=${value}`)).toThrow(/^job\//);
    else expect(movesOf(source, `${key}=${value}`)).toEqual(expected);
  });

  it("has a case for each value, the default first", () => {
    const { values } = clChoices[key as keyof typeof clChoices];
    expect(Object.keys(moves).sort()).toEqual([...values].sort());
  });
});

it("every choice has its cases", () => {
  expect(cases.map(({ key }) => key).sort()).toEqual(Object.keys(clChoices).sort());
});

it("what is left out under unknown=warn is a warning with its line", () => {
  const source = framed("INSERT G54\nSTRANGE/1\nAUXFUN/8\nGOTO/1,1,1");
  const warnings = readSource(source, "unknown=warn").findings.filter(
    ({ severity }) => severity === "warning",
  );
  expect(warnings.map(({ rule, place }) => [rule, lineOf(source, place?.offset ?? 0)])).toEqual([
    ["job/cl-word", 8],
    ["job/cl-word", 9],
    ["job/cl-word", 10],
  ]);
});

it("a short arc is no full circle, and a long one that nearly closes is asked about", () => {
  // Counter-clockwise about 5, 0 from 0, 0 the tool goes down in Y.
  const to = (y: string): string => framed(`CIRCLE/5,0,10,0,0,1,5\nGOTO/0,${y},10`);
  expect(movesOf(to("-.001"), "")).toHaveLength(1);
  expect(() => movesOf(to(".001"), "")).toThrow(/^job\/cl-circle/);
  expect(movesOf(to(".001"), "full-circle=turn")).toMatchObject([{ turn: "ccw" }]);
  expect(movesOf(to(".001"), "full-circle=none")).toMatchObject([{ line: { y: 0.001 } }]);
});

it("an arc that nearly closes is asked about in ZX as well", () => {
  // Counter-clockwise about +Y from 0 in X, 5 below the centre in Z, the tool goes towards -X.
  const to = (x: string): string => framed(`CIRCLE/0,0,15,0,1,0,5\nGOTO/${x},0,10`);
  expect(movesOf(to("-.001"), "")).toMatchObject([{ arc: { x: -0.001 }, turn: "ccw", plane: "zx" }]);
  expect(() => movesOf(to(".001"), "")).toThrow(/^job\/cl-circle/);
});

it("the clearance is the highest Z, that of CLEARP, or the one stated", () => {
  const clearance = (text: string, cl: string): unknown =>
    (JSON.parse(jobText(text, clReading(cl))) as { clearance: unknown }).clearance;
  expect(clearance(framed(""), "")).toBe(10);
  expect(clearance(framed("CLEARP/25"), "")).toBe(25);
  expect(clearance(framed("CLEARP/25"), "clearance=30")).toBe(30);
  expect(readSource(framed("")).findings.map(({ rule }) => rule)).toContain("job/cl-clearance");
  expect(readSource(framed(""), "clearance=30").findings.map(({ rule }) => rule)).not.toContain(
    "job/cl-clearance",
  );
});

it("mistakes on the command line are told with what was probably meant", () => {
  expect(parseClOptions(["rapid=modal", "units=mm,fourth=refuse"])).toMatchObject({
    rapid: "modal",
    units: "mm",
    fourth: "refuse",
    circle: "right-handed",
  });
  expect(parseClOptions(["rapd=modal"])).toBe("--cl has no key `rapd`; did you mean `rapid`?");
  expect(parseClOptions(["rapid=never"])).toBe("--cl rapid is one-shot or modal, and not never.");
  expect(parseClOptions(["rapid"])).toMatch(/^--cl takes key=value/);
  expect(parseClOptions(["rapid=modal,rapid=one-shot"])).toBe("--cl states `rapid` twice.");
  expect(parseClOptions(["__proto__=1"])).toMatch(/^--cl has no key `__proto__`/);
  expect(parseClOptions(["clearance=high"])).toBe("--cl clearance is a number, and not high.");
});
