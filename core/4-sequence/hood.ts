import type { AuxiliaryAction } from "#base";
import type { Operation } from "#job";
import { remark } from "./findings.ts";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { need } from "./words.ts";

/** Works one of the machine's own devices by its idiom, such as `idioms.hood-up`. */
export function workAuxiliary(run: Run, action: Exclude<AuxiliaryAction, "opaque">, because: string): void {
  if (need(run, `idioms.${action}`, because)) put(run, { kind: "auxiliary", action, code: "" });
}

/** Raises the dust hood where the program works one. */
export function raiseHood(run: Run): void {
  if (run.machine.hood) moveHood(run, "up");
}

/** Brings the hood to where an operation wants it; down unless it says otherwise. */
export function setHood(run: Run, operation: Operation): void {
  const { machine, state, report } = run;
  if (machine.hood) {
    const wanted = operation.hood ?? "down";
    if (state.hood !== wanted) moveHood(run, wanted);
  } else if (operation.hood === "down") {
    const message = "the job wants the dust hood down, and the program does not work it: lower it by hand";
    report(remark("lower/hood", "warning", message, operation.source, "machine.hood"));
  }
}

function moveHood(run: Run, to: "up" | "down"): void {
  workAuxiliary(run, `hood-${to}`, "the machine has a dust hood (`machine.hood`)");
  run.state.hood = to;
}
