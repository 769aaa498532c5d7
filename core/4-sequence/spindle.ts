import type { SpindleDirection } from "#base";
import { milliPerRpm, roundToGrid, turns } from "#base";
import type { Operation } from "#job";
import { confirm } from "./confirm.ts";
import { speedOutside, speedRounded } from "./findings.ts";
import { switchCuttingOutputs } from "./outputs.ts";
import type { Run } from "./run.ts";
import { operationInHand, toolOf } from "./run.ts";
import { put } from "./steps.ts";
import { fact, need, refuse } from "./words.ts";

/** Whether an operation turns the spindle: not with a probe, a knife or a pen, and never in an air cut. */
export function turnsSpindle(run: Run, operation: Operation): boolean {
  return operation.spindle !== undefined && turns(toolOf(run, operation.tool).kind) && !run.request.airCut;
}

/**
 * Stops the spindle and confirms that it stands. What is switched during cutting goes off before. The confirmation counts
 * from the speed that was in force, or from the highest where that is not known.
 */
export function stopSpindle(run: Run): void {
  const { spindle } = run.state;
  switchCuttingOutputs(run, false);
  if (need(run, "spindle.stop", "the spindle is stopped before a swap, a stop by the operator and the end")) {
    put(run, { kind: "spindle-stop" });
  }
  confirm(run, "stopped", { rpm: 0, from: [spindle.speed ?? run.machine.spindle.maxRpm] });
  spindle.speed = 0;
  spindle.direction = undefined;
  run.state.tapped = false;
}

/** Orients the spindle where the machine needs that before a swap. */
export function orientSpindle(run: Run): void {
  if (!run.machine.spindle.orient) return;
  if (need(run, "spindle.orient", "the machine swaps with an oriented spindle"))
    put(run, { kind: "spindle-orient" });
}

/** Starts the spindle of an operation at a speed (milli-rpm), and confirms that it is reached. */
export function startSpindle(run: Run, rpm: number, direction: SpindleDirection): void {
  const { spindle } = run.state;
  const written = speedToWrite(run, rpm);
  const speed = (): void => {
    put(run, { kind: "spindle-speed", rpm: written });
  };
  const start = (): void => {
    if (need(run, `spindle.${direction}`, "its tools turn")) put(run, { kind: "spindle-start", direction });
  };
  // In one block the standards execute S before M03 (NISTIR 6556 Table 8), whatever the order of the words.
  const startFirst = blocksApart(run) && spindleOrder(run) === "start-first";
  for (const step of startFirst ? [start, speed] : [speed, start]) step();
  confirmAtSpeed(run, written);
  Object.assign(spindle, { asked: rpm, speed: written, direction });
  run.state.tapped = false;
  switchCuttingOutputs(run, true);
}

/** Whether a speed (milli-rpm) needs another gear than the one in which the spindle turns: it then has to stand. */
export function shiftsGear(run: Run, rpm: number): boolean {
  const { spindle } = run.state;
  const { gears, speedGrid = 1 } = run.request.capabilities;
  if (gears.length === 0 || !spindle.direction) return false;
  return gearOf(run, roundToGrid(rpm, speedGrid)) !== gearOf(run, roundToGrid(spindle.asked, speedGrid));
}

/** Index of the first gear range that a speed lies in, -1 for none. */
function gearOf(run: Run, rpm: number): number {
  return run.request.capabilities.gears.findIndex(({ from, to }) => rpm >= from && rpm <= to);
}

/** Changes the speed of a turning spindle and confirms that it is reached. */
export function changeSpeed(run: Run, rpm: number): void {
  const { spindle } = run.state;
  if (!spindle.direction) return;
  if (shiftsGear(run, rpm)) refuseShift(run);
  if (run.state.tapped) {
    startSpindle(run, rpm, spindle.direction);
    return;
  }
  const written = speedToWrite(run, rpm);
  // It turns at that speed already: to say it again would be a word without an effect.
  if (written === spindle.speed) return;
  put(run, { kind: "spindle-speed", rpm: written });
  confirmAtSpeed(run, written);
  Object.assign(spindle, { asked: rpm, speed: written });
}

function refuseShift(run: Run): void {
  refuse(
    run,
    "limit/speed",
    "the new speed lies in another gear range, and a gear is not shifted while the tool is in the work",
    "change the speed between two operations, or keep to one range",
    "spindle.gears",
  );
}

/** Starts the spindle again as it was last commanded. */
export function restartSpindle(run: Run, direction: SpindleDirection | undefined): void {
  if (direction) startSpindle(run, run.state.spindle.asked, direction);
}

/**
 * Confirms a speed. From an unknown one, the farthest that it may be counts; after a tapping cycle the spindle may still
 * turn the other way, so that it has to stop first.
 */
function confirmAtSpeed(run: Run, rpm: number): void {
  const { state, machine } = run;
  if (state.tapped) confirm(run, "at-speed", { rpm, from: [0], stopsFrom: state.spindle.speed });
  else
    confirm(run, "at-speed", {
      rpm,
      from: state.spindle.speed === undefined ? [0, machine.spindle.maxRpm] : [state.spindle.speed],
    });
}

function blocksApart(run: Run): boolean {
  const { spindleBlocks } = run.request.capabilities;
  return fact(run, spindleBlocks, "spindle.blocks", "it starts the spindle") === "apart";
}

function spindleOrder(run: Run): "speed-first" | "start-first" | undefined {
  return fact(run, run.request.capabilities.spindleOrder, "spindle.order", "it starts the spindle");
}

/** The speed on the grid of the speed word; never brought inside the limits, but refused outside them. */
function speedToWrite(run: Run, rpm: number): number {
  const { state, report } = run;
  const grid =
    fact(run, run.request.capabilities.speedGrid, "numbers.speed", "it states spindle speeds") ?? 1;
  const written = Math.max(grid, roundToGrid(rpm, grid));
  if (written !== rpm) report(speedRounded(rpm, written, state.source));
  checkSpeed(run, written);
  return written;
}

const gearFix = "state a speed that one of the ranges has, and the feed that goes with it";

function checkSpeed(run: Run, rpm: number): void {
  const { state, report, machine } = run;
  const { spindle, declared } = machine;
  const because = "its speeds are held against the limits of the machine";
  if (declared) {
    fact(run, spindle.minRpm, "machine.spindle.min-rpm", because);
    fact(run, spindle.maxRpm, "machine.spindle.max-rpm", because);
  }
  if (run.request.capabilities.gears.length > 0 && gearOf(run, rpm) < 0)
    refuse(
      run,
      "limit/speed",
      `${String(rpm / milliPerRpm)} rpm lies in no gear range`,
      gearFix,
      "spindle.gears",
    );
  const tool = toolOf(run, operationInHand(run).tool);
  const limits = [
    { least: spindle.minRpm, most: spindle.maxRpm, whose: "the machine", key: "machine.spindle" },
    { least: tool.minRpm, most: tool.maxRpm, whose: `tool ${String(tool.number)}`, key: undefined },
  ];
  for (const { least, most, whose, key } of limits) {
    if (most !== undefined && rpm > most)
      report(speedOutside(rpm, most, whose, state.source, key && `${key}.max-rpm`));
    if (least !== undefined && rpm < least)
      report(speedOutside(rpm, least, whose, state.source, key && `${key}.min-rpm`));
  }
}
