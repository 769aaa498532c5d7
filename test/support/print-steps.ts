import type { Batch, Step } from "#base";
import { atomsPerMillimetre, axes, frame, isArc, microsecondsPerSecond, milliPerRpm, rowKind } from "#base";

/** Writes the steps of a program as text, one line a step, so that a test can be read by eye. */
export function printSteps(batches: Iterable<Batch>): string[] {
  const lines: string[] = [];
  for (const batch of batches) {
    for (let row = 0; row < batch.count; row++) {
      lines.push(
        batch.kind[row] === rowKind.aside ? printStep(batch.asides[batch.aside[row]]) : printRow(batch, row),
      );
    }
  }
  return lines;
}

/** A motion: frame, kind, the axes that it states in mm, and the feed in mm a minute: "machine line z-78.4 f600". */
function printRow(batch: Batch, row: number): string {
  const kind = Object.entries(rowKind).find(([, value]) => value === batch.kind[row])?.[0] ?? "?";
  const words = axes.flatMap((axis, index) => {
    if ((batch.stated[row] & (1 << index)) === 0) return [];
    return [`${axis}${String(valueOf(batch, row, index))}`];
  });
  const feed = batch.feed[row] === 0 ? [] : [`f${String(batch.feed[row] / atomsPerMillimetre)}`];
  const parts = [kind, ...words, ...centre(batch, row), ...feed];
  return [...(batch.frame[row] === frame.machine ? ["machine"] : []), ...parts].join(" ");
}

/** The centre of an arc in the order of its plane, or its radius, and how many turns it begins: "c10,0 turns-1". */
function centre(batch: Batch, row: number): string[] {
  if (!isArc(batch.kind[row])) return [];
  const [first, second] = [batch.c1[row], batch.c2[row]].map((value) => String(value / atomsPerMillimetre));
  return [`c${first},${second}`, `turns${String(batch.turns[row])}`];
}

function valueOf(batch: Batch, row: number, axis: number): number {
  const linear = [batch.x, batch.y, batch.z][axis];
  return linear ? linear[row] / atomsPerMillimetre : (batch.abc?.[axis - 3][row] ?? 0) / 1_000_000;
}

const seconds = (time: number): string => `${String(time / microsecondsPerSecond)}s`;

/** A rare step: its kind and what goes with it, such as "spindle-speed 9000" and "wait input 4 on 10s". */
export function printStep(step: Step): string {
  switch (step.kind) {
    case "spindle-speed":
      return `spindle-speed ${String(step.rpm / milliPerRpm)}`;
    case "spindle-start":
      return `spindle-start ${step.direction}`;
    case "coolant":
      return `coolant ${step.medium} ${step.on ? "on" : "off"}`;
    case "output":
      return `output ${String(step.number)} ${step.on ? "on" : "off"}`;
    case "wait":
      return `wait input ${String(step.input)} ${step.level} ${seconds(step.timeout)}`;
    case "dwell":
      return `dwell ${seconds(step.time)}`;
    case "pause":
      return step.optional ? "pause optional" : "pause";
    case "message":
      return `message ${step.text}`;
    case "select-tool":
      return `select-tool ${String(step.tool)}`;
    case "auxiliary":
      return step.code === "" ? step.action : `${step.action} ${step.code}`;
    case "reference-return":
      return `reference-return ${axes.filter((_, axis) => step.axes & (1 << axis)).join("")}`;
    case "path":
      return step.tolerance === undefined
        ? `path ${step.value}`
        : `path ${step.value} within ${String(step.tolerance / atomsPerMillimetre)}`;
    case "cycle-definition":
      return `cycle ${step.cycle} to z${String(step.depth / atomsPerMillimetre)}`;
    default:
      if ("value" in step) return `${step.kind} ${step.value}`;
      return "number" in step ? `${step.kind} ${String(step.number)}` : step.kind;
  }
}
