import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { studyDialect } from "#dialect";
import type { DialectLoader, Inherited } from "#dialect";
import { dialectLoader, quarryRouter } from "../support/dialects.ts";
import { resolveText } from "./findings.ts";

const leaf = [
  "dialect: own",
  "title: Own",
  "extends: rs274ngc",
  "machine: { swap: operator, travel: { x: [0, 500] }, spindle: { max-rpm: 12000 } }",
  "confirm: { stopped: { dwell: 30 s } }",
].join("\n");

async function inheritedValues(name: string, loader: DialectLoader): Promise<Inherited[]> {
  return (await studyDialect(name, loader, () => undefined))!.inherited();
}

test("what a leaf has from the files that it extends, with the line that states it; not what it states itself", async () => {
  const found = await inheritedValues("own.yaml", dialectLoader({ "own.yaml": leaf }));
  const values = Object.fromEntries(found.map(({ key, value }) => [key, value]));
  expect(values).toMatchObject({
    "units.programs-in": "job",
    "distance.programs-in": "absolute",
    "machine.retract.by": "machine-move",
    "machine.change-effects.spindle": "stopped",
    "confirm.at-speed.dwell": "20 s",
  });
  expect(Object.keys(values).filter((key) => /swap|confirm.stopped|travel/.test(key))).toEqual([]);
  for (const { key, file, line } of found) {
    const text = new TextDecoder().decode(
      dialectLoader().readShipped(file.replace(".dialect.yaml", ""))!.bytes,
    );
    expect(text.split("\n")[line - 1]).toContain(`${key.split(".").at(-1)!}: `);
  }
});

test("a dialect that extends none inherits nothing", async () => {
  expect(await inheritedValues("iso-6983", dialectLoader())).toEqual([]);
});

test("a machine in part says which of its facts are missing, and which come from a dialect without a machine", async () => {
  const { dialect } = await resolveText(leaf);
  expect(dialect!.machine.unsaid).toEqual([
    "machine.travel.y",
    "machine.travel.z",
    "machine.spindle.min-rpm",
    "confirm.at-speed",
  ]);
  const whole = await resolveText(readFileSync(quarryRouter, "utf8"));
  expect(whole.dialect!.machine.unsaid).toEqual([]);
  const none = await resolveText("dialect: own\nextends: rs274ngc\n");
  expect([none.dialect!.machine.declared, none.dialect!.machine.unsaid]).toEqual([false, []]);
});
