import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { postText, prepareDialect, proveText } from "../../core/index.ts";
import type { Finding } from "#base";
import { jobWith } from "../axes/job-with.ts";
import { dialectLoader } from "../support/dialects.ts";
import { errorRules, ready } from "../support/ready.ts";

/*
 * Dwells in revolutions of the spindle: n revolutions at a speed last n * 60 / rpm seconds. What is written is never shorter
 * than the job asks for, and never a whole step longer (common practice, no source).
 */

const leaf = (decimals: number) =>
  ready("leaf.dialect.yaml", {
    "leaf.dialect.yaml": `dialect: leaf\ntitle: A leaf\nextends: staged-tools\nnumbers: { dwell: ${String(decimals)} }\nfile: { program-number: none }\n`,
  });

const job = (dwell: number, rpm: number): string =>
  jobWith([{ rapid: { x: 0, y: 0 } }, { line: { z: -1 }, feed: 100 }, { dwell }], {
    spindle: { rpm, direction: "cw" },
  });

const dialects = await Promise.all([0, 2].map(leaf));

describe("a dwell in revolutions", () => {
  test("is proved for every speed and time, and lasts as long as was asked, less than one step longer", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60_000 }),
        fc.integer({ min: 1, max: 3_600_000 }),
        fc.integer({ min: 0, max: 1 }),
        (rpm, milliseconds, which) => {
          const { program, outcome } = postText({ job: job(milliseconds / 1000, rpm) }, dialects[which]);
          expect(errorRules(outcome.findings)).toEqual([]);
          const [, digits = "", decimals = ""] = /G04 P(\d*)\.?(\d*)/.exec(program ?? "") ?? [];
          const places = which * 2;
          // In hundredths or ones of a revolution, as whole numbers, so that the test does not round either.
          const steps = BigInt(digits + decimals.padEnd(places, "0"));
          const asked = BigInt(milliseconds) * BigInt(rpm) * 10n ** BigInt(places);
          expect(steps * 60_000n >= asked).toBe(true);
          expect((steps - 1n) * 60_000n < asked).toBe(true);
        },
      ),
      { numRuns: 150 },
    );
  });

  test("is refused with a tool that never turns, and names the unit", () => {
    const probing = job(0.5, 600)
      .replace('"spindle":{"rpm":600,"direction":"cw"},', "")
      .replace('"kind":"end-mill","diameter":6,"flutes":2', '"kind":"probe","diameter":6');
    const { program, outcome } = postText({ job: probing }, dialects[0]);
    expect(program).toBeUndefined();
    expect(outcome.findings.find(({ rule }) => rule === "lower/dwell")?.key).toBe("dwell.unit");
  });

  test("is refused by the guard where a program counts the turns of a spindle that stands", () => {
    const { program = "" } = postText({ job: job(0.5, 600) }, dialects[0]);
    const told = proveText(program.replace(/(\r\n)(G04 P5\r\n)/, "$1M05$1$2"), dialects[0]).findings;
    expect(
      told.some(({ rule, message }) => rule === "spindle/at-speed" && message.includes("revolutions")),
    ).toBe(true);
  });
});

test.each([
  ["confirm: { stopped: { dwell: 5 s } }", "confirm.stopped.dwell"],
  ["confirm: { at-speed: { dwell: 5 s } }", "confirm.at-speed.dwell"],
  ["machine: { signals: { air: { input: 3, settle: 1 s } } }", "machine.signals.air.settle"],
])("under dwells in revolutions nothing is confirmed by one: %s", async (lines, key) => {
  const findings: Finding[] = [];
  const text = `dialect: leaf\ntitle: A leaf\nextends: staged-tools\n${lines}\n`;
  const loader = dialectLoader({ "leaf.dialect.yaml": text });
  expect(
    await prepareDialect("leaf.dialect.yaml", loader, (finding) => findings.push(finding)),
  ).toBeUndefined();
  expect(findings.map((finding) => finding.key)).toContain(key);
});
