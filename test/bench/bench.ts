import { mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { ready } from "../support/ready.ts";
import { framesOf } from "./frames.ts";
import { makeLines } from "./make-lines.ts";
import { makeShortMoves } from "./make-short-moves.ts";
import type { ShortMoves } from "./make-short-moves.ts";
import type { Run } from "./measure.ts";
import { alternate, measure, medians } from "./measure.ts";
import { stageCosts } from "./stages.ts";

/**
 * `npm run bench`: whole processes, by turns, as ratios within one run. It needs a built tree (`npm run build`).
 * Times on a noisy machine say little by themselves; the ratios are what is reported, of CPU time (of all threads) and of
 * time on the clock. `npm run bench -- --million --prove` runs these parts alone; `--profile` says where the time goes.
 */

const root = fileURLToPath(new URL("../..", import.meta.url));
const command = join(root, "dist/cli.js");
const least = join(root, "test/bench/least-script.mjs");
const onlyParse = join(root, "test/bench/only-parse.mjs");
const folder = mkdtempSync(join(tmpdir(), "tapewright-bench-"));
const at = (name: string): string => join(folder, name);
const say = (text: string): void => void process.stdout.write(`${text}\n`);
const figure = (value: number, digits = 2): string => value.toFixed(digits);
const seconds = ({ time, cpu }: Run): string => `${figure(cpu / 1000)} s CPU, ${figure(time / 1000)} s`;

/** Two costs as a ratio: "0.25 of CPU time, 0.24 on the clock". */
function ratio(ours: Run, theirs: Run): string {
  return `${figure(ours.cpu / theirs.cpu)} of CPU time, ${figure(ours.time / theirs.time)} on the clock`;
}

function postOf(name: string, dialect: string, output: string): string[] {
  return [command, "post", at(name), "--dialect", dialect, "--output", at(output), "--quiet"];
}

/** A job of a million lines, written once. */
function million(): string {
  const name = "million.json";
  if (!readdirSync(folder).includes(name)) makeLines(at(name), 1_000_000);
  return name;
}

/** A dialect of the user's own, as small as one can be. */
function ownDialect(): string {
  writeFileSync(
    at("own.dialect.yaml"),
    "dialect: own\ntitle: A dialect of the user's own\nextends: rs274ngc\nblocks: { number: { on: all, start: 10, step: 10, to: 99990, width: 0 } }\n",
  );
  return at("own.dialect.yaml");
}

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
  const script = [least, at(million()), at("least.nc")];
  const [ours = [], theirs = []] = alternate(5, [postOf(million(), "rs274ngc", "million.ngc"), script]);
  const [a, b] = [places(at("million.ngc")), places(at("least.nc"))];
  const equal = a.length === b.length && a.every((place, index) => place === b[index]);
  if (!equal) throw new Error("the two programs have different motions");
  const [post, without] = [medians(ours), medians(theirs)];
  const size = figure(statSync(at(million())).size / 1e6, 0);
  say(`1,000,000 lines (${size} MB), ${String(a.length)} equal places; medians of five:`);
  say(`  post with proof / least script: ${ratio(post, without)} (target 0.25)`);
  say(`    ${seconds(post)}; ${seconds(without)}`);
  say(`  peak memory: ${figure(post.peak, 0)} MB, ${figure(without.peak, 0)} MB`);
}

function benchMemory(): void {
  makeLines(at("ten.json"), 10_000_000);
  makeLines(at("few.json"), 200);
  const own = ownDialect();
  // The first run of an own dialect builds its emitter, for which the TypeScript compiler is loaded.
  const building = measure(postOf("few.json", own, "out.ngc"));
  const [one = [], ten = []] = alternate(3, [
    postOf(million(), "rs274ngc", "out.ngc"),
    postOf("ten.json", "rs274ngc", "out.ngc"),
  ]);
  const [small, large] = [medians(one), medians(ten)];
  const ownLarge = measure(postOf("ten.json", own, "out.ngc"));
  say(`10 million lines / 1 million: ${ratio(large, small)} (target 10.5; medians of three)`);
  say(`  peak memory: ${figure(small.peak, 0)} MB, ${figure(large.peak, 0)} MB (target 120 MB)`);
  say(
    `  with an own dialect: ${figure(ownLarge.peak, 0)} MB; ${figure(building.peak, 0)} MB where it is built`,
  );
}

