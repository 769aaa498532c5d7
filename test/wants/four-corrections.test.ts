import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { postText } from "../../core/index.ts";
import { weatherPlate } from "../support/examples.ts";
import { errorRules, ready } from "../support/ready.ts";

/*
 * The four corrections, each as a leaf of a shipped dialect: at most three lines, comments aside, and the program shows
 * what they change.
 */

const folder = resolve(import.meta.dirname, "../../dialects");
const shipped = (name: string): string => readFileSync(join(folder, `${name}.dialect.yaml`), "utf8");

/** A leaf of a shipped dialect; its program, and how many lines it takes beside its name. */
async function leaf(root: string, lines: readonly string[]): Promise<{ program: string; cost: number }> {
  const text = ["dialect: leaf", "title: A leaf", `extends: ${root}`, ...lines, ""].join("\n");
  const made = await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": text });
  const { outcome, program } = postText({ job: weatherPlate }, made);
  expect(errorRules(outcome.findings)).toEqual([]);
  return { program: program ?? "", cost: lines.length };
}

const machine = [
  "machine: { spindle: { min-rpm: 0, max-rpm: 24000, spin-up: 6 s, spin-down: 6 s, coast-down: 25 s, orient: no } }",
];
const bare = (program: string): string[] => program.split("\n").map((block) => block.replace(/^N\d+ /, ""));

describe("each correction costs at most three lines", () => {
  it("a motion word in every block, or only where it changes", async () => {
    const each = await leaf("rs274ngc", ["modal: { motion: each-block }"]);
    const changed = await leaf("explicit-words", ["modal: { motion: modal }"]);
    expect(Math.max(each.cost, changed.cost)).toBeLessThanOrEqual(3);
    const wordless = (program: string): number =>
      bare(program).filter((block) => /^[XYZ]-?[\d.]/.test(block)).length;
    expect(wordless(each.program)).toBe(0);
    expect(wordless(changed.program)).toBeGreaterThan(200);
  });

  it("the spindle word before its speed, or behind it, in one block or two", async () => {
    const starts = async (line: string): Promise<string[]> => {
      const { program } = await leaf("explicit-words", [line]);
      const blocks = bare(program);
      const at = blocks.findIndex((block) => /\bM03\b/.test(block));
      return blocks.slice(at - 1, at + 2).filter((block) => /\bM03\b|^S\d/.test(block));
    };
    expect(await starts("spindle: { order: start-first }")).toEqual(["M03 S6000"]);
    expect(await starts("spindle: { order: speed-first }")).toEqual(["S6000 M03"]);
    expect(await starts("spindle: { order: speed-first, blocks: apart }")).toEqual(["S6000", "M03"]);
  });

  it.each([
    ["by signal", ["confirm:", "  at-speed: { wait: at-speed, timeout: 8 s }"], /^M94 P1 R1 Q8/],
    [
      "by time",
      [...machine, "confirm:", "  at-speed: { dwell: spin_up * rpm / max_rpm + 0.5 * second }"],
      /^G04 P\d+$/,
    ],
    [
      "by the controller itself",
      ["confirm:", "  at-speed: { intrinsic: the drive holds the program until it is up to speed }"],
      /^(?!M94|G04)/,
    ],
  ] as const)("at speed confirmed %s", async (_way, lines, next) => {
    const { program, cost } = await leaf("explicit-words", lines);
    expect(cost).toBeLessThanOrEqual(3);
    const blocks = bare(program);
    for (const [index, block] of blocks.entries())
      if (block.startsWith("M03 S")) expect(blocks[index + 1]).toMatch(next);
  });

  it("works out the time to reach the speed: 6 s x 6000 / 24000 + 0.5 s = 2 s", async () => {
    const { program } = await leaf("explicit-words", [
      ...machine,
      "confirm:",
      "  at-speed: { dwell: spin_up * rpm / max_rpm + 0.5 * second }",
    ]);
    const blocks = bare(program);
    expect(blocks[blocks.indexOf("M03 S6000") + 1]).toBe("G04 P2000");
  });

  it.each([
    ["by signal", ["confirm:", "  stopped: { wait: stopped, timeout: 40 s }"], /^M94 P2 R1 Q40/],
    [
      "by time",
      [...machine, "confirm:", "  stopped: { dwell: coast_down * from_rpm / max_rpm + 0.5 * second }"],
      /^G04 P\d+$/,
    ],
    [
      "by the controller itself",
      ["confirm:", "  stopped: { intrinsic: M05 is done only when the spindle stands }"],
      /^(?!M94|G04)/,
    ],
  ] as const)("a stop confirmed %s", async (_way, lines, next) => {
    const { program, cost } = await leaf("explicit-words", lines);
    expect(cost).toBeLessThanOrEqual(3);
    const blocks = bare(program);
    for (const [index, block] of blocks.entries())
      if (block === "M05") expect(blocks[index + 1]).toMatch(next);
  });

  it("takes the stop from the old speed, and from the highest where it is unknown: 25 s x 1 + 0.5 s at the start", async () => {
    const { program } = await leaf("explicit-words", [
      ...machine,
      "confirm:",
      "  stopped: { dwell: coast_down * from_rpm / max_rpm + 0.5 * second }",
    ]);
    const blocks = bare(program);
    expect(blocks[blocks.indexOf("M05") + 1]).toBe("G04 P25500");
  });

  it.each(["at-speed", "stopped"])("leaving out the confirmation of %s is refused", async (name) => {
    const root = shipped("iso-6983")
      .replace(/^confirm:.*$/m, "")
      .replace("dialect: iso-6983", "dialect: root");
    const kept =
      name === "at-speed"
        ? "confirm: { stopped: { dwell: 60 s } }"
        : "confirm: { at-speed: { dwell: 20 s } }";
    const text =
      shipped("rs274ngc")
        .replace("extends: iso-6983", "extends: root.dialect.yaml")
        .replace("dialect: rs274ngc", "dialect: silent") + `\n${kept}\n`;
    const made = await ready("silent.dialect.yaml", {
      "silent.dialect.yaml": text,
      "root.dialect.yaml": root,
    });
    const { outcome } = postText({ job: weatherPlate }, made);
    expect(outcome.verdict).toBe("refused");
    expect(errorRules(outcome.findings)).toEqual(["dialect/undeclared"]);
    expect(outcome.findings.map((finding) => finding.key)).toContain(`confirm.${name}`);
  });
});
