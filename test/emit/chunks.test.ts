import { expect, test } from "vitest";
import type { Batch, Step } from "#base";
import { createBatch, rowKind } from "#base";
import type { Format } from "#dialect";
import { plain } from "./formats.ts";
import { batchOf, bytesOf, emitterOf, linesOf, line, rapid } from "./writing.ts";

function* straightLines(count: number): Generator<Batch> {
  const batch = createBatch(1000);
  for (let done = 0; done < count; done += 1000) {
    for (let row = 0; row < 1000; row++) {
      batch.kind[row] = rowKind.line;
      batch.known[row] = batch.stated[row] = 1;
      batch.x[row] = (done + row) * 1e4;
      batch.feed[row] = 1e9;
    }
    batch.count = 1000;
    yield batch;
  }
}

function expectedLines(count: number): string {
  const texts = Array.from(
    { length: count },
    (_, row) => `${row === 0 ? "G1 " : ""}X${row / 1000}${row === 0 ? " F100" : ""}\n`,
  );
  return texts.join("");
}

test("chunks of about 64 kB add up to the text, whatever the last line end", async () => {
  const bare: Format = { ...plain, delimiter: "none" };
  for (const format of [bare, { ...bare, lastLineEnd: false }]) {
    const emitter = await emitterOf(format);
    const sizes: number[] = [];
    const chunks = function* (): Generator<Uint8Array> {
      for (const chunk of emitter.emitUnproved(straightLines(50_000), { units: "mm", header: [] })) {
        sizes.push(chunk.length);
        yield chunk;
      }
    };
    const text = new TextDecoder().decode(bytesOf(chunks()));
    expect(text === (format.lastLineEnd ? expectedLines(50_000) : expectedLines(50_000).slice(0, -1))).toBe(
      true,
    );
    expect(sizes.length).toBeGreaterThan(4);
    for (const size of sizes.slice(0, -1)) expect(Math.abs(size - 65_536)).toBeLessThan(100);
  }
});

test("what waits for the next step is not lost between batches and at the end", async () => {
  const emitter = await emitterOf(plain);
  const one = (step: Step): Batch => batchOf([step]);
  const batches = [
    one({ kind: "plane", value: "xy" }),
    one({ kind: "distance", value: "absolute" }),
    one({ kind: "spindle-speed", rpm: 1e6 }),
    one({ kind: "spindle-start", direction: "ccw" }),
    one({ kind: "length-offset", number: 2 }),
    batchOf([rapid({ z: 1 })]),
    one({ kind: "select-tool", tool: 5 }),
  ];
  const text = new TextDecoder().decode(
    bytesOf(emitter.emitUnproved(batches, { units: "mm", header: [], fragment: true })),
  );
  expect(text).toBe("G17 G90\nS1000 M4\nG43 G0 Z1 H2\nT5\n");
});

test("a fragment is blocks alone, each with its modal words", async () => {
  const parts = [
    { kind: "program-start", number: 0 } as const,
    line({ x: 1 }, 100),
    line({ x: 2 }, 100),
    rapid({ z: 5 }, { machine: true }),
  ];
  const numbered: Format = { ...plain, blockNumber: { on: "all", start: 1, step: 1, to: 99, width: 0 } };
  expect(await linesOf(numbered, parts, { fragment: true, header: ["not shown"] })).toEqual([
    "G1 X1 F100",
    "G1 X2 F100",
    "G53 G0 Z5",
  ]);
  const start = {
    known: 7,
    x: 1e7,
    y: 2e7,
    z: 0,
    a: 0,
    b: 0,
    c: 0,
    distance: "absolute",
    feedMode: "per-minute",
  } as const;
  const arc = { kind: "arcXy", at: { x: 3 }, also: { y: 2 }, centre: [2, 2], turns: 1, feed: 100 } as const;
  expect(await linesOf(plain, [arc], { fragment: true, start })).toEqual(["G3 X3 I1 J0 F100"]);
  expect(
    await linesOf(plain, [line({ x: 3 }, 100)], {
      fragment: true,
      start: { ...start, distance: "incremental" },
    }),
  ).toEqual(["G1 X2 F100"]);
});

test("the emitter changes neither batches nor steps", async () => {
  const emitter = await emitterOf(plain);
  const batch = batchOf([rapid({ x: 1 }), { kind: "message", text: "a" }, line({ x: 2 }, 5)]);
  const before = structuredClone(batch);
  bytesOf(emitter.emitUnproved([batch], { units: "mm", header: [] }));
  expect(batch).toEqual(before);
});
