import { expect, test } from "vitest";
import { ready } from "../support/ready.ts";
import { quarryRouter } from "../support/dialects.ts";
import { runText } from "./running.ts";

const rs274ngc = await ready("rs274ngc");
const router = await ready(quarryRouter);
const longhand = await ready("longhand");
const din = await ready("din-66025");

test("a case that holds says nothing", async () => {
  const { said, results } = await runText(
    '- { name: one, given: [rapid x10, line z-2 feed 300], expect: ["G0 X10", "G1 Z-2 F300"] }',
    rs274ngc,
  );
  expect(said).toEqual([]);
  expect(results).toMatchObject([
    { name: "one", passed: true, meant: true, written: ["G0 X10", "G1 Z-2 F300"] },
  ]);
});

test("one that does not is told at its blocks, with what differs word by word", async () => {
  const text =
    "- given: [rapid x10, line z-2 feed 300, rapid z5]\n  expect:\n    - G0 X10\n    - G1 Z-2 F250\n    - M5\n    - G0 Z5\n";
  const { said, results } = await runText(text, rs274ngc);
  expect(said).toEqual(["block/case 2:3 `case 1`: other blocks are written than are expected."]);
  expect(results[0]).toMatchObject({ passed: false, meant: true });
  expect(results[0].difference).toEqual([
    { expected: "G0 X10", written: "G0 X10", pieces: [] },
    {
      expected: "G1 Z-2 F250",
      written: "G1 Z-2 F300",
      pieces: [
        { side: "both", text: "G1 Z-2 " },
        { side: "expected", text: "F250" },
        { side: "written", text: "F300" },
      ],
    },
    { expected: "M5", written: undefined, pieces: [{ side: "expected", text: "M5" }] },
    { expected: "G0 Z5", written: "G0 Z5", pieces: [] },
  ]);
});

test("a tab is written as a blank in a case", async () => {
  const { said } = await runText("- { given: [rapid x10], expect: [N0010 G00 X10.0] }", din);
  expect(said).toEqual([]);
});

test("a step for which the dialect has no word fails, and the key is named", async () => {
  const { said, findings, results } = await runText("- { given: [coolant air], expect: [M51] }", rs274ngc);
  expect(said).toEqual(["block/case 1:3 `case 1`: the dialect has no word for one of its steps."]);
  expect(findings[0].key).toBe("coolant.air");
  expect(results[0]).toMatchObject({ passed: false, meant: false, written: undefined });
});

test("blocks that are as expected and mean something else fail: the emitter is not believed", async () => {
  const lying: typeof rs274ngc = {
    ...rs274ngc,
    emitter: { ...rs274ngc.emitter, emitUnproved: () => [new TextEncoder().encode("%\nG0 X11\n%\n")] },
  };
  const { said, results } = await runText("- { given: [rapid x10], expect: [G0 X11] }", lying);
  expect(said).toHaveLength(1);
  expect(said[0]).toMatch(
    /^proof\/case 1:3 `case 1`: read back: The program does not say .*step 1 of the case.*X 10 expected, 11 read/,
  );
  expect(results[0]).toMatchObject({ passed: false, meant: false });
  const unreadable = {
    ...lying,
    emitter: { ...lying.emitter, emitUnproved: () => [new TextEncoder().encode("G0 X10 W5\n")] },
  };
  const strange = await runText("- { given: [rapid x10], expect: [G0 X10 W5] }", unreadable);
  expect(strange.said[0]).toMatch(/^proof\/case .*W/);
});

test("what a program cannot be is told by the reader: an arc past the largest sweep", async () => {
  const staged = await ready("staged-tools");
  const { said } = await runText(
    '- { given: [line x10 feed 900, arc ccw x20 y10 cx20 cy0], expect: [G01 X10. F900., "G03 X20. Y10. R-10."] }',
    staged,
  );
  expect(said.some((one) => one.startsWith("proof/case"))).toBe(true);
});

test("places are kept through machine moves, offsets, swaps and stops as the reader keeps them", async () => {
  // A controller that forgets its modes at a stop is told them again.
  const restated = ["units mm", "distance absolute", "feed-mode per-minute"];
  const given = [
    "length-offset 2",
    "rapid x1",
    "rapid z20",
    "work-offset 1",
    "machine rapid z0",
    "rapid x10 y5",
    "length-offset 3",
    "rapid z15",
    "line z-2 feed 300",
    "machine rapid z-5",
    "length-offset off",
    "tool 4",
    "change",
    "rapid x1 y2",
    "length-offset 4",
    "rapid z15",
    "pause",
    ...restated,
    "rapid x7",
    "machine rapid z0",
    "rapid x3 y4",
    "work-offset 2",
    "rapid x6",
    "rapid x1 y1",
    "length-offset 5",
    "rapid z3",
  ];
  for (const means of [router, rs274ngc]) {
    const { findings } = await runText(JSON.stringify([{ given, expect: [] }]), means);
    expect(findings.filter(({ rule }) => rule !== "block/case")).toEqual([]);
  }
});

test("a change that moves the axes leaves no place known", async () => {
  const staged = await ready("staged-tools");
  const given = ["rapid x5", "tool 3 offset 3", "change", "rapid x1", "rapid z2", "rapid y3"];
  const { findings } = await runText(JSON.stringify([{ given, expect: [] }]), staged);
  expect(findings.filter(({ rule }) => rule !== "block/case")).toEqual([]);
});

test("steps that a job's lowering would have split are told by the reader", async () => {
  const { said } = await runText("- { given: [rapid x10 y5], expect: [] }", longhand);
  expect(said.join("\n")).toContain("The rapid moves 2 axes in one block; this dialect moves 1 at most.");
});
