import { describe, expect, test } from "vitest";
import type { NumberFormat } from "#dialect";
import { resolveText } from "./findings.ts";

/** Number formats of a leaf of rs274ngc with these lines. */
async function numbers(
  lines: string,
): Promise<NonNullable<Awaited<ReturnType<typeof resolveText>>["dialect"]>["format"]["numbers"]> {
  const outcome = await resolveText(`dialect: own\nextends: rs274ngc\n${lines}\n`);
  expect(outcome.lines).toEqual([]);
  return outcome.dialect!.format.numbers;
}

const plain: NumberFormat = {
  decimals: 3,
  point: "when-needed",
  trailingZeros: "drop",
  leadingZero: true,
  plus: false,
  suppressed: "leading",
  digits: 0,
  wholeDigits: 0,
};

describe("number formats", () => {
  test("what holds for all holds for each address, with its own decimals", async () => {
    const found = await numbers("numbers: { leading-zero: drop, length: { mm: 4 } }");
    expect(found.length).toEqual({
      mm: { ...plain, leadingZero: false, decimals: 4 },
      inch: { ...plain, leadingZero: false, decimals: 4 },
    });
    expect(found.speed).toEqual({ ...plain, leadingZero: false, decimals: 0 });
    expect(found.feedPerRevolution).toBeUndefined();
    expect(found.inverseTime?.decimals).toBe(4);
  });

  test("an address may differ from the rest", async () => {
    const found = await numbers(
      "numbers: { dwell: { decimals: 1, point: always, trailing-zeros: one }, feed-per-minute: { mm: 0, point: never, suppressed-zeros: leading } }",
    );
    expect(found.dwell).toEqual({ ...plain, decimals: 1, point: "always", trailingZeros: "one" });
    expect(found.feedPerMinute.mm.point).toBe("never");
    expect(found.length.mm.point).toBe("when-needed");
  });

  test("a plus sign goes with a direction", async () => {
    const found = await numbers("numbers: { plus: yes }");
    expect([found.length.mm.plus, found.arcCentre.inch.plus, found.angle.plus]).toEqual([true, true, true]);
    expect([found.speed.plus, found.dwell.plus, found.feedPerMinute.mm.plus]).toEqual([false, false, false]);
  });

  test("an implied point counts zeros in numbers with decimals alone", async () => {
    const found = await numbers("numbers: { point: never, suppressed-zeros: trailing, digits: 7 }");
    expect(found.length.mm).toMatchObject({
      point: "never",
      suppressed: "trailing",
      digits: 7,
      trailingZeros: "keep",
    });
    expect(found.speed).toMatchObject({ point: "never", suppressed: "leading", digits: 0 });
  });

  test("no zeros left out is a way to write an implied point, too", async () => {
    const found = await numbers(
      "numbers: { point: never, suppressed-zeros: none, digits: 7, dwell: { decimals: 2, suppressed-zeros: leading } }",
    );
    expect(found.length.mm).toMatchObject({ point: "never", suppressed: "none", digits: 7 });
    expect(found.dwell).toMatchObject({ point: "never", suppressed: "leading" });
  });
});

test("increments are whole base units: 0.001 mm is 10,000 and 0.0001 inch 25,400", async () => {
  const { dialect } = await resolveText("dialect: own\nextends: rs274ngc\n");
  expect(dialect?.capabilities).toMatchObject({
    lengthGrid: { mm: 10_000, inch: 25_400 },
    angleGrid: 1000,
    feedPerMinuteGrid: { mm: 1_000_000, inch: 2_540_000 },
    inverseTimeGrid: 100,
    speedGrid: 1000,
    dwellGrid: 10_000,
  });
});

test("a file with a byte order mark and carriage returns", async () => {
  const { dialect, lines } = await resolveText(
    "\ufeffdialect: own\r\nextends: rs274ngc\r\nspindle: { order: start-first }\r\n",
  );
  expect(lines).toEqual([]);
  expect(dialect?.format.spindle?.order).toBe("start-first");
});
