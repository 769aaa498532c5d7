import { expect, test } from "vitest";
import type { Format } from "#dialect";
import { code, explicit, plain } from "./formats.ts";
import { linesOf, mm } from "./writing.ts";

const within = (tolerance: number) => ({ kind: "path", value: "blend", tolerance: mm(tolerance) }) as const;
const blend = { kind: "path", value: "blend" } as const;
const inch = { kind: "units", value: "inch" } as const;

test("a tolerance stands beside the blended path, in a block of its own and in the units in force", async () => {
  const worded: Format = { ...plain, toleranceWord: "P" };
  expect(
    await linesOf(worded, [
      { kind: "plane", value: "xy" },
      within(0.02),
      { kind: "distance", value: "absolute" },
      blend,
      within(0.015),
      { kind: "path", value: "exact" },
      inch,
      within(0.01778),
    ]),
  ).toEqual(["G17", "G64 P0.02", "G90", "G64", "G64 P0.015", "G61", "G20", "G64 P0.0007"]);
  expect(await linesOf({ ...explicit, toleranceWord: "Q" }, [within(0.02)])).toEqual(["N10 G64 Q0.020"]);
});

test("it stands behind the word that the code has already", async () => {
  const modes = plain.codes.modes;
  const own = { ...code("G64"), word: { letter: "Q", digits: "1" } };
  const worded: Format = {
    ...plain,
    toleranceWord: "P",
    codes: { ...plain.codes, modes: { ...modes, path: { ...modes.path, blend: own } } },
  };
  expect(await linesOf(worded, [within(0.02), blend])).toEqual(["G64 P0.02 Q1", "G64 Q1"]);
});

test("without a word for it nothing is written", async () => {
  await expect(linesOf(plain, [within(0.02)])).rejects.toThrow("path.tolerance-word");
  const none = { ...plain.codes, modes: { ...plain.codes.modes, path: {} } };
  await expect(linesOf({ ...plain, toleranceWord: "P", codes: none }, [within(0.02)])).rejects.toThrow(
    "path.blend",
  );
});
