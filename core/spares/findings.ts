import type { Finding } from "#base";
import type { Job, Operation, Tool } from "#job";
import type { Replacement } from "./choose-tools.ts";

/** 75,000,000 -> "1.25 min" */
function minutes(microseconds: number): string {
  return `${String(Number((microseconds / 60_000_000).toFixed(2)))} min`;
}

/** A spare does the work of a worn tool, from an operation of the job on. */
export function spareTaken(job: Job, at: Operation, { tool, by, since }: Replacement): Finding {
  const { id } = job.operations[since.operation];
  const worn = since.from === tool ? "that" : `tool ${String(since.from)}, the spare before it,`;
  return {
    rule: "limit/tool",
    severity: "note",
    message: `From operation ${id} on tool ${String(by)}, its spare, does the work of tool ${String(tool)}: ${worn} has cut ${minutes(since.spent)} by then, and with the ${minutes(since.takes)} of this operation would pass its life of ${minutes(since.life)}.`,
    place: { source: "job", offset: at.source },
    fix: "The times are those of the feeds alone, the least that they can be: where a machine takes much longer, state a shorter `life`.",
  };
}

/** A tool cuts longer in a program than its life. @param seconds all of its cutting time in the program */
export function lifePassed(
  { number, life = 0, spareFor }: Tool,
  seconds: number,
  passing: Operation,
  basis: "feeds" | "acceleration",
): Finding {
  const least = basis === "feeds" ? "at least " : "";
  return {
    rule: "limit/tool",
    severity: "warning",
    message: `Tool ${String(number)} cuts for ${least}${minutes(seconds * 1e6)} in this program, and its life is ${minutes(life)}: it passes that in operation ${passing.id}.`,
    place: { source: "job", offset: passing.source },
    fix: `State one more spare in the job (a like tool with \`"spareFor": ${String(spareFor ?? number)}\`), which takes over at the start of an operation; divide the operation if it alone is longer than that; or split the job with \`--from\` or \`--only\` and renew the tool between its programs.`,
  };
}
