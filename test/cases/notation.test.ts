import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { firstWords } from "#cases";
import { ready } from "../support/ready.ts";
import { quarryRouter } from "../support/dialects.ts";
import { runText, writtenFor } from "./running.ts";

const rs274ngc = await ready("rs274ngc");
const router = await ready(quarryRouter);
const staged = await ready("staged-tools");
const withAll = await ready("all.dialect.yaml", {
  "all.dialect.yaml": `dialect: all
extends: explicit-words
blocks: { number: none }
path: { look-ahead: { on: M97, off: M96 } }
compensation: { corner-feed: { on: G38, off: G37 } }
cancel: { local-shift: G92.2, rotation: G69, scale: G50 }
arc: { centre-words: { absolute: G90.1, incremental: G91.1 } }
feed: { per-revolution: G95, inverse-time: G93 }
numbers: { feed-per-revolution: { mm: 3, inch: 4 }, inverse-time: 3 }
distance: { incremental: G91 }
spindle: { orient: M19 }
reference-return: G28
coolant: { air: M51, through-tool: M50 }
codes: { M93: { position: unchanged, spindle: unchanged, coolant: unchanged, length-offset: unchanged } }
idioms: { output-on: "M64 P{{output}}", output-off: "M65 P{{output}}", release: M21, clamp: M22, taper-air-on: M25, taper-air-off: M26, cover-open: M27, cover-close: M28, hood-up: M23, hood-down: M24, measure: M29 }
machine: { measure-effects: { position: unknown, spindle: unchanged, coolant: unchanged, length-offset: active } }
`,
});

/** Each first word with what it writes, under the dialect that has a word for everything. */
const examples: readonly (readonly [given: string, written: readonly string[]])[] = [
  ["rapid x10 y-5.25", ["G00 X10.000 Y-5.250"]],
  ["line z-2 feed 300", ["G01 Z-2.000 F300.0"]],
  ["machine rapid z0", ["G53 G00 Z0.000"]],
  ["arc ccw x0 y0 cx5 cy0 feed 800", ["G03 X0.000 Y0.000 I5.000 J0.000 F800.0"]],
  ["holes drill at x1 y2 depth -3 retract 4 feed 200", ["G99 G81 X1.000 Y2.000 Z-3.000 R4.000 F200.0"]],
  ["spindle cw 12000", ["M03 S12000"]],
  ["spindle ccw", ["M04"]],
  ["spindle 9000", ["S9000"]],
  ["spindle stop", ["M05"]],
  ["spindle orient", ["M19"]],
  ["coolant mist", ["M07"]],
  ["coolant through-tool", ["M50"]],
  ["coolant off", ["M09"]],
  ["dwell 0.5", ["G04 P500"]],
  ["wait 4 off 10", ["M94 P4 R0 Q10.0"]],
  ["output 3 on", ["M64 P3"]],
  ["tool 3", ["T03"]],
  ["change", ["M06"]],
  ["length-offset off", ["G49"]],
  ["work-offset 2", ["G55"]],
  ["comp left 3", ["G41 D03"]],
  ["comp off", ["G40"]],
  ["units inch", ["G20"]],
  ["plane zx", ["G18"]],
  ["distance incremental", ["G91"]],
  ["arc-centre absolute", ["G90.1"]],
  ["feed-mode inverse-time", ["G93"]],
  ["path blend within 0.02", ["G64 P0.020"]],
  ["path exact", ["G61"]],
  ["look-ahead off", ["M96"]],
  ["corner-feed on", ["G38"]],
  ["overrides on", ["M48"]],
  ["cycle off", ["G80"]],
  ["local-shift off", ["G92.2"]],
  ["rotation off", ["G69"]],
  ["scale off", ["G50"]],
  ["pause", ["M00"]],
  ["pause optional", ["M01"]],
  ["message Load tool 3", ["(MSG, LOAD TOOL 3)"]],
  ["release", ["M21"]],
  ["clamp", ["M22"]],
  ["taper-air-on", ["M25"]],
  ["taper-air-off", ["M26"]],
  ["cover-open", ["M27"]],
  ["cover-close", ["M28"]],
  ["hood-up", ["M23"]],
  ["hood-down", ["M24"]],
  ["measure", ["M29"]],
  ["code M93", ["M93"]],
  ["reference z", ["G28 Z0.000"]],
  ["end", ["M30"]],
  ["program", ["%", "%"]],
];

