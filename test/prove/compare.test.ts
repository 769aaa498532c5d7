import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { batchRows, rowKind } from "#base";
import type { Batch, Finding, Step } from "#base";
import { createQueue, prove } from "#prove";
import type { Proof, ProveInput } from "#prove";
import { drop } from "./break.ts";
import { layOut } from "./layout.ts";
import type { Item } from "./layout.ts";
import { goodSequences } from "./sequences.ts";
import type { Sequence } from "./sequences.ts";

const digest = "0123456789abcdef".repeat(4);

interface Outcome {
  proof: Proof | undefined;
  findings: Finding[];
}

function compare(
  expected: Iterable<Batch>,
  actual: Iterable<Batch>,
  changes: Partial<ProveInput> = {},
): Outcome {
  const findings: Finding[] = [];
  const text = { bytes: () => 1234, sha256: () => digest };
  const report = (finding: Finding): void => void findings.push(finding);
  const proof = prove({ expected, actual, report, errors: () => 0, text, facts: () => "facts", ...changes });
  return { proof, findings };
}

const batchesOf = (sequence: Sequence, rows = 7): Batch[] => layOut(sequence.items, sequence.facts, rows);
const compareItems = (sequence: Sequence, items: Item[]): Outcome =>
  compare(batchesOf(sequence), layOut(items, sequence.facts, 5));

const columns = ["kind", "frame", "known", "x", "y", "z", "feed", "c1", "c2", "turns"] as const;

/** Every row of batches with its place. */
function places(batches: readonly Batch[]): { batch: number; row: number }[] {
  return batches.flatMap((batch, index) =>
    Array.from({ length: batch.count }, (_, row) => ({ batch: index, row })),
  );
}

describe("equal sequences are proved", () => {
  for (const [name, make] of Object.entries(goodSequences)) {
    test(name, () => {
      const sequence = make();
      const { proof, findings } = compare(batchesOf(sequence, 3), batchesOf(sequence, batchRows));
      expect(findings).toEqual([]);
      expect(proof).toMatchObject({
        bytes: 1234,
        sha256: digest,
        steps: sequence.items.length,
        facts: "facts",
      });
    });
  }
});

describe("no proof without all that it needs", () => {
  const sequence = goodSequences["single tool"]();
  test("an error finding of any stage", () => {
    expect(compare(batchesOf(sequence), batchesOf(sequence), { errors: () => 1 }).proof).toBeUndefined();
  });
  test("no text written", () => {
    expect(compare(batchesOf(sequence), batchesOf(sequence), { text: undefined }).proof).toBeUndefined();
  });
  test("nothing at all", () => {
    expect(compare([], []).proof).toBeUndefined();
  });
  test("a digest that is none is a fault of ours", () => {
    const text = { bytes: () => 1, sha256: () => "short" };
    expect(() => compare(batchesOf(sequence), batchesOf(sequence), { text })).toThrow();
  });
  test("a proof cannot be changed", () => {
    const { proof } = compare(batchesOf(sequence), batchesOf(sequence));
    expect(Object.isFrozen(proof)).toBe(true);
  });
});

describe("one field changed is found", () => {
  const names = Object.keys(goodSequences);
  test("in every column of every motion row of every sequence", () => {
    for (const name of names) {
      const sequence = goodSequences[name]();
      const length = places(batchesOf(sequence)).length;
      for (let at = 0; at < length; at++) mutateRow(sequence, at);
    }
  });

  function mutateRow(sequence: Sequence, at: number): void {
    for (const column of columns) {
      const changed = batchesOf(sequence);
      const { batch, row } = places(changed)[at];
      const target = changed[batch];
      if (target.kind[row] === rowKind.aside) return;
      const known = target.known[row];
      if (column === "feed" && target.kind[row] === rowKind.rapid) continue;
      if (
        (column === "x" && !(known & 1)) ||
        (column === "y" && !(known & 2)) ||
        (column === "z" && !(known & 4))
      )
        continue;
      target[column][row] += column === "known" && known === 255 ? -1 : 1;
      const { proof, findings } = compare(batchesOf(sequence), changed);
      expect(proof, `${column} of row ${at}`).toBeUndefined();
      expect(findings.map((finding) => finding.rule)).toContain("proof/differs");
    }
  }

  test("in every field of every step", () => {
    for (const name of names) {
      const sequence = goodSequences[name]();
      sequence.items.forEach(({ step }, index) => {
        if (!step) return;
        for (const [field, value] of Object.entries(step)) {
          if (field === "kind") continue;
          const items = sequence.items.slice();
          items[index] = { step: { ...step, [field]: otherValue(value as Value) } };
          const { proof, findings } = compareItems(sequence, items);
          expect(proof, `${step.kind}.${field}`).toBeUndefined();
          expect(findings.length).toBeGreaterThan(0);
        }
      });
    }
  });

  test("in rotary columns", () => {
    const sequence = goodSequences["inverse time"]();
    const changed = batchesOf(sequence);
    const { batch, row } = places(changed).filter((place) => changed[place.batch].known[place.row] & 8)[1];
    changed[batch].abc![0][row] += 1;
    const { proof, findings } = compare(batchesOf(sequence), changed);
    expect(proof).toBeUndefined();
    expect(findings[0].message).toMatch(/A .* degrees expected, .* read/);
  });

  type Value = string | number | boolean;
  function otherValue(value: Value): Value {
    if (typeof value === "number") return value + 1;
    return typeof value === "boolean" ? !value : `${value}x`;
  }
});

