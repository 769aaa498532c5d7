import { describe, expect, it } from "vitest";
import type { Finding } from "#base";
import { inferDialect } from "#infer";
import { mostStudied } from "../../core/infer/program.ts";
import { seeded } from "../support/seeded.ts";
import { dialectLoader } from "../support/dialects.ts";
import { printProgram } from "./print-program.ts";
import { drawSteps } from "./steps.ts";
import { drawStyle } from "./style.ts";
import { inferFrom, programFile } from "./support.ts";

const hand = "G21 G90\nT1 M6\nS8000 M3\nG0 X0. Y0.\nZ5.\nG1 Z-1. F300\nX10.5\nY10.\nG0 Z5.\nM5\nM30\n";

function told(findings: readonly Finding[], severity: Finding["severity"]): string[] {
  return findings.filter((finding) => finding.severity === severity).map(({ rule }) => rule);
}

describe("what is no program", () => {
  it.each([
    ["an empty file", "", 0],
    ["blank lines", "\n\n\n", 0],
    ["prose", "Dear all,\nthe plate is ready.\nPlease come and fetch it.\n", 0],
    ["comments alone", "(PLATE)\n(NOTHING ELSE)\n", 0],
    ["numbers without codes", "X1. Y2.\nX3. Y4.\n", 0],
    ["variables and expressions alone", "#1=3\n#2=[#1*2]\nWHILE [#1 GT 0] DO1\nG1 X#1\nEND1\n", 0],
    ["a binary file", `${hand}\u0000\u0001\u0002`, hand.length],
    ["one endless line", "G1X1Y1".repeat(2000), 0],
  ])("%s", async (_name, text, offset) => {
    const { found, findings } = await inferFrom([text]);
    expect(found).toBeUndefined();
    const errors = findings.filter(({ severity }) => severity === "error");
    expect(errors.map(({ rule }) => rule)).toEqual(["dialect/not-a-program"]);
    expect(errors[0]?.place).toMatchObject({ source: "program", offset, file: "sample-1.nc" });
    expect(errors[0]?.fix).toBeTruthy();
  });

  it("a program of which a quarter is expressions", async () => {
    const lines = hand.trimEnd().split("\n");
    const { found, findings } = await inferFrom([[...lines, "#1=3", "#2=[#1*2]", "IF [#1 GT 2] GOTO 9", "#3=4"].join("\n")]); // prettier-ignore
    expect(found).toBeUndefined();
    expect(findings[0]?.message).toBe("4 of 15 lines are no blocks of letters and numbers.");
    expect(findings[0]?.place?.offset).toBe(hand.length);
  });

  it("one of two", async () => {
    const { found, findings } = await inferFrom([hand, "no program"]);
    expect(found).toBeUndefined();
    expect(findings.find(({ severity }) => severity === "error")?.place?.file).toBe("sample-2.nc");
  });
});

