import type {
  Confirmation,
  ConfirmationName,
  Expression,
  ExpressionName,
  ExpressionValues,
  SpindleFacts,
} from "#base";
import { evaluate } from "#base";
import { coolantOff } from "./coolant.ts";
import { upToDwellGrid } from "./grid.ts";
import { putMessage } from "./message.ts";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { stopForOperator } from "./stop.ts";
import { fact, need, refuse } from "./words.ts";

/** Speeds that a confirmation by time is worked out from, milli-rpm. */
export interface Speeds {
  /** The new speed; 0 where it stops. */
  readonly rpm: number;
  /** Speeds it may come from, undefined for the undeclared highest one; the longest of the times counts. */
  readonly from: readonly (number | undefined)[];
  /** Speed from which it has to stop before; undefined where it need not. */
  readonly stopsFrom?: number | undefined;
}

type ConfirmationBy<By extends Confirmation["by"]> = Extract<Confirmation, { by: By }>;

const ways: {
  readonly [By in Confirmation["by"]]: (
    run: Run,
    name: ConfirmationName,
    how: ConfirmationBy<By>,
    speeds: Speeds,
  ) => void;
} = {
  wait: (run, name, how) => {
    waitForSignal(run, how.signal, how.timeout, reasons[name]);
  },
  dwell: (run, name, how, speeds) => {
    const times = speeds.from.map((from) => dwellTime(run, name, how.time, speeds.rpm, from));
    dwell(run, Math.max(...times) + stopTime(run, speeds.stopsFrom), name);
  },
  // The controller holds the program by itself; the dialect file states why it can be relied on.
  intrinsic: () => undefined,
  operator: (run, name) => {
    if (name === "stopped") askWhetherStopped(run);
    else refuseQuestion(run, name);
  },
};

/** Why each state has to be confirmed, for the findings. */
const reasons = {
  "at-speed": "no tool may cut before the spindle is up to speed",
  stopped: "the spindle must stand before a swap, a stop by the operator and the end",
  released: "the spindle must not leave a tool that it still holds",
  clamped: "a tool must not leave its pocket before it is clamped",
  air: "the drawbar must not be worked without air",
  "hold-down": "the work must be held before a tool cuts it",
} as const satisfies Record<ConfirmationName, string>;

/** Confirms a state of the machine in the way that the dialect declares. */
export function confirm(run: Run, name: ConfirmationName, speeds: Speeds = { rpm: 0, from: [0] }): void {
  const how = fact(run, run.machine.confirm[name], `confirm.${name}`, reasons[name]);
  if (!how) return;
  const way = ways[how.by] as (run: Run, name: ConfirmationName, how: Confirmation, speeds: Speeds) => void;
  way(run, name, how, speeds);
}

/** Confirms that the work is held, where the dialect says how: once at the start, and behind each stop. */
export function confirmHoldDown(run: Run): void {
  const { state, machine } = run;
  if (state.workHeld || machine.confirm["hold-down"] === undefined) return;
  confirm(run, "hold-down");
  state.workHeld = true;
}

/** Nobody is to lean over a machine whose coolant still runs. */
function askWhetherStopped(run: Run): void {
  if (run.state.coolant?.length !== 0) coolantOff(run);
  askOperator(run, "CHECK THAT THE SPINDLE STANDS STILL");
}

/**
 * Only a stop of the spindle can be asked of the operator: at every stop of the program the spindle has to stand, and
 * behind it nobody knows where the machine is, so that the way out of a pocket would be a guess.
 */
function refuseQuestion(run: Run, name: ConfirmationName): void {
  refuse(
    run,
    "dialect/confirm-by-operator",
    `the program cannot stop to have \`${name}\` confirmed: the spindle would stand, and its place be unknown`,
    "confirm it by a wait on a signal or by a dwell, or swap the tools by the operator",
    `confirm.${name}`,
  );
}

