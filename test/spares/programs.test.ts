import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Finding } from "#base";
import { postText, proveText } from "../../core/index.ts";
import type { ProgramOptions } from "../../core/index.ts";
import { sheetOf, planOf } from "../sheet/sheet-of.ts";
import { quarryRouter } from "../support/dialects.ts";
import { errorRules, ready } from "../support/ready.ts";
import { spareTools, wornJob } from "./worn-job.ts";

/** What is told of tools: severity, and the message. */
const told = (findings: readonly Finding[]): string[] =>
  findings
    .filter(({ rule }) => rule === "limit/tool")
    .map(({ severity, message }) => `${severity}: ${message}`);

/** The router's file without its accelerations, so that times are those of the feeds. */
const router = readFileSync(quarryRouter, "utf8").replace(/^ *acceleration:.*\n/m, "");

async function posted(job: string, dialect: string = quarryRouter, options: ProgramOptions = {}) {
  const made = await (dialect === quarryRouter ? changed("", "") : ready(dialect));
  const { outcome, program = "" } = postText({ job, options }, made);
  return { outcome, program, made };
}

/** The router with another line in its file. */
const changed = (from: string, to: string) =>
  ready("changed.dialect.yaml", {
    "changed.dialect.yaml": router.replace(from, to),
  });

/** Y of each rapid in the work, and the length offset behind it: which tool came to which slot. */
function slotsOf(program: string): string[] {
  return [...program.matchAll(/G00 X10\.000 Y(\d+)\.000\nN\d+ (?:G43 G00 Z10\.000 (H\d+))?/g)].map(
    ([, y, offset = "as before"]) => `Y${y} ${offset}`,
  );
}

/** X of the pockets that a program goes to, in order. */
const pocketsOf = (program: string): number[] =>
  [...program.matchAll(/G53 G00 X(\d+)\.000 Y20\.000/g)].map(([, x]) => Number(x));

describe("a tool that is worn gives way to its spares", () => {
  test("at a rack: pockets, length offsets, times, and what is told", async () => {
    const { outcome, program, made } = await posted(wornJob(), quarryRouter, { spindleHolds: "none" });
    expect(errorRules(outcome.findings)).toEqual([]);
    // Pockets stand at X40, X120 and so on: tool 1, 2, 1 again, 7, 5, each put back before the next.
    expect(pocketsOf(program)).toEqual([40, 40, 120, 120, 40, 40, 200, 200, 280, 280]);
    expect(slotsOf(program)).toEqual(["Y10 H01", "Y30 H01", "Y70 H17", "Y90 H05", "Y110 as before"]);
    expect(told(outcome.findings)).toEqual([
      "note: From operation op40 on tool 7, its spare, does the work of tool 1: that has cut 2.2 min by then, and with the 1.1 min of this operation would pass its life of 2.5 min.",
      "note: From operation op50 on tool 5, its spare, does the work of tool 1: tool 7, the spare before it, has cut 1.1 min by then, and with the 1.1 min of this operation would pass its life of 1.5 min.",
    ]);
    const { time, tools } = outcome.summary;
    expect(tools).toEqual([1, 2, 7, 5]);
    expect(time?.tools.map(({ tool, cutting }) => [tool, cutting])).toEqual([
      [1, 132],
      [2, 6],
      [7, 66],
      [5, 132],
    ]);
    const again = proveText(program, made, { job: wornJob(), options: { spindleHolds: "none" } });
    expect(again.verdict).toBe("proved");
    // Without the spares the job means another program.
    const alone = wornJob({ tools: spareTools.slice(0, 2) });
    expect(proveText(program, made, { job: alone, options: { spindleHolds: "none" } }).verdict).toBe(
      "failed",
    );
  });

  test("a part has the tools of the whole", async () => {
    const { outcome, program } = await posted(wornJob(), quarryRouter, {
      only: ["op40", "op60"],
      spindleHolds: "none",
    });
    expect(pocketsOf(program)).toEqual([200, 200, 280, 280]);
    expect(slotsOf(program)).toEqual(["Y70 H17", "Y110 H05"]);
    expect(told(outcome.findings).map((text) => text.slice(0, 30))).toEqual([
      "note: From operation op40 on t",
      "note: From operation op50 on t",
    ]);
  });

  test("a rack with too few pockets is loaded with spares at a stop", async () => {
    const made = await changed("count: 6", "count: 3");
    const { outcome } = postText({ job: wornJob(), options: { spindleHolds: "none" } }, made);
    expect(errorRules(outcome.findings)).toEqual([]);
    expect(outcome.summary.rack).toMatchObject({
      pockets: [1, 2, 7],
      reloads: [{ before: "op50" }],
    });
  });

  test("a set-up whose rack lacks the spare is refused", async () => {
    const made = await ready(quarryRouter);
    const setup = { workOffsets: [], lengths: {}, rack: [1, 2, 5], spindleHolds: 0 };
    const { outcome } = postText({ job: wornJob(), setup }, made);
    expect(outcome.verdict).toBe("refused");
    expect(outcome.findings.find(({ rule }) => rule === "limit/pockets")?.message).toContain("tool 7");
  });

  test("in an air cut, too, where nothing wears", async () => {
    const { outcome, program } = await posted(wornJob(), "rs274ngc", {
      airCut: { height: 30e7, feed: 2e10 },
    });
    expect(outcome.verdict).toBe("proved");
    expect([...program.matchAll(/T(\d+)/g)].map(([, tool]) => Number(tool))).toEqual(
      expect.arrayContaining([1, 2, 7, 5]),
    );
    expect(told(outcome.findings).map((text) => text.slice(0, 5))).toEqual(["note:", "note:"]);
  });

  test.each(["rs274ngc", "staged-tools", "din-66025", "longhand"])(
    "the same tools under %s",
    async (dialect) => {
      // Some controllers know no length offset but that of the tool's own number.
      const tools = spareTools.map(({ lengthOffset: _, ...tool }) => tool);
      const { outcome } = await posted(wornJob({ tools }), dialect);
      expect(errorRules(outcome.findings)).toEqual([]);
      expect(outcome.summary.time?.operations.map(({ tool }) => tool)).toEqual([1, 2, 1, 7, 5, 5]);
    },
  );

  test("the sheet lists the spares and what they do", async () => {
    const { sheet } = await sheetOf({ job: wornJob(), dialect: quarryRouter });
    expect(
      planOf(sheet).tools.map(({ number, spareFor, operations }) => [number, spareFor, operations]),
    ).toEqual([
      [1, undefined, ["op10", "op30"]],
      [2, undefined, ["op20"]],
      [7, 1, ["op40"]],
      [5, 1, ["op50", "op60"]],
    ]);
  });
});

