import { error } from "./findings-spindle.ts";
import type { Draft } from "./watch.ts";

const tappingFaults = {
  none: "This machine cannot tap.",
  direction: "The spindle turns against the tapping cycle.",
  lead: "The feed of the tap is not its speed times its lead",
} as const;

const pocketLimits = {
  missing: "stands in a pocket that the rack does not have",
  wide: "is wider than the rack takes",
  long: "is longer than the rack takes",
  crowded: "touches its neighbour in the rack",
} as const;

const pocketKeys = {
  missing: "machine.rack.pockets",
  wide: "machine.rack.widest",
  long: "machine.rack.longest",
  crowded: "machine.rack.pockets",
} as const satisfies Record<keyof typeof pocketLimits, string>;

const endFaults = {
  z: "Z is not at swap height",
  coolant: "coolant is on",
  hood: "the hood is not up",
  tool: "the tool is not back in its pocket",
  length: "a length offset is in force",
  park: "the machine is not parked",
  outputs: "an output is on",
  modes: "a mode is in force that the end does not put back",
  suspended: "machine coordinates hold until a work offset is stated, which the end does not do",
} as const;

/** What can be left undone at the end. */
export type EndFault = keyof typeof endFaults;

/** Findings about limits. */
export const limitFindings = {
  "limit/travel": (detail: { axis: string; place: string; end: string; beyond: string; raised: boolean }) =>
    error(
      "limit/travel",
      `${detail.axis} goes to ${detail.place} in machine coordinates, ${detail.beyond} past the end of travel at ${detail.end}.`,
      detail.raised
        ? `Raise the air cut by ${detail.beyond} less, if it then still stays above the stock.`
        : "Set the work elsewhere, use a tool of another length, or change the motion.",
      `machine.travel.${detail.axis.toLowerCase()}`,
    ),
  "limit/span": (detail: { axis: string; span: string; travel: string }) =>
    error(
      "limit/travel",
      `The motions in ${detail.axis} span ${detail.span}, more than the travel of ${detail.travel}.`,
      "Divide the work, or use a machine with more travel.",
      `machine.travel.${detail.axis.toLowerCase()}`,
    ),
  "limit/span-only": (detail: { what: string; boxes: boolean }) =>
    ({
      rule: "limit/travel",
      severity: "note",
      message: `${detail.what}: travel is checked by its span only${detail.boxes ? ", and rack zone and keep-out boxes are not checked" : ""}.`,
      fix: "State work offsets and tool lengths in the set-up file.",
      key: "machine.work-zero",
    }) satisfies Draft,
  "limit/feed": (detail: { feed: string; limit: string; fast: boolean }) =>
    error(
      "limit/feed",
      `The feed of ${detail.feed} is ${detail.fast ? "above the most" : "below the least"} that the machine runs, ${detail.limit}.`,
      `Use ${detail.limit} or ${detail.fast ? "less" : "more"}.`,
      `machine.feed.${detail.fast ? "most" : "least"}`,
    ),
  "limit/axis-feed": (detail: { axis: string; feed: string; limit: string; beyond: string; fits: string }) =>
    error(
      "limit/feed",
      `${detail.axis.toUpperCase()} goes at ${detail.feed} in this motion, ${detail.beyond} above its most, ${detail.limit}.`,
      `Use a feed of ${detail.fits} or less here.`,
      `machine.axis-feed.${detail.axis}`,
    ),
  "limit/speed": (detail: { speed: string; limit: string; fast: boolean }) =>
    error(
      "limit/speed",
      `The speed of ${detail.speed} is ${detail.fast ? "above the most" : "below the least"} of the spindle, ${detail.limit}.`,
      `Use ${detail.limit} or ${detail.fast ? "less" : "more"}.`,
      `machine.spindle.${detail.fast ? "max-rpm" : "min-rpm"}`,
    ),
  "limit/tool": (detail: { tool: number; what: string; limit: string }) =>
    error(
      "limit/tool",
      `Tool ${detail.tool}: ${detail.what}, but ${detail.limit}.`,
      "Keep to what the job states for the tool.",
    ),
  "limit/tool-unknown": (detail: { tool: number }) =>
    error(
      "limit/tool",
      detail.tool < 0
        ? "A tool change is made before any tool is selected."
        : `Tool ${detail.tool} is not one of the job's tools.`,
      "Select one of the job's tools.",
    ),
  "limit/no-job": () =>
    ({
      rule: "limit/tool",
      severity: "note",
      message:
        "Without its job, the tools, the stock, the clearance and the rack's contents are unknown, and what depends on them is not checked.",
      fix: "Give the job that the program was made from: `--against JOB`.",
    }) satisfies Draft,
  "limit/tapping": (detail: { fault: keyof typeof tappingFaults; numbers: string }) =>
    error(
      "limit/tapping",
      detail.fault === "lead" ? `${tappingFaults.lead}: ${detail.numbers}.` : tappingFaults[detail.fault],
      detail.fault === "none"
        ? "Thread with another tool, or on another machine."
        : "Match direction, speed, feed and lead.",
      "machine.tapping.kind",
    ),
  "limit/pockets": (detail: { tool: number; fault: keyof typeof pocketLimits; limit: string }) =>
    error(
      "limit/pockets",
      `Tool ${detail.tool} ${pocketLimits[detail.fault]} (${detail.limit}).`,
      "Load it by hand, or use another tool.",
      pocketKeys[detail.fault],
    ),
  "limit/keep-out": (detail: { box: string }) =>
    error(
      "limit/keep-out",
      `The motion enters ${detail.box}.`,
      "Go around it, or above it.",
      "machine.keep-out",
    ),
  "limit/cover": () =>
    error(
      "limit/keep-out",
      "The motion enters the rack zone while its cover is closed.",
      "Open the cover first.",
      "machine.rack.cover",
    ),
};

