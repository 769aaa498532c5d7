import { describe, expect, it } from "vitest";
import { takeApart } from "../../core/infer/program.ts";
import { observe } from "../../core/infer/rules.ts";
import { createSample } from "../../core/infer/sample.ts";
import { inferFrom, mustInfer, programFile } from "./support.ts";

/** What the rules settle in a program, by key; a value that depends on what is inherited is left out. */
function settledIn(...texts: readonly string[]): Record<string, unknown> {
  const sample = createSample(
    texts.map((text, index) => takeApart(programFile(text, `${String(index)}.nc`))),
  );
  const found: Record<string, unknown> = {};
  for (const one of observe(sample))
    if (one.kind === "settled" && typeof one.value !== "function" && !(one.key in found))
      found[one.key] = one.value;
  return found;
}

const head = "G21 G90 G17\nT1 M6\nS8000 M3\n";

describe("what a few blocks show, and what they leave open", () => {
  it.each([
    ["a feed that is said again behind a rapid only", "G0 X0. Y0.\nG1 Z-1. F300.\nX5.\nG0 Z2.\nG1 Z-1. F300.\n", "modal.feed", "after-rapid"], // prettier-ignore
    ["a feed that is never said again", "G0 X0. Y0.\nG1 Z-1. F300.\nX5.\nG0 Z2.\nG1 Z-1.\n", "modal.feed", "modal"], // prettier-ignore
    ["a motion word that is left out", "G1 X1. F100.\nX2.\nX3.\n", "modal.motion", "modal"],
    ["centres that count from the start", "G0 X10. Y0.\nG2 X0. Y-10. I-10. J0. F100.\n", "arc.form", "incremental-centre"], // prettier-ignore
    ["centres that are places", "G0 X10. Y0.\nG2 X0. Y-10. I0. J0. F100.\n", "arc.form", "absolute-centre"],
    ["numbers of three digits", "G0 X1.500\nX2.250\nX3.000\n", "numbers.length.mm", 3],
    ["a dwell with a part", "G4 P0.5\n", "dwell.unit", "s"],
    ["a dwell that would last for minutes", "G4 P1500\n", "dwell.unit", "ms"],
    ["a dwell of two of something", "G4 P2\n", "dwell.unit", undefined],
    ["one block with one G word", "G0 X1.\n", "blocks.g-words", "any"],
    [
      "a circle in one block",
      "G0 X10. Y0.\nG2 X10. Y0. I-10. J0. F100.\nX0. Y-10. I-10. J0.\n",
      "arc.full-circle",
      "yes",
    ],
    ["a circle in two", "G0 X10. Y0.\nG2 X-10. Y0. I-10. J0. F100.\nX10. Y0. I10. J0.\n", "arc.full-circle", "no"], // prettier-ignore
    ["levels that are places", "G0 X0. Y0. Z15.\nG81 X1. Y1. Z-5. R2. F100.\nX2.\n", "cycles.levels", "absolute"], // prettier-ignore
    ["levels that count from one another", "G0 X0. Y0. Z15.\nG81 X1. Y1. Z-7. R-13. F100.\nX2.\n", "cycles.levels", "relative"], // prettier-ignore
    ["levels that may be either", "G0 X0. Y0. Z15.\nG81 X1. Y1. Z-17. R-13. F100.\nX2.\n", "cycles.levels", undefined], // prettier-ignore
    ["whole numbers without a point, small ones", "G0 X1 Y2\nX3\nX4\nX5\nX6\nX7\nX8\nX9\n", "numbers.point", undefined], // prettier-ignore
    ["counts of least increments", "G0 X12500 Y20000\nX3000\nX4000\nX5000\nX6000\nX7000\nX8000\nX9000\n", "numbers.point", "never"], // prettier-ignore
    ["a retract in machine coordinates", "G53 G0 Z0.\n", "machine.retract.by", "machine-move"],
    ["a return by increments", "G91\nG28 Z0.\nG90\n", "machine.retract.intermediate", "incremental-zero"],
  ])("%s", (_name, text, key, value) => {
    expect(settledIn(`${head}${text}M30\n`)[key]).toEqual(value);
  });

  it("19 of 20 settle, and the one is told with its line; 18 of 20 do not", async () => {
    const lines = (odd: number): string =>
      Array.from({ length: 20 }, (_, index) => `G1 X${String(index)}.5${index < odd ? "" : " "}Y1.5`).join(
        "\n",
      );
    const told = async (odd: number) => {
      const { found, findings } = await inferFrom([`${lines(odd)}\nM30\n`], "rs274ngc");
      const doubt = findings.find(({ key }) => key === "blocks.separator");
      const own = [...(found?.stated ?? []), ...(found?.inherited ?? [])].find(({ key }) => key === "blocks.separator"); // prettier-ignore
      return [own?.value, doubt?.message.includes("lines 1")];
    };
    // Each block has two gaps, of which one can be at fault.
    expect(await told(2)).toEqual(["blank", true]);
    expect(await told(4)).toEqual([undefined, true]);
  });
});

