import type {
  Box,
  CoolantMedium,
  FeedMode,
  NamedBox,
  Place,
  SpindleDirection,
  ToolKind,
  UnitSystem,
} from "#base";

/** A job's head: everything but the moves, validated, in base units (atoms, micro-degrees, microseconds, milli-rpm). */
export interface Job {
  readonly name: string;
  readonly units: UnitSystem;
  /** Program number and name, where the job states them. */
  readonly program: { readonly number: number | undefined; readonly name: string | undefined };
  readonly stock: Stock | undefined;
  readonly fixtures: readonly NamedBox[];
  /** Work offset of operations that state none, 1 to 9. */
  readonly workOffset: number;
  /** Z of safe travel of operations that state none, atoms. */
  readonly clearance: number;
  readonly tools: readonly Tool[];
  readonly operations: readonly Operation[];
}

/** Box of the raw material, in work coordinates. */
export interface Stock extends Box {
  readonly material: string | undefined;
  /** Where the material is stated. */
  readonly materialAt?: Place;
}

export interface Tool {
  readonly number: number;
  readonly kind: ToolKind;
  /** Atoms. */
  readonly diameter: number;
  readonly description: string;
  readonly flutes: number | undefined;
  /** Milli-rpm. */
  readonly maxRpm: number | undefined;
  readonly minRpm: number | undefined;
  /** Atoms a minute. */
  readonly maxFeed: number | undefined;
  /** Its number unless the job states another. */
  readonly lengthOffset: number;
  readonly radiusOffset: number | undefined;
  /** Atoms. */
  readonly length: number | undefined;
  readonly fluteLength: number | undefined;
  readonly stickOut: number | undefined;
  readonly shank: number | undefined;
  readonly holder: { readonly diameter: number; readonly length: number } | undefined;
  readonly cornerRadius: number | undefined;
  readonly tipDiameter: number | undefined;
  /** Micro-degrees. */
  readonly tipAngle: number | undefined;
  /** Lead of a tap or thread mill, atoms. */
  readonly lead: number | undefined;
  readonly hand: "right" | "left" | undefined;
  readonly centreCutting: boolean | undefined;
  /** Microseconds of cutting. */
  readonly life: number | undefined;
  /** Number of the tool that this one takes over from when it is worn. */
  readonly spareFor: number | undefined;
  /** Whether its length is measured after each swap. */
  readonly measure: boolean | undefined;
  /** Byte offset of the tool in the job. */
  readonly source: number;
}

export interface Operation {
  readonly id: string;
  readonly name: string;
  readonly tool: number;
  readonly spindle:
    { /** Milli-rpm. */ readonly rpm: number; readonly direction: SpindleDirection } | undefined;
  /** Empty: off. */
  readonly coolant: readonly CoolantMedium[];
  readonly feedMode: FeedMode;
  readonly workOffset: number;
  /** Atoms. */
  readonly clearance: number;
  readonly hood: "up" | "down" | undefined;
  /** Atoms. */
  readonly tolerance: number | undefined;
  readonly path: "exact" | "blend" | undefined;
  /** Span of the value of `moves` in the input, bytes: from its bracket on, to behind its closing bracket. */
  readonly moves: { readonly start: number; readonly end: number };
  /** Byte offset of the operation in the job. */
  readonly source: number;
}

/** Kinds of holes a job may ask for. */
export type HoleKind = "drill" | "dwell" | "peck" | "chip-break" | "tap" | "bore" | "ream";

/** The head of a `holes` move; hole rows (x, y and feed) follow until "holes-end". */
export interface Holes {
  readonly kind: "holes";
  readonly cycle: HoleKind;
  /** Absolute Z, atoms. */
  readonly top: number;
  readonly depth: number;
  readonly retract: number;
  /** Atoms; 0 where the kind has none, and for `backOff` where the job states none. */
  readonly peck: number;
  readonly backOff: number;
  /** Microseconds; 0 for none. */
  readonly dwell: number;
  /** Atoms a revolution; 0 where the kind has none. */
  readonly lead: number;
  /** Feed out in the unit of the feed mode; 0: as the feed in. */
  readonly feedOut: number;
  readonly between: "retract" | "initial";
  /** In the unit of the feed mode; 0 for a tap, whose feed is rpm x lead. */
  readonly feed: number;
}

/** The rare moves of a job. */
export type JobStep =
  | Holes
  | { readonly kind: "holes-end" }
  | { readonly kind: "dwell"; /** Microseconds. */ readonly time: number }
  | { readonly kind: "pause"; readonly text: string; readonly optional: boolean; readonly park: boolean }
  | { readonly kind: "note"; readonly text: string }
  | { readonly kind: "spindle"; /** Milli-rpm. */ readonly rpm: number }
  | { readonly kind: "coolant"; /** Empty: off. */ readonly media: readonly CoolantMedium[] }
  | { readonly kind: "compensation"; readonly side: "left" | "right" | "off" };
