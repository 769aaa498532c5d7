import { describe, expect, test } from "vitest";
import type { Step } from "#base";
import type { Format } from "#dialect";
import { code, explicit, plain } from "./formats.ts";
import { leastIncrement } from "./least-increment.ts";
import type { Row } from "./writing.ts";
import { line, linesOf, mm, rapid } from "./writing.ts";

/** Texts under the three formats, worked by hand from NISTIR 6556 3.5 and, for implied points, from ISO 6983-1 (teaching material). */
interface Case {
  readonly name: string;
  readonly parts: readonly (Row | Step)[];
  readonly plain?: readonly string[];
  readonly explicit?: readonly string[];
  readonly least?: readonly string[];
}

const at = { x: 10, y: 20, z: 5 };

const cases: Case[] = [
  {
    name: "rapid and line, modal words",
    parts: [
      rapid(at),
      rapid({ z: -1.5 }, { also: at }),
      line({ x: -0.25 }, 600, { also: at }),
      line({ y: 0 }, 600, { also: { ...at, x: -0.25 } }),
    ],
    plain: ["G0 X10 Y20 Z5", "Z-1.5", "G1 X-0.25 F600", "Y0"],
    explicit: [
      "N10 G00 X10.000 Y20.000 Z5.000",
      "N20 G00 Z-1.500",
      "N30 G01 X-0.250 F600.0",
      "N40 G01 Y0.000",
    ],
    least: [
      "N001G00X+10000Y+20000Z+5000*",
      "N002X+10000Y+20000Z-1500*",
      "N003G01X-250Y+20000Z+5000F0600*",
      "N004X-250Y+0Z+5000F0600*",
    ],
  },
  {
    name: "feed: modal, after a rapid, on each block",
    parts: [
      line({ x: 1 }, 300),
      rapid({ x: 2 }),
      line({ x: 3 }, 300),
      line({ x: 4 }, 300),
      line({ x: 5 }, 250.5),
    ],
    plain: ["G1 X1 F300", "G0 X2", "G1 X3", "X4", "X5 F250.5"],
    explicit: [
      "N10 G01 X1.000 F300.0",
      "N20 G00 X2.000",
      "N30 G01 X3.000 F300.0",
      "N40 G01 X4.000",
      "N50 G01 X5.000 F250.5",
    ],
    least: [
      "N001G01X+1000F0300*",
      "N002G00X+2000*",
      "N003G01X+3000F0300*",
      "N004X+4000F0300*",
      "N005X+5000F0251*",
    ],
  },
  {
    name: "machine rows name both codes (NISTIR 6556 3.5.12)",
    parts: [
      rapid({ z: 0 }, { machine: true }),
      rapid({ z: -1 }, { machine: true }),
      line({ z: -2 }, 600, { machine: true }),
      line({ x: 1 }, 600),
    ],
    plain: ["G53 G0 Z0", "G53 G0 Z-1", "G53 G1 Z-2 F600", "X1"],
    explicit: ["N10 G53 G00 Z0.000", "N20 G53 G00 Z-1.000", "N30 G53 G01 Z-2.000 F600.0", "N40 G01 X1.000"],
  },
  {
    name: "arc in xy by its centre from the start (NISTIR 6556 3.5.3)",
    parts: [
      rapid({ x: 0, y: 0, z: 0 }),
      { kind: "arcXy", at: { x: 10, y: 10 }, also: { z: 0 }, centre: [0, 10], turns: 1, feed: 800 },
      { kind: "arcXy", at: { x: 0 }, also: { y: 10, z: 0 }, centre: [5, 10], turns: -1, feed: 800 },
    ],
    plain: ["G0 X0 Y0 Z0", "G3 X10 Y10 I0 J10 F800", "G2 X0 I-5 J0"],
    explicit: [
      "N10 G00 X0.000 Y0.000 Z0.000",
      "N20 G03 X10.000 Y10.000 I0.000 J10.000 F800.0",
      "N30 G02 X0.000 Y10.000 I-5.000 J0.000",
    ],
  },
  {
    name: "arcs in zx and yz: centre words K I and J K (NISTIR 6556 Table 9)",
    parts: [
      rapid({ x: 0, y: 0, z: 0 }),
      { kind: "arcZx", at: { z: 2, x: 2 }, also: { y: 0 }, centre: [0, 2], turns: 1, feed: 500 },
      { kind: "arcYz", at: { y: 3, z: 5 }, also: { x: 2 }, centre: [3, 2], turns: -1, feed: 500 },
    ],
    plain: ["G0 X0 Y0 Z0", "G3 X2 Z2 I2 K0 F500", "G2 Y3 Z5 J3 K0"],
    explicit: [
      "N10 G00 X0.000 Y0.000 Z0.000",
      "N20 G03 X2.000 Z2.000 I2.000 K0.000 F500.0",
      "N30 G02 Y3.000 Z5.000 J3.000 K0.000",
    ],
  },
  {
    name: "helix and full circle: an end word is needed (NISTIR 6556 3.5.3.2)",
    parts: [
      rapid({ x: 1, y: 0, z: 0 }),
      { kind: "arcXy", at: { z: -1 }, also: { x: 1, y: 0 }, centre: [0, 0], turns: 1, feed: 500 },
    ],
    plain: ["G0 X1 Y0 Z0", "G3 X1 Y0 Z-1 I-1 J0 F500"],
    explicit: ["N10 G00 X1.000 Y0.000 Z0.000", "N20 G03 X1.000 Y0.000 Z-1.000 I-1.000 J0.000 F500.0"],
  },
  {
    name: "arc by its radius (NISTIR 6556 3.5.3.1)",
    parts: [
      rapid({ x: 0, y: 0 }),
      { kind: "radiusXy", at: { x: 10, y: 10 }, centre: [-10, 0], turns: 1, feed: 800 },
    ],
    least: ["N001G00X+0Y+0*", "N002G03X+10000Y+10000R-10000F0800*"],
  },
  {
    name: "rotary axes beside linear ones",
    parts: [rapid({ a: 90, b: -0.5, c: 720 }), line({ x: 1, a: 90.001 }, 5, { also: { b: -0.5, c: 720 } })],
    plain: ["G0 A90 B-0.5 C720", "G1 X1 A90.001 F5"],
    explicit: ["N10 G00 A90.000 B-0.500 C720.000", "N20 G01 X1.000 A90.001 F5.0"],
    least: ["N001G00A90000B-500C720000*", "N002G01X+1000A90001B-500C720000F0005*"],
  },
  {
    name: "holes: positions only, or all words again",
    parts: [
      rapid({ x: 0, y: 0, z: 10 }),
      {
        kind: "cycle-definition",
        cycle: "peck",
        depth: mm(-12),
        retract: mm(2),
        level: mm(2),
        between: "retract",
        levelStated: true,
        peck: mm(3),
        dwell: 0,
      },
      { kind: "hole", at: { x: 5, y: 6 }, also: { z: 2 }, feed: 200 },
      { kind: "hole", at: { x: 7 }, also: { y: 6, z: 2 }, feed: 200 },
      { kind: "cycle", value: "off" },
      rapid({ z: 10 }, { also: { x: 7, y: 6 } }),
    ],
    plain: ["G0 X0 Y0 Z10", "G99 G83 X5 Y6 Z-12 R2 Q3 F200", "X7", "G80", "G0 Z10"],
    explicit: [
      "N10 G00 X0.000 Y0.000 Z10.000",
      "N20 G99 G83 X5.000 Y6.000 Z-12.000 R2.000 Q3.000 F200.0",
      "N30 G99 G83 X7.000 Z-12.000 R2.000 Q3.000",
      "N40 G80",
      "N50 G00 Z10.000",
    ],
    // Z counts from the retract level, R from the level before the first hole.
    least: [
      "N001G00X+0Y+0Z+10000*",
      "N002G83X+5000Y+6000Z-14000R-8000Q+3000F0200*",
      "N003X+7000Y+6000F0200*",
      "N004G80*",
      "N005G00X+7000Y+6000Z+10000*",
    ],
  },
  {
    name: "holes with a dwell, back to the initial level (NISTIR 6556 3.5.19)",
    parts: [
      rapid({ x: 0, y: 0, z: 10 }),
      {
        kind: "cycle-definition",
        cycle: "dwell",
        depth: mm(-3),
        retract: mm(2),
        level: mm(10),
        between: "initial",
        levelStated: true,
        peck: 0,
        dwell: 250_000,
      },
      { kind: "hole", at: { x: 5 }, also: { y: 0, z: 10 }, feed: 200 },
    ],
    plain: ["G0 X0 Y0 Z10", "G98 G82 X5 Z-3 R2 P0.25 F200"],
    explicit: ["N10 G00 X0.000 Y0.000 Z10.000", "N20 G98 G82 X5.000 Z-3.000 R2.000 P250 F200.0"],
  },
];

