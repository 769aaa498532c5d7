import type { Report } from "#base";
import { turns } from "#base";
import * as findings from "../findings.ts";
import type { Job, Operation, Tool } from "../job.ts";
import type { Tree } from "./tree.ts";

/**
 * What section by section of the format demands beyond form: of boxes, of tools, and of each operation with its tool.
 * Each fault is reported at its own place.
 */
export function checkHead(job: Job, tree: Tree, report: Report): void {
  checkBoxes(job, tree, report);
  checkTools(job, tree, report);
  const ids = new Set<string>();
  job.operations.forEach((operation, index) => {
    const part = tree.members?.get("operations")?.tree.elements?.[index] ?? tree;
    if (ids.has(operation.id)) report(findings.operationTwice(placeOf(part, "id"), operation.id));
    ids.add(operation.id);
    checkOperation(operation, job.tools, part, report);
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

function checkTools(job: Job, tree: Tree, report: Report): void {
  const numbers = new Set<number>();
  const offsets = new Map<number, number>();
  job.tools.forEach((tool, index) => {
    const part = tree.members?.get("tools")?.tree.elements?.[index] ?? tree;
    if (numbers.has(tool.number)) report(findings.toolTwice(placeOf(part, "number"), tool.number));
    else checkOffset(tool, offsets, part, report);
    numbers.add(tool.number);
    if ((tool.minRpm ?? 0) > (tool.maxRpm ?? Infinity))
      report(findings.speedsInsideOut(placeOf(part, "minRpm"), tool.number));
  });
}

function checkOffset(tool: Tool, offsets: Map<number, number>, part: Tree, report: Report): void {
  const other = offsets.get(tool.lengthOffset);
  if (other === undefined) offsets.set(tool.lengthOffset, tool.number);
  else report(findings.offsetShared(placeOf(part, "lengthOffset"), tool.number, other, tool.lengthOffset));
}

function checkOperation(operation: Operation, tools: readonly Tool[], part: Tree, report: Report): void {
  const tool = tools.find(({ number }) => number === operation.tool);
  if (tool === undefined) {
    report(findings.toolUndefined(placeOf(part, "tool"), operation.tool, operation.id));
    return;
  }
  const { spindle, id, feedMode } = operation;
  if (turns(tool.kind) && !spindle) report(findings.spindleMissing(part.offset, id, tool.kind));
  if (!turns(tool.kind) && spindle) report(findings.spindleRefused(placeOf(part, "spindle"), id, tool.kind));
  if (!turns(tool.kind) && feedMode === "per-revolution")
    report(findings.perRevolutionStandstill(placeOf(part, "feedMode"), id));
  const against = spindle?.direction === "cw" ? "left" : "right";
  if (spindle && tool.hand === against)
    report(
      findings.handAgainstDirection(
        placeOf(part, "spindle", "direction"),
        tool.number,
        tool.hand,
        spindle.direction,
      ),
    );
}
