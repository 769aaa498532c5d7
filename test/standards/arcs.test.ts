import { describe, expect, test } from "vitest";
import { atomsPerUnit } from "#base";
import { proveText } from "../../core/index.ts";
import { loadDialect } from "../support/dialects.ts";
import { shippedDialects } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { arcTolerances } from "./tables/arcs.ts";

describe("radii of an arc by its centre", () => {
  test.each(arcTolerances)("may differ by $most $units ($source)", async ({ units, within, beyond }) => {
    const made = await ready("rs274ngc");
    const rules = (arc: string): string[] => {
      const code = units === "mm" ? "G21" : "G20";
      const program = `${code} G17 G90 G94 G40 G54\nG0 X0 Y0\nG1 Z0 F10\nG2 ${arc}\nM2\n`;
      return proveText(program, made).findings.map(({ rule }) => rule);
    };
    expect(rules(within)).not.toContain("arc/radius");
    expect(rules(beyond)).toContain("arc/radius");
  });

  test.each(shippedDialects)("%s takes no more than that", async (name) => {
    const { machine } = await loadDialect(name);
    for (const { units, most } of arcTolerances)
      expect(machine.arcTolerance?.[units]).toBe(Math.round(most * atomsPerUnit[units]));
    expect(machine.arcTolerance?.relative).toBe(0);
  });
});
