import type { Expression } from "./expression.ts";
import type { Axis } from "./batch.ts";
import type { UnitSystem } from "./lengths.ts";
import type { CoolantMedium, SpindleDirection, StepKind } from "./step.ts";

/**
 * Facts of the machine as the dialect file declares them. `undefined` means that no file of the chain says it: who needs
 * it refuses with `dialect/undeclared` and the key, and never takes a default.
 */
export interface MachineFacts {
  /** Whether any machine is declared; an archetype has none. */
  readonly declared: boolean;
  /** Keys of a declared machine that no file states, or that come from a dialect without one: "machine.travel.z". */
  readonly unsaid: readonly string[];
  /** Units that the controller counts in before a word says them; undefined where programs are in those of their job. */
  readonly countsIn: UnitSystem | undefined;
  /** Kinds of steps for which the dialect has a word, so that the start of a program must state them. */
  readonly statable: readonly StepKind[];
  /** Travel of each axis in machine coordinates, [least, most]: atoms, or micro-degrees for a, b, c. */
  readonly travel: Partial<Record<Axis, readonly [number, number]>>;
  readonly spindle: SpindleFacts;
  readonly confirm: Partial<Record<ConfirmationName, Confirmation>>;
  /** What a wait on a signal does when its time is up; a wait that continues confirms nothing. */
  readonly onTimeout: "alarm" | "continues" | undefined;
  /** Whether the end of the program puts the modes back by itself. */
  readonly endResets: boolean | undefined;
  /** Media that have a word of their own to turn them off; none where one word turns off all. */
  readonly offWords: readonly CoolantMedium[];
  readonly signals: Partial<Record<SignalName, Signal>>;
  /** Whether modes and offsets are as before when the program goes on behind a stop. */
  readonly afterStop: "keeps-modes" | "loses-modes" | undefined;
  readonly retract: RetractFacts | undefined;
  readonly lengthOffset: LengthOffsetFacts | undefined;
  /** Where tool lengths come from: the controller's table, a measurement after each swap, or the operator. */
  readonly lengths: "table" | "measured" | "operator" | undefined;
  readonly swap: "controller" | "rack" | "operator" | "none" | undefined;
  /** What the controller's own tool change (ChangeTool) does besides. */
  readonly changeEffects: Effects | undefined;
  /** Whether fixed cycles go along Z in any plane. */
  readonly cyclesAlongZ: boolean;
  /** Whether the program ends with a change that leaves the spindle empty, where the controller changes tools. */
  readonly endsEmpty: boolean;
  /** Effects of opaque codes, by the code as written, such as "M93". */
  readonly opaqueEffects: Readonly<Record<string, Effects>>;
  readonly drawbar: DrawbarFacts | undefined;
  readonly rack: RackFacts | undefined;
  /** Where the program leaves X and Y at its end, machine coordinates, atoms. */
  readonly park: { readonly x: number; readonly y: number } | undefined;
  readonly outputs: readonly OutputFacts[];
  /** Whether a dust hood is worked by the program. */
  readonly hood: boolean;
  /** Boxes in machine coordinates that work motion stays out of, atoms. */
  readonly keepOut: readonly NamedBox[];
  /** How the machine taps: not at all, with a floating holder (reversal time in microseconds), or synchronised. */
  readonly tapping:
    | {
        readonly kind: "none" | "floating" | "synchronised";
        readonly reversal: number;
        readonly longhand: boolean;
      }
    | undefined;
  /** Limits of the F word in atoms a minute; infinite where none is declared. */
  readonly feed: { readonly least: number; readonly most: number };
  /** Highest feed of each linear axis in atoms a minute; an axis that none is declared for is not checked. */
  readonly axisFeed: ByLinearAxis;
  /** How the axes move in time; only times are worked out from it. */
  readonly dynamics: DynamicsFacts;
  /** Whether rapids run straight, or each axis at its own rate. */
  readonly rapids: "straight" | "dog-leg" | undefined;
  /** Whether a rapid moves all its axes in one block, or each in a block of its own. */
  readonly rapidAxes: "together" | "one-at-a-time" | undefined;
  /** Whether a motion in machine coordinates leaves all further motion there until a work offset is stated anew. */
  readonly machineMoveLasts: "block" | "until-work-offset" | undefined;
  /** How far the start and end radius of an arc by centre may differ: atoms in a program of each unit, and share of the radius. */
  readonly arcTolerance:
    { readonly mm: number; readonly inch: number; readonly relative: number } | undefined;
}

