import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { AxisCase } from "./axis-case.ts";
import { tryCase } from "./axis-case.ts";

/*
 * Each axis on which controllers differ: two dialects whose texts differ, and whose readers object to each other's text or
 * read other steps from it. Cases stand in `cases`, one file a group of axes.
 */
const folder = join(import.meta.dirname, "cases");
const files = readdirSync(folder).filter((name) => name.endsWith(".ts"));
const groups = await Promise.all(
  files.map(async (name) => ({
    name,
    cases: ((await import(join(folder, name))) as { cases: readonly AxisCase[] }).cases,
  })),
);

describe.each(groups)("$name", ({ cases }) => {
  it.each(cases)("axis $axis: $title", async (axisCase) => {
    const result = await tryCase(axisCase);
    if (axisCase.sameText) expect(result.otherText).toBe(result.oneText);
    else if (axisCase.otherRefuses === undefined) expect(result.otherText).not.toBe(result.oneText);
    else expect(result.otherRules).toEqual([axisCase.otherRefuses]);
    expect(result.otherDisagrees, "the other reads what the one wrote").toBe(!axisCase.remark);
    expect(result.oneDisagrees, "the one reads what the other wrote").toBe(
      !(axisCase.limit || axisCase.sameText || axisCase.remark),
    );
  });
});
