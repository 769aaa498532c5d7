import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { parse } from "yaml";
import { describe, expect, test } from "vitest";
import type { Finding } from "#base";
import { resolveDialect, showDialect, studyDialect } from "#dialect";
import { dialectLoader, quarryRouter } from "../support/dialects.ts";
import { lineOf } from "./findings.ts";

const leaf = readFileSync(quarryRouter, "utf8");
const loader = dialectLoader({ "quarry-router.dialect.yaml": leaf });

async function show(text: string): Promise<string> {
  const shown = await showDialect("own.yaml", dialectLoader({ "own.yaml": text }), (finding) =>
    expect.fail(finding.message),
  );
  return shown!;
}

describe("show", () => {
  test("each value has its file and line", async () => {
    const shown = (await showDialect("quarry-router.dialect.yaml", loader, (finding) =>
      expect.fail(finding.message),
    ))!;
    const lines = shown.split("\n");
    expect(lines[0]).toContain(
      "quarry-router.dialect.yaml, which extends explicit-words.dialect.yaml, which extends iso-6983.dialect.yaml",
    );
    const values = lines.slice(1).filter((line) => line !== "" && !/^ *"?[\w-]+"?:$/.test(line));
    expect(values.length).toBeGreaterThan(150);
    for (const line of values) {
      const [, file, number] = / # ([\w-]+\.dialect\.yaml):(\d+)$/.exec(line) ?? [];
      const key = /^ *"?([\w-]+)"?:/.exec(line)![1];
      const text =
        file === basename(quarryRouter)
          ? leaf
          : new TextDecoder().decode(dialectLoader().readShipped(file.replace(".dialect.yaml", ""))!.bytes);
      expect(`${line}: ${text.split("\n")[Number(number) - 1]}`).toContain(
        `: ${text.split("\n")[Number(number) - 1]}`,
      );
      expect(text.split("\n")[Number(number) - 1]).toMatch(new RegExp(`(^|[\\s{])"?${key}"?:`));
    }
  });

  test("what is shown stands alone: it resolves to the same dialect", async () => {
    const shown = (await showDialect("quarry-router.dialect.yaml", loader, (finding) =>
      expect.fail(finding.message),
    ))!;
    const again = await resolveDialect("shown.yaml", dialectLoader({ "shown.yaml": shown }), (finding) =>
      expect.fail(finding.message),
    );
    const first = await resolveDialect("quarry-router.dialect.yaml", loader, (finding) =>
      expect.fail(finding.message),
    );
    const rest = ({ format, capabilities, machine, workZero }: NonNullable<typeof first>): unknown => ({
      format,
      capabilities,
      machine,
      workZero,
    });
    expect(rest(again!)).toEqual(rest(first!));
    expect((parse(shown) as Record<string, unknown>)["extends"]).toBeUndefined();
  });

  test("strings that YAML would take for something else keep their quotes", async () => {
    const shown = await show(
      'dialect: own\ntitle: "12: a # b"\nsources: ["1", "a, b", "[x]", "- y", "true"]\n',
    );
    expect(parse(shown)).toEqual({
      dialect: "own",
      title: "12: a # b",
      sources: ["1", "a, b", "[x]", "- y", "true"],
    });
  });

  test("a dialect that does not hold together is shown all the same", async () => {
    expect(
      await show(
        "dialect: own\nextends: rs274ngc\nmachine: { waits: { on-timeout: alarm } }\nmotion: { rapid: G1 }\n",
      ),
    ).toContain("rapid: G1");
  });
});

describe("check", () => {
  async function notes(text: string): Promise<{ findings: Finding[]; lines: string[] }> {
    const findings: Finding[] = [];
    await studyDialect(
      "own.yaml",
      dialectLoader({ "own.yaml": text }),
      (finding) => findings.push(finding),
      true,
    );
    const lines = findings.map(({ severity, rule, key, place }) => {
      const line = place?.file === "own.yaml" ? `:${lineOf(text, place.offset)}` : "";
      return `${severity} ${rule} ${key}${line}`;
    });
    return { findings, lines };
  }

  test("what cannot be said, what nobody states, and what changes nothing", async () => {
    const { findings, lines } = await notes(
      "dialect: own\nextends: rs274ngc\nspindle: { ccw: none, cw: M03 }\nwork-offset: [G54, G55, G56, G57, G58, G59, G59.1, G59.2, G59.3]\n",
    );
    expect(lines).toContain("note dialect/none spindle.ccw:3");
    expect(lines).toContain("note dialect/undeclared machine.travel");
    expect(lines.filter((line) => line.includes("dialect/same"))).toEqual([
      "note dialect/same spindle.cw:3",
      "note dialect/same work-offset:4",
    ]);
    const counter = findings.find(({ key }) => key === "spindle.ccw");
    expect(counter?.message).toBe(
      "`spindle.ccw` is none: jobs with a tool that turns counter-clockwise are refused.",
    );
  });

  test("`none` that is another way to say it refuses nothing", async () => {
    const { lines } = await notes("dialect: own\nextends: rs274ngc\ncycles: none\n");
    expect(lines.some((line) => line.includes(" cycles"))).toBe(false);
  });

  test("a rack needs its confirmations", async () => {
    const findings: Finding[] = [];
    const text = leaf.replace(/ {2}clamped: \{ wait.*\n/, "");
    await studyDialect(
      "own.yaml",
      dialectLoader({ "own.yaml": text }),
      (finding) => findings.push(finding),
      true,
    );
    expect(findings.map(({ rule, key }) => `${rule} ${key}`)).toContain("dialect/undeclared confirm.clamped");
  });

  test("air at a rack is asked for only where there is a signal for it", async () => {
    const keys = async (text: string): Promise<(string | undefined)[]> =>
      (await notes(text.replace("dialect: quarry-router", "dialect: own"))).findings.map(({ key }) => key);
    const without = leaf.replace(/ {2}air: \{ wait.*\n/, "");
    expect(await keys(without)).toContain("confirm.air");
    const neither = await keys(without.replace(/ {4}air: 6\n/, ""));
    expect(neither).toContain("machine.feed");
    expect(neither).not.toContain("confirm.air");
  });

  test("a machine of its own without limits of its spindle refuses what turns, and is told so", async () => {
    const says = async (text: string): Promise<(string | undefined)[]> =>
      (await notes(text)).findings
        .filter(({ key }) => key?.startsWith("machine.spindle.") === true)
        .map(({ message }) => message);
    expect(await says("dialect: own\nextends: rs274ngc\n")).toEqual([
      "No file states `machine.spindle.max-rpm`: spindle speeds are not checked.",
    ]);
    expect(await says("dialect: own\nextends: rs274ngc\nmachine: { travel: { x: [0, 600] } }\n")).toEqual([
      "No file states `machine.spindle.min-rpm`: jobs with a tool that turns are refused.",
      "No file states `machine.spindle.max-rpm`: jobs with a tool that turns are refused.",
    ]);
  });

  test("errors come alone", async () => {
    expect(
      (await notes("dialect: own\nextends: rs274ngc\nmotion: { line: G0 }\n")).lines.map(
        (line) => line.split(" ")[0],
      ),
    ).toEqual(["error", "error"]);
  });
});
