import type { Report } from "#base";
import { isDiameterKnown, turns } from "#base";
import * as findings from "../findings.ts";
import type { Job, Operation, Tool } from "../job.ts";
import { checkSpares } from "./check-spares.ts";
import type { PlaceInList } from "./place-in-list.ts";
import type { Tree } from "./tree.ts";

/**
 * What section by section of the format demands beyond form: of boxes, of tools, and of each operation with its tool.
 * Each fault is reported at its own place.
 */
export function checkHead(job: Job, tree: Tree, report: Report): void {
  const partOf = (list: "tools" | "operations", index: number): Tree =>
    tree.members?.get(list)?.tree.elements?.[index] ?? tree;
  checkBoxes(job, tree, report);
  job.tools.forEach(({ number, diameter }, index) => {
    const offset = placeOf(partOf("tools", index), "diameter");
    if (!isDiameterKnown(diameter)) report(findings.diameterStandsIn(offset, number));
  });
  checkTools(job, (index, ...keys) => placeOf(partOf("tools", index), ...keys), report);
  checkOperations(job, (index, ...keys) => placeOf(partOf("operations", index), ...keys), report);
}

/** Checks each operation with its tool. */
export function checkOperations(job: Job, place: PlaceInList, report: Report): void {
  const ids = new Set<string>();
  job.operations.forEach((operation, index) => {
    const at = (...keys: readonly string[]): number => place(index, ...keys);
    if (ids.has(operation.id)) report(findings.operationTwice(at("id"), operation.id));
    ids.add(operation.id);
    checkOperation(operation, job.tools, at, report);
  });
}

/** Offset of the value of a key, or of the object where the key is not stated. */
function placeOf(tree: Tree, ...keys: readonly string[]): number {
  return keys.reduce<Tree>((inner, key) => inner.members?.get(key)?.tree ?? inner, tree).offset;
}

function checkBoxes(job: Job, tree: Tree, report: Report): void {
  const check = (
    name: string,
    { min, max }: Pick<NonNullable<Job["stock"]>, "min" | "max">,
    part: Tree,
  ): void => {
    ["x", "y", "z"].forEach((axis, index) => {
      if (min[index] >= max[index]) report(findings.boxInsideOut(placeOf(part, "min"), name, axis));
    });
  };
  if (job.stock) check("The stock", job.stock, tree.members?.get("stock")?.tree ?? tree);
  job.fixtures.forEach((fixture, index) => {
    const part = tree.members?.get("fixtures")?.tree.elements?.[index] ?? tree;
    check(`Fixture \`${fixture.name}\``, fixture, part);
  });
}

/** Checks that tools fit together. */
export function checkTools(job: Job, place: PlaceInList, report: Report): void {
  const numbers = new Set<number>();
  const offsets = new Map<number, Tool>();
  job.tools.forEach((tool, index) => {
    const at = (...keys: readonly string[]): number => place(index, ...keys);
    if (numbers.has(tool.number)) report(findings.toolTwice(at("number"), tool.number));
    else checkOffset(tool, offsets, at("lengthOffset"), report);
    numbers.add(tool.number);
    if ((tool.minRpm ?? 0) > (tool.maxRpm ?? Infinity))
      report(findings.speedsInsideOut(at("minRpm"), tool.number));
  });
  checkSpares(job, place, report);
}

function checkOffset(tool: Tool, offsets: Map<number, Tool>, offset: number, report: Report): void {
  const other = offsets.get(tool.lengthOffset);
  if (other === undefined) offsets.set(tool.lengthOffset, tool);
  // A tool and its spares may not share one, for which they have a finding of their own.
  else if (familyOf(tool) !== familyOf(other))
    report(findings.offsetShared(offset, tool.number, other.number, tool.lengthOffset));
}

/** Number of the tool that stands for itself and its spares. */
function familyOf({ number, spareFor = number }: Tool): number {
  return spareFor;
}

function checkOperation(
  operation: Operation,
  tools: readonly Tool[],
  at: (...keys: readonly string[]) => number,
  report: Report,
): void {
  const tool = tools.find(({ number }) => number === operation.tool);
  if (tool === undefined) {
    report(findings.toolUndefined(at("tool"), operation.tool, operation.id));
    return;
  }
  const { spindle, id, feedMode } = operation;
  if (tool.spareFor !== undefined)
    report(findings.spareUsed(at("tool"), tool.number, tool.spareFor, operation.id));
  if (turns(tool.kind) && !spindle) report(findings.spindleMissing(at(), id, tool.kind));
  if (!turns(tool.kind) && spindle) report(findings.spindleRefused(at("spindle"), id, tool.kind));
  if (!turns(tool.kind) && feedMode === "per-revolution")
    report(findings.perRevolutionStandstill(at("feedMode"), id));
  const against = spindle?.direction === "cw" ? "left" : "right";
  if (spindle && tool.hand === against)
    report(
      findings.handAgainstDirection(at("spindle", "direction"), tool.number, tool.hand, spindle.direction),
    );
}
