import type { CoolantMedium, CycleKind, ModeStep, SpindleDirection } from "#base";
import type { Code, Format } from "#dialect";

/** Motion modes of modal group 1. `none`: no motion word is in force; `cycle`: a fixed cycle is. */
export const motion = { none: -1, rapid: 0, line: 1, arcCw: 2, arcCcw: 3, cycle: 4 } as const;

/** What a code means under the dialect. */
export type Meaning =
  | { readonly kind: "motion"; readonly motion: 0 | 1 | 2 | 3 }
  | { readonly kind: "cycle"; readonly cycle: CycleKind }
  | { readonly kind: "tap-synchronised" }
  | { readonly kind: "cycle-return"; readonly between: "initial" | "retract" }
  | { readonly kind: "mode"; readonly step: ModeStep }
  | { readonly kind: "compensation"; readonly value: "off" | "left" | "right" }
  | { readonly kind: "length-on" }
  | { readonly kind: "length-off" }
  | { readonly kind: "work-offset"; readonly number: number }
  | { readonly kind: "machine-move" }
  | { readonly kind: "reference-return" }
  | { readonly kind: "dwell" }
  | { readonly kind: "tool-change" }
  | { readonly kind: "spindle-start"; readonly direction: SpindleDirection }
  | { readonly kind: "gear"; readonly from: number; readonly to: number }
  | { readonly kind: "spindle-stop" }
  | { readonly kind: "spindle-orient" }
  | { readonly kind: "coolant"; readonly medium: CoolantMedium }
  | { readonly kind: "coolant-off"; readonly medium: CoolantMedium | "all" }
  | { readonly kind: "stop"; readonly optional: boolean }
  | { readonly kind: "end"; readonly isOwn: boolean }
  | { readonly kind: "extra" };

/** Whether a code stands for a path that may leave its corners. */
export function isBlend(meaning: Meaning): boolean {
  return meaning.kind === "mode" && meaning.step.kind === "path" && meaning.step.value === "blend";
}

/** The name of a meaning. */
export type MeaningKind = Meaning["kind"];

/** A code that may be missing, with what it means. */
type Entry = readonly [Code | null | undefined, Meaning];

/** A code with what it means. */
export type CodeMeaning = readonly [Code, Meaning];

/** The keys of a record that may lack some, typed. */
function entriesOf<Key extends string, Value>(record: Readonly<Partial<Record<Key, Value>>>): [Key, Value][] {
  return Object.entries(record) as [Key, Value][];
}

function motionEntries({ codes }: Format): Entry[] {
  return [
    [codes.rapid, { kind: "motion", motion: 0 }],
    [codes.line, { kind: "motion", motion: 1 }],
    [codes.arcCw, { kind: "motion", motion: 2 }],
    [codes.arcCcw, { kind: "motion", motion: 3 }],
    ...entriesOf(codes.cycles).map(([cycle, code]): Entry => [code, { kind: "cycle", cycle }]),
    ...entriesOf(codes.cycleReturn).map(([between, code]): Entry => [
      code,
      { kind: "cycle-return", between },
    ]),
    [codes.tapSynchronised, { kind: "tap-synchronised" }],
    [codes.machineMove, { kind: "machine-move" }],
    [codes.referenceReturn, { kind: "reference-return" }],
    [codes.dwell, { kind: "dwell" }],
  ];
}

function modeEntries({ codes }: Format): Entry[] {
  const modes = Object.entries(codes.modes).flatMap(([kind, values]) =>
    Object.entries(values).map(([value, code]): Entry => [
      code,
      { kind: "mode", step: { kind, value } as ModeStep },
    ]),
  );
  return [
    ...modes,
    ...entriesOf(codes.compensation).map(([value, code]): Entry => [code, { kind: "compensation", value }]),
    [codes.lengthOn, { kind: "length-on" }],
    [codes.lengthOff, { kind: "length-off" }],
    ...codes.workOffsets.map((code, number): Entry => [code, { kind: "work-offset", number }]),
  ];
}

function machineEntries({ codes, gears, optionalStopMark }: Format): Entry[] {
  return [
    [codes.toolChange, { kind: "tool-change" }],
    [codes.spindleCw, { kind: "spindle-start", direction: "cw" }],
    [codes.spindleCcw, { kind: "spindle-start", direction: "ccw" }],
    ...gears.map(({ code, from, to }): Entry => [code, { kind: "gear", from, to }]),
    [codes.spindleStop, { kind: "spindle-stop" }],
    [codes.spindleOrient, { kind: "spindle-orient" }],
    ...entriesOf(codes.coolant).map(([medium, code]): Entry => [code, { kind: "coolant", medium }]),
    [codes.coolantOff, { kind: "coolant-off", medium: "all" }],
    ...entriesOf(codes.coolantOffOne).map(([medium, code]): Entry => [code, { kind: "coolant-off", medium }]),
    [codes.stop, { kind: "stop", optional: false }],
    ...(optionalStopMark === "" ? [[codes.optionalStop, { kind: "stop", optional: true }] as Entry] : []),
    [codes.end, { kind: "end", isOwn: true }],
  ];
}

/**
 * The end code that the dialect does not write: M02 and M30 both end a program (ISO 6983-1), and programs from elsewhere have either. A code
 * that the dialect declares comes before it in the tables.
 */
const otherEnds: readonly CodeMeaning[] = [20, 300].map((value) => [
  { letter: "M", value },
  { kind: "end", isOwn: false },
]);

/** The codes that a dialect declares, and what each means. A code declared twice keeps its first meaning. */
export function meaningsOf(format: Format): CodeMeaning[] {
  const extras = format.extraCodes.map((code): Entry => [code, { kind: "extra" }]);
  const entries = [...motionEntries(format), ...modeEntries(format), ...machineEntries(format), ...extras];
  const own = entries.flatMap(([code, meaning]): CodeMeaning[] => (code ? [[code, meaning]] : []));
  return [...own, ...otherEnds];
}
