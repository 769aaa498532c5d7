import type { Step } from "#base";
import type { Operation } from "#job";
import { orDeclare, toleranceByExactPath, toleranceNotHeld, toleranceRounded } from "./findings.ts";
import { downToLengthGrid } from "./grid.ts";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { optional, refuse, startReason } from "./words.ts";

type PathStep = Extract<Step, { kind: "path" }>;

const has = (run: Run, name: string): boolean => optional(run, `path.${name}`, startReason);

/** The path mode of an operation: blended unless it asks for the exact path or the dialect cannot say that. */
export function statePath(run: Run, operation: Operation): void {
  const step = pathOf(run, operation);
  if (step) put(run, step);
  // What is held to a tolerance on the exact path is held to it in whole: looking ahead may round off details.
  const held = operation.path === "exact" || (operation.tolerance !== undefined && step?.value !== "blend");
  stateLookAhead(run, held ? "off" : "on");
}

/** Blended operations are looked ahead over, those on the exact path are not. */
export function stateLookAhead(run: Run, value: "on" | "off"): void {
  if (optional(run, `path.look-ahead.${value}`, startReason)) put(run, { kind: "look-ahead", value });
}

function pathOf(run: Run, operation: Operation): PathStep | undefined {
  const [exact, stop, blend] = [has(run, "exact"), has(run, "stop"), has(run, "blend")];
  if (operation.path !== "exact") {
    const { tolerance } = operation;
    if (blend && tolerance === undefined) return { kind: "path", value: "blend" };
    if (tolerance !== undefined) return withinTolerance(run, operation, tolerance, { exact, blend });
    return exact ? { kind: "path", value: "exact" } : undefined;
  }
  if (exact) return { kind: "path", value: "exact" };
  // An exact stop at each corner holds the path, too.
  if (stop) return { kind: "path", value: "stop" };
  refuse(
    run,
    "lower/word",
    `operation ${operation.id} asks for the exact path, and the dialect has no word for that`,
    orDeclare(
      "leave `path` out of the operation if the controller's own way of rounding corners will do",
      "path.exact",
    ),
    "path.exact",
  );
  return undefined;
}

/**
 * A blended path that may leave its corners by so much and no more. The tolerance is rounded down, since the job allows no
 * more: 0.0158 mm on a grid of 0.001 mm -> 0.015. Where no word says it, or nothing is left of it (a tolerance of 0 bounds
 * nothing on some controllers, and is never written), the exact path holds any tolerance. A stop at each corner would, too,
 * but it marks the work: only an operation that asks for the exact path gets it.
 */
function withinTolerance(
  run: Run,
  operation: Operation,
  tolerance: number,
  { exact, blend }: { readonly exact: boolean; readonly blend: boolean },
): PathStep | undefined {
  const key = "path.tolerance-word";
  const said = blend && optional(run, key, `operation ${operation.id} is to be blended within a tolerance`);
  const written = downToLengthGrid(run.request, tolerance);
  if (said && written > 0) {
    if (written < tolerance) run.report(toleranceRounded(run.request.units, operation, written));
    return { kind: "path", value: "blend", tolerance: written };
  }
  const isUndeclared = blend && run.request.capabilities.words[key] === undefined;
  const reason = said ? "below-increment" : "no-word";
  if (exact && blend && !isUndeclared) run.report(toleranceByExactPath(operation, reason));
  if (!exact && !isUndeclared) run.report(toleranceNotHeld(operation, reason));
  return exact ? { kind: "path", value: "exact" } : undefined;
}
