import { describe, expect, test } from "vitest";
import { formatWith, readBlocks } from "./support.ts";

/**
 * Order of execution in a block, NISTIR 6556 Table 8 (read; verified on an interpreter). Each entry: the words, and the step
 * that they give; what gives none (F, G98) shows in the rows. G4 and G28 exclude G53 and each other, so they have walks of
 * their own.
 */
const table8: readonly { readonly item: number; readonly words: string; readonly step: string }[] = [
  { item: 1, words: "(MSG, READY)", step: "message text=READY" },
  { item: 2, words: "G95", step: "feed-mode value=per-revolution" },
  { item: 3, words: "F0.1", step: "" },
  { item: 4, words: "S1000", step: "spindle-speed rpm=1000000" },
  { item: 5, words: "T2", step: "select-tool tool=2" },
  { item: 6, words: "M6", step: "change-tool" },
  { item: 7, words: "M3", step: "spindle-start direction=cw" },
  { item: 8, words: "M8", step: "coolant medium=flood on=true" },
  { item: 9, words: "M49", step: "overrides value=off" },
  { item: 10, words: "G4 P1", step: "dwell time=1000000" },
  { item: 11, words: "G18", step: "plane value=zx" },
  { item: 12, words: "G20", step: "units value=inch" },
  { item: 13, words: "G40", step: "compensation value=off offset=0" },
  { item: 14, words: "G43 H1", step: "length-offset number=1" },
  { item: 15, words: "G55", step: "work-offset number=2" },
  { item: 16, words: "G61", step: "path value=exact" },
  { item: 17, words: "G91", step: "distance value=incremental" },
  { item: 18, words: "G99", step: "" },
  { item: 20, words: "G0 X1", step: "rapid x35.4" },
  { item: 21, words: "M0", step: "pause optional=false" },
];

/** The block from left to right and from right to left: the order of words means nothing (NISTIR 6556 3.3.6). */
const orders = [table8, [...table8].reverse()].map((entries) => entries.map(({ words }) => words).join(" "));

describe("all of Table 8 in one block", () => {
  test.each(orders)("%s", (block) => {
    // X is known to be 10 mm in work offset 2, so that the incremental inch counts from there.
    const { lines } = readBlocks(`G55\nG43 H1\nG0 X10\n${block}`, { format: formatWith({ mWords: 9 }) });
    expect(lines.slice(3)).toEqual(table8.map(({ step }) => step).filter((step) => step !== ""));
  });
});

/** Pairs of neighbours, each in both orders of the text. */
const neighbours = table8.slice(1).flatMap((entry, index): [string, string, string[]][] => {
  const before = table8[index];
  if (before.step === "" || entry.step === "" || entry.item >= 20) return [];
  return [
    [before.words, entry.words, [before.step, entry.step]],
    [entry.words, before.words, [before.step, entry.step]],
  ];
});

test.each(neighbours)("%s %s", (a, b, steps) => {
  expect(readBlocks(`${a} ${b}`).lines).toEqual(steps);
});

test("19: reference return and local shift come behind the distance mode and before motion", () => {
  expect(readBlocks("G28 G91 Z0").lines).toEqual(["distance value=incremental", "reference-return axes=4"]);
  expect(readBlocks("G92.2 G90 G0 X1").lines).toEqual([
    "distance value=absolute",
    "local-shift value=off",
    "rapid x1",
  ]);
});

test("modes that Table 8 lacks stand beside their like", () => {
  expect(readBlocks("G80 G50 G69 G90.1 G90").lines).toEqual([
    "distance value=absolute",
    "arc-centre value=absolute",
    "rotation value=off",
    "scale value=off",
    "cycle value=off",
  ]);
});

test("20: G80 acts as motion does, behind G28", () => {
  expect(readBlocks("G80 G91 G28 Z0").lines).toEqual([
    "distance value=incremental",
    "reference-return axes=4",
    "cycle value=off",
  ]);
});

describe("spindle and coolant off in a block with motion", () => {
  const block = "G1 X10 F100 M5 M9";

  test("before the motion (Table 8)", () => {
    expect(readBlocks(block).lines).toEqual(["spindle-stop", "coolant medium=all on=false", "line x10 f100"]);
  });

  test("after the motion (ISO order, from memory)", () => {
    expect(readBlocks(block, { format: formatWith({ stopsAct: "after-motion" }) }).lines).toEqual([
      "line x10 f100",
      "spindle-stop",
      "coolant medium=all on=false",
    ]);
  });

  test("the start and coolant on come before the motion either way (ISO order, from memory; Table 8)", () => {
    for (const stopsAct of ["before-motion", "after-motion"] as const)
      expect(readBlocks("G0 X1 M3 S10 M8", { format: formatWith({ stopsAct }) }).lines).toEqual([
        "spindle-speed rpm=10000",
        "spindle-start direction=cw",
        "coolant medium=flood on=true",
        "rapid x1",
      ]);
  });

  test("stops and the end come last either way (Table 8)", () => {
    for (const stopsAct of ["before-motion", "after-motion"] as const)
      expect(readBlocks("M0 G0 X1", { format: formatWith({ stopsAct }) }).lines).toEqual([
        "rapid x1",
        "pause optional=false",
      ]);
  });
});

test("S and M3, T and M6 in either order of the text", () => {
  for (const block of ["M3 S10", "S10 M3"])
    expect(readBlocks(block).lines).toEqual(["spindle-speed rpm=10000", "spindle-start direction=cw"]);
  for (const block of ["M6 T1", "T1 M6"])
    expect(readBlocks(block).lines).toEqual(["select-tool tool=1", "change-tool"]);
});

test("a length offset acts before the motion of its block", () => {
  expect(readBlocks("G0 Z1\nG43 H2 Z15").lines).toEqual(["rapid z1", "length-offset number=2", "rapid z15"]);
});
