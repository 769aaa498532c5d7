import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { resolveText } from "./findings.ts";
import { router, routerText } from "./router.ts";
import type { SenseCase } from "./sense-case.ts";
import { machineCases } from "./sense-machine.ts";
import { wordCases } from "./sense-words.ts";

const cases: Readonly<Record<string, SenseCase>> = { ...wordCases, ...machineCases };

test.each(Object.entries(cases))("%s", async (_name, { text, extends: parent = "rs274ngc", finds }) => {
  // The router stands beside the file, where a relative `extends` finds it.
  const extending = parent === router ? router : parent;
  const outcome = await resolveText(`dialect: own\nextends: ${extending}\n${text}\n`, {
    [router]: routerText,
  });
  const wanted = finds.filter((line) => line.includes("@ 1"));
  const here = finds.filter((line) => !line.includes("@ 1"));
  const got = outcome.lines.filter((line) => line.includes("@ own.yaml"));
  expect(got.map((line) => line.replace("@ own.yaml:", "@ "))).toEqual(
    here.map((line) => (line.includes("@") ? line : `${line} @ 3`)),
  );
  // Findings on inherited keys stand where the value stands, in another file.
  const elsewhere = outcome.lines.filter((line) => !line.includes("@ own.yaml"));
  expect(elsewhere.map((line) => line.replace(/ @ .*/, ""))).toEqual(
    wanted.map((line) => line.replace(" @ 1", "")),
  );
  expect(outcome.dialect === undefined).toBe(finds.length > 0);
});

test("each finding says what to do or names the key that is wrong", async () => {
  for (const { text, extends: parent = "rs274ngc" } of Object.values(cases)) {
    const { findings } = await resolveText(`dialect: own\nextends: ${parent}\n${text}\n`, {
      [router]: routerText,
    });
    for (const { message, key, severity } of findings) {
      expect(severity).toBe("error");
      expect(message).toMatch(/^[`A-ZT].{15,}[.?]$/);
      expect(key).toBeDefined();
    }
  }
});

test("every rule of this stage has a case", () => {
  const read = (folder: string, ending: string): string =>
    readdirSync(folder)
      .filter((name) => name.endsWith(ending) && !name.includes("generated"))
      .map((name) => readFileSync(join(folder, name), "utf8"))
      .join("\n");
  const sources = read(resolve(import.meta.dirname, "../../core/2-dialect"), ".ts");
  const tests = read(import.meta.dirname, ".ts");
  const rules = new Set([...[...sources.matchAll(/"(dialect\/[a-z-]+)"/g)].map(([, rule]) => rule)]);
  expect(rules.size).toBeGreaterThan(20);
  for (const rule of rules) expect(tests.includes(rule) ? rule : `no case for ${rule}`).toBe(rule);
});
