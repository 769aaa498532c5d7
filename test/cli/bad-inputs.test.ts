import { spawnSync } from "node:child_process";
import {
  closeSync,
  ftruncateSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  rmSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, describe, expect, it } from "vitest";

/*
 * Bad input of every sort through the built command: each gets its finding and its exit code, fast and in little memory, and
 * nothing is left in the folder.
 */

const root = resolve(import.meta.dirname, "../..");
const peak = pathToFileURL(join(root, "test/bench/peak.mjs")).href;
const folder = mkdtempSync(join(tmpdir(), "tapewright-bad-"));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const head =
  '"job":"1","name":"bad","units":"mm","clearance":15,"tools":[{"number":1,"kind":"end-mill","diameter":6}]';
const moves = (text: string): string =>
  `{${head},"operations":[{"id":"op10","tool":1,"spindle":{"rpm":6000,"direction":"cw"},"moves":[{"rapid":{"x":0,"y":0}},${text}]}]}`;
const good = moves('{"line":{"x":1},"feed":100}');

interface Run {
  readonly exit: number;
  readonly rules: readonly string[];
  readonly lines: readonly (number | undefined)[];
  readonly seconds: number;
  readonly megabytes: number;
}

function post(job: string, dialect = "rs274ngc", output = join(folder, "out.ngc")): Run {
  const begin = Date.now();
  const words = ["post", job, "--dialect", dialect, "--output", output, "--report", "json"];
  const run = spawnSync(process.execPath, ["--import", peak, join(root, "dist/cli.js"), ...words], {
    stdio: ["ignore", "pipe", "pipe", "pipe"],
    encoding: "utf8",
    env: { ...process.env, XDG_CACHE_HOME: join(folder, "cache") },
  });
  const { findings } = JSON.parse(run.stdout) as {
    findings: { rule: string; severity: string; line?: number }[];
  };
  const errors = findings.filter(({ severity }) => severity === "error");
  return {
    exit: run.status ?? -1,
    rules: errors.map(({ rule }) => rule),
    lines: errors.map(({ line }) => line),
    seconds: (Date.now() - begin) / 1000,
    megabytes: (parseInt(run.output[3] ?? "", 10) * 1024) / 1e6,
  };
}

function jobFile(content: string | Uint8Array, name = "bad.job.json"): string {
  const file = join(folder, name);
  writeFileSync(file, content);
  return file;
}

/** What lies in the folder beside the input and the cache. */
const left = (): string[] => readdirSync(folder).filter((name) => /^out|tapewright/.test(name));

describe("a bad job", () => {
  it.each([
    ["broken JSON at a byte", good.replace('"feed":100', '"feed":1O0'), "job/json"],
    ["cut off in the middle", good.slice(0, -20), "job/json"],
    ["a wrong type", moves('{"line":{"x":"1"},"feed":100}'), "job/type"],
    ["an unknown key", moves('{"line":{"x":1},"fed":100}'), "job/unknown-key"],
    ["a repeated key", moves('{"line":{"x":1,"x":2},"feed":100}'), "job/repeated-key"],
    ["NaN", moves('{"line":{"x":NaN},"feed":100}'), "job/number"],
    ["1e999", moves('{"line":{"x":1e999},"feed":100}'), "job/number"],
    ["a tool that is not defined", good.replace('"tool":1,', '"tool":7,'), "job/tool-undefined"],
    [
      "arc radii apart",
      moves('{"arc":{"x":10,"y":0,"cx":5.2,"cy":0},"turn":"cw","feed":100}'),
      "job/arc-radius",
    ],
    ["an empty file", "", "job/json"],
    ["an empty object", "{}", "job/missing-key"],
    ["no operations", `{${head},"operations":[]}`, "job/list"],
    ["a binary file", new Uint8Array(4096).map((_, index) => (index * 37) % 256), "job/json"],
  ])("%s", (_name, content, rule) => {
    const run = post(jobFile(content));
    expect(run.rules[0]).toMatch(new RegExp(`^${rule}$|^job/encoding$`));
    expect(run.exit).toBe(2);
    expect(run.lines[0]).toBeGreaterThan(0);
    expect(left()).toEqual([]);
  });

  it("a line of 2 GB is refused within 10 s and 200 MB", () => {
    const file = join(folder, "huge.job.json");
    const handle = openSync(file, "w");
    writeSync(handle, `{"job":"1","name":"${"a".repeat(1 << 20)}`);
    ftruncateSync(handle, 2 * 1024 ** 3);
    closeSync(handle);
    const run = post(file);
    rmSync(file);
    expect(run.exit).toBe(2);
    expect(run.seconds).toBeLessThan(10);
    expect(run.megabytes).toBeGreaterThan(10);
    expect(run.megabytes).toBeLessThan(200);
    expect(left()).toEqual([]);
  });
});

describe("a bad place", () => {
  it("a file that is not there, a folder as a file, and an output folder that is not there", () => {
    expect(post(join(folder, "nothing.json"))).toMatchObject({ exit: 2, rules: ["job/not-found"] });
    mkdirSync(join(folder, "folder.json"), { recursive: true });
    expect(post(join(folder, "folder.json"))).toMatchObject({ exit: 2, rules: ["job/folder"] });
    const file = jobFile(good);
    expect(post(file, "rs274ngc", join(folder, "missing", "out.ngc"))).toMatchObject({
      exit: 2,
      rules: ["program/not-writable"],
    });
    expect(left()).toEqual([]);
  });

  it("a full disk", () => {
    expect(post(jobFile(good), "rs274ngc", "/dev/full")).toMatchObject({
      exit: 2,
      rules: ["program/disk-full"],
    });
  });
});

describe("a bad dialect", () => {
  const leaf = (...lines: string[]): string =>
    ["dialect: bad", "title: Bad", "extends: rs274ngc", ...lines, ""].join("\n");
  it.each([
    ["a cycle of extends", "dialect: bad\ntitle: Bad\nextends: bad.dialect.yaml\n", "dialect/extends"],
    [
      "a path outside its folder",
      "dialect: bad\ntitle: Bad\nextends: ../other.dialect.yaml\n",
      "dialect/path",
    ],
    ["an unknown key", leaf("modal: { motoin: each-block }"), "dialect/schema"],
    [
      "a template that names an unknown value",
      leaf('idioms: { message: "(MSG, {{txt}})" }'),
      "dialect/template",
    ],
    [
      "an expression that calls out",
      leaf('confirm: { stopped: { dwell: "process.exit(1)" } }'),
      "dialect/expression",
    ],
    [
      "an expression that mixes units",
      leaf('confirm: { stopped: { dwell: "5 * second + 3 * mm" } }'),
      "dialect/expression",
    ],
    ["prototype keys", leaf("__proto__: { polluted: yes }"), "dialect/(unknown-key|yaml|schema|key)"],
    [
      "text meant to break out of generated code",
      leaf('idioms: { message: "(MSG`${process.exit(1)}\\n*/, {{text}})" }'),
      "dialect/(characters|template|schema|idiom-meaning)",
    ],
    [
      "a needed key that no file states",
      "dialect: bad\ntitle: Bad\nfile: { extension: nc }\n",
      "dialect/undeclared",
    ],
  ])("%s", (_name, text, rule) => {
    writeFileSync(join(folder, "bad.dialect.yaml"), text);
    const run = post(jobFile(good), join(folder, "bad.dialect.yaml"));
    expect(run.rules[0]).toMatch(new RegExp(`^${rule}$`));
    expect(run.exit).toBe(2);
    expect(left()).toEqual([]);
  });
});
