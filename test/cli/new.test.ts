import { existsSync, mkdirSync, readFileSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const answers = "from: rs274ngc\ntitle: The mill in the shed\nspindle: start-first\nmotion: each-block\n";
put(folder, "a.yaml", answers);

test("answers in a file give a dialect file that checks clean and posts a job", () => {
  const { status, stdout, stderr } = run(["dialect", "new", "mill.dialect.yaml", "--answers", "a.yaml"], {
    cwd: folder,
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toMatch(
    /^written {2}mill\.dialect\.yaml, which extends rs274ngc and states 2 keys of its own\n/,
  );
  const text = readFileSync(join(folder, "mill.dialect.yaml"), "utf8");
  expect(text.split("\n")).toEqual([
    expect.stringMatching(/^# yaml-language-server: \$schema=\S+\/schemas\/dialect\.schema\.json$/),
    expect.stringMatching(/^# What is not stated here is as in rs274ngc/),
    expect.stringMatching(/^# /),
    "dialect: mill",
    "title: The mill in the shed",
    "extends: rs274ngc",
    "modal:",
    "  # Motion word: yes, in every block",
    "  motion: each-block",
    "spindle:",
    "  # Spindle start: M3 S12000: M3 first, in one block",
    "  order: start-first",
    "",
  ]);
  const schema = /\$schema=(\S+)/.exec(text)?.[1] ?? "";
  expect(existsSync(join(folder, schema))).toBe(true);
  const check = runJson(["dialect", "check", "mill.dialect.yaml"], { cwd: folder });
  expect(check.status).toBe(0);
  expect(
    check.report.findings.filter(({ rule, severity }) => severity !== "note" || rule === "dialect/same"),
  ).toEqual([]);
});

test("the report for programs has the keys and the answers, which are a file of answers again", () => {
  const { status, report } = runJson(
    ["dialect", "new", "r.dialect.yaml", "--answers", "-", "--from", "rs274ngc"],
    {
      cwd: folder,
      input: "stopped: { answer: dwell, time: 12 s }\nspindle: speed-first\n",
    },
  );
  expect([status, report.verdict, report.findings]).toEqual([0, "read", []]);
  expect(report.summary).toMatchObject({
    dialect: "r",
    extends: "rs274ngc",
    output: "r.dialect.yaml",
    keys: ["confirm.stopped"],
    answers: { stopped: { answer: "dwell", time: "12 s" }, spindle: "speed-first" },
  });
});

test("a file that is there is left alone, unless the user says so", () => {
  const file = put(folder, "old.dialect.yaml", "dialect: old\nextends: longhand\n");
  const words = ["dialect", "new", "old.dialect.yaml", "--answers", "a.yaml"];
  const refused = runJson(words, { cwd: folder });
  expect(refused.status).toBe(2);
  expect(refused.report.findings).toMatchObject([{ rule: "dialect/exists", file: "old.dialect.yaml" }]);
  expect(refused.report.findings[0].fix).toContain("--force");
  expect(readFileSync(file, "utf8")).toBe("dialect: old\nextends: longhand\n");
  expect(runJson([...words, "--force"], { cwd: folder }).status).toBe(0);
  expect(readFileSync(file, "utf8")).toContain("extends: rs274ngc");
});

const refusals: readonly (readonly [words: string, rule: string, says: string, fix?: string])[] = [
  ["x.dialect.yaml", "job/usage", "there is none: give the answers with --answers FILE"],
  ["x.yaml --answers a.yaml", "job/usage", "NAME.dialect.yaml, such as shop-mill.dialect.yaml"],
  ["Shop.dialect.yaml --answers a.yaml", "job/usage", "NAME.dialect.yaml"],
  ["- --answers a.yaml", "job/usage", "NAME.dialect.yaml"],
  ["x.dialect.yaml --answers none.yaml", "dialect/file", "The answers file does not exist."],
  [
    "x.dialect.yaml --answers a.yaml --from longhand",
    "job/usage",
    "--from says longhand, and the answers say `from: rs274ngc`.",
  ],
  [
    "x.dialect.yaml --answers bare.yaml",
    "dialect/answers",
    "Nothing says which dialect",
    "It can be din-66025, explicit-words",
  ],
  ["x.dialect.yaml --answers bare.yaml --from rs274ncg", "dialect/file", "Did you mean `rs274ngc`?"],
  [
    "x.dialect.yaml --answers bare.yaml --from ../elsewhere.dialect.yaml",
    "job/usage",
    "a file in the folder of x.dialect.yaml or below",
  ],
  [
    "x.dialect.yaml --answers wrong.yaml",
    "dialect/answers",
    "Did you mean `start-first`?",
    "speed-first, speed-first-apart",
  ],
  ["x.dialect.yaml --answers same-input.yaml", "dialect/signal", "", ""],
  [
    "no/x.dialect.yaml --answers a.yaml",
    "program/not-writable",
    "The dialect file cannot be written: the folder does not exist.",
  ],
];
put(folder, "bare.yaml", "motion: each-block\n");
put(folder, "wrong.yaml", "from: rs274ngc\nspindle: start-frist\n");
put(
  folder,
  "same-input.yaml",
  `from: explicit-words
at-speed: { answer: wait, input: 4, timeout: 10 s }
stopped: { answer: wait, input: 4, timeout: 10 s }
`,
);

test.each(refusals)("`%s` is refused, and nothing is left", (...refusal) => {
  const [words = "", rule = "", says = "", fix = ""] = refusal;
  const before = readdirSync(folder);
  const { status, report } = runJson(["dialect", "new", ...words.split(" ")], { cwd: folder });
  expect([status, report.verdict]).toEqual([2, "refused"]);
  expect(report.findings[0].rule).toBe(rule);
  expect(report.findings[0].message).toContain(says);
  expect(report.findings[0].fix ?? "").toContain(fix);
  expect(readdirSync(folder)).toEqual(before);
});

test("what does not go together is told at the answer that caused it", () => {
  const { report } = runJson(["dialect", "new", "x.dialect.yaml", "--answers", "same-input.yaml"], {
    cwd: folder,
  });
  expect(report.findings[0]).toMatchObject({ file: "same-input.yaml" });
  expect(report.findings[0].line).toBeGreaterThan(1);
  const wrong = runJson(["dialect", "new", "x.dialect.yaml", "--answers", "wrong.yaml"], { cwd: folder });
  expect(wrong.report.findings[0]).toMatchObject({ file: "wrong.yaml", line: 2, column: 1 });
});

test("a file of one's own can be the start, and the schema is found from a folder below", () => {
  const inner = join(folder, "shop");
  mkdirSync(inner);
  put(inner, "base.dialect.yaml", "dialect: base\nextends: longhand\nspindle: { order: start-first }\n");
  const words = [
    "dialect",
    "new",
    "shop/own.dialect.yaml",
    "--from",
    "shop/base.dialect.yaml",
    "--answers",
    "-",
  ];
  const { status, report } = runJson(words, { cwd: folder, input: "spindle: start-first\nholes: none\n" });
  expect([status, report.summary["keys"], report.summary["extends"]]).toEqual([0, [], "base.dialect.yaml"]);
  const text = readFileSync(join(inner, "own.dialect.yaml"), "utf8");
  expect(existsSync(join(inner, /\$schema=(\S+)/.exec(text)?.[1] ?? ""))).toBe(true);
  expect(statSync(join(inner, "own.dialect.yaml")).mode & 0o111).toBe(0);
});

test("where the way to the schema has a blank, its address is a URL", () => {
  const blank = join(folder, "my shop");
  mkdirSync(blank);
  const { status } = run(["dialect", "new", "own.dialect.yaml", "--from", "longhand", "--answers", "-"], {
    cwd: blank,
    input: "motion: modal\n",
  });
  expect(status).toBe(0);
  expect(readFileSync(join(blank, "own.dialect.yaml"), "utf8").split("\n")[0]).toMatch(
    /^# yaml-language-server: \$schema=\S+\/schemas\/dialect\.schema\.json$/,
  );
});
