import type { Finding } from "#base";
import { memorySource } from "#base";
import { writeJob } from "#job";
import type { ReadyDialect } from "../../core/index.ts";
import { openInput } from "#retrace";

const encoder = new TextEncoder();

/** What reading a program as a job gives: the job as JSON, or only findings. */
export interface ReadProgram {
  readonly json: string | undefined;
  readonly findings: readonly Finding[];
}

/** Reads a program as a job, moves and all. */
export function readAsJob(
  program: string | Uint8Array,
  { dialect }: ReadyDialect,
  head?: string,
): ReadProgram {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const bytes = typeof program === "string" ? encoder.encode(program) : program;
  const reading = {
    form: "program",
    dialect,
    ...(head === undefined ? {} : { head: memorySource(encoder.encode(head)) }),
  } as const;
  const opened = openInput(memorySource(bytes), reading, report);
  return { json: opened && [...writeJob(opened, report)].join(""), findings };
}
