import { spawnSync } from "node:child_process";
import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { applyPatch } from "diff";
import { expect, test } from "vitest";
import { command, environment, runJson, temporaryFolder } from "../cli/command.ts";

/*
 * The way from a refused program to a corrected dialect file, run as README.md tells it: each line behind `$` is run in an empty
 * folder, the lines under it stand in what it prints, in this order, and the edits are applied between.
 */

const root = resolve(import.meta.dirname, "../..");
const readme = readFileSync(join(root, "README.md"), "utf8");
const chapter = /^### From a refused program.*?(?=^### |^## )|^### From a refused program.*/ms.exec(
  readme,
)![0];
const edits = /^```diff\n(.*?)^```$/ms.exec(chapter)![1];
const folder = temporaryFolder();
const mill = join(folder, "mill.dialect.yaml");

/** A command line of the page, and what it says of the answer. */
interface Told {
  readonly words: readonly string[];
  readonly said: readonly string[];
}

function toldIn(text: string): Told[] {
  return [...text.matchAll(/^ {4}\$ (.+)\n((?: {4}[^$\n].*\n)*)/gm)].map(([, line, below]) => ({
    words: line.split(" "),
    said: below.split("\n").flatMap((said) => said.slice(4).trimEnd() || []),
  }));
}

function perform({ words: [program, ...words], said }: Told): void {
  if (program === "cp") {
    expect(words.at(-1)).toBe(".");
    for (const from of words.slice(0, -1)) {
      const path = join(root, from.replace(/\/\*$/, ""));
      cpSync(path, from.endsWith("/*") ? folder : join(folder, from.split("/").at(-1)!), { recursive: true });
    }
    return;
  }
  expect(program).toBe("tapewright");
  const { stdout } = spawnSync(process.execPath, [command, ...words], {
    cwd: folder,
    encoding: "utf8",
    env: environment(join(folder, ".cache")),
  });
  const lines = stdout.split("\n").map((line) => line.trimEnd());
  let from = 0;
  for (const line of said) {
    const at = lines.indexOf(line, from);
    expect(at, `${line}\nin what \`${words.join(" ")}\` prints:\n${stdout}`).toBeGreaterThanOrEqual(0);
    from = at + 1;
  }
}

/** Rules of the errors that a posted program has under explicit-words. */
function faults(): Set<string> {
  runJson(["post", "sensor-bracket-inch.job.json", "-d", mill, "-o", "before.tap"], { cwd: folder });
  const { report } = runJson(["prove", "before.tap", "-d", "explicit-words"], { cwd: folder });
  return new Set(report.findings.filter(({ severity }) => severity === "error").map(({ rule }) => rule));
}

const fiveRules = [
  "block/motion-word",
  "block/spindle-order",
  "spindle/at-speed",
  "spindle/ends-stopped",
  "spindle/stopped-for-swap",
];

test("the five faults of a program are gone from all programs after three edits", () => {
  const [before, after] = chapter.split(edits);
  const [first, second] = [toldIn(before), toldIn(after)];
  expect([first.length, second.length]).toEqual([2, 2]);
  for (const told of first) perform(told);
  // The file as it stands is the script that left the faults in.
  expect([...faults()].sort()).toEqual(expect.arrayContaining(fiveRules));

  const edited = applyPatch(readFileSync(mill, "utf8"), edits);
  if (edited === false) throw new Error("the edits do not fit examples/refused-program/mill.dialect.yaml");
  writeFileSync(mill, edited);
  // An edit is a value of the file, or both ways of `confirm` together.
  const keys = edits.split("\n").flatMap((line) => /^\+([a-z]+):/.exec(line)?.[1] ?? []);
  expect([...keys, "confirm"]).toEqual(["modal", "spindle", "confirm"]);

  for (const told of second) perform(told);
  expect(faults()).toEqual(new Set());
});
