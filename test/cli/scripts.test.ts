import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { Script } from "node:vm";
import { expect, test } from "vitest";
import { keepCompiled, loadScript } from "../../core/9-cli/scripts.ts";
import type { Scripts } from "../../core/9-cli/scripts.ts";
import { command, put, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const kept = `.${process.version}-${process.arch}`;

const scriptOf = (body: string): string =>
  `(function (exports, require, importModule, importMeta) { "use strict"; ${body}\n})`;

/** Loads a script as a thread of its own would. */
const load = (file: string, scripts: Scripts = new Map()): Record<string, unknown> =>
  loadScript(scripts, file);

const valueOf = (exports: Record<string, unknown>): unknown => (exports["value"] as () => unknown)();

/** Puts a script with its compiled code into the folder, that of `value` with it. */
function compiled(name: string, body: string): string {
  const scripts: Scripts = new Map();
  const file = put(folder, name, scriptOf(body));
  valueOf(load(file, scripts));
  keepCompiled(scripts);
  expect(existsSync(file + kept)).toBe(true);
  return file;
}

test("the engine takes the compiled code of every script that the build has kept", () => {
  const place = join(dirname(command), "scripts");
  const files = readdirSync(place).filter((name) => name.endsWith(kept));
  expect(files.length).toBeGreaterThan(10);
  for (const name of files) {
    const source = readFileSync(join(place, name.slice(0, -kept.length)), "utf8");
    const script = new Script(source, { cachedData: readFileSync(join(place, name)).subarray(32) });
    expect([name, script.cachedDataRejected]).toEqual([name, false]);
  }
});

test("scripts find each other once, packages of Node, and what is imported later", async () => {
  put(
    folder,
    "inner.cjs",
    scriptOf("exports.count = (globalThis.innerRuns = (globalThis.innerRuns ?? 0) + 1);"),
  );
  const body = `
    const { count } = require("./inner.cjs");
    const { sep } = require("node:path");
    Object.assign(exports, { count, sep, url: importMeta.url, later: () => importModule("./inner.cjs") });`;
  const exports = load(put(folder, "outer.cjs", scriptOf(body)));
  expect(exports).toMatchObject({ count: 1, sep: "/" });
  expect(exports["url"]).toMatch(/^file:.*outer\.cjs$/);
  expect(await (exports["later"] as () => Promise<unknown>)()).toEqual({ count: 1 });
});

test("compiled code is taken for no other source, even of the same length", () => {
  const file = compiled("changed.cjs", "exports.value = () => 1;");
  writeFileSync(file, scriptOf("exports.value = () => 2;"));
  expect(valueOf(load(file))).toBe(2);
});

test("compiled code that is damaged or cut short is not taken", () => {
  const file = compiled("whole.cjs", "exports.value = () => 'whole';");
  const bytes = readFileSync(file + kept);
  // Under a name of its own each time: the engine remembers what it has compiled in this process.
  const valueWith = (name: string, code: Uint8Array): unknown => {
    const copy = put(folder, `${name}.cjs`, readFileSync(file, "utf8"));
    writeFileSync(copy + kept, code);
    return valueOf(load(copy));
  };
  for (let index = 0; index < bytes.length; index += 3) {
    const damaged = Buffer.from(bytes);
    damaged.writeUInt8(bytes.readUInt8(index) ^ 255, index);
    expect(valueWith(`damaged-${index}`, damaged)).toBe("whole");
  }
  for (const length of [bytes.length - 8, 40, 32, 10, 0])
    expect(valueWith(`short-${length}`, bytes.subarray(0, length))).toBe("whole");
});
