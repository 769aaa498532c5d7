import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { longJob, plateDialect, put, run, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
put(folder, "small.job.json", longJob(3));
const dialect = join(folder, "mine.dialect.yaml");
copyFileSync(plateDialect, dialect);

/** Posts with a cache folder of its own; gives the program and the entries of the cache. */
function post(cache: string, ...more: string[]): { program: string; entries: string[] } {
  const env = { XDG_CACHE_HOME: cache };
  const words = ["post", "small.job.json", "-d", "mine.dialect.yaml", "-o", "-", "--quiet", ...more];
  const { status, stdout, stderr } = run(words, { cwd: folder, env });
  expect({ status, errors: /^error/m.test(stderr) }).toEqual({ status: 0, errors: false });
  const where = join(cache, "tapewright");
  const entries = existsSync(where) ? readdirSync(where) : [];
  return { program: stdout, entries: entries.map((name) => join(where, name)) };
}

test("a dialect file is kept in a folder of the user alone, and used again", () => {
  const cache = join(folder, "cache-a");
  const first = post(cache);
  expect(first.entries).toHaveLength(1);
  expect(statSync(join(cache, "tapewright")).mode & 0o777).toBe(0o700);
  expect(statSync(first.entries[0]).mode & 0o777).toBe(0o600);
  const kept = readFileSync(first.entries[0], "utf8");
  const written = statSync(first.entries[0]).mtimeMs;
  const second = post(cache);
  expect(second.program).toBe(first.program);
  expect(statSync(second.entries[0]).mtimeMs).toBe(written);
  expect(readFileSync(second.entries[0], "utf8")).toBe(kept);
});

test("a damaged entry is built again", () => {
  const cache = join(folder, "cache-b");
  const { program, entries } = post(cache);
  const good = readFileSync(entries[0], "utf8");
  const damages = [
    good.slice(0, good.length / 2),
    good.replace("emitUnproved", "emitUnprovem"),
    `${good.split("\n")[0]}\n{}`,
  ];
  for (const damage of damages) {
    writeFileSync(entries[0], damage);
    expect(post(cache).program).toBe(program);
    expect(readFileSync(entries[0], "utf8")).toBe(good);
  }
});

test("a change in any file of the chain counts", () => {
  const cache = join(folder, "cache-c");
  const middle = join(folder, "middle.dialect.yaml");
  const leaf = join(folder, "leaf.dialect.yaml");
  writeFileSync(
    middle,
    readFileSync(plateDialect, "utf8").replace("dialect: quarry-router", "dialect: middle"),
  );
  writeFileSync(leaf, "dialect: leaf\ntitle: Leaf\nextends: middle.dialect.yaml\nfile: { extension: aaa }\n");
  const words = ["post", "small.job.json", "-d", "leaf.dialect.yaml", "-o", "-", "--quiet"];
  const program = (): string => run(words, { cwd: folder, env: { XDG_CACHE_HOME: cache } }).stdout;
  const first = program();
  expect(program()).toBe(first);
  writeFileSync(middle, readFileSync(middle, "utf8").replace("timeout: 10 s", "timeout: 11 s"));
  expect(program()).toBe(first.replaceAll("M94 P4 R1 Q10.0", "M94 P4 R1 Q11.0"));
  expect(first).toContain("M94 P4 R1 Q10.0");
});

test("--no-cache keeps nothing and uses nothing", () => {
  const cache = join(folder, "cache-d");
  expect(post(cache, "--no-cache").entries).toEqual([]);
  const { program, entries } = post(cache);
  writeFileSync(entries[0], "damaged");
  expect(post(cache, "--no-cache").program).toBe(program);
  expect(readFileSync(entries[0], "utf8")).toBe("damaged");
});

test("a folder that others can write to, a link, a file, or a folder that cannot be made is not used", () => {
  const open = join(folder, "cache-e");
  mkdirSync(join(open, "tapewright"), { recursive: true });
  chmodSync(join(open, "tapewright"), 0o777);
  expect(post(open).entries).toEqual([]);
  const linked = join(folder, "cache-f");
  mkdirSync(linked);
  mkdirSync(join(folder, "real-cache"), { mode: 0o700 });
  symlinkSync(join(folder, "real-cache"), join(linked, "tapewright"));
  expect(post(linked).entries).toEqual([]);
  post(put(folder, "cache-g", "a file"));
  post("relative");
  expect(readdirSync(folder)).not.toContain("relative");
});

test("a refused dialect is not kept", () => {
  const cache = join(folder, "cache-h");
  put(folder, "bad.dialect.yaml", readFileSync(plateDialect, "utf8").replace("swap: rack", "swap: rak"));
  const words = ["post", "small.job.json", "-d", "bad.dialect.yaml"];
  const { status, stderr } = run(words, { cwd: folder, env: { XDG_CACHE_HOME: cache } });
  expect(status).toBe(2);
  expect(stderr).toMatch(/bad\.dialect\.yaml:\d+:\d+\n/);
  expect(readdirSync(join(cache, "tapewright"))).toEqual([]);
});
