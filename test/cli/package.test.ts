import { execFileSync, spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, symlinkSync } from "node:fs";
import { isBuiltin } from "node:module";
import { join, resolve } from "node:path";
import { beforeAll, expect, test } from "vitest";
import type { JsonReport } from "./command.ts";
import { environment, plateDialect, plateJob, put, temporaryFolder } from "./command.ts";

const root = resolve(import.meta.dirname, "../..");
const folder = temporaryFolder();
const modules = join(folder, "node_modules");
const installed = join(modules, "tapewright");
const command = join(installed, "dist/cli.js");

/** What is not in the bundles has to be installed beside the package. */
const besides = ["typescript"];

beforeAll(() => {
  // `npm test` has built; building again here would take the files away under the other tests.
  const words = ["pack", "--ignore-scripts", "--json", "--pack-destination", folder];
  const [{ filename }] = JSON.parse(execFileSync("npm", words, { cwd: root, encoding: "utf8" })) as {
    filename: string;
  }[];
  mkdirSync(installed, { recursive: true });
  execFileSync("tar", ["-xzf", join(folder, filename), "-C", installed, "--strip-components=1"]);
  for (const name of besides) symlinkSync(join(root, "node_modules", name), join(modules, name));
  copyFileSync(plateJob, join(folder, "plate.job.json"));
  copyFileSync(plateDialect, join(folder, "mine.dialect.yaml"));
  put(folder, "package.json", '{ "type": "module" }\n');
});

test("the package holds what it needs, and nothing of its workshop", () => {
  const top = readdirSync(installed).sort();
  expect(top).toEqual(
    expect.arrayContaining(["LICENSE", "dialects", "dist", "examples", "package.json", "schemas"]),
  );
  for (const name of ["core", "test", "node_modules", ".ci", "tsconfig.json"])
    expect(top).not.toContain(name);
  expect(existsSync(join(installed, "dist/third-party-licences.txt"))).toBe(true);
});

test("the packages that the bundles leave out are dependencies", () => {
  const { dependencies } = JSON.parse(readFileSync(join(installed, "package.json"), "utf8")) as {
    dependencies: Record<string, string>;
  };
  const files = readdirSync(join(installed, "dist"), { recursive: true, encoding: "utf8" }).filter((name) =>
    /\.c?js$/.test(name),
  );
  const named = files.flatMap((name) => {
    const text = readFileSync(join(installed, "dist", name), "utf8");
    const asked = /(?:^import [^"'\n]*from |^const [^"'\n]* = require\()"([^."][^"]*)"\)?;$/gm;
    return [...text.matchAll(asked)].map(([, module]) => module);
  });
  const outside = new Set(named.filter((name) => !isBuiltin(name)));
  expect([...outside].sort()).toEqual(besides);
  for (const name of besides) expect(dependencies).toHaveProperty(name);
});

test("the command posts with a shipped dialect and with a file of one's own", () => {
  for (const dialect of ["explicit-words", "mine.dialect.yaml"]) {
    const words = [
      command,
      "post",
      "plate.job.json",
      "-d",
      dialect,
      "-o",
      `${dialect}.tap`,
      "--report",
      "json",
    ];
    const env = environment(join(folder, ".cache"));
    const { status, stdout, stderr } = spawnSync(process.execPath, words, {
      cwd: folder,
      encoding: "utf8",
      env,
    });
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect((JSON.parse(stdout) as JsonReport).verdict).toBe("proved");
  }
});

const consumer = `
import { readFileSync } from "node:fs";
import type { DialectLoader, Finding } from "tapewright";
import { jsonReport, locate, memorySource, postText, prepareDialect, proveText } from "tapewright";

const loader: DialectLoader = {
  shipped: ["explicit-words", "iso-6983"],
  readShipped: (name) => read(\`node_modules/tapewright/dialects/\${name}.dialect.yaml\`),
  readFile: read,
};
function read(file: string) {
  return { file, bytes: new Uint8Array(readFileSync(file)) };
}

const findings: Finding[] = [];
const ready = await prepareDialect("mine.dialect.yaml", loader, (finding) => void findings.push(finding));
if (ready === undefined) throw new Error(JSON.stringify(findings));
const job = readFileSync("plate.job.json", "utf8");
const { outcome, program } = postText({ job }, ready);
if (program === undefined) throw new Error(JSON.stringify(outcome.findings));
const again = proveText(program, ready, { job });
const source = { file: "plate.job.json", bytes: memorySource(new TextEncoder().encode(job)) };
const report = jsonReport({ ...again, findings: locate(again.findings, () => source) });
console.log(JSON.stringify({ verdict: again.verdict, sha256: again.proof?.sha256, same: again.proof?.facts === outcome.proof?.facts, size: program.length, report: JSON.parse(report).verdict }));
`;

test("the library has types, and works on texts in memory", () => {
  put(folder, "consumer.ts", consumer);
  const compiler = join(root, "node_modules/typescript/bin/tsc");
  const options = [
    "--target",
    "es2023",
    "--module",
    "nodenext",
    "--strict",
    "--lib",
    "es2023",
    "--skipLibCheck",
    "false",
  ];
  const types = ["--types", "node", "--typeRoots", join(root, "node_modules/@types")];
  const compiled = spawnSync(process.execPath, [compiler, ...options, ...types, "consumer.ts"], {
    cwd: folder,
    encoding: "utf8",
  });
  expect(compiled.stdout).toBe("");
  const ran = spawnSync(process.execPath, ["consumer.js"], { cwd: folder, encoding: "utf8" });
  expect(ran.stderr).toBe("");
  const said = JSON.parse(ran.stdout) as { size: number; sha256: string };
  expect(said).toMatchObject({ verdict: "proved", same: true, report: "proved" });
  expect(said.size).toBe(readFileSync(join(folder, "mine.dialect.yaml.tap")).length);
});
