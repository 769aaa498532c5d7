import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { proveText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";
import { quarryRouter } from "../support/dialects.ts";
import { after, before, drop, find, setMove } from "./break.ts";
import { noJob } from "./facts.ts";
import { move } from "./pieces.ts";
import { faults, guardItems } from "./run.ts";
import { controllerSwap, rackSwap } from "./sequences.ts";
import type { Item } from "./layout.ts";
import type { Sequence } from "./sequences.ts";

const golden = join(import.meta.dirname, "../goldens/weather-plate.quarry-router.program.txt");

const rulesOf = (sequence: Sequence): string[] => faults(guardItems(sequence)).map(({ rule }) => rule);

describe("a rack program without its job", () => {
  const bare = (sequence: Sequence): Sequence => ({ ...sequence, job: noJob });

  test("our own golden program has no error", async () => {
    const { findings } = proveText(readFileSync(golden, "utf8"), await ready(quarryRouter));
    expect(findings.filter(({ severity }) => severity === "error")).toEqual([]);
  });

  test("a tool without a number is let go in its pocket alone, and seated there", () => {
    expect(rulesOf(bare(rackSwap()))).toEqual([]);
    expect(rulesOf(bare(setMove(rackSwap(), "return down", { z: -78 })))).toEqual(["swap/pocket"]);
    expect(rulesOf(bare(setMove(rackSwap(), "return xy", { x: 200 })))).toEqual(["swap/pocket"]);
  });

  test("let go at swap height it falls", () => {
    const down = ["return clear", "return xy", "return above", "return down"];
    const high = down.reduce((sequence, name) => drop(sequence, name), rackSwap());
    const found = faults(guardItems(bare(high)));
    expect(found[0]?.message).toBe("The tool held is released outside a pocket.");
  });
});

describe("a spindle stopped and started again", () => {
  const restart = (sequence: Sequence): Item[] =>
    ["first stop", "confirm stopped", "start", "settle at-speed", "confirm at-speed"].map(
      (name) => sequence.items[find(sequence, name)],
    );
  const up = move({ kind: "rapid", machine: true, z: 0 });

  test("at swap height breaks nothing", () => {
    const sequence = controllerSwap();
    expect(rulesOf(before(sequence, "approach xy", restart(sequence)))).toEqual([]);
  });

  test("in the cut breaks nothing if Z goes up alone and the way back is taken anew", () => {
    const sequence = controllerSwap();
    const back = ["approach xy", "length", "approach z"].map((name) => sequence.items[find(sequence, name)]);
    expect(rulesOf(after(sequence, "plunge", [...restart(sequence), up, ...back]))).toEqual([]);
  });
});