test.each(examples)("%s", async (given, written) => {
  const ran = await writtenFor(withAll, given);
  expect(ran.said.filter((one) => one.startsWith("dialect/case"))).toEqual([]);
  expect(ran.written).toEqual(written);
});

test.each([
  ["{ order: speed-first, blocks: together }", ["S12000 M03"]],
  ["{ order: start-first, blocks: together }", ["M03 S12000"]],
  ["{ order: speed-first, blocks: apart }", ["S12000", "M03"]],
  ["{ order: start-first, blocks: apart }", ["M03", "S12000"]],
])("a start under %s has the blocks that a program has", async (spindle, written) => {
  const text = `dialect: one\nextends: explicit-words\nblocks: { number: none }\nspindle: ${spindle}\n`;
  const means = await ready("one.dialect.yaml", { "one.dialect.yaml": text });
  expect((await writtenFor(means, "spindle cw 12000")).written).toEqual(written);
});

test("each first word of the notation has an example, and stands in the page on dialect files", () => {
  const page = readFileSync(resolve(import.meta.dirname, "../../dialects/README.md"), "utf8");
  expect(firstWords.filter((word) => !new RegExp(`\\| .*\`${word}[ \`]`).test(page))).toEqual([]);
  const shown = new Set(examples.map(([given]) => given.split(" ")[0]));
  expect(firstWords.filter((word) => !shown.has(word))).toEqual([]);
});

test("feeds hold, places that stay are not said, and inch cases count inches", async () => {
  expect((await writtenFor(rs274ngc, "line x10 feed 300", "line y5", "rapid x10 z2")).written).toEqual([
    "G1 X10 F300",
    "Y5",
    "G0 Z2",
  ]);
  const inch = await runText("[{ units: inch, given: [rapid x0.5], expect: [G0 X0.5] }]", rs274ngc);
  expect([inch.said, inch.results[0].passed]).toEqual([[], true]);
});

test("arcs are said as the dialect says them; past half a circle the radius is negative", async () => {
  const given = ["line x10 feed 900", "arc ccw x20 y10 cx20 cy0"];
  const { written, said } = await writtenFor(staged, ...given);
  expect(written).toEqual(["G01 X10. F900.", "G03 X20. Y10. R-10."]);
  // The sweep is 270 degrees, and this dialect takes 180 at most: it is not for lowering here, so the reader objects or not.
  expect(said.filter((one) => one.startsWith("dialect/case"))).toEqual([]);
});

