import { error } from "./findings-spindle.ts";
import type { Draft } from "./watch.ts";

const workOffsetFaults = {
  height: "away from swap height",
  compensation: "with compensation on",
  cycle: "with a fixed cycle on",
} as const;

const lengthFaults = {
  cancelled: "no length offset acts",
  unknown: "nothing says which length offset acts",
  other: "the length offset of another tool acts",
} as const;

const measureFaults = {
  height: "The length is measured away from swap height.",
  late: "The length is measured after the approach.",
  missing: "The tool goes down to the work before its length was measured.",
} as const;

const approachFaults = {
  retract: "the first motion is not Z alone to swap height",
  together: "Z moves together with X and Y on the way back to the work",
  "z-first": "Z leaves swap height before X and Y are in place",
  deep: "Z goes below clearance in its first move down",
  curve: "the way back to the work is not straight",
  down: "Z goes down in machine coordinates where no pocket is",
  blind: "Z goes below swap height in machine coordinates, where it is not known to rise to there",
  low: "X and Y move in machine coordinates before Z is up",
  speed: "X and Y move to the work before the spindle is confirmed",
  pause: "the program stops with Z away from swap height",
} as const;

const compensationFaults = {
  "entry-kind": "Compensation begins with a motion that is no line.",
  "entry-short": "Compensation begins with a line no longer than the tool's radius.",
  "exit-arc": "Compensation ends with an arc.",
  again: "Compensation is turned on while it is on.",
  plane: "Compensation is turned on outside the XY plane.",
  offset: "Compensation uses the radius offset of another tool.",
} as const;

const feedFaults = {
  none: "A feed motion has no feed.",
  cycle: "A fixed cycle runs in inverse-time feed.",
  machine: "A feed in machine coordinates is not by the minute, and the spindle stands still.",
  mixed: "A linear and a rotary axis feed together outside inverse-time feed.",
} as const;

const stockFaults = {
  across: "A rapid crosses the stock below its top",
  down: "A rapid goes down into the stock",
  retract: "A fixed cycle goes down into the stock at rapid",
} as const;

/** Findings about offsets. */
export const offsetFindings = {
  "offset/active": (detail: { fault: keyof typeof lengthFaults; wanted: string }) =>
    error(
      "offset/active",
      `Z moves in work coordinates, but ${lengthFaults[detail.fault]}.`,
      `State ${detail.wanted} with this motion.`,
      "machine.length-offset.form",
    ),
  "offset/no-work-offset": () =>
    error(
      "offset/active",
      "The tool goes to the work before any work offset was stated.",
      "State the work offset first.",
      "work-offset.1",
    ),
  "offset/suspended": () =>
    error(
      "offset/active",
      "The tool goes to a place of the work while a move in machine coordinates still has the work offset suspended.",
      "State the work offset anew behind the move in machine coordinates.",
      "motion.machine-move-lasts",
    ),
  "offset/other-number": (detail: { tool: number; offset: number }) =>
    ({
      rule: "offset/active",
      severity: "warning",
      message: `Tool ${detail.tool} goes down with length offset ${detail.offset}; without the job nobody can say whether that is its own.`,
      fix: "Check the number against the offset table, or give the job that the program was made from (`--against JOB`).",
      key: "length-offset.on",
    }) satisfies Draft,
  "offset/not-cancelled": () =>
    error(
      "offset/active",
      "The length offset of the old tool still acts at the swap.",
      "Cancel the length offset at swap height before the swap.",
      "length-offset.off",
    ),
  "offset/cancel-moves": () =>
    error(
      "offset/active",
      "The length offset is cancelled away from swap height, and cancelling moves Z on this machine.",
      "Take Z to swap height alone first.",
      "machine.length-offset.cancel-moves",
    ),
  "offset/set-elsewhere": (detail: { number: number }) =>
    error(
      "offset/active",
      `Work offset ${detail.number} begins, but the operator has set Z of this tool in another one: in ${detail.number} its Z is that of no tool.`,
      "Use one work offset in the whole job, or a controller that keeps tool lengths (`machine.lengths: table`).",
      "machine.lengths",
    ),
  "offset/change": (detail: { fault: keyof typeof workOffsetFaults; number: number }) =>
    error(
      "offset/change",
      `Work offset ${detail.number} begins ${workOffsetFaults[detail.fault]}.`,
      detail.fault === "height"
        ? "Take Z to swap height alone first."
        : `Turn the ${detail.fault} off first.`,
    ),
  "offset/measured": (detail: { fault: keyof typeof measureFaults }) =>
    error(
      "offset/measured",
      measureFaults[detail.fault],
      "Measure at swap height, right after the swap.",
      "machine.lengths",
    ),
};

/** Findings about motion. */
export const motionFindings = {
  "motion/held": (detail: { how: string }) =>
    error(
      "motion/held",
      "The tool cuts before the work is known to be held.",
      `Before the start of the spindle put in ${detail.how}.`,
      "confirm.hold-down",
    ),
  "motion/approach": (detail: { fault: keyof typeof approachFaults; after: string; height: string }) =>
    error(
      "motion/approach",
      `After ${detail.after}, ${approachFaults[detail.fault]}.`,
      `Move Z alone to ${detail.height}, confirm the spindle, then X and Y, then Z alone down to clearance.`,
      "machine.retract.by",
    ),
  "motion/feed": (detail: { fault: keyof typeof feedFaults }) =>
    error(
      "motion/feed",
      feedFaults[detail.fault],
      detail.fault === "none"
        ? "State a feed above 0 with this motion or before it."
        : "State the feed mode that fits.",
    ),
  "motion/known": (detail: { axes: string }) =>
    error(
      "motion/known",
      `The motion relies on ${detail.axes}, whose position is not known here.`,
      `State ${detail.axes} in this motion, or before it.`,
    ),
  "motion/absolute-return": () =>
    error(
      "motion/known",
      "The reference return would go through an intermediate point in absolute coordinates.",
      "State incremental distances before the return, and absolute ones after it.",
      "machine.retract.intermediate",
    ),
  "motion/no-cycle": () =>
    error(
      "motion/known",
      "A hole is drilled, but no fixed cycle is defined.",
      "State the cycle with its levels first.",
    ),
  "motion/comp": (detail: { fault: keyof typeof compensationFaults }) =>
    error(
      "motion/comp",
      compensationFaults[detail.fault],
      "Begin and end compensation with a straight line in the XY plane that is longer than the tool's radius.",
    ),
  "motion/comp-left-on": (detail: { what: string }) =>
    error("motion/comp", `Compensation is still on at ${detail.what}.`, "Turn compensation off before it."),
  "motion/rapid-in-stock": (detail: { fault: keyof typeof stockFaults; z: string; top: string }) =>
    error(
      "motion/rapid-in-stock",
      `${stockFaults[detail.fault]}: Z ${detail.z}, stock top ${detail.top}.`,
      "Rise above the stock first, and go down into it at feed.",
    ),
  "motion/air-cut": (detail: { z: string; top: string }) =>
    error(
      "motion/air-cut",
      `In an air cut the tool goes to Z ${detail.z}, which is not above the stock: its top is Z ${detail.top}.`,
      "Raise the air cut by more (--air-cut).",
    ),
  "motion/stock-unknown": () =>
    ({
      rule: "motion/rapid-in-stock",
      severity: "note",
      message: "The job states no stock, so that rapids through it are not checked.",
      fix: "State the stock in the job.",
    }) satisfies Draft,
};
