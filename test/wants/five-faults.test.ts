import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { proveText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";

/*
 * A program written by hand under explicit-words, whose swap is the controller's own, with the five faults that a stock
 * script leaves in. Each is named once, with its block, its rule, the key behind it and the corrected block.
 */

const program = readFileSync(
  join(import.meta.dirname, "../../examples/refused-program/five-faults.tap"),
  "utf8",
);

/** The block at a byte offset. */
const blockAt = (offset: number): string =>
  program.slice(program.lastIndexOf("\n", offset - 1) + 1).split("\n")[0] ?? "";

describe("five faults", () => {
  it("are named, each once, with what corrects them", async () => {
    const { verdict, findings } = proveText(program, await ready("explicit-words"));
    expect(verdict).toBe("read");
    const errors = findings.filter((finding) => finding.severity === "error");
    expect(
      errors.map(({ rule, key, place, corrected }) => [rule, key, blockAt(place?.offset ?? 0), corrected]),
    ).toEqual([
      ["block/motion-word", "modal.motion", "N230 Y50.000", "G01 Y50.000 F900.0"],
      ["block/spindle-order", "spindle.order", "N310 S3000 M03", "M03 S3000"],
      ["spindle/stopped-for-swap", "confirm.stopped", "N290 T02 M06", "M05\nM94 P2 R1 Q60.0\nT02 M06"],
      [
        "spindle/at-speed",
        "confirm.at-speed",
        "N350 G01 Z-8.000 F200.0",
        "M94 P1 R1 Q20.0\nG01 Z-8.000 F200.0",
      ],
      ["spindle/ends-stopped", "confirm.stopped", "N400 M30", "M05\nM94 P2 R1 Q60.0\nM30"],
    ]);
    for (const error of errors) expect(error.fix).toBeTruthy();
  });

  it("are gone once they are corrected", async () => {
    const corrected = program
      .replace("N230 Y50.000", "N230 G01 Y50.000")
      .replace("N310 S3000 M03", "N310 M03 S3000\nN311 M94 P1 R1 Q20.0")
      .replace("N270 M05", "N270 M05\nN271 M94 P2 R1 Q60.0")
      .replace("N380 M09", "N380 M09\nN381 M05\nN382 M94 P2 R1 Q60.0");
    const { findings } = proveText(corrected, await ready("explicit-words"));
    expect(findings.filter((finding) => finding.severity === "error")).toEqual([]);
  });
});
