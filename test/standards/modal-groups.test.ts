import { describe, expect, test } from "vitest";
import type { Code, Codes } from "#dialect";
import { formatWith, readBlocks } from "../read/support.ts";
import { loadDialect } from "../support/dialects.ts";
import { shippedDialects } from "../support/examples.ts";
import { lasting, ngcGroups } from "./tables/modal-groups.ts";

const pairsOf = (codes: readonly string[]): [string, string][] =>
  codes.flatMap((a, index) => codes.slice(index + 1).map((b): [string, string] => [a, b]));

const pairs = ngcGroups.flatMap(({ group, codes }) =>
  pairsOf(codes).map(([a, b]): [string, string, string] => [group, a, b]),
);

describe("two words of one modal group in a block", () => {
  test.each(pairs)("%s: %s %s", (_group, a, b) => {
    const { findings } = readBlocks(`${a} ${b}`);
    // What ends cycles may stand beside a motion, which many programs have at their head; it is told as a matter of form.
    const rule = /^G[0-3]$/.test(a) && b === "G80" ? "block/g-words" : "read/modal-conflict";
    const conflict = findings.find((finding) => finding.rule === rule);
    expect(conflict?.message).toContain(b);
    expect(conflict?.message).toContain(a);
  });

  test.each([...new Set(ngcGroups.flatMap(({ codes }) => codes))])("%s twice", (code) => {
    expect(readBlocks(`${code} ${code}`).rules).toContain("read/modal-conflict");
  });

  test("the first of the two counts", () => {
    expect(readBlocks("G54 G55").lines).toEqual(["work-offset number=1"]);
  });
});

describe("words of different modal groups in a block do not conflict", () => {
  const firsts = ngcGroups.filter(({ group }) => !group.includes(",")).map(({ codes }) => codes[0]);

  test.each(pairsOf(firsts))("%s %s", (a, b) => {
    expect(readBlocks(`${a} ${b}`).rules).not.toContain("read/modal-conflict");
  });
});

describe("a code stays until another of its group", () => {
  test.each(lasting)("group $group: $codes", ({ before, codes, probe }) => {
    // Blocks of the other groups, none of which ends what was said.
    const others = "G64\nM8\nM48\nG4 P1";
    const blocks = codes.flatMap(([code]) => [code, others, probe, others, "G4 P2"]);
    const { lines } = readBlocks(`${before}\n${blocks.join("\n")}`);
    const shown = lines.filter((line) => codes.some(([, wanted]) => line === wanted));
    // Each code is followed by its own line, and no line of another code stands before the next code.
    const order = shown.filter((line, index) => line !== shown[index - 1]);
    expect(order).toEqual(codes.map(([, line]) => line));
  });
});

/** Codes of a dialect by the groups of Table 4 that any dialect may have. */
const groupsOf = ({
  modes,
  compensation,
  ...codes
}: Codes): Record<string, readonly (Code | null | undefined)[]> => ({
  motion: [codes.rapid, codes.line, codes.arcCw, codes.arcCcw, ...Object.values(codes.cycles)],
  plane: Object.values(modes.plane),
  distance: Object.values(modes.distance),
  "feed mode": Object.values(modes["feed-mode"]),
  units: Object.values(modes.units),
  compensation: Object.values(compensation),
  "length offset": [codes.lengthOn, codes.lengthOff],
  "cycle return": Object.values(codes.cycleReturn),
  "work offset": codes.workOffsets,
  path: Object.values(modes.path),
  stopping: [codes.stop, codes.optionalStop, codes.end],
  spindle: [codes.spindleCw, codes.spindleCcw, codes.spindleStop, codes.spindleOrient],
  // Two media may share a block where the dialect says so; one and the end of all may not.
  coolant: [Object.values(codes.coolant)[0], codes.coolantOff],
});

describe.each(shippedDialects)("under %s", (name) => {
  test("two codes of a group in a block are refused, whatever its codes are", async () => {
    const { format } = await loadDialect(name);
    let tried = 0;
    for (const [group, codes] of Object.entries(groupsOf(format.codes))) {
      const texts = codes.flatMap((code) => {
        if (!code) return [];
        const width = format.numbers.width[code.letter];
        const [whole, part] = String(code.value / 10).split(".");
        return [`${code.letter}${whole.padStart(width, "0")}${part === undefined ? "" : `.${part}`}`];
      });
      for (const [a, b] of pairsOf([...new Set(texts)])) {
        const { findings } = readBlocks(`${a} ${b}`, { format });
        const conflict = findings.find(({ rule }) => rule === "read/modal-conflict");
        expect(conflict?.message, group).toContain(a);
        expect(conflict?.message, group).toContain(b);
        tried++;
      }
    }
    expect(tried).toBeGreaterThan(10);
  });
});

test("mist and flood may both be on, but not by one block (Table 4 read; seen on the interpreter)", () => {
  expect(readBlocks("M7\nM8").rules).toEqual([]);
  expect(readBlocks("M7 M8").rules).toEqual(["read/modal-conflict"]);
});

test("more codes than a block can have", () => {
  const many = Array.from({ length: 30 }, (_, index) => `M${100 + index}`).join(" ");
  const { rules } = readBlocks(many, { format: formatWith({ mWords: 30 }) });
  expect(rules.filter((rule) => rule === "read/modal-conflict")).toHaveLength(6);
});