describe("doubtful programs", () => {
  it("mixed line ends are told with their lines", async () => {
    const lines = hand.split("\n");
    const mixed = lines.map((line, index) => line + (index === lines.length - 1 ? "" : index % 2 === 0 ? "\r\n" : "\n")).join(""); // prettier-ignore
    const { found, findings } = await inferFrom([mixed]);
    const doubt = findings.find(({ key }) => key === "file.line-end");
    expect(doubt).toMatchObject({ rule: "dialect/contradiction", severity: "warning" });
    expect(doubt?.message).toMatch(/crlf on 6, lf on 5 \(lines 2, 4, 6, 8, 10\)/);
    expect(found?.stated.map(({ key }) => key)).not.toContain("file.line-end");
  });

  it("one program in two dialects: told, and not settled", async () => {
    const tight = hand.replaceAll(" ", "").replaceAll("G0", "G00").replaceAll("G1 ", "G01 ").replaceAll("M5", "M05").replaceAll("M3\n", "M03\n").replaceAll("M6", "M06"); // prettier-ignore
    const { found, findings } = await inferFrom([hand.replace("M30\n", "") + tight]);
    const keys = findings.filter(({ rule }) => rule === "dialect/contradiction").map(({ key }) => key);
    expect(keys).toEqual(expect.arrayContaining(["blocks.separator", "numbers.code-width.G", "numbers.code-width.M"])); // prettier-ignore
    for (const finding of findings) expect(finding.place ?? finding.key).toBeDefined();
    const settled = found?.stated.map(({ key }) => key) ?? [];
    for (const key of keys) expect(settled).not.toContain(key);
  });

  it("small letters and expressions are told where they stand", async () => {
    const { findings } = await inferFrom([hand.replace("X10.5", "x10.5").replace("Y10.", "Y[#3*2]")]);
    const places = findings
      .filter(({ rule }) => rule === "dialect/inferred")
      .map(({ place }) => place?.offset);
    expect(places).toContain(hand.indexOf("X10.5"));
    expect(places).toContain(hand.indexOf("Y10."));
  });

  it("of 50 MB the beginning and the end are studied", { timeout: 120_000 }, async () => {
    const style = drawStyle(seeded(3));
    const once = printProgram(drawSteps(seeded(4)), style);
    const text = once.repeat(Math.ceil((50 << 20) / once.length));
    const before = performance.now();
    const findings: Finding[] = [];
    const found = await inferDialect({ programs: [programFile(text)], loader: dialectLoader(), name: "long" }, (finding) => findings.push(finding)); // prettier-ignore
    console.info(`50 MB: ${((performance.now() - before) / 1000).toFixed(1)} s`);
    expect(found).toBeDefined();
    expect(findings.map(({ message }) => message).join("\n")).toContain(
      `the first ${String(mostStudied.beginning >> 20)} MB and the last ${String(mostStudied.end >> 10)} kB`,
    );
    expect(performance.now() - before).toBeLessThan(90_000);
  });
});

describe("changed and made-up programs", () => {
  it("never throw, never hang, and always have a place", { timeout: 300_000 }, async () => {
    const rounds = Number(process.env.TAPEWRIGHT_INFER_FUZZ ?? 60);
    let slowest = 0;
    let inferred = 0;
    for (let round = 0; round < rounds; round++) {
      const random = seeded(9000 + round);
      const text = spoiled(printProgram(drawSteps(random), drawStyle(random)), random);
      const before = performance.now();
      const { found, findings } = await inferFrom([text]);
      slowest = Math.max(slowest, performance.now() - before);
      if (found) inferred++;
      else expect(told(findings, "error").length).toBeGreaterThan(0);
      for (const { place, key, rule, message } of findings)
        expect(place ?? key, `${String(round)} ${rule} ${message}`).toBeDefined();
    }
    console.info(
      `${String(rounds)} spoiled programs: ${String(inferred)} inferred, slowest ${slowest.toFixed(0)} ms`,
    );
    expect(slowest).toBeLessThan(20_000);
  });
});

/** Puts in, takes out and swaps bytes, words and lines; or makes a text of marks and letters. */
function spoiled(text: string, random: () => number): string {
  const marks = "GMXYZIJKRFSTHNOP%()/;:*#[]=+-. \t\r\n0123456789aé\u0007";
  const some = (): string => marks[Math.floor(random() * marks.length)];
  if (random() < 0.1) return Array.from({ length: 2000 }, some).join("");
  const characters = Array.from(text);
  for (let changes = 1 + Math.floor(random() * 200); changes > 0; changes--) {
    const at = Math.floor(random() * characters.length);
    const way = Math.floor(random() * 4);
    if (way === 0) characters[at] = some();
    else if (way === 1) characters.splice(at, 1 + Math.floor(random() * 8));
    else if (way === 2) characters.splice(at, 0, some());
    else characters.splice(at, 0, ...characters.slice(Math.floor(random() * characters.length)).slice(0, 40));
  }
  return characters.join("");
}