test("a spare that waits is not called unused, one of a tool that nothing uses is", async () => {
  const tools = [{ ...spareTools[0], life: 100 }, ...spareTools.slice(1)];
  const waiting = await posted(wornJob({ tools }));
  expect(waiting.outcome.summary.tools).toEqual([1, 2]);
  expect(waiting.outcome.findings.filter(({ rule }) => rule === "job/unused-tool")).toEqual([]);
  const idle = { number: 9, kind: "end-mill", diameter: 4, life: 1 };
  const { outcome } = await posted(
    wornJob({ tools: [...tools, idle, { ...idle, number: 10, spareFor: 9 }] }),
  );
  expect(outcome.findings.find(({ rule }) => rule === "job/unused-tool")?.message).toContain("Tools 9, 10 ");
});

describe("a tool that cuts longer than its life is told", () => {
  const warnings = (findings: readonly Finding[]): string[] =>
    told(findings).filter((text) => text.startsWith("warning"));

  test("without a spare, with the operation in which it passes it", async () => {
    const { outcome } = await posted(wornJob({ tools: spareTools.slice(0, 2) }));
    expect(warnings(outcome.findings)).toEqual([
      "warning: Tool 1 cuts for at least 5.5 min in this program, and its life is 2.5 min: it passes that in operation op40.",
    ]);
    const [{ fix, place }] = outcome.findings.filter(({ rule }) => rule === "limit/tool");
    expect(fix).toContain('"spareFor": 1');
    expect(place?.source).toBe("job");
  });

  test("where the spares run out, the last one goes on", async () => {
    const { outcome } = await posted(wornJob({ tools: spareTools.slice(0, 3) }));
    expect(warnings(outcome.findings)).toEqual([
      "warning: Tool 7 cuts for at least 3.3 min in this program, and its life is 1.5 min: it passes that in operation op50.",
    ]);
  });

  test("an operation that alone is longer than any life", async () => {
    const tools = spareTools.map((tool) => ("life" in tool ? { ...tool, life: 1 } : tool));
    const { outcome } = await posted(wornJob({ tools }));
    expect(warnings(outcome.findings).map((text) => text.slice(-19))).toEqual([
      " in operation op10.",
      " in operation op30.",
      " in operation op40.",
    ]);
  });

  test("not where a life is just used up, nor in a part that is shorter", async () => {
    const tools = [{ ...spareTools[0], life: 5.5 }, spareTools[1]];
    expect(warnings((await posted(wornJob({ tools }))).outcome.findings)).toEqual([]);
    const part = { only: ["op10", "op30"] };
    const alone = wornJob({ tools: spareTools.slice(0, 2) });
    expect(warnings((await posted(alone, quarryRouter, part)).outcome.findings)).toEqual([]);
  });

  test("with accelerations, where the feeds alone would not pass it", async () => {
    const acceleration = "acceleration: { x: 0.1, y: 0.1, z: 0.1 }";
    const made = await changed(
      "hood: yes",
      `hood: yes
  ${acceleration}`,
    );
    const tools = [{ ...spareTools[0], life: 5.5 }, spareTools[1]];
    const { outcome } = postText({ job: wornJob({ tools }) }, made);
    expect(warnings(outcome.findings)).toHaveLength(1);
    expect(warnings(outcome.findings)[0]).not.toContain("at least");
  });

  test("not in the air", async () => {
    const air = { airCut: { height: 30e7, feed: 1e8 } };
    const { outcome } = await posted(wornJob({ tools: spareTools.slice(0, 2) }), "rs274ngc", air);
    expect(outcome.verdict).toBe("proved");
    expect(told(outcome.findings)).toEqual([]);
  });

  test("a program that is compared with its job is told of, too", async () => {
    const job = wornJob({ tools: spareTools.slice(0, 2) });
    const { program, made } = await posted(job);
    expect(warnings(proveText(program, made, { job }).findings)).toHaveLength(1);
  });
});
