import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { postText, proveText } from "../../core/index.ts";
import type { TextJob } from "../../core/in-memory.ts";
import { quarryRouter } from "../support/dialects.ts";
import { errorRules, ready } from "../support/ready.ts";
import { jobOf, operationOf, rackMachine, rackWords, capabilitiesOf, run } from "./fixtures.ts";

const plate = readFileSync(
  join(import.meta.dirname, "../../examples/weather-plate/weather-plate.job.json"),
  "utf8",
);

/** The router with fewer pockets; `more` goes into its machine. */
const router = (pockets: number, more = "") => {
  const text = readFileSync(quarryRouter, "utf8")
    .replace("count: 6", `count: ${pockets}`)
    .replace("  park:", `${more}  park:`);
  return ready("router.dialect.yaml", { "router.dialect.yaml": text });
};

describe("six tools in three pockets", () => {
  const job: TextJob = { job: plate, options: { spindleHolds: "none" } };

  test("are posted and proved, with two stops", async () => {
    const { outcome, program = "" } = postText(job, await router(3));
    expect(errorRules(outcome.findings)).toEqual([]);
    expect(outcome.verdict).toBe("proved");
    expect(program.split("\n").filter((line) => / M00\r?$/.test(line))).toHaveLength(3);
    expect(outcome.summary["rack"]).toEqual({
      pockets: [1, 2, 3],
      reloads: [
        {
          before: "op40",
          changes: [
            { pocket: 1, out: 1, in: 4 },
            { pocket: 3, out: 3, in: 5 },
          ],
        },
        { before: "op120", changes: [{ pocket: 1, out: 4, in: 6 }] },
      ],
    });
    expect(outcome.summary.assumptions).toContain(
      "The program stops 2 times for the rack to be loaded anew: before op40, op120.",
    );
  });

  test("each stop comes with an empty spindle that stands, coolant off, at the parking place, and says what goes where", async () => {
    const { program = "" } = postText(job, await router(3));
    const lines = program.split(/\r?\n/).map((line) => line.replace(/^N\d+ /, ""));
    const stop = lines.indexOf("M00");
    const before = lines.slice(lines.lastIndexOf("G49", stop), stop + 1);
    expect(before).toEqual([
      "G49",
      "G61",
      "G53 G00 X200.000 Y20.000",
      "G53 G00 Z-58.400",
      "G53 G01 Z-78.400 F600.0",
      "M94 P6 R1 Q5.0",
      "M21",
      "M94 P8 R1 Q2.0",
      "G53 G00 Z-5.000",
      "M94 P6 R1 Q5.0",
      "M22",
      "M94 P8 R0 Q2.0",
      "G53 G00 Z0.000",
      "G53 G00 X600.000 Y800.000",
      "(MSG, RELOAD THE RACK, STOP 1 OF 2, THE SPINDLE STAYS EMPTY)",
      "(MSG, POCKET 1 TOOL 1 OUT, TOOL 4 IN, REAMER 4 MM, CARBIDE)",
      "(MSG, REAMER 4 H7)",
      "(MSG, POCKET 3 TOOL 3 OUT, TOOL 5 IN, END-MILL 6 MM, CARBIDE)",
      "(MSG, END-MILL 6, FOR ALUMINIUM)",
      "(MSG, THEN GO ON)",
      "M00",
    ]);
    const after = lines.slice(stop + 1, lines.indexOf("M21", stop) + 1);
    const safe = ["G53 G00 Z0.000", "M09", "M23", "M05", "M94 P5 R1 Q30.0", "G49"];
    expect(after.filter((line) => safe.includes(line))).toEqual(safe);
    expect(after).toContain("G53 G00 X40.000 Y20.000");
  });

  test("a program without one of the stops, or with the tool still held at it, is not proved", async () => {
    const three = await router(3);
    const { program = "" } = postText(job, three);
    const rules = (text: string): string[] => {
      const { verdict, findings } = proveText(text, three, job);
      expect(verdict).toBe("failed");
      return errorRules(findings);
    };
    expect(proveText(program, three, job).verdict).toBe("proved");
    expect(rules(program.replace(/N\d+ M00\r?\n/, ""))).toContain("offset/active");
    const lines = program.split("\n");
    const stop = lines.findIndex((line) => line.includes(" M00"));
    const back = lines.findLastIndex((line, at) => at < stop && line.includes(" M21"));
    const kept = lines.filter((_, at) => at < back || at > back + 5);
    expect(rules(kept.join("\n"))).toContain("swap/pocket");
  });

  test("what is in the rack now stays, and the text follows", async () => {
    const options = { spindleHolds: "none" as const, rackNow: [5, 1] };
    const { outcome } = postText({ job: plate, options }, await router(3));
    expect(outcome.verdict).toBe("proved");
    expect(outcome.summary["rack"]).toMatchObject({
      pockets: [3, 1, 2],
      load: [
        { pocket: 1, out: 5, in: 3 },
        { pocket: 3, out: 0, in: 2 },
      ],
    });
  });

  test("a set-up that states the rack is how the program starts: stops begin where a tool is missing", async () => {
    const setup = { workOffsets: [], lengths: {}, rack: [2, 3, 5], spindleHolds: 0 };
    const { outcome } = postText({ job: plate, setup }, await router(3));
    expect(outcome.verdict).toBe("proved");
    const rack = outcome.summary["rack"] as { pockets: number[]; reloads: { before: string }[] };
    expect(rack.pockets).toEqual([2, 3, 5]);
    expect(rack.reloads.map(({ before }) => before)).toEqual(["op10", "op40", "op120"]);
  });

  test("the operator confirms the standstill: such a stop is not taken for one at the rack", async () => {
    const text = readFileSync(quarryRouter, "utf8")
      .replace("count: 6", "count: 3")
      .replace(/stopped: \{ wait.*/, "stopped: operator");
    const asking = await ready("router.dialect.yaml", { "router.dialect.yaml": text });
    const { outcome } = postText(job, asking);
    expect(errorRules(outcome.findings)).toEqual([]);
    expect(outcome.verdict).toBe("proved");
  });

  test("with as many pockets as tools nothing changes but for what is known of the rack", async () => {
    const six = await router(6);
    const plain = postText(job, six);
    expect(plain.outcome.summary["rack"]).toBeUndefined();
    const again = postText({ job: plate, options: { ...job.options, rackNow: [1, 2, 3, 4, 5, 6] } }, six);
    expect(again.program).toBe(plain.program);
    expect(again.outcome.summary["rack"]).toMatchObject({ load: [], reloads: [] });
  });
});

describe("a dialect that cannot tell the operator", () => {
  test("is refused where the rack has to be loaded anew", () => {
    const machine = rackMachine();
    const two = machine.rack && { ...machine.rack, pockets: machine.rack.pockets.slice(0, 2) };
    const capabilities = capabilitiesOf({}, { ...rackWords, "idioms.message": false });
    const job = jobOf([1, 2, 3].map((tool) => operationOf(tool)));
    const { findings } = run({
      job,
      machine: { ...machine, rack: two },
      capabilities,
      setup: { spindleHolds: 0 },
    });
    expect(findings.map(({ key }) => key)).toContain("idioms.message");
    expect(findings.some(({ severity }) => severity === "error")).toBe(true);
  });
});

describe("wide tools", () => {
  /** The plate's face-mill of 25 mm beside others, in pockets 15 mm apart: 12.5 + 1.9 touches at 14.4 and less. */
  const close = (pitch: number, pockets: number) =>
    ready("router.dialect.yaml", {
      "router.dialect.yaml": readFileSync(quarryRouter, "utf8").replace(
        "pitch: [80, 0], count: 6",
        `pitch: [${pitch}, 0], count: ${pockets}`,
      ),
    });
  const parts = { spindleHolds: "none" as const, only: ["op10", "op20"] };

  test("get an empty pocket beside them", async () => {
    const { outcome } = postText({ job: plate, options: parts }, await close(16, 3));
    expect(outcome.verdict).toBe("proved");
    expect(outcome.summary.assumptions).toContain("The rack is loaded: pocket 1 tool 1, pocket 3 tool 2.");
  });

  test("are loaded in turn where there is no room for both", async () => {
    const { outcome } = postText({ job: plate, options: parts }, await close(16, 2));
    expect(outcome.verdict).toBe("proved");
    expect(outcome.summary["rack"]).toMatchObject({ pockets: [1, 0], reloads: [{ before: "op20" }] });
  });
});
