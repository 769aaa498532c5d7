import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { measure } from "../bench/measure.ts";
import { command, longJob, plateDialect, put, run, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
put(folder, "small.job.json", longJob(200));

const log = join(folder, "loaded.txt");
const watcher = put(
  folder,
  "watch.mjs",
  // Scripts are read as files, by this package and by Node alike; modules are not loaded but through the command's entry.
  `import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
const { appendFileSync, readFileSync } = fs;
fs.readFileSync = (path, ...options) => {
  if (/\\.c?js$/.test(String(path))) appendFileSync(${JSON.stringify(log)}, String(path) + "\\n");
  return readFileSync(path, ...options);
};
syncBuiltinESMExports();
`,
);

/** Packages and parts of this one whose code a command has loaded: "node_modules/yaml", "core/1-job". */
function loadedBy(...words: string[]): Set<string> {
  rmSync(log, { force: true });
  const { status } = run(words, { cwd: folder, env: { NODE_OPTIONS: `--import ${watcher}` } });
  expect(status).toBe(0);
  const paths = existsSync(log) ? readFileSync(log, "utf8").trim().split("\n") : [];
  expect(paths.length).toBeGreaterThan(0);
  return new Set(paths.flatMap(partsOf));
}

/** The bundler says in a comment where each part of a file comes from. */
function partsOf(path: string): string[] {
  const inBundle = [
    ...readFileSync(path, "utf8").matchAll(/^\/\/ (?:.*\/)?(node_modules\/(?:@[^/]+\/)?[^/]+|core\/[^/]+)/gm),
  ];
  const [outside] = /node_modules\/[^/]+/.exec(path.replace(/.*\/dist\//, "")) ?? [];
  return [...inBundle.map(([, part]) => part), ...(outside === undefined ? [] : [outside])];
}

const heavy = ["ajv", "cli-progress", "handlebars", "typescript", "yaml"].map(
  (name) => `node_modules/${name}`,
);

test("a help page loads the command line and no stage", () => {
  const loaded = loadedBy("post", "--help");
  expect(loaded).toContain("node_modules/yargs");
  for (const part of [...heavy, "core/1-job", "core/5-emit", "core/7-prove"])
    expect(loaded).not.toContain(part);
});

test("posting with a shipped dialect loads no YAML, schema compiler, template parser or TypeScript", () => {
  const loaded = loadedBy("post", "small.job.json", "-d", "explicit-words", "-o", "a.tap");
  expect(loaded).toContain("core/7-prove");
  for (const part of heavy) expect(loaded).not.toContain(part);
});

test("posting with a file of one's own loads them once, and not from the cache", () => {
  const words = ["post", "small.job.json", "-d", plateDialect, "-o", "b.tap"];
  const first = loadedBy(...words);
  for (const part of ["handlebars", "typescript", "yaml"]) expect(first).toContain(`node_modules/${part}`);
  const second = loadedBy(...words);
  for (const part of heavy) expect(second).not.toContain(part);
});

test("building a dialect of one's own takes little more memory than the compiler that it needs", () => {
  const job = join(folder, "small.job.json");
  const words = ["post", job, "-d", plateDialect, "-o", join(folder, "c.tap"), "--no-cache", "--quiet"];
  // The compiler alone takes 88 MB; in one thread with the posting it was 160.
  expect(measure([command, ...words]).peak).toBeLessThan(140);
});