/** A program read and guarded without its job, against a G-code reader that merely parses it. */
function benchProve(): void {
  try {
    import.meta.resolve("gcode-toolpath");
  } catch {
    say("prove / a reader that merely parses: gcode-toolpath is not installed");
    return;
  }
  measure(postOf(million(), "rs274ngc", "million.ngc"));
  const prove = [command, "prove", at("million.ngc"), "--dialect", "rs274ngc", "--quiet"];
  const [ours = [], theirs = []] = alternate(5, [prove, [onlyParse, at("million.ngc")]]);
  const [proving, parsing] = [medians(ours), medians(theirs)];
  say(
    "1,000,000 blocks read and guarded, against gcode-toolpath 3.0.0 that merely parses them; medians of five:",
  );
  say(`  parsing / proving: ${ratio(parsing, proving)} (target 10)`);
  say(`    ${seconds(proving)}; ${seconds(parsing)}`);
}

function benchStart(): void {
  makeLines(at("small.json"), 200);
  writeFileSync(at("empty.mjs"), "");
  const runs = alternate(9, [
    [at("empty.mjs")],
    postOf("small.json", "rs274ngc", "small.ngc"),
    postOf("small.json", ownDialect(), "small.ngc"),
    [command, "--help"],
  ]);
  const [bare = NaN, shipped = NaN, own = NaN, help = NaN] = runs.map((run) => medians(run).time);
  say(`start, in bare Node starts (${figure(bare, 0)} ms; medians of nine):`);
  say(`  200 moves, shipped dialect: ${figure(shipped / bare)} (target 5)`);
  say(`  200 moves, own dialect:     ${figure(own / bare)} (target 7)`);
  say(`  --help:                     ${figure(help / bare)} (target 4)`);
}

/** CPU time for each megabyte written, under every shipped dialect, against that of the RS274/NGC one. */
function benchDialects(): void {
  const ending = ".dialect.yaml";
  const names = readdirSync(join(root, "dialects"))
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length));
  makeLines(at("dialects.json"), 300_000);
  const output = (name: string): string => `dialects.${name}.txt`;
  const runs = alternate(
    5,
    names.map((name) => postOf("dialects.json", name, output(name))),
  );
  const costs = names.map((name, index) => {
    const { cpu, time } = medians(runs[index] ?? []);
    const megabytes = statSync(at(output(name))).size / 1e6;
    return { name, megabytes, cpu: cpu / megabytes, time: time / megabytes };
  });
  const reference = costs.find(({ name }) => name === "rs274ngc");
  if (!reference) throw new Error("rs274ngc is not shipped");
  say("300,000 lines, cost of each megabyte against rs274ngc (target 1.3; medians of five):");
  for (const { name, megabytes, cpu, time } of costs) {
    const ratios = `${figure(cpu / reference.cpu)} of CPU time, ${figure(time / reference.time)} on the clock`;
    say(`  ${name.padEnd(16)} ${ratios}   (${figure(megabytes, 1)} MB)`);
  }
}

/** Tools for the simulation, from the quickest shape to the slowest. */
const shortMoves: Readonly<Record<string, ShortMoves>> = {
  "end mill of 6 mm, level": { tool: { kind: "end-mill", diameter: 6 }, sloped: false },
  "ball-mill of 6 mm, up and down": { tool: { kind: "ball-mill", diameter: 6 }, sloped: true },
  "bull nose of 6 mm, up and down": {
    tool: { kind: "bull-nose", diameter: 6, cornerRadius: 1 },
    sloped: true,
  },
  "face-mill of 25 mm, level": { tool: { kind: "face-mill", diameter: 25 }, sloped: false },
};

