import { readFileSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { axes } from "../../core/build/generate/axes.ts";
import { dialectSchema, partsAt } from "../../core/2-dialect/schema.ts";
import type { AxisCase } from "./axis-case.ts";

/*
 * The list of axes: each has keys that the schema knows and a case that tries them, or is one of those that may still be open.
 */
const root = resolve(import.meta.dirname, "../..");

/** What a milling program of one channel does not touch. */
const mayBeOpen = [10, 27, 54, 57, 90, 101, 116, 126, 127, 129];

const folder = join(import.meta.dirname, "cases");
const files = readdirSync(folder).filter((name) => name.endsWith(".ts"));
const cases = (
  await Promise.all(
    files.map(async (name) => ((await import(join(folder, name))) as { cases: readonly AxisCase[] }).cases),
  )
).flat();

describe("the axes on which controllers differ", () => {
  it("are numbered from 1 to 131", () => {
    expect(axes.map(({ number }) => number)).toEqual(Array.from({ length: 131 }, (_, index) => index + 1));
  });

  it.each(axes.filter(({ keys }) => keys.length > 0))("$number $title: its keys are there", ({ keys }) => {
    for (const key of keys) expect(partsAt(dialectSchema, key.split(".")).length, key).toBeGreaterThan(0);
  });

  it.each(axes.filter(({ keys }) => keys.length > 0))("$number $title: it is tried", ({ number }) => {
    expect(cases.filter(({ axis }) => axis === number).length).toBeGreaterThan(0);
  });

  it("those without a key say why, and may be open", () => {
    const open = axes.filter(({ keys }) => keys.length === 0);
    for (const { number, note } of open) {
      expect(mayBeOpen).toContain(number);
      expect(note).toBeDefined();
    }
    const oneSided = cases.filter(({ oneTakes, otherTakes, sameText }) => oneTakes ?? otherTakes ?? sameText);
    console.info(
      `${String(axes.length - open.length)} of ${String(axes.length)} axes have keys; ${String(cases.length)} cases, of which ${String(oneSided.length)} say why one reader takes the other's text, or why the texts are equal`,
    );
  });

  it("stand in DEVELOPERS.md", () => {
    const page = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
    for (const { number, title } of axes) expect(page).toContain(`- ${String(number)} ${title}: `);
  });
});
