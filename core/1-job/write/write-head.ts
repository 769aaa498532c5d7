import type { CoolantMedium } from "#base";
import type { Job, Operation, Tool } from "../job.ts";
import type { Scale } from "../scan/number.ts";
import { scales } from "../scan/number.ts";
import { member, numberText, object, quoted, scalesOf } from "./numbers.ts";

const ifSaid = (value: number | undefined, scale: Scale): string | undefined =>
  value === undefined ? undefined : numberText(value, scale);

const plain = (value: number | boolean | undefined): string | undefined =>
  value === undefined ? undefined : String(value);

/** The members of a job before its operations, each on lines of its own. */
export function jobMembers(job: Job): string[] {
  const { length } = scalesOf(job.units);
  const { stock, program } = job;
  const named = [...member("number", plain(program.number)), ...member("name", quoted(program.name))];
  const box = ({ min, max }: Pick<NonNullable<Job["stock"]>, "min" | "max">): string[] => [
    ...member("min", corner(min, length)),
    ...member("max", corner(max, length)),
  ];
  const fixtures = job.fixtures.map((fixture) =>
    object([...member("name", JSON.stringify(fixture.name)), ...box(fixture)]),
  );
  return [
    `"job": "1"`,
    ...member("name", quoted(job.name)),
    ...member("units", quoted(job.units)),
    ...member("program", named.length === 0 ? undefined : object(named)),
    ...member("stock", stock && object([...box(stock), ...member("material", quoted(stock.material))])),
    ...member("fixtures", fixtures.length === 0 ? undefined : lines(fixtures)),
    ...member("workOffset", job.workOffset === 1 ? undefined : String(job.workOffset)),
    ...member("clearance", numberText(job.clearance, length)),
    ...member("tools", lines(job.tools.map((tool) => toolText(tool, length)))),
  ];
}

function corner(place: readonly number[], scale: Scale): string {
  return `[${place.map((value) => numberText(value, scale)).join(", ")}]`;
}

/** A list with an element on each line. */
function lines(elements: readonly string[]): string {
  return `[\n    ${elements.join(",\n    ")}\n  ]`;
}

function toolText(tool: Tool, length: Scale): string {
  const { holder } = tool;
  const lengthOffset = tool.lengthOffset === tool.number ? undefined : String(tool.lengthOffset);
  return object([
    ...member("number", String(tool.number)),
    ...member("kind", quoted(tool.kind)),
    ...member("diameter", numberText(tool.diameter, length)),
    ...member("description", quoted(tool.description)),
    ...member("flutes", plain(tool.flutes)),
    ...member("maxRpm", ifSaid(tool.maxRpm, scales.rpm)),
    ...member("minRpm", ifSaid(tool.minRpm, scales.rpm)),
    ...member("maxFeed", ifSaid(tool.maxFeed, length)),
    ...member("lengthOffset", lengthOffset),
    ...member("radiusOffset", plain(tool.radiusOffset)),
    ...member("length", ifSaid(tool.length, length)),
    ...member("fluteLength", ifSaid(tool.fluteLength, length)),
    ...member("stickOut", ifSaid(tool.stickOut, length)),
    ...member("shank", ifSaid(tool.shank, length)),
    ...member(
      "holder",
      holder &&
        object([
          ...member("diameter", numberText(holder.diameter, length)),
          ...member("length", numberText(holder.length, length)),
        ]),
    ),
    ...member("cornerRadius", ifSaid(tool.cornerRadius, length)),
    ...member("tipAngle", ifSaid(tool.tipAngle, scales.degree)),
    ...member("tipDiameter", ifSaid(tool.tipDiameter, length)),
    ...member("lead", ifSaid(tool.lead, length)),
    ...member("hand", quoted(tool.hand)),
    ...member("centreCutting", plain(tool.centreCutting)),
    ...member("life", ifSaid(tool.life, scales.minute)),
    ...member("spareFor", plain(tool.spareFor)),
    ...member("measure", plain(tool.measure)),
  ]);
}

/** The members of an operation before its moves. */
export function operationMembers(operation: Operation, job: Job): string[] {
  const { length } = scalesOf(job.units);
  const { id, name, tool, spindle, coolant, feedMode, workOffset, clearance } = operation;
  return [
    ...member("id", JSON.stringify(id)),
    ...member("name", name === id ? undefined : quoted(name)),
    ...member("tool", String(tool)),
    ...member(
      "spindle",
      spindle &&
        object([
          ...member("rpm", numberText(spindle.rpm, scales.rpm)),
          ...member("direction", quoted(spindle.direction)),
        ]),
    ),
    ...member("coolant", coolant.length === 0 ? undefined : mediaText(coolant)),
    ...member("feedMode", feedMode === "per-minute" ? undefined : quoted(feedMode)),
    ...member("workOffset", workOffset === job.workOffset ? undefined : String(workOffset)),
    ...member("clearance", clearance === job.clearance ? undefined : numberText(clearance, length)),
    ...member("hood", quoted(operation.hood)),
    ...member("tolerance", ifSaid(operation.tolerance, length)),
    ...member("path", quoted(operation.path)),
  ];
}

/** What runs, as a job says it. */
export function mediaText(media: readonly CoolantMedium[]): string {
  if (media.length > 1) return `[${media.map((medium) => JSON.stringify(medium)).join(", ")}]`;
  return JSON.stringify(media[0] ?? "off");
}
