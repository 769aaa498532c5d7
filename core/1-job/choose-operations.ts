import type { Finding, Report } from "#base";
import type { Job, Operation } from "./job.ts";

/** Which operations of a job are posted; nothing stated means all. */
export interface Choice {
  /** Ids of the operations to post. */
  readonly only?: readonly string[];
  /** Id of the operation to begin with. */
  readonly from?: string;
}

/**
 * Chooses the operations to post, in the order of the job.
 *
 * @param report gets `job/operation-unknown` for an id that the job does not have
 */
export function chooseOperations(job: Job, choice: Choice, report: Report): readonly Operation[] {
  const ids = job.operations.map((operation) => operation.id);
  const wanted = [...(choice.only ?? []), ...(choice.from === undefined ? [] : [choice.from])];
  for (const id of wanted) if (!ids.includes(id)) report(unknownOperation(id, ids));
  const first = choice.from === undefined ? 0 : Math.max(0, ids.indexOf(choice.from));
  return job.operations.filter(
    (operation, index) => index >= first && (choice.only === undefined || choice.only.includes(operation.id)),
  );
}

function unknownOperation(id: string, ids: readonly string[]): Finding {
  return {
    rule: "job/operation-unknown",
    severity: "error",
    message: `The job has no operation "${id}".`,
    place: { source: "job", offset: 0 },
    fix: `Name one of its operations: ${ids.slice(0, 20).join(", ")}${ids.length > 20 ? ", ..." : ""}.`,
  };
}
