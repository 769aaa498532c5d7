import type { Finding } from "#base";
import { read } from "#read";
import { printSteps } from "../support/print-steps.ts";
import { ready } from "../support/ready.ts";

/** Steps and rules of blocks read as a fragment under a leaf of a shipped dialect. */
export async function readUnder(base: string, keys: string, blocks: string) {
  const text = `dialect: leaf\ntitle: A leaf\nextends: ${base}\n${keys}`;
  const { dialect } = await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": text });
  const findings: Finding[] = [];
  const bytes = [new TextEncoder().encode(`${blocks}\n`)];
  const options = { units: "mm", fragment: true } as const;
  const batches = read(bytes, dialect.format, dialect.machine, options, (finding) => findings.push(finding));
  const steps = printSteps(batches);
  return { steps, rules: findings.map(({ rule }) => rule) };
}
