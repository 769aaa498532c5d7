import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import ts from "typescript";
import { beforeAll, expect, test } from "vitest";
import type { Batch } from "#base";
import { read } from "#read";
import { dialectName, examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { withoutComments } from "../support/without-comments.ts";
import { put, run, temporaryFolder } from "./command.ts";

/*
 * The modules that `dialect build` writes, used where nothing of this package is: an empty folder without node_modules, and
 * a realm that has what browsers and Node have in common.
 */
const folder = temporaryFolder();
const root = resolve(import.meta.dirname, "../..");

/** A program of the goldens, as the sequence that is read in it. */
interface Case {
  readonly name: string;
  readonly module: string;
  readonly units: "mm" | "inch";
  readonly batches: readonly unknown[];
  /** The program without comment blocks, which are no steps. */
  readonly text: string;
}

const cases: Case[] = [];

beforeAll(async () => {
  const dialects = new Set(examples.flatMap((example) => example.dialects));
  for (const dialect of dialects) {
    const name = dialectName(dialect);
    for (const words of [
      ["-o", `${name}.js`],
      ["-o", `${name}.traced.js`, "--traced"],
    ]) {
      const { status, stderr } = run(["dialect", "build", dialect, ...words], { cwd: folder });
      expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    }
    for (const example of examples.filter((one) => one.dialects.includes(dialect))) {
      const golden = join(root, "test/goldens", `${example.name}.${name}.program.txt`);
      if (existsSync(golden)) cases.push(await caseOf(dialect, golden, example.job));
    }
  }
  put(folder, "cases.json", JSON.stringify(cases));
  put(folder, "revive.mjs", revive);
});

async function caseOf(dialect: string, golden: string, job: string): Promise<Case> {
  const program = readFileSync(golden, "utf8");
  const { format, machine } = (await ready(dialect)).dialect;
  const own = JSON.parse(job) as { units: "mm" | "inch" };
  const units = format.unitsIn === "job" ? own.units : format.unitsIn;
  const bytes = new TextEncoder().encode(program);
  const batches = [
    ...map(
      read([bytes], format, machine, { units }, () => undefined),
      packed,
    ),
  ];
  const text = withoutComments(program, format);
  return { name: basename(golden), module: dialectName(dialect), units, batches, text };
}

function* map<A, B>(values: Iterable<A>, change: (value: A) => B): Generator<B> {
  for (const value of values) yield change(value);
}

/** A batch as JSON can have it. */
function packed(batch: Batch): unknown {
  const column = (values: ArrayLike<number>): number[] => Array.from(values).slice(0, batch.count);
  const columns = Object.entries(batch).filter(([, values]) => ArrayBuffer.isView(values));
  return {
    count: batch.count,
    ...Object.fromEntries(columns.map(([name, values]) => [name, column(values as Float64Array)])),
    ...(batch.abc ? { abc: batch.abc.map(column) } : {}),
    asides: structuredClone(batch.asides),
    sections: batch.sections,
    sectionNames: batch.sectionNames,
  };
}

/** Makes typed columns of it again, in whatever realm it runs. */
const revive = `
export const revive = (batch) => ({
  ...batch,
  ...Object.fromEntries(["kind", "frame", "known", "stated"].map((name) => [name, Uint8Array.from(batch[name])])),
  ...Object.fromEntries(["x", "y", "z", "feed", "c1", "c2", "source"].map((name) => [name, Float64Array.from(batch[name])])),
  abc: batch.abc?.map((column) => Float64Array.from(column)),
  turns: Int16Array.from(batch.turns),
  aside: Int32Array.from(batch.aside),
});
export const write = (emitUnproved, { units, batches }) => {
  const bytes = [];
  for (const chunk of emitUnproved(batches.map(revive), { units, header: [] })) bytes.push(...chunk);
  return bytes.map((byte) => String.fromCharCode(byte)).join("");
};
`;

/** Runs a script in the folder, with nothing to import but what stands there. */
function runScript(name: string, script: string, ...flags: string[]): unknown {
  put(folder, name, script);
  const { stdout, stderr, status } = spawnSync(process.execPath, ["--no-warnings", ...flags, name], {
    cwd: folder,
    encoding: "utf8",
    env: {},
    maxBuffer: 2 ** 28,
  });
  expect({ stderr, status }).toEqual({ stderr: "", status: 0 });
  return JSON.parse(stdout);
}

function expected(): Record<string, string> {
  return Object.fromEntries(cases.map(({ name, text }) => [name, text]));
}

test("there is a program for each kind of dialect that has one", () => {
  expect(cases.length).toBeGreaterThanOrEqual(5);
  expect(existsSync(join(folder, "node_modules"))).toBe(false);
});

test.each(["", ".traced"])(
  "in a fresh process, a built module%s prints every program as it is proved",
  (kind) => {
    const written = runScript(
      "use.mjs",
      `import { readFileSync } from "node:fs";
import { write } from "./revive.mjs";
const texts = {};
for (const one of JSON.parse(readFileSync("cases.json", "utf8"))) {
  const { emitUnproved } = await import("./" + one.module + "${kind}.js");
  texts[one.name] = write(emitUnproved, one);
}
console.log(JSON.stringify(texts));`,
    );
    expect(written).toEqual(expected());
  },
);

test("in a realm without anything of Node, a built module prints the same", () => {
  const written = runScript(
    "realm.mjs",
    `import { readFileSync } from "node:fs";
import { createContext, SourceTextModule } from "node:vm";
const texts = {};
for (const one of JSON.parse(readFileSync("cases.json", "utf8"))) {
  const context = createContext({ TextEncoder });
  const linked = { write: readFileSync("revive.mjs", "utf8"), emitter: readFileSync(one.module + ".js", "utf8") };
  const make = (text) => new SourceTextModule(text, { context });
  const main = make(\`import { emitUnproved } from "emitter"; import { write } from "write";
    export const globals = ["process", "Buffer", "require", "global", "setTimeout", "URL"].filter((name) => name in globalThis);
    export const text = write(emitUnproved, \${JSON.stringify(one)});\`);
  await main.link((name, from) => {
    if (from !== main || !(name in linked)) throw new Error("a module imports " + name);
    return make(linked[name]);
  });
  await main.evaluate();
  if (main.namespace.globals.length > 0) throw new Error("the realm has " + main.namespace.globals);
  texts[one.name] = main.namespace.text;
}
console.log(JSON.stringify(texts));`,
    "--experimental-vm-modules",
  );
  expect(written).toEqual(expected());
});

test("the example of the README prints what it says", () => {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  const [, section] = /### A dialect's emitter in a program of your own\n(.*?)\n## /s.exec(readme) ?? [];
  const [build, script, printed] = (section.match(/(?:^ {4}.*\n|^\n(?= {4}))+/gm) ?? []).map((block) =>
    block.replace(/^ {4}/gm, "").trim(),
  );
  const [npx, name, ...words] = build.split(" ");
  expect([npx, name]).toEqual(["npx", "tapewright"]);
  expect(run(words, { cwd: folder }).status).toBe(0);
  put(folder, "example.mjs", script);
  const { stdout, stderr } = spawnSync(process.execPath, ["--no-warnings", "example.mjs"], {
    cwd: folder,
    encoding: "utf8",
  });
  expect({ stdout: stdout.trim(), stderr }).toEqual({ stdout: printed, stderr: "" });
});

/** What the compiler says of a consumer of a built module, with its types and those of the language alone. */
function diagnose(consumer: string): string[] {
  const file = put(folder, "consumer.mts", consumer);
  const program = ts.createProgram([file], {
    strict: true,
    noEmit: true,
    skipLibCheck: false,
    target: ts.ScriptTarget.ES2022,
    lib: ["lib.es2022.d.ts"],
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    types: [],
    typeRoots: [],
  });
  return ts
    .getPreEmitDiagnostics(program)
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, " "));
}

