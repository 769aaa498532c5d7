import type { UnitSystem } from "#base";
import { atomsPerUnit, inverseTimeUnit, microRevolutions, microsecondsPerSecond } from "#base";
import type { NumberFormat, UnitFormats } from "#dialect";
import { back, call, choose, constant, div, func, get, put, set } from "./builders.ts";
import type { Expression, FunctionDeclaration } from "./builders.ts";
import type { EmitterFunction } from "./calls.ts";
import type { Context } from "./context.ts";
import { faultOn } from "./fault.ts";
import { separating, tracing } from "./words.ts";
import { printerFor } from "./write-decimals.ts";

/** Micro-degrees in a degree. */
const degree = 1_000_000;

/** A number writer of the generated code, `name(state, at, address, value)`: address, number, separator. */
interface Writer {
  readonly name: EmitterFunction;
  /** Key that it reports. */
  readonly key: string;
  readonly formats: UnitFormats | NumberFormat | undefined;
  /** Base units in the unit that is written; for lengths those of one millimetre or inch. */
  readonly unit: number | Readonly<Record<UnitSystem, number>>;
}

/** The writers of all numbers that a block may hold. */
function writers({ format: { numbers, motion, dwell, cycles, waitValues, speedUnit } }: Context): Writer[] {
  const timeUnit = (unit: "s" | "ms" | "rev" | undefined): number => {
    if (unit === "rev") return microRevolutions;
    return unit === "ms" ? microsecondsPerSecond / 1000 : microsecondsPerSecond;
  };
  return [
    { name: "writeLength", key: "numbers.length", formats: numbers.length, unit: atomsPerUnit },
    { name: "writeArcCentre", key: "numbers.arc-centre", formats: numbers.arcCentre, unit: atomsPerUnit },
    { name: "writePeck", key: "numbers.peck", formats: numbers.peck, unit: atomsPerUnit },
    { name: "writeAngle", key: "numbers.angle", formats: numbers.angle, unit: degree },
    {
      name: "writeFeedPerMinute",
      key: "numbers.feed-per-minute",
      formats: numbers.feedPerMinute,
      unit: atomsPerUnit,
    },
    {
      name: "writeFeedPerRevolution",
      key: "numbers.feed-per-revolution",
      formats: numbers.feedPerRevolution,
      unit: atomsPerUnit,
    },
    {
      name: "writeInverseTime",
      key: "numbers.inverse-time",
      formats: numbers.inverseTime,
      unit: motion.inverseTimeUnit === "per-second" ? 60 * inverseTimeUnit : inverseTimeUnit,
    },
    { name: "writeSpeed", key: "numbers.speed", formats: numbers.speed, unit: speedUnit },
    {
      name: "writeDwellTime",
      key: "numbers.dwell",
      formats: dwell && numbers.dwell,
      unit: timeUnit(dwell?.unit),
    },
    {
      name: "writeCycleDwell",
      key: "numbers.cycle-dwell",
      formats: cycles && numbers.cycleDwell,
      unit: timeUnit(cycles?.dwellUnit),
    },
    {
      name: "writeTimeout",
      key: "numbers.timeout",
      formats: waitValues && numbers.timeout,
      unit: timeUnit(waitValues?.timeoutUnit),
    },
  ];
}

/** The functions that write numbers, each with its address before it. */
export function defineNumbers(context: Context): FunctionDeclaration[] {
  return [...writers(context).map((writer) => defineNumber(context, writer)), defineWholeWord(context)];
}

function defineNumber(context: Context, { name, key, formats, unit }: Writer): FunctionDeclaration {
  if (formats === undefined) return func(name, ["state", "at", "address", "value"], [faultOn(key)]);
  return func(
    name,
    ["state", "at", "address", "value"],
    [
      constant("bytes", get("state", "bytes")),
      ...tracing(context, key),
      ...(name === "writeTimeout" ? [] : [put("address")]),
      set("at", printing(context, key, formats, unit)),
      // The timeout of a wait stands inside the text of its idiom, which has its own separators.
      ...(name === "writeTimeout" ? [] : separating(context)),
      back("at"),
    ],
  );
}

/** The call of the printer; where the units of the program decide, the choice between two. */
function printing(
  context: Context,
  key: string,
  formats: UnitFormats | NumberFormat,
  unit: Writer["unit"],
): Expression {
  const print = (format: NumberFormat, size: number): Expression =>
    call(printerFor(context, format), "bytes", "at", div("value", cellSize(key, format, size)));
  if (typeof unit === "number") return print(formats as NumberFormat, unit);
  const { mm, inch } = formats as UnitFormats;
  return choose(get("state", "inch"), print(inch, unit.inch), print(mm, unit.mm));
}

/** The size of a grid cell in base units, which has to be a whole number. */
function cellSize(key: string, format: NumberFormat, unit: number): number {
  const size = unit / 10 ** format.decimals;
  if (!Number.isInteger(size)) throw new Error(`${key} has more decimals than the base unit can hold.`);
  return size;
}

/** Whole numbers of tools and offsets: T01. */
function defineWholeWord(context: Context): FunctionDeclaration {
  return func(
    "writeWholeWord",
    ["state", "at", "address", "value", "width"],
    [
      constant("bytes", get("state", "bytes")),
      put("address"),
      set("at", call("writePadded", "bytes", "at", "value", "width")),
      ...separating(context),
      back("at"),
    ],
  );
}
