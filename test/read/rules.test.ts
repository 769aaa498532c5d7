import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { format } from "./formats.ts";
import type { RuleCase } from "./rule-cases.ts";
import { formCases, meaningCases } from "./rule-cases.ts";
import { formatWith, readBlocks, readText } from "./support.ts";

describe("each rule by the smallest blocks that break it", () => {
  test.each(
    [...formCases, ...meaningCases].map((one): [string, string, RuleCase] => [one.rule, one.blocks, one]),
  )("%s: %j", (rule, blocks, { reading, on }) => {
    const { findings } = readBlocks(blocks, reading);
    const found = findings.filter((finding) => finding.rule === rule);
    expect(found.length).toBeGreaterThan(0);
    const text = textOf(blocks);
    const bytes = new TextEncoder().encode(
      text.slice(0, text.indexOf(blocks) + blocks.lastIndexOf(on ?? blocks)),
    );
    const here = found.find(({ place }) => place?.offset === bytes.length);
    expect(here?.place?.source).toBe("program");
    expect(here?.fix).toMatch(/\.$|[;*]$/);
    expect(here?.message).toMatch(/\.$/);
    if (rule.startsWith("block/")) expect(here?.key).toBeDefined();
  });

  test.each(formCases.map((one): [string, string, RuleCase] => [one.rule, one.blocks, one]))(
    "%s: the meaning of %j stays clear",
    (rule, blocks, { reading }) => {
      const { rules } = readBlocks(blocks, reading);
      expect(new Set(rules)).toEqual(new Set([rule]));
    },
  );
});

function textOf(blocks: string): string {
  return `G21 G17 G90 G94 G91.1 G98\n${blocks}\nM2\n`;
}

describe("the catalogue", () => {
  const folder = join(import.meta.dirname, "../../core/6-read");
  const rulesIn = (file: string, prefix: string): string[] => {
    const source = readFileSync(join(folder, file), "utf8");
    return [...source.matchAll(/(?:form|unclear)\(\s*"(?:read\/)?([a-z-]+)"/g)].map(
      ([, name]) => prefix + name,
    );
  };
  const catalogue = new Set([
    ...rulesIn("findings-form.ts", "block/"),
    ...rulesIn("findings-meaning.ts", "read/"),
  ]);

  /** Rules about the whole program, which framing.test.ts and modes.test.ts have cases for. */
  const elsewhere = [
    "block/end-code",
    "block/framing",
    "block/number",
    "block/section",
    "read/mode-unknown",
    "read/no-end",
  ];

  test("each rule has a case", () => {
    const cased = new Set([...formCases, ...meaningCases].map(({ rule }) => rule));
    expect([...cased, ...elsewhere].sort()).toEqual([...catalogue].sort());
  });
});

describe("words of unknown value", () => {
  test("the axis is lost, and told once", () => {
    const { lines, rules } = readBlocks("G0 X1 Y1\nG1 X#1 Y2 F100\nG1 Y3");
    expect(rules).toEqual(["read/variable"]);
    expect(lines).toEqual(["rapid x1 y1", "line y3 f100"]);
  });

  test("modes of the block still hold", () => {
    expect(readBlocks("G55 G1 X#1 F100").lines).toEqual(["work-offset number=2"]);
  });

  test("a block with an unknown G code moves nothing", () => {
    expect(readBlocks("G0 X1 Y1\nG12 X5\nY2")).toMatchObject({ lines: ["rapid x1 y1", "rapid x1 y2"] });
  });

  test("words beside an unknown M code are not told as unused", () => {
    expect(readBlocks("P1 Q2 M77").rules).toEqual(["read/unknown-code"]);
  });
});

test("a flood of one rule is told a hundred times, and then by number", () => {
  const { findings } = readBlocks(Array.from({ length: 5000 }, () => "X1 G0").join("\n"));
  expect(findings).toHaveLength(101);
  expect(findings.at(-1)?.message).toContain("4900 more");
});

test("extra codes that share a code differ by fixed words", () => {
  expect(readBlocks("M20 P7\nM20 P3\nM21 P3\nM93").lines).toEqual([
    "auxiliary action=release code=",
    "output number=3 on=true",
    "output number=3 on=false",
    "auxiliary action=opaque code=M93",
  ]);
});

test("an extra code whose fixed word has another value", () => {
  const only = format.extraCodes.filter(({ key }) => key === "idioms.release");
  const reading = { format: formatWith({ extraCodes: only }) };
  expect(readBlocks("M20 P7", reading).rules).toEqual([]);
  expect(readBlocks("M20 P3", reading)).toMatchObject({ lines: [], rules: ["read/unused-word"] });
  expect(readBlocks("M20", reading)).toMatchObject({ lines: [], rules: ["read/word-missing"] });
});

test("words of an idiom stand as the dialect file has them, whatever the order of blocks", () => {
  expect(readText(`${textOf("M94 P4 R1 Q10")}`).rules).toEqual([]);
});

test("a wait or an output whose code does not say which is undeclared, not guessed", () => {
  const bare = format.extraCodes
    .filter(({ meaning }) => meaning.kind !== "auxiliary")
    .map((one) => ({ ...one, words: {} }));
  const reading = { format: formatWith({ extraCodes: bare }) };
  expect(readBlocks("M94\nM20", reading)).toMatchObject({
    lines: [],
    rules: ["dialect/undeclared", "dialect/undeclared"],
  });
});