/** Posting with and without a simulation of the stock: the difference is what the simulation takes. */
function benchSimulate(): void {
  say("1,000,000 moves of 0.1 to 1 mm over 500 x 500 mm in cells of 0.5 mm; medians of three:");
  for (const [name, moves] of Object.entries(shortMoves)) {
    makeShortMoves(at("short.json"), 1_000_000, moves);
    const post = postOf("short.json", "rs274ngc", "short.ngc");
    const simulating = [...post, "--simulate", "--resolution", "0.5"];
    const [plain, simulated] = alternate(3, [post, simulating]).map(medians);
    if (!plain || !simulated) throw new Error("two commands have two figures");
    const cost = { ...simulated, cpu: simulated.cpu - plain.cpu, time: simulated.time - plain.time };
    say(`  ${name}: simulation ${seconds(cost)} (target 10 s)`);
    say(`    post with it / without: ${ratio(simulated, plain)}; peak ${figure(simulated.peak, 0)} MB`);
  }
}

/** A program posted for another controller, against the job that it was made from, as JSON. */
function benchReadAs(): void {
  makeLines(at("blocks.json"), 100_000);
  measure(postOf("blocks.json", "rs274ngc", "blocks.ngc"));
  const program = [...postOf("blocks.ngc", "explicit-words", "read-as.tap"), "--read-as", "rs274ngc"];
  const [ours = [], theirs = []] = alternate(5, [
    program,
    postOf("blocks.json", "explicit-words", "job.tap"),
  ]);
  const [a, b] = [places(at("read-as.tap")), places(at("job.tap"))];
  if (a.length !== b.length || !a.every((place, index) => place === b[index]))
    throw new Error("the two programs have different motions");
  const [reading, posting] = [medians(ours), medians(theirs)];
  say(
    `100,000 blocks, post --read-as rs274ngc / post of the job as JSON: ${ratio(reading, posting)} (target 3)`,
  );
  say(`    ${seconds(reading)}; ${seconds(posting)}; ${String(a.length)} equal places, medians of five`);
  say(`  peak memory: ${figure(reading.peak, 0)} MB, ${figure(posting.peak, 0)} MB`);
}

/** The page of a plot with a million motions, turned in a browser. */
async function benchPlot(): Promise<void> {
  for (const moves of [1_000, 1_000_000]) {
    makeShortMoves(at("plot.json"), moves, shortMoves["end mill of 6 mm, level"]);
    const plot = [command, "plot", at("plot.json"), "--dialect", "rs274ngc", "--output", at("plot.html")];
    measure([...plot, "--quiet"]);
    const frames = await framesOf(at("plot.html"));
    if (frames === undefined) return say("the page of a plot: no browser is installed");
    const { loading, perSecond } = frames;
    const size = figure(statSync(at("plot.html")).size / 1e6, 1);
    say(
      `plot of ${moves.toLocaleString("en")} motions in a page of ${size} MB: ${figure(perSecond, 1)} frames a second while it turns (target 30)`,
    );
    say(`  all motions shown after ${figure(loading / 1000, 1)} s`);
  }
}

/** Where the time goes: a warm process, stage by stage. */
async function profile(): Promise<void> {
  const moves = 1_000_000;
  const costs = stageCosts(at(million()), await ready("rs274ngc"), moves);
  say("CPU time of 1,000,000 lines by stage, in one warm process; medians of seven:");
  for (const { stage, perMove, share } of costs)
    say(
      `  ${stage.padEnd(20)} ${figure(perMove, 0).padStart(5)} ns a move ${figure(100 * share, 0).padStart(4)} %`,
    );
  const whole = costs.reduce((sum, { perMove }) => sum + perMove, 0);
  say(`  ${"together".padEnd(20)} ${figure(whole, 0).padStart(5)} ns a move`);
}

const parts: Readonly<Record<string, () => void | Promise<void>>> = {
  "--million": benchMillion,
  "--memory": benchMemory,
  "--prove": benchProve,
  "--dialects": benchDialects,
  "--start": benchStart,
  "--simulate": benchSimulate,
  "--read-as": benchReadAs,
  "--plot": benchPlot,
};

try {
  const asked = process.argv.slice(2);
  const unknown = asked.filter((name) => name !== "--profile" && !Object.hasOwn(parts, name));
  if (unknown.length > 0) throw new Error(`there are ${Object.keys(parts).join(", ")} and --profile`);
  for (const [name, part] of Object.entries(parts))
    if (asked.length === 0 || asked.includes(name)) await part();
  if (asked.includes("--profile")) await profile();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
