import { describe, expect, test } from "vitest";
import { tradeRules } from "../../../core/1-job/checks/findings.ts";
import { tradeCases } from "./cases.ts";
import {
  cut,
  down,
  drill,
  drilled,
  mill,
  operation,
  rulesOf,
  tap,
  tapped,
  textOf,
  tradeOf,
} from "./trade.ts";
import type { SmallJob } from "./trade.ts";

describe("each rule finds its job, and lets one by that comes near", () => {
  test.each(tradeCases.map((one) => [`${one.rule}: ${one.what}`, one] as const))("%s", (_, one) => {
    const found = tradeOf(one.bad);
    expect(rulesOf(found)).toEqual([one.rule]);
    const [finding] = found;
    for (const part of one.says) expect(finding.message).toContain(part);
    expect(finding.severity).toBe(one.rule === "job/material" ? "note" : "warning");
    expect(finding.fix).not.toBe("");
    expect(textOf(one.bad).slice(finding.place?.offset)).toSatisfy((text: string) => text.startsWith(one.at));
    expect(tradeOf(one.nearly)).toEqual([]);
  });

  test("every rule has a case", () => {
    const covered = new Set(tradeCases.map(({ rule }) => rule));
    expect(tradeRules.filter((rule) => !covered.has(rule))).toEqual([]);
  });
});

const aluminium = "aluminium";

describe("each cause is told once", () => {
  test("two operations with one fault are one finding, which counts them", () => {
    const operations = ["op10", "op20", "op30"].map((id) => operation(id, 1, 16000, cut(9000)));
    const [finding, ...others] = tradeOf({ material: aluminium, tools: [mill()], operations });
    expect(others).toEqual([]);
    expect(finding.message).toContain("So 3 times in this job.");
  });

  test("many moves with one fault are one finding with the first place and the worst", () => {
    const rapids = [0.9, 0.4, 0.7].flatMap((z) => [
      { rapid: { z } },
      { rapid: { x: 90 } },
      { rapid: { x: 10 } },
    ]);
    const found = tradeOf({ tools: [mill()], operations: [operation("op10", 1, 16000, rapids)] });
    expect(rulesOf(found)).toEqual(["job/low-rapid"]);
    expect(found[0].message).toContain("0.4 mm over the top of the stock. So 6 times");
  });

  test("the deepest of several cuts is said", () => {
    const operations = [-9, -7].map((z) => operation(`op${-z}`, 1, 16000, cut(800, z)));
    const [finding] = tradeOf({ tools: [mill({ fluteLength: 6 })], operations });
    expect(finding.message).toContain("cuts 9 mm below");
  });

  test("causes come in the order of their places", () => {
    const moves = [...cut(800, -9), ...down(800, 800)];
    const found = tradeOf({
      tools: [mill({ fluteLength: 8 }), drill()],
      operations: [operation("op10", 1, 16000, moves)],
    });
    expect(rulesOf(found)).toEqual(["job/unused-tool", "job/flute-length", "job/plunge-feed"]);
  });
});

/** A job in which nothing is to be found. */
const silent = (
  what: string,
  job: SmallJob,
  only?: readonly string[],
): readonly [string, SmallJob, readonly string[] | undefined] => [what, job, only];

describe("what is right, or not known, is not told", () => {
  test.each([
    silent("a feed over the stock is none in it", {
      material: aluminium,
      tools: [mill()],
      operations: [operation("op10", 1, 16000, [{ rapid: { z: 2 } }, { line: { x: 50 }, feed: 9000 }])],
    }),
    silent("slow curves and entries beside one cut at the right feed", {
      material: aluminium,
      tools: [mill()],
      operations: [operation("op10", 1, 16000, [...cut(100), ...cut(1280)])],
    }),
    silent("a tool of which the job does not say the teeth", {
      material: aluminium,
      tools: [{ number: 1, kind: "end-mill", diameter: 6 }],
      operations: [operation("op10", 1, 16000, cut(9000))],
    }),
    silent("a plunge where this job has drilled as deep", {
      tools: [drill({ diameter: 5 }), mill({ centreCutting: false })],
      operations: [
        operation("op10", 2, 3000, [drilled([[10, 10]], -3)]),
        operation("op20", 1, 16000, down(800, 800)),
      ],
    }),
    silent("a plunge without stock", {
      stock: false,
      tools: [mill({ centreCutting: false })],
      operations: [operation("op10", 1, 16000, down(800, 800))],
    }),
    silent("a relieved shank below the flutes", {
      tools: [mill({ fluteLength: 2, shank: 5.8 })],
      operations: [operation("op10", 1, 16000, cut(800, -5))],
    }),
    silent("threads of which another set-up has made all holes", {
      tools: [tap()],
      operations: [
        operation("op10", 3, 400, [
          tapped(
            [
              [20, 20],
              [40, 20],
            ],
            -12,
          ),
        ]),
      ],
    }),
    silent(
      "threads of which the drilling was not chosen",
      {
        tools: [drill(), tap()],
        operations: [
          operation("op10", 2, 3000, [drilled([[20, 20]], -15)]),
          operation("op20", 2, 3000, [drilled([[40, 20]], -15)]),
          operation("op30", 3, 400, [
            tapped(
              [
                [20, 20],
                [40, 20],
              ],
              -12,
            ),
          ]),
        ],
      },
      ["op20", "op30"],
    ),
    silent("one place under two work offsets", {
      tools: [drill()],
      operations: [
        operation("op10", 2, 3000, [drilled([[20, 20]], -10)]),
        operation("op20", 2, 3000, [drilled([[20, 20]], -10)], { workOffset: 2 }),
      ],
    }),
    silent("a bore that is gone over twice", {
      tools: [{ number: 2, kind: "boring-bar", diameter: 20 }],
      operations: ["op10", "op20"].map((id) =>
        operation(id, 2, 800, [drilled([[20, 20]], -10, { kind: "bore" })]),
      ),
    }),
    silent("a higher speed in the middle of an operation counts with its own feed", {
      material: aluminium,
      tools: [mill()],
      operations: [operation("op10", 1, 8000, [...cut(2000), { spindle: { rpm: 16000 } }, ...cut(4400)])],
    }),
    silent("a lower speed with a lower feed behind it", {
      material: aluminium,
      tools: [mill()],
      operations: [operation("op10", 1, 16000, [...cut(4400), { spindle: { rpm: 8000 } }, ...cut(300)])],
    }),
    silent("a rapid that falls while it goes across travels at its higher end", {
      tools: [mill()],
      operations: [operation("op10", 1, 16000, [{ rapid: { x: 90, z: 0.5 } }])],
    }),
  ])("%s", (_, job, only) => {
    expect(tradeOf(job, only)).toEqual([]);
  });

  test("the same feed at half the speed is twice the chip load", () => {
    const moves = [...cut(4400), { spindle: { rpm: 15000 } }, ...cut(4400)];
    const found = tradeOf({
      material: aluminium,
      tools: [mill()],
      operations: [operation("op10", 1, 16000, moves)],
    });
    expect(rulesOf(found)).toEqual(["job/chip-load"]);
    expect(found[0].message).toContain("15000 rpm");
  });
});
