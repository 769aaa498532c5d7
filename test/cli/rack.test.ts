import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { plateDialect, plateJob, put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const here = { cwd: folder };

/** The router with three pockets. */
const three = put(
  folder,
  "three.dialect.yaml",
  readFileSync(plateDialect, "utf8").replace("count: 6", "count: 3"),
);
const post = ["post", plateJob, "-d", three, "-o", "plate.tap", "--spindle-holds", "none"];

interface RackSummary {
  readonly pockets: readonly number[];
  readonly load?: readonly unknown[];
  readonly reloads: readonly { readonly before: string }[];
}

test("a list and a mapping of what is in the rack mean the same, and change the program", () => {
  const list = put(folder, "list.json", "[5, 1, 0]");
  const mapping = put(folder, "mapping.json", '{ "2": 1, "1": 5 }');
  const rackOf = (file: string): RackSummary => {
    const { status, report } = runJson([...post, "--rack", file], here);
    expect(status).toBe(0);
    return report.summary["rack"] as RackSummary;
  };
  expect(rackOf(list)).toEqual(rackOf(mapping));
  expect(rackOf(list)).toMatchObject({
    pockets: [3, 1, 2],
    reloads: [{ before: "op40" }, { before: "op120" }],
  });
  expect(
    run(
      ["prove", "plate.tap", "-d", three, "--against", plateJob, "--spindle-holds", "none", "--rack", list],
      here,
    ).status,
  ).toBe(0);
  expect(
    run(["prove", "plate.tap", "-d", three, "--against", plateJob, "--spindle-holds", "none"], here).status,
  ).toBe(1);
});

test("the text lists what is exchanged, in 80 columns", () => {
  const file = put(folder, "now.json", "[5, 1]");
  const { stdout } = run([...post, "--rack", file], here);
  expect(stdout).toContain(
    "Before the start, in the rack\n  - pocket 1: tool 5 out, tool 3 in\n  - pocket 3: tool 2 in\n",
  );
  expect(stdout).toContain("Reload stop 1 of 2, before op40\n  - pocket 1: tool 3 out, tool 4 in\n");
  for (const line of stdout.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
});

test.each([
  ["a file that is no rack", '"five"', "The file says no pockets.", 1],
  ["a pocket that is no number", '{ "one": 5 }', "Pockets are numbers from 1 to 200.", 3],
  ["a tool that is no number", "[1, -2]", "A pocket holds the number of a tool, or 0.", 5],
  ["a tool in two pockets", "[4, 0, 4]", "Tool 4 is in pocket 1 and in pocket 3.", 8],
])("%s", (_, content, message, column) => {
  const file = put(folder, "bad.json", content);
  const { status, report } = runJson([...post, "--rack", file], here);
  expect(status).toBe(2);
  expect(report.findings).toMatchObject([{ rule: "dialect/setup", message, line: 1, column }]);
});

test("a rack file that is not there, and one beside a set-up with a rack, are refused", () => {
  expect(runJson([...post, "--rack", "none.json"], here).report.findings).toMatchObject([
    { rule: "job/not-found" },
  ]);
  const setup = put(folder, "setup.json", '{ "rack": [1, 2, 3] }');
  const file = put(folder, "rack.json", "[1, 2, 3]");
  const { status, report } = runJson([...post, "--setup", setup, "--rack", file], here);
  expect(status).toBe(2);
  expect(report.findings).toMatchObject([{ rule: "job/usage" }]);
});