const consumer = `
import { cleanText, emitUnproved } from "./rs274ngc.js";
import type { Batch, EmitOptions, Step } from "./rs274ngc.js";
import { traceKeys } from "./rs274ngc.traced.js";

const asides: Step[] = [{ kind: "program-start", number: 0 }, { kind: "message", text: cleanText("hello") }];
const batch: Batch = {
  count: 2, kind: Uint8Array.of(9, 9), frame: new Uint8Array(2), known: new Uint8Array(2), stated: new Uint8Array(2),
  x: new Float64Array(2), y: new Float64Array(2), z: new Float64Array(2), abc: undefined, feed: new Float64Array(2),
  c1: new Float64Array(2), c2: new Float64Array(2), turns: new Int16Array(2), aside: Int32Array.of(0, 1),
  source: new Float64Array(2), asides,
};
const options: EmitOptions = { units: "mm", header: [], trace: (offset: number, key: number) => void traceKeys[key + offset] };
export const bytes: Uint8Array[] = Array.from(emitUnproved([batch], options), (chunk) => chunk.slice());
`;

test("the types check with no others", () => {
  expect(diagnose(consumer)).toEqual([]);
});

test.each([
  ["units are left out", `{ units: "mm", header: [],`, `{ header: [],`, /units/],
  ["a unit is none", `units: "mm"`, `units: "cm"`, /"cm"/],
  ["a step is none", `kind: "program-start", number: 0`, `kind: "program-begin", number: 0`, /program-begin/],
  ["a step lacks a field", `{ kind: "program-start", number: 0 }`, `{ kind: "program-start" }`, /number/],
  ["a column is left out", `feed: new Float64Array(2),`, ``, /feed/],
  ["a column is of another type", `turns: new Int16Array(2)`, `turns: new Float64Array(2)`, /Int16Array/],
  ["a plain module has no keys", `"./rs274ngc.traced.js"`, `"./rs274ngc.js"`, /traceKeys/],
])("the types reject a consumer: %s", (_what, from, to, says) => {
  expect(consumer).toContain(from);
  expect(diagnose(consumer.replace(from, to)).join("\n")).toMatch(says);
});
