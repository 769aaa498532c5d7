import { describe, expect, test } from "vitest";
import type { Capabilities, Finding } from "#base";
import type { Operation } from "#job";
import { postText } from "../../core/index.ts";
import { jobWith } from "../axes/job-with.ts";
import { ready } from "../support/ready.ts";
import { capabilitiesOf, jobOf, machineOf, mm, operationOf, run } from "./fixtures.ts";

// What bounds a blended path is a word of interpreters that followed NISTIR 6556, which has none (common practice, no source);
// that the tolerance is never written wider than the job has it is our own rule.

const word = { "path.tolerance-word": true };
const noWord = { "path.tolerance-word": false };

interface Paths {
  /** The path and look-ahead steps of a program with one operation, in order. */
  readonly paths: readonly string[];
  readonly findings: readonly Finding[];
}

function pathsOf(
  operation: Partial<Operation>,
  said: Record<string, boolean | undefined>,
  units: "mm" | "inch" = "mm",
  change: Partial<Capabilities> = {},
): Paths {
  const job = jobOf([operationOf(1, 18000, operation)]);
  const { lines, findings } = run({
    job,
    machine: machineOf(),
    capabilities: capabilitiesOf(change, said),
    units,
  });
  return { paths: lines.filter((line) => /^(path|look-ahead) /.test(line)), findings };
}

const told = (findings: readonly Finding[]): string[] =>
  findings.map(({ rule, severity, key }) => `${rule} ${severity} ${key ?? "-"}`);

describe("a path that is blended within a tolerance", () => {
  test("carries the tolerance at the start and at each operation, whether the blend is asked for or left open", () => {
    for (const path of ["blend", undefined] as const) {
      const { paths, findings } = pathsOf({ path, tolerance: mm(0.02) }, word);
      expect(paths).toEqual(["path blend within 0.02", "path blend within 0.02"]);
      expect(findings).toEqual([]);
    }
  });

  test("is followed by what the next operation states: another tolerance, or none", () => {
    const job = jobOf([
      operationOf(1, 18000, { tolerance: mm(0.02) }),
      operationOf(1, 18000, { tolerance: mm(0.01) }),
      operationOf(1, 18000),
    ]);
    const { lines } = run({ job, machine: machineOf(), capabilities: capabilitiesOf({}, word) });
    expect(lines.filter((line) => line.startsWith("path"))).toEqual([
      "path blend within 0.02",
      "path blend within 0.02",
      "path blend within 0.01",
      "path blend",
    ]);
  });

  test.each([
    ["mm", mm(0.0159), 0.015],
    ["mm", mm(0.001), 0.001],
    // 0.02 mm is 0.000787 inch; 0.0007 inch is 0.01778 mm.
    ["inch", mm(0.02), 0.01778],
  ] as const)(
    "is rounded down onto the grid of a program in %s: %d atoms -> %d mm",
    (units, tolerance, written) => {
      const { paths, findings } = pathsOf({ tolerance }, word, units);
      expect(paths[0]).toBe(`path blend within ${String(written)}`);
      const isExact = mm(written) === tolerance;
      expect(told(findings)).toEqual(isExact ? [] : ["lower/rounded note numbers.length"]);
    },
  );

  test("says what is written in place of what is stated", () => {
    const { findings } = pathsOf({ tolerance: mm(0.02) }, word, "inch");
    expect(findings[0].message).toBe(
      "the tolerance of operation op1, 0.0007874 inch, is written as 0.0007 inch",
    );
  });

  test("is none on the exact path, whose operation allows no rounding", () => {
    expect(pathsOf({ path: "exact", tolerance: mm(0.02) }, word)).toEqual({
      paths: ["path exact", "path exact"],
      findings: [],
    });
  });
});

