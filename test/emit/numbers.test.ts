import fc from "fast-check";
import { expect, test } from "vitest";
import { atomsPerUnit } from "#base";
import type { Format, NumberFormat } from "#dialect";
import { plain } from "./formats.ts";
import { batchOf, bytesOf, emitterOf, linesOf, rapid } from "./writing.ts";

/**
 * The reference: the same number by BigInt and text operations, from the definition of the format alone (dialect.ts,
 * standard forms of numbers after ISO 6983-1: implied point with leading or trailing zeros left out).
 */
function reference(cells: bigint, format: NumberFormat): string {
  const sign = cells < 0n ? "-" : format.plus ? "+" : "";
  const digits = (cells < 0n ? -cells : cells).toString();
  if (format.point === "never") {
    if (format.suppressed === "leading") return sign + digits;
    const all = digits.padStart(format.digits, "0");
    return sign + (format.suppressed === "none" ? all : all.replace(/(?<=.)0+$/u, ""));
  }
  if (format.decimals === 0) return sign + digits;
  const padded = digits.padStart(format.decimals + 1, "0");
  const whole = padded.slice(0, -format.decimals);
  let fraction = padded.slice(-format.decimals);
  if (format.trailingZeros !== "keep") fraction = fraction.replace(/0+$/u, "");
  if (format.trailingZeros === "one" && fraction === "") fraction = "0";
  const point = fraction !== "" || format.point === "always" ? "." : "";
  const start = !format.leadingZero && whole === "0" && fraction !== "" ? "" : whole;
  return sign + start + point + fraction;
}

function withLength(format: NumberFormat): Format {
  return {
    ...plain,
    numbers: {
      ...plain.numbers,
      length: { mm: format, inch: { ...format, decimals: Math.min(format.decimals, 6) } },
    },
  };
}

const pointed: NumberFormat[] = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((decimals) =>
  (["always", "when-needed"] as const).flatMap((point) =>
    (["keep", "drop", "one"] as const).flatMap((trailingZeros) =>
      [true, false].flatMap((leadingZero) =>
        [true, false].map((plus) => ({
          decimals,
          point,
          trailingZeros,
          leadingZero,
          plus,
          suppressed: "leading" as const,
          digits: 0,
          wholeDigits: 0,
        })),
      ),
    ),
  ),
);

const implied: NumberFormat[] = [0, 3, 7].flatMap((decimals) =>
  (["leading", "trailing", "none"] as const).flatMap((suppressed) =>
    [true, false].map((plus) => ({
      decimals,
      point: "never" as const,
      trailingZeros: "keep" as const,
      leadingZero: true,
      plus,
      suppressed,
      digits: 14,
      wholeDigits: 0,
    })),
  ),
);

/** Values where digits, carries and the limit of 32 bits change, and any others. */
function cellsUpTo(most: number): fc.Arbitrary<number> {
  const edges = [
    0,
    1,
    9,
    10,
    99,
    100,
    999,
    1000,
    9999,
    12500,
    2 ** 31 - 1,
    2 ** 31,
    2 ** 31 + 1,
    2 ** 32,
    4294967296000,
    999999999999,
    1e12,
    1e13 - 1,
    1e13,
  ];
  const any = fc.oneof(
    fc.constantFrom(...edges.filter((edge) => edge <= most), most),
    fc.nat(100000),
    fc.maxSafeNat().map((value) => value % (most + 1)),
  );
  return fc.tuple(any, fc.boolean()).map(([value, negative]) => (negative && value !== 0 ? -value : value));
}

test.each([...pointed, ...implied].map((format) => [JSON.stringify(format), format] as const))(
  "prints like the reference: %s",
  async (_name, format) => {
    const emitter = await emitterOf(withLength(format));
    for (const units of ["mm", "inch"] as const) {
      const written = units === "mm" ? format : { ...format, decimals: Math.min(format.decimals, 6) };
      const grid = atomsPerUnit[units] / 10 ** written.decimals;
      fc.assert(
        fc.property(cellsUpTo(Math.floor(1e13 / grid)), (cells) => {
          const batch = batchOf([rapid({ x: 0 })]);
          batch.x[0] = cells * grid;
          const text = new TextDecoder().decode(
            bytesOf(emitter.emitUnproved([batch], { units, header: [], fragment: true })),
          );
          expect(text).toBe(`G0 X${reference(BigInt(cells), written)}\n`);
        }),
        { numRuns: 60 },
      );
    }
  },
);

test("a negative zero has no sign, and neither has what rounds to it", async () => {
  const emitter = await emitterOf(plain);
  const batch = batchOf([rapid({ x: 0, y: 0 })]);
  batch.x[0] = -0;
  batch.y[0] = -4;
  expect(
    new TextDecoder().decode(
      bytesOf(emitter.emitUnproved([batch], { units: "mm", header: [], fragment: true })),
    ),
  ).toBe("G0 X0 Y0\n");
});

test("a number with more digits than an implied point has places is a fault of ours", async () => {
  const format = withLength({ ...implied[2], digits: 4 });
  await expect(linesOf(format, [rapid({ x: 10000 })])).rejects.toThrow("numbers.digits");
});

/** The forms that the contract of the emitter names, worked by hand. */
test.each([
  [{ point: "always", trailingZeros: "drop" }, "X10. Y0.5 Z-0.05"],
  [{ point: "always", trailingZeros: "one" }, "X10.0 Y0.5 Z-0.05"],
  [{ point: "always", trailingZeros: "keep" }, "X10.000 Y0.500 Z-0.050"],
  [{ point: "when-needed", trailingZeros: "drop" }, "X10 Y0.5 Z-0.05"],
  [{ point: "when-needed", trailingZeros: "drop", leadingZero: false }, "X10 Y.5 Z-.05"],
  [{ point: "never", suppressed: "leading" }, "X10000 Y500 Z-50"],
  [{ point: "never", suppressed: "trailing", digits: 7 }, "X001 Y00005 Z-000005"],
  [{ point: "never", suppressed: "none", digits: 7, plus: true }, "X+0010000 Y+0000500 Z-0000050"],
] as const)("%j", async (changes, expected) => {
  const format = withLength({ ...plain.numbers.length.mm, ...changes });
  expect(await linesOf(format, [rapid({ x: 10, y: 0.5, z: -0.05 })])).toEqual([`G0 ${expected}`]);
});
