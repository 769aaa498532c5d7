import type { ClRun } from "./state.ts";
import type { Statement } from "./statement.ts";
import { circle } from "./words/circle.ts";
import { cycle } from "./words/cycle.ts";
import { fedrat, rapid } from "./words/feed.ts";
import { clearp, from, godlta, gohome, goto, retrct } from "./words/motion.ts";
import { end, literal, mode, multax, opskip, pprint, stop, unitsWord } from "./words/program.ts";
import { coolnt, delay, shift, spindl } from "./words/spindle.ts";
import { cutcom, cutter, loadtl, unload } from "./words/tool.ts";

/** What a statement does to the state, and which actions it calls. */
export type Word = (run: ClRun, statement: Statement) => void;

const text: Word = (run, { dollar, offset }) => literal(run, dollar, offset);

/** Words with a meaning here (ISO 4343, ISO 3592; forms in APT). */
export const meanings: Readonly<Record<string, Word>> = {
  PARTNO: text,
  REMARK: text,
  TITLES: text,
  PPRINT: pprint,
  UNITS: unitsWord,
  CUTTER: cutter,
  LOADTL: loadtl,
  TOOLNO: loadtl,
  TURRET: loadtl,
  UNLOAD: unload,
  SPINDL: spindl,
  COOLNT: coolnt,
  FEDRAT: fedrat,
  RAPID: rapid,
  FROM: from,
  GOTO: goto,
  GODLTA: godlta,
  GOHOME: gohome,
  CIRCLE: circle,
  CYCLE: cycle,
  DELAY: delay,
  DWELL: delay,
  STOP: stop,
  OPSTOP: stop,
  OPSKIP: opskip,
  CUTCOM: cutcom,
  MULTAX: multax,
  MODE: mode,
  ORIGIN: shift,
  TRANS: shift,
  CLEARP: clearp,
  RETRCT: retrct,
  END: end,
  FINI: end,
};

/**
 * Words that the stages behind have no use for: tolerances of the processor, block numbers, leader, names of the machine
 * (the dialect is chosen on the command line), a tool chosen beforehand (the dialect decides when).
 */
export const withoutEffect: readonly string[] = [
  "MACHIN",
  "INTOL",
  "OUTTOL",
  "TOLER",
  "LINTOL",
  "SEQNO",
  "SELCTL",
  "LEADER",
  "TMARK",
  "REWIND",
];

/** Words that put code of one controller into the program. */
export const rawCodes: readonly string[] = ["INSERT", "AUXFUN", "PREFUN"];

/** Words that lead the tool or the table in ways that a job has none for: they are never left out. */
export const refusedWords: Readonly<Record<string, string>> = {
  ROTABL: "Give the source for one position of the table.",
  ROTHED: "Give the source for one position of the head.",
  ROTATE: "Give the source for one position of the table.",
  HEAD: "Give the source for one head.",
  CLAMP: "Say clamping in the dialect file, or with STOP.",
  COPY: "Expand it: cutter location source states each point.",
  INDEX: "Expand it: cutter location source states each point.",
  TRACUT: "Expand it: cutter location source states each point.",
  ARCSLP: "Give the helix as CIRCLE with an end point at another height.",
  INDIRV: "Give the arc as CIRCLE/x, y, z, i, j, k, r and GOTO.",
  TLON: "Give points, not drive surfaces.",
  GOFWD: "Give points, not drive surfaces.",
};

/** Every word there is, for "did you mean". */
export const vocabulary: readonly string[] = [
  ...Object.keys(meanings),
  ...withoutEffect,
  ...Object.keys(refusedWords),
];
