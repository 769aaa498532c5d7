import type { ByteSource } from "#base";
import type { VariableFormat } from "#dialect";
import type { FlowWords } from "./flow-line.ts";
import { callCode, leaveCode } from "./flow-line.ts";
import type { Structure, Structures } from "./structures.ts";

/** A subprogram that is under way. */
export interface Call {
  readonly subprogram: Structure;
  /** Byte offset of the line that is next when it ends. */
  readonly returnTo: number;
  /** How often it is still to be run, this time counted (M98 L). */
  left: number;
  /** Rounds of its REPEAT loops that are left. */
  readonly rounds: Map<Structure, number>;
}

/** How blocks follow one another in a program that branches. */
export interface Flow {
  readonly words: FlowWords;
  /** Most calls that may be under way at once. */
  readonly nesting: number;
  /** The text once more, to go back in; undefined where there is none. */
  readonly source: ByteSource | undefined;
  /** Whether reading of blocks has stopped: at a line that decides which is next, or behind the end of the program. */
  stopped: boolean;
  /** Byte offset of that line; -1 at the end of the program. */
  at: number;
  /** The structures, once the first such line has been met. */
  structures: Structures | undefined;
  readonly calls: Call[];
  /** Rounds of REPEAT loops outside of subprograms. */
  readonly rounds: Map<Structure, number>;
  /** Labels of subprograms that have been called. */
  readonly called: Set<string>;
  /** Whether BREAK has left a WHILE that ENDWHILE ends: an interpreter that we tried then leaves the next DO after one round. */
  leftWhile: boolean;
  /** Lines that decided so far, and bytes of text that were read. */
  decided: number;
  read: number;
  /** Rows that had been given when the first such line was met. */
  firstRow: number;
  /** Whether the end of the program has been read, and what stood behind it was passed over. */
  ended: boolean;
}

/**
 * Makes the flow of a program; undefined under a dialect whose programs do not branch.
 *
 * @param hasMeaning whether the dialect declares an M code to be something else than a call
 */
export function createFlow(
  variables: VariableFormat | undefined,
  source: ByteSource | undefined,
  hasMeaning: (code: number) => boolean,
): Flow | undefined {
  if (variables === undefined || variables.control === "none") return undefined;
  return {
    words: {
      oWords: variables.control === "o-words",
      codes: [callCode, leaveCode].filter((code) => !hasMeaning(code)),
    },
    nesting: variables.nesting,
    source,
    stopped: false,
    at: -1,
    structures: undefined,
    calls: [],
    rounds: new Map(),
    called: new Set(),
    leftWhile: false,
    decided: 0,
    read: 0,
    firstRow: 0,
    ended: false,
  };
}
