import { expect, it } from "vitest";
import { postText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";
import { clReading } from "./reading.ts";
import { sourceText } from "./same-parts.ts";

/*
 * Three sources whose programs were compiled by hand for RS274/NGC and run on its interpreter: the blocks that were
 * expected of them stand in the programs, in this order.
 */

async function blocksOf(file: string): Promise<string[]> {
  const job = { job: sourceText(file), reading: clReading() };
  const { outcome, program } = postText(job, await ready("rs274ngc"));
  expect(outcome.findings.filter(({ severity }) => severity === "error")).toEqual([]);
  return (program ?? "").split("\n");
}

/** The blocks of a program from one on, as many as are expected. */
function from(blocks: readonly string[], expected: readonly string[]): string[] {
  const at = blocks.indexOf(expected[0]);
  return blocks.slice(at, at + expected.length);
}

it("a profile with two arcs: clockwise arcs about their centres", async () => {
  const expected = [
    "G1 Z-3 F300",
    "Y40 F1200",
    "G2 X0 Y50 I10 J0",
    "G1 X70",
    "G2 X80 Y40 I0 J-10",
    "G1 Y-10",
    "X-10",
    "G0 Z15",
  ];
  expect(from(await blocksOf("plate-profile.apt"), expected)).toEqual(expected);
});

it("holes: pecks of 4 from 2 above, then a tap at speed times lead", async () => {
  const blocks = await blocksOf("drill-and-tap.cl");
  // X10 Y10 hold from the rapid before; the modal words say the rest.
  const pecks = ["G0 X10 Y10", "G43 Z20 H2", "G99 G83 X10 Z-18 R2 Q4 F240", "X50", "Y30", "X10", "G80"];
  const taps = ["G43 Z20 H3", "G99 G84 X10 Z-14 R5 F500", "X50", "G80"];
  expect(from(blocks, pecks)).toEqual(pecks);
  expect(from(blocks, taps)).toEqual(taps);
});

it("a bore: half turns of a helix, each 1 mm deeper, then round once more and out", async () => {
  const expected = [
    "G1 Z1 F600",
    "G3 X20 Y25 Z0 I-5 J0 F400",
    "X30 Y25 Z-1 I5 J0",
    "X20 Y25 Z-2 I-5 J0",
    "X30 Y25 Z-3 I5 J0",
    "X20 Y25 I-5 J0",
    "X30 Y25 I5 J0",
    "G1 X25",
    "G0 Z20",
  ];
  const blocks = await blocksOf("bore-d16.cls");
  expect(from(blocks, expected)).toEqual(expected);
  expect(blocks).toContain("(MSG, CHECK CLAMPS BEFORE START)");
  expect(blocks).toContain("M0");
});
