import { describe, expect, expectTypeOf, test } from "vitest";
import type { RowKindName, StepKind } from "#base";
import { rowKind } from "#base";
import { readText } from "../read/support.ts";
import { canonicalFunctions, ownKinds } from "./tables/canonical.ts";

describe("canonical machining functions (NISTIR 6556 Table 9)", () => {
  test.each(canonicalFunctions.filter(({ blocks }) => blocks !== undefined))(
    "$function is $kind",
    ({ kind, blocks, line }) => {
      const end = blocks === "M2" ? "" : "M2\n";
      const { lines } = readText(`G21 G17 G90 G94 G91.1 G98\n${blocks ?? ""}\n${end}`);
      const last = end === "" ? lines.at(-1) : lines.at(-2);
      expect(last).toBe(line);
      expect(last?.split(" ")[0]).toBe(kind);
    },
  );

  test("each has a step, or a reason why it has none", () => {
    for (const { function: name, kind, why, blocks } of canonicalFunctions)
      expect([
        name,
        (kind === undefined) === (why !== undefined),
        kind === undefined || blocks !== undefined,
      ]).toEqual([name, true, true]);
  });

  test("each row and step has its function, or a reason why it has none", () => {
    const known = new Set<string>([
      ...canonicalFunctions.flatMap(({ kind }) => (kind === undefined ? [] : [kind])),
      ...Object.keys(ownKinds),
    ]);
    for (const kind of Object.keys(rowKind)) expect([kind, known.has(kind)]).toEqual([kind, true]);
    // The compiler names a step that is in neither table.
    type Listed =
      | keyof typeof ownKinds
      | "work-offset"
      | "units"
      | "plane"
      | "feed-mode"
      | "path"
      | "dwell"
      | "overrides";
    type Spindle =
      "spindle-orient" | "spindle-speed" | "spindle-start" | "spindle-stop" | "coolant" | "message" | "pause";
    type Tool = "select-tool" | "change-tool" | "length-offset" | "program-end";
    expectTypeOf<Exclude<StepKind, Listed | Spindle | Tool>>().toEqualTypeOf<never>();
    const rest: Record<Exclude<Listed | Spindle | Tool, keyof typeof ownKinds | RowKindName>, true> = {
      "work-offset": true, units: true, plane: true, "feed-mode": true, path: true, dwell: true, overrides: true,
      "spindle-orient": true, "spindle-speed": true, "spindle-start": true, "spindle-stop": true, coolant: true,
      message: true, pause: true, "select-tool": true, "change-tool": true, "length-offset": true, "program-end": true,
    }; // prettier-ignore
    for (const kind of Object.keys(rest)) expect([kind, known.has(kind)]).toEqual([kind, true]);
  });
});
