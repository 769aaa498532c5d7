/** Stops as the sheet lists them. */
import type { MachineFacts } from "#base";
import type { SheetStop, SheetTool, StopKind } from "#report";
import type { JobTexts } from "./job-texts.ts";
import type { StopTally, Tally } from "./tally.ts";

/** What the stops of a sheet are made from. */
export interface StopsInput {
  readonly tally: Tally;
  readonly texts: JobTexts;
  readonly tools: readonly SheetTool[];
  readonly machine: MachineFacts;
}

/** Every stop of the program, in order, with what the operator is to do. */
export function sheetStops(input: StopsInput): SheetStop[] {
  const { operations } = input.tally;
  return input.tally.stops.map((stop) => {
    const operation = operations[stop.operation]?.operation.id;
    const kind = kindOf(stop, input.texts);
    return {
      kind,
      optional: stop.optional,
      ...(operation === undefined || kind === "empty-spindle" ? {} : { operation }),
      ...(stop.tool === undefined ? {} : { tool: stop.tool }),
      text: doing[kind](stop, input),
      message: stop.messages.join(" "),
      ...(stop.line === undefined ? {} : { line: stop.line }),
    };
  });
}

/** A stop of the job comes from its own place there; the others are put in by the sequence. */
function kindOf({ tool, source, isBeforeFirstTool }: StopTally, { pauses }: JobTexts): StopKind {
  if (pauses.has(source)) return "pause";
  if (tool !== undefined) return "tool";
  return isBeforeFirstTool ? "empty-spindle" : "reload";
}

/** What the operator is to do at a stop. */
const doing = {
  pause: ({ source }, { texts }) => texts.pauses.get(source) ?? "",
  tool: ({ tool }, { tools, machine }) => {
    const one = tools.find(({ number }) => number === tool);
    const words = one && (one.description || one.kind);
    const set = machine.lengths === "operator" ? ", and set Z for it" : "";
    return `Put in tool ${String(tool)}${words === undefined ? "" : `, ${words}`}${set}.`;
  },
  "empty-spindle": () => "Take any tool out of the spindle, and clamp it empty.",
  reload: ({ messages }) => `Load the rack: ${messages.join("; ")}.`,
} as const satisfies Record<StopKind, (stop: StopTally, input: StopsInput) => string>;