/** A format without words for the level between holes gets definitions that don't state it. */
function inWordsOf(format: Format, part: Row | Step): Row | Step {
  if (!("cycle" in part)) return part;
  return { ...part, levelStated: format.codes.cycleReturn[part.between] !== undefined };
}

describe.each([
  ["plain", plain, (one: Case) => one.plain],
  ["explicit", explicit, (one: Case) => one.explicit],
  ["least increment", leastIncrement, (one: Case) => one.least],
] as const)("%s", (_name, format, expected) => {
  test.each(cases.filter((one) => expected(one) !== undefined).map((one) => [one.name, one] as const))(
    "%s",
    async (_title, one) => {
      expect(
        await linesOf(
          format,
          one.parts.map((part) => inWordsOf(format, part)),
        ),
      ).toEqual(expected(one));
    },
  );
});

const circle: Row = { kind: "arcXy", at: { x: 10, y: 10 }, centre: [0, 10], turns: 1, feed: 800 };

test("centre words: zero left out, absolute, and as the last arc-centre mode said", async () => {
  const start = rapid({ x: 0, y: 0 });
  const nonZero: Format = { ...plain, modal: { ...plain.modal, arcCentre: "non-zero" } };
  expect(await linesOf(nonZero, [start, circle])).toEqual(["G0 X0 Y0", "G3 X10 Y10 J10 F800"]);
  const absolute: Format = { ...nonZero, arc: { ...plain.arc, form: "absolute-centre" } };
  const moved = { ...circle, centre: [1, 0] } as const;
  expect(await linesOf(absolute, [rapid({ x: 5, y: 5 }), moved])).toEqual([
    "G0 X5 Y5",
    "G3 X10 Y10 I1 J0 F800",
  ]);
  const codes = {
    ...plain.codes,
    modes: { ...plain.codes.modes, "arc-centre": { absolute: code("G90.1"), incremental: code("G91.1") } },
  };
  const stated: Format = { ...nonZero, codes };
  const parts = [
    start,
    { kind: "arc-centre", value: "absolute" } as const,
    circle,
    { kind: "arc-centre", value: "incremental" } as const,
    { ...circle, at: { x: 0, y: 20 } },
  ];
  expect(await linesOf(stated, parts)).toEqual([
    "G0 X0 Y0",
    "G90.1",
    "G3 X10 Y10 I0 J10 F800",
    "G91.1",
    "X0 Y20 I-10",
  ]);
});