/** Findings about arcs. */
export const arcFindings = {
  "arc/radius": (detail: { start: string; end: string; allowed: string }) =>
    error(
      "arc/radius",
      `The radius is ${detail.start} at the start of the arc and ${detail.end} at its end, and may differ by ${detail.allowed}.`,
      "Correct the centre or the end.",
      "arc.tolerance",
    ),
  "arc/chord": (detail: { chord: string; radius: string }) =>
    error(
      "arc/radius",
      `An arc of radius ${detail.radius} cannot span ${detail.chord} from start to end.`,
      "Correct the radius or the end; a full circle cannot be said by its radius.",
    ),
  "arc/tolerance-undeclared": () =>
    error(
      "arc/radius",
      "The dialect does not say how far the radii of an arc may differ.",
      "State it: arc: { tolerance: { mm: 0.002, inch: 0.0002, relative: 0 } }",
      "arc.tolerance",
    ),
  "arc/plane": (detail: { wanted: string; selected: string }) =>
    error(
      "arc/plane",
      `The motion needs plane ${detail.wanted}, but ${detail.selected} is selected.`,
      `Select plane ${detail.wanted} first.`,
    ),
};

/** Findings about the start and the end of the program. */
export const programFindings = {
  "program/start": (detail: { missing: string }) =>
    error(
      "program/start",
      `Before the first motion the program does not state ${detail.missing}.`,
      "State it at the start of the program.",
    ),
  "program/start-stop": (detail: { how: string }) =>
    error(
      "program/start",
      "Before the first motion the spindle is not known to stand still.",
      `Begin with a spindle stop and ${detail.how}.`,
      "confirm.stopped",
    ),
  "program/start-motion": (detail: { height: string }) =>
    error(
      "program/start",
      `The first motion is not Z alone to swap height (${detail.height}).`,
      `Begin with Z alone to ${detail.height}.`,
      "machine.retract.by",
    ),
  "program/start-offset": (detail: { what: string }) =>
    error(
      "program/start",
      `The first motion depends on the ${detail.what} that happens to be in force.`,
      "Begin with a motion that does not depend on it, such as a machine move or a reference return.",
      "machine.retract.by",
    ),
  "program/start-length": () =>
    error(
      "program/start",
      "The length offset is cancelled before Z is up.",
      "Take Z to swap height first, then cancel the length offset.",
      "machine.retract.cancel-length-first",
    ),
  "program/resume": (detail: { missing: string }) =>
    error(
      "program/resume",
      `The control keeps no modes over a stop, and before the first motion behind it the program does not state ${detail.missing}.`,
      "State it between the stop and the motion.",
      "stops.resume",
    ),
  "program/end": (detail: { faults: readonly EndFault[] }) =>
    error(
      "program/end",
      `At the end of the program ${detail.faults.map((fault) => endFaults[fault]).join("; ")}.`,
      "Put that right before the end.",
    ),
  "program/no-end": () => error("program/end", "The program has no end.", "Close it with the program end."),
  "program/after-end": () =>
    error("program/end", "Something follows the program end.", "Take it out, or move the end behind it."),
};
