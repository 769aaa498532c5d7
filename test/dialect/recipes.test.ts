import { describe, expect, it } from "vitest";
import { recipes } from "../../core/build/generate/recipes.ts";
import { errorRules } from "../support/ready.ts";
import { resolveDialect } from "#dialect";
import type { Finding } from "#base";
import { dialectLoader } from "../support/dialects.ts";

describe("each recipe of dialects/README.md is a leaf that resolves", () => {
  it.each(recipes)("$says", async ({ write }) => {
    const findings: Finding[] = [];
    const text = ["dialect: leaf", "title: A leaf", "extends: iso-6983", ...write].join("\n");
    const loader = dialectLoader({ "leaf.dialect.yaml": text });
    const dialect = await resolveDialect("leaf.dialect.yaml", loader, (finding) => findings.push(finding));
    expect(findings.map(({ message }) => message)).toEqual([]);
    expect(errorRules(findings)).toEqual([]);
    expect(dialect).toBeDefined();
  });
});
