import { describe, expect, test } from "vitest";
import { format, machine } from "./formats.ts";
import { formatWith, readBlocks, readText } from "./support.ts";

/** A mode, a program that lacks its word, and what is read instead. */
const unstated: readonly [name: string, text: string, line: string, key: string][] = [
  ["units", "G90\nG0 X1", "rapid x1", "units"],
  ["distance", "G21\nG0 X1", "rapid x1", "distance"],
  ["feed mode", "G21 G90\nG1 X1 F100", "line x1 f100", "feed"],
  ["plane", "G21 G90 G94 G91.1\nG0 X0 Y0\nG2 X2 I1 F100", "arcXy x2 y0 c1,0 -1 f100", "plane"],
  ["arc centre", "G21 G90 G94 G17\nG0 X0 Y0\nG2 X2 I1 F100", "arcXy x2 y0 c1,0 -1 f100", "arc.centre-words"],
  [
    "level between holes",
    "G21 G90 G94 G17\nG0 X0 Y0 Z9\nG81 X1 Z-1 R1 F100",
    "hole x1 y0 z9 f100",
    "cycles.return",
  ],
];

describe("a mode that is relied on and never stated", () => {
  test.each(unstated)("%s", (_name, text, line, key) => {
    const { lines, findings } = readText(`${text}\nM2\n`);
    expect(findings.map((finding) => [finding.rule, finding.key])).toEqual([["read/mode-unknown", key]]);
    expect(lines.at(-2)).toBe(line);
  });

  test("is told once", () => {
    expect(readText("G0 X1\nX2\nX3\nM2\n").rules).toEqual(["read/mode-unknown", "read/mode-unknown"]);
  });

  test("needs no word where the dialect has none", () => {
    const bare = formatWith({
      unitsIn: "mm",
      codes: {
        ...format.codes,
        modes: {
          ...format.codes.modes,
          units: { mm: null, inch: null },
          distance: {},
          plane: {},
          "feed-mode": {},
          "arc-centre": {},
        },
        cycleReturn: {},
      },
    });
    const text = "G0 X0 Y0 Z9\nG2 X2 I1 F100\nG81 X1 Z-1 R1 F100\nM2\n";
    expect(readText(text, { format: bare }).rules).toEqual([]);
  });
});

describe("units without a word of the program", () => {
  const codes = { ...format.codes, modes: { ...format.codes.modes, units: { mm: null, inch: null } } };
  const text = "G90\nG0 X1\nM2\n";

  test("the dialect's", () => {
    const inch = formatWith({ codes, unitsIn: "inch" });
    expect(readText(text, { format: inch, options: { units: "mm" } })).toMatchObject({ rules: [] });
    expect(readText(text, { format: inch }).lines).toContain("rapid x25.4");
  });

  test("the caller's", () => {
    const either = formatWith({ codes });
    expect(readText(text, { format: either, options: { units: "inch" } }).lines).toContain("rapid x25.4");
    expect(readText(text, { format: either, options: { units: "inch" } }).rules).toEqual([]);
    expect(readText(text, { format: either }).rules).toEqual(["read/mode-unknown"]);
  });
});

describe("a feed", () => {
  test("in the other units is none in these", () => {
    const { rows } = readBlocks("G1 X1 F100\nG20\nX1\nX2 F4");
    expect(rows.filter(({ step }) => !step).map(({ feed }) => feed)).toEqual([1e9, 0, 4 * 254e6]);
  });

  test("on the line of its units is in these", () => {
    const { rows } = readBlocks("G1 G20 X1 F4");
    expect(rows.filter(({ step }) => !step).map(({ feed }) => feed)).toEqual([4 * 254e6]);
  });
});

