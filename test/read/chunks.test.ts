import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { format, machine } from "./formats.ts";
import { formatWith, head, readText } from "./support.ts";
import { read } from "#read";

const program = `(PLATE, 1 OF 2)
${head}
N10 T1 M6
S12000 M3
(MSG, LOOK)
G54
G0 X10 Y-2.5
G43 Z15 H1
G1 Z-2 F300
X20 (to the right) Y30.125
/G2 X30 Y30.125 I5 J0
G99 G81 X1 Y2 Z-5 R2 F100
X3
G80
X5 G0 #1
M9

M5
M2
`;

describe("a text reads the same however it is cut", () => {
  for (const lineEnd of ["\n", "\r\n", "\r"] as const) {
    const text = program.replaceAll("\n", lineEnd);
    const whole = readText(text, { format: formatWith({ lineEnd }) });
    test.each([1, 2, 3, 4, 5, 6, 7, 64])(`${JSON.stringify(lineEnd)} in chunks of %d bytes`, (chunk) => {
      expect(readText(text, { format: formatWith({ lineEnd }), chunk })).toEqual(whole);
      expect(
        readText(text.slice(0, -lineEnd.length), { format: formatWith({ lineEnd }), chunk }).rows,
      ).toEqual(whole.rows);
    });
  }

  test("and whichever bytes it has", () => {
    const piece = fc.constantFrom(
      "G1",
      "G0",
      "X",
      "Y1",
      "Z-2.5",
      "F100",
      " ",
      "\n",
      "\r",
      "\r\n",
      "(",
      ")",
      "(MSG,A)",
      "%",
      "/",
      ";",
      "#1",
      "M2",
      "M6",
      "T1",
      "O1",
      "N5",
      "[",
      "G81",
      "R2",
      "I1",
      "é",
      "\u0000",
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 60 }), fc.integer({ min: 1, max: 7 }), (pieces, chunk) => {
        const text = pieces.join("");
        expect(readText(text, { chunk })).toEqual(readText(text));
      }),
      { numRuns: 300 },
    );
  });

  test("bytes of any kind are findings, never a fault", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const { findings } = readText(bytes);
        for (const { place } of findings) expect(place?.offset).toBeLessThanOrEqual(bytes.length);
      }),
      { numRuns: 500 },
    );
  });
});

describe("batches", () => {
  test("a program longer than a batch comes in several, and is all there", () => {
    const count = 20_000;
    const lines = Array.from({ length: count }, (_, index) => `X${index % 7}.${index % 10}`);
    const bytes = new TextEncoder().encode(`${head}\nG0\n${lines.join("\n")}\nM2\n`);
    let rows = 0;
    let batches = 0;
    for (const batch of read([bytes], format, machine, {}, () => undefined)) {
      expect(batch.count).toBeLessThanOrEqual(batch.kind.length);
      rows += batch.count;
      batches++;
    }
    expect(rows).toBe(count + 6 + 1);
    expect(batches).toBe(5);
  });

  test("rotary columns come with the first rotary word, and what was read before keeps its rows", () => {
    const text = `${head}\nG0 X1\nX2 A90\nX3\nM2\n`;
    const places = readText(text)
      .rows.filter(({ step }) => !step)
      .map(({ place }) => place.map((value) => value / 1e6));
    expect(places).toEqual([
      [10, 0, 0, 0, 0, 0],
      [20, 0, 0, 90, 0, 0],
      [30, 0, 0, 90, 0, 0],
    ]);
  });
});

describe("lines without end", () => {
  /** A text of a gigabyte that is never held whole: it must not be pulled whole either. */
  function* endless(byte: string, counter: { chunks: number }): Generator<Uint8Array> {
    yield new TextEncoder().encode(`${head}\n`);
    const chunk = new TextEncoder().encode(byte.repeat(65_536 / byte.length));
    for (; counter.chunks < 16_384; counter.chunks++) yield chunk;
  }

  test.each(["X", "1", " ", "(", "X1 "])("of %j are refused soon", (byte) => {
    const counter = { chunks: 0 };
    const rules: string[] = [];
    for (const _ of read(endless(byte, counter), format, machine, {}, ({ rule }) => rules.push(rule)));
    expect(rules.at(-1)).toBe("read/encoding");
    expect(counter.chunks).toBeLessThan(4);
  });

  test("65,536 bytes are read, one more is refused", () => {
    const line = (length: number): string => `(${"A".repeat(length - 2)})`;
    const loose = formatWith({
      longest: 0,
      comments: { style: "parentheses", longest: 100_000, place: "anywhere" },
    });
    for (const chunk of [1000, 65_536, 200_000]) {
      expect(readText(`${head}\n${line(65_536)}\nM2\n`, { format: loose, chunk }).rules).toEqual([]);
      expect(readText(`${head}\n${line(65_537)}\nM2\n`, { format: loose, chunk }).rules).toEqual([
        "read/encoding",
      ]);
    }
  });
});

describe("the plain scanner and the careful one", () => {
  /** A comment at the end sends a line to the careful scanner, and changes nothing else. */
  test("give the same rows", () => {
    const word = fc.tuple(
      fc.constantFrom(..."XYZABCIJKRFPQST"),
      fc.integer({ min: -99_999, max: 99_999 }),
      fc.integer({ min: 0, max: 4 }),
    );
    const block = fc.tuple(
      fc.constantFrom("", "G0 ", "G1 ", "G2 ", "G17 G3 ", "G91 ", "G90 G81 ", "G80 ", "N7 G1 "),
      fc.uniqueArray(word, { maxLength: 5, selector: ([letter]) => letter }),
    );
    const order = format.order.join("");
    fc.assert(
      fc.property(fc.array(block, { maxLength: 20 }), (blocks) => {
        const lines = blocks.map(([codes, words]) => {
          const sorted = [...words].sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
          return (
            codes +
            sorted.map(([letter, value, point]) => letter + (value / 10 ** point).toFixed(point)).join(" ")
          ).trim();
        });
        const plain = readText(`${head}\n${lines.join("\n")}\nM2\n`);
        const careful = readText(`${head}\n${lines.map((line) => `${line} ()`).join("\n")}\nM2\n`);
        expect(careful.lines).toEqual(plain.lines);
        expect(careful.rules).toEqual(plain.rules);
      }),
      { numRuns: 300 },
    );
  });
});