test("the level between holes is said where the definition states it, and in a fragment", async () => {
  const definition: Step = {
    kind: "cycle-definition",
    cycle: "drill",
    depth: mm(-1),
    retract: mm(2),
    level: mm(2),
    between: "retract",
    levelStated: false,
    peck: 0,
    dwell: 0,
  };
  const parts: (Row | Step)[] = [definition, { kind: "hole", at: { x: 1, y: 2 }, also: { z: 2 }, feed: 50 }];
  expect(await linesOf(plain, parts)).toEqual(["G81 X1 Y2 Z-1 R2 F50"]);
  expect(await linesOf(plain, parts, { fragment: true })).toEqual(["G99 G81 X1 Y2 Z-1 R2 F50"]);
  const other: Format = {
    ...leastIncrement,
    cycles: { ...leastIncrement.cycles!, levels: "absolute", levelWithout: "initial" },
  };
  await expect(linesOf(other, parts)).rejects.toThrow("cycles.return.retract");
});

test("several turns need their word", async () => {
  const parts = [rapid({ x: 0, y: 0 }), { ...circle, turns: -3 }];
  expect(await linesOf({ ...plain, arc: { ...plain.arc, turnsWord: "P" } }, parts)).toEqual([
    "G0 X0 Y0",
    "G2 X10 Y10 I0 J10 P3 F800",
  ]);
  await expect(linesOf(plain, parts)).rejects.toThrow("arc.turns-word");
});

