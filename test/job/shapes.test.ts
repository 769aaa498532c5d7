import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jobWith, readAll } from "./jobs.ts";

/** So large a window that lines are read by the shape of those before, and one in which each is read with care. */
const byShape = { windowBytes: 1 << 16, rows: 4096 };
const withCare = { windowBytes: 64, rows: 4096 };

/** Near the end of the window nothing is read by its shape, so there is always more behind. */
const more = Array.from({ length: 60 }, () => '{"line":{"x":1,"y":2},"feed":5}').join(",\n");

function expectSame(moves: string, operation = ""): void {
  const job = jobWith(`${moves},${more}`, operation);
  expect(readAll(job, byShape)).toEqual(readAll(job, withCare));
}

/** How lines may look: the words, with or without feed, and the spaces between. */
const layouts = [
  (a: string, b: string) => `{"line":{"x":${a},"y":${b}}}`,
  (a: string, b: string) => `{"line":{"x":${a},"y":${b},"z":${a}}}`,
  (a: string, b: string) => `{ "line" : { "z" : ${b}, "x":${a} } }`,
  (a: string, b: string) => `{"line":{"y":${a}},"feed":1${b.replace(/^-/, "")}}`,
  (a: string, b: string) => `{"feed":2${b.replace(/^-/, "")},"line":{"x":${a}}}`,
  (a: string, b: string) => `{"line":{"x":${a},"a":${b}},"feed":7}`,
  (a: string) => `{"line":{"\\u0078":${a}}}`,
  (a: string) => `{"rapid":{"z":${a}}}`,
];

const plainNumber = fc.integer({ min: -9_999_999, max: 9_999_999 }).map((value) => String(value / 1000));

/** Numbers that the short way leaves alone, or must not take for something else. */
const oddNumbers = [
  ..."0 -0 -0.0 0.5 1e2 1.5E-3 01 -01 00 1. .5 - -.5 1.2.3 +1 --1 null 123456789 1234567890 9999999999".split(
    " ",
  ),
  ..."99999999999 2147483648 999999.999 1000000 -1000000.001 12345.6789012 0.0000001 0.00000001 1e300".split(
    " ",
  ),
  '"1"',
  "1 2",
  "1\u0000",
];

const lines = fc.array(
  fc
    .record({ layout: fc.nat(2), first: plainNumber, second: plainNumber })
    .map(({ layout, first, second }) => (layouts[layout] ?? layouts[0])(first, second)),
  { minLength: 4, maxLength: 30 },
);

describe("a line that looks like one before is read as if it did not", () => {
  test("whichever numbers it has", () => {
    const spoilt = fc.record({
      layout: fc.nat(layouts.length - 1),
      at: fc.nat(),
      odd: fc.constantFrom(...oddNumbers),
    });
    fc.assert(
      fc.property(lines, spoilt, fc.constantFrom(",", ",\n", " , "), (list, { layout, at, odd }, joint) => {
        const place = at % list.length;
        const odds = [(layouts[layout] ?? layouts[0])("3", "4"), (layouts[layout] ?? layouts[0])(odd, odd)];
        const moves = [...list.slice(0, place), ...odds, ...list.slice(place)];
        expectSame(`{"line":{"x":1,"y":1},"feed":100}${joint}${moves.join(joint)}`);
      }),
      { numRuns: 500 },
    );
  });

  test.each(oddNumbers)("the number %s in each place of a line", (odd) => {
    for (const line of layouts)
      for (const moves of [line(odd, "4"), line("3", odd)])
        expectSame(`{"line":{"x":1,"y":1},"feed":100},${line("5", "6")},${line("7", "8")},${moves}`);
  });

  test.each(["0", "0.0", "-5", "-0", "00", "1e3", "1234567890"])("a feed of %s", (feed) => {
    const line = (value: string): string => `{"line":{"x":1},"feed":${value}}`;
    expectSame([line("100"), line("90"), line(feed), line("80")].join());
  });

  test("a line with digits in its keys", () => {
    const line = '{"line":{"\\u0078":1}}';
    expectSame(`{"line":{"x":1},"feed":100},${line},${line},${line.replace("78", "79")}`);
  });

  test("whichever byte of it is another", () => {
    const text = Array.from(
      { length: 12 },
      (_, index) => `{"line":{"x":${index / 8},"y":-${index}.5}${index % 4 === 1 ? ',"feed":80' : ""}}`,
    ).join(",\n");
    const byte = fc.constantFrom(...'{}[]",:\\0123456789.-+eE \n\txyzaflind\u0000');
    fc.assert(
      fc.property(fc.nat(text.length - 1), byte, (at, put) => {
        expectSame(`{"line":{"x":1},"feed":100},${text.slice(0, at)}${put}${text.slice(at + 1)}`);
      }),
      { numRuns: 400 },
    );
  });

  test("under inverse time, where no feed holds", () => {
    const moves = Array.from(
      { length: 40 },
      (_, index) => `{"line":{"x":${index}}${index < 20 ? ',"feed":2' : ""}}`,
    );
    expectSame(moves.join(), '"feedMode":"inverse-time",');
  });

  test("before the first feed, and before the first rapid", () => {
    expectSame('{"line":{"x":1}},{"line":{"x":2}},{"line":{"x":3}}');
  });
});
