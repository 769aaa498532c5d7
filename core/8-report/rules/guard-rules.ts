import type { RuleTexts } from "./rule-texts.ts";

/** The guard: what must hold of a sequence, and again of what was read back (7-prove). */
export const guardRules = {
  "program/start":
    "Before any motion the stop is confirmed, coolant is off and every mode is stated; the first motion is Z alone to swap height, and only then is the length offset cancelled.",
  "program/resume": "Behind a stop that keeps no modes, every mode is stated before anything moves.",
  "program/end":
    "At the end: Z up, coolant off, hood up, stop confirmed, tool returned or kept as stated, length offset cancelled, parked, end code, and nothing after it.",
  "spindle/at-speed":
    "No feed motion with a turning tool until the commanded speed is confirmed since the start or last change.",
  "spindle/stopped-for-swap":
    "The stop is confirmed, and the spindle oriented where needed, before motion into the rack zone, release, tool change, measurement or operator stop.",
  "spindle/restarted":
    "After a tool change that starts the spindle again, it is stopped, and that confirmed, before anything moves.",
  "motion/held":
    "Where a signal says that the work is held, it is waited for before a tool cuts, at the start and behind each stop.",
  "spindle/clamped":
    "No start without a tool in the spindle, confirmed clamped where that can be sensed; never with a probe, knife or pen.",
  "spindle/reversal": "A change of direction goes through a confirmed stop, inside a tapping cycle excepted.",
  "spindle/ends-stopped": "The program ends with the spindle stopped, and that confirmed.",
  "swap/retracted": "Z goes up to the swap height alone before anything else of a swap.",
  "swap/coolant-off":
    "Coolant and air through the tool are off before a swap; air that cleans the taper is excepted.",
  "swap/air": "Air pressure is confirmed before each release and each clamp, where it can be sensed.",
  "swap/pocket":
    "A tool returns to its own free pocket before the next is picked, and none is picked with a full spindle.",
  "swap/drawbar":
    "While released: only the way out of and into a pocket, and travel at clear height with an empty spindle; no feed, no work motion, no start.",
  "swap/timed":
    "A stop, release, clamp or air that is confirmed by time alone is a warning: nothing senses it.",
  "offset/active":
    "Work offset and the new tool's length offset act before any approach; the old one is cancelled at a swap.",
  "offset/change": "A work offset changes only at swap height, with compensation and cycles off.",
  "offset/measured": "A length is measured with the stop confirmed, from swap height, before the approach.",
  "offset/shared": "Two tools do not share a length offset.",
  "motion/approach":
    "After a start, swap, pause, measurement or change of work offset: Z alone to swap height, spindle confirmed, XY, length offset with Z alone down to clearance, then on.",
  "motion/feed": "A feed motion has a feed.",
  "motion/known": "No motion relies on an axis whose place is unknown.",
  "motion/comp": "Compensation starts and ends as settled, and is off where it must be.",
  "motion/air-cut": "In an air cut all motion in the work stays above the stock.",
  "motion/rapid-in-stock":
    "No rapid through the stock or down into it; straight up, and back into a hole, are excepted.",
  "limit/travel": "Motion stays inside the travel of the machine.",
  "limit/feed": "A feed stays inside the limits of the machine and the tool.",
  "limit/speed": "A speed stays inside the limits of the spindle and the tool.",
  "limit/tool":
    "A tool turns in the direction that it cuts in, fits the rack, and cuts no longer than its life; a spare that takes over is told.",
  "limit/tapping": "The machine can tap, and the feed of a tap is its speed times its lead.",
  "limit/pockets":
    "Each tool has a pocket in the rack when it is needed, fits it, and touches no other tool there.",
  "limit/keep-out": "Work motion stays outside of the rack zone and of the keep-out boxes.",
  "arc/radius":
    "Start and end of an arc are equally far from its centre, within the dialect's tolerance, after rounding.",
  "arc/plane": "An arc lies in the plane that is selected.",
} as const satisfies RuleTexts;
