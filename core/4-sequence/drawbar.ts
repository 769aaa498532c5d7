import { confirm, waitForSignal } from "./confirm.ts";
import { workAuxiliary } from "./hood.ts";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { fact, need, refuse } from "./words.ts";

/** Opens the drawbar: air first, then the release, and that confirmed. */
export function releaseTool(run: Run): void {
  confirmAir(run);
  workAuxiliary(run, "release", "the rack swap opens the drawbar");
  confirm(run, "released");
  run.state.released = true;
}

/** Closes the drawbar on a tool, and confirms that it holds one. */
export function clampTool(run: Run): void {
  confirmAir(run);
  workAuxiliary(run, "clamp", "the rack swap closes the drawbar");
  confirm(run, "clamped");
  waitForTool(run);
  run.state.released = false;
}

/**
 * Closes the drawbar of an empty spindle. "Clamped" would mean clamped with a tool, so what is confirmed is that the
 * drawbar is open no more: by the same time as its opening, or by the signal of the open drawbar going away.
 */
export function clampEmpty(run: Run): void {
  confirmAir(run);
  workAuxiliary(run, "clamp", "the rack swap closes the drawbar");
  const how = run.machine.confirm.released;
  const signal = run.machine.signals.released;
  if (how?.by !== "wait") confirm(run, "released");
  else if (
    signal &&
    need(run, "idioms.wait-signal", "the drawbar must be closed before the spindle travels")
  ) {
    const level = signal.level === "on" ? "off" : "on";
    put(run, { kind: "wait", input: signal.input, level, timeout: how.timeout });
  }
  run.state.released = false;
}

/** Air pressure, before the drawbar is worked: where it can be sensed, or the dialect says how else to be sure of it. */
function confirmAir(run: Run): void {
  const { machine } = run;
  if (machine.signals.air || machine.confirm.air) confirm(run, "air");
}

/** Before a tool that this program has not clamped itself may turn: that it is clamped, where that can be sensed. */
export function confirmSensedClamp(run: Run): void {
  if (run.machine.signals.clamped) confirm(run, "clamped");
  waitForTool(run);
}

/** Waits until the sensor sees a tool, where there is one; for as long as the clamping may take. */
function waitForTool(run: Run): void {
  const signal = run.machine.signals["tool-present"];
  if (!signal) return;
  const because = "the tool in the spindle is sensed (`machine.signals.tool-present`)";
  const how = fact(run, run.machine.confirm.clamped, "confirm.clamped", because);
  if (!how) return;
  if (how.by === "wait") waitForSignal(run, "tool-present", how.timeout, because);
  else {
    refuse(
      run,
      "dialect/undeclared",
      "the dialect does not say for how long to wait on `tool-present`: `confirm.clamped` is not a wait",
      "confirm `clamped` by a wait with a timeout, or leave the signal out",
      "confirm.clamped",
    );
  }
}
