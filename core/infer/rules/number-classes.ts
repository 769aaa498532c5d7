import type { NumberKey } from "#dialect";
import type { Sample } from "../sample.ts";
import type { Line, Word } from "../tokens.ts";
import type { Block } from "../walk.ts";

/** A number of some address, and where it stands. */
export interface Spoken {
  readonly letter: string;
  readonly digits: string;
  readonly value: number;
  readonly line: Line;
}

/** Number groups of a dialect file that a program shows; the timeout of a wait stands in an idiom. */
export type NumberClass = Exclude<NumberKey, "timeout">;

/** The numbers of all programs by the group that their address and block put them in. */
export function classesOf({ blocks }: Sample): Map<NumberClass, Spoken[]> {
  const classes = new Map<NumberClass, Spoken[]>();
  for (const block of blocks)
    for (const word of block.line.words) {
      const name = classOf(block, word);
      if (name === undefined) continue;
      const { letter, digits, value } = word;
      const spoken = { letter, digits, value, line: block.line };
      const known = classes.get(name);
      if (known) known.push(spoken);
      else classes.set(name, [spoken]);
    }
  return classes;
}

function classOf({ g, motion, feedMode, m }: Block, { letter }: Word): NumberClass | undefined {
  const isDwell = g.includes(40);
  if (isDwell && "PXUFS".includes(letter)) return letter === "S" ? undefined : "dwell";
  if ("XYZ".includes(letter)) return "length";
  if ("ABC".includes(letter)) return "angle";
  if (letter === "F") return feedClass(feedMode);
  if (letter === "S") return "speed";
  if (motion === undefined || m.length > 1) return undefined;
  if (motion.isCycle) return cycleClass(letter, motion.code);
  const isArc = motion.code === 20 || motion.code === 30;
  return isArc && "IJKR".includes(letter) ? "arc-centre" : undefined;
}

function feedClass(mode: number | undefined): NumberClass {
  if (mode === 950) return "feed-per-revolution";
  return mode === 930 ? "inverse-time" : "feed-per-minute";
}

function cycleClass(letter: string, code: number): NumberClass | undefined {
  if (letter === "R") return "length";
  const isPecking = code === 830 || code === 730;
  if (letter === "Q" || (isPecking && "KID".includes(letter))) return "peck";
  return letter === "P" ? "cycle-dwell" : undefined;
}