/** Waits on a signal, after a dwell where its contact may still be on from the old state. Times in microseconds. */
export function waitForSignal(
  run: Run,
  name: ConfirmationBy<"wait">["signal"],
  timeout: number,
  because: string,
): void {
  const signal = fact(run, run.machine.signals[name], `machine.signals.${name}`, because);
  const onTimeout = fact(run, run.machine.onTimeout, "machine.waits.on-timeout", "it waits on signals");
  if (onTimeout === "continues") {
    refuse(
      run,
      "dialect/wait-continues",
      `a wait goes on when its time is up, so a wait on \`${name}\` confirms nothing`,
      "confirm by a dwell or by the operator, or have the controller raise an alarm and say `on-timeout: alarm`",
      "machine.waits.on-timeout",
    );
  }
  if (!signal || !need(run, "idioms.wait-signal", because)) return;
  if (signal.settle > 0) dwell(run, signal.settle, name);
  put(run, { kind: "wait", input: signal.input, level: signal.level, timeout });
}

/** A dwell no shorter than a time, microseconds. */
function dwell(run: Run, time: number, name: string): void {
  const grid = fact(run, run.request.capabilities.dwellGrid, "numbers.dwell", `\`${name}\` takes a dwell`);
  if (!need(run, "dwell.code", `\`${name}\` takes a dwell`) || grid === undefined) return;
  put(run, { kind: "dwell", time: upToDwellGrid(time, grid) });
}

/** Asks the operator to look, and stops. */
export function askOperator(run: Run, text: string): void {
  const because = "the operator is asked to look or to act";
  if (need(run, "idioms.message", because)) putMessage(run, text);
  if (need(run, "stops.stop", because)) stopForOperator(run, false);
}

/** Time of a confirmation by dwell, microseconds, not rounded. */
function dwellTime(
  run: Run,
  name: ConfirmationName,
  time: Expression,
  rpm: number,
  from: number | undefined,
): number {
  const { spindle } = run.machine;
  const values: Record<ExpressionName, number | undefined> = { ...factValues(spindle), rpm, from_rpm: from };
  for (const used of namesIn(time)) {
    if (values[used] === undefined)
      fact(run, undefined, factKeys[used], `the dwell of \`confirm.${name}\` is worked out from it`);
  }
  const known = Object.fromEntries(Object.entries(values).map(([key, value]) => [key, value ?? 1]));
  const result = evaluate(time, known as unknown as ExpressionValues);
  if (Number.isFinite(result)) return result;
  refuse(
    run,
    "dialect/expression",
    `the dwell of \`confirm.${name}\` divides by zero`,
    "correct the expression",
    `confirm.${name}`,
  );
  return 0;
}

/** Time that stopping takes by the dialect's own expression, microseconds; 0 where a stop is confirmed otherwise. */
function stopTime(run: Run, from: number | undefined): number {
  const how = run.machine.confirm.stopped;
  return from !== undefined && how?.by === "dwell" ? dwellTime(run, "stopped", how.time, 0, from) : 0;
}

type FactName = Exclude<ExpressionName, "rpm" | "from_rpm">;

function factValues(spindle: SpindleFacts): Record<FactName, number | undefined> {
  return {
    min_rpm: spindle.minRpm,
    max_rpm: spindle.maxRpm,
    spin_up: spindle.spinUp,
    spin_down: spindle.spinDown,
    coast_down: spindle.coastDown,
  };
}

const factKeys = {
  rpm: "",
  from_rpm: "machine.spindle.max-rpm",
  min_rpm: "machine.spindle.min-rpm",
  max_rpm: "machine.spindle.max-rpm",
  spin_up: "machine.spindle.spin-up",
  spin_down: "machine.spindle.spin-down",
  coast_down: "machine.spindle.coast-down",
} as const satisfies Record<ExpressionName, string>;

function namesIn(expression: Expression): readonly ExpressionName[] {
  if (expression.op === "name") return [expression.name];
  return expression.op === "number" ? [] : expression.of.flatMap(namesIn);
}
