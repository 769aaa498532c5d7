import type { Meaning } from "./meaning.ts";
import { meaning } from "./meaning.ts";

/** Where Debian's interpreter does other than the standard says, and our statement follows it. At most five. */
export interface KnownDifference {
  /** The name by which `steps-to-calls.ts`, `cycle-meanings.ts` and `machine-state.ts` speak of it. */
  readonly name: string;
  /** Where NISTIR 6556 says otherwise, or says nothing. */
  readonly clause: string;
  /** What the standard says, and what the interpreter does. */
  readonly difference: string;
  /** Smallest program that shows it, run on the machine of `machine-state.ts` without work offsets. */
  readonly program: string;
  /** What the interpreter does, from the first block that shows it up to the end of the program. */
  readonly does: readonly Meaning[];
}

const traverse = (x: number, y: number, z: number): Meaning =>
  meaning("STRAIGHT_TRAVERSE", [x, y, z, 0, 0, 0]);
const feed = (z: number, rate: number): Meaning => meaning("STRAIGHT_FEED", [0, 0, z, 0, 0, 0, rate]);
const path = (mode: string): Meaning => meaning("SET_MOTION_CONTROL_MODE", [], mode);

/** The list. A test runs each program: an entry that the interpreter no longer does fails. */
export const knownDifferences: readonly KnownDifference[] = [
  {
    name: "exact path in cycles",
    clause: "3.5.16",
    difference:
      "A cycle is made with the path mode that is in force; the interpreter makes it in exact path mode.",
    program: "G21 G64 F9\nG0 X0 Y0 Z2\nG99 G81 X0 Z-1 R2\nM2\n",
    does: [path("CANON_EXACT_PATH"), feed(-1, 9), traverse(0, 0, 2), path("CANON_CONTINUOUS")],
  },
  {
    name: "initial level last",
    clause: "3.5.16.4, 3.5.16.6",
    difference:
      "With G98, G83 returns to the initial level between pecks and G85 feeds out to it; the interpreter goes to R between pecks, " +
      "and feeds out to R and goes on at traverse. Pecks are counted in doubles: one of no length may follow the last.",
    program: "G21 G61 F9\nG0 X0 Y0 Z5\nG98 G83 X0 Z-1 R2 Q2\nG85 X0 Z-1 R2\nM2\n",
    does: [
      traverse(0, 0, 2),
      feed(0, 9),
      traverse(0, 0, 2),
      traverse(0, 0, 0.254),
      feed(-1, 9),
      traverse(0, 0, 5),
      traverse(0, 0, 2),
      feed(-1, 9),
      feed(2, 9),
      traverse(0, 0, 5),
    ],
  },
  {
    name: "tap",
    clause: "3.5.16.5",
    difference:
      "G84 synchronises speed and feed and does not dwell; the interpreter disables both overrides, and dwells at the bottom for as " +
      "long as the last cycle that had a dwell, or 0.",
    program: "G21 G61 F9 S9 M3\nG0 X0 Y0 Z2\nG99 G82 X0 Z-1 R2 P0.5\nG80\nG84 X0 Z-1 R2\nM2\n",
    does: [
      feed(-1, 9),
      meaning("DWELL", [0.5]),
      traverse(0, 0, 2),
      meaning("CYCLE_OFF"),
      meaning("DISABLE_FEED_OVERRIDE"),
      meaning("DISABLE_SPEED_OVERRIDE"),
      feed(-1, 9),
      meaning("STOP_SPINDLE_TURNING"),
      meaning("START_SPINDLE_COUNTERCLOCKWISE"),
      meaning("DWELL", [0.5]),
      feed(2, 9),
      meaning("STOP_SPINDLE_TURNING"),
      meaning("START_SPINDLE_CLOCKWISE"),
      meaning("ENABLE_FEED_OVERRIDE"),
      meaning("ENABLE_SPEED_OVERRIDE"),
    ],
  },
  {
    name: "place after a change",
    clause: "3.5.11, 3.6.3",
    difference:
      "A length offset changes the coordinates of the place, and a tool change moves nothing. After a change the interpreter takes " +
      "the coordinates of the last motion for those of the place, although the length offset has been cancelled since.",
    program: "G21\nG43 H1 G0 Z5\nG49\nT2 M6\nG0 X1\nM2\n",
    does: [
      meaning("USE_TOOL_LENGTH_OFFSET", [0, 0, 31.75, 0, 0, 0, 0, 0, 0]),
      traverse(0, 0, 5),
      meaning("USE_TOOL_LENGTH_OFFSET", [0, 0, 0, 0, 0, 0, 0, 0, 0]),
      meaning("SELECT_TOOL", [2]),
      meaning("STOP_SPINDLE_TURNING"),
      meaning("CHANGE_TOOL", [2]),
      traverse(1, 0, 5),
    ],
  },
  {
    name: "slowest inverse time",
    clause: "3.5.20",
    difference:
      "G93 makes a motion last 1/F minutes; the interpreter makes none slower than 0.1 units a minute.",
    program: "G21 G61\nG93\nG0 X0 Y0 Z0\nG1 Z0.01 F5\nM2\n",
    does: [meaning("FEED_MODE", [], "inverse-time"), traverse(0, 0, 0), feed(0.01, 0.1)],
  },
];