/** A number for each linear axis that has one. */
export type ByLinearAxis = Partial<Record<"x" | "y" | "z", number>>;

/** How fast the machine gets from place to place and from tool to tool; what is undefined no file says. */
export interface DynamicsFacts {
  /** Rapid rate of each axis, atoms a minute. */
  readonly rapidRate: ByLinearAxis;
  /** Acceleration of each axis, atoms a second squared. */
  readonly acceleration: ByLinearAxis;
  /** How far a corner is left without a word that says so, atoms; 0: each block ends at rest. */
  readonly blending: number | undefined;
  /** Time of the controller's own tool change, and of a change by hand, microseconds. */
  readonly controllerSwap: number | undefined;
  readonly operatorSwap: number | undefined;
}

export interface SpindleFacts {
  /** Milli-rpm. */
  readonly minRpm: number | undefined;
  readonly maxRpm: number | undefined;
  /** Time from standstill to `maxRpm`, microseconds. */
  readonly spinUp: number | undefined;
  /** Time from `maxRpm` to standstill by the drive, microseconds. */
  readonly spinDown: number | undefined;
  /** The same in free run with the drive tripped, microseconds. */
  readonly coastDown: number | undefined;
  /** Whether the spindle must be oriented before a swap. */
  readonly orient: boolean;
}

/** A state of the machine that can be confirmed. */
export type ConfirmationName = "at-speed" | "stopped" | "released" | "clamped" | "air" | "hold-down";

/** How a state is confirmed. */
export type Confirmation =
  | { readonly by: "wait"; readonly signal: SignalName; /** Microseconds. */ readonly timeout: number }
  | { readonly by: "dwell"; readonly time: Expression }
  | { readonly by: "intrinsic"; /** Why the controller can be relied on. */ readonly reason: string }
  | { readonly by: "operator" };

/** An input the program can wait on. */
export type SignalName =
  "at-speed" | "stopped" | "released" | "clamped" | "tool-present" | "air" | "hold-down";

export interface Signal {
  /** Number of the input as the wait names it. */
  readonly input: number;
  readonly level: "on" | "off";
  /** Dwell before the wait, since the contact may still be on from the old state: microseconds, 0 for none. */
  readonly settle: number;
}

export interface RetractFacts {
  readonly by: "machine-move" | "reference-return" | "clearance";
  /** Swap height by machine move: Z in machine coordinates, atoms. Otherwise 0. */
  readonly z: number;
  readonly actsOn: "spindle-nose" | "tool-tip";
  readonly cancelLengthFirst: boolean;
  readonly intermediate: "none" | "incremental-zero";
  /** Operator swaps by clearance: change position (work coordinates, atoms), if stated. */
  readonly changePosition: { readonly x: number; readonly y: number; readonly z: number } | undefined;
}

export interface LengthOffsetFacts {
  readonly form: "with-first-z" | "own-block" | "in-tool-word" | "none";
  /** Whether selecting it moves the axis by itself. */
  readonly selectMoves: boolean;
  readonly cancelMoves: boolean;
}

/** What a code does besides its meaning. */
export interface Effects {
  readonly position: "unchanged" | "unknown" | "swap-height";
  /** "restarts" goes with a tool change alone. */
  readonly spindle: "unchanged" | "stopped" | "restarts";
  readonly coolant: "unchanged" | "off";
  readonly lengthOffset: "unchanged" | "active" | "cancelled";
}

export interface DrawbarFacts {
  /** Whether an empty spindle travels along the rack with the drawbar clamped or released. */
  readonly travels: "clamped" | "released";
  /** Whether air cleans the taper while a tool is picked. */
  readonly taperAir: boolean;
}

