import { expect, test } from "vitest";
import type { Layout, Located } from "#report";
import { createPaint, findingsText, programText } from "#report";

const plain: Layout = { width: 80, paint: createPaint(false) };

const located: Located = {
  rule: "spindle/at-speed",
  severity: "error",
  message:
    "The tool feeds into the work before the spindle is confirmed at 12000 rpm: there is no wait and no dwell since its start.",
  fix: "Say in the dialect how the speed is confirmed, such as `confirm: { at-speed: { wait: at-speed, timeout: 10 s } }`.",
  corrected: "N40 M94 P4 R1 Q10\nN50 G01 Z-2.000 F300.0",
  file: "plate.tap",
  line: 41,
  column: 5,
  quote: { before: "N40 ", after: "G01 Z-2.000 F300.0", cutLeft: false, cutRight: false },
  origin: {
    key: "confirm.at-speed",
    file: "router.dialect.yaml",
    line: 33,
    text: "at-speed: { dwell: 2 * second }",
  },
};

test("a finding names rule, reason, place, way out and the line of the dialect", () => {
  expect(findingsText([located], plain).join("\n")).toBe(`\
error    spindle/at-speed
         The tool feeds into the work before the spindle is confirmed at 12000
         rpm: there is no wait and no dwell since its start.
  at     plate.tap:41:5
         41  N40 G01 Z-2.000 F300.0
                 ^
  fix    Say in the dialect how the speed is confirmed, such as \`confirm: {
         at-speed: { wait: at-speed, timeout: 10 s } }\`.
  write  N40 M94 P4 R1 Q10
         N50 G01 Z-2.000 F300.0
  key    confirm.at-speed, router.dialect.yaml:33
         33  at-speed: { dwell: 2 * second }
`);
});

test("no line is wider than the terminal, wherever the place is in a long line", () => {
  for (const width of [40, 80, 100]) {
    for (let left = 0; left < 300; left += 7) {
      const quote = {
        before: "a".repeat(left),
        after: "b".repeat(300 - left),
        cutLeft: left > 200,
        cutRight: true,
      };
      const lines = findingsText([{ ...located, corrected: "", quote }], { ...plain, width });
      const frame = lines.find((line) => line.includes("  41  ") || /^ {9}41 {2}/.test(line)) ?? "";
      const caret = lines[lines.indexOf(frame) + 1];
      expect([...frame].length).toBeLessThanOrEqual(width);
      expect(caret.trim()).toBe("^");
      expect(frame[caret.length - 1]).toBe("b");
    }
  }
});

test("what a file holds cannot steer the terminal", () => {
  const evil = "\u001b[2J\u0007\u202Etxt\u009b1m";
  const quote = { before: evil, after: evil, cutLeft: false, cutRight: false };
  const text = findingsText(
    [{ ...located, message: evil, fix: evil, file: evil, quote, corrected: evil }],
    plain,
  ).join("\n");
  // eslint-disable-next-line no-control-regex -- the point of the test
  expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
});

test("colour is an addition: without it the text is the same", () => {
  const coloured = findingsText([located], { ...plain, paint: createPaint(true) }).join("\n");
  expect(coloured).toContain("\u001b[1;31m");
  // eslint-disable-next-line no-control-regex -- takes the colours out again
  expect(coloured.replace(/\u001b\[[0-9;]*m/g, "")).toBe(findingsText([located], plain).join("\n"));
});

test("errors come first, and what is not shown in full is counted by rule", () => {
  const notes = Array.from({ length: 3 }, () => ({ ...located, severity: "note" as const }));
  const errors = Array.from({ length: 40 }, () => located);
  const lines = findingsText([...notes, ...errors], plain);
  expect(lines.filter((line) => line.startsWith("error    spindle"))).toHaveLength(25);
  expect(lines.join(" ")).toContain("15 more are not shown: spindle/at-speed (15).");
  expect(lines.findIndex((line) => line.startsWith("note"))).toBeGreaterThan(
    lines.findLastIndex((line) => line.startsWith("error")),
  );
});

test("where too many are to be shown, each rule is shown before any is shown again and again", () => {
  const many = Array.from({ length: 60 }, (_, line) => ({ ...located, rule: "block/number", line }));
  const lines = findingsText([...many, { ...located, rule: "motion/known" }, ...many], plain);
  const heads = lines.filter((line) => /^error {4}\S+$/.test(line));
  expect(heads).toHaveLength(25);
  expect(heads.at(-1)).toBe("error    motion/known");
  expect(lines.join(" ")).toContain("96 more are not shown: block/number (96).");
});

test("a time is not broken between its numbers and their units", () => {
  const swaps = { automatic: 1, byHand: 0, saving: 1315, oneByHand: 180 };
  const time = {
    cutting: 1478,
    rapid: 109,
    dwell: 0,
    spindle: 0,
    swap: 125,
    total: 1935,
    operations: [],
    tools: [],
  };
  const rest = { basis: "feeds", stops: 3, optionalStops: 0, swaps, assumptions: [] } as const;
  const summary = { time: { ...time, ...rest }, assumptions: [] };
  const text = programText({ verdict: "proved", findings: [], output: "a.tap", summary }, plain).join("\n");
  expect(text.replaceAll(/\n +/g, " ")).toContain(
    "swaps 2 min 05 s; automatic swaps save 21 min 55 s against",
  );
  expect(text).toMatch(/swaps\n +2 min 05 s;/);
});

test("a program's text says where it is, its proof, what is assumed, and the cautions", () => {
  const text = programText(
    {
      verdict: "proved",
      findings: [],
      output: "out/plate.tap",
      summary: {
        bytes: 48123,
        blocks: 1512,
        moves: 1400,
        steps: 1912,
        tools: [1, 2],
        units: "mm",
        assumptions: ["homed"],
      },
      proof: { bytes: 48123, steps: 1912, sha256: "0123456789abcdef0123456789abcdef", facts: "f" },
    },
    plain,
  ).join("\n");
  expect(text).toContain("program    out/plate.tap");
  expect(text).toContain("48,123 bytes, 1,912 steps, sha256 0123456789abcdef\n");
  expect(text).toContain("read back and proved equal to the job");
  expect(text).toContain("  - homed");
  for (const word of ["above the work", "feed hold", "clamps", "safety control", "licensed", "Local codes"])
    expect(text.replace(/\n +/g, " ")).toContain(word);
  for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
});
