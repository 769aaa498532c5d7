import { beforeAll, describe, expect, it } from "vitest";
import type { ReadyDialect } from "../../../core/index.ts";
import { proveText } from "../../../core/index.ts";
import { ready } from "../../support/ready.ts";
import { dialect } from "../programs.ts";

const head = "%\nG17 G21 G40 G49 G54 G61 G80 G90 G94 G98\nG0 X0 Y0 Z20\n";
const end = "M2\n%\n";

/* A long program from elsewhere has the same to it in each of its blocks. What is told must be of use all the same. */
describe("the findings on a long program from elsewhere", () => {
  let made: ReadyDialect;
  beforeAll(async () => {
    made = await ready(dialect);
  });

  it("tell of the one code that has no meaning, whatever the form of all blocks", () => {
    const blocks = Array.from({ length: 400 }, (_, index) => `N${index} G1 X${index} F100`);
    const text = `${head}${blocks.join("\n")}\nG38.2 Z1\n${end}`;
    const { findings } = proveText(text, made);
    const unknown = findings.find(({ rule }) => rule === "read/unknown-code");
    expect(unknown?.place).toEqual({ source: "program", offset: text.indexOf("G38.2") });
    const numbers = findings.filter(({ rule }) => rule === "block/number");
    expect(numbers).toHaveLength(101);
    expect(numbers.at(-1)?.message).toContain("the last of 300 more");
  });

  it("count what the guard says too often, and say where the last of it stands", () => {
    // Each arc begins where the one before ended, and its centre is off.
    const arcs = Array.from({ length: 125 }, () => "G2 X10 Y0 I3 J0 F100\nG2 X0 Y0 I-3 J0 F100");
    const text = `${head}${arcs.join("\n")}\n${end}`;
    const { findings } = proveText(text, made);
    const radii = findings.filter(({ rule }) => rule === "arc/radius");
    expect(radii).toHaveLength(101);
    expect(radii.at(-1)?.message).toContain("150 more findings");
    expect(radii.at(-1)?.place).toEqual({ source: "program", offset: text.lastIndexOf("G2 X") });
  });
});
