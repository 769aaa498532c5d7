/**
 * What a set-up sheet says, as plain data. Lengths are in the units of the program (mm or inches), feeds in these a minute or a
 * revolution, speeds in 1/min, times in seconds; each rounded to what can be read at a machine.
 */
import type { SpindleDirection, Times, ToolKind, UnitSystem } from "#base";
import type { ProofFacts, Verdict } from "../outcome.ts";

/** Least and most of a quantity; equal where there is one value. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/** Where a tool goes, by axis; absent where that is not known. */
export interface Extents {
  readonly x?: Range;
  readonly y?: Range;
  readonly z?: Range;
}

/** A place, or the size of a box: x y z. */
export type Triple = readonly [number, number, number];

/** A file and the SHA-256 of its bytes, hexadecimal. */
export interface HashedFile {
  readonly file: string;
  readonly sha256: string;
}

/** A box with a name, in work coordinates. */
export interface SheetBox {
  readonly name: string;
  readonly min: Triple;
  readonly max: Triple;
  readonly size: Triple;
}

/** A set-up sheet. */
export interface SetupSheet {
  readonly verdict: Extract<Verdict, "proved" | "refused">;
  readonly job: HashedFile;
  /** The job without operations that a cutter location source goes with. */
  readonly head?: HashedFile;
  readonly setup?: HashedFile;
  /** The chain of the dialect under which the job, a program, is read; the leaf first. */
  readonly readAs?: readonly HashedFile[];
  readonly dialect: SheetDialect;
  /** Options that change the program, as the command line has them: "--only op10". */
  readonly options: readonly string[];
  /** Present exactly where the verdict is "proved". */
  readonly program?: SheetProgram;
  /** What is known of the job; absent where it cannot be read. */
  readonly plan?: SheetPlan;
}

/** The dialect, and the machine that it is for. */
export interface SheetDialect {
  readonly name: string;
  readonly title: string;
  /** The chain, the leaf first. */
  readonly files: readonly HashedFile[];
  /** False for an archetype, which has no machine. */
  readonly hasMachine: boolean;
}

/** The program as it would be posted. */
export interface SheetProgram extends ProofFacts {
  /** Name under which `post` writes it. */
  readonly file: string;
}

/** What the sheet knows of a job. */
export interface SheetPlan {
  readonly name: string;
  readonly program: { readonly number?: number; readonly name?: string };
  readonly units: UnitSystem;
  readonly machine: SheetMachine;
  readonly stock?: SheetBox & { readonly material?: string };
  readonly fixtures: readonly SheetBox[];
  /** Z of safe travel, the lowest and the highest of the operations. */
  readonly clearance: Range;
  readonly workOffsets: readonly SheetOffset[];
  readonly tools: readonly SheetTool[];
  /** Pockets in order, tool 0 for an empty one; empty where there is no rack. */
  readonly rack: readonly { readonly pocket: number; readonly tool: number }[];
  /** Tool in the spindle at the start, 0 for none; absent where nobody says. */
  readonly spindleHolds?: number;
  readonly operations: readonly SheetOperation[];
  /** Where the program waits for the operator, in order. */
  readonly stops: readonly SheetStop[];
  /** What is taken for granted at the machine, one sentence each. */
  readonly assumptions: readonly string[];
  readonly airCut?: AirCut;
  /** Estimated times; absent where no program was made. */
  readonly time?: Times;
  /** What has to be done before the start, and how the program is proved out; one step each. */
  readonly before: readonly CheckStep[];
  readonly proveOut: readonly CheckStep[];
}

/** Facts of the machine that a person compares with the one before them. */
export interface SheetMachine {
  readonly travel: Extents;
  readonly spindle?: Range;
  /** Who changes tools; absent where the dialect does not say. */
  readonly toolChange?: "rack" | "controller" | "operator" | "none";
  readonly lengths?: "table" | "measured" | "operator";
}

/** A work offset that operations use. */
export interface SheetOffset {
  readonly number: number;
  /** Its word, such as "G54"; absent where the dialect has none. */
  readonly word?: string;
  /** Ids of the operations in it. */
  readonly operations: readonly string[];
  /** In machine coordinates, where dialect or set-up states it. */
  readonly origin?: Triple;
  /** Of all motion in it, rapids, too, in work coordinates. */
  readonly extents: Extents;
  /** The same in machine coordinates: X and Y, where the origin is known. */
  readonly machineExtents: Extents;
}