export interface RackFacts {
  readonly style: "drop-in" | "slide-in";
  /** Machine Z at which an empty spindle clears the tools in the rack, and a full one the empty pockets; atoms. */
  readonly clearZ: number;
  /** Machine Z at which the holder sits in its pocket, atoms. */
  readonly pocketZ: number;
  /** Pocket places in machine coordinates, atoms; index 0 is pocket 1. */
  readonly pockets: readonly { readonly x: number; readonly y: number }[];
  /** Box in machine coordinates that only swaps enter, atoms. */
  readonly zone: Box | undefined;
  /** Slide-in: the way from the approach to the pocket as a vector in the plane, atoms, and its feed, atoms a minute. */
  readonly slide: { readonly x: number; readonly y: number; readonly feed: number } | undefined;
  /** Feed of the last part of the way down, atoms a minute. */
  readonly descendFeed: number;
  /** How far above `pocketZ` the feed down begins, atoms. */
  readonly descendFrom: number;
  /** Widest and longest tool, atoms; infinite where none is declared. */
  readonly widest: number;
  readonly longest: number;
  /** Whether a cover is worked by the program. */
  readonly cover: boolean;
  /** Whether the last tool goes back to its pocket. */
  readonly atEnd: "return" | "keep";
}

/** An output switched by the program. */
export interface OutputFacts {
  readonly name: string;
  readonly number: number;
  readonly during: "cutting" | "program";
}

/** A box; atoms. */
export interface Box {
  readonly min: readonly [number, number, number];
  readonly max: readonly [number, number, number];
}

export interface NamedBox extends Box {
  readonly name: string;
}

/** Tool kinds of a job. */
export type ToolKind =
  | "end-mill"
  | "ball-mill"
  | "bull-nose"
  | "face-mill"
  | "v-bit"
  | "engraver"
  | "drill"
  | "spot-drill"
  | "reamer"
  | "tap"
  | "boring-bar"
  | "chamfer"
  | "thread-mill"
  | "probe"
  | "drag-knife"
  | "pen";

/** What the guard knows of one tool. */
export interface ToolFacts {
  readonly number: number;
  readonly kind: ToolKind;
  /** Atoms. */
  readonly diameter: number;
  /** Milli-rpm; infinite and 0 where the job states none. */
  readonly maxRpm: number;
  readonly minRpm: number;
  /** Atoms a minute; infinite where the job states none. */
  readonly maxFeed: number;
  readonly lengthOffset: number;
  /** 0 where the job states none. */
  readonly radiusOffset: number;
  /** The only direction it cuts in; undefined where either. */
  readonly direction: SpindleDirection | undefined;
  /** Lead of a tap, atoms; 0 where none. */
  readonly lead: number;
  /** Gauge length, atoms; undefined where the job states none. */
  readonly length: number | undefined;
}

/** Whether a tool of this kind ever turns. */
export function turns(kind: ToolKind): boolean {
  return kind !== "probe" && kind !== "drag-knife" && kind !== "pen";
}

/** What the guard knows of the job and its set-up. Without a job (a program from elsewhere) `known` is false. */
export interface JobFacts {
  readonly known: boolean;
  readonly tools: readonly ToolFacts[];
  /** Stock in work coordinates, atoms. */
  readonly stock: Box | undefined;
  /** Fixtures in work coordinates, atoms. */
  readonly fixtures: readonly NamedBox[];
  /** Lowest clearance of all operations, work Z, atoms. */
  readonly clearance: number | undefined;
  /** Origins of work offsets in machine coordinates, atoms, where the set-up states them; index is the offset number. */
  readonly workOffsets: readonly (readonly [number, number, number] | undefined)[];
  /** Tool in the spindle at the start: its number, 0 for none, undefined for unknown. */
  readonly spindleHolds: number | undefined;
  /** Tool in each pocket at the start; index 0 is pocket 1, 0 means empty. */
  readonly rack: readonly number[];
  /** The same behind each stop at which the operator loads the rack anew, in their order; absent where there is none. */
  readonly reloads?: readonly (readonly number[])[];
}