test("an incremental program: differences of rounded absolutes, and levels from where the tool is", async () => {
  const parts: (Row | Step)[] = [
    rapid({ x: 1, y: 2, z: 3 }),
    { kind: "distance", value: "incremental" },
    line({ x: 1.333 }, 100, { also: { y: 2, z: 3 } }),
    line({ x: 1.667, y: 1 }, 100, { also: { z: 3 } }),
    rapid({ x: 1.667 }, { also: { y: 1, z: 3 } }),
    { kind: "arcXy", at: { x: 3.667, y: 1 }, also: { z: 3 }, centre: [2.667, 1], turns: -1, feed: 100 },
    {
      kind: "cycle-definition",
      cycle: "drill",
      depth: mm(-1),
      retract: mm(2),
      level: mm(2),
      between: "retract",
      levelStated: true,
      peck: 0,
      dwell: 0,
    },
    { kind: "hole", at: { x: 4.667 }, also: { y: 1, z: 2 }, feed: 50 },
    { kind: "hole", at: { x: 5.667 }, also: { y: 1, z: 2 }, feed: 50 },
    { kind: "distance", value: "absolute" },
    { kind: "hole", at: { x: 6.667 }, also: { y: 1, z: 2 }, feed: 50 },
  ];
  expect(await linesOf(plain, parts)).toEqual([
    "G0 X1 Y2 Z3",
    "G91",
    "G1 X0.333 F100",
    "X0.334 Y-1",
    "G0 X0",
    "G2 X2 Y0 I1 J0",
    "G99 G81 X1 Z-3 R-1 F50",
    "X1 R0",
    "G90",
    "X6.667",
  ]);
});

test("incremental words and arcs need to know where they start", async () => {
  await expect(linesOf({ ...plain, distance: "incremental" }, [line({ x: 1 }, 100)])).rejects.toThrow(
    "distance.absolute",
  );
  await expect(linesOf(plain, [circle])).rejects.toThrow("arc.form");
  const offset: Step = { kind: "work-offset", number: 2 };
  await expect(linesOf(plain, [rapid({ x: 0, y: 0 }), offset, circle])).rejects.toThrow("arc.form");
  await expect(
    linesOf(plain, [rapid({ x: 0, y: 0 }), offset, rapid({ x: 0, y: 0 }), offset, circle]),
  ).resolves.toHaveLength(5);
});

test("inch numbers have their own grid", async () => {
  expect(await linesOf(explicit, [line({ x: 25.4, y: 0.00254 }, 254)], { units: "inch" })).toEqual([
    "N10 G01 X1.0000 Y0.0001 F10.00",
  ]);
  await expect(linesOf(leastIncrement, [], { units: "inch" })).rejects.toThrow("units.programs-in");
});

test("feeds in the unit of the last feed mode", async () => {
  const perMinute: Step = { kind: "feed-mode", value: "per-minute" };
  const inverse: (Row | Step)[] = [
    line({ x: 1 }, 300),
    { kind: "feed-mode", value: "inverse-time" },
    line({ x: 2 }, 0.25),
    line({ x: 3 }, 0.25),
    perMinute,
    line({ x: 4 }, 300),
  ];
  // Inverse time counts 1e-6 a minute, so that 0.25 as this test scales it is 2.5 a minute; each line states it (3.5.20).
  expect(await linesOf(plain, inverse)).toEqual([
    "G1 X1 F300",
    "G93",
    "X2 F2.5",
    "X3 F2.5",
    "G94",
    "X4 F300",
  ]);
  const turns: (Row | Step)[] = [
    { kind: "feed-mode", value: "per-revolution" },
    line({ x: 2 }, 0.12),
    line({ x: 3 }, 0.12),
  ];
  expect(await linesOf(explicit, turns)).toEqual(["N10 G95", "N20 G01 X2.000 F0.120", "N30 G01 X3.000"]);
});

test("what the dialect has no word for is a fault of ours, and names the key", async () => {
  await expect(
    linesOf({ ...plain, arc: { ...plain.arc, form: "none" } }, [rapid({ x: 0, y: 0 }), circle]),
  ).rejects.toThrow("arc.form");
  await expect(linesOf(leastIncrement, [rapid({ x: 0, y: 0 }), circle])).rejects.toThrow("arc.form");
  await expect(linesOf(leastIncrement, [rapid({ z: 0 }, { machine: true })])).rejects.toThrow("machine-move");
  await expect(
    linesOf({ ...plain, order: plain.order.filter((letter) => letter !== "A") }, [rapid({ a: 1 })]),
  ).rejects.toThrow("blocks.order");
  await expect(
    linesOf({ ...plain, cycles: undefined }, [{ kind: "hole", at: { x: 1 }, feed: 1 }]),
  ).rejects.toThrow("cycles");
  await expect(linesOf(plain, [{ kind: "hole", at: { x: 1 }, feed: 1 }])).rejects.toThrow("cycles");
});
