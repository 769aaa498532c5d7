import { remark } from "./findings.ts";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";

/** Puts a message to the operator in its place, in the characters that the dialect can write. */
export function putMessage(run: Run, text: string): void {
  const clean = run.request.cleanText(text);
  if (clean !== "") put(run, { kind: "message", text: clean });
}

/** Shows a text of the job where the dialect has messages; otherwise the report says that the program leaves it out. */
export function showText(run: Run, text: string, severity: "warning" | "note"): void {
  if (text === "") return;
  if (run.request.capabilities.words["idioms.message"] === true) {
    putMessage(run, text);
    return;
  }
  const message = `the dialect has no messages, so the program leaves out "${text}"`;
  run.report(remark("lower/no-message", severity, message, run.state.source, "idioms.message"));
}