describe("what is known of the place", () => {
  const start = "G54\nG49\nG0 X1 Y2 Z3\n";
  const then = "\nG0 X5";

  test.each([
    ["the same work offset", "G54", "rapid x5 y2 z3"],
    ["another work offset", "G55", "rapid x5"],
    ["the same length offset", "G49", "rapid x5 y2 z3"],
    ["another length offset", "G43 H1", "rapid x5 y2"],
    ["a stop", "M0", "rapid x5"],
    ["an optional stop", "M1", "rapid x5"],
    ["a tool change that leaves the place", "T1 M6", "rapid x5 y2 z3"],
    ["an opaque code with an unknown place", "M93", "rapid x5"],
    ["units", "G20\nG21", "rapid x5 y2 z3"],
    ["a first local shift, rotation or scale off", "G92.2", "rapid x5"],
    ["a second one", "G92.2\nG0 X1 Y2 Z3\nG92.2", "rapid x5 y2 z3"],
    ["spindle, coolant, dwell", "S10 M3\nM8\nG4 P1\nM5\nM9", "rapid x5 y2 z3"],
    ["a measurement", "M95", "rapid x5 y2"],
  ])("after %s", (_name, block, line) => {
    const measure = {
      letter: "M",
      value: 950,
      meaning: { kind: "auxiliary", action: "measure" },
      words: {},
      key: "idioms.measure",
    } as const;
    const measuring = formatWith({ extraCodes: [...format.extraCodes, measure] });
    expect(readBlocks(start + block + then, { format: measuring }).lines.at(-1)).toBe(line);
  });

  const lines = (machineChange: Partial<typeof machine>, blocks: string): string | undefined =>
    readBlocks(blocks, { machine: { ...machine, ...machineChange } }).lines.at(-1);

  test("after a tool change whose effects are declared, or not at all", () => {
    const effects = {
      position: "swap-height",
      spindle: "stopped",
      coolant: "off",
      lengthOffset: "cancelled",
    } as const;
    expect(lines({ changeEffects: effects }, `${start}T1 M6${then}`)).toBe("rapid x5");
    expect(lines({ changeEffects: { ...effects, position: "unchanged" } }, `${start}T1 M6${then}`)).toBe(
      "rapid x5 y2",
    );
    expect(lines({ changeEffects: undefined }, `${start}T1 M6${then}`)).toBe("rapid x5");
  });

  test("a length offset that moves the axis loses machine Z, too", () => {
    const blocks = "G53 G0 X1 Z0\nG43 H1\nG53 G0 X2";
    expect(lines({}, blocks)).toBe("machine rapid x2 z0");
    const moving = { form: "with-first-z", selectMoves: true, cancelMoves: false } as const;
    expect(lines({ lengthOffset: moving }, blocks)).toBe("machine rapid x2");
  });
});

test("a tool word that brings its length offset along", () => {
  const combined = formatWith({
    lengthOffset: { ...format.lengthOffset!, form: "in-tool-word" },
    numbers: { ...format.numbers, width: { ...format.numbers.width, T: 2 } },
  });
  expect(readBlocks("T0303\nT0204", { format: combined }).lines).toEqual([
    "select-tool tool=3 offset=3",
    "select-tool tool=2 offset=4",
  ]);
  // T2 may be tool 0 with offset 2, or tool 2 with none.
  expect(readBlocks("T2", { format: combined }).rules).toEqual(["read/number", "block/number-form"]);
  expect(readBlocks("T02", { format: combined }).rules).toEqual(["read/number", "block/number-form"]);
});

test("compensation names its radius offset, or leaves it to the tool (NISTIR 6556 3.5.10)", () => {
  expect(readBlocks("G41 D3\nG42\nG40").lines).toEqual([
    "compensation value=left offset=3",
    "compensation value=right offset=0",
    "compensation value=off offset=0",
  ]);
});

describe("a feed beside the units of its block (NISTIR 6556 Table 8 takes the feed first)", () => {
  test("is that of the units in force", () => {
    expect(readBlocks("G0 X0\nG21 G1 X1 F100")).toMatchObject({ rules: [] });
    expect(readBlocks("G0 X0\nG21 G1 X1 F100").lines.at(-1)).toBe("line x1 f100");
  });

  test("is not known where they are others, or were not known", () => {
    const { rules, findings } = readBlocks("G0 X0\nG1 G20 X1 F10");
    expect(rules).toEqual(["read/modal-conflict"]);
    expect(findings[0].message).toContain("F10 shares its block with G20");
    expect(readText("G90 G94 G21 F100\nG1 X1\nM2\n").rules).toContain("read/modal-conflict");
    expect(readText("G90 G94\nG21\nF100\nG1 X1\nM2\n").rules).toEqual([]);
  });

  test("has no units under inverse time", () => {
    expect(readBlocks("G0 X0\nG93 G20 G1 X1 F2").rules).toEqual([]);
  });
});

test("under inverse time a feed holds for the line of its own block alone (NISTIR 6556 3.5.20)", () => {
  expect(readBlocks("G93\nG0 X0 F2\nG1 X1").lines.at(-1)).toBe("line x1");
  expect(readBlocks("G93\nF2\nG1 X1").rules).toEqual(["block/feed-word"]);
  expect(readBlocks("G93\nG0 X0\nG1 X1 F2").rules).toEqual([]);
});

describe("what moves the contour away under compensation (NISTIR 6556 3.5.13)", () => {
  test.each(["G55", "G43 H1", "G49", "G18", "G20"])("%s", (word) => {
    const { rules, findings } = readBlocks(`G41\nG1 X0 Y0 F100\n${word}\nG40`);
    expect(rules).toEqual(["read/modal-conflict"]);
    expect(findings[0].message).toContain("cutter compensation");
  });

  test.each(["G17", "G21", "G90", "G64"])("%s does not, as it is in force or of another kind", (word) => {
    expect(readBlocks(`G41\nG1 X0 Y0 F100\n${word}\nG40`).rules).toEqual([]);
  });

  test("nor does an offset in the block that ends it", () => {
    expect(readBlocks("G41\nG1 X0 Y0 F100\nG40 G49 G55").rules).toEqual([]);
  });
});