/** A tool that operations use. */
export interface SheetTool {
  readonly number: number;
  readonly kind: ToolKind;
  readonly description: string;
  /** Absent where it is not known. */
  readonly diameter?: number;
  readonly flutes?: number;
  /** Where it waits, counted from 1. */
  readonly pocket?: number;
  /** Number of its length offset, and its word, such as "H5". */
  readonly lengthOffset: number;
  readonly lengthWord?: string;
  /** Of its radius offset, where compensation is used or stated. */
  readonly radiusOffset?: number;
  /** Gauge length, and what states it. */
  readonly length?: { readonly value: number; readonly from: "set-up" | "job" };
  readonly measured: boolean;
  readonly stickOut?: number;
  readonly fluteLength?: number;
  readonly cornerRadius?: number;
  readonly tipAngle?: number;
  readonly tipDiameter?: number;
  readonly lead?: number;
  readonly maxRpm?: number;
  /** The worn tool that it takes over from in its operations. */
  readonly spareFor?: number;
  readonly operations: readonly string[];
  /** Estimated for all of its operations, seconds. */
  readonly time?: number;
  /** Of motion at feed and of all motion, by work offset. */
  readonly reach: readonly ToolReach[];
}

/** Where the tip of a tool goes in a work offset. */
export interface ToolReach {
  readonly workOffset: number;
  readonly cutting: Extents;
  readonly motion: Extents;
}

/** An operation that is posted. */
export interface SheetOperation {
  readonly id: string;
  readonly name: string;
  readonly tool: number;
  readonly workOffset: number;
  /** Line of the program where it begins, from 1. */
  readonly line?: number;
  /** 1/min; absent where the spindle does not turn. */
  readonly rpm?: Range;
  readonly direction?: SpindleDirection;
  readonly feedMode: "per-minute" | "per-revolution" | "inverse-time";
  readonly feeds: readonly SheetFeed[];
  /** At the tool's diameter: m/min, or feet a minute where the program is in inches. */
  readonly cuttingSpeed?: Range;
  readonly lowest?: number;
  readonly clearance: number;
  readonly coolant: readonly string[];
  /** Estimated, seconds, the ways to it and the swap before it included. */
  readonly time?: number;
  /** Material that it takes away, cm3 or cubic inches; absent where the stock was not simulated. */
  readonly removed?: number;
  /** Notes of the job in it, in order. */
  readonly notes: readonly string[];
  /** Notes that are left out. */
  readonly moreNotes: number;
}

/** What a motion at feed does. */
export type FeedUse = "cut" | "plunge" | "tap";

/** The feeds of an operation for one use. */
export interface SheetFeed {
  readonly use: FeedUse;
  /** In the operation's feed mode; of a tap the lead of its thread. */
  readonly feed: Range;
  /** Feed a tooth: length; absent where flutes, speed or path length are not known. */
  readonly perTooth?: Range;
}

/** Why the program waits for the operator. */
export type StopKind = "tool" | "empty-spindle" | "reload" | "pause";

/** A stop that the operator ends. */
export interface SheetStop {
  readonly kind: StopKind;
  /** Whether the operator's switch decides. */
  readonly optional: boolean;
  /** Id of the operation in which, or before which, it stands; absent at the start of the program. */
  readonly operation?: string;
  /** The tool to put in. */
  readonly tool?: number;
  /** What is to be done. */
  readonly text: string;
  /** What the controller shows; empty where it shows nothing. */
  readonly message: string;
  readonly line?: number;
}

/** Lifting the whole program above the work. */
export interface AirCut {
  /** Lowest place that a tool goes to, and the height that it has to be lifted to: work Z. */
  readonly lowest: number;
  readonly above: number;
  /** How far to raise. */
  readonly raise: number;
  /** How far travel lets it be raised; absent where that is not known. */
  readonly room?: number;
}

/** One step of a list to tick off. */
export interface CheckStep {
  readonly text: string;
  /** What is ticked one by one, such as tools; the step itself where it is empty. */
  readonly each: readonly string[];
}
