/** What a rule of the guard asks for, and who says so. */
export interface Rule {
  /** What must hold, in one sentence. */
  readonly holds: string;
  /** Standard and section, "common practice", or "from memory". */
  readonly source: string;
}

const practice = "common practice, no source";

/** All rules of the guard. The catalogue of findings has one function for each. */
export const guardRules = {
  "program/start": {
    holds:
      "Before any motion the spindle is stopped for certain, the coolant is off and every mode is stated; the first motion is Z alone to swap height, and only then is the length offset cancelled.",
    source:
      "NISTIR 6556 3.6.1 lists the modes that a program end leaves as they are; the order: common practice, no source",
  },
  "program/resume": {
    holds: "Behind a stop that keeps no modes every mode is stated before anything moves.",
    source: practice,
  },
  "spindle/at-speed": {
    holds:
      "No feed motion with a turning tool, and no dwell in revolutions, until the commanded speed is confirmed since the start or the last change; a start after a swap or stop states its speed.",
    source: practice,
  },
  "spindle/stopped-for-swap": {
    holds:
      "The stop is confirmed, and the spindle oriented where it must be, before motion into the rack zone, release, tool change, measurement and operator stop.",
    source: "order of a tool change: from memory",
  },
  "spindle/restarted": {
    holds:
      "After a tool change that starts the spindle again it is stopped for certain before anything moves.",
    source: practice,
  },
  "motion/held": {
    holds:
      "Where a signal says that the work is held, it is waited for before a tool cuts, at the start and behind each stop.",
    source: practice,
  },
  "spindle/clamped": {
    holds:
      "The spindle starts only with a tool, clamped for certain where that can be sensed, and never with a probe, knife or pen; a tool selected is put in before another is selected.",
    source: "interlocks of a drawbar spindle: from memory",
  },
  "spindle/reversal": {
    holds: "A change of direction goes through a confirmed stop, inside a tapping cycle excepted.",
    source: practice,
  },
  "spindle/ends-stopped": {
    holds: "The program ends with the spindle stopped for certain.",
    source: practice,
  },
  "swap/retracted": {
    holds: "Z goes up to the swap height alone before anything else of a swap.",
    source: "order of a tool change: from memory",
  },
  "swap/coolant-off": {
    holds: "Coolant and air through the tool are off before a swap.",
    source: "NISTIR 6556 3.6.3 leaves the coolant as it is at a tool change; order: from memory",
  },
  "swap/air": {
    holds:
      "Air pressure is confirmed right before each release and each clamp, where it can be sensed: work motion or a spindle start between needs it anew.",
    source: "interlocks of a drawbar spindle: from memory",
  },
  "swap/pocket": {
    holds:
      "A tool returns to its own free pocket before the next is picked, and none is picked with a full spindle; no spindle goes below the seat of a holder, or at rapid to it; every planned reload stop is made with an empty spindle.",
    source: practice,
  },
  "swap/drawbar": {
    holds:
      "While the drawbar is released the spindle only leaves a pocket, travels empty at the rack's clear height, and descends over a filled pocket; a pick ends clamped and confirmed.",
    source: "interlocks of a drawbar spindle: from memory",
  },
  "swap/timed": {
    holds: "A stop, release, clamp or air pressure is confirmed by a signal rather than by time.",
    source: "interlocks of a drawbar spindle: from memory",
  },
  "offset/active": {
    holds:
      "Work offset and the tool's length offset act before any approach, and the old length offset is cancelled at a swap.",
    source: "NISTIR 6556 3.5.11, 3.6.3: a tool change does not change the length offset in force",
  },
  "offset/change": {
    holds: "A work offset changes only at swap height, with compensation and cycles off.",
    source: "NISTIR 6556 3.5.13 for compensation; the height: common practice, no source",
  },
  "offset/measured": {
    holds: "A length is measured with the stop confirmed, from swap height, before the approach.",
    source: practice,
  },
  "motion/approach": {
    holds:
      "After a start, swap, pause, measurement, change of work offset or a spindle start in the work: Z alone to swap height, spindle confirmed, X and Y there, Z alone down to clearance, then on.",
    source: practice,
  },
  "motion/feed": {
    holds: "A feed motion has a feed, in a feed mode that fits it.",
    source: "NISTIR 6556 3.5.2, 3.5.3 and 3.5.20",
  },
  "motion/known": { holds: "No motion relies on an axis whose position is unknown.", source: practice },
  "motion/comp": {
    holds:
      "Compensation starts with a line in the plane longer than the tool's radius, and is off for everything but contours.",
    source: "NISTIR 6556 appendix B, and its interpreter",
  },
  "motion/rapid-in-stock": {
    holds:
      "No rapid crosses the stock below its top, and none goes down into it, nor past it nearer than the tool's radius.",
    source: practice,
  },
  "limit/travel": { holds: "The spindle nose stays inside the travel of each axis.", source: practice },
  "limit/feed": { holds: "A feed is one that the machine can run.", source: practice },
  "limit/speed": { holds: "A speed is one that the spindle can run.", source: practice },
  "limit/tool": {
    holds: "A tool is one of the job's, and runs at its own speeds, feeds and direction.",
    source: practice,
  },
  "limit/tapping": {
    holds: "The machine can tap, and the feed is speed times lead within 0.1 %.",
    source:
      "NISTIR 6556 3.5.16.4: speed and feed of a tap are matched; the share: common practice, no source",
  },
  "limit/pockets": {
    holds: "A tool fits the rack, stands in a pocket that exists, and touches no other tool there.",
    source: practice,
  },
  "limit/keep-out": {
    holds:
      "Work motion stays out of the rack zone, the keep-out boxes and the fixtures, with the radius of the tool where it is known.",
    source: practice,
  },
  "arc/radius": {
    holds:
      "Start and end radius of an arc agree within the dialect's tolerance; a chord is no longer than the diameter.",
    source: "NISTIR 6556 3.5.3",
  },
  "arc/plane": {
    holds: "The plane of an arc or cycle is the one selected.",
    source: "NISTIR 6556 3.5.3, 3.5.16",
  },
  "program/end": {
    holds:
      "At the end Z is up, the coolant off, the hood up, the tool returned or kept as stated, the length offset cancelled, the machine parked, and nothing follows.",
    source: "NISTIR 6556 3.6.1 lists what a program end resets; the rest: common practice, no source",
  },
} as const satisfies Record<string, Rule>;

/** The id of a rule of the guard. */
export type GuardRule = keyof typeof guardRules;

/** The rules of the comparison. */
export const proofRules = {
  "proof/differs": { holds: "What was read is what was meant, in every field.", source: "own definition" },
  "proof/missing-step": { holds: "Every step that was meant was read.", source: "own definition" },
  "proof/extra-step": { holds: "No step was read that was not meant.", source: "own definition" },
} as const satisfies Record<string, Rule>;

/** The id of a rule of the comparison. */
export type ProofRule = keyof typeof proofRules;
