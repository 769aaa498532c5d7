import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { longJob, plateDialect, plateJob, put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const here = { cwd: folder };
const asked = ["why", plateJob, "-d", plateDialect];

expect(run(["post", plateJob, "-d", plateDialect, "-o", "plate.tap"], here).status).toBe(0);

/** Lines of the program that `post` writes. */
const program = readFileSync(join(folder, "plate.tap"), "utf8").trimEnd().split("\n");

interface Block {
  readonly line: number;
  readonly text: string;
  readonly words: readonly {
    readonly text: string;
    readonly keys: readonly { readonly key: string; readonly line: number }[];
  }[];
  readonly steps: readonly { readonly step: number; readonly text: string }[];
  readonly operation?: { readonly id: string };
  readonly place?: { readonly file: string; readonly line: number };
}
interface Answer {
  readonly lines: number;
  readonly blocks: readonly Block[];
  readonly shaped?: {
    readonly named: boolean;
    readonly count: number;
    readonly runs: readonly (readonly [number, number])[];
  };
}

function answerTo(...question: string[]): Answer {
  const { status, report } = runJson([...asked, ...question], here);
  expect([status, report.verdict, report.findings]).toEqual([0, "proved", []]);
  return report.summary["why"] as Answer;
}

test("a line is the one that post writes, with its step, its operation, its place in the job and its keys", () => {
  const line = program.findIndex((text) => /G01 X\S+ Y\S+$/.test(text)) + 1;
  const { lines, blocks } = answerTo("--line", String(line));
  expect(lines).toBe(program.length);
  const [block] = blocks;
  expect(block.text).toBe(program[line - 1]);
  const [, x, y] = / X(\S+) Y(\S+)$/.exec(block.text)!;
  expect(block.steps[0].text).toContain(`line to X ${Number(x)} Y ${Number(y)} Z`);
  expect(block.place?.file).toBe(plateJob);
  const job = readFileSync(plateJob, "utf8").split("\n");
  const quoted = job[block.place!.line - 1];
  expect(quoted).toContain(String(Number(x)));
  const operation = job.slice(0, block.place!.line).findLast((text) => /"id": "op\d+"/.test(text));
  expect(operation).toContain(`"${block.operation?.id}"`);
  expect(block.words.map(({ text }) => text)).toEqual(block.text.split(" "));
  const motion = block.words[1].keys.find(({ key }) => key === "motion.line");
  expect(motion?.line).toBeGreaterThan(0);
});

test("the text fits 80 columns and has no cautions, since nothing is written", () => {
  const { status, stdout, stderr } = run([...asked, "--line", "500"], here);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toContain(
    `line       500 of ${program.length}\nblock      ${program[499]}\nsays       step `,
  );
  expect(stdout).toMatch(/^from {7}op\d+, \w/m);
  expect(stdout).toMatch(/^ {2}G0\d {6}\S+: G0\d \(\S+\.yaml:\d+\)$/m);
  expect(stdout).not.toContain("Before it runs");
  const lines = stdout.split("\n").filter((text) => !/^ {2}at /.test(text));
  for (const text of lines) expect([...text].length).toBeLessThanOrEqual(80);
});

test("a step leads to its block, and a block to its step", () => {
  const [block] = answerTo("--line", "700").blocks;
  const again = answerTo("--step", String(block.steps[0].step));
  expect(again.blocks).toEqual([block]);
});

test("a key has the lines that it shaped, in runs, and the first three blocks", () => {
  const { shaped, blocks, lines } = answerTo("--key", "arc.ccw");
  const wanted = program.flatMap((text, index) => (/\bG03\b/.test(text) ? [index + 1] : []));
  expect(shaped?.count).toBe(wanted.length);
  const listed = shaped!.runs.flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, index) => first + index),
  );
  expect(listed).toEqual(wanted);
  expect(blocks.map(({ line }) => line)).toEqual(wanted.slice(0, 3));
  expect(lines).toBe(program.length);
  const group = answerTo("--key", "arc").shaped?.count;
  expect(group).toBe(program.filter((text) => /\bG0[23]\b/.test(text)).length);
});

test("a key that no word names is not said to do nothing", () => {
  expect(answerTo("--key", "confirm.stopped").shaped).toMatchObject({ named: false, count: 0 });
  expect(answerTo("--key", "arc.cw").shaped).toMatchObject({ named: true });
  const { stdout } = run([...asked, "--key", "confirm.stopped"], here);
  expect(stdout).toContain("it decides which moves, waits and stops there");
  expect(stdout).not.toContain("0 of");
});

test.each([
  [["--line", "99999"], /^There is no line 99999: the program has \d+ lines\.$/],
  [["--step", "99999"], /^There is no step 99999: the program has \d+ steps\.$/],
  [["--key", "modal.moton"], /^There is no key `modal\.moton`\. Did you mean `modal\.motion`\?$/],
  [["--line", "0"], /^--line is a whole number from 1 on, and not 0\.$/],
  [[], /^Say what to ask: one of --line N, --step N and --key K\.$/],
  [["--line", "1", "--step", "1"], /^Say what to ask/],
])("%j is a mistake on the command line", (question, message) => {
  const { status, report } = runJson([...asked, ...question], here);
  expect([status, report.verdict, report.findings.map(({ rule }) => rule)]).toEqual([
    2,
    "refused",
    ["job/usage"],
  ]);
  expect(report.findings[0].message).toMatch(message);
});

test("a job that is refused has the findings and the exit code of post", () => {
  put(folder, "long.job.json", longJob(3));
  put(folder, "broken.job.json", longJob(3).replace('"units": "mm"', '"units": "yd"'));
  for (const [job, dialect] of [
    ["broken.job.json", plateDialect],
    [plateJob, "hand-zeroed"],
    ["none.job.json", plateDialect],
    ["long.job.json", "no-such-dialect"],
  ]) {
    const posted = runJson(["post", job, "-d", dialect, "-o", "never.tap"], here);
    const { status, report } = runJson(["why", job, "-d", dialect, "--line", "5"], here);
    expect(posted.status).toBeGreaterThan(0);
    expect([status, report.verdict, report.findings]).toEqual([
      posted.status,
      "refused",
      posted.report.findings,
    ]);
  }
});
