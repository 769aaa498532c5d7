import type { Report } from "#base";
import type { Operation } from "./job.ts";
import type { OpenJob } from "./open-job.ts";
import { jobMembers, operationMembers } from "./write/write-head.ts";
import { createMoveWriter, rowText } from "./write/write-moves.ts";

/**
 * Writes a job as JSON: keys in one order, a move on each line, each number the shortest decimal that reads as the same
 * base units. What is read back is the same job; `path` is written as single moves.
 *
 * @param report gets what is wrong with the moves; after an error the text is not whole
 * @returns pieces of the text in order
 */
export function* writeJob(opened: OpenJob, report: Report): Generator<string> {
  const { job } = opened;
  yield `{\n  ${jobMembers(job).join(",\n  ")},\n  "operations": [\n`;
  for (const [index, operation] of job.operations.entries()) {
    const members = operationMembers(operation, job).join(",\n      ");
    yield `${index === 0 ? "" : ",\n"}    {\n      ${members},\n      "moves": [\n        `;
    yield* writeMoves(opened, operation, report);
    yield "\n      ]\n    }";
  }
  yield "\n  ]\n}\n";
}

function* writeMoves({ job, moves }: OpenJob, operation: Operation, report: Report): Generator<string> {
  const writer = createMoveWriter(job.units, operation.feedMode);
  let between = "";
  for (const batch of moves(operation, report)) {
    const pieces: string[] = [];
    for (let row = 0; row < batch.count; row++) {
      const { text, ends } = rowText(writer, batch, row);
      pieces.push(between, text);
      between = ends ? ",\n        " : "";
    }
    yield pieces.join("");
  }
}
