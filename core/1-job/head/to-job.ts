import type { CoolantMedium, Report } from "#base";
import { outOfRange } from "../findings.ts";
import type { Job, Operation, Stock, Tool } from "../job.ts";
import type {
  Coolant,
  JobSchema,
  Operation as OperationSchema,
  Tool as ToolSchema,
} from "../job-schema.generated.ts";
import type { Scale } from "../scan/number.ts";
import { scales, toBaseUnits } from "../scan/number.ts";
import type { Tree } from "./tree.ts";

/** What a conversion needs besides the value: the job's unit of length and where findings go. */
interface Conversion {
  readonly length: Scale;
  readonly report: Report;
}

/** A member's tree; undefined where the key is not stated. */
function member(tree: Tree, ...keys: readonly (string | number)[]): Tree | undefined {
  return keys.reduce<Tree | undefined>(
    (inner, key) => (typeof key === "number" ? inner?.elements?.[key] : inner?.members?.get(key)?.tree),
    tree,
  );
}

/** A number in base units from its digits; undefined where it is not stated. Too large: reported, and 1 in its place. */
function measure(tree: Tree, key: string, scale: Scale, report: Report): number | undefined {
  const number = member(tree, key);
  return number === undefined ? undefined : convert(number, `\`${key}\``, scale, report);
}

function convert(number: Tree, name: string, scale: Scale, report: Report): number {
  const value = toBaseUnits(number.digits ?? "", scale);
  // The schema has seen to it that what must be above 0 is; it must not round to 0 either.
  if (value !== undefined && (value !== 0 || number.value === 0)) return value;
  const range = value === 0 ? "large enough not to round to 0" : `within ${scale.most} of 0`;
  report(outOfRange(number.offset, name, range));
  return 1;
}

/**
 * Brings a head that fits the schema into base units.
 *
 * @param raw the value of `tree`
 */
export function toJob(tree: Tree, raw: JobSchema, report: Report): Job {
  const conversion: Conversion = { length: scales[raw.units], report };
  const clearance = measure(tree, "clearance", conversion.length, report) ?? 0;
  const workOffset = raw.workOffset ?? 1;
  const stock = member(tree, "stock");
  return {
    name: raw.name ?? "",
    units: raw.units,
    program: { number: raw.program?.number, name: raw.program?.name },
    stock: stock && { ...box(stock, conversion), ...materialOf(stock, raw.stock?.material) },
    fixtures: (raw.fixtures ?? []).map(({ name }, index) => ({
      name,
      ...box(member(tree, "fixtures", index) ?? tree, conversion),
    })),
    workOffset,
    clearance,
    tools: raw.tools.map((tool, index) => toTool(member(tree, "tools", index) ?? tree, tool, conversion)),
    operations: raw.operations.map((operation, index) =>
      toOperation(
        member(tree, "operations", index) ?? tree,
        operation,
        { clearance, workOffset },
        conversion,
      ),
    ),
  };
}

function materialOf(stock: Tree, material: string | undefined): Pick<Stock, "material" | "materialAt"> {
  const at = member(stock, "material")?.offset;
  return { material, ...(at === undefined ? {} : { materialAt: { source: "job", offset: at } }) };
}

type Corner = readonly [number, number, number];

function box(tree: Tree, { length, report }: Conversion): { readonly min: Corner; readonly max: Corner } {
  const corner = (key: string): Corner => {
    const [x, y, z] = (member(tree, key)?.elements ?? []).map((element) =>
      convert(element, `\`${key}\``, length, report),
    );
    return [x, y, z];
  };
  return { min: corner("min"), max: corner("max") };
}

function toTool(tree: Tree, raw: ToolSchema, { length, report }: Conversion): Tool {
  const inLength = (key: keyof ToolSchema): number | undefined => measure(tree, key, length, report);
  const holder = member(tree, "holder");
  return {
    number: raw.number,
    kind: raw.kind,
    diameter: inLength("diameter") ?? 0,
    description: raw.description ?? "",
    flutes: raw.flutes,
    maxRpm: measure(tree, "maxRpm", scales.rpm, report),
    minRpm: measure(tree, "minRpm", scales.rpm, report),
    maxFeed: inLength("maxFeed"),
    lengthOffset: raw.lengthOffset ?? raw.number,
    radiusOffset: raw.radiusOffset,
    length: inLength("length"),
    fluteLength: inLength("fluteLength"),
    stickOut: inLength("stickOut"),
    shank: inLength("shank"),
    holder: holder && {
      diameter: measure(holder, "diameter", length, report) ?? 0,
      length: measure(holder, "length", length, report) ?? 0,
    },
    cornerRadius: inLength("cornerRadius"),
    tipDiameter: inLength("tipDiameter"),
    tipAngle: measure(tree, "tipAngle", scales.degree, report),
    lead: inLength("lead"),
    hand: raw.hand,
    centreCutting: raw.centreCutting,
    life: measure(tree, "life", scales.minute, report),
    spareFor: raw.spareFor,
    measure: raw.measure,
    source: tree.offset,
  };
}

function toOperation(
  tree: Tree,
  raw: OperationSchema,
  job: { readonly clearance: number; readonly workOffset: number },
  { length, report }: Conversion,
): Operation {
  const moves = member(tree, "moves");
  const spindle = member(tree, "spindle");
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    tool: raw.tool,
    spindle: raw.spindle && {
      rpm: measure(spindle ?? tree, "rpm", scales.rpm, report) ?? 0,
      direction: raw.spindle.direction,
    },
    coolant: media(raw.coolant ?? "off"),
    feedMode: raw.feedMode ?? "per-minute",
    workOffset: raw.workOffset ?? job.workOffset,
    clearance: measure(tree, "clearance", length, report) ?? job.clearance,
    hood: raw.hood,
    tolerance: measure(tree, "tolerance", length, report),
    path: raw.path,
    moves: { start: moves?.offset ?? 0, end: moves?.end ?? 0 },
    source: tree.offset,
  };
}

function media(coolant: Coolant): readonly CoolantMedium[] {
  if (typeof coolant !== "string") return coolant;
  return coolant === "off" ? [] : [coolant];
}
