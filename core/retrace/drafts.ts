import type { CoolantMedium, FeedMode, SpindleDirection } from "#base";
import type { HoleKind } from "#job";
import type { Comment } from "./comment.ts";
import type { PathStep } from "./state.ts";

/** A stretch of a program while it is gathered; lengths in atoms. */
export interface StretchDraft {
  /** Place of its first block in the program, byte offset; and of its last. */
  readonly source: number;
  end: number;
  /** What it is called; "" where nothing says it. */
  name: string;
  readonly tool: number;
  readonly workOffset: number;
  readonly hood: "up" | "down" | undefined;
  feedModes: FeedMode[];
  readonly paths: (PathStep | undefined)[];
  spindle: { readonly rpm: number; readonly direction: SpindleDirection } | undefined;
  coolant: readonly CoolantMedium[];
  /** Z at which X and Y were reached, and to which the tool then went where it came from the operation before. */
  level: number;
  drop: number | undefined;
  /** Z behind its last motion. */
  endZ: number;
  /** Whether it moves X or Y at all, reached its work, and cut there. */
  moves: boolean;
  entered: boolean;
  cut: boolean;
  /** Lowest Z of a pause, and where; Infinity: there is none. */
  lowestPause: number;
  pauseAt: number;
  /** Once-only findings that were given. */
  readonly told: Set<string>;
  /** Index of its operation among those of the job; -1 where it becomes none. */
  operation: number;
  /** Z of safe travel, once it is settled. */
  clearance: number;
  /** Whether the tool came up in machine coordinates before, and is the same. */
  readonly lifted: boolean;
  /** Where it moved while the spindle stood between two cuts; -1: nowhere. */
  stoodAt: number;
  feedMode: FeedMode;
}

/** A tool while it is gathered. */
export interface ToolDraft {
  readonly number: number;
  readonly source: number;
  lengthOffset: number | undefined;
  radiusOffset: number | undefined;
  readonly holes: Set<HoleKind>;
  mills: boolean;
  measured: boolean;
  /** Where it first cut without a length offset; -1: nowhere. */
  lengthless: number;
  /** Where it was first compensated for without a radius offset; -1: nowhere. */
  radiusless: number;
  turned: boolean;
  /** What the program asks for when it wants this tool. */
  asked: Comment | undefined;
}

export function createTool(number: number, source: number): ToolDraft {
  return {
    number,
    source,
    lengthOffset: undefined,
    radiusOffset: undefined,
    holes: new Set(),
    mills: false,
    measured: false,
    lengthless: -1,
    radiusless: -1,
    turned: false,
    asked: undefined,
  };
}
