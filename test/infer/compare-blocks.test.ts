import { describe, expect, it } from "vitest";
import { compareBlocks } from "../../core/infer/compare-blocks.ts";
import { takeApart } from "../../core/infer/program.ts";
import { loadDialect } from "../support/dialects.ts";
import { programFile } from "./support.ts";

const { format } = await loadDialect("explicit-words");

function compared(was: readonly string[], now: readonly string[]) {
  return compareBlocks(takeApart(programFile(was.join("\n"))), now.join("\n"), format);
}

const four = ["N10 G21", "N20 G00 X1.", "N30 G01 Y2. F100", "N40 M30"];

describe("blocks of a program and of what was written from it", () => {
  it("are identical, comments and blank lines aside", () => {
    const found = compared(["(HEAD)", ...four, ""], ["(OTHER)", "N10 G21 (MM)", ...four.slice(1)]);
    expect(found).toMatchObject({ blocks: 4, identical: 4, renumbered: 0, added: 0, different: [] });
  });

  it("a message counts as a block", () => {
    const found = compared(["(MSG, LOAD IT)", ...four], four);
    expect(found).toMatchObject({ blocks: 5, identical: 4, different: [{ line: 1, was: "(MSG, LOAD IT)" }] });
  });

  it("one block more lets the numbers run on, which is not identical", () => {
    const found = compared(four, ["N10 G21", "N20 G17", "N30 G00 X1.", "N40 G01 Y2. F100", "N50 M30"]);
    expect(found).toMatchObject({ blocks: 4, identical: 1, renumbered: 3, added: 1, different: [] });
  });

  it("one block less, one that differs, one in another order", () => {
    expect(compared(four, ["N10 G21", "N20 G01 Y2. F100", "N30 M30"])).toMatchObject({
      identical: 1,
      renumbered: 2,
      different: [{ line: 2, was: "N20 G00 X1." }],
    });
    expect(compared(four, ["N10 G21", "N20 G00 X2.", "N30 F100 G01 Y2.", "N40 M30"])).toMatchObject({
      identical: 2,
      reordered: 1,
      different: [{ line: 2, was: "N20 G00 X1.", now: "N20 G00 X2." }],
    });
  });

  it("nothing written is nothing identical", () => {
    expect(compared(four, [])).toMatchObject({ blocks: 4, identical: 0, renumbered: 0, reordered: 0 });
  });
});