test("single-bit changes anywhere in the columns are found, but for what is forgiven", () => {
  const sequence = goodSequences.arcs();
  const total = places(batchesOf(sequence)).length;
  fc.assert(
    fc.property(
      fc.nat(total - 1),
      fc.constantFrom(...columns),
      fc.integer({ min: -1e6, max: 1e6 }),
      (at, column, by) => {
        const changed = batchesOf(sequence);
        const { batch, row } = places(changed)[at];
        const target = changed[batch];
        const before = target[column][row];
        target[column][row] += by;
        const isAside = target.kind[row] === rowKind.aside;
        const harmless =
          target[column][row] === before ||
          (isAside && column !== "kind") ||
          (column === "feed" && target.kind[row] === rowKind.rapid) ||
          (["x", "y", "z"].includes(column) && !(target.known[row] & (1 << ["x", "y", "z"].indexOf(column))));
        expect(compare(batchesOf(sequence), changed).proof === undefined).toBe(!harmless);
      },
    ),
    { numRuns: 500 },
  );
});

describe("what is forgiven", () => {
  const sequence = goodSequences["controller swap"]();
  const forgives = (edit: (batch: Batch, row: number) => void): void => {
    const changed = batchesOf(sequence, 5);
    for (const { batch, row } of places(changed)) edit(changed[batch], row);
    const { proof, findings } = compare(batchesOf(sequence, 7), changed);
    expect(findings).toEqual([]);
    expect(proof).toBeDefined();
  };
  test("source and batch-cut", () => forgives((batch, row) => (batch.source[row] += 17)));
  test("stated-again", () => forgives((batch, row) => (batch.stated[row] |= batch.known[row])));
  test("rapid-feed", () =>
    forgives((batch, row) => (batch.feed[row] += batch.kind[row] === rowKind.rapid ? 5 : 0)));
  test("unknown-axis", () =>
    forgives((batch, row) => {
      if (batch.kind[row] === rowKind.aside) return;
      if (!(batch.known[row] & 1)) batch.x[row] = 99;
      if (!(batch.known[row] & 4)) batch.z[row] = 99;
    }));
});

test("an axis that is not named is a difference", () => {
  const sequence = goodSequences["controller swap"]();
  const changed = batchesOf(sequence);
  const { batch, row } = places(changed).find((place) => changed[place.batch].stated[place.row] === 3)!;
  changed[batch].stated[row] = 1;
  const { proof, findings } = compare(batchesOf(sequence), changed);
  expect(proof).toBeUndefined();
  expect(findings[0].message).toContain("named axes X and Y expected, X read");
});

