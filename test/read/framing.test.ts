import { describe, expect, test } from "vitest";
import { formatWith, head, readText } from "./support.ts";

const percent = formatWith({ delimiter: "percent" });
const numbered = formatWith({ programNumber: { letter: "O", digits: 4, from: 1, to: 7999 } });
const body = `${head}\nG0 X1\nM2\n`;

test("a program that begins with motion begins all the same", () => {
  expect(readText("G0 X1\nM2\n").lines).toEqual(["program-start number=0", "rapid x1", "program-end"]);
});

describe("delimiters", () => {
  test("a % line first and last", () => {
    const { lines, rules } = readText(`%\n${body}%\n`, { format: percent });
    expect(rules).toEqual([]);
    expect(lines[0]).toBe("program-start number=0");
    expect(lines.slice(-2)).toEqual(["rapid x1", "program-end"]);
  });

  test.each([
    ["missing at the head", `${body}%\n`],
    ["missing at the end", `%\n${body}`],
    ["with a name", `%PLATE\n${body}%\n`],
    ["behind a comment (NISTIR 6556 3.2.2)", `(PLATE)\n%\n${body}%\n`],
  ])("%s", (_name, text) => {
    expect(readText(text, { format: percent }).rules).toEqual(["block/framing"]);
  });

  test("where the dialect has none", () => {
    expect(readText(`%\n${body}%\n`).rules).toEqual(["block/framing"]);
  });

  test("blank lines and comments around them", () => {
    expect(readText(`\n%\n(PLATE)\n\n${body}\n%\n\n(END)\n`, { format: percent }).rules).toEqual([]);
  });
});

describe("program numbers", () => {
  test("O, : and %", () => {
    for (const [letter, delimiter] of [
      ["O", "none"],
      [":", "none"],
      ["%", "none"],
    ] as const) {
      const format = formatWith({ delimiter, programNumber: { letter, digits: 4, from: 1, to: 7999 } });
      const { lines, rules } = readText(`${letter}0123\n${body}`, { format });
      expect(rules).toEqual([]);
      expect(lines[0]).toBe("program-start number=123");
    }
  });

  test("one that stands before the % line is leader, and not read", () => {
    const format = formatWith({ delimiter: "percent", programNumber: numbered.programNumber });
    const { lines, rules } = readText(`O0123\n%\n${body}%\n`, { format });
    expect(rules).toContain("block/framing");
    expect(lines[0]).toBe("program-start number=0");
  });

  test("% with the number as the delimiter, too", () => {
    const format = formatWith({
      delimiter: "percent",
      programNumber: { letter: "%", digits: 4, from: 1, to: 7999 },
    });
    expect(readText(`%0123\n${body}%\n`, { format })).toMatchObject({ rules: [] });
  });

  test.each([
    ["missing", body, numbered],
    ["out of range", `O8000\n${body}`, numbered],
    [
      "with another sign",
      `O123\n${body}`,
      formatWith({ programNumber: { letter: ":", digits: 4, from: 1, to: 7999 } }),
    ],
    ["where the dialect has none", `O123\n${body}`, formatWith({})],
  ])("%s", (_name, text, format) => {
    expect(readText(text, { format }).rules).toEqual(["block/framing"]);
  });

  test("with a comment behind it, and behind the delimiter", () => {
    const format = formatWith({ delimiter: "percent", programNumber: numbered.programNumber });
    const { lines, rules } = readText(`%\nO0123 (PLATE)\n${body}%\n`, { format });
    expect(rules).toEqual([]);
    expect(lines[0]).toBe("program-start number=123");
  });

  test("a second one is the label of a subprogram", () => {
    expect(readText(`O1\nO2\n${body}`, { format: numbered }).rules).toEqual(["read/subprogram"]);
  });
});

