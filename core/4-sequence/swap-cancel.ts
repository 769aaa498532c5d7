import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { fact, optional } from "./words.ts";

/** Says once more that compensation and cycles are off, for a control that alarms at a change without that. */
export function cancelBeforeSwap(run: Run): void {
  const because = "tools are swapped";
  const { cancelsBeforeChange } = run.request.capabilities;
  if (!fact(run, cancelsBeforeChange, "cancel.before-change", because)) return;
  if (optional(run, "compensation.off", because)) put(run, { kind: "compensation", value: "off", offset: 0 });
  if (optional(run, "cancel.cycles", because)) put(run, { kind: "cycle", value: "off" });
}
