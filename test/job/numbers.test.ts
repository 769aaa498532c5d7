import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { errorsOf, jobOf, jobWith, readAll } from "./jobs.ts";

/** The x of one line, in atoms, as the reader makes it of a number as written. */
function atoms(written: string, units: "mm" | "inch" = "mm"): number | undefined {
  const job = jobWith(`{"line":{"x":${written}},"feed":1}`).replace('"mm"', `"${units}"`);
  return readAll(job).rows[0]?.[1]?.place[0];
}

/** The same worked out with whole numbers of any size: 1 mm is 10^7 atoms, 1 inch 254 x 10^6, half away from zero. */
function exactly(written: string, units: "mm" | "inch" = "mm"): number {
  const [, sign, whole, fraction = "", exponent = "0"] =
    /^(-?)(\d+)(?:\.(\d+))?(?:[eE]([-+]?\d+))?$/.exec(written) ?? [];
  const perUnit = units === "mm" ? 10_000_000n : 254_000_000n;
  const power = Number(exponent) - fraction.length;
  const dividend = BigInt(whole + fraction) * perUnit * 10n ** BigInt(Math.max(0, power));
  const divisor = 10n ** BigInt(Math.max(0, -power));
  const size = (2n * dividend + divisor) / (2n * divisor);
  return sign === "-" ? 0 - Number(size) : Number(size);
}

describe("lengths come from the decimal digits themselves", () => {
  test.each([
    ["0", 0],
    ["-0", 0],
    ["-0.0", 0],
    ["-0.00000001", 0],
    ["12.345", 123_450_000],
    ["-3.210", -32_100_000],
    ["0.1", 1_000_000],
    ["0.0000001", 1],
    ["0.00000005", 1],
    ["-0.00000005", -1],
    ["0.00000004999999999999999999999999", 0],
    ["0.000000050000000000000000000000001", 1],
    ["1.00000014999999999999999", 10_000_001],
    ["1.00000015", 10_000_002],
    ["999999.9999999", 9_999_999_999_999],
    ["1000000", 10_000_000_000_000],
    ["1e3", 10_000_000_000],
    ["1E+3", 10_000_000_000],
    ["25e-1", 25_000_000],
    ["1e-400", 0],
    ["0e999", 0],
    ["123456789", undefined],
    ["1000000.0000001", undefined],
    ["-1000000.0000001", undefined],
    ["1e30", undefined],
    ["1e308", undefined],
  ])("%s mm", (written, expected) => {
    expect(atoms(written)).toBe(expected);
    // Object.is tells -0 from 0, and no coordinate may be -0.
    if (expected === 0) expect(Object.is(atoms(written), 0)).toBe(true);
  });

  test.each([
    ["1", 254_000_000],
    ["0.0001", 25_400],
    ["0.00000001", 3],
    ["0.000000001", 0],
    ["-0.000000005", -1],
    ["39370.0787401574", 10_000_000_000_000],
    ["39371", undefined],
  ])("%s inch", (written, expected) => {
    expect(atoms(written, "inch")).toBe(expected);
  });

  test("as exact arithmetic has them, whatever the number of digits", () => {
    const digits = (most: number): fc.Arbitrary<string> =>
      fc
        .array(fc.constantFrom(..."0123456789"), { minLength: 1, maxLength: most })
        .map((list) => list.join(""));
    const written = fc
      .tuple(fc.boolean(), fc.nat(999_999), fc.option(digits(12)), fc.option(fc.integer({ min: -9, max: 0 })))
      .map(([minus, whole, fraction, exponent]) =>
        [
          minus ? "-" : "",
          whole,
          fraction === null ? "" : `.${fraction}`,
          exponent === null ? "" : `e${exponent}`,
        ].join(""),
      );
    fc.assert(
      fc.property(written, fc.constantFrom("mm" as const, "inch" as const), (number, units) => {
        const expected = exactly(number, units);
        expect(atoms(number, units)).toBe(Math.abs(expected) > 1e13 ? undefined : expected);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("every other quantity is a whole number of its base unit", () => {
  test("of the head", () => {
    const job = jobOf('{"rapid":{"x":0,"y":0}}', '"tolerance":0.01,"clearance":-0.5,').replace(
      '"diameter":6',
      '"diameter":6.35,"maxRpm":24000.5,"maxFeed":2400.25,"tipAngle":117.5,"life":1.5,"cornerRadius":0,"lead":1.27',
    );
    const { job: head } = readAll(job);
    expect(head?.clearance).toBe(150_000_000);
    expect(head?.tools[0]).toMatchObject({
      diameter: 63_500_000,
      maxRpm: 24_000_500,
      maxFeed: 24_002_500_000,
      tipAngle: 117_500_000,
      life: 90_000_000,
      cornerRadius: 0,
      lead: 12_700_000,
    });
    expect(head?.operations[0]).toMatchObject({
      clearance: -5_000_000,
      tolerance: 100_000,
      spindle: { rpm: 1_000_000, direction: "cw" },
    });
  });

  test("of moves", () => {
    const { rows } = readAll(
      jobWith('{"line":{"c":-720.0000005},"feed":0.5},{"dwell":0.0000015},{"spindle":{"rpm":0.0005}}'),
    );
    expect(rows[0][1]).toMatchObject({ rotary: [0, 0, -720_000_001], feed: 5_000_000 });
    expect(rows[0][2].aside).toEqual({ kind: "dwell", time: 2 });
    expect(rows[0][3].aside).toEqual({ kind: "spindle", rpm: 1 });
  });

  test("of feeds in each mode and unit", () => {
    const feed = (mode: string, units: string): number | undefined =>
      readAll(jobWith('{"line":{"x":1},"feed":12.5}', `"feedMode":"${mode}",`).replace('"mm"', `"${units}"`))
        .rows[0]?.[1]?.feed;
    expect(feed("per-minute", "mm")).toBe(125_000_000);
    expect(feed("per-minute", "inch")).toBe(3_175_000_000);
    expect(feed("per-revolution", "inch")).toBe(3_175_000_000);
    expect(feed("inverse-time", "inch")).toBe(12_500_000);
  });

  test("and one that rounds to nothing where it must be above 0 is refused", () => {
    for (const job of [
      jobWith('{"line":{"x":1},"feed":0.00000001}'),
      jobWith('{"spindle":{"rpm":0.0001}}'),
      jobOf('{"rapid":{"x":0,"y":0}}', '"tolerance":0.00000001,'),
    ])
      expect(errorsOf(readAll(job)).map(({ rule }) => rule)).toEqual(["job/range"]);
  });
});
