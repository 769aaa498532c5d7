import type { Draft } from "./watch.ts";
import type { GuardRule } from "./rules.ts";

/** Makes an error draft; the key is left out where no key of the dialect is behind it. */
export function error(rule: GuardRule, message: string, fix: string, key?: string): Draft {
  return key === undefined
    ? { rule, severity: "error", message, fix }
    : { rule, severity: "error", message, fix, key };
}

const speedFaults = {
  unconfirmed: "cuts before the spindle is known to run at",
  stopped: "cuts while the spindle stands still; the speed should be",
  dwell: "dwells by revolutions of a spindle that is not known to turn at",
} as const;

const reversalFaults = {
  turning: "while it turns the other way",
  unconfirmed: "before its stop from the other direction is confirmed",
} as const;

const clampFaults = {
  empty: "The spindle starts without a tool in it.",
  unknown: "The spindle starts, but nothing says which tool it holds.",
  unswapped: "The spindle starts before the tool selected was put in.",
  unsensed: "The spindle starts before the tool picked from the rack was sensed.",
} as const;

const swapEvents = {
  "tool change": "the tool change",
  "operator swap": "the stop for a swap by hand",
  rack: "motion into the rack zone",
  release: "the release",
  clamp: "the clamp",
  pause: "the operator stop",
  measurement: "the measurement",
} as const;

/** What the stop of the spindle has to come before. */
export type SwapEvent = keyof typeof swapEvents;

const drawbarFaults = {
  start: "The spindle starts while the drawbar is released.",
  work: "A work motion begins while the drawbar is released.",
  stop: "The program stops while the drawbar is released.",
  change: "A tool change begins while the drawbar is released.",
  end: "The program ends with the drawbar released.",
  travel: "X and Y move with the drawbar released, where it is to travel clamped.",
  low: "X and Y move below the rack's clear height with the drawbar released.",
  full: "The drawbar is released and the spindle travels on with a tool in it.",
  down: "Z goes down away from a pocket with the drawbar released.",
  "release-unconfirmed": "The spindle moves before the release is confirmed.",
  "clamp-unconfirmed": "The tool leaves its pocket before the clamp is confirmed.",
  "clamped-descent": "Z goes down over a filled pocket with the drawbar clamped.",
} as const;

const pocketFaults = {
  full: "goes down into a pocket that holds another tool",
  foreign: "goes back to a pocket that is not its own",
  outside: "is released outside a pocket",
  sideways: "is lowered into or lifted out of a pocket that it slides into",
  second: "is in the spindle when the next one is picked",
} as const;

const seatFaults = {
  deep: "Z goes below the height at which a holder sits in its pocket.",
  fast: "Z goes down to a pocket at rapid, below the height at which the feed begins.",
} as const;

const bareFaults = {
  empty: "The spindle goes down to pick from an empty pocket",
  unknown: "The program goes to the rack, but nothing says what the spindle holds",
} as const;

/** Findings about the spindle. */
export const spindleFindings = {
  "spindle/at-speed": (detail: { fault: keyof typeof speedFaults; speed: string; how: string }) =>
    error(
      "spindle/at-speed",
      `The tool ${speedFaults[detail.fault]} ${detail.speed}.`,
      `After the start or change of speed, put in ${detail.how}.`,
      "confirm.at-speed",
    ),
  "spindle/old-speed": (detail: { speed: string; most: string | undefined }) =>
    error(
      "spindle/at-speed",
      `The spindle starts at ${detail.speed}, which was said before the swap or stop and not since${detail.most === undefined ? "" : `; the most of the tool that it holds now is ${detail.most}`}.`,
      "State the speed of the tool at each start that follows a swap or stop.",
    ),
  "spindle/still-feed": () =>
    ({
      rule: "spindle/at-speed",
      severity: "warning",
      message:
        "The program feeds and never starts the spindle, which is right for a probe, a drag knife or a pen alone.",
      fix: "Start the spindle and confirm its speed before this block if a turning tool is meant.",
    }) satisfies Draft,
  "spindle/stopped-for-swap": (detail: { event: SwapEvent; how: string }) =>
    error(
      "spindle/stopped-for-swap",
      `The spindle is not known to stand still at ${swapEvents[detail.event]}.`,
      `Stop the spindle before it and put in ${detail.how}.`,
      "confirm.stopped",
    ),
  "spindle/not-oriented": (detail: { event: SwapEvent }) =>
    error(
      "spindle/stopped-for-swap",
      `The spindle is not oriented at ${swapEvents[detail.event]}.`,
      "Orient the spindle after its stop is confirmed.",
      "machine.spindle.orient",
    ),
  "spindle/restarted": (detail: { how: string }) =>
    error(
      "spindle/restarted",
      "The tool change has started the spindle again, and it is not known to stand.",
      `Stop the spindle behind the change and put in ${detail.how}.`,
      "machine.change-effects.spindle",
    ),
  "spindle/clamped": (detail: { fault: keyof typeof clampFaults }) =>
    error(
      "spindle/clamped",
      clampFaults[detail.fault],
      detail.fault === "unsensed"
        ? "Wait for the signal of the tool in the spindle first."
        : "Load the tool before the start.",
      detail.fault === "unsensed" ? "machine.signals.tool-present" : undefined,
    ),
  "spindle/never-put-in": (detail: { before: number; tool: number }) =>
    error(
      "spindle/clamped",
      `Tool ${detail.before} was selected and never put in: tool ${detail.tool} is selected before the change.`,
      "Put the tool change in before the next tool is selected, or take the first selection out.",
      "tools.change",
    ),
  "spindle/never-turns": (detail: { tool: string }) =>
    error(
      "spindle/clamped",
      `The spindle starts with ${detail.tool}, which must never turn.`,
      "Take the start out.",
    ),
  "spindle/reversal": (detail: { direction: string; fault: keyof typeof reversalFaults; how: string }) =>
    error(
      "spindle/reversal",
      `The spindle starts ${detail.direction} ${reversalFaults[detail.fault]}.`,
      `Stop it first and put in ${detail.how}.`,
      "confirm.stopped",
    ),
  "spindle/ends-stopped": (detail: { turning: boolean; how: string }) =>
    error(
      "spindle/ends-stopped",
      detail.turning
        ? "The program ends with the spindle turning."
        : "The program ends before the spindle's stop is confirmed.",
      `Before the end, stop the spindle and put in ${detail.how}.`,
      "confirm.stopped",
    ),
};

