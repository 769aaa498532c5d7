import { describe, expect, test } from "vitest";
import { rowsOf } from "../mutants/sequences/rows.ts";
import { meaningOf } from "../mutants/sequences/meaning.ts";
import { formatWith, readBlocks } from "../read/support.ts";
import { dialectName, examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { postText } from "../../core/index.ts";
import { read } from "#read";
import { executionOrder } from "./tables/order-of-execution.ts";
import { isoTiming, ngcAfterMotion } from "./tables/timing.ts";

/** The block from left to right and from right to left: the order of words means nothing (NISTIR 6556 3.3.6). */
const orders = [executionOrder, [...executionOrder].reverse()].map((entries) =>
  entries.map(({ words }) => words).join(" "),
);

describe("all of Table 8 in one block", () => {
  test.each(orders)("%s", (block) => {
    // X is known to be 10 mm in work offset 2, so that the incremental inch counts from there.
    const { lines } = readBlocks(`G55\nG43 H1\nG0 X10\n${block}`, { format: formatWith({ mWords: 9 }) });
    expect(lines.slice(3)).toEqual(executionOrder.map(({ step }) => step).filter((step) => step !== ""));
  });
});

/** Pairs of neighbours, each in both orders of the text. */
const neighbours = executionOrder.slice(1).flatMap((entry, index): [string, string, string[]][] => {
  const before = executionOrder[index];
  if (before.step === "" || entry.step === "" || entry.item >= 20) return [];
  return [
    [before.words, entry.words, [before.step, entry.step]],
    [entry.words, before.words, [before.step, entry.step]],
  ];
});

test.each(neighbours)("%s %s", (a, b, steps) => {
  expect(readBlocks(`${a} ${b}`).lines).toEqual(steps);
});

test("19: reference return and local shift come behind the distance mode and before motion", () => {
  expect(readBlocks("G28 G91 Z0").lines).toEqual(["distance value=incremental", "reference-return axes=4"]);
  expect(readBlocks("G92.2 G90 G0 X1").lines).toEqual([
    "distance value=absolute",
    "local-shift value=off",
    "rapid x1",
  ]);
});

test("modes that Table 8 lacks stand beside their like", () => {
  expect(readBlocks("G80 G50 G69 G90.1 G90").lines).toEqual([
    "distance value=absolute",
    "arc-centre value=absolute",
    "rotation value=off",
    "scale value=off",
    "cycle value=off",
  ]);
});

test("20: G80 acts as motion does, behind G28", () => {
  expect(readBlocks("G80 G91 G28 Z0").lines).toEqual([
    "distance value=incremental",
    "reference-return axes=4",
    "cycle value=off",
  ]);
});

const programs = examples.flatMap(({ name, job, dialects }) =>
  dialects.map((dialect) => ({ name, job, dialect, short: dialectName(dialect) })),
);

describe.each(programs)("$name under $short", ({ job, dialect }) => {
  test("means the same with the words of each block in reverse, unless words act where they stand (3.3.6)", async () => {
    const made = await ready(dialect);
    const { program, outcome } = postText({ job }, made);
    if (program === undefined) return;
    const { format, machine } = made.dialect;
    const units = outcome.summary.units ?? "mm";
    const meaning = (text: string): string =>
      meaningOf(rowsOf(read([new TextEncoder().encode(text)], format, machine, { units }, () => undefined)));
    const reversed = program.split(format.lineEnd).map(reverse).join(format.lineEnd);
    expect(reversed).not.toBe(program);
    const same = meaning(reversed) === meaning(program);
    expect(same).toBe(format.executes === "by-kind");
  });
});

/** The words behind the block number the other way round; blocks with comments stay, since a comment may be a message. */
function reverse(block: string): string {
  if (/[(;%]/.test(block)) return block;
  const [, head = "", rest = ""] = /^([N:]\d+\s*)?(.*)$/.exec(block) ?? [];
  const words = [...rest.matchAll(/[A-Z][-+.\d]+/g)].map(([word]) => word);
  const end = rest.endsWith("*") ? "*" : "";
  const separator = rest.includes("\t") ? "\t" : rest.includes(" ") ? " " : "";
  return `${head}${words.reverse().join(separator)}${end}`;
}

/** Dialects of the family by what they say of spindle and coolant stops, with those codes that they have. */
describe.each([
  ["iso-6983", "after-motion"],
  ["din-66025", "after-motion"],
  ["explicit-words", "after-motion"],
  ["staged-tools", "after-motion"],
  ["longhand", "after-motion"],
  ["rs274ngc", "before-motion"],
] as const)("miscellaneous functions with motion under %s, stops %s", (name, stopsAct) => {
  test.each(isoTiming)("$code, $meaning: $when ($confidence)", async ({ code, when, words, step }) => {
    const { dialect } = await ready(name);
    expect(dialect.format.stopsAct).toBe(stopsAct);
    const { lines } = readBlocks(`G00 X1.\nG01 X10. F100. ${words}${code}`, { format: dialect.format });
    if (!lines.includes(step)) {
      // The dialect has no such code, and says so.
      const { findings } = readBlocks(code, { format: dialect.format });
      const told = findings.find(
        ({ rule, message }) => rule === "read/unknown-code" && message.includes(code),
      );
      expect(told?.message).toBeDefined();
      return;
    }
    const motion = lines.findIndex((line) => line.startsWith("line"));
    const isAfter = stopsAct === "after-motion" ? when === "after" : ngcAfterMotion.includes(code);
    expect(motion).toBeGreaterThan(-1);
    expect(lines.indexOf(step) > motion).toBe(isAfter);
  });
});

describe.each(programs)("what is written of $name under $short", ({ job, dialect }) => {
  test("has no spindle stop, coolant off or stop in a block with motion, since controllers differ", async () => {
    const made = await ready(dialect);
    const { program } = postText({ job }, made);
    const blocks = (program ?? "")
      .split(made.dialect.format.lineEnd)
      .map((block) => block.replace(/\(.*?\)|;.*/g, ""));
    expect(blocks.filter((block) => /M0?[0159](?!\d)/.test(block) && /[XYZABC]/.test(block))).toEqual([]);
  });
});

test("S and M3, T and M6 in either order of the text", () => {
  for (const block of ["M3 S10", "S10 M3"])
    expect(readBlocks(block).lines).toEqual(["spindle-speed rpm=10000", "spindle-start direction=cw"]);
  for (const block of ["M6 T1", "T1 M6"])
    expect(readBlocks(block).lines).toEqual(["select-tool tool=1", "change-tool"]);
});

test("a length offset acts before the motion of its block", () => {
  expect(readBlocks("G0 Z1\nG43 H2 Z15").lines).toEqual(["rapid z1", "length-offset number=2", "rapid z15"]);
});
