import { describe, expect, test } from "vitest";
import { postText } from "../../core/index.ts";
import { numberFormats, numbers } from "../read/formats.ts";
import { formatWith, readBlocks } from "../read/support.ts";
import { loadDialect } from "../support/dialects.ts";
import { dialectName, examples, shippedDialects } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { addresses, dinOrder, dwellLetters, dwellUnits } from "./tables/words.ts";

const rank = (letter: string): number => dinOrder.order.findIndex((letters) => letters.includes(letter));

/** Words of cycles and offsets, which the standard leaves open or has among the dimensions. */
const open = new Set("PQRHDLK");

/** Whether an order of letters is the standard's, but for those that it leaves open. */
const isDin = (letters: readonly string[]): boolean => {
  const ranks = letters.filter((letter) => !open.has(letter)).map(rank);
  return ranks.every((value, index) => value >= 0 && value >= (ranks[index - 1] ?? 0));
};

describe("order of words in a block", () => {
  test("is claimed by all dialects but one whose words act where they stand", async () => {
    const claims = await Promise.all(
      shippedDialects.map(async (name) => [name, isDin((await loadDialect(name)).format.order)]),
    );
    expect(Object.fromEntries(claims)).toEqual(
      Object.fromEntries(shippedDialects.map((name) => [name, name !== "hand-zeroed"])),
    );
  });

  const goldens = examples.flatMap(({ name, job, dialects }) =>
    dialects.map((dialect) => ({ name, job, dialect, short: dialectName(dialect) })),
  );

  test.each(goldens)("$name under $short complies", async ({ job, dialect }) => {
    const made = await ready(dialect);
    const { format } = made.dialect;
    const { program } = postText({ job }, made);
    if (program === undefined || !isDin(format.order)) return;
    const blocks = program
      .split(format.lineEnd)
      .map((block) => block.replace(/\(.*?\)|[*%]/g, "").trim())
      // A wait is the dialect's own code with its words behind it, a program number is a block of its own, and a start may stand
      // before its speed and a change before its tool where the dialect says so.
      .filter((block) => block !== "" && !/M9[0-9]|^O/.test(block))
      .filter((block) => format.spindle?.order !== "start-first" || !/M0?[34]\s?S/.test(block))
      .filter((block) => format.tools?.order !== "change-first" || !/M0?6\s?T/.test(block));
    expect(blocks.length).toBeGreaterThan(60);
    for (const block of blocks) {
      const letters = [...block.replace(/^:\d+/, "").matchAll(/[A-Z](?=[-+.\d])/g)].map(([letter]) => letter);
      expect(isDin(letters), block).toBe(true);
    }
  });
});

describe("address letters and their numbers", () => {
  // The table takes any decimals of a speed; the fixture takes whole ones.
  const fine = { ...numberFormats(), speed: numbers(1) };
  const rulesFor = (block: string, number: string): string[] =>
    readBlocks(block.replace("{n}", number), { format: formatWith({ numbers: fine }) }).rules.filter((rule) =>
      rule.startsWith("read/"),
    );

  test.each(addresses)("$letter, $meaning: $number", ({ block, number, sign }) => {
    expect(rulesFor(block, "2")).toEqual([]);
    if (number === "real") expect(rulesFor(block, "2.5")).toEqual([]);
    else expect(rulesFor(block, "2.5")).toContain("read/number");
    if (sign) expect(rulesFor(block, "-2")).toEqual([]);
    else expect(rulesFor(block, "-2")).not.toEqual([]);
  });

  test("letters that the table lacks are refused", () => {
    const known = new Set([...addresses.map(({ letter }) => letter), "G", "M", "N"]);
    for (const letter of "EUVW") {
      expect(known.has(letter)).toBe(false);
      expect(rulesFor(`G0 X1 ${letter}1`, ""), letter).toContain("read/unknown-word");
    }
  });
});

describe("dwells", () => {
  test.each(shippedDialects)(
    "under %s have a letter that a maker may choose, and a unit of the table",
    async (name) => {
      const { format, machine } = await loadDialect(name);
      if (format.dwell === undefined) throw new Error("no dwell");
      const { word, unit } = format.dwell;
      expect(dwellLetters).toContain(word);
      const row = dwellUnits.find((one) => one.unit === unit);
      const start = "G00 X1.";
      const { lines } = readBlocks(`${start}\nG04 ${word}2`, {
        format: { ...format, dwell: { ...format.dwell, blocks: "apart" } },
        machine,
      });
      const wanted =
        row?.revolutions === undefined
          ? `dwell time=${String(row?.time)}`
          : `dwell time=0 revolutions=${String(row.revolutions)}`;
      expect(lines).toContain(wanted);
    },
  );

  test("each unit of the table has a dialect", async () => {
    const units = await Promise.all(
      shippedDialects.map(async (name) => (await loadDialect(name)).format.dwell?.unit),
    );
    for (const { unit } of dwellUnits) expect(units).toContain(unit);
  });

  test.each(["G4", "G4 P-1", "G4 X1", "G4 F1"])(
    "%s is none under NISTIR 6556 3.5.4 (read; seen)",
    (block) => {
      expect(readBlocks(block).lines.filter((line) => line.startsWith("dwell"))).toEqual([]);
      expect(readBlocks(block).rules).not.toEqual([]);
    },
  );
});
