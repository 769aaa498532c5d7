import { mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { makeLines } from "./make-lines.ts";
import { alternate, median, measure } from "./measure.ts";

/**
 * `npm run bench`: whole processes, by turns, as ratios within one run. It needs a built tree (`npm run build`).
 * Times on a noisy machine say little by themselves; the ratios are what is reported.
 */

const root = fileURLToPath(new URL("../..", import.meta.url));
const command = join(root, "dist/cli.js");
const least = join(root, "test/bench/least-script.mjs");
const folder = mkdtempSync(join(tmpdir(), "tapewright-bench-"));
const at = (name: string): string => join(folder, name);
const say = (text: string): void => void process.stdout.write(`${text}\n`);
const figure = (value: number, digits = 2): string => value.toFixed(digits);

/** The places of a program, block by block, by the plainest reading there is; both texts must have the same. */
function places(file: string): string[] {
  const now = { X: "", Y: "", Z: "" };
  const seen: string[] = [];
  let line = false;
  for (const block of readFileSync(file, "latin1").split("\n")) {
    if (/G53|^\(|G4[39]|G28/.test(block)) continue;
    if (/\bG0?0\b/.test(block)) line = false;
    if (/\bG0?1\b/.test(block)) line = true;
    const words = block.match(/[XYZ]-?[0-9.]+/g);
    if (!words) continue;
    for (const word of words) now[word[0] as keyof typeof now] = String(Number(word.slice(1)));
    if (line) seen.push(`${now.X} ${now.Y} ${now.Z}`);
  }
  return seen;
}

function benchMillion(): void {
  makeLines(at("million.json"), 1_000_000);
  const post = [
    command,
    "post",
    at("million.json"),
    "--dialect",
    "rs274ngc",
    "--output",
    at("million.ngc"),
    "--quiet",
  ];
  const script = [least, at("million.json"), at("least.nc")];
  const [ours, theirs] = alternate(5, [post, script]);
  if (!ours || !theirs) return;
  const [a, b] = [places(at("million.ngc")), places(at("least.nc"))];
  const equal = a.length === b.length && a.every((place, index) => place === b[index]);
  if (!equal) throw new Error("the two programs have different motions");
  const time = (runs: typeof ours): number => median(runs.map((run) => run.time));
  say(
    `1,000,000 lines (${figure(readFileSync(at("million.json")).length / 1e6, 0)} MB), ${String(a.length)} equal places`,
  );
  say(
    `  post with proof / least script: ${figure(time(ours) / time(theirs))}   (${figure(time(ours) / 1000)} s / ${figure(time(theirs) / 1000)} s; target 0.60)`,
  );
  say(
    `  peak memory: ${figure(median(ours.map((run) => run.peak)), 0)} MB / ${figure(median(theirs.map((run) => run.peak)), 0)} MB`,
  );
}

function benchMemory(): void {
  makeLines(at("ten.json"), 10_000_000);
  const peak = (name: string): number =>
    measure([command, "post", at(name), "--dialect", "rs274ngc", "--output", at("out.ngc"), "--quiet"]).peak;
  const [one, ten] = [peak("million.json"), peak("ten.json")];
  say(
    `peak memory at 1 and 10 million lines: ${figure(one, 0)} MB, ${figure(ten, 0)} MB, ratio ${figure(ten / one)} (target: under 200 MB, equal within 20 %)`,
  );
}

function benchStart(): void {
  makeLines(at("small.json"), 200);
  writeFileSync(
    at("own.dialect.yaml"),
    "dialect: own\ntitle: A dialect of the user's own\nextends: rs274ngc\nblocks: { number: { on: all, start: 10, step: 10, to: 99990, width: 0 } }\n",
  );
  const post = (dialect: string): string[] => [
    command,
    "post",
    at("small.json"),
    "--dialect",
    dialect,
    "--output",
    at("small.ngc"),
    "--quiet",
  ];
  writeFileSync(at("empty.mjs"), "");
  const runs = alternate(9, [
    [at("empty.mjs")],
    post("rs274ngc"),
    post(at("own.dialect.yaml")),
    [command, "--help"],
  ]);
  const [bare = NaN, shipped = NaN, own = NaN, help = NaN] = runs.map((run) =>
    median(run.map((one) => one.time)),
  );
  say(`start, in bare Node starts (${figure(bare, 0)} ms; medians of nine):`);
  say(`  200 moves, shipped dialect: ${figure(shipped / bare)} (target 5)`);
  say(`  200 moves, own dialect:     ${figure(own / bare)} (target 7)`);
  say(`  --help:                     ${figure(help / bare)} (target 4)`);
}

/** Time for each megabyte written, under every shipped dialect, against that of the RS274/NGC one. */
function benchDialects(): void {
  const ending = ".dialect.yaml";
  const names = readdirSync(join(root, "dialects"))
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length));
  makeLines(at("dialects.json"), 300_000);
  const output = (name: string): string => at(`dialects.${name}.txt`);
  const runs = alternate(
    5,
    names.map((name) => [
      command,
      "post",
      at("dialects.json"),
      "--dialect",
      name,
      "--output",
      output(name),
      "--quiet",
    ]),
  );
  const costs = runs.map((run, index) => ({
    name: names[index] ?? "",
    megabytes: statSync(output(names[index] ?? "")).size / 1e6,
    time: median(run.map((one) => one.time)),
  }));
  const of = ({ time, megabytes }: (typeof costs)[number]): number => time / megabytes;
  const reference = costs.find(({ name }) => name === "rs274ngc");
  if (!reference) return;
  say(
    "300,000 lines, time for each megabyte written against rs274ngc (target: at most 1.3; medians of five):",
  );
  for (const cost of costs)
    say(
      `  ${cost.name.padEnd(16)} ${figure(of(cost) / of(reference))}   (${figure(cost.megabytes, 1)} MB, ${figure(cost.time, 0)} ms)`,
    );
}

try {
  benchDialects();
  benchMillion();
  benchMemory();
  benchStart();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
