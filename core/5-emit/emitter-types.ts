import type { GenerateOptions } from "./generate-emitter.ts";
import { moduleHeader } from "./module-header.ts";

/**
 * Types of a generated emitter as the text of a declaration file, which stands beside the module and needs nothing of this
 * package. A test holds them against the types that the stages share.
 *
 * @param options those that the emitter was generated with
 */
export function emitterTypes(options: GenerateOptions): string {
  const header = moduleHeader(options.origin, options);
  return `${header}\n${options.traced ? traceKeys : ""}${exportsAndOptions}${batch}${step}`;
}

const traceKeys = `/** The dialect keys that words report, by their index. */
export const traceKeys: readonly string[];

`;

const exportsAndOptions = `/**
 * Writes a sequence as text.
 *
 * @returns chunks of bytes, each valid until the next is pulled
 * @throws where the dialect has no word for a step
 */
export function emitUnproved(batches: Iterable<Batch>, options: EmitOptions): Iterable<Uint8Array>;

/** A text as a message of the program has it: in the characters of the dialect's comments, and cut to their length. */
export function cleanText(text: string): string;

export interface EmitOptions {
  /** Units of the program. */
  readonly units: "mm" | "inch";
  /** Comment lines at the head. */
  readonly header: readonly string[];
  /** Comment lines behind the last block, where the dialect has a footer. */
  readonly footer?: readonly string[];
  /** Only the blocks: no delimiter, program number, header or block numbers; each states motion and feed anew. */
  readonly fragment?: boolean;
  /** Where a fragment starts, and in which modes; a program starts nowhere. */
  readonly start?: EmitStart;
  /** Traced emitter only: called for each word with its byte offset in the whole text and the index of its key. */
  readonly trace?: (offset: number, key: number) => void;
}

/** State of the controller where a fragment starts. */
export interface EmitStart {
  /** Mask of the axes whose place is known: x 1, y 2, z 4, a 8, b 16, c 32. */
  readonly known: number;
  /** Atoms; 1 atom = 0.1 nm. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Micro-degrees. */
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly distance: "absolute" | "incremental";
  readonly feedMode: FeedMode;
}

`;

const batch = `/** Motion in columns, one row a motion; rare steps stand aside in a list. */
export interface Batch {
  /** Rows in use. */
  count: number;
  /** 0 rapid, 1 line, 2 3 4 arc by centre and 5 6 7 arc by radius in xy, zx, yz, 8 hole, 9 a rare step. */
  readonly kind: Uint8Array;
  /** 0 work coordinates, 1 machine coordinates. */
  readonly frame: Uint8Array;
  /** Mask of the axes that are known after the motion. */
  readonly known: Uint8Array;
  /** Mask of the axes that the motion names. */
  readonly stated: Uint8Array;
  /** Place after the motion, atoms. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Rotary places, micro-degrees. */
  readonly abc: readonly [Float64Array, Float64Array, Float64Array] | undefined;
  /** Atoms a minute, atoms a revolution, or 1e-6 a minute in inverse time. */
  readonly feed: Float64Array;
  /** Arcs by centre: its place on the first axis of the plane (x, z, y), atoms. By radius: the signed radius. */
  readonly c1: Float64Array;
  /** Arcs by centre: its place on the second axis of the plane (y, x, z), atoms. */
  readonly c2: Float64Array;
  /** Arcs: turns started, + counter-clockwise. */
  readonly turns: Int16Array;
  /** Rare steps: index into \`asides\`. */
  readonly aside: Int32Array;
  /** Byte offset in the input; not read. */
  readonly source: Float64Array;
  asides: Step[];
  /** Rows before which a section of the program begins, rising; none where it is left out. */
  readonly sections?: readonly number[];
  /** Name of each of them. */
  readonly sectionNames?: readonly string[];
}

export type FeedMode = "per-minute" | "per-revolution" | "inverse-time";

`;

const step = `/** A rare step. Lengths are atoms, times microseconds, speeds 0.001 rpm. */
export type Step =
  | { readonly kind: "program-start"; readonly number: number }
  | { readonly kind: "units"; readonly value: "mm" | "inch" }
  | { readonly kind: "plane"; readonly value: "xy" | "zx" | "yz" }
  | { readonly kind: "distance"; readonly value: "absolute" | "incremental" }
  | { readonly kind: "arc-centre"; readonly value: "absolute" | "incremental" }
  | { readonly kind: "feed-mode"; readonly value: FeedMode }
  | { readonly kind: "path"; readonly value: "exact" | "stop" | "blend"; readonly tolerance?: number }
  | { readonly kind: "look-ahead"; readonly value: "on" | "off" }
  | { readonly kind: "corner-feed"; readonly value: "on" | "off" }
  | { readonly kind: "overrides"; readonly value: "on" | "off" }
  | { readonly kind: "cycle"; readonly value: "off" }
  | { readonly kind: "local-shift"; readonly value: "off" }
  | { readonly kind: "rotation"; readonly value: "off" }
  | { readonly kind: "scale"; readonly value: "off" }
  | { readonly kind: "compensation"; readonly value: "off" | "left" | "right"; readonly offset: number }
  | { readonly kind: "work-offset"; readonly number: number }
  | { readonly kind: "length-offset"; readonly number: number }
  | { readonly kind: "select-tool"; readonly tool: number; readonly offset?: number }
  | { readonly kind: "change-tool" }
  | { readonly kind: "spindle-speed"; readonly rpm: number }
  | { readonly kind: "spindle-start"; readonly direction: "cw" | "ccw" }
  | { readonly kind: "spindle-stop" }
  | { readonly kind: "spindle-orient" }
  | { readonly kind: "coolant"; readonly medium: "mist" | "flood" | "air" | "through-tool" | "all"; readonly on: boolean }
  | { readonly kind: "output"; readonly number: number; readonly on: boolean }
  | { readonly kind: "wait"; readonly input: number; readonly level: "on" | "off"; readonly timeout: number }
  | { readonly kind: "dwell"; readonly time: number; readonly revolutions?: number }
  | { readonly kind: "pause"; readonly optional: boolean }
  | { readonly kind: "message"; readonly text: string }
  | {
      readonly kind: "cycle-definition";
      readonly cycle: "drill" | "dwell" | "peck" | "chip-break" | "tap" | "tap-left" | "ream" | "bore-dwell" | "bore-stop" | "bore-manual";
      readonly depth: number;
      readonly retract: number;
      readonly level: number;
      readonly between: "initial" | "retract";
      readonly levelStated: boolean;
      readonly peck: number;
      readonly dwell: number;
      readonly dwellIs?: "revolutions";
    }
  | {
      readonly kind: "auxiliary";
      readonly action: "release" | "clamp" | "taper-air-on" | "taper-air-off" | "cover-open" | "cover-close" | "hood-up" | "hood-down" | "measure" | "opaque";
      readonly code: string;
    }
  | { readonly kind: "reference-return"; readonly axes: number }
  | { readonly kind: "program-end" };
`;
