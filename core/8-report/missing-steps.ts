import type { Confirmation, ConfirmationName, MachineFacts, Step } from "#base";
import { evaluate } from "#base";

/** What a program needs in front of a block that breaks a rule, as steps; a table by rule id. */
const missing: Readonly<Record<string, (machine: MachineFacts) => Step[]>> = {
  "spindle/at-speed": (machine) => confirmed(machine, "at-speed"),
  "spindle/stopped-for-swap": (machine) => stopped(machine),
  "spindle/ends-stopped": (machine) => stopped(machine),
  "spindle/reversal": (machine) => stopped(machine),
  "swap/coolant-off": () => [{ kind: "coolant", medium: "all", on: false }],
  "swap/air": (machine) => confirmed(machine, "air"),
};

/** Rules whose way out is a step in front of the block. */
export function needsStepsBefore(rule: string): boolean {
  return rule in missing;
}

/**
 * Steps that are missing in front of a block which breaks a rule of the guard.
 *
 * @returns nothing for rules whose way out is not a step in front, such as a place out of travel
 */
export function missingSteps(rule: string, machine: MachineFacts): Step[] {
  return missing[rule]?.(machine) ?? [];
}

function stopped(machine: MachineFacts): Step[] {
  return [{ kind: "spindle-stop" }, ...confirmed(machine, "stopped")];
}

/** A confirmation in the way that the dialect declares, from the worst case of speeds. */
function confirmed(machine: MachineFacts, name: ConfirmationName): Step[] {
  const how = machine.confirm[name];
  if (how?.by === "wait") return waitSteps(machine, how);
  if (how?.by === "dwell") return dwellSteps(machine, name, how);
  return [];
}

function waitSteps(machine: MachineFacts, how: Extract<Confirmation, { by: "wait" }>): Step[] {
  const signal = machine.signals[how.signal];
  if (!signal) return [];
  const settle: Step[] = signal.settle > 0 ? [{ kind: "dwell", time: signal.settle }] : [];
  return [...settle, { kind: "wait", input: signal.input, level: signal.level, timeout: how.timeout }];
}

function dwellSteps(
  machine: MachineFacts,
  name: ConfirmationName,
  how: Extract<Confirmation, { by: "dwell" }>,
): Step[] {
  const { minRpm = 0, maxRpm = 0, spinUp = 0, spinDown = 0, coastDown = 0 } = machine.spindle;
  const rpm = name === "at-speed" ? maxRpm : 0;
  const time = evaluate(how.time, {
    rpm,
    from_rpm: name === "at-speed" ? 0 : maxRpm,
    min_rpm: minRpm,
    max_rpm: maxRpm,
    spin_up: spinUp,
    spin_down: spinDown,
    coast_down: coastDown,
  });
  return Number.isFinite(time) && time > 0
    ? [{ kind: "dwell", time: Math.ceil(time / 1_000_000) * 1_000_000 }]
    : [];
}
