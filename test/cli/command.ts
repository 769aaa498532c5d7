import type { SpawnSyncReturns } from "node:child_process";
import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll } from "vitest";

const root = resolve(import.meta.dirname, "../..");

/** The built command; `npm test` builds it first. */
export const command = join(root, "dist/cli.js");
export const plateJob = join(root, "examples/weather-plate/weather-plate.job.json");
export const plateDialect = join(root, "examples/weather-plate/quarry-router.dialect.yaml");

/** A folder that is gone after the tests of a file. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "tapewright-cli-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** The environment of a command in tests: its own cache, no colour unless asked for. */
export function environment(cache: string, more: NodeJS.ProcessEnv = {}): NodeJS.ProcessEnv {
  const { NO_COLOR: _, ...rest } = process.env;
  return { ...rest, XDG_CACHE_HOME: cache, ...more };
}

/** How a command is run. */
export interface Running {
  readonly cwd: string;
  readonly input?: string | Uint8Array;
  readonly env?: NodeJS.ProcessEnv;
}

/** Runs the built command to its end. */
export function run(words: readonly string[], { cwd, input, env = {} }: Running): SpawnSyncReturns<string> {
  return spawnSync(process.execPath, [command, ...words], {
    cwd,
    encoding: "utf8",
    input,
    env: environment(join(cwd, ".cache"), env),
    maxBuffer: 2 ** 28,
  });
}

/** Starts the built command. */
export function start(words: readonly string[], { cwd, env = {} }: Running) {
  return spawn(process.execPath, [command, ...words], {
    cwd,
    env: environment(join(cwd, ".cache"), env),
    stdio: ["ignore", "pipe", "pipe"],
  });
}

/** A report as scripts get it. */
export interface JsonReport {
  readonly verdict: string;
  readonly findings: readonly {
    readonly rule: string;
    readonly severity: string;
    readonly message: string;
    readonly file?: string;
    readonly line?: number;
    readonly column?: number;
    readonly fix?: string;
    readonly dialect?: { readonly file: string; readonly line: number; readonly key: string };
  }[];
  readonly summary: Readonly<Record<string, unknown>>;
}

/** Runs the command with `--report json`. */
export function runJson(
  words: readonly string[],
  running: Running,
): { status: number | null; report: JsonReport } {
  const { status, stdout } = run([...words, "--report", "json"], running);
  return { status, report: JSON.parse(stdout) as JsonReport };
}

/** Writes a file of a test and gives its path. */
export function put(folder: string, name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** A job of one operation that mills to and fro, with as many lines as wanted; `depth` makes two jobs differ. */
export function longJob(lines: number, depth = -1): string {
  const points = Array.from(
    { length: lines },
    (_, index) => `[${index % 90}.5,${(index * 7) % 80}.25,${depth}]`,
  );
  return `{ "job": "1", "name": "long", "units": "mm", "workOffset": 1, "clearance": 15,
"tools": [{ "number": 1, "kind": "end-mill", "diameter": 6, "description": "end-mill 6" }],
"operations": [{ "id": "op10", "name": "mill", "tool": 1, "spindle": { "rpm": 12000, "direction": "cw" }, "moves": [
{ "rapid": { "x": 0, "y": 0 } }, { "rapid": { "z": 2 } }, { "line": { "z": ${depth} }, "feed": 200 },
{ "path": { "kind": "line", "points": [
${points.join(",\n")}
] }, "feed": 900 } ] }] }
`;
}
