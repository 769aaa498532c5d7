import type { Run } from "./run.ts";
import { fact, need, refuse } from "./words.ts";

/** What only the head of the job shows: facts of the machine that do not go together for it. */
export function checkHead(run: Run): void {
  checkLengths(run);
  checkClearance(run);
  checkMotions(run);
}

/** Every program moves: rapids have a word of their own, or are lines at a feed. */
function checkMotions(run: Run): void {
  need(run, "motion.line", "its tools move at a feed");
  const { rapidFeed } = run.request.capabilities;
  if (rapidFeed === null || rapidFeed === undefined) need(run, "motion.rapid", "its tools move at rapid");
}

/** The tools of the operations that are posted, each once, in order of first use. */
function usedTools(run: Run): readonly number[] {
  return [...new Set(run.request.operations.map((index) => run.job.operations[index].tool))];
}

/** Without length offsets a second tool is only safe where the operator sets Z for it. */
function checkLengths(run: Run): void {
  const { machine, job, request } = run;
  run.state.source = job.operations[request.operations[0] ?? -1]?.source ?? 0;
  const form = fact(
    run,
    machine.lengthOffset?.form,
    "machine.length-offset.form",
    "each tool has a length of its own",
  );
  // Where no tool is swapped, the swap itself is refused.
  if (form !== "none" || usedTools(run).length < 2 || machine.swap === "none") return;
  if (machine.swap === "operator" && machine.lengths === "operator") return;
  refuse(
    run,
    "offset/active",
    "the job has tools of several lengths, the dialect has no length offset, and nobody sets Z after a swap",
    "post one tool a program (`--only`), or let the operator swap the tools and set Z (`swap: operator`, `lengths: operator`)",
    "machine.length-offset.form",
  );
}

/** Retracting by clearance is in work coordinates, so it is only as good as the offsets in force. */
function checkClearance(run: Run): void {
  const { machine } = run;
  if (machine.retract?.by !== "clearance") return;
  const swaps = usedTools(run).some((tool) => tool !== run.request.facts.spindleHolds);
  if (machine.swap === "rack" || (machine.swap === "controller" && swaps)) {
    refuse(
      run,
      "dialect/retract",
      "a machine that swaps tools by itself cannot retract by clearance only",
      "retract by a move in machine coordinates or by a reference return",
      "machine.retract.by",
    );
  }
  const { lengthOffset } = machine;
  if (lengthOffset === undefined || lengthOffset.form === "none") return;
  refuse(
    run,
    "dialect/retract",
    "a retract to clearance goes by the length offset in force, which nobody knows at the start of a program",
    "retract by a move in machine coordinates or by a reference return, or do without length offsets (`form: none`)",
    "machine.retract.by",
  );
}
