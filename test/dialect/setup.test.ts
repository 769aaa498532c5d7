import { describe, expect, test } from "vitest";
import type { Finding } from "#base";
import type { Setup } from "#dialect";
import { readSetup } from "#dialect";
import { lineOf } from "./findings.ts";

async function read(
  text: string,
): Promise<{ setup: Setup | undefined; lines: string[]; findings: Finding[] }> {
  const findings: Finding[] = [];
  const setup = await readSetup({ file: "bench.yaml", bytes: new TextEncoder().encode(text) }, (finding) =>
    findings.push(finding),
  );
  const lines = findings.map(
    ({ rule, place }) => `${rule} @ ${place?.source} ${place?.file}:${lineOf(text, place?.offset ?? 0)}`,
  );
  return { setup, lines, findings };
}

describe("a set-up file", () => {
  test("in YAML", async () => {
    const { setup, lines } = await read(
      "workOffsets: { 1: [300, 200, -80], 3: [12 in, 0, -2.5] }\nlengths: { 1: 84.2, 12: 3.5 in }\nrack: [1, 0, 3]\nspindleHolds: 2\n",
    );
    expect(lines).toEqual([]);
    expect(setup?.workOffsets[1]).toEqual([3e9, 2e9, -8e8]);
    expect(setup?.workOffsets[3]).toEqual([12 * 254_000_000, 0, -25_000_000]);
    expect(setup?.workOffsets[2]).toBeUndefined();
    expect(setup?.lengths).toEqual({ 1: 842_000_000, 12: 889_000_000 });
    expect(setup?.rack).toEqual([1, 0, 3]);
    expect(setup?.spindleHolds).toBe(2);
  });

  test("in JSON", async () => {
    const { setup } = await read('{ "spindleHolds": "none", "workOffsets": { "2": [1, 2, 3] } }');
    expect(setup?.spindleHolds).toBe(0);
    expect(setup?.rack).toBeUndefined();
    expect(setup?.workOffsets[2]).toEqual([1e7, 2e7, 3e7]);
  });

  test("what it does not state stays open", async () => {
    expect((await read("rack: [1]")).setup?.spindleHolds).toBeUndefined();
  });

  test.each([
    ["an unknown key", "spindleHold: 1\n", "dialect/schema @ setup bench.yaml:1"],
    ["work offset 10", "workOffsets: { 10: [1, 2, 3] }\n", "dialect/schema @ setup bench.yaml:1"],
    ["two coordinates", "rack: [1]\nworkOffsets: { 1: [1, 2] }\n", "dialect/schema @ setup bench.yaml:2"],
    ["a length of nothing", "lengths: { 1: 0 }\n", "dialect/schema @ setup bench.yaml:1"],
    ["a tool in two pockets", "rack:\n  - 1\n  - 2\n  - 1\n", "dialect/setup @ setup bench.yaml:4"],
    [
      "a tool in a pocket and in the spindle",
      "spindleHolds: 2\nrack: [1, 2]\n",
      "dialect/setup @ setup bench.yaml:2",
    ],
    ["an alias", "rack: &a [1]\nlengths: *a\n", "dialect/yaml @ setup bench.yaml:1"],
    ["__proto__", '{ "__proto__": { "rack": [1] } }', "dialect/yaml @ setup bench.yaml:1"],
  ])("%s is refused", async (_what, text, line) => {
    const { setup, lines } = await read(text);
    expect(setup).toBeUndefined();
    expect(lines).toContain(line);
  });
});
