import type { ChildProcess } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { beforeAll, expect, test } from "vitest";
import { seeded } from "../support/seeded.ts";
import { longJob, plateDialect, put, run, start, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const lines = 80_000;
const output = join(folder, "long.tap");
const old = longJob(lines, -1);

/** How often a command is killed; each time takes about a second. TAPEWRIGHT_KILLS sets the number. */
const times = Number(process.env["TAPEWRIGHT_KILLS"] ?? 40);
const random = seeded(2026);

const work = { first: "", second: "", duration: 0, smallest: 0, tail: 60 };

function hashOf(path: string): string {
  return createHash("sha256").update(readFileSync(path)).digest("hex");
}

/** Temporary files that are there now. */
const temporary = (): string[] => readdirSync(folder).filter((name) => name.endsWith(".part"));

function words(job: string): string[] {
  return ["post", join(folder, job), "-d", plateDialect, "-o", output];
}

beforeAll(() => {
  put(folder, "first.json", old);
  put(folder, "second.json", longJob(lines, -1.5));
  expect(run(words("second.json"), { cwd: folder }).status).toBe(0);
  work.second = hashOf(output);
  work.smallest = statSync(output).size;
  const started = Date.now();
  expect(run(words("first.json"), { cwd: folder }).status).toBe(0);
  work.duration = Date.now() - started;
  work.first = hashOf(output);
  work.smallest = Math.min(work.smallest, statSync(output).size);
});

test("the job is large enough for a thread of its own", () => {
  expect(old.length).toBeGreaterThan(1 << 20);
  expect(work.first).not.toBe(work.second);
});

/** Size of the temporary file there, bytes; 0 while there is none. */
function stagedSize(): number {
  const [name] = temporary();
  return name === undefined ? 0 : (statSync(join(folder, name), { throwIfNoEntry: false })?.size ?? 0);
}

/**
 * Waits for the moment of a kill: spread evenly over the run; each third one is up to `work.tail` milliseconds after the temporary
 * file is whole, while it is proved, flushed and put in its place. How long that takes hangs on the machine's load, so that the tail grows
 * where the old program is found, and shrinks where the new one is.
 */
async function moment(time: number, child: ChildProcess): Promise<void> {
  if (time % 3 !== 0) return await setTimeout(work.duration * ((time + random()) / times));
  for (const name of temporary()) rmSync(join(folder, name));
  while (child.exitCode === null && stagedSize() < work.smallest) await setTimeout(1);
  await setTimeout(random() * work.tail);
}

test(`killed at ${times} random moments, the command leaves the old program or the new one, never a part`, async () => {
  const seen = { before: 0, staged: 0, replaced: 0, ended: 0 };
  for (let time = 0; time < times;) {
    const before = hashOf(output);
    const stale = temporary();
    const job = before === work.first ? "second.json" : "first.json";
    const child = start(words(job), { cwd: folder });
    const started = Date.now();
    const ended = new Promise((resolve) =>
      child.on("exit", (_code, signal) => resolve(signal ?? Date.now() - started)),
    );
    await moment(time, child);
    child.kill("SIGKILL");
    const how = await ended;
    const after = hashOf(output);
    expect([work.first, work.second]).toContain(after);
    const left = temporary();
    // Whoever makes a temporary file first takes away what the ones before left.
    expect(left.length).toBeLessThanOrEqual(1);
    if (how !== "SIGKILL") {
      // It came to its end before: that is no kill, and says how long it takes now.
      work.duration = Math.min(work.duration, how as number);
      work.tail *= 0.8;
      seen.ended++;
      expect(seen.ended).toBeLessThan(times * 3);
      continue;
    }
    if (time % 3 === 0) work.tail *= after === before ? 1.25 : 0.8;
    time++;
    if (after !== before) seen.replaced++;
    else if (left.some((name) => !stale.includes(name))) seen.staged++;
    else seen.before++;
  }
  console.info(`killed ${times} times: ${JSON.stringify(seen)}`);
  // What the killed ones left is taken away by the next one.
  expect(run(words("first.json"), { cwd: folder }).status).toBe(0);
  expect(temporary()).toEqual([]);
  expect(hashOf(output)).toBe(work.first);
  expect(seen.before).toBeGreaterThan(0);
  expect(seen.staged).toBeGreaterThan(0);
  expect(seen.replaced + seen.ended).toBeGreaterThan(0);
}, 1_200_000);

test.each(["SIGINT", "SIGTERM", "SIGHUP"] as const)(
  "after %s nothing is left, and the old program stands",
  async (signal) => {
    const before = hashOf(output);
    const child = start(words("second.json"), { cwd: folder });
    const ended = new Promise((resolve) => child.on("exit", (_code, by) => resolve(by)));
    while (temporary().length === 0) await setTimeout(5);
    child.kill(signal);
    expect(await ended).toBe(signal);
    expect(temporary()).toEqual([]);
    expect(hashOf(output)).toBe(before);
  },
);

test("a job that changes while it is read is refused", async () => {
  const job = join(folder, "moving.json");
  writeFileSync(job, longJob(lines, -1));
  const child = start(
    ["post", job, "-d", plateDialect, "-o", join(folder, "moving.tap"), "--report", "json"],
    {
      cwd: folder,
    },
  );
  const said: Buffer[] = [];
  child.stdout.on("data", (chunk: Buffer) => said.push(chunk));
  const ended = new Promise((resolve) => child.on("close", resolve));
  while (temporary().length === 0) await setTimeout(5);
  writeFileSync(job, longJob(lines, -1.25));
  expect(await ended).toBe(2);
  const report = JSON.parse(Buffer.concat(said).toString()) as { findings: { rule: string }[] };
  expect(report.findings.at(-1)?.rule).toMatch(/^job\//);
  expect(readdirSync(folder)).not.toContain("moving.tap");
});

test("several commands at once do not disturb each other", async () => {
  const where = join(folder, "together");
  mkdirSync(where);
  const jobs = ["first.json", "second.json", "first.json"];
  const children = jobs.map((job, index) => {
    const child = start(["post", join(folder, job), "-d", plateDialect, "-o", join(where, `${index}.tap`)], {
      cwd: folder,
    });
    return new Promise((resolve) => child.on("exit", resolve));
  });
  expect(await Promise.all(children)).toEqual([0, 0, 0]);
  expect(readdirSync(where).sort()).toEqual(["0.tap", "1.tap", "2.tap"]);
  expect(["0.tap", "1.tap", "2.tap"].map((name) => hashOf(join(where, name)))).toEqual([
    work.first,
    work.second,
    work.first,
  ]);
});
