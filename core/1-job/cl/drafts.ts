import type { CoolantMedium, SpindleDirection } from "#base";
import type { HoleKind } from "../job.ts";
import type { ClState, FeedPer } from "./state.ts";

/** An operation while its statements are gathered; lengths in atoms. */
export interface OperationDraft {
  /** Byte offset of its first statement, and behind its last. */
  readonly start: number;
  end: number;
  /** Byte offset of the statement that it is named by: that of its tool. */
  source: number;
  /** What held before its first statement. */
  readonly state: ClState;
  tool: number;
  spindle: { readonly rpm: number; readonly direction: SpindleDirection } | undefined;
  coolant: readonly CoolantMedium[];
  /** What its feeds count. */
  readonly per: Set<FeedPer>;
  /** Byte offset of the first feed per revolution. */
  perRevolutionAt: number;
  /** Highest Z that the tool goes to; -Infinity while it goes to none. */
  highest: number;
  /** Z of CLEARP while it moves. */
  clearancePlane: number | undefined;
  /** Whether it has moved, and moved at feed. */
  moved: boolean;
  cut: boolean;
}

export function createOperation(start: number, state: ClState): OperationDraft {
  return {
    start,
    end: start,
    source: start,
    state: { ...state },
    tool: state.tool,
    spindle: undefined,
    coolant: [],
    per: new Set(),
    perRevolutionAt: start,
    highest: -Infinity,
    clearancePlane: undefined,
    moved: false,
    cut: false,
  };
}

/** A tool while it is gathered; atoms. */
export interface ToolDraft {
  readonly number: number;
  /** Byte offset of the first statement that loads it. */
  readonly source: number;
  diameter: number | undefined;
  corner: number | undefined;
  length: number | undefined;
  lengthOffset: number | undefined;
  radiusOffset: number | undefined;
  /** Kinds of holes that it makes. */
  readonly holes: Set<HoleKind>;
  /** Whether it mills: lines, arcs or CYCLE/MILL. */
  mills: boolean;
}

export function createTool(number: number, source: number): ToolDraft {
  return {
    number,
    source,
    diameter: undefined,
    corner: undefined,
    length: undefined,
    lengthOffset: undefined,
    radiusOffset: undefined,
    holes: new Set(),
    mills: false,
  };
}