describe("findings say what differs, where, in trade words", () => {
  const sequence = goodSequences["controller swap"]();
  const cut = sequence.items.findIndex((item) => item.name === "cut");

  test("a value", () => {
    const items = sequence.items.slice();
    items[cut] = { move: { ...items[cut].move!, x: 50.001 } };
    const { findings } = compareItems(sequence, items);
    expect(findings[0]).toMatchObject({
      rule: "proof/differs",
      severity: "error",
      place: { source: "program" },
    });
    expect(findings[0].message).toContain("X 50 expected, 50.001 read");
    expect(findings[0].message).toContain(`byte ${100 + 10 * cut} of the job`);
  });
  test("the job's place in the caller's words", () => {
    const items = sequence.items.slice();
    items[cut] = { move: { ...items[cut].move!, feed: 801 } };
    const { findings } = compare(batchesOf(sequence), layOut(items, sequence.facts), {
      locate: () => "line 12 of the job",
    });
    expect(findings).toHaveLength(1);
    expect(findings[0].message).toContain("line 12 of the job");
    expect(findings[0].message).toContain("feed 800 mm/min expected, 801 mm/min read");
  });
  test("a path that is blended within another tolerance, or within none", () => {
    const at = sequence.items.findLastIndex(({ step }) => step?.kind === "path");
    const path: Step = { kind: "path", value: "blend" };
    for (const [step, text] of [
      [{ ...path, tolerance: 210_000 }, "path mode blend, tolerance 0.021 mm read"],
      [path, "path mode blend read"],
    ] as const) {
      const items = sequence.items.slice();
      items[at] = { step };
      const { findings, proof } = compareItems(sequence, items);
      expect(proof).toBeUndefined();
      expect(findings.map(({ rule }) => rule)).toEqual(["proof/differs"]);
      expect(findings[0].message).toContain("path mode blend, tolerance 0.02 mm expected");
      expect(findings[0].message).toContain(text);
    }
  });
  test("a missing step", () => {
    const { items } = drop(sequence, "confirm at-speed");
    const { findings, proof } = compareItems(sequence, items);
    expect(proof).toBeUndefined();
    expect(findings.map(({ rule }) => rule)).toEqual(["proof/missing-step"]);
    expect(findings[0].message).toContain("wait for input 4 on, at most 10 s");
  });
  test("an extra step", () => {
    const items = sequence.items.slice();
    const extra: Step = { kind: "coolant", medium: "flood", on: true };
    items.splice(cut, 0, { step: extra });
    const { findings } = compareItems(sequence, items);
    expect(findings.map(({ rule }) => rule)).toEqual(["proof/extra-step"]);
    expect(findings[0].message).toContain("coolant flood on");
  });
  test("the end missing, and more behind it", () => {
    expect(compareItems(sequence, sequence.items.slice(0, -1)).findings.map(({ rule }) => rule)).toEqual([
      "proof/missing-step",
    ]);
    const more = [...sequence.items, { step: { kind: "program-end" } as const }];
    expect(compareItems(sequence, more).findings.map(({ rule }) => rule)).toEqual(["proof/extra-step"]);
  });
  test("inches in a program in inches", () => {
    const inches = sequence.items.map((item) =>
      item.step?.kind === "units" ? { step: { kind: "units", value: "inch" } as const } : item,
    );
    const changed = inches.slice();
    changed[cut] = { move: { ...changed[cut].move!, x: 50.8 } };
    const { findings } = compare(layOut(inches, sequence.facts), layOut(changed, sequence.facts));
    expect(findings[0].message).toMatch(/X 1\.9685\d* expected, 2 read/);
  });
  test("at most twenty, then a count", () => {
    const items = sequence.items.map((item) =>
      item.move ? { move: { ...item.move, x: (item.move.x ?? 0) + 1 } } : item,
    );
    const many = Array.from({ length: 40 }, () => items.filter((item) => item.move)).flat();
    const longer = { ...sequence, items: [...sequence.items.slice(0, -1), ...many] };
    const shifted = [
      ...sequence.items.slice(0, -1),
      ...many.map((item) => ({ move: { ...item.move!, z: 33 } })),
    ];
    const { findings } = compareItems(longer, shifted);
    expect(findings).toHaveLength(21);
    expect(findings[20].message).toMatch(/^\d+ more differences/);
  });
});

describe("mutants of whole sequences", () => {
  for (const [name, make] of Object.entries(goodSequences)) {
    test(name, () => {
      const sequence = make();
      sequence.items.forEach((item, index) => {
        const dropped = sequence.items.toSpliced(index, 1);
        const doubled = sequence.items.toSpliced(index, 0, item);
        expect(compareItems(sequence, dropped).proof, `without item ${index}`).toBeUndefined();
        const twice = compareItems(sequence, doubled);
        expect(twice.proof, `item ${index} twice`).toBeUndefined();
        expect(twice.findings.map(({ rule }) => rule)).toEqual(["proof/extra-step"]);
        const next = sequence.items[index + 1];
        if (!next || JSON.stringify([next.step, next.move]) === JSON.stringify([item.step, item.move]))
          return;
        const swapped = sequence.items.toSpliced(index, 2, next, item);
        expect(
          compareItems(sequence, swapped).proof,
          `items ${index} and ${index + 1} swapped`,
        ).toBeUndefined();
      });
    });
  }
});

describe("the queue", () => {
  const sequence = goodSequences["rack, slide-in with cover"]();

  test("keeps copies apart from batches that are used again, and stays short", () => {
    const source = batchesOf(sequence, 4);
    const queue = createQueue();
    let longest = 0;
    function* emitted(): Generator<Batch> {
      const shared = layOut(sequence.items, sequence.facts, 4)[0];
      for (const batch of source) {
        for (const column of [...columns, "stated", "aside", "source"] as const)
          shared[column].set(batch[column]);
        shared.asides = batch.asides;
        shared.count = batch.count;
        queue.push(shared);
        longest = Math.max(longest, queue.waiting);
        yield batch;
        for (const column of columns) shared[column].fill(0);
      }
    }
    const { proof, findings } = compare(queue, emitted());
    expect(findings).toEqual([]);
    expect(proof?.steps).toBe(sequence.items.length);
    expect(longest).toBeLessThanOrEqual(2);
  });

  test("goes on when more is pushed after it was empty", () => {
    const queue = createQueue();
    const [first, second] = batchesOf(sequence, 4);
    expect(queue.next()).toBeUndefined();
    queue.push(first);
    expect(queue.next()?.kind.slice(0, first.count)).toEqual(first.kind.slice(0, first.count));
    expect(queue.next()).toBeUndefined();
    queue.push(second);
    expect(queue.next()?.asides).toEqual(second.asides);
  });

  test("a reader that lags several batches behind", () => {
    const queue = createQueue();
    function* late(): Generator<Batch> {
      const held: Batch[] = [];
      for (const batch of batchesOf(sequence, 4)) {
        queue.push(batch);
        held.push(batch);
        if (held.length > 3) yield held.shift()!;
      }
      yield* held;
    }
    expect(compare(queue, late()).proof).toBeDefined();
  });
});
