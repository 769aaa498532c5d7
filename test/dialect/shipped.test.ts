import { readFileSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import type { Finding } from "#base";
import { atomsPerInch, atomsPerMillimetre } from "#base";
import { originOf, packDialect, resolveDialect, studyDialect, unpackDialect } from "#dialect";
import { dialectLoader, loadDialect, quarryRouter } from "../support/dialects.ts";
import { resolveText } from "./findings.ts";

const root = resolve(import.meta.dirname, "../..");
const shipped = readdirSync(join(root, "dialects")).filter((name) => name.endsWith(".dialect.yaml"));
const names = shipped.map((name) => name.replace(".dialect.yaml", ""));

function lineCount(path: string): number {
  return readFileSync(path, "utf8").trimEnd().split("\n").length;
}

describe("shipped dialects", () => {
  test.each(names)(
    "%s resolves without a finding, is called by its name and has at most 80 lines",
    async (name) => {
      const findings: Finding[] = [];
      const dialect = await resolveDialect(name, dialectLoader(), (finding) => findings.push(finding));
      expect(findings).toEqual([]);
      expect(dialect?.name).toBe(name);
      expect(lineCount(join(root, "dialects", `${name}.dialect.yaml`))).toBeLessThanOrEqual(80);
    },
  );

  test.each([...names, quarryRouter])("%s survives being kept as text", async (name) => {
    const dialect = await loadDialect(name);
    expect(unpackDialect(packDialect(dialect))).toEqual(dialect);
  });

  test.each(names)(
    "%s says where its facts come from, and states nothing that it would have without",
    async (name) => {
      const text = readFileSync(join(root, "dialects", `${name}.dialect.yaml`), "utf8");
      expect(text).toMatch(/^# .{40}/);
      expect(text).toMatch(/^sources:\n {2}- \w/m);
      const findings: Finding[] = [];
      await studyDialect(name, dialectLoader(), (finding) => findings.push(finding), true);
      expect(findings.filter(({ rule }) => rule === "dialect/same")).toEqual([]);
    },
  );

  test("an archetype has no machine, a leaf with travel or a spindle has one", async () => {
    expect((await loadDialect("rs274ngc")).machine.declared).toBe(false);
    expect((await loadDialect(quarryRouter)).machine.declared).toBe(true);
  });
});

describe("rs274ngc after NISTIR 6556", () => {
  test("words that the standard has, and those that it has not (Table 5)", async () => {
    const { words } = (await loadDialect("rs274ngc")).capabilities;
    for (const key of [
      "units.mm",
      "feed.inverse-time",
      "work-offset.9",
      "length-offset.on",
      "path.stop",
      "machine-move",
    ]) {
      expect([key, words[key]]).toEqual([key, true]);
    }
    for (const key of ["cycles.chip-break", "cycles.tap-left", "feed.per-revolution", "spindle.orient"]) {
      expect([key, words[key]]).toEqual([key, false]);
    }
  });

  test("values of the standard", async () => {
    const { format, capabilities, machine } = await loadDialect("rs274ngc");
    expect(format.codes.end).toEqual({ letter: "M", value: 20 }); // 3.6.1
    expect(format.codes.workOffsets[9]).toEqual({ letter: "G", value: 593 }); // Table 5
    expect(format.mWords).toBe(4); // 3.3.5
    expect(format.stopsAct).toBe("before-motion"); // Table 8
    expect(format.dwell).toEqual({ word: "P", unit: "s", blocks: "apart" }); // 3.5.4
    expect(capabilities.cycles.backOff).toEqual({ peck: 2_540_000 }); // 3.5.16.4: 0.010 inch
    expect(capabilities.rapids).toBe("straight"); // 3.5.1
    expect(machine.arcTolerance).toEqual({ mm: 20_000, inch: 50_800, relative: 0 }); // 3.5.3.2
    expect(machine.changeEffects).toEqual({
      position: "unchanged",
      spindle: "stopped",
      coolant: "unchanged",
      lengthOffset: "unchanged",
    }); // 3.6.3
  });
});

describe("what makes an archetype what it is", () => {
  test("least-increment counts ten-thousandths of an inch and takes no point", async () => {
    const { format, machine } = await loadDialect("least-increment");
    const { point, decimals, suppressed } = format.numbers.length.inch;
    expect([point, decimals, suppressed]).toEqual(["never", 4, "leading"]);
    expect([format.unitsIn, machine.countsIn, format.distance]).toEqual(["inch", "inch", "incremental"]);
  });

  test("longhand has neither arcs nor cycles nor compensation, and does not tap", async () => {
    const { format, capabilities, machine } = await loadDialect("longhand");
    expect([format.arc.form, format.cycles, capabilities.words["compensation.left"]]).toEqual([
      "none",
      undefined,
      false,
    ]);
    expect(machine.tapping?.kind).toBe("none");
    expect(format.modal).toEqual({
      motion: "each-block",
      axes: "all",
      arcEnd: "both",
      arcCentre: "both",
      feed: "each-block",
      speed: "each-start",
    });
    expect(format.numbers.length.mm).toMatchObject({
      point: "never",
      suppressed: "none",
      digits: 7,
      plus: true,
    });
  });

  test("hand-zeroed has one tool, no length offset and no move in machine coordinates", async () => {
    const { capabilities, machine } = await loadDialect("hand-zeroed");
    expect([machine.swap, machine.lengthOffset?.form, machine.retract?.by]).toEqual([
      "none",
      "none",
      "clearance",
    ]);
    for (const key of ["machine-move", "reference-return", "length-offset.on", "work-offset.1"])
      expect([key, capabilities.words[key]]).toEqual([key, false]);
  });

  test("staged-tools stages the next tool and says arcs by radius", async () => {
    const { format, capabilities, machine } = await loadDialect("staged-tools");
    expect([capabilities.preselect, format.lengthOffset?.form, machine.retract?.by]).toEqual([
      true,
      "in-tool-word",
      "reference-return",
    ]);
    expect([format.arc.form, format.arc.largestSweep, format.arc.fullCircle]).toEqual([
      "radius",
      180_000_000,
      false,
    ]);
    expect(capabilities.words["feed.per-revolution"]).toBe(true);
  });
});

describe("the router at the quarry", () => {
  test("can be read in a minute", () => {
    expect(lineCount(quarryRouter)).toBeLessThanOrEqual(40);
  });

  test("lengths, times, speeds and feeds are in base units", async () => {
    const { machine, workZero } = await loadDialect(quarryRouter);
    expect(machine.rack?.pocketZ).toBe(-78.4 * atomsPerMillimetre);
    expect(machine.rack?.pockets[5]).toEqual({ x: 440 * atomsPerMillimetre, y: 20 * atomsPerMillimetre });
    expect(machine.rack?.descendFeed).toBe(600 * atomsPerMillimetre);
    expect(machine.spindle.maxRpm).toBe(24_000_000);
    expect(machine.spindle.coastDown).toBe(25_000_000);
    expect(machine.signals["at-speed"]).toEqual({ input: 4, level: "on", settle: 300_000 });
    expect(machine.confirm.stopped).toEqual({ by: "wait", signal: "stopped", timeout: 30_000_000 });
    expect(workZero[1]).toEqual([300, 200, -140].map((value) => value * atomsPerMillimetre));
    expect(workZero[2]).toBeUndefined();
  });

  test("where its values stand", async () => {
    const dialect = await loadDialect(quarryRouter);
    const leaf = readFileSync(quarryRouter, "utf8").split("\n");
    const travel = originOf(dialect, "machine.travel.x");
    expect(travel.file).toBe(quarryRouter);
    expect(leaf[travel.line - 1]).toContain("travel:");
    expect(originOf(dialect, "spindle.order").file).toBe("explicit-words.dialect.yaml");
    expect(originOf(dialect, "work-offset.3").file).toBe("explicit-words.dialect.yaml");
    expect(originOf(dialect, "machine.feed.most")).toEqual({
      ...originOf(dialect, "machine"),
      key: "machine.feed.most",
    });
    expect(originOf(dialect, "no.such.key")).toEqual({ key: "no.such.key", file: "", line: 0 });
  });
});

/** The four corrections that a stock program writer leaves to be made, each as the lines that a leaf puts in. */
const corrections = [
  {
    what: "the motion word in every block",
    lines: ["modal: { motion: each-block }"],
    holds: (dialect: Awaited<ReturnType<typeof loadDialect>>) => dialect.format.modal.motion === "each-block",
  },
  {
    what: "the spindle word before its speed",
    lines: ["spindle: { order: start-first }"],
    holds: (dialect: Awaited<ReturnType<typeof loadDialect>>) =>
      dialect.format.spindle?.order === "start-first",
  },
  {
    what: "wait until the spindle is up to speed",
    lines: [
      'idioms: { wait-signal: "M94 P{{signal}} R{{level}} Q{{timeout}}" }',
      "machine: { signals: { at-speed: 4 }, waits: { on-timeout: alarm } }",
      "confirm: { at-speed: { wait: at-speed, timeout: 10 s } }",
    ],
    holds: (dialect: Awaited<ReturnType<typeof loadDialect>>) =>
      dialect.machine.confirm["at-speed"]?.by === "wait",
  },
  {
    what: "a confirmed stop before each swap and at the end",
    lines: [
      'idioms: { wait-signal: "M94 P{{signal}} R{{level}} Q{{timeout}}" }',
      "machine: { signals: { stopped: 5 }, waits: { on-timeout: alarm } }",
      "confirm: { stopped: { wait: stopped, timeout: 30 s } }",
    ],
    holds: (dialect: Awaited<ReturnType<typeof loadDialect>>) =>
      dialect.machine.confirm.stopped?.by === "wait",
  },
];

test.each(corrections)("$what costs at most three lines", async ({ lines, holds }) => {
  expect(lines.length).toBeLessThanOrEqual(3);
  const before = await resolveText("dialect: own\nextends: rs274ngc\n");
  expect(holds(before.dialect!)).toBe(false);
  const after = await resolveText(["dialect: own", "extends: rs274ngc", ...lines].join("\n"));
  expect(after.lines).toEqual([]);
  expect(holds(after.dialect!)).toBe(true);
});

test("lengths in inches are exact", async () => {
  const { dialect } = await resolveText(
    "dialect: own\nextends: rs274ngc\nmachine: { travel: { x: [0, 48 in], z: [-3.75 in, 0] } }\n",
  );
  expect(dialect?.machine.travel).toEqual({ x: [0, 48 * atomsPerInch], z: [-3.75 * atomsPerInch, 0] });
});

test("the example in the page on dialect files resolves", async () => {
  const page = readFileSync(join(root, "dialects/README.md"), "utf8");
  const [, text] = /```yaml\n(.*?)```/s.exec(page) ?? [];
  const { dialect, lines } = await resolveText(text);
  expect(lines).toEqual([]);
  expect(dialect?.machine.confirm["at-speed"]).toEqual({
    by: "dwell",
    time: { op: "number", value: 8_000_000 },
  });
});

test("what a start with a resolved dialect loads has no parser in it", () => {
  const folder = join(root, "core/2-dialect");
  const seen = new Set<string>();
  const packages = new Set<string>();
  const visit = (file: string): void => {
    if (seen.has(file)) return;
    seen.add(file);
    const text = readFileSync(join(folder, file), "utf8");
    for (const [, specifier] of text.matchAll(/^(?:import|export)(?! type).* from "([^"]+)"/gm)) {
      if (specifier.startsWith("./")) visit(specifier.slice(2));
      else packages.add(specifier);
    }
  };
  visit("index.ts");
  expect([...seen].sort()).toEqual(["code-text.ts", "editor-line.ts", "index.ts", "origin.ts", "pack.ts"]);
  expect([...packages]).toEqual([]);
});