describe("block numbers", () => {
  const all = formatWith({ blockNumber: { on: "all", start: 10, step: 10, to: 9999, width: 0 } });

  test("on all blocks, comments and delimiters apart", () => {
    expect(readText("(HEAD)\nN10 G90 G21\nN20 G0 X1\n(MIDDLE)\nN7 M2\n", { format: all }).rules).toEqual([]);
    expect(readText("N10 G90 G21\nG0 X1\nN30 M2\n", { format: all }).rules).toEqual(["block/number"]);
  });

  test("on none", () => {
    const { rules } = readText("G90 G21\nN20 G0 X1\nM2\n", { format: formatWith({ blockNumber: null }) });
    expect(rules).toEqual(["block/number"]);
  });
});

describe("the end", () => {
  test("nothing but blank lines, comments and delimiters stands behind it", () => {
    expect(readText(`${body}\n(c)\n \n`).rules).toEqual([]);
    expect(readText(`${body}G0 X2\nM30\n`).rules).toEqual(["read/after-end"]);
    expect(readText(`${body}G0 X2\n`).lines.at(-1)).toBe("program-end");
  });

  test.each([
    ["no end code", `${head}\nG0 X1\n`],
    ["nothing at all", ""],
    ["comments alone", "(c)\n"],
  ])("%s", (_name, text) => {
    const { lines, rules } = readText(text);
    expect(rules).toContain("read/no-end");
    expect(lines[0]).toBe("program-start number=0");
  });

  test.each(["M30", "M030"])("%s ends a program of a dialect that ends by M2, and is told", (code) => {
    const { lines, rules } = readText(`${head}\nG0 X1\n${code}\n`);
    expect(rules).toContain("block/end-code");
    expect(rules).not.toContain("read/no-end");
    expect(lines.at(-1)).toBe("program-end");
  });

  test("a last % without an end code", () => {
    expect(readText(`%\n${head}\nG0 X1\n%\n`, { format: percent }).rules).toEqual(["read/no-end"]);
  });

  test("the place of a missing end is the end of the text", () => {
    const text = `${head}\nG0 X1\n`;
    expect(readText(text).findings[0].place).toEqual({ source: "program", offset: text.length });
  });
});

describe("line ends", () => {
  test("CR LF and CR where the dialect has them", () => {
    for (const lineEnd of ["\r\n", "\r"] as const) {
      const { rules, lines } = readText(body.replaceAll("\n", lineEnd), { format: formatWith({ lineEnd }) });
      expect(rules).toEqual([]);
      expect(lines).toEqual(readText(body).lines);
    }
  });

  test("others are told once, as a warning", () => {
    const { findings, lines } = readText(body.replaceAll("\n", "\r\n"));
    expect(findings.map(({ rule, severity }) => [rule, severity])).toEqual([["block/framing", "warning"]]);
    expect(lines).toEqual(readText(body).lines);
  });

  test("a carriage return alone may not end a block at all", () => {
    expect(readText(body.replaceAll("\n", "\r")).rules).toEqual(["read/encoding"]);
  });

  test("a last line without its end", () => {
    const text = body.slice(0, -1);
    expect(readText(text).findings.map(({ rule, severity }) => [rule, severity])).toEqual([
      ["block/framing", "warning"],
    ]);
    expect(readText(text, { format: formatWith({ lastLineEnd: false }) }).rules).toEqual([]);
    expect(readText(text).lines).toEqual(readText(body).lines);
  });
});

test("a byte order mark", () => {
  const { rules, lines } = readText(`\ufeff${body}`);
  expect(rules).toEqual(["read/encoding"]);
  expect(lines).toEqual(readText(body).lines);
});

test("a fragment has no start and no end", () => {
  const { lines, rules } = readText("G54\nM3 S10\n", { format: percent, options: { fragment: true } });
  expect(rules).toEqual(["block/spindle-order"]);
  expect(lines).toEqual(["work-offset number=1", "spindle-speed rpm=10000", "spindle-start direction=cw"]);
});