describe("a tolerance that cannot be said", () => {
  test("is held by the exact path, which is told, with look-ahead off", () => {
    const ahead = { "path.look-ahead.on": true, "path.look-ahead.off": true };
    const { paths, findings } = pathsOf({ path: "blend", tolerance: mm(0.02) }, { ...noWord, ...ahead });
    expect(paths).toEqual(["path exact", "look-ahead off", "path exact", "look-ahead off"]);
    expect(told(findings)).toEqual(["lower/tolerance note path.tolerance-word"]);
    expect(pathsOf({ path: "blend", tolerance: mm(0.02) }, { ...word, ...ahead }).paths).toContain(
      "look-ahead on",
    );
  });

  test("is held by the exact path where nothing is left of it on the grid", () => {
    const { paths, findings } = pathsOf({ tolerance: mm(0.0009) }, word);
    expect(paths).toEqual(["path exact", "path exact"]);
    expect(told(findings)).toEqual(["lower/tolerance note numbers.length"]);
  });

  test("is no matter where all paths are exact", () => {
    const { paths, findings } = pathsOf({ tolerance: mm(0.02) }, { "path.blend": false });
    expect(paths).toEqual(["path exact", "path exact"]);
    expect(findings).toEqual([]);
  });

  test.each([
    ["no word for it", mm(0.02), { ...noWord, "path.exact": false }, "path.tolerance-word"],
    ["nothing left of it", mm(0.0009), { ...word, "path.exact": false }, "numbers.length"],
    // A stop at each corner marks the work: it is for operations that ask for the exact path.
    [
      "an exact stop alone",
      mm(0.02),
      { ...noWord, "path.exact": false, "path.stop": true },
      "path.tolerance-word",
    ],
    ["no path words at all", mm(0.02), { "path.exact": false, "path.blend": false }, "path.tolerance-word"],
  ] as const)("is refused without the exact path: %s", (_title, tolerance, said, key) => {
    const { paths, findings } = pathsOf({ tolerance }, said);
    expect(paths).toEqual([]);
    expect(told(findings)).toEqual([`lower/tolerance error ${key}`]);
    expect(findings[0].fix).toContain("path: { exact: G61 }");
    expect(findings[0].place).toEqual({ source: "job", offset: 0 });
  });

  test("is undeclared where no file says whether there is a word, and nothing is asked of a job without one", () => {
    const { findings } = pathsOf({ tolerance: mm(0.02) }, {});
    expect(told(findings)).toEqual(["dialect/undeclared error path.tolerance-word"]);
    expect(findings[0].fix).toContain("path: { blend: G64, tolerance-word: ? }");
    expect(pathsOf({}, {}).findings).toEqual([]);
  });
});

describe("whole programs", () => {
  const job = (tolerance: number, units: "mm" | "inch" = "mm"): string =>
    jobWith(
      [{ rapid: { x: 0, y: 0 } }, { line: { z: -1 }, feed: 300 }, { line: { x: 2 } }],
      { path: "blend", tolerance },
      units === "mm"
        ? {}
        : {
            units,
            stock: { min: [0, 0, -1], max: [8, 6, 0] },
            clearance: 2,
            tools: [{ number: 1, kind: "end-mill", diameter: 0.25 }],
          },
    );
  const paths = (program: string | undefined): string[] =>
    (program ?? "").split("\n").filter((line) => /G6[014]/.test(line));

  test("are proved with the word, in millimetres and in inches", async () => {
    const made = await ready("explicit-words");
    const metric = postText({ job: job(0.02) }, made);
    expect(metric.outcome.verdict).toBe("proved");
    expect(paths(metric.program)).toEqual(["N60 G64 P0.020", "N180 G64 P0.020"]);
    const inch = postText({ job: job(0.00079, "inch") }, made);
    expect(inch.outcome.verdict).toBe("proved");
    expect(paths(inch.program)).toEqual(["N60 G64 P0.0007", "N180 G64 P0.0007"]);
  });

  test("are proved on the exact path without it", async () => {
    const { outcome, program } = postText({ job: job(0.02) }, await ready("rs274ngc"));
    expect(outcome.verdict).toBe("proved");
    expect(paths(program)).toEqual(["G94 G17 G21 G40 G61 G90 G92.2 G80 M48", "G94 G17 G54 G61 G90"]);
    expect(told(outcome.findings)).toContain("lower/tolerance note path.tolerance-word");
  });

  test("have a block of its own for the word where modes share a block", async () => {
    const leaf = "dialect: leaf\ntitle: A leaf\nextends: rs274ngc\npath: { tolerance-word: P }\n";
    const { outcome, program } = postText(
      { job: job(0.02) },
      await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": leaf }),
    );
    expect(outcome.verdict).toBe("proved");
    expect(paths(program)).toEqual(["G64 P0.02", "G64 P0.02"]);
  });

  test("are refused where a tolerance has more digits than a length", async () => {
    const leaf =
      "dialect: leaf\ntitle: A leaf\nextends: rs274ngc\npath: { tolerance-word: P }\nnumbers: { length: { mm: 3, inch: 4, whole-digits: 2 } }\n";
    const { outcome } = postText(
      { job: job(100) },
      await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": leaf }),
    );
    expect(outcome.verdict).toBe("refused");
    expect(told(outcome.findings)).toContain("lower/range error numbers.length");
  });
});