describe("numbers otherwise than lengths", () => {
  it("a dwell without a point beside one with a point has no zeros, where lengths have one", async () => {
    const text = `${head}G4 P60\nG0 X1.0 Y2.5\nG4 P0.1\nG1 X2.5 Y3.0 F100.0\nG4 P1.5\nG0 X10.0 Y20.25\nM5\nM30\n`;
    const found = await mustInfer([text]);
    const dwells = found.stated.filter(({ key }) => key === "numbers.dwell").map(({ value }) => value);
    expect(dwells).toEqual([expect.objectContaining({ point: "when-needed", "trailing-zeros": "drop" })]);
  });
});

describe("several programs", () => {
  const program = (number: string, name: string): string =>
    `O${number}\n(SHOP MILL)\n(PART ${name}, MM)\n(FILE ${String(Number(number))})\n${head}G0 X1. Y2.5\nM30\n`;

  it("show which parts of the header vary", () => {
    expect(settledIn(program("0041", "LEFT PLATE"), program("0042", "COVER"))["idioms.header"]).toEqual([
      "SHOP MILL",
      "PART {{program}}, MM",
      "FILE {{number}}",
    ]);
    expect(settledIn(program("0041", "LEFT PLATE"))["idioms.header"]).toBeUndefined();
  });

  it("make a header of a dialect that holds together", async () => {
    const found = await mustInfer([program("0041", "LEFT PLATE"), program("0042", "COVER")]);
    expect(found.text).toContain("idioms:\n  header:");
  });
});

describe("what is never taken from a program", () => {
  it.each(["staged-tools", "hand-zeroed", "rs274ngc"])(
    "confirmations beside %s are a wait or a dwell, and unanswered",
    async (from) => {
      const { found } = await inferFrom(["G21\nS8000 M3\nG0 X1. Y2.5\nG1 X2.5 F100.\nM5\nM30\n"], from);
      expect(found?.dialect.unanswered).toEqual(expect.arrayContaining(["confirm.at-speed", "confirm.stopped"])); // prettier-ignore
      for (const name of ["at-speed", "stopped"] as const)
        expect(["wait", "dwell"]).toContain(found?.dialect.machine.confirm[name]?.by);
      // The reason that staged-tools gives for its standstill begins with M05, which is in the program.
      const asked = found?.asked.flatMap(({ keys }) => keys);
      expect(asked).toEqual(expect.arrayContaining(["confirm.at-speed", "confirm.stopped"]));
    },
  );

  it("a wait behind each start is told with the question, and settles nothing", async () => {
    const found = await mustInfer([`${head}G4 P5.5\nG0 X1. Y2.5\nM5\nM30\n`]);
    const question = found.asked.find(({ keys }) => keys.includes("confirm.at-speed"));
    expect(question?.ask).toContain("The programs have G4 P5.5 behind 1 of 1 starts.");
    expect(found.stated.map(({ key }) => key)).not.toContain("confirm.at-speed");
  });
});
