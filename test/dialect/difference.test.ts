import { expect, test } from "vitest";
import type { DialectLoader, KeyDifference } from "#dialect";
import { compareDialects } from "#dialect";
import { dialectLoader } from "../support/dialects.ts";
import { shippedDialects } from "../support/examples.ts";

async function compare(
  one: string,
  other: string,
  loader: DialectLoader = dialectLoader(),
): Promise<KeyDifference[]> {
  const found = await compareDialects([one, other], [loader, loader], (finding) =>
    expect.fail(finding.message),
  );
  return found!;
}

/** The line of the root dialect that begins with a text. */
function lineOf(begin: string): number {
  const text = new TextDecoder().decode(dialectLoader().readShipped("iso-6983")!.bytes);
  return text.split("\n").findIndex((line) => line.startsWith(begin)) + 1;
}

const head = "dialect: own\ntitle: own\nextends: rs274ngc\n";

/** The differences of a file from rs274ngc, but for its names. */
async function fromParent(text: string): Promise<KeyDifference[]> {
  const found = await compare("own.yaml", "rs274ngc", dialectLoader({ "own.yaml": head + text }));
  return found.filter(({ key }) => key !== "dialect" && key !== "title");
}

test("a key that differs has both values, each with its file and line", async () => {
  expect(await fromParent("modal: { motion: each-block }\n")).toEqual([
    {
      key: "modal.motion",
      first: { value: "each-block", file: "own.yaml", line: 4 },
      second: { value: "modal", file: "iso-6983.dialect.yaml", line: lineOf("modal:") },
    },
  ]);
});

test("what is said again in other writing is no difference", async () => {
  const again =
    'spindle: { cw: "M03" }\nwork-offset: [G54, G55, G56, G57, G58, G59, G59.1, G59.2, G59.3]\nblocks: { longest: 80.0 }\n';
  expect(await fromParent(again)).toEqual([]);
});

test("a group that is none is none for each key in it, at its own line", async () => {
  const found = await fromParent("cycles: none\n");
  expect(found.length).toBeGreaterThan(5);
  for (const { key, first, second } of found) {
    expect(key).toMatch(/^cycles\./);
    expect(first).toEqual({ value: "none", file: "own.yaml", line: 4 });
    expect(second?.value).not.toBe("none");
  }
});

test("a key that one of them alone states, and one that takes another form", async () => {
  const found = await fromParent('machine: { rack: none }\nconfirm: { at-speed: { dwell: "1 * second" } }\n');
  expect(found).toEqual([
    { key: "machine.rack", first: { value: "none", file: "own.yaml", line: 4 }, second: undefined },
    {
      key: "confirm.at-speed.dwell",
      first: { value: "1 * second", file: "own.yaml", line: 5 },
      second: expect.objectContaining({ value: "20 s" }) as unknown,
    },
  ]);
});

test("no dialect differs from itself, and both ways differ in the same keys, in the order of the schema", async () => {
  for (const name of shippedDialects) {
    expect(await compare(name, name)).toEqual([]);
    const there = await compare(name, "iso-6983");
    const back = await compare("iso-6983", name);
    expect(back).toEqual(there.map(({ key, first, second }) => ({ key, first: second, second: first })));
  }
  const keys = (await compare("longhand", "rs274ngc")).map(({ key }) => key);
  expect(keys.length).toBeGreaterThan(60);
  expect(keys.indexOf("file.extension")).toBeLessThan(keys.indexOf("numbers.plus"));
  expect(keys.indexOf("numbers.plus")).toBeLessThan(keys.indexOf("modal.motion"));
});

/** Each value, put into a file that extends the dialect it is said to be of, changes nothing there. */
test("each value that is shown is the one in force", async () => {
  for (const [one, other] of [
    ["longhand", "rs274ngc"],
    ["explicit-words", "staged-tools"],
  ]) {
    for (const { key, second } of await compare(one, other)) {
      if (second === undefined || second.value === "none" || key === "dialect") continue;
      const own = `dialect: own\nextends: ${other}\n${nested(key, second.value)}\n`;
      const kept = await compare("own.yaml", other, dialectLoader({ "own.yaml": own }));
      expect([key, kept.map((difference) => difference.key)]).toEqual([key, ["dialect"]]);
    }
  }
});

/** "a.b", "v" -> "a: { b: v }" */
function nested(key: string, value: string): string {
  const steps = key.split(".");
  const braces = steps.slice(1).map((step) => `{ ${step}: `);
  return `${steps[0]}: ${braces.join("")}${value}${" }".repeat(braces.length)}`;
}
