import type { Between, Explained } from "./held.ts";

/** Steps behind a motion that still belong to the operation that it is of. */
const ownSteps: ReadonlySet<string> = new Set(["message", "dwell", "pause", "compensation", "cycle"]);

/** Where, in what stands between two operations, the second begins: at the first step that a job leaves to its program. */
export function partAt({ all }: Between): number {
  const index = all.findIndex(
    ({ held, belongs }) =>
      belongs !== "job" ||
      held.kind !== "step" ||
      !ownSteps.has(held.step.kind) ||
      // That compensation is off is said at a start; to switch it off is the operation's own.
      (held.step.kind === "compensation" && held.step.value !== "off"),
  );
  return index < 0 ? all.length : index;
}

/** Pauses that a job makes among some steps. */
export function pausesIn(all: readonly Explained[]): Explained[] {
  return all.filter(
    ({ held, belongs }) => belongs === "job" && held.kind === "step" && held.step.kind === "pause",
  );
}
