import { describe, expect, test } from "vitest";
import type { UnitSystem } from "#base";
import { postText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";

const moves = 100_000;

/** Numbers from 0 to 1, the same in each run (a linear congruence with the constants of Park and Miller). */
function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** A job of random moves whose places have more decimals than the program, so that each is rounded. */
function job(units: UnitSystem): string {
  const random = randomNumbers(39);
  const most = units === "mm" ? 200 : 8;
  const place = (): number => Number(((random() - 0.5) * most).toFixed(6));
  const cuts = Array.from({ length: moves }, () => ({ line: { x: place(), y: place(), z: -1 - random() } }));
  return JSON.stringify({
    job: "1",
    name: "Drift",
    units,
    clearance: units === "mm" ? 15 : 0.6,
    tools: [{ number: 1, kind: "end-mill", diameter: units === "mm" ? 6 : 0.25 }],
    operations: [
      {
        id: "op10",
        name: "Drift",
        tool: 1,
        spindle: { rpm: 9000, direction: "cw" },
        moves: [
          { rapid: { x: place(), y: place() } },
          { line: { z: -1 }, feed: units === "mm" ? 900 : 35 },
          ...cuts,
          { rapid: { z: units === "mm" ? 15 : 0.6 } },
        ],
      },
    ],
  });
}

/** The program under a dialect with these decimals, whose words are places or ways. */
async function program(distance: "absolute" | "incremental", units: UnitSystem, decimals: number) {
  const text = [
    "dialect: leaf\ntitle: A leaf\nextends: rs274ngc",
    `units: { programs-in: ${units} }`,
    `distance: { programs-in: ${distance} }`,
    `numbers: { length: { ${units}: ${decimals} }, arc-centre: { ${units}: ${decimals} }, trailing-zeros: keep, point: always }`,
  ].join("\n");
  const dialect = await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": text });
  const posted = postText({ job: job(units) }, dialect);
  if (posted.program === undefined) throw new Error(JSON.stringify(posted.outcome.findings.slice(0, 3)));
  return posted.program;
}

/** A number of the program in its last decimals, without a rounding of its own: "-1.250" -> -1250n. */
function cells(digits: string): bigint {
  return BigInt(digits.replace(".", ""));
}

/**
 * Where the tool is after each block, in the program's own least increments, by the plainest reading there is: words add up
 * under G91 and are places under G90; machine coordinates (G53) leave the place in the work open.
 */
function places(text: string): { places: string[]; incremental: number } {
  const at: Record<string, bigint> = { X: 0n, Y: 0n, Z: 0n };
  const found: string[] = [];
  let isIncremental = false;
  let incremental = 0;
  for (const block of text.split("\n")) {
    if (/^\(|G53/.test(block)) continue;
    if (/\bG90\b/.test(block)) isIncremental = false;
    if (/\bG91\b/.test(block)) isIncremental = true;
    const words = [...block.matchAll(/([XYZ])(-?\d+\.\d+)/g)];
    for (const [, axis = "", digits = ""] of words)
      at[axis] = isIncremental ? at[axis] + cells(digits) : cells(digits);
    if (isIncremental) incremental += words.length;
    if (words.length > 0) found.push(`${at["X"]} ${at["Y"]} ${at["Z"]}`);
  }
  return { places: found, incremental };
}

describe("incremental words are differences of rounded places (NISTIR 6556 3.5.17), so that they never drift", () => {
  test.each([
    ["mm", 3],
    ["mm", 4],
    ["inch", 3],
    ["inch", 4],
  ] as const)("100,000 moves in %s with %d decimals", { timeout: 120_000 }, async (units, decimals) => {
    const absolute = places(await program("absolute", units, decimals));
    const ways = places(await program("incremental", units, decimals));
    expect(absolute.incremental).toBe(0);
    expect(ways.incremental).toBeGreaterThan(2.9 * moves);
    expect(ways.places.length).toBeGreaterThan(moves);
    expect(ways.places.at(-1)).toBe(absolute.places.at(-1));
    const different = ways.places.findIndex((place, index) => place !== absolute.places[index]);
    expect(different).toBe(-1);
  });
});
