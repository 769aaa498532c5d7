import type { Batch, Finding, UnitSystem } from "#base";
import { prove } from "#prove";
import { read } from "#read";
import type { ReadyDialect } from "../../core/index.ts";

/** How the steps of two programs of one dialect differ, as the comparison of the proof tells it: each side held against the other. */
export function stepDifferences(
  first: string,
  second: string,
  { dialect }: ReadyDialect,
  units: UnitSystem,
): string[] {
  const { format, machine } = dialect;
  const steps = (text: string): Iterable<Batch> =>
    read([new TextEncoder().encode(text)], format, machine, { units }, () => undefined);
  const differences = (expected: string, actual: string, side: string): string[] => {
    const found: Finding[] = [];
    prove({
      expected: steps(expected),
      actual: steps(actual),
      report: (finding) => found.push(finding),
      errors: () => found.length,
      text: undefined,
      facts: () => "",
      locate: ({ offset }) => `line ${String(lineAt(expected, offset))}`,
    });
    return found.map(
      ({ message, place }) => `${side} ${String(lineAt(actual, place?.offset ?? 0))}: ${message}`,
    );
  };
  return [...differences(first, second, "again"), ...differences(second, first, "before")];
}

function lineAt(text: string, offset: number): number {
  return text.slice(0, offset).split("\n").length;
}
