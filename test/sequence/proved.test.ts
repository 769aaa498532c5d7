import { describe, expect, test } from "vitest";
import type { Finding } from "#base";
import { postText, prepareDialect } from "../../core/in-memory.ts";
import { dialectLoader } from "../support/dialects.ts";

// Through the whole flow: the order of the steps is the order in which the blocks of the text are executed, so that what is
// read back is the same, step by step, for machines that differ in all that sequencing goes by.

const machine = `
machine:
  travel: { x: [0, 1220], y: [0, 810], z: [-95, 0] }
  spindle: { min-rpm: 3000, max-rpm: 24000, spin-up: 6 s, spin-down: 6 s, coast-down: 25 s, orient: no }
  work-zero: { 1: [300, 200, -80] }
`;

/** Leaves by name: what each extends, what it adds to the machine, and what it says besides. */
const leaves: Readonly<
  Record<string, { readonly from: string; readonly machine?: string; readonly more?: string }>
> = {
  signals: { from: "explicit-words" },
  times: {
    from: "explicit-words",
    more: `confirm:
  at-speed: { dwell: "spin_up * max(rpm - from_rpm, from_rpm - rpm) / max_rpm + 0.5 * second" }
  stopped: { dwell: "coast_down * from_rpm / max_rpm + 0.5 * second" }`,
  },
  "change-ends-anywhere": {
    from: "rs274ngc",
    machine:
      "change-effects: { position: unknown, spindle: stopped, coolant: off, length-offset: cancelled }",
  },
  "reference-return": {
    from: "rs274ngc",
    machine: "retract: { by: reference-return, acts-on: spindle-nose, intermediate: incremental-zero }",
  },
  "by-the-operator": { from: "explicit-words", machine: "swap: operator" },
  staging: { from: "explicit-words", more: "tools: { preselect: yes }" },
  "offset-in-own-block": { from: "explicit-words", machine: "length-offset: { form: own-block }" },
  increments: { from: "explicit-words", more: "distance: { programs-in: incremental }" },
  "start-and-speed-apart": { from: "explicit-words", more: "spindle: { blocks: apart }" },
  "by-hand": { from: "iso-6983", machine: "retract: { change-position: [0, 0, 60] }" },
};

const leafText = (name: string): string => {
  const leaf = leaves[name];
  return `dialect: ${name}\nextends: ${leaf.from}${machine}  ${leaf.machine ?? ""}\n${leaf.more ?? ""}\n`;
};

const loader = dialectLoader(
  Object.fromEntries(Object.keys(leaves).map((name) => [`${name}.dialect.yaml`, leafText(name)])),
);

const cut = [
  { rapid: { x: 10, y: 5 } },
  { rapid: { z: 2 } },
  { line: { z: -1 }, feed: 100 },
  { line: { x: 20 } },
  { note: "half way" },
  { rapid: { z: 20 } },
];
const operation = (
  id: string,
  tool: number,
  rpm: number,
  moves: readonly object[],
  more: object = {},
): object => ({
  id,
  name: id,
  tool,
  spindle: { rpm, direction: "cw" },
  coolant: "mist",
  moves,
  ...more,
});

const job = {
  job: "1",
  name: "All that differs",
  units: "mm",
  clearance: 15,
  stock: { min: [-10, -10, -10], max: [100, 100, 0.5] },
  tools: [
    { number: 1, kind: "end-mill", diameter: 6, length: 50 },
    { number: 2, kind: "drill", diameter: 4, length: 60 },
    { number: 3, kind: "pen", diameter: 2, length: 60 },
  ],
  operations: [
    operation("first", 1, 18000, cut),
    operation("paused", 1, 9000, [
      ...cut,
      { pause: "turn the clamp", optional: true },
      { spindle: { rpm: 12000 } },
      { coolant: "off" },
      { line: { z: -2 }, feed: 150 },
    ]),
    operation("reversed", 1, 9000, cut, { clearance: 25, spindle: { rpm: 9000, direction: "ccw" } }),
    operation("drilled", 2, 6000, [
      { rapid: { x: 10, y: 5 } },
      { holes: { kind: "drill", at: [[10, 5], [20, 5]], top: 0, depth: -5, retract: 2 }, feed: 200 }, // prettier-ignore
    ]),
    {
      id: "drawn",
      name: "",
      tool: 3,
      moves: [{ rapid: { x: 10, y: 5 } }, { line: { z: 0 }, feed: 500 }, { line: { x: 40 } }],
    },
    operation("again", 1, 18000, cut, { clearance: 5 }),
  ],
};

describe.each(Object.keys(leaves))("%s", (name) => {
  test("a job with all that differs is proved", async () => {
    const findings: Finding[] = [];
    const ready = await prepareDialect(`${name}.dialect.yaml`, loader, (finding) => findings.push(finding));
    expect(findings).toEqual([]);
    if (!ready) throw new Error("the dialect is refused");
    for (const spindleHolds of [undefined, 1]) {
      const options = spindleHolds === undefined ? {} : { spindleHolds };
      const { outcome } = postText({ job: JSON.stringify(job), options }, ready);
      expect(outcome.findings.filter(({ severity }) => severity === "error")).toEqual([]);
      expect(outcome.verdict).toBe("proved");
    }
  });
});
