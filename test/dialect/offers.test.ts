import { expect, test } from "vitest";
import { resolveText } from "./findings.ts";

/** No file of this chain has cycles, and the leaf turns them on. */
const without = "dialect: without\ntitle: Without cycles\nextends: rs274ngc\ncycles: none\n";

test("many missing keys of a group are one finding, with lines that can be pasted", async () => {
  const leaf = "dialect: own\nextends: without.yaml\ncycles: { drill: G81 }\n";
  const { findings } = await resolveText(leaf, { "without.yaml": without });
  expect(findings.map(({ rule, key }) => [rule, key])).toEqual([["dialect/undeclared", "cycles.repeat"]]);
  const [, ...lines] = findings[0].fix!.split("\n");
  expect(lines).toEqual([
    "cycles:",
    "  repeat: ? # positions or all",
    "  levels: ? # absolute, relative or from-initial",
    "  definition: ? # with-first-hole or apart",
    "  positions: ? # changed or both",
    "  initial-level: ? # before-series or current",
    "  axis: ? # plane-normal or z",
    "  tap-feed: ? # feed-mode or lead",
    "  ended-by: ? # any-motion or cancel-code",
    "  words:",
    "    retract: R # NISTIR 6556; see your manual",
    "    peck: Q # NISTIR 6556; see your manual",
    "    dwell: P # NISTIR 6556; see your manual",
    "    dwell-unit: ? # s, ms or rev",
    "    back-off: ? # the letter, from the manual, or none",
    "    repeat: ? # the letter, from the manual, or none",
  ]);
  // Behind its label a line of the report has 71 characters at 80 columns.
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(71);
});

test("a line that is pasted with its question mark is refused, and says what to do", async () => {
  for (const line of ["cycles:\n  levels: ? # absolute", "machine: { spindle: { spin-up: ? } }"]) {
    const { findings, dialect } = await resolveText(`dialect: own\nextends: rs274ngc\n${line}\n`);
    expect(dialect).toBeUndefined();
    expect(findings.map(({ rule }) => rule)).toContain("dialect/yaml");
    expect(findings.map(({ fix }) => fix)).toContain("Put the answer in place of the question mark.");
  }
});

test.each([
  "machine: { swap: rack }",
  "machine: { swap: controller }",
  "machine: { lengths: measured, hood: yes }",
  "confirm: { at-speed: { wait: at-speed, timeout: 5 s } }",
])("%s: no time, place, input or builder's code is invented for what is missing", async (text) => {
  const { findings } = await resolveText(`dialect: own\nextends: iso-6983\n${text}\n`);
  const missing = findings.filter(({ rule }) => rule === "dialect/undeclared");
  expect(missing.length).toBeGreaterThan(0);
  for (const { fix = "" } of missing) {
    expect(fix).toContain("?");
    const values = fix.replaceAll(/time it with a watch: 2\.5 s/g, "");
    expect(values).not.toMatch(/: [[{"]*-?\d|: "?M\d/);
  }
});