const faults: readonly (readonly [given: string, column: number, says: string])[] = [
  ["rapd x10", 1, "`rapd` is no step; it can be rapid, line"],
  ["rapd x10", 1, "Did you mean `rapid`?"],
  ["rapid", 6, "`rapid` names no axis"],
  ["rapid q10", 7, "`rapid` names no axis"],
  ["rapid x10 y", 11, "`y` is not expected here; there could be an axis"],
  ["rapid x1e3", 7, "`x` is `1e3`; it can be a number such as 12.5"],
  ["rapid x10 x20", 11, "`x` stands twice."],
  ["rapid x0.00001", 7, "`x0.00001` is finer than the dialect writes it."],
  ["rapid x0.00000001", 7, "finer than the least unit there is"],
  ["rapid x99999999", 7, "that is too large"],
  ["rapid x10 cx5", 11, "`cx` is for the centre of an arc."],
  ["rapid x0", 1, "This moves nothing: the tool stands there."],
  ["line x10", 1, "`line` has no feed, and none holds."],
  ["line x10 feed", 14, "`feed` is missing: a number."],
  ["line x10 feed 0", 15, "A feed is above 0."],
  ["line x10 fed 300", 10, "`fed` is not expected here; there could be an axis, or `feed` and a number."],
  ["arc x10 y0 cx5 cy0", 5, "`x10` is no direction of an arc; it can be cw or ccw."],
  ["arc cw x10 y0 cx5 feed 100", 8, "An arc names both words of its centre"],
  ["arc cw x10 z0 cx5 cz0 feed 100", 1, "The arc lies in the plane zx, and xy is selected."],
  ["holes drill at x1 y1 depth -1 feed 100", 1, "`holes drill` has no `retract`."],
  ["holes peck at x1 y1 depth -1 retract 2 feed 100", 1, "`holes peck` has no `peck`."],
  ["holes drill at x1 depth -1 retract 2 feed 100", 13, "Behind `at` stand x and y of one hole."],
  ["holes drill at x1 y1 depth 3 retract 2 feed 100", 1, "The depth lies below the retract level."],
  ["holes drill at x1 y1 deep -3 retract 2 feed 100", 22, "`deep` is not expected here"],
  ["spindle", 8, "spindle action, or speed is missing"],
  ["spindle clockwise", 9, "`clockwise` is no spindle action"],
  ["spindle cw 12000 rpm", 18, "`rpm` is not expected here."],
  ["coolant fog", 9, "`fog` is no coolant; it can be mist, flood, air, through-tool or off."],
  ["wait 4 on", 10, "The longest time, in seconds, is missing"],
  ["message", 1, "A message has a text."],
  ["code X1", 6, "A code of the dialect's own is a word such as M93."],
  ["tool", 5, "The tool is missing: a number."],
];

test.each(faults)("`%s` is told at its word", async (given, column, says) => {
  const { said, results } = await runText(`- { given: ["${given}"], expect: [X] }`, rs274ngc);
  // The list begins behind `- { given: ["`.
  expect(said.map((one) => one.replace(/^(\S+ \S+) .*$/s, "$1"))).toContain(`dialect/case 1:${13 + column}`);
  expect(said.join("\n")).toContain(says);
  expect(results).toEqual([]);
});

test("places that are not known are asked for", async () => {
  const arc = await writtenFor(router, "work-offset 2", "arc cw x20 y0 cx10 cy0 feed 100");
  expect(arc.said[0]).toContain("The place where the arc begins is not known.");
  const holes = await writtenFor(
    router,
    "length-offset 3",
    "holes drill at x1 y1 depth -3 retract 2 feed 100",
  );
  expect(holes.said[0]).toContain("Where Z stands before the holes is not known.");
  const late = await writtenFor(router, "rapid x10", "program");
  expect(late.said[0]).toContain("`program` begins a case");
});

const wrongLists: readonly (readonly [text: string, says: string])[] = [
  ["[]", "`cases` is a list of at least one case."],
  ["[5]", "A case is a mapping with `given` and `expect`."],
  ["[{ given: [rapid x1] }]", "A case has `expect`, a list of texts."],
  ["[{ given: [], expect: [] }]", "A case gives at least one step."],
  ["[{ given: [rapid x1], expects: [X] }]", "Did you mean `expect`?"],
  ["[{ given: [{ rapid: 1 }], expect: [] }]", "What stands under `given` is a text."],
  ["[{ given: [rapid x1], expect: [], units: cm }]", "`units` is `cm`; it can be mm or inch."],
  [
    "[{ name: a, given: [pause], expect: [] }, { name: a, given: [pause], expect: [] }]",
    "Two cases are called `a`.",
  ],
];

test.each(wrongLists)("%s", async (text, says) => {
  const { said, results } = await runText(text, rs274ngc);
  expect(said.join("\n")).toContain(says);
  expect(said.every((one) => one.startsWith("dialect/case 1:"))).toBe(true);
  expect(results).toEqual([]);
});
