import type { Severity, ToolKind, UnitSystem } from "#base";

/**
 * What a backplot shows, as plain data. Lengths are in whole micrometres, which is finer than any picture; the program itself is
 * never made from them. Places are those of the tool's tip in the work offset of the first operation.
 */
export interface PlotHead {
  /** Name of the job. */
  readonly name: string;
  /** A program that was proved, one that was not, or the job alone. */
  readonly shows: "proved" | "unproved" | "job";
  /** Units in which places are told. */
  readonly units: UnitSystem;
  readonly dialect: { readonly name: string; readonly title: string } | undefined;
  readonly tools: readonly PlotTool[];
  readonly operations: readonly PlotOperation[];
  readonly boxes: readonly PlotBox[];
  /** Z of safe travel of the operations, each once, rising. */
  readonly clearances: readonly number[];
  /** Origins of the work offsets whose places are known; that of the first operation is 0, 0, 0. */
  readonly workZeros: readonly { readonly offset: number; readonly at: Point }[];
  /** What the feed motions cover; undefined where there are none. */
  readonly cut: Extent | undefined;
  /** What all motions cover that are drawn. */
  readonly all: Extent | undefined;
  readonly counts: PlotCounts;
  readonly marks: readonly PlotMark[];
  /** What the picture leaves out or takes for granted, a sentence each. */
  readonly remarks: readonly string[];
  /** Lines of the listing. */
  readonly lines: number;
}

export type Point = readonly [x: number, y: number, z: number];

export interface Extent {
  readonly min: Point;
  readonly max: Point;
}

export interface PlotTool {
  readonly number: number;
  readonly kind: ToolKind;
  /** 0 where it is not known. */
  readonly diameter: number;
  readonly description: string;
}

export interface PlotOperation {
  readonly id: string;
  readonly name: string;
  /** Index into the tools. */
  readonly tool: number;
}

export interface PlotBox extends Extent {
  readonly kind: "stock" | "fixture" | "keep-out" | "rack" | "travel";
  readonly name: string;
}

/** How many motions there are of each kind, and how many of them start or end at an unknown place and are not drawn. */
export interface PlotCounts {
  readonly rapids: number;
  readonly lines: number;
  readonly arcs: number;
  readonly holes: number;
  readonly leftOut: number;
}

/** A finding, and where it is in the picture. */
export interface PlotMark {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: string;
  readonly fix: string;
  /** File, line and column as a person looks it up; empty where it has no place. */
  readonly where: string;
  /** Line of the listing, from 1; 0 where it belongs to none. */
  readonly line: number;
  /** Undefined where it has no place in the picture. */
  readonly at: Point | undefined;
}

/** What packs bytes and unpacks them, handed in because the core runs without Node: zlib format (RFC 1950). */
export interface Packing {
  readonly deflate: (bytes: Uint8Array) => Uint8Array;
  readonly inflate: (bytes: Uint8Array) => Uint8Array;
}

/** A backplot: its motions and its listing packed, piece by piece. */
export interface Plot {
  readonly head: PlotHead;
  /** Pieces of `encodeMoves`, each deflated. */
  readonly moves: readonly Uint8Array[];
  /** Texts of `linesOfPiece` lines each with line feeds between, deflated. */
  readonly listing: readonly Uint8Array[];
}

/** Lines in one piece of the listing. */
export const linesOfPiece = 1024;

/** Atoms in a micrometre, the unit of a plot. */
export const atomsPerMicrometre = 10_000;

/** Micrometres in one unit of a system. */
export const micrometresPerUnit = { mm: 1000, inch: 25_400 } as const satisfies Record<UnitSystem, number>;

/** A length in the units of the job as people read it: 12500, mm -> "12.5" */
export function placeText(micrometres: number, units: UnitSystem): string {
  const text = (micrometres / micrometresPerUnit[units]).toFixed(units === "mm" ? 3 : 4);
  const short = text.replace(/\.?0+$/, "");
  return short === "-0" ? "0" : short;
}