/** Findings about swaps. */
export const swapFindings = {
  "swap/retracted": (detail: { event: SwapEvent; height: string }) =>
    error(
      "swap/retracted",
      `Z was not taken up to swap height alone before ${swapEvents[detail.event]}.`,
      `Begin the swap with Z alone to ${detail.height}, before the spindle stop.`,
      "machine.retract.by",
    ),
  "swap/coolant-off": (detail: { event: SwapEvent; media: string }) =>
    error(
      "swap/coolant-off",
      `Coolant (${detail.media}) is still on at ${swapEvents[detail.event]}.`,
      "Turn all coolant off first.",
    ),
  "swap/air": (detail: { event: "release" | "clamp"; how: string }) =>
    error(
      "swap/air",
      `The air pressure is not confirmed before ${swapEvents[detail.event]}.`,
      `Right before it put in ${detail.how}.`,
      "confirm.air",
    ),
  "swap/pocket": (detail: { fault: keyof typeof pocketFaults; tool: number; pocket: number }) =>
    error(
      "swap/pocket",
      `${detail.tool > 0 ? `Tool ${detail.tool}` : "The tool held"} ${pocketFaults[detail.fault]}${detail.pocket ? ` (pocket ${detail.pocket})` : ""}.`,
      "Bring each tool back to its own free pocket before the next is picked.",
      "machine.rack.pockets",
    ),
  "swap/bare-pocket": (detail: { fault: keyof typeof bareFaults; pocket: number }) =>
    error(
      "swap/pocket",
      `${bareFaults[detail.fault]}${detail.pocket ? ` (pocket ${detail.pocket})` : ""}.`,
      detail.fault === "unknown"
        ? "State what the spindle holds, or stop the program and ask for an empty spindle."
        : "State which pocket holds which tool, or pick from another pocket.",
      "machine.rack.pockets",
    ),
  "swap/reloads": (detail: { planned: number; made: number }) =>
    error(
      "swap/pocket",
      `${detail.planned} stops are planned to reload the rack, and ${detail.made} are made with an empty spindle that stands.`,
      "Return the tool, make sure that the spindle stands, and stop the program for each of them.",
      "machine.rack.pockets",
    ),
  "swap/seat": (detail: { fault: keyof typeof seatFaults }) =>
    error(
      "swap/pocket",
      seatFaults[detail.fault],
      "Go down at rapid to where the feed begins, and at feed from there to the seat of the holder.",
      detail.fault === "deep" ? "machine.rack.pocket-z" : "machine.rack.descend-from",
    ),
  "swap/drawbar": (detail: { fault: keyof typeof drawbarFaults; how: string }) =>
    error(
      "swap/drawbar",
      drawbarFaults[detail.fault],
      drawbarFix(detail.fault, detail.how),
      drawbarKey(detail.fault),
    ),
  "swap/timed": (detail: { what: string }) =>
    ({
      rule: "swap/timed",
      severity: "warning",
      message: `${detail.what.split(":")[0]} is made sure of by waiting alone: no sensor tells it.`,
      fix: "Watch it at the first swap; wire a signal and name it under machine.signals to have it waited for.",
      key: `confirm.${detail.what.split(" ").at(-1)}`,
    }) satisfies Draft,
};

function drawbarKey(fault: keyof typeof drawbarFaults): string {
  if (fault === "release-unconfirmed") return "confirm.released";
  if (fault === "clamp-unconfirmed") return "confirm.clamped";
  return "machine.drawbar.travels";
}

function drawbarFix(fault: keyof typeof drawbarFaults, how: string): string {
  if (fault === "release-unconfirmed" || fault === "clamp-unconfirmed")
    return `Before the motion put in ${how}.`;
  if (fault === "clamped-descent") return "Release the drawbar at the rack's clear height and confirm it.";
  return "Clamp the drawbar first.";
}
